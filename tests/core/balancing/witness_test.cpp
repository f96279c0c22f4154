// The witness round and the list before signing. Limits: 10 % of the reported flow, 10 % of the sample
// (common practice, no source).
#include "core/balancing/witness.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/index_proof.h"
#include "core/balancing/ready_to_sign.h"
#include "core/balancing/review_steps.h"
#include "core/balancing/walk_progress.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::balancing {
namespace {

using project::RoundKind;
using project::RoundState;

/// Three risers of ten terminals; flows from 90 to 110 % of design, read with a meter in a final round.
FieldJob risers() {
    FieldJob job;
    const base::Id valve = usualValve(job);
    for (const char* riser : {"R1", "R2", "R3"}) {
        job.branch(riser, "", "");
        for (int i = 0; i < 10; ++i) {
            job.branch(std::string(riser) + "-" + std::to_string(i), riser, "4", valve);
        }
    }
    job.instrument("1", "");
    job.round(RoundKind::Final, RoundState::Accepted);
    int step = 0;
    for (const project::Branch& branch :
         std::vector<project::Branch>(job.project().branches().begin(), job.project().branches().end())) {
        if (branch.valve) {
            readAs(job, branch.tag, 0.9 + 0.2 * static_cast<double>((step * 7) % 30) / 29.0);
            ++step;
        }
    }
    return job;
}

std::vector<Id> sampleOf(const FieldJob& job, std::uint32_t seed, double fraction) {
    return witnessSample(job.project(), assessNewest(job), seed, Ratio::si(fraction));
}

TEST(Witness, theSampleHoldsIndexExtremesAndEveryRiser) {
    const FieldJob job = risers();
    const Assessment all = assessNewest(job);
    std::size_t lowest = job.indexOf("R1-0");
    std::size_t highest = lowest;
    for (const BranchResult& result : all.branches) {
        if (result.isTerminal) {
            lowest = *result.ofDesign < *all.branches[lowest].ofDesign ? result.branch : lowest;
            highest = *result.ofDesign > *all.branches[highest].ofDesign ? result.branch : highest;
        }
    }
    std::set<std::vector<Id>> different;
    for (std::uint32_t seed = 1; seed <= 20; ++seed) {
        const std::vector<Id> sample = sampleOf(job, seed, 0.2);
        EXPECT_EQ(sample.size(), 6U) << "a fifth of 30";
        const auto holds = [&](std::size_t branch) {
            return std::find(sample.begin(), sample.end(), job.project().branches()[branch].id) !=
                   sample.end();
        };
        EXPECT_TRUE(holds(lowest) && holds(highest) && holds(*all.index.terminal));
        std::set<std::optional<Id>> parents;
        for (const Id& id : sample) {
            parents.insert(job.project().branches().at(id).parent);
        }
        EXPECT_EQ(parents.size(), 3U);
        EXPECT_EQ(sample, sampleOf(job, seed, 0.2)) << "the same seed, the same sample";
        different.insert(sample);
    }
    EXPECT_GT(different.size(), 10U) << "another seed, another sample";
    EXPECT_EQ(sampleOf(job, 1, 1.0).size(), 30U);
    EXPECT_GE(sampleOf(job, 1, 0.0).size(), 3U);
}

/// A witness round on top of risers(), read by somebody else with another meter; `off` terminals deviate.
FieldJob witnessed(std::size_t off, double offRatio = 1.2) {
    FieldJob job = risers();
    support::CountingIds ids(5000);
    const auto edit =
        openWitnessRound(job.project(), 42, Ratio::si(1.0), {std::nullopt, std::nullopt, ids, {}});
    EXPECT_TRUE(edit);
    const Assessment reported = assessNewest(job);
    const project::Round made = std::get<project::Round>(edit->put.front());
    EXPECT_EQ(made.sampleSeed->text(), "42");
    job.round(RoundKind::Witness, RoundState::Open);
    job.change(job.project().rounds().at(job.newestRound()),
               [&](project::Round& r) { r.sample = made.sample; });
    job.instrument("1", "");
    for (std::size_t i = 0; i < made.sample.size(); ++i) {
        const project::Branch& branch = job.project().branches().at(made.sample[i].branch);
        const BranchResult& before = reported.branches[job.indexOf(branch.tag)];
        readAs(job, branch.tag, before.ofDesign->si() * (i < off ? offRatio : 1.02));
    }
    return job;
}

TEST(Witness, isConfirmedUpToATenthOfTheSample) {
    for (const auto& [off, verdict] : {std::pair{std::size_t{0}, WitnessVerdict::Confirmed},
                                       std::pair{std::size_t{3}, WitnessVerdict::Confirmed},
                                       std::pair{std::size_t{4}, WitnessVerdict::NotConfirmed}}) {
        const FieldJob job = witnessed(off);
        const WitnessResult result = witnessResult(job.project(), job.newestRound());
        EXPECT_EQ(result.rows.size(), 30U);
        EXPECT_EQ(result.failing, off);
        EXPECT_EQ(result.verdict, verdict);
        const Assessment all = assessNewest(job);
        EXPECT_EQ(findingOf(all, kWitnessDeviates) != nullptr, off > 0);
        EXPECT_EQ(findingOf(all, kWitnessSameInstrument), nullptr);
    }
    EXPECT_EQ(witnessResult(witnessed(4, 1.09).project(), witnessed(4, 1.09).newestRound()).failing, 0U);
}

TEST(Witness, asksForAnotherReaderAndInstrument) {
    FieldJob job = witnessed(0);
    project::Person reader;
    reader.id = Id{{9}};
    reader.name = "A. Fields";
    job.project().put(reader);
    const std::vector<project::Reading> readings(job.project().readings().begin(),
                                                 job.project().readings().end());
    for (project::Reading reading : readings) {
        reading.person = reader.id;
        reading.instrument = job.project().instruments()[0].id;
        job.project().put(reading);
    }
    const Assessment all = assessNewest(job);
    EXPECT_NE(findingOf(all, kWitnessSameReader), nullptr);
    EXPECT_NE(findingOf(all, kWitnessSameInstrument), nullptr);
}

TEST(Witness, onlyTheSampleIsAskedFor) {
    FieldJob job = risers();
    const std::vector<Id> sample = sampleOf(job, 7, 0.1);
    job.round(RoundKind::Witness, RoundState::Open);
    job.change(job.project().rounds().at(job.newestRound()), [&](project::Round& r) {
        for (const Id& id : sample) {
            r.sample.push_back({id});
        }
    });
    EXPECT_EQ(openItems(job.project(), job.newestRound()).size(), sample.size());
    EXPECT_EQ(witnessResult(job.project(), job.newestRound()).verdict, WitnessVerdict::Unfinished);
    EXPECT_EQ(assessNewest(job).terminalCount, sample.size());
}

TEST(Witness, cannotBeginBeforeAnythingIsRead) {
    FieldJob job = flatLoop(2);
    support::CountingIds ids(5000);
    const auto edit =
        openWitnessRound(job.project(), 1, Ratio::si(0.1), {std::nullopt, std::nullopt, ids, {}});
    ASSERT_FALSE(edit);
    EXPECT_EQ(edit.fault().code(), "nothing_to_witness");
}

std::map<std::string, SignState> linesOf(const FieldJob& job) {
    const project::Round* round = reportedRound(job.project());
    std::map<std::string, SignState> states;
    for (const SignLine& line :
         readyToSign(job.project(),
                     round == nullptr ? assessLast(job.project()) : assess(job.project(), round->id))) {
        states[std::string(line.text.code())] = line.state;
    }
    return states;
}

/// Source: own decision. What is done already is not asked for.
TEST(ReadyToSign, asksForTheStepThatTheFinalRoundWaitsFor) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final, RoundState::Open);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    const struct {
        RoundState state;
        const char* code;
    } kSteps[] = {{RoundState::Open, "sign_final_open"},
                  {RoundState::Closed, "sign_final_not_accepted"},
                  {RoundState::Sent, "sign_final_sent"},
                  {RoundState::SentBack, "sign_final_sent_back"}};
    for (const auto& asked : kSteps) {
        job.change(job.project().rounds().at(job.newestRound()),
                   [&](project::Round& round) { round.state = asked.state; });
        auto lines = linesOf(job);
        for (const auto& other : kSteps) {
            EXPECT_EQ(lines.contains(other.code), other.state == asked.state)
                << asked.code << ", " << other.code;
        }
        EXPECT_EQ(lines[asked.code], SignState::Blocks);
    }
}

TEST(ReadyToSign, namesWhatIsMissingAndTakesReasons) {
    FieldJob job = flatLoop(2);
    EXPECT_EQ(linesOf(job)["sign_no_final"], SignState::Blocks);
    job.round(RoundKind::Final, RoundState::Closed);
    readAs(job, "A", 1.0);
    auto lines = linesOf(job);
    EXPECT_EQ(lines["sign_unread"], SignState::Blocks);
    EXPECT_EQ(lines["sign_final_not_accepted"], SignState::Blocks);
    EXPECT_EQ(lines["sign_readiness_missing"], SignState::NeedsReason);
    EXPECT_EQ(lines["sign_verdict_open"], SignState::NeedsReason);
    readAs(job, "B", 1.0);
    job.change(job.project().rounds().at(job.newestRound()),
               [](project::Round& r) { r.state = RoundState::Accepted; });
    lines = linesOf(job);
    EXPECT_EQ(lines["sign_read"], SignState::Good);
    EXPECT_EQ(lines["sign_rounds"], SignState::Good);
    EXPECT_EQ(lines["sign_verdict"], SignState::Good);
    EXPECT_EQ(lines["sign_index"], SignState::Good);
    EXPECT_FALSE(isReady(readyToSign(job.project(), assessNewest(job))));
    support::CountingIds ids(900);
    const auto edit = giveFindingReason(job.project(), {&kSignReadinessMissing, "", {}},
                                        "commissioned before", {"K. Moor", ids, {}});
    EXPECT_EQ(edit.label, "reason before signing") << "what concerns the whole job has no subject";
    job.project().put(std::get<project::FindingReason>(edit.put.front()));
    const auto ready = readyToSign(job.project(), assessNewest(job));
    EXPECT_TRUE(isReady(ready));
    EXPECT_EQ(ready.front().reason, "commissioned before");
}

TEST(ReadyToSign, anAcceptanceByTheReaderIsToldAndWantsItsReason) {
    FieldJob job = flatLoop(2);
    project::Person reader;
    reader.id = Id{{9}};
    reader.name = "K. Moor";
    reader.role = project::PersonRole::Supervisor;
    job.project().put(reader);
    job.round(RoundKind::Final, RoundState::Accepted);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    job.change(job.project().readings()[0], [&](project::Reading& reading) { reading.person = reader.id; });
    job.change(job.project().rounds().at(job.newestRound()),
               [](project::Round& round) { round.decidedBy = "K. Moor"; });
    auto lines = linesOf(job);
    EXPECT_EQ(lines["sign_own_acceptance"], SignState::NeedsReason);
    EXPECT_FALSE(lines.contains("sign_rounds"));
    job.change(job.project().rounds().at(job.newestRound()),
               [](project::Round& round) { round.reason = "one-man firm"; });
    lines = linesOf(job);
    EXPECT_FALSE(lines.contains("sign_own_acceptance"));
    EXPECT_EQ(lines["sign_own_acceptance_why"], SignState::Warns);
    EXPECT_FALSE(lines.contains("sign_rounds"));
}

TEST(ReadyToSign, warnsOfReadingsThatNameNobody) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final, RoundState::Accepted);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    EXPECT_FALSE(linesOf(job).contains("sign_nobody")) << "this job keeps no people";
    project::Person reader;
    reader.id = Id{{9}};
    reader.name = "A. Fields";
    job.project().put(reader);
    EXPECT_EQ(linesOf(job)["sign_nobody"], SignState::Warns);
    EXPECT_TRUE(isReady({{{&kSignNobody, "", {"1", "2"}}, SignState::Warns, "", std::nullopt}}))
        << "it holds nothing up";
    const std::vector<project::Reading> readings(job.project().readings().begin(),
                                                 job.project().readings().end());
    for (project::Reading reading : readings) {
        reading.person = reader.id;
        job.project().put(reading);
    }
    EXPECT_FALSE(linesOf(job).contains("sign_nobody"));
}

TEST(ReadyToSign, asksForTheNameOfTheCodeWhereItsClauseIsTested) {
    FieldJob job = flatLoop(2);
    const auto isAsked = [&](project::CodeForm form, const char* edition, const char* clause) {
        project::Job changed = job.project().job();
        changed.codeForm = form;
        changed.codeEdition = edition;
        changed.codeClause = clause;
        job.project().put(changed);
        return linesOf(job).contains("sign_code_unnamed");
    };
    using project::CodeForm;
    EXPECT_FALSE(isAsked(CodeForm::NotStated, "", "")) << "no code binds this job";
    EXPECT_TRUE(isAsked(CodeForm::PercentOnly, "", ""));
    EXPECT_EQ(linesOf(job)["sign_code_unnamed"], SignState::Warns) << "it holds nothing up";
    EXPECT_TRUE(isAsked(CodeForm::PercentOnly, "county code, 2024", ""));
    EXPECT_TRUE(isAsked(CodeForm::NotStated, "", "6.4"));
    EXPECT_FALSE(isAsked(CodeForm::PercentOnly, "county code, 2024", "6.4"));
}

TEST(ReadyToSign, anotherOpenTerminalBelowTheIndexNeedsAReason) {
    const FieldJob before = rivalLoop(RoundState::Accepted);
    const auto lines = linesOf(before);
    EXPECT_EQ(lines.count("sign_index"), 0U) << "the index is not shown";
    ASSERT_EQ(lines.count("sign_path_open"), 1U);
    EXPECT_EQ(lines.at("sign_path_open"), SignState::Warns) << "what is not shown has no tick";
    auto onShare = linesOf(rivalLoop(RoundState::Accepted, 1.03));
    EXPECT_FALSE(onShare.contains("sign_verdict")) << "nothing is ticked while the index is not proved";
    EXPECT_EQ(onShare["sign_verdict_unproved"], SignState::Warns);
    ASSERT_EQ(lines.count("index_rival"), 1U);
    EXPECT_EQ(lines.at("index_rival"), SignState::NeedsReason);
    FieldJob job = before;
    support::CountingIds ids(900);
    const auto edit = giveFindingReason(job.project(), {&kIndexRival, "A", {}},
                                        "within what the meter can read", {"K. Moor", ids, {}});
    job.project().put(std::get<project::FindingReason>(edit.put.front()));
    EXPECT_EQ(linesOf(job).at("index_rival"), SignState::Reasoned);
}

TEST(IndexProof, holdsInPartsThatAreToldApart) {
    const FieldJob job = rivalLoop(RoundState::Closed);
    const IndexProof proof = indexProof(job.project(), assessNewest(job));
    EXPECT_TRUE(proof.isKnown);
    EXPECT_TRUE(proof.isFullyOpen());
    EXPECT_TRUE(proof.isReadable);
    EXPECT_EQ(proof.rivals, std::vector<std::size_t>{job.indexOf("A")});
    EXPECT_FALSE(proof.isProved());
    const FieldJob none = flatLoop(2);
    EXPECT_FALSE(indexProof(none.project(), assessLast(none.project())).isKnown);
}

TEST(IndexProof, isUndecidedWithinWhatTheMeterTells) {
    FieldJob job = twoRisers();
    job.instrument("2", "");
    job.round(RoundKind::Final);
    job.settingOnly("R1", "4");
    job.settingOnly("R2", "4");
    readAs(job, "A", 0.975);
    readAs(job, "B", 1.05);
    readAs(job, "C", 0.99);
    readAs(job, "D", 0.98);
    const auto proof = [&] { return indexProof(job.project(), assessNewest(job)); };
    EXPECT_TRUE(proof().rivals.empty());
    EXPECT_EQ(proof().undecidedRivals, std::vector<std::size_t>{job.indexOf("A")});
    EXPECT_FALSE(proof().isAlone());
    EXPECT_TRUE(proof().isReadable);
    EXPECT_EQ(proof().readableMinimum->si(), 1000)
        << "the usual one, where neither valve nor meter says more";
    EXPECT_FALSE(proof().undecidedDp.has_value());
    // D shows 24.0 kPa: 2 % of it are 0.48 kPa (by hand).
    const auto leastDp = [&](const char* dp) {
        job.change(*job.project().valves().begin(),
                   [&](project::ValveModel& valve) { valve.minimumDp = job.pressure(dp); });
    };
    leastDp("24.3");
    EXPECT_FALSE(proof().isReadable);
    ASSERT_TRUE(proof().undecidedDp.has_value());
    EXPECT_NEAR(proof().undecidedDp->si(), 480, 5);
    leastDp("25");
    EXPECT_FALSE(proof().isReadable);
    EXPECT_FALSE(proof().undecidedDp.has_value()) << "surely too small";
}

TEST(ReadyToSign, findingsCommentsAndMergingStandInTheWay) {
    FieldJob job = flatLoop(2);
    job.round(RoundKind::Final, RoundState::Accepted);
    readAs(job, "A", 1.0);
    readAs(job, "B", 0.7);
    EXPECT_EQ(linesOf(job)["final_off_design"], SignState::Blocks);
    support::CountingIds ids(900);
    const auto comment =
        addComment(job.project(), {job.newestRound(), {}, {}, ""}, "Which meter?", {"K. Moor", ids, {}});
    job.project().put(std::get<project::Comment>(comment.put.front()));
    EXPECT_EQ(linesOf(job)["comments_open"], SignState::Blocks);
    project::MergeConflict conflict;
    conflict.id = ids.next();
    job.project().put(conflict);
    EXPECT_EQ(linesOf(job)["sign_merge_open"], SignState::Blocks);
}

}  // namespace
}  // namespace ww::balancing
