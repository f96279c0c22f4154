// The verdict of the readings and the person who accepts, on page 1 and in the spreadsheet.
#include <gtest/gtest.h>

#include <tuple>
#include <vector>

#include "core/report/job_spreadsheet.h"
#include "core/report/report.h"
#include "tests/core/balancing/small_loop.h"

namespace ww::report {
namespace {

// What the readings say is no person's acceptance, and nothing is ticked while the index is not proved.
TEST(ResultSection, theReadingsVerdictStandsApartFromThePersonWhoAccepts) {
    using project::RoundState;
    const auto firstFacts = [](const project::Project& project) {
        const Section result = sectionOf(build(project, {}), kResult);
        return std::vector<Fact>(result.facts.begin(), result.facts.begin() + 2);
    };
    balancing::FieldJob job = balancing::flatLoop(2);
    job.round(project::RoundKind::Final, RoundState::Closed);
    balancing::readAs(job, "A", 1.0);
    balancing::readAs(job, "B", 1.0);
    std::vector<Fact> facts = firstFacts(job.project());
    EXPECT_EQ(base::english(facts[0].value), "By the readings: within tolerance");
    EXPECT_EQ(facts[0].mark, Mark::Pass);
    EXPECT_EQ(base::english(facts[1].value), "Nobody yet: round 1 was not sent to a supervisor");
    EXPECT_EQ(facts[1].mark, Mark::Open);
    for (const auto& [state, mark, said] :
         {std::tuple{RoundState::Sent, Mark::Open, "Nobody yet: round 1 waits for the supervisor"},
          std::tuple{RoundState::SentBack, Mark::Fail, "Nobody: the supervisor sent round 1 back"},
          std::tuple{RoundState::Accepted, Mark::Pass, "K. Moor"}}) {
        job.change(job.project().rounds().at(job.newestRound()), [to = state](project::Round& round) {
            round.state = to;
            round.decidedBy = to == RoundState::Accepted ? "K. Moor" : "";
        });
        facts = firstFacts(job.project());
        EXPECT_EQ(base::english(facts[1].value), said);
        EXPECT_EQ(facts[1].mark, mark) << said;
    }
    // One who read the round accepts it only for a reason, and nothing is ticked for that.
    project::Person boss;
    boss.id = job.ids().next();
    boss.name = "K. Moor";
    boss.role = project::PersonRole::Supervisor;
    job.project().put(boss);
    job.change(job.project().readings()[0], [&](project::Reading& reading) { reading.person = boss.id; });
    for (const auto& [reason, said] :
         {std::pair{"", "K. Moor, who also read or sent it; no reason given"},
          std::pair{"one-man firm", "K. Moor, who also read or sent it: one-man firm"}}) {
        job.change(job.project().rounds().at(job.newestRound()),
                   [why = reason](project::Round& round) { round.reason = why; });
        facts = firstFacts(job.project());
        EXPECT_EQ(base::english(facts[1].value), said);
        EXPECT_EQ(facts[1].mark, Mark::Open);
    }
    job.change(job.project().readings()[0], [](project::Reading& reading) { reading.person.reset(); });
    job.change(job.project().rounds().at(job.newestRound()),
               [](project::Round& round) { round.reason.clear(); });
    const std::vector<Fact> open = firstFacts(balancing::rivalLoop(RoundState::Accepted, 1.03).project());
    EXPECT_EQ(base::english(open[0].value), "By the readings: within tolerance; index circuit not proved");
    EXPECT_EQ(open[0].mark, Mark::Open);
    // The spreadsheet says both in the same words.
    const spreadsheet::WrittenSheet sheet = summarySheet(job.project());
    EXPECT_EQ(std::get<std::string>(sheet.rows.at(2).front()),
              "Round 1 (final), by the readings: within tolerance");
    EXPECT_EQ(std::get<std::string>(sheet.rows.at(3).front()), "Accepted by: K. Moor");
}

// A total that holds a doubtful reading says so.
TEST(ResultSection, theTotalNamesTheDoubtfulReadingsInIt) {
    balancing::FieldJob job = balancing::flatLoop(2);
    job.round(project::RoundKind::Final);
    const base::Id marked = balancing::readAs(job, "A", 1.0);
    balancing::readAs(job, "B", 1.0);
    const auto total = [&] {
        std::string said;
        const Report report = build(job.project(), {});
        for (const Fact& fact : sectionOf(report, kResult).facts) {
            const std::string value = base::english(fact.value);
            said = value.find("% of the design flow of") != std::string::npos ? value : said;
        }
        return said;
    };
    EXPECT_EQ(total().find("doubtful"), std::string::npos) << total();
    job.change(job.project().readings().at(marked), [](project::Reading& r) { r.isDoubtful = true; });
    EXPECT_NE(total().find("; 1 doubtful in it"), std::string::npos) << total();
}

/// What section 7 says where D of the second riser is the index at 98 %, and A and B of the first take so
/// much of design.
std::string indexWords(double ofA, double ofB) {
    balancing::FieldJob job = balancing::twoRisers();
    const auto& first = job.project().branches();
    job.branch("E", "R1", "4", *first[first.indexOf(job.idOf("A"))].valve);
    job.instrument("2", "");
    job.round(project::RoundKind::Final);
    job.settingOnly("R1", "4");
    job.settingOnly("R2", "4");
    balancing::readAs(job, "E", 1.2);
    balancing::readAs(job, "A", ofA);
    balancing::readAs(job, "B", ofB);
    balancing::readAs(job, "C", 0.99);
    balancing::readAs(job, "D", 0.98);
    std::string said;
    const Report report = build(job.project(), {});
    for (const Fact& fact : sectionOf(report, kIndex).facts) {
        said += base::english(fact.value) + '\n';
    }
    return said;
}

// Nearer than the meter tells the proof is neither given nor refused.
TEST(IndexSection, aRivalNearerThanTheReadingsTellIsUndecidable) {
    const std::string said = indexWords(0.975, 1.05);
    EXPECT_NE(said.find("Undecidable whether D is the index"), std::string::npos) << said;
    EXPECT_NE(said.find("A (97.5 %)"), std::string::npos) << said;
}

// Beside one that is surely less those that cannot be told are named too, as the energy code's proof does.
TEST(IndexSection, everyRivalIsNamed) {
    const std::string said = indexWords(0.975, 0.94);
    EXPECT_NE(said.find("Not shown that D is the index"), std::string::npos) << said;
    EXPECT_NE(said.find("with less are B (94.0 %)"), std::string::npos) << said;
    EXPECT_NE(said.find(" A (97.5 %);"), std::string::npos) << said;
}

}  // namespace
}  // namespace ww::report
