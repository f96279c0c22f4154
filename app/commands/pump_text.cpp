#include "app/commands/pump_text.h"

#include <algorithm>

#include "app/commands/text_table.h"
#include "core/quantity/measured.h"

namespace ww::app {

namespace {

using pump_room::PumpDecision;
using quantity::Unit;

class Text {
  public:
    Text(const project::Project& project, const pump_room::PumpPicture& answer)
        : m_project(project),
          m_answer(answer),
          m_decision(answer.decision),
          m_isUs(project.job().units == project::UnitSystem::US),
          m_flow(project.shownFlowUnit()) {}

    std::string figures() {
        m_out.clear();
        addCurve();
        addRequired();
        for (const base::Fault& finding : m_decision.findings) {
            if (finding.is(pump_room::kFirstLook) || finding.is(pump_room::kSpeedNotRead) ||
                finding.is(pump_room::kSpeedCarried) || finding.is(pump_room::kPumpFits) ||
                finding.is(pump_room::kShortUndecided) || finding.is(energy::kPumpTooSmall)) {
                m_out += "Pump: " + base::english(finding) + ".\n";
            }
        }
        return std::move(m_out);
    }

    std::string take() {
        m_out = m_project.job().name + ", pumps\n\n";
        addDuty();
        addCurve();
        addRequired();
        addOptions();
        addReadAndSet();
        addCode();
        addTests();
        std::vector<base::Fault> rest = m_decision.findings;
        std::erase_if(rest, [&](const base::Fault& finding) {
            const auto& told = m_decision.curve.reasons;
            return std::find(told.begin(), told.end(), finding) != told.end();
        });
        addFindings("Findings", rest);
        return std::move(m_out);
    }

  private:
    static std::string symbol(Unit unit) { return std::string(quantity::symbol(unit)); }
    std::string head(const std::optional<quantity::Head>& value) const {
        const Unit unit = m_isUs ? Unit::Foot : Unit::Metre;
        return value ? quantity::significant(value->in(unit), 4) + " " + symbol(unit) : "-";
    }
    std::string flow(const std::optional<quantity::VolumeFlow>& value) const {
        return value ? quantity::significant(value->in(m_flow), 4) + " " + symbol(m_flow) : "-";
    }
    std::string power(const std::optional<quantity::Power>& value) const {
        const Unit unit = m_isUs ? Unit::Horsepower : Unit::Kilowatt;
        return value ? quantity::significant(value->in(unit), 4) + " " + symbol(unit) : "-";
    }
    std::string diameter(const std::optional<quantity::Length>& value) const {
        const Unit unit = m_isUs ? Unit::Inch : Unit::Millimetre;
        return value ? quantity::significant(value->in(unit), 4) + " " + symbol(unit) : "-";
    }
    std::string pressure(quantity::PressureDifference value) const {
        return quantity::significant(value.in(m_isUs ? Unit::Psi : Unit::Kilopascal), 3);
    }
    static std::string percent(const std::optional<quantity::Ratio>& value, int decimals = 1) {
        return value ? base::Decimal::fromNumber(100 * value->si(), decimals).text() : "-";
    }
    static std::string kilowattHours(const std::optional<quantity::Energy>& value) {
        return value ? quantity::significant(value->si() / energy::kKilowattHour.si(), 4) : "-";
    }
    std::string money(const std::optional<energy::Money>& value) const {
        return value ? base::Decimal::fromNumber(value->si(), 0).text() : "-";
    }

    /// Beside the number: where it is from, where the round did not read it.
    static std::string speedWords(const pump_room::PresentDuty& duty) {
        if (duty.isSpeedRead) {
            return "";
        }
        return " (no speed was read, " +
               (duty.speedRound ? "that of round " + std::to_string(*duty.speedRound)
                                : std::string("full speed")) +
               " is taken: read it on the drive)";
    }

    void addDuty() {
        if (!m_decision.duty) {
            return;
        }
        const pump_room::PresentDuty& duty = *m_decision.duty;
        m_out += "Duty in round " + std::to_string(duty.roundNumber) + ": " + flow(duty.flow) + " at " +
                 head(duty.head) + ", " + percent(duty.speedFraction) + " % of full speed" + speedWords(duty);
        if (duty.shaft) {
            m_out +=
                ", shaft power " + power(duty.shaft) + (duty.isPowerMeasured ? " (measured)" : " (table)");
        }
        if (duty.efficiency) {
            m_out += ", efficiency " + percent(duty.efficiency) + " %";
        }
        if (duty.ofBestFlow) {
            m_out += ", " + percent(duty.ofBestFlow) + " % of best-efficiency flow";
        }
        m_out += ".\n";
    }

    /// What makes every number doubtful stands above them.
    void addCurve() {
        for (const base::Fault& reason : m_decision.curve.reasons) {
            m_out += "Curve: " + base::english(reason) + ".\n";
        }
    }

    static std::string sourceWords(pump_room::HeadSource source) {
        switch (source) {
            case pump_room::HeadSource::Design:
                return "from the design losses";
            case pump_room::HeadSource::Learned:
                return "from the loop learned from the readings";
            case pump_room::HeadSource::Measured:
                return "from a balanced round";
        }
        return "";
    }

    void addRequired() {
        m_out += "Design flow " + flow(m_decision.designFlow) + ".\n";
        for (std::size_t i = 0; i < m_decision.required.size(); ++i) {
            const pump_room::RequiredHead& required = m_decision.required[i];
            m_out += "Index circuit needs " + head(required.head) + " " + sourceWords(required.source);
            m_out += m_decision.counted == i ? " (counts).\n" : ".\n";
        }
        if (m_decision.headAvailable) {
            m_out += "At full speed the pump makes " + head(m_decision.headAvailable) + " at design flow";
            m_out += m_decision.curve.isThroughGauges()
                         ? "; the curve as published gives " + head(m_decision.headPublished) + ".\n"
                         : ".\n";
        }
        for (const auto& excess : {m_decision.decidedExcess(), m_decision.excessAsRead()}) {
            if (excess) {
                const bool isCounted = excess->speed == balancing::ExcessSpeed::Full;
                m_out += "Excess head " + head(excess->head) + " " +
                         balancing::excessWords(excess->basis, excess->speed) + ", " +
                         balancing::curveWords(m_decision.curve) +
                         (isCounted ? ": the pump decision uses this one.\n" : ".\n");
            }
        }
    }

    void addOptions() {
        if (m_decision.options.empty()) {
            return;
        }
        const std::string currency = m_project.job().currency.empty() ? "cost" : m_project.job().currency;
        std::vector<std::vector<std::string>> rows{{"option", "head", "shaft power", "ratio %", "impeller",
                                                    "efficiency %", "kWh a year", currency + " a year",
                                                    "solved flow % off", "solved head % off"}};
        for (const pump_room::DecidedOption& decided : m_decision.options) {
            const energy::PumpOption& option = decided.option;
            const auto& solved = decided.confirmed;
            rows.push_back({std::string(jsonName(option.action)) + (option.isAllowed ? "" : " (not allowed)"),
                            head(option.head), power(option.shaft), percent(option.ratio, 2),
                            diameter(option.impeller), percent(option.efficiency),
                            kilowattHours(option.energy), money(option.cost),
                            solved ? percent(solved->flowDifference, 2) : "-",
                            solved ? percent(solved->headDifference, 2) : "-"});
        }
        m_out += "\n" + textTable(rows, {0});
        for (const pump_room::DecidedOption& decided : m_decision.options) {
            for (const base::Fault& caution : decided.option.cautions) {
                m_out += "  " + std::string(jsonName(decided.option.action)) + ": " + base::english(caution) +
                         "\n";
            }
        }
    }

    void addReadAndSet() {
        const pump_room::ReadAndSet& comparison = m_answer.readAndSet;
        if (comparison.valves.empty()) {
            return;
        }
        const std::string unit = symbol(m_isUs ? Unit::Psi : Unit::Kilopascal);
        std::vector<std::vector<std::string>> rows{
            {"valve", "open " + unit, "proportional " + unit, "read-and-set " + unit}};
        for (const pump_room::ValveLeft& valve : comparison.valves) {
            rows.push_back({m_project.branches()[valve.branch].tag + (valve.isIndex ? " *" : ""),
                            pressure(valve.open), pressure(valve.proportional), pressure(valve.readAndSet)});
        }
        m_out += "\nDp at design flow left across the valves (* index circuit)\n" + textTable(rows, {0});
        m_out += "Read-and-set wastes " + head(comparison.wasted) + " across the index valve";
        if (comparison.wastedPower) {
            m_out += ", " + power(comparison.wastedPower);
        }
        if (comparison.energy) {
            m_out += ", " + kilowattHours(comparison.energy) + " kWh a year";
        }
        m_out += ".\n";
    }

    void addCode() {
        m_out += "\nEnergy code\n";
        for (const base::Fault& line : m_decision.code.basis) {
            m_out += "  " + base::english(line) + "\n";
        }
        for (const base::Fault& line : m_decision.code.findings) {
            m_out += "  " + base::english(line) + "\n";
        }
        m_out += m_decision.throttling.isProved ? "  Balanced with the least throttling first: proved.\n"
                                                : "  Balanced with the least throttling first: NOT proved.\n";
        for (const base::Fault& line : m_decision.throttling.failures) {
            m_out += "    " + base::englishWithSubject(line) + "\n";
        }
    }

    void addTests() {
        for (const pump_room::PumpSheet& sheet : m_answer.sheets) {
            std::vector<base::Fault> findings = sheet.sheet.findings;
            for (const energy::PumpPointResult& point : sheet.sheet.points) {
                findings.insert(findings.end(), point.findings.begin(), point.findings.end());
            }
            // A finding that stands at every reading is said once.
            std::vector<base::Fault> once;
            for (base::Fault& finding : findings) {
                if (std::find(once.begin(), once.end(), finding) == once.end()) {
                    once.push_back(std::move(finding));
                }
            }
            if (sheet.sheet.impeller) {
                m_out +=
                    "\nImpeller by the head at shutoff: " + diameter(sheet.sheet.impeller->diameter) + "\n";
            }
            addFindings("Test of " + m_project.pumps()[sheet.pump].tag, once);
        }
    }

    void addFindings(const std::string& title, const std::vector<base::Fault>& findings) {
        if (findings.empty()) {
            return;
        }
        m_out += "\n" + title + "\n";
        for (const base::Fault& finding : findings) {
            m_out += "  " + base::englishWithSubject(finding) + "\n";
        }
    }

    const project::Project& m_project;
    const pump_room::PumpPicture& m_answer;
    const PumpDecision& m_decision;
    bool m_isUs;
    Unit m_flow;
    std::string m_out;
};

}  // namespace

std::string pumpFiguresText(const project::Project& project, const pump_room::PumpDecision& decision) {
    pump_room::PumpPicture picture;
    picture.decision = decision;
    return Text(project, picture).figures();
}

std::string pumpText(const project::Project& project, const pump_room::PumpPicture& answer) {
    return Text(project, answer).take();
}

}  // namespace ww::app
