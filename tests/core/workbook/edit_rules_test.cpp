#include "core/workbook/edit_rules.h"

#include <gtest/gtest.h>

#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using project::AnyRecord;
using project::Edit;
using project::Reading;
using project::ReadingStatus;
using project::RecordKind;
using project::RoundState;
using support::CountingIds;
using support::WholeJobIds;

class EditRules : public testing::Test {
  protected:
    EditRules() {
        for (AnyRecord& record : support::wholeJob().put) {
            std::visit([&](auto& r) { m_project.put(r); }, record);
        }
    }
    void setState(RoundState state) {
        auto round = m_project.rounds().at(m_ids.round);
        round.state = state;
        m_project.put(round);
    }
    /// Code of the refusal, empty where there is none.
    std::string refusalOf(Edit edit) const {
        const auto fault = refusal(m_project, edit);
        return fault ? std::string(fault->code()) : "";
    }
    std::string putting(std::vector<AnyRecord> records) const {
        return refusalOf({"", std::move(records), {}, true});
    }
    std::string erasing(RecordKind kind, const base::Id& id) const {
        return refusalOf({"", {}, {{kind, id}}, true});
    }

    Reading newReading(int sequence = 7) const {
        return support::wholeJobReading(CountingIds::numbered(500), sequence, m_ids.near, "20");
    }
    Reading correction() const {
        Reading reading = newReading();
        reading.supersedes = m_ids.first;
        return reading;
    }
    Reading superseded() const {
        Reading reading = m_project.readings().at(m_ids.first);
        reading.status = ReadingStatus::Superseded;
        reading.reason = "lost a digit";
        return reading;
    }

    project::Project m_project;
    WholeJobIds m_ids;
};

TEST_F(EditRules, openRoundsTakeReadings) {
    EXPECT_EQ(putting({newReading()}), "");
    EXPECT_EQ(putting({correction(), superseded()}), "");
    EXPECT_EQ(erasing(RecordKind::Reading, m_ids.first), "");
}

TEST_F(EditRules, closedRoundsTakeCorrectionsOnly) {
    for (const RoundState state : {RoundState::Closed, RoundState::Sent, RoundState::SentBack}) {
        setState(state);
        EXPECT_EQ(putting({newReading()}), "round_takes_corrections_only");
        EXPECT_EQ(putting({correction()}), "");
        EXPECT_EQ(putting({superseded(), correction()}), "");
        EXPECT_EQ(putting({superseded()}), "reading_locked") << "without the reading that corrects it";
        Reading changed = superseded();
        changed.dp.reset();
        EXPECT_EQ(putting({changed, correction()}), "reading_locked") << "more than the mark changed";
        Reading elsewhere = correction();
        elsewhere.branch = m_ids.far;
        EXPECT_EQ(putting({elsewhere}), "round_takes_corrections_only")
            << "corrects a reading of another branch";
        EXPECT_EQ(erasing(RecordKind::Reading, m_ids.first), "reading_locked");
        EXPECT_EQ(putting({m_project.readings().at(m_ids.first)}), "") << "nothing changes";
    }
}

TEST_F(EditRules, aReadingThatWaitsToBeSentTakesItsFirstReasonAlone) {
    Reading plain = m_project.readings().at(m_ids.first);
    plain.reason.clear();
    m_project.put(plain);
    Reading explained = plain;
    explained.reason = "hoses reversed";
    Reading changed = explained;
    changed.note = "and a note";
    for (const RoundState state : {RoundState::Closed, RoundState::SentBack}) {
        setState(state);
        EXPECT_EQ(putting({explained}), "");
        EXPECT_EQ(putting({changed}), "reading_locked");
    }
    for (const RoundState state : {RoundState::Sent, RoundState::Accepted}) {
        setState(state);
        EXPECT_EQ(putting({explained}), "reading_locked");
    }
    setState(RoundState::Closed);
    m_project.put(explained);
    EXPECT_EQ(putting({plain}), "reading_locked") << "a reason stays";
}

TEST_F(EditRules, acceptedRoundsTakeNothing) {
    setState(RoundState::Accepted);
    EXPECT_EQ(putting({newReading()}), "accepted_round_locked");
    EXPECT_EQ(putting({correction()}), "accepted_round_locked");
    EXPECT_EQ(putting({superseded(), correction()}), "reading_locked");
    EXPECT_EQ(erasing(RecordKind::PumpReading, m_ids.pumpReading), "reading_locked");
    auto round = m_project.rounds().at(m_ids.round);
    round.state = RoundState::SentBack;
    round.reason = "meter was off";
    EXPECT_EQ(putting({round}), "") << "acceptance can be withdrawn";
    EXPECT_EQ(putting({round, newReading()}), "accepted_round_locked") << "but not in passing";
}

TEST_F(EditRules, pumpReadingsAreLockedLikewise) {
    setState(RoundState::Closed);
    auto reading = m_project.pumpReadings().at(m_ids.pumpReading);
    reading.id = CountingIds::numbered(501);
    reading.sequence = 2;
    EXPECT_EQ(putting({reading}), "round_takes_corrections_only");
    reading.supersedes = m_ids.pumpReading;
    EXPECT_EQ(putting({reading}), "");
}

TEST_F(EditRules, readingsDoNotSlipOutOfALockedRound) {
    setState(RoundState::Closed);
    project::Round other;
    other.id = CountingIds::numbered(502);
    other.number = 2;
    m_project.put(other);
    Reading moved = m_project.readings().at(m_ids.first);
    moved.round = other.id;
    EXPECT_EQ(putting({moved}), "reading_locked");
    Reading inside = newReading(1);
    inside.round = other.id;
    m_project.put(inside);
    inside.round = m_ids.round;
    inside.sequence = 9;
    EXPECT_EQ(putting({inside}), "round_takes_corrections_only");
}

TEST_F(EditRules, lockedRoundsKeepTheirNumberAndKind) {
    setState(RoundState::Closed);
    auto round = m_project.rounds().at(m_ids.round);
    round.number = 5;
    EXPECT_EQ(putting({round}), "round_locked");
    EXPECT_EQ(erasing(RecordKind::Round, m_ids.round), "round_locked");
}

TEST_F(EditRules, referencesLeadToRecords) {
    Reading reading = newReading();
    reading.branch = CountingIds::numbered(600);
    EXPECT_EQ(putting({reading}), "reference_missing");
    reading = newReading();
    reading.branch = m_ids.pump;
    EXPECT_EQ(putting({reading}), "reference_missing") << "there is such a record, but of another kind";
    reading = newReading();
    reading.person = CountingIds::numbered(600);
    EXPECT_EQ(putting({reading}), "reference_missing");
    EXPECT_EQ(putting({project::Person{*reading.person, "C. New"}, reading}), "") << "added in the same edit";
}

TEST_F(EditRules, whatIsUsedIsNotErased) {
    EXPECT_EQ(erasing(RecordKind::Branch, m_ids.riser), "still_in_use");
    EXPECT_EQ(erasing(RecordKind::Branch, m_ids.near), "still_in_use");
    EXPECT_EQ(erasing(RecordKind::ValveModel, m_ids.valve), "still_in_use");
    EXPECT_EQ(erasing(RecordKind::Instrument, m_ids.instrument), "still_in_use");
    EXPECT_EQ(erasing(RecordKind::Pump, m_ids.pump), "still_in_use");
    EXPECT_EQ(
        refusalOf(
            {"", {}, {{RecordKind::Pump, m_ids.pump}, {RecordKind::PumpReading, m_ids.pumpReading}}, true}),
        "")
        << "together with what uses it";
    auto branch = m_project.branches().at(m_ids.near);
    branch.valve.reset();
    EXPECT_EQ(refusalOf({"", {branch}, {{RecordKind::ValveModel, m_ids.valve}}, true}), "")
        << "what used it uses it no more";
}

TEST_F(EditRules, aPersonWhomTheRecordNamesStays) {
    EXPECT_EQ(erasing(RecordKind::Person, m_ids.person), "still_in_use") << "by a reading";
    const project::Person boss{CountingIds::numbered(600), "K. Moor"};
    m_project.put(boss);
    EXPECT_EQ(erasing(RecordKind::Person, boss.id), "");
    auto round = m_project.rounds().at(m_ids.round);
    round.decidedBy = boss.name;
    m_project.put(round);
    EXPECT_EQ(erasing(RecordKind::Person, boss.id), "person_named");
}

TEST_F(EditRules, theMessageNamesBothSides) {
    const auto fault = refusal(m_project, {"", {}, {{RecordKind::ValveModel, m_ids.valve}}, true});
    ASSERT_TRUE(fault.has_value());
    EXPECT_EQ(base::english(*fault),
              "valve V 25 is still used by branch B-05; remove that first or let it use another");
}

TEST_F(EditRules, namesAreUniqueAmongTheirKind) {
    auto branch = m_project.branches().at(m_ids.near);
    branch.tag = "B-06";
    EXPECT_EQ(putting({branch}), "name_taken");
    auto other = m_project.branches().at(m_ids.far);
    other.tag = "B-05";
    EXPECT_EQ(putting({branch, other}), "") << "two branches may exchange their tags";
    branch.tag = "P-1";
    EXPECT_EQ(putting({branch}), "") << "a pump's tag is no branch's";
    auto pump = m_project.pumps().at(m_ids.pump);
    pump.id = CountingIds::numbered(601);
    EXPECT_EQ(putting({pump}), "name_taken");
    auto valve = m_project.valves().at(m_ids.valve);
    valve.id = CountingIds::numbered(602);
    EXPECT_EQ(putting({valve}), "name_taken");
    valve.size = "32";
    EXPECT_EQ(putting({valve}), "");
    EXPECT_EQ(putting({project::Person{CountingIds::numbered(603), "A. Fields"}}), "name_taken");
}

TEST_F(EditRules, roundNumbersAndSequencesAreUnique) {
    project::Round twin;
    twin.id = CountingIds::numbered(604);
    twin.number = 1;
    EXPECT_EQ(putting({twin}), "round_number_taken");
    EXPECT_EQ(putting({newReading(1)}), "sequence_taken");
    Reading second = newReading(8);
    second.id = CountingIds::numbered(605);
    EXPECT_EQ(putting({newReading(8), second}), "sequence_taken");
    EXPECT_EQ(putting({newReading(7), second}), "");
}

TEST_F(EditRules, thereIsAlwaysExactlyOneJob) {
    auto job = m_project.job();
    EXPECT_EQ(erasing(RecordKind::Job, job.id), "exactly_one_job");
    job.id = CountingIds::numbered(606);
    EXPECT_EQ(putting({job}), "exactly_one_job");
    Edit two = support::wholeJob();
    two.put.emplace_back(job);
    EXPECT_EQ(refusalOfContent(two)->code(), "exactly_one_job");
    EXPECT_EQ(refusalOfContent(Edit{})->code(), "exactly_one_job");
    EXPECT_FALSE(refusalOfContent(support::wholeJob()).has_value());
}

TEST_F(EditRules, noBranchIsFedFromItself) {
    auto riser = m_project.branches().at(m_ids.riser);
    riser.parent = riser.id;
    EXPECT_EQ(putting({riser}), "fed_from_itself");
    riser.parent = m_ids.near;
    EXPECT_EQ(putting({riser}), "fed_from_itself");
    auto near = m_project.branches().at(m_ids.near);
    near.parent.reset();
    EXPECT_EQ(putting({riser, near}), "") << "the two change places";
}

TEST_F(EditRules, movesOfReviewAreToldFromOtherWork) {
    auto round = m_project.rounds().at(m_ids.round);
    const auto moving = [&](RoundState to) {
        round.state = to;
        return movesReview(m_project, {"", {round}, {}, true});
    };
    EXPECT_FALSE(moving(RoundState::Open));
    EXPECT_FALSE(moving(RoundState::Closed));
    EXPECT_TRUE(moving(RoundState::Sent));
    setState(RoundState::Accepted);
    EXPECT_FALSE(moving(RoundState::Accepted)) << "the state stays";
    EXPECT_TRUE(moving(RoundState::Closed)) << "an acceptance is withdrawn";
    EXPECT_FALSE(movesReview(m_project, {"", {newReading()}, {}, true}));
}

TEST_F(EditRules, aContentMayHoldClosedRounds) {
    Edit content = support::wholeJob();
    for (AnyRecord& record : content.put) {
        if (auto* round = std::get_if<project::Round>(&record)) {
            round->state = RoundState::Accepted;
        }
    }
    EXPECT_FALSE(refusalOfContent(content).has_value());
}

}  // namespace
}  // namespace ww::workbook
