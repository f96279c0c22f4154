// Which steps of a review a job allows. The steps are a decision of this project; no outside source.
#include "core/workbook/review_rules.h"

#include <gtest/gtest.h>

#include "core/workbook/edit_rules.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using project::AnyRecord;
using project::Edit;
using project::Round;
using project::RoundState;
using support::CountingIds;

class ReviewRules : public testing::Test {
  protected:
    ReviewRules() {
        for (AnyRecord& record : support::wholeJob().put) {
            std::visit([&](auto& r) { m_project.put(r); }, record);
        }
        project::Person boss;
        boss.id = CountingIds::numbered(900);
        boss.name = "K. Moor";
        boss.role = project::PersonRole::Supervisor;
        m_boss = boss.id;
        m_project.put(boss);
    }
    static project::Person engineer() {
        project::Person made;
        made.id = CountingIds::numbered(906);
        made.name = "S. Olsen";
        made.role = project::PersonRole::Engineer;
        return made;
    }
    /// One reading of the round names this person.
    void readBy(const base::Id& person) {
        project::Reading reading = m_project.readings().at(m_ids.first);
        reading.person = person;
        m_project.put(reading);
    }
    Round round(RoundState state) const {
        Round round = m_project.rounds().at(m_ids.round);
        round.state = state;
        round.sentBy = "A. Fields";
        round.decidedBy = "K. Moor";
        return round;
    }
    void be(RoundState state) { m_project.put(round(state)); }
    std::string putting(std::vector<AnyRecord> records) const {
        const auto fault = refusal(m_project, {"", std::move(records), {}, true});
        return fault ? std::string(fault->code()) : "";
    }
    project::Comment comment(std::uint64_t id = 901) const {
        project::Comment comment;
        comment.id = CountingIds::numbered(id);
        comment.round = m_ids.round;
        comment.branch = m_ids.near;
        comment.field = "dp";
        comment.text = "Meter zeroed?";
        comment.person = "K. Moor";
        return comment;
    }
    project::ReadinessLine openLine() const {
        project::ReadinessLine line;
        line.id = CountingIds::numbered(902);
        line.text = "strainers cleaned";
        return line;
    }

    project::Project m_project;
    support::WholeJobIds m_ids;
    base::Id m_boss;
};

TEST_F(ReviewRules, everyPairOfStatesIsAStepOrIsNone) {
    using enum RoundState;
    const std::vector<std::pair<RoundState, RoundState>> steps{
        {Open, Closed},   {Closed, Open},       {Closed, Sent},     {Sent, Accepted},
        {Sent, SentBack}, {Sent, Closed},       {SentBack, Closed}, {SentBack, Sent},
        {Accepted, Sent}, {Accepted, SentBack}, {Accepted, Closed}};
    for (const RoundState before : {Open, Closed, Sent, Accepted, SentBack}) {
        for (const RoundState after : {Open, Closed, Sent, Accepted, SentBack}) {
            be(before);
            Round moved = round(after);
            if (before != after) {
                moved.reason = "looked at again";
            }
            std::vector<AnyRecord> put{moved};
            if (after == SentBack) {
                put.emplace_back(comment());
            }
            const bool isStep = before == after || std::find(steps.begin(), steps.end(),
                                                             std::pair(before, after)) != steps.end();
            EXPECT_EQ(putting(std::move(put)), isStep ? "" : "round_step")
                << static_cast<int>(before) << " to " << static_cast<int>(after);
        }
    }
}

TEST_F(ReviewRules, withdrawingNeedsAReason) {
    for (const auto& [before, after] : {std::pair{RoundState::Sent, RoundState::Closed},
                                        std::pair{RoundState::Accepted, RoundState::Sent}}) {
        be(before);
        EXPECT_EQ(putting({round(after)}), "withdraw_with_reason");
        Round reasoned = round(after);
        reasoned.reason = "wrong meter";
        EXPECT_EQ(putting({reasoned}), "");
    }
}

TEST_F(ReviewRules, onlyAReviewerOtherThanTheSenderDecides) {
    be(RoundState::Closed);
    Round sent = round(RoundState::Sent);
    sent.sentBy.clear();
    EXPECT_EQ(putting({sent}), "sender_missing");
    be(RoundState::Sent);
    Round accepted = round(RoundState::Accepted);
    EXPECT_EQ(putting({accepted}), "");
    accepted.decidedBy = "A. Fields";
    EXPECT_EQ(putting({accepted}), "decider_not_at_desk") << "K. Moor is among the people of the job";
    accepted.decidedBy = accepted.sentBy = "K. Moor";
    EXPECT_EQ(putting({accepted}), "nobody_else_decides");
    m_project.put(engineer());
    EXPECT_EQ(putting({accepted}), "decider_is_sender");
}

TEST_F(ReviewRules, whoReadARoundDoesNotDecideOnIt) {
    be(RoundState::Sent);
    readBy(m_boss);
    EXPECT_EQ(putting({round(RoundState::Accepted)}), "nobody_else_decides");
    EXPECT_EQ(putting({round(RoundState::SentBack), comment()}), "nobody_else_decides");
    m_project.put(engineer());
    const auto refused = refusal(m_project, {"", {round(RoundState::Accepted)}, {}, true});
    ASSERT_TRUE(refused.has_value());
    EXPECT_TRUE(refused->is(kDeciderIsReader));
    EXPECT_EQ(refused->arguments.back(), "S. Olsen") << "who may";
    Round byAnother = round(RoundState::Accepted);
    byAnother.decidedBy = "S. Olsen";
    EXPECT_EQ(putting({byAnother}), "");
}

TEST_F(ReviewRules, theOnlyPersonOfAJobAcceptsWithAReason) {
    project::Project alone;
    for (AnyRecord& record : support::wholeJob().put) {
        if (!std::holds_alternative<project::Person>(record)) {
            std::visit([&](auto& r) { alone.put(r); }, record);
        }
    }
    alone.put(m_project.people().at(m_boss));
    m_project = std::move(alone);
    be(RoundState::Sent);
    readBy(m_boss);
    Round accepted = round(RoundState::Accepted);
    EXPECT_EQ(putting({accepted}), "accept_alone_with_reason");
    accepted.reason = "one-man firm";
    EXPECT_EQ(putting({accepted}), "");
}

TEST_F(ReviewRules, sendingBackNeedsAnOpenComment) {
    be(RoundState::Sent);
    EXPECT_EQ(putting({round(RoundState::SentBack)}), "send_back_with_comment");
    EXPECT_EQ(putting({round(RoundState::SentBack), comment()}), "") << "in the same edit";
    project::Comment resolved = comment();
    resolved.isResolved = true;
    m_project.put(resolved);
    EXPECT_EQ(putting({round(RoundState::SentBack)}), "send_back_with_comment");
    resolved.isResolved = false;
    m_project.put(resolved);
    EXPECT_EQ(putting({round(RoundState::SentBack)}), "");
}

TEST_F(ReviewRules, aRoundWithAnOpenCommentIsNotAccepted) {
    be(RoundState::Sent);
    EXPECT_EQ(putting({round(RoundState::Accepted), comment()}), "accept_comments_open")
        << "in the same edit";
    m_project.put(comment());
    project::Comment answer = comment(907);
    answer.answers = comment().id;
    answer.person = "A. Fields";
    m_project.put(answer);
    const auto refused = refusal(m_project, {"", {round(RoundState::Accepted)}, {}, true});
    ASSERT_TRUE(refused.has_value());
    EXPECT_TRUE(refused->is(kAcceptCommentsOpen)) << "an answer is no end of it";
    EXPECT_EQ(refused->arguments, (std::vector<std::string>{"1", "1", "Meter zeroed?"}));
    project::Comment resolved = comment();
    resolved.isResolved = true;
    EXPECT_EQ(putting({round(RoundState::Accepted), resolved}), "") << "in the same edit";
    m_project.put(resolved);
    EXPECT_EQ(putting({round(RoundState::Accepted)}), "");
    project::Comment elsewhere = comment(908);
    elsewhere.round.reset();
    m_project.put(elsewhere);
    EXPECT_EQ(putting({round(RoundState::Accepted)}), "") << "of the job, not of this round";
}

TEST_F(ReviewRules, aCommentThatWasAnsweredDoesNotSendBackAgain) {
    be(RoundState::Sent);
    m_project.put(comment());
    project::Comment answer = comment(907);
    answer.answers = comment().id;
    answer.person = "A. Fields";
    EXPECT_EQ(putting({round(RoundState::SentBack), answer}), "send_back_with_comment") << "in the same edit";
    m_project.put(answer);
    EXPECT_EQ(putting({round(RoundState::SentBack)}), "send_back_with_comment");
    project::Comment again = comment(908);
    again.answers = comment().id;
    EXPECT_EQ(putting({round(RoundState::SentBack), again}), "") << "who asked is not content";
    EXPECT_EQ(putting({round(RoundState::SentBack), comment(909)}), "") << "a new one";
}

TEST_F(ReviewRules, anAcceptedRoundIsNotTouched) {
    be(RoundState::Accepted);
    Round touched = round(RoundState::Accepted);
    touched.decidedBy = "C. Else";
    EXPECT_EQ(putting({touched}), "round_locked");
}

TEST_F(ReviewRules, aCommentStaysAsItWasWritten) {
    EXPECT_EQ(putting({comment()}), "");
    m_project.put(comment());
    project::Comment changed = comment();
    changed.text = "Never mind";
    EXPECT_EQ(putting({changed}), "comment_stays");
    changed = comment();
    changed.isResolved = true;
    changed.resolvedBy = "K. Moor";
    EXPECT_EQ(putting({changed}), "");
    project::Comment answer = comment(903);
    answer.answers = comment().id;
    EXPECT_EQ(putting({answer}), "");
    m_project.put(answer);
    project::Comment deeper = comment(904);
    deeper.answers = answer.id;
    EXPECT_EQ(putting({deeper}), "answer_to_answer");
    project::Comment empty = comment(905);
    empty.text = " \n";
    EXPECT_EQ(putting({empty}), "comment_empty");
}

TEST_F(ReviewRules, aSurveyWaitsForReadiness) {
    Round survey;
    survey.id = CountingIds::numbered(910);
    survey.number = 9;
    survey.kind = project::RoundKind::Survey;
    EXPECT_EQ(putting({survey}), "") << "no list, no gate";
    m_project.put(openLine());
    EXPECT_EQ(putting({survey}), "survey_not_ready");
    survey.readiness = "A. Fields: they come tomorrow";
    EXPECT_EQ(putting({survey}), "override_without_role");
    survey.readiness = "K. Moor: ";
    EXPECT_EQ(putting({survey}), "override_without_role");
    survey.readiness = "K. Moor: strainers follow on Monday";
    EXPECT_EQ(putting({survey}), "");
    survey.readiness.clear();
    survey.kind = project::RoundKind::Adjusting;
    EXPECT_EQ(putting({survey}), "");
    survey.kind = project::RoundKind::Survey;
    project::ReadinessLine optional = openLine();
    optional.isMandatory = false;
    m_project.put(optional);
    EXPECT_EQ(putting({survey}), "");
    for (const auto state : {project::ReadinessState::Done, project::ReadinessState::DoesNotApply}) {
        project::ReadinessLine done = openLine();
        done.state = state;
        m_project.put(done);
        EXPECT_EQ(putting({survey}), "");
    }
}

TEST_F(ReviewRules, deficienciesHaveNumbersOfTheirOwn) {
    project::Deficiency first;
    first.id = CountingIds::numbered(920);
    EXPECT_EQ(putting({first}), "deficiency_number");
    first.number = 1;
    EXPECT_EQ(putting({first}), "");
    m_project.put(first);
    EXPECT_EQ(putting({first}), "") << "changed in its place";
    project::Deficiency second = first;
    second.id = CountingIds::numbered(921);
    EXPECT_EQ(putting({second}), "deficiency_number");
    second.number = 2;
    project::Deficiency third = second;
    third.id = CountingIds::numbered(922);
    EXPECT_EQ(putting({second}), "");
    EXPECT_EQ(putting({second, third}), "deficiency_number") << "twice in one edit";
}

}  // namespace
}  // namespace ww::workbook
