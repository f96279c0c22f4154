// The notice above the content stands whole, whatever its length. Own cases.
#include "ui/widgets/notice_line.h"

#include <gtest/gtest.h>

#include "tests/ui/support/desk_window.h"
#include "ui/text/narrow_letters.h"

namespace ww::ui {
namespace {

TEST(NoticeLine, aLongMessageIsWrittenNarrowerAndAtLastHigher) {
    support::DeskWindow desk;
    auto& notice = *desk.window.findChild<NoticeLine*>();
    const int reserved = notice.height();
    const auto say = [&](int words) {
        QStringList all;
        for (int i = 0; i < words; ++i) {
            all << QStringLiteral("measuring");
        }
        notice.showMessage(all.join(' '), true);
        QCoreApplication::processEvents();
        EXPECT_GE(notice.height(), notice.heightForWidth(notice.width())) << words << " words are cut";
        return text::stretchOf(notice.font());
    };
    EXPECT_EQ(say(5), 100);
    // As many words as two lines hold, and some more.
    const int inTwoLines = 2 * notice.width() / notice.fontMetrics().horizontalAdvance("measuring ");
    EXPECT_LT(say(inTwoLines + 3), 100);
    EXPECT_EQ(notice.height(), reserved) << "nothing moves";
    say(3 * inTwoLines);
    EXPECT_GT(notice.height(), reserved);
    EXPECT_EQ(say(5), 100);
    EXPECT_EQ(notice.height(), reserved);
}

TEST(NoticeLine, whatIsSaidOfAValveIsReadWhileTheNextOneIsInHandAndNoLonger) {
    support::DeskWindow desk;
    desk.window.showPlace(MainWindow::Walk);
    const auto inHand = [&](const char* tag) {
        desk.bridge().selectBranch(desk.project().branchTagged(tag)->id);
        return desk.window.notice().contains("read it first");
    };
    inHand("B-01");
    desk.bridge().tell(base::Fault{&kNothingToMark, "B-01", {}});
    EXPECT_TRUE(inHand("B-02")) << "Enter went on";
    EXPECT_TRUE(inHand("B-01"));
    EXPECT_FALSE(inHand("B-03"));
    desk.bridge().tell(base::Fault{&kNothingToMark, "B-02", {}});
    EXPECT_FALSE(inHand("B-04")) << "said when its valve was left already";
    desk.bridge().tell(base::Fault{&kNothingToMark, {}, {}});
    EXPECT_TRUE(inHand("B-01")) << "about no valve";
}

}  // namespace
}  // namespace ww::ui
