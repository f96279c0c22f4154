// What Adjust says of a pump that makes too little, by the speed it runs at. The rules are this program's own
// decisions; no outside source.
#include "tests/ui/support/adjust_desk.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/text/format.h"

namespace ww::ui {
namespace {

using support::AdjustDesk;
using support::SolvedJob;

/// A loop that is short of flow because its pump runs at this fraction of full speed.
class SlowPump : public AdjustDesk {
  protected:
    static constexpr double kSpeed = 0.6;
    explicit SlowPump(double speed = kSpeed) : AdjustDesk(SolvedJob(6, 7, speed)) {}
    const balancing::PumpAdvice* advised() {
        const LoopPicture* picture = m_desk.window.advisor().picture();
        return picture != nullptr && picture->advice.pump ? &*picture->advice.pump : nullptr;
    }
    QString words() { return place().advice()->words(); }
    /// The pump with a drive or without.
    void drive(bool hasDrive) {
        project::Pump pump = m_desk.project().pumps()[0];
        pump.hasDrive = hasDrive;
        ASSERT_TRUE(m_desk.bridge().apply({"drive", {pump}, {}, true}).ok());
        settle();
    }
    /// The design flows of all branches times this.
    void design(double factor) {
        project::Edit edit;
        edit.label = "design flows";
        for (project::Branch branch : std::vector<project::Branch>(m_desk.project().branches().begin(),
                                                                   m_desk.project().branches().end())) {
            branch.designFlow = quantity::measured<quantity::VolumeFlow>(
                base::Decimal::fromNumber(factor * branch.designFlow->digits.value(), 4),
                branch.designFlow->unit);
            edit.put.emplace_back(branch);
        }
        ASSERT_TRUE(m_desk.bridge().apply(edit).ok());
        settle();
    }
};

TEST_F(SlowPump, aDriveWithRoomIsTurnedUpBeforeStrainersAreLookedFor) {
    const balancing::PumpAdvice* pump = advised();
    ASSERT_TRUE(pump != nullptr && pump->isShort() && pump->speedFraction);
    EXPECT_GT(pump->speedFraction->si(), kSpeed);
    ASSERT_LE(pump->speedFraction->si(), 1);
    const QString raise =
        QStringLiteral("raise it to about %1 % of full speed").arg(text::percent(*pump->speedFraction));
    EXPECT_TRUE(words().contains(raise)) << words().toStdString();
    EXPECT_TRUE(words().contains("within the limits of the maker")) << words().toStdString();
    EXPECT_LT(words().indexOf(raise), words().indexOf("strainers")) << words().toStdString();
}

TEST_F(SlowPump, withoutADriveNothingIsTurnedUp) {
    drive(false);
    ASSERT_TRUE(advised() != nullptr && advised()->isShort());
    EXPECT_FALSE(words().contains("raise it")) << words().toStdString();
    EXPECT_TRUE(words().contains("check speed and impeller")) << words().toStdString();
}

TEST_F(SlowPump, beyondFullSpeedNothingIsTurnedUp) {
    design(2);
    ASSERT_TRUE(advised() != nullptr && advised()->isShort() && advised()->speedFraction);
    ASSERT_GT(advised()->speedFraction->si(), 1);
    EXPECT_FALSE(words().contains("raise it")) << words().toStdString();
    EXPECT_TRUE(words().contains("strainers and filters are clean")) << words().toStdString();
}

/// The same loop with its pump at full speed.
class FullSpeed : public SlowPump {
  protected:
    FullSpeed() : SlowPump(1) {}
};

TEST_F(FullSpeed, aPumpThatIsShortIsNotTurnedUp) {
    drive(true);
    design(2);
    ASSERT_TRUE(advised() != nullptr && advised()->isShort());
    EXPECT_FALSE(words().contains("raise it")) << words().toStdString();
}

}  // namespace
}  // namespace ww::ui
