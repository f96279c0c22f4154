// Two rounds that differ in what was seeded, for tests of their comparison.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <optional>

#include "tests/ui/support/desk_window.h"

namespace ww::support {

/// A second round of twelve valves with one thing changed at each of nine, and what Compare has to show of
/// it.
class SeededRounds : public DeskWindow {
  public:
    /// What Compare says of a branch where something was seeded.
    struct Seed {
        QString setting = "4.0";
        QString dp = {};  ///< empty: as in the survey
        QString why = {};
        double kv = 5.2;                    ///< of the valve table, at the setting that it stands at
        std::optional<double> dp_kPa = {};  ///< nothing: as in the survey
        QString struckDp = {};              ///< in the row below it; empty: there is none
        bool isChanged = true;
    };

    SeededRounds() : DeskWindow({.terminals = 12}) {
        project::Instrument meter = project().instruments()[0];
        m_usual = meter.id;
        meter.id = bridge().newId();
        meter.tag = "M-2";
        EXPECT_TRUE(bridge().apply({"meter", {meter}, {}, true}).ok());
        m_other = meter.id;
        for (int i = 1; i <= 12; ++i) {
            clock.advance(std::chrono::minutes(1));
            seed(support::walkTag(i));
            m_times[support::walkTag(i)] = QString::fromStdString(clock.now().timeOfDay()).left(5);
        }
    }

    const Seed& seedOf(const std::string& tag) { return m_seeds[tag]; }
    QString whoOf(const std::string& tag) { return "A. Fields " + m_times[tag]; }
    /// What a cell of Compare says of one value that became another.
    static QString step(const QString& before, const QString& after) {
        return before == after ? after : before + " → " + after;
    }
    base::Id branch(const std::string& tag) { return project().branchTagged(tag)->id; }
    const quantity::Measured<quantity::PressureDifference>& surveyDp(const std::string& tag) {
        return *balancing::countingReading(project(), project().rounds()[0].id, branch(tag))->dp;
    }
    /// Percent of target from the valve table and the digits alone: flows are Kv sqrt(dp), shares and target
    /// shares those of the terminals that were read.
    QString ofTarget(const std::string& tag, bool isAfter) {
        double flows = 0;
        double designs = 0;
        double ratio = 0;
        for (int i = 1; i <= 12; ++i) {
            const std::string other = support::walkTag(i);
            const Seed& seed = seedOf(other);
            const double dp_kPa = isAfter && seed.dp_kPa ? *seed.dp_kPa : surveyDp(other).digits.value();
            const double flow = (isAfter ? seed.kv : 5.2) * std::sqrt(dp_kPa);
            const double design = project().branchTagged(other)->designFlow->digits.value();
            flows += flow;
            designs += design;
            ratio = other == tag ? flow / design : ratio;
        }
        return QString::number(100 * ratio * designs / flows, 'f', 1);
    }

  private:
    void store(const std::string& tag, const std::string& typed) {
        EXPECT_TRUE(bridge().storeDp(branch(tag), QString::fromStdString(typed)).ok()) << tag;
    }
    const project::Reading& counting(const std::string& tag) {
        return *balancing::countingReading(project(), project().lastRound()->id, branch(tag));
    }
    static std::string times(double factor, const std::string& digits) {
        return base::Decimal::fromNumber(factor * std::stod(digits), 1).text();
    }
    /// Reads one valve of the second round. B-01, B-07 and B-12 read as in the survey.
    void seed(const std::string& tag) {
        const std::string digits = surveyDp(tag).digits.text();
        if (tag == "B-02") {
            seedSetting(tag);
        } else if (tag == "B-03") {
            // Makes up for the flow that B-02 lost, so that no state of another valve follows.
            const std::string other = times(1.7, digits);
            store(tag, other);
            m_seeds[tag] = {.dp = QString::fromStdString(digits + " → " + other), .dp_kPa = std::stod(other)};
        } else if (tag == "B-05") {
            bridge().setInstrument(m_other);
            store(tag, digits);
            bridge().setInstrument(m_usual);
            m_seeds[tag] = {.why = "meter M-1 → M-2"};
        } else if (tag == "B-06") {
            seedUnit(tag);
        } else if (tag == "B-10") {
            seedSlip(tag);
        } else {
            store(tag, digits);
            seedWords(tag);
        }
    }
    /// Another setting with the same dp, as a try is stored.
    void seedSetting(const std::string& tag) {
        project::Reading reading =
            *balancing::countingReading(project(), project().rounds()[0].id, branch(tag));
        reading.id = bridge().newId();
        reading.round = project().lastRound()->id;
        reading.sequence = 900;
        reading.time = clock.now();
        reading.person = bridge().person();
        reading.setting = *base::Decimal::parse("3");
        EXPECT_TRUE(bridge().apply({"try", {reading}, {}, true}).ok());
        m_seeds[tag] = {.setting = "4.0 → 3.0", .why = "adjusted", .kv = 4.1};
    }
    /// What stands beside the digits: a note, a mark, a reason.
    void seedWords(const std::string& tag) {
        if (tag == "B-08") {
            // Doubtful in the survey, as it stands out there; the same reading again confirms it.
            m_seeds[tag] = {};
        } else if (tag == "B-04") {
            EXPECT_TRUE(bridge().setNote(branch(tag), "lagging off").ok());
            m_seeds[tag] = {.why = "lagging off"};
        } else if (tag == "B-11") {
            EXPECT_TRUE(bridge().toggleDoubtful(branch(tag)).ok());
            m_seeds[tag] = {};
        } else if (tag == "B-09") {
            EXPECT_TRUE(bridge().giveReason(counting(tag).id, "read twice").ok());
            m_seeds[tag] = {.why = "read twice"};
        } else {
            m_seeds[tag] = {.isChanged = false};
        }
    }
    /// The same pressure, near enough, but typed in another unit.
    void seedUnit(const std::string& tag) {
        const std::string psi = base::Decimal::fromNumber(surveyDp(tag).digits.value() / 6.894757, 2).text();
        store(tag, psi + "p");
        m_seeds[tag] = {
            .dp = QString::fromStdString(surveyDp(tag).digits.text() + " → " + psi) + QChar(0xA0) + "psi",
            .dp_kPa = std::stod(psi) * 6.894757};
    }
    /// A slip in the second round that was corrected to what the survey read, with the reason.
    void seedSlip(const std::string& tag) {
        const std::string digits = surveyDp(tag).digits.text();
        const std::string slip = times(1.05, digits);
        store(tag, slip);
        store(tag, digits);
        EXPECT_TRUE(bridge().giveReason(counting(tag).id, "lost a digit").ok());
        m_seeds[tag] = {.why = "corrected; lost a digit", .struckDp = QString::fromStdString(slip)};
    }

    base::Id m_usual;
    base::Id m_other;
    std::map<std::string, QString> m_times;
    std::map<std::string, Seed> m_seeds;
};

}  // namespace ww::support
