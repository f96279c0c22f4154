// Flags and marks with which a text keeps its own way in a layout from right to left.
#include "ui/text/written_way.h"

#include <gtest/gtest.h>

namespace ww::ui::text {
namespace {

constexpr int kSide = Qt::AlignHorizontal_Mask & ~int(Qt::AlignAbsolute);

TEST(WrittenWay, staysAsItIsFromLeftToRight) {
    const int flags = Qt::AlignLeft | Qt::AlignVCenter;
    EXPECT_EQ(writtenFlags(Qt::LeftToRight, flags, "-15 %"), flags);
    EXPECT_EQ(writtenApart(Qt::LeftToRight, "-15 %").toStdString(), "-15 %");
}

TEST(WrittenWay, standsOnTheOtherSideAndRunsTheSameWay) {
    const int left = writtenFlags(Qt::RightToLeft, Qt::AlignLeft | Qt::AlignVCenter, "-15 %");
    EXPECT_EQ(left & kSide, int(Qt::AlignRight));
    EXPECT_NE(left & Qt::TextForceLeftToRight, 0);
    EXPECT_NE(left & Qt::AlignVCenter, 0);
    const int right = writtenFlags(Qt::RightToLeft, Qt::AlignRight, "-15 %");
    EXPECT_EQ(right & kSide, int(Qt::AlignLeft));
    const int middle = writtenFlags(Qt::RightToLeft, Qt::AlignCenter, "-15 %");
    EXPECT_EQ(middle & kSide, int(Qt::AlignHCenter));
    EXPECT_EQ(writtenApart(Qt::RightToLeft, "-15 %"),
              QChar(0x2066) + QStringLiteral("-15 %") + QChar(0x2069));
    EXPECT_TRUE(writtenApart(Qt::RightToLeft, QString()).isEmpty());
}

TEST(WrittenWay, leavesWordsOfTheOtherWayAlone) {
    const QString hebrew(QChar(0x05D0));
    EXPECT_EQ(writtenFlags(Qt::RightToLeft, Qt::AlignLeft, hebrew), int(Qt::AlignLeft));
    EXPECT_EQ(writtenApart(Qt::RightToLeft, hebrew), hebrew);
    const int forced = Qt::AlignLeft | Qt::TextForceRightToLeft;
    EXPECT_EQ(writtenFlags(Qt::RightToLeft, forced, "-15 %"), forced);
}

}  // namespace
}  // namespace ww::ui::text
