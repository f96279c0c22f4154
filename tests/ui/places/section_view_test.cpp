// A section on the screen: few widgets however much it holds, and all of it within reach.
#include "ui/places/section_view.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QTest>

#include "ui/places/column_fit.h"
#include "ui/places/pump/circuit_list.h"

namespace ww::ui {
namespace {

using ww::report::Alignment;
using ww::report::Cell;

constexpr std::size_t kMany = 5000;
constexpr base::MessageForm kAnyWords{"section_view_test_words", "{1}"};

base::Fault sentence(const std::string& words) {
    return {&kAnyWords, {}, {words}};
}

ww::report::Section sectionOf(std::size_t statements) {
    ww::report::Section section;
    section.title = sentence("Wasted head");
    for (std::size_t i = 0; i < statements; ++i) {
        section.closing.push_back(sentence("Valve T" + std::to_string(i) + " has no straight pipe"));
    }
    return section;
}

Cell cellOf(std::string words) {
    Cell cell;
    cell.text = std::move(words);
    return cell;
}

/// A table whose widest word stands far below, and whose last column is of sentences.
ww::report::Table longTable() {
    ww::report::Table table;
    table.title = sentence("Valves");
    table.columns = {{sentence("Tag"), "", Alignment::Left, 1.0},
                     {sentence("Dp"), "kPa", Alignment::Right, 1.0},
                     {sentence("What is missing"), "", Alignment::Left, 2.0}};
    for (std::size_t i = 0; i < kMany; ++i) {
        const std::string tag = i == kMany - 700 ? "BASEMENT-NORTH-WING" : "T" + std::to_string(i);
        table.rows.push_back({cellOf(tag), cellOf(std::to_string(i) + ".5"), cellOf("short")});
    }
    std::string words = "straight";
    for (int i = 0; i < 80; ++i) {
        words += " pipe";
    }
    table.rows.back()[2].text = words;
    table.rows[kMany / 2][2].text = words;
    return table;
}

/// Whether the words of a row have the height that they need in their columns.
bool isWhole(const SectionTable& table, int row) {
    for (int column = 0; column < table.model()->columnCount(); ++column) {
        const QModelIndex cell = table.model()->index(row, column);
        const QRect room(0, 0, table.columnWidth(column) - 6, 10000);
        const QRect needed = table.fontMetrics().boundingRect(room, Qt::TextWordWrap, cell.data().toString());
        if (needed.height() > table.rowHeight(row) || needed.width() > table.columnWidth(column)) {
            return false;
        }
    }
    return true;
}

// Common practice, no source: what nobody sees makes no widgets.
TEST(SectionView, manySentencesAreOneListThatHoldsAll) {
    SectionView view;
    view.resize(600, 500);
    view.show(sectionOf(kMany));
    view.QWidget::show();
    QTest::qWait(20);
    EXPECT_LT(view.findChildren<QWidget*>().size(), 40);
    const auto* list = view.findChild<StatementList*>();
    ASSERT_NE(list, nullptr);
    const QString text = list->toPlainText();
    EXPECT_TRUE(text.startsWith("Valve T0 has no straight pipe"));
    EXPECT_TRUE(text.contains("Valve T2500 has no straight pipe"));
    EXPECT_TRUE(text.trimmed().contains("Valve T4999 has no straight pipe"));
    EXPECT_EQ(text.count("has no straight pipe"), static_cast<qsizetype>(kMany));
    EXPECT_EQ(list->horizontalScrollBar()->maximum(), list->horizontalScrollBar()->minimum());
    EXPECT_GT(list->verticalScrollBar()->maximum(), 0);
}

// WCAG 2.2, 2.1.1 Keyboard, 2.1.2 No Keyboard Trap and 4.1.2 Name, Role, Value.
TEST(SectionView, theListOfSentencesIsReadByKeysAndNamed) {
    SectionView view;
    view.show(sectionOf(kMany));
    auto* list = view.findChild<StatementList*>();
    ASSERT_NE(list, nullptr);
    EXPECT_TRUE(list->accessibleName().contains("Wasted head")) << list->accessibleName().toStdString();
    EXPECT_TRUE(list->focusPolicy() & Qt::TabFocus);
    EXPECT_TRUE(list->tabChangesFocus());
    EXPECT_TRUE(list->isReadOnly());
    list->selectAll();
    EXPECT_TRUE(list->textCursor().selectedText().contains("Valve T4999"));
    list->moveCursor(QTextCursor::End);
    EXPECT_EQ(list->textCursor().position(), list->document()->characterCount() - 1);
}

TEST(SectionView, homeAndEndLeadToItsEnds) {
    SectionView view;
    view.resize(400, 200);
    view.show(sectionOf(25));
    static_cast<QWidget&>(view).show();
    QTest::qWait(0);
    const QScrollBar* bar = view.verticalScrollBar();
    ASSERT_GT(bar->maximum(), 0);
    QTest::keyClick(&view, Qt::Key_End);
    EXPECT_EQ(bar->value(), bar->maximum());
    QTest::keyClick(&view, Qt::Key_Home);
    EXPECT_EQ(bar->value(), 0);
}

TEST(SectionView, fewSentencesStandOnThePageItself) {
    SectionView view;
    view.show(sectionOf(SectionView::kMostLabels));
    EXPECT_EQ(view.findChild<StatementList*>(), nullptr);
    // The title is a label as well.
    EXPECT_EQ(view.findChildren<QLabel*>().size(), static_cast<qsizetype>(SectionView::kMostLabels) + 1);
}

// Common practice, no source: a table says all its cells, and cuts none of those in sight.
TEST(SectionTable, aLongOneHoldsEveryCellAndCutsNone) {
    SectionTable table;
    table.resize(900, 600);
    table.show(longTable());
    table.QWidget::show();
    QTest::qWait(20);
    const QAbstractItemModel& model = *table.model();
    ASSERT_EQ(model.rowCount(), static_cast<int>(kMany));
    EXPECT_EQ(model.index(static_cast<int>(kMany) - 1, 0).data().toString(), "T4999");
    EXPECT_EQ(model.index(7, 1).data().toString(), "7.5");
    EXPECT_EQ(model.headerData(1, Qt::Horizontal).toString(), "Dp\nkPa");
    EXPECT_EQ(model.index(7, 1).data(Qt::TextAlignmentRole).toInt() & Qt::AlignRight, int(Qt::AlignRight));
    EXPECT_GE(table.columnWidth(0), widestWord(table.fontMetrics(), "BASEMENT-NORTH-WING"));
    for (const int row : {static_cast<int>(kMany / 2), static_cast<int>(kMany) - 1}) {
        table.scrollTo(model.index(row, 0), QAbstractItemView::PositionAtTop);
        QTest::qWait(20);
        EXPECT_GE(table.rowAt(0), 0);
        EXPECT_TRUE(isWhole(table, row)) << row;
        EXPECT_TRUE(isWhole(table, table.rowAt(0))) << table.rowAt(0);
    }
}

TEST(SectionTable, isAModelThatKeepsItsWord) {
    SectionTableModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ww::report::Table table = longTable();
    table.rows.resize(20);
    // A row may hold fewer cells than there are columns.
    table.rows[3].resize(1);
    model.show(table);
    EXPECT_EQ(model.rowCount(), 20);
    EXPECT_EQ(model.index(3, 2).data().toString(), QString());
    model.setAsLines(true);
    ASSERT_EQ(model.rowCount(), 60);
    ASSERT_EQ(model.columnCount(), 2);
    EXPECT_EQ(model.index(4, 0).data().toString(), "Dp kPa");
    EXPECT_EQ(model.index(4, 1).data().toString(), "1.5");
    model.setAsLines(false);
    EXPECT_EQ(model.columnCount(), 3);
}

TEST(CircuitList, isAModelThatKeepsItsWord) {
    CircuitList list;
    const QAbstractItemModelTester tester(&list, QAbstractItemModelTester::FailureReportingMode::Fatal);
    list.show({{"T7, index circuit", -1}, {"T1", 4}, {"T7", 12}});
    ASSERT_EQ(list.rowCount(), 3);
    EXPECT_EQ(list.rowOf(12), 2);
    EXPECT_EQ(list.rowOf(-1), 0);
    EXPECT_EQ(list.rowOf(5), -1);
    EXPECT_EQ(list.longestName(), 17);
    EXPECT_EQ(list.index(1, 0).data().toString(), "T1");
    EXPECT_EQ(list.index(1, 0).data(Qt::UserRole).toInt(), 4);
}

}  // namespace
}  // namespace ww::ui
