// Every step of review that a workbook's journal tells. The steps are a decision of this project; no outside
// source.
#include "core/workbook/round_steps.h"

#include <gtest/gtest.h>

#include "core/balancing/review_steps.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using project::RoundStep;
using project::RoundStepKind;

class RoundSteps : public testing::Test {
  protected:
    RoundSteps() {
        auto made = Workbook::create(m_folder.file("job.wwj"), support::wholeJob(),
                                     {m_clock, m_ids, "A. Fields", "LT-1"});
        EXPECT_TRUE(made.ok());
        m_job = std::move(*made);
        project::Person boss;
        boss.id = m_ids.next();
        boss.name = "K. Moor";
        boss.role = project::PersonRole::Supervisor;
        apply({"", {boss}, {}, true});
        project::Round closed = m_job->project().rounds().at(round);
        closed.state = project::RoundState::Closed;
        apply({"", {closed}, {}, true});
    }
    const project::Project& project() const { return m_job->project(); }
    void apply(const project::Edit& edit) {
        const auto done = m_job->apply(edit);
        ASSERT_TRUE(done.ok()) << base::english(done.fault());
    }
    balancing::ReviewContext by(const char* person) {
        m_job->setPerson(person);
        return {person, m_ids, m_job->now()};
    }
    void send() {
        project::Round sent = project().rounds().at(round);
        sent.state = project::RoundState::Sent;
        sent.sentBy = "A. Fields";
        apply({"", {sent}, {}, true});
    }
    /// "sent A. Fields" and so on.
    std::vector<std::string> told() const {
        const auto steps = roundSteps(*m_job);
        EXPECT_TRUE(steps.ok());
        std::vector<std::string> all;
        for (const RoundStep& step : *steps) {
            EXPECT_EQ(step.round, round);
            const char* const names[] = {"sent ", "accepted ", "sent back ", "withdrawn "};
            all.push_back(names[static_cast<int>(step.kind)] + step.person +
                          (step.reason.empty() ? "" : ": " + step.reason));
        }
        return all;
    }

    const base::Id round = support::WholeJobIds{}.round;
    support::TemporaryFolder m_folder;
    support::FixedClock m_clock;
    support::CountingIds m_ids{5000};
    std::unique_ptr<Workbook> m_job;
};

TEST_F(RoundSteps, keepsEveryDecisionWhateverCameAfterIt) {
    EXPECT_TRUE(told().empty());
    send();
    apply(balancing::addComment(project(), {round, {}, {}, ""}, "Meter zeroed?", by("K. Moor")));
    apply(balancing::sendBackRound(project(), round, "look again", by("K. Moor")));
    apply(balancing::answerComment(project(), project().comments()[0].id, "yes", by("A. Fields")));
    send();
    apply(balancing::resolveComment(project(), project().comments()[0].id, true, by("K. Moor")));
    apply(balancing::acceptRound(project(), round, "", by("K. Moor")));
    apply(balancing::withdrawRound(project(), round, "wrong meter", by("S. Olsen")));
    apply(balancing::withdrawRound(project(), round, "read again", by("A. Fields")));
    EXPECT_EQ(told(),
              (std::vector<std::string>{"sent A. Fields", "sent back K. Moor: look again", "sent A. Fields",
                                        "accepted K. Moor", "withdrawn S. Olsen: wrong meter",
                                        "withdrawn A. Fields: read again"}));
    const auto steps = roundSteps(*m_job);
    ASSERT_TRUE(steps.ok());
    EXPECT_EQ(steps->at(1).time, project().comments()[0].time) << "when it was decided";
    EXPECT_TRUE(steps->back().time.has_value()) << "of a withdrawal the journal knows it";
}

TEST_F(RoundSteps, whatCameInWithItsDecisionIsTold) {
    project::Round imported = project().rounds().at(round);
    imported.id = m_ids.next();
    imported.number += 1;
    imported.state = project::RoundState::Accepted;
    imported.sentBy = "A. Fields";
    imported.decidedBy = "K. Moor";
    apply({"", {imported}, {}, true});
    const auto steps = roundSteps(*m_job);
    ASSERT_TRUE(steps.ok());
    ASSERT_EQ(steps->size(), 2U);
    EXPECT_EQ(steps->at(0).kind, RoundStepKind::Sent);
    EXPECT_EQ(steps->at(1).kind, RoundStepKind::Accepted);
    EXPECT_EQ(steps->at(1).person, "K. Moor");
}

}  // namespace
}  // namespace ww::workbook
