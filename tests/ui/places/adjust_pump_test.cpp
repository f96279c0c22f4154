// What Adjust says of a pump that makes too little. The rules are this program's own; no outside source.
#include "tests/ui/support/adjust_desk.h"
#include "ui/text/format.h"

namespace ww::ui {
namespace {

using support::AdjustDesk;

// A drive with room is turned up before anybody looks for strainers.
TEST_F(AdjustDesk, aPumpThatIsShortOnADriveIsSpedUpFirst) {
    project::Edit edit;
    edit.label = "drives";
    const project::Pump first = m_desk.project().pumps()[0];
    for (project::Pump pump :
         std::vector<project::Pump>(m_desk.project().pumps().begin(), m_desk.project().pumps().end())) {
        pump.hasDrive = true;
        edit.put.emplace_back(pump);
    }
    ASSERT_TRUE(first.speed);
    for (project::PumpReading reading : std::vector<project::PumpReading>(
             m_desk.project().pumpReadings().begin(), m_desk.project().pumpReadings().end())) {
        reading.speed = quantity::measured<quantity::RotationalSpeed>(
            base::Decimal::fromNumber(0.5 * first.speed->digits.value(), 0), first.speed->unit);
        edit.put.emplace_back(reading);
    }
    ASSERT_TRUE(m_desk.bridge().apply(edit).ok());
    settle();
    const LoopPicture* picture = m_desk.window.advisor().picture();
    ASSERT_TRUE(picture != nullptr && picture->advice.pump);
    ASSERT_TRUE(picture->advice.pump->isShort() && picture->advice.pump->speedFraction);
    ASSERT_LE(picture->advice.pump->speedFraction->si(), 1);
    const QString words = place().advice()->words();
    const QString speed = text::percent(*picture->advice.pump->speedFraction);
    EXPECT_TRUE(words.contains("raise it to about " + speed + " % of full speed")) << words.toStdString();
}

}  // namespace
}  // namespace ww::ui
