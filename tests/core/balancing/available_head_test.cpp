// The head available at a valve, from what tells it, and an aim above it. H = dp + r q^2 is two resistances
// in series (any textbook of hydraulics).
#include "core/balancing/available_head.h"

#include <gtest/gtest.h>

#include "tests/support/solved_job.h"

namespace ww::balancing {
namespace {

using quantity::Unit;

class AvailableHeadTest : public ::testing::Test {
  protected:
    /// A dp in an adjusting round, of that purpose.
    void store(const std::string& tag, double dp_kPa, project::ReadingPurpose purpose, int sequence) {
        project::Project& project = m_project;
        if (project.lastRound()->kind != project::RoundKind::Adjusting) {
            project::Round round;
            round.id = m_ids.next();
            round.number = 2;
            round.kind = project::RoundKind::Adjusting;
            round.state = project::RoundState::Open;
            project.put(round);
        }
        project::Reading made;
        made.id = m_ids.next();
        made.round = project.lastRound()->id;
        made.branch = project.branchTagged(tag)->id;
        made.sequence = sequence;
        made.purpose = purpose;
        made.setting = *base::Decimal::parse(purpose == project::ReadingPurpose::ShutValve ? "0" : "3");
        made.dp = quantity::measuredDifference(base::Decimal::fromNumber(dp_kPa, 1), Unit::Kilopascal,
                                               project.fluid().density());
        project.put(made);
    }
    static double kilopascal(const std::optional<AvailableHead>& found) {
        return found ? found->head.in(Unit::Kilopascal) : 0;
    }

    support::SolvedJob m_job{4};
    project::Project m_project = m_job.project();
    support::CountingIds m_ids{9000};
};

TEST_F(AvailableHeadTest, isWhatTheShutValveShows) {
    store("T-02", 61.5, project::ReadingPurpose::ShutValve, 100);
    store("T-02", 30.0, project::ReadingPurpose::Try, 101);
    const std::size_t branch = m_project.branches().indexOf(m_project.branchTagged("T-02")->id);
    const auto found = availableHead(m_project, branch, {}, nullptr);
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(found->source, HeadSource::ShutValve);
    EXPECT_NEAR(kilopascal(found), 61.5, 1e-9);
    // Another valve was turned: the head is another one now.
    store("T-03", 30.0, project::ReadingPurpose::Try, 102);
    EXPECT_FALSE(availableHead(m_project, branch, {}, nullptr).has_value());
}

TEST_F(AvailableHeadTest, followsFromTwoTriesOrTheLearnedLoop) {
    const auto dpAt = [&](double setting) {
        return PressureDifference::from(std::stod(m_job.readAt({{"T-02", setting}}, "T-02")),
                                        Unit::Kilopascal);
    };
    const std::size_t branch = m_project.branches().indexOf(m_project.branchTagged("T-02")->id);
    const std::vector<AimTry> tries{{Setting::si(3), dpAt(3)}, {Setting::si(2), dpAt(2)}};
    const auto byTries = availableHead(m_project, branch, tries, nullptr);
    ASSERT_TRUE(byTries.has_value());
    EXPECT_EQ(byTries->source, HeadSource::Tries);
    EXPECT_GT(byTries->head, dpAt(2));
    const LearnedLoop learned = learn(m_project);
    const auto byLoop = availableHead(m_project, branch, {}, &learned);
    ASSERT_TRUE(byLoop.has_value());
    EXPECT_EQ(byLoop->source, HeadSource::Learned);
    // With the valve shut the main loses less, so that it shows more than what is there while water passes.
    EXPECT_GT(kilopascal(byLoop), kilopascal(byTries));
    EXPECT_LT(kilopascal(byLoop), 1.2 * kilopascal(byTries));
}

TEST_F(AvailableHeadTest, anAimIsBeyondItWhereItsWholeBandIs) {
    AimRow row;
    row.low = PressureDifference::from(60, Unit::Kilopascal);
    AvailableHead available;
    available.head = PressureDifference::from(61, Unit::Kilopascal);
    EXPECT_FALSE(isBeyond(available, row));
    available.head = PressureDifference::from(59, Unit::Kilopascal);
    EXPECT_TRUE(isBeyond(available, row));
}

}  // namespace
}  // namespace ww::balancing
