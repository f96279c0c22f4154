// What the report's readings and flows say: rows of settings, the zone of times, digits, shares of risers.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/balancing/walk.h"
#include "core/report/detail/display.h"
#include "core/report/detail/words.h"
#include "core/report/report.h"
#include "tests/core/balancing/small_loop.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

using support::textOf;

Section sectionOfJob(const support::FieldJob& job, SectionNumber number) {
    return sectionOf(build(job.project(), {}), number);
}

/// A loop of three whose valve A is set and then read in an open round.
class ReportOfSettings : public ::testing::Test {
  protected:
    ReportOfSettings() : m_job(balancing::flatLoop(3)) {
        m_round = m_job.round(project::RoundKind::Final, project::RoundState::Open);
        m_branch = m_job.idOf("A");
    }
    void set(std::string_view setting) {
        stored(
            balancing::storeSetting(m_job.project(), m_round, m_branch, m_job.decimal(setting), context()));
    }
    void read(std::string_view dp) {
        stored(balancing::storeDp(m_job.project(), m_round, m_branch, m_job.pressure(dp), {}, context()));
    }
    Table readings() const { return sectionOfJob(m_job, kReadings).tables.at(0); }
    /// "2.9 25.0 kPa" of a row; what is struck out in brackets.
    static std::string valuesOf(const std::vector<Cell>& row) {
        const auto value = [](const Cell& cell) { return cell.isStruck ? '[' + cell.text + ']' : cell.text; };
        return value(row.at(3)) + ' ' + value(row.at(4));
    }

  private:
    balancing::WalkContext context() { return {{}, {}, m_ids, m_clock.now()}; }
    void stored(const base::Result<project::Edit>& edit) {
        m_clock.advance(std::chrono::minutes(1));
        ASSERT_TRUE(edit.ok());
        EXPECT_EQ(balancing::applied(m_job, edit), edit->label);
    }

    support::FieldJob m_job;
    support::CountingIds m_ids{4000};
    support::FixedClock m_clock{"2026-03-02T10:00:00Z"};
    base::Id m_round;
    base::Id m_branch;
};

TEST_F(ReportOfSettings, aSettingThatItsReadingCompletesIsOneRowNotStruck) {
    set("2.9");
    read("25.0");
    const Table table = readings();
    ASSERT_EQ(table.rows.size(), 1U);
    EXPECT_EQ(valuesOf(table.rows[0]), "2.9 25.0 kPa");
    EXPECT_EQ(table.rows[0].back().text, "");
}

TEST_F(ReportOfSettings, aSettingThatIsCorrectedStaysStruck) {
    set("2.9");
    set("2.7");
    read("25.0");
    read("26.0");
    const Table table = readings();
    ASSERT_EQ(table.rows.size(), 3U) << "the setting 2.7 stands in the row of its reading";
    EXPECT_EQ(valuesOf(table.rows[0]), "[2.9] []");
    EXPECT_EQ(valuesOf(table.rows[1]), "[2.7] [25.0 kPa]");
    EXPECT_EQ(valuesOf(table.rows[2]), "2.7 26.0 kPa");
    EXPECT_EQ(table.rows[0].back().text, "superseded");
}

TEST_F(ReportOfSettings, theHeadOfTheTimesNamesTheirZone) {
    read("25.0");
    const Table table = readings();
    EXPECT_EQ(table.columns.at(1).unit, "UTC");
    EXPECT_EQ(table.rows.at(0).at(1).text, "2026-03-02 10:00");
}

TEST(ReportRows, whatNobodyTurnedIsToldByItsReason) {
    support::FieldJob job = balancing::flatLoop(3);
    const base::Id round = job.round(project::RoundKind::Adjusting, project::RoundState::Open);
    support::CountingIds ids(4000);
    EXPECT_EQ(balancing::applied(job, balancing::storeNotTurned(job.project(), round, {{}, {}, ids, {}})),
              "valves not turned in round 1: 3");
    const std::string text = textOf(sectionOfJob(job, kExceptions));
    EXPECT_NE(text.find("not read|not turned in this round"), std::string::npos) << text;
}

TEST(ReportRows, aReadingWithSeveralDoubtsIsListedOnceWithAllOfThem) {
    support::FieldJob job = balancing::flatLoop(3);
    const base::Id meter = job.instrument("1", "");
    job.change(job.project().instruments().at(meter),
               [&](project::Instrument& each) { each.range = job.pressure("40"); });
    job.round(project::RoundKind::Survey);
    for (const char* tag : {"A", "B", "C"}) {
        job.dp(tag, "25.0", "4");
    }
    job.round(project::RoundKind::Final);
    job.dp("A", "25.0", "4");
    const base::Id above = job.dp("B", "252", "4");
    job.dp("C", "25.0", "4");
    const auto rowsOfB = [&] {
        std::vector<std::string> rows;
        const Section section = sectionOfJob(job, kExceptions);
        for (const auto& row : section.tables.at(0).rows) {
            if (row.back().text.find("252 kPa") != std::string::npos) {
                rows.push_back(row.at(0).text + '|' + row.at(2).text + '|' + row.back().text);
            }
        }
        return rows;
    };
    const auto rowOf = [&](const std::string& weight) {
        std::string found;
        for (const std::string& row : rowsOfB()) {
            found += row.rfind("B|" + weight + '|', 0) == 0 ? row : "";
        }
        return found;
    };
    // That its flow is off design is another matter than what is wrong with the reading.
    ASSERT_EQ(rowsOfB().size(), 1U);
    const std::string doubted = rowOf("warning");
    EXPECT_EQ(doubted.rfind("B|warning|252 kPa is above the range of instrument M-1", 0), 0U) << doubted;
    EXPECT_NE(doubted.find(". 252 kPa is far from the expected"), std::string::npos) << doubted;
    EXPECT_EQ(doubted.find("% of the range"), std::string::npos) << doubted;
    job.change(job.project().readings().at(above),
               [](project::Reading& reading) { reading.reason = "read with the wide range"; });
    const std::string kept = rowOf("note");
    EXPECT_EQ(kept.rfind("B|note|252 kPa is above the range of instrument M-1", 0), 0U) << kept;
    EXPECT_NE(kept.find(". doubtful reading 252 kPa kept: read with the wide range"), std::string::npos)
        << kept;
    EXPECT_EQ(rowOf("doubtful"), "");
}

// A ratio of two flows can be checked from three significant digits of each.
TEST(ReportRows, flowsHaveThreeSignificantDigitsOrMore) {
    support::FieldJob job = balancing::flatLoop(3);
    const detail::Display ofLarge(job.project());
    EXPECT_EQ(ofLarge.flow(quantity::VolumeFlow::si(job.flowOf("4").value.si())), "4.00");
    EXPECT_EQ(ofLarge.flow(quantity::VolumeFlow::si(job.flowOf("0.95").value.si())), "0.950");
    job.change(job.project().branches().at(job.idOf("A")),
               [&](project::Branch& branch) { branch.designFlow = job.flowOf("0.37"); });
    const detail::Display ofSmall(job.project());
    EXPECT_EQ(ofSmall.flow(quantity::VolumeFlow::si(job.flowOf("0.386").value.si())), "0.386");
    EXPECT_EQ(ofSmall.flow(quantity::VolumeFlow::si(job.flowOf("0.37").value.si())), "0.370");
    EXPECT_EQ(ofSmall.flow(quantity::VolumeFlow::si(0)), "0.000");
}

TEST(ReportRows, sharesOfRisersSayWhatTheyAreOf) {
    const auto saysSo = [](bool isRiserRead) {
        support::FieldJob job;
        const base::Id valve = balancing::usualValve(job);
        job.branch("R", "", "", valve);
        job.branch("A", "R", "4", valve);
        job.branch("B", "R", "4", valve);
        job.round(project::RoundKind::Final, project::RoundState::Open);
        job.dp("A", "25.0", "4");
        job.dp("B", "25.0", "4");
        if (isRiserRead) {
            job.dp("R", "25.0", "4");
        }
        const Table table = sectionOfJob(job, kFinal).tables.at(0);
        return std::any_of(table.notes.begin(), table.notes.end(), [](const Statement& note) {
            return base::english(note).find("over the sum of the terminals") != std::string::npos;
        });
    };
    EXPECT_TRUE(saysSo(true));
    EXPECT_FALSE(saysSo(false)) << "a flow that is the sum of its terminals has the sum of their shares";
}

}  // namespace
}  // namespace ww::report
