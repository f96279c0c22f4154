// Words in cells: whole as long as one line, two lines or narrower letters hold them. Our own rule.
#include "ui/delegates/fitted_text.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFontMetrics>

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
    EXPECT_GE(low.font.stretch(), kLeastStretch);
    EXPECT_LE(QFontMetrics(low.font).horizontalAdvance(low.text), wide * 9 / 10);
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

}  // namespace
}  // namespace ww::ui
