// What Adjust says of a pump that makes too little. The rules are this program's own; no outside source.
#include "tests/ui/support/adjust_desk.h"
#include "ui/text/format.h"

namespace ww::ui {
namespace {

using support::AdjustDesk;

class SlowPumpDesk : public AdjustDesk {
  protected:
    SlowPumpDesk() : AdjustDesk(0.6) {}
};

// A drive with room is turned up before anybody looks for strainers.
TEST_F(SlowPumpDesk, aPumpThatIsShortOnADriveIsSpedUpFirst) {
    const LoopPicture* picture = m_desk.window.advisor().picture();
    ASSERT_TRUE(picture != nullptr && picture->advice.pump);
    const balancing::PumpAdvice& pump = *picture->advice.pump;
    ASSERT_TRUE(pump.isShort() && pump.speedFraction);
    EXPECT_GT(pump.speedFraction->si(), 0.6);
    ASSERT_LE(pump.speedFraction->si(), 1);
    const QString wanted = "raise it to about " + text::percent(*pump.speedFraction) + " % of full speed";
    EXPECT_TRUE(place().advice()->words().contains(wanted)) << place().advice()->words().toStdString();
    // Without a drive nobody can.
    project::Edit edit;
    edit.label = "no drive";
    project::Pump fixed = *m_desk.project().pumps().begin();
    fixed.hasDrive = false;
    edit.put.emplace_back(fixed);
    ASSERT_TRUE(m_desk.bridge().apply(edit).ok());
    settle();
    const QString words = place().advice()->words();
    EXPECT_FALSE(words.contains("raise it to")) << words.toStdString();
    EXPECT_TRUE(words.contains("check speed and impeller")) << words.toStdString();
}

TEST_F(AdjustDesk, aPumpThatMakesEnoughIsLeftUntilTheValvesAreSet) {
    const LoopPicture* picture = m_desk.window.advisor().picture();
    ASSERT_TRUE(picture != nullptr && picture->advice.pump);
    ASSERT_FALSE(picture->advice.pump->isShort());
    EXPECT_FALSE(place().advice()->words().contains("raise it to"));
}

}  // namespace
}  // namespace ww::ui
