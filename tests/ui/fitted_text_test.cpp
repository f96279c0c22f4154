// Words in cells: whole as long as one line, two lines or narrower letters hold them. Our own rule.
#include "ui/delegates/fitted_text.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFontMetrics>
#include <QTableWidget>

#include "ui/text/narrow_letters.h"
#include "ui/text/written_way.h"
#include "ui/widgets/hinted_field.h"
#include "ui/window_look.h"

namespace ww::ui {
namespace {

TEST(FittedText, staysAsItIsWhereItHasRoom) {
    const QFont font = QApplication::font();
    const QString words = QStringLiteral("4 turns");
    const QSize room(QFontMetrics(font).horizontalAdvance(words), QFontMetrics(font).height());
    const FittedText fitted = fitText(words, font, room);
    EXPECT_EQ(fitted.text, words);
    EXPECT_EQ(fitted.font, font);
    EXPECT_FALSE(fitted.isWrapped);
    EXPECT_FALSE(fitted.isCut);
}

TEST(FittedText, isWrappedInAHighRowAndNarrowedInALowOne) {
    const QFont font = QApplication::font();
    const QFontMetrics metrics(font);
    const QString words = QStringLiteral("lowest speed, of the rated");
    const int wide = metrics.horizontalAdvance(words);
    const FittedText high = fitText(words, font, {wide * 7 / 10, twoLinesHeight(font)});
    EXPECT_TRUE(high.isWrapped);
    EXPECT_EQ(high.font, font);
    EXPECT_FALSE(high.isCut);
    const FittedText low = fitText(words, font, {wide * 9 / 10, metrics.height()});
    EXPECT_FALSE(low.isWrapped);
    EXPECT_FALSE(low.isCut);
    EXPECT_EQ(low.text, words);
    EXPECT_GE(low.font.stretch(), text::kLeastStretch);
    EXPECT_LE(QFontMetrics(low.font).horizontalAdvance(low.text), wide * 9 / 10);
}

TEST(FittedText, endsALineBetweenWordsAndNeverWithinATag) {
    const QFont font = QApplication::font();
    const QFontMetrics metrics(font);
    const QString tag = QStringLiteral("B1-T4");
    const FittedText narrow = fitText(tag, font, {metrics.horizontalAdvance(tag) - 3, twoLinesHeight(font)});
    EXPECT_EQ(narrow.text, tag);
    EXPECT_FALSE(narrow.isWrapped);
    EXPECT_FALSE(narrow.isCut);
    const QString words = QStringLiteral("Cooling coil B1-T4");
    const int room = metrics.horizontalAdvance(QStringLiteral("Cooling coil B1-")) + 1;
    EXPECT_EQ(fitText(words, font, {room, twoLinesHeight(font)}).text, "Cooling coil\nB1-T4");
}

TEST(FittedText, isCutWhereNothingHelpsAndSaysSo) {
    const QFont font = QApplication::font();
    const QFontMetrics metrics(font);
    const QString words = QStringLiteral("a note that somebody wrote at great length about this valve");
    const QSize room(metrics.horizontalAdvance(words) / 4, metrics.height());
    const FittedText fitted = fitText(words, font, room);
    EXPECT_TRUE(fitted.isCut);
    EXPECT_TRUE(fitted.text.endsWith(QChar(0x2026)));
    EXPECT_LE(QFontMetrics(fitted.font).horizontalAdvance(fitted.text), room.width());
}

// A hint is written by the same rule as the words of a cell, and not at all where that does not help.
// In the sun thin strokes vanish: numbers are heavier there, in our cells and in those of plain tables.
TEST(CellFont, numbersAreSemiBoldInDaylight) {
    constexpr double kPoints = 20.0;
    QTableWidget table(2, 1);
    table.setItem(0, 0, new QTableWidgetItem("~113.5 kPa"));
    table.setItem(1, 0, new QTableWidgetItem("Level 3"));
    const auto widthOf = [&](int row) {
        table.item(1 - row, 0)->setText(QString());
        const int width = table.sizeHintForIndex(table.model()->index(row, 0)).width();
        table.item(0, 0)->setText("~113.5 kPa");
        table.item(1, 0)->setText("Level 3");
        return width;
    };
    int usualNumber = 0;
    int usualWords = 0;
    for (const theme::Display display :
         {theme::Display::Office, theme::Display::PlantRoomDark, theme::Display::Daylight}) {
        table.setFont(applyToProgram(lookOf(display, kPoints, false)).font);
        const bool isDaylight = display == theme::Display::Daylight;
        const auto weightOf = [&](int row) {
            return cellFont(table.model()->index(row, 0), table.font(), &table).weight();
        };
        EXPECT_EQ(weightOf(0), isDaylight ? QFont::DemiBold : QFont::Normal);
        EXPECT_EQ(weightOf(1), QFont::Normal);
        usualNumber = usualNumber > 0 ? usualNumber : widthOf(0);
        usualWords = usualWords > 0 ? usualWords : widthOf(1);
        EXPECT_EQ(widthOf(0) > usualNumber, isDaylight);
        EXPECT_EQ(widthOf(1), usualWords);
    }
    applyToProgram(lookOf(theme::Display::Office, 10.0, false));
}

TEST(CellFont, aNumberIsToldByItsFirstSign) {
    for (const char* number :
         {"12.4", "-3.2 kPa", "~102", "\u2212 4 %", "2026-05-13", "(6.1)", "\u2265 1.0"}) {
        EXPECT_TRUE(text::isNumeral(QString::fromUtf8(number))) << number;
    }
    for (const char* words : {"", "-", "B-05", "Level 3", "~"}) {
        EXPECT_FALSE(text::isNumeral(QString::fromUtf8(words))) << words;
    }
}

TEST(HintedField, writesItsHintAsNarrowAsCellsAndNoNarrower) {
    const QString words = QStringLiteral("reason, to send back or withdraw");
    HintedField field(words, nullptr);
    const int wide = QFontMetrics(field.font()).horizontalAdvance(words);
    field.resize(wide * 2, field.sizeHint().height());
    EXPECT_EQ(field.hintFont(), field.font());
    EXPECT_EQ(field.shownHint(), words);
    for (int width = wide * 2; width > wide / 4; width -= 5) {
        field.resize(width, field.height());
        const int room = field.hintRect().width();
        const FittedText cell = fitText(words, field.font(), {room, field.fontMetrics().height()});
        EXPECT_EQ(field.hintFont(), cell.font) << width;
        EXPECT_EQ(field.shownHint().isEmpty(), cell.isCut) << width;
        EXPECT_TRUE(field.hintFont().stretch() == 0 || field.hintFont().stretch() >= text::kLeastStretch);
    }
    EXPECT_TRUE(field.shownHint().isEmpty());
}

}  // namespace
}  // namespace ww::ui
