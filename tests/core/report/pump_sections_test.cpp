// What the pump's sections say beside their tables. The rules are this program's own; no outside source.
#include "core/report/pump_sections.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/pump_room/pump_picture.h"
#include "tests/support/demo_project.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

using support::demoProject;
using support::textOf;

pump_room::PumpPicture pictured(const project::Project& project) {
    return pump_room::pumpPicture(project, {});
}

// A pump at full speed has one excess; said twice it would seem to be two.
TEST(PumpSections, anExcessAsReadIsToldWhereItIsAnother) {
    const project::Project project = demoProject();
    pump_room::PumpPicture picture = pictured(project);
    ASSERT_TRUE(picture.decision.excess.has_value());
    picture.decision.presentExcess = *picture.decision.excess;
    const auto told = [&] { return textOf(pumpDecisionSection(project, picture)); };
    EXPECT_EQ(told().find("Excess as read"), std::string::npos) << told();
    picture.decision.presentExcess = *picture.decision.excess + quantity::Head::si(1);
    EXPECT_NE(told().find("Excess as read"), std::string::npos) << told();
}

// What is not on record is not proved to be open.
TEST(PumpSections, theProofNamesNoDischargeValveThatIsNotOnRecord) {
    const project::Project project = demoProject();
    pump_room::PumpPicture picture = pictured(project);
    pump_room::ThrottlingProof& proof = picture.decision.throttling;
    proof.isProved = true;
    proof.failures.clear();
    proof.notes.clear();
    const auto told = [&] { return textOf(energyCodeSection(project, picture)); };
    EXPECT_NE(told().find("and the pump's discharge valve"), std::string::npos) << told();
    proof.notes.push_back({&pump_room::kProofNoThrottle, "P-1", {}});
    EXPECT_EQ(told().find("and the pump's discharge valve"), std::string::npos) << told();
    EXPECT_NE(told().find("no discharge valve is on record"), std::string::npos) << told();
}

TEST(PumpSections, aCautionOfAShutoffTestSaysThatItIsOne) {
    const project::Project project = demoProject();
    const pump_room::PumpPicture picture = pictured(project);
    ASSERT_FALSE(picture.sheets.empty());
    const std::size_t count = picture.sheets.front().shutoff.cautions.size();
    ASSERT_GT(count, 0U);
    const Section section = pumpTestSection(project, picture, 0);
    EXPECT_EQ(std::count_if(section.closing.begin(), section.closing.end(),
                            [](const Statement& one) { return one.subject == "shutoff test"; }),
              static_cast<std::ptrdiff_t>(count));
}

}  // namespace
}  // namespace ww::report
