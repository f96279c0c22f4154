// How columns share the room of a table. The expected widths are worked by hand.
#include "ui/places/column_fit.h"

#include <gtest/gtest.h>

#include <QHeaderView>
#include <QStandardItemModel>
#include <set>

#include "ui/delegates/fitted_text.h"
#include "ui/text/narrow_letters.h"

namespace ww::ui {
namespace {

using Widths = std::vector<int>;

TEST(ColumnFit, whatIsLeftOverGoesToTheFillingColumn) {
    EXPECT_EQ(sharedOut(Widths{20, 30}, std::vector<double>{40, 50}, 120, 1), (Widths{40, 80}));
}

TEST(ColumnFit, whereRoomIsShortEachGivesUpItsPart) {
    // Of 20 and 60 px beyond the least there is room for half.
    EXPECT_EQ(sharedOut(Widths{20, 30}, std::vector<double>{40, 90}, 90, 0), (Widths{30, 60}));
}

TEST(ColumnFit, noColumnIsNarrowerThanItsLeast) {
    EXPECT_EQ(sharedOut(Widths{20, 30}, std::vector<double>{40, 50}, 10, 0), (Widths{20, 30}));
}

// Rows of one column in letters of several widths read as if some were meant to stand back. Our own rule.
TEST(ColumnFit, allCellsOfAColumnAreWrittenInTheSameLetters) {
    QStandardItemModel model;
    for (const char* words : {"Filled", "Filled and vented", "Strainers cleaned, valves open", "Done"}) {
        model.appendRow({new QStandardItem(words), new QStandardItem("yes")});
    }
    QTableView table;
    table.setModel(&model);
    table.setWordWrap(false);
    table.verticalHeader()->setDefaultSectionSize(table.fontMetrics().height() + 6);
    const int longest = table.fontMetrics().horizontalAdvance("Strainers cleaned, valves open");
    for (const int percent : {110, 85, 50}) {
        table.setColumnWidth(0, longest * percent / 100 + 2 * kCellMargin + 1);
        heightenWhereCut(table);
        std::set<int> letters;
        for (int row = 0; row < model.rowCount(); ++row) {
            const QSize room(table.columnWidth(0) - 2 * kCellMargin - 1, table.rowHeight(row));
            const FittedText fitted =
                fitText(model.index(row, 0).data().toString(), table.font(), room, columnLetters(&table, 0));
            EXPECT_FALSE(fitted.isCut) << percent << ", row " << row;
            letters.insert(text::stretchOf(fitted.font));
        }
        EXPECT_EQ(letters.size(), 1U) << percent;
        if (percent > 100) {
            EXPECT_EQ(columnLetters(&table, 0), 100);
        }
        EXPECT_EQ(columnLetters(&table, 1), 100);
    }
}

// Letters are not narrowed beside a column that only keeps room for what may yet be typed.
TEST(ColumnFit, wordsComeBeforeRoomThatNothingStandsIn) {
    QStandardItemModel model;
    model.appendRow({new QStandardItem("T1"), new QStandardItem("Corridor of the first floor"),
                     new QStandardItem("by hand")});
    model.setHorizontalHeaderLabels({"Tag", "Serves", "Kind"});
    QTableView table;
    table.setModel(&model);
    table.setWordWrap(false);
    table.horizontalHeader()->setMinimumSectionSize(1);
    table.verticalHeader()->hide();
    const int digits[] = {6, 8, 40};
    const int words = wordsColumnWidth(table, 1);
    const int kind = wordsColumnWidth(table, 2);
    const auto fitted = [&](auto fit, int room) {
        table.resize(room + 2 * table.frameWidth(), 200);
        table.show();
        fit();
        return table.viewport()->width();
    };
    const int whole = columnWidthFor(table, 0, digits[0]) + words + columnWidthFor(table, 2, digits[2]);
    for (const bool isInTurn : {false, true}) {
        const int room = fitted(
            [&] {
                isInTurn ? static_cast<void>(fitColumnsInTurn(table, digits, 1, false))
                         : fitColumns(table, digits, 2);
            },
            whole - 20);
        EXPECT_GE(table.columnWidth(1), words) << isInTurn;
        EXPECT_GE(table.columnWidth(2), kind) << isInTurn;
        EXPECT_LE(table.columnWidth(0) + table.columnWidth(1) + table.columnWidth(2), room) << isInTurn;
    }
}

// What nobody sees asks for no room.
TEST(ColumnFit, aHiddenColumnMakesNoRowHigher) {
    QStandardItemModel model;
    model.appendRow({new QStandardItem("Done"), new QStandardItem("words that no narrow column holds")});
    model.appendRow({new QStandardItem("Done"), new QStandardItem("")});
    QTableView table;
    table.setModel(&model);
    table.setWordWrap(false);
    const int usual = table.fontMetrics().height() + 6;
    table.verticalHeader()->setMinimumSectionSize(usual);
    table.verticalHeader()->setDefaultSectionSize(usual);
    table.setColumnWidth(1, 30);
    heightenWhereCut(table);
    EXPECT_GT(table.rowHeight(0), usual);
    EXPECT_EQ(table.rowHeight(1), usual);
    table.setColumnHidden(1, true);
    heightenWhereCut(table);
    EXPECT_EQ(table.rowHeight(0), usual);
    EXPECT_EQ(table.rowHeight(1), usual);
}

}  // namespace
}  // namespace ww::ui
