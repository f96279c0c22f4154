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

}  // namespace
}  // namespace ww::ui
