#include <algorithm>

#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/once.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

namespace {

using namespace detail;
using energy::PumpPointResult;
using pump_room::PumpSheet;

std::string word(energy::FlowWay way) {
    switch (way) {
        case energy::FlowWay::Curve:
            return base::term("curve");
        case energy::FlowWay::Meter:
            return base::term("meter");
        case energy::FlowWay::Branches:
            return base::term("terminals");
    }
    return "";
}

/// One pump's points as tables.
class TestTables {
  public:
    TestTables(const Project& project, const PumpSheet& sheet)
        : m_project(project), m_sheet(sheet), m_numbers(project) {}

    Table head() const {
        const std::string unit = m_numbers.headUnit();
        Table table = make(kTestHeadTable, {column(kPressurePart, 15, Alignment::Right, unit),
                                            column(kZeroPart, 12, Alignment::Right, unit),
                                            column(kElevationPart, 15, Alignment::Right, unit),
                                            column(kVelocityPart, 14, Alignment::Right, unit),
                                            column(kTotalPart, 18, Alignment::Right, unit),
                                            column(kUncertaintyColumn, 11, Alignment::Right, unit),
                                            column(kRatedHeadColumn, 24, Alignment::Right, unit)});
        eachPoint(table, [&](const PumpPointResult& point) {
            std::vector<std::string> cells(7);
            if (point.head) {
                // A rise has no elevation; that of two gauges may be unknown.
                const std::string elevation =
                    point.head->isElevationKnown ? m_numbers.head(point.head->elevation) : "?";
                cells = {m_numbers.head(point.head->pressure),
                         m_sheet.sheet.gaugeZero ? m_numbers.head(point.head->zero) : "?",
                         point.head->hasElevation ? elevation : std::string(),
                         point.head->isVelocityKnown ? m_numbers.head(point.head->velocity) : "?",
                         m_numbers.head(point.head->total),
                         m_numbers.head(point.headUncertainty),
                         m_numbers.head(point.headAtRatedSpeed)};
            }
            return cells;
        });
        return table;
    }

    Table flow() const {
        const std::string unit = m_numbers.flowUnit();
        Table table =
            make(kTestFlowTable, {column(kByCurveColumn, 46, Alignment::Right, unit),
                                  column(kByMeterColumn, 18, Alignment::Right, unit),
                                  column(kByTerminalsColumn, 20, Alignment::Right, unit),
                                  column(kClosureColumn, 18, Alignment::Right), column(kCountsColumn, 16),
                                  column(kBestColumn, 20, Alignment::Right, "%"),
                                  column(kEfficiencyColumn, 18, Alignment::Right, "%"),
                                  column(kWireToWaterColumn, 20, Alignment::Right, "%")});
        eachPoint(table, [&](const PumpPointResult& point) {
            return std::vector<std::string>{curveFlow(point),
                                            withUncertainty(point.meterFlow),
                                            withUncertainty(point.branchFlow),
                                            closures(point),
                                            point.flowWay ? word(*point.flowWay) : std::string(),
                                            PumpNumbers::percent(point.ofBestFlow),
                                            PumpNumbers::percent(point.efficiency),
                                            PumpNumbers::percent(point.wireToWater)};
        });
        return table;
    }

    Table motor() const {
        const std::string unit = m_numbers.powerUnit();
        const auto power = [&](const MessageForm& form) { return column(form, 16, Alignment::Right, unit); };
        Table table =
            make(kTestMotorTable, {power(kInputMethod), power(kPowerFactorMethod), power(kNoLoadMethod),
                                   power(kAmpMethod), power(kSlipMethod), power(kChosenColumn),
                                   column(kPowerSpreadColumn, 26, Alignment::Right, unit)});
        eachPoint(table, [&](const PumpPointResult& point) {
            std::vector<std::string> cells(5);
            for (const energy::MotorPowerEstimate& estimate : point.motor.estimates) {
                cells[static_cast<std::size_t>(estimate.method)] = m_numbers.power(estimate.shaft);
            }
            cells.push_back(m_numbers.power(point.motor.shaft()));
            cells.push_back(point.motor.estimates.size() > 1 ? m_numbers.power(point.motor.lowest) + " – " +
                                                                   m_numbers.power(point.motor.highest)
                                                             : std::string());
            return cells;
        });
        return table;
    }

    Table electric() const {
        const std::string unit = m_numbers.headUnit();
        Table table = make(kTestElectricTable, {column(kVoltsApartColumn, 19, Alignment::Right, "%"),
                                                column(kAmpsApartColumn, 19, Alignment::Right, "%"),
                                                column(kOfPlateColumn, 17, Alignment::Right, "%"),
                                                column(kOfServiceColumn, 22, Alignment::Right, "%"),
                                                column(kVoltsOfPlateColumn, 17, Alignment::Right, "%"),
                                                column(kNpshAvailableColumn, 20, Alignment::Right, unit),
                                                column(kNpshRequiredColumn, 22, Alignment::Right, unit),
                                                column(kNpshMarginColumn, 15, Alignment::Right, unit)});
        eachPoint(table, [&](const PumpPointResult& point) {
            const energy::MotorCondition& motor = point.condition;
            return std::vector<std::string>{PumpNumbers::percent(motor.voltageImbalance, 2),
                                            PumpNumbers::percent(motor.currentImbalance, 2),
                                            PumpNumbers::percent(motor.ampsOfPlate),
                                            PumpNumbers::percent(motor.ampsOfServiceFactor),
                                            PumpNumbers::percent(motor.voltsOfPlate),
                                            m_numbers.head(point.npshAvailable),
                                            m_numbers.head(point.npshRequired),
                                            m_numbers.head(point.npshMargin)};
        });
        return table;
    }

    std::vector<Fact> facts() const {
        std::vector<Fact> facts{{say(kShutoffLabel),
                                 say(m_sheet.shutoff.isNever       ? kShutoffForbidden
                                     : m_sheet.shutoff.isForbidden ? kShutoffWithConsent
                                                                   : kShutoffAllowed),
                                 m_sheet.shutoff.isForbidden ? Mark::Fail : Mark::Open}};
        const auto& zero = m_sheet.sheet.gaugeZero;
        facts.push_back({say(kZeroLabel),
                         zero ? say(kZeroFound, {m_numbers.pressure(*zero) + " " + m_numbers.pressureUnit()})
                              : say(kZeroNotRead),
                         zero ? Mark::None : Mark::Open});
        if (m_sheet.sheet.impeller) {
            const project::Pump& pump = m_project.pumps()[m_sheet.pump];
            facts.push_back({say(kFoundImpellerLabel),
                             say(kImpellerFound, {m_numbers.units().text(m_sheet.sheet.impeller->diameter),
                                                  pump.impeller ? typed(*pump.impeller)
                                                                : std::string(base::term("nothing"))}),
                             m_sheet.sheet.isImpellerSuspect ? Mark::Fail : Mark::Pass});
        }
        return facts;
    }

  private:
    /// A table whose rows begin with the point and the round.
    static Table make(const MessageForm& title, std::vector<Column> columns) {
        Table table;
        table.title = say(title);
        table.isLandscape = true;
        table.columns = {column(kPointColumn, 34), column(kRoundShort, 12, Alignment::Right)};
        table.columns.insert(table.columns.end(), columns.begin(), columns.end());
        return table;
    }

    /// A row for each point with what `cellsOf` says of it; points of which it says nothing are left out.
    template <class CellsOf>
    void eachPoint(Table& table, CellsOf cellsOf) const {
        for (std::size_t i = 0; i < m_sheet.sheet.points.size(); ++i) {
            const PumpPointResult& point = m_sheet.sheet.points[i];
            std::vector<Cell> row{wordCell(std::string(project::name(point.kind))),
                                  cell(std::to_string(m_sheet.rounds[i]))};
            bool isEmpty = true;
            for (std::string& text : cellsOf(point)) {
                isEmpty = isEmpty && text.empty();
                row.push_back(wordCell(std::move(text)));
            }
            if (!isEmpty) {
                table.rows.push_back(std::move(row));
            }
        }
    }

    std::string curveFlow(const PumpPointResult& point) const {
        if (!point.curveFlow) {
            return {};
        }
        return m_numbers.flow(point.curveFlow->flow) + " (" + m_numbers.flow(point.curveFlow->low) + " – " +
               m_numbers.flow(point.curveFlow->high) + ")";
    }

    std::string withUncertainty(const std::optional<energy::FlowValue>& value) const {
        if (!value) {
            return {};
        }
        return m_numbers.flow(value->flow) +
               (value->uncertainty ? " ± " + m_numbers.flow(value->uncertainty) : std::string());
    }

    static std::string closures(const PumpPointResult& point) {
        std::string text;
        for (const energy::FlowClosure& closure : point.closures) {
            text += (text.empty() ? "" : ", ") + Display::fixed(closure.score.si(), 1);
        }
        return text;
    }

    const Project& m_project;
    const PumpSheet& m_sheet;
    PumpNumbers m_numbers;
};

/// What is said of one reading.
std::vector<base::Fault> findingsOf(const PumpPointResult& point) {
    std::vector<base::Fault> findings = point.findings;
    findings.insert(findings.end(), point.motor.findings.begin(), point.motor.findings.end());
    findings.insert(findings.end(), point.condition.findings.begin(), point.condition.findings.end());
    if (point.motor.reason) {
        findings.push_back(*point.motor.reason);
    }
    return findings;
}

/// What is said of single readings, each sentence once, with the rounds that it is true of.
std::vector<base::Fault> findingsByRound(const PumpSheet& sheet) {
    std::vector<base::Fault> said;
    std::vector<std::vector<int>> rounds;
    for (std::size_t i = 0; i < sheet.sheet.points.size(); ++i) {
        for (base::Fault& finding : findingsOf(sheet.sheet.points[i])) {
            const auto at =
                static_cast<std::size_t>(std::find(said.begin(), said.end(), finding) - said.begin());
            if (at == said.size()) {
                said.push_back(std::move(finding));
                rounds.emplace_back();
            }
            if (rounds[at].empty() || rounds[at].back() != sheet.rounds[i]) {
                rounds[at].push_back(sheet.rounds[i]);
            }
        }
    }
    for (std::size_t i = 0; i < said.size(); ++i) {
        if (!said[i].subject.empty()) {
            continue;
        }
        std::string numbers;
        for (const int round : rounds[i]) {
            numbers += (numbers.empty() ? "" : ", ") + std::to_string(round);
        }
        said[i].subject = base::term("round ") + numbers;
    }
    return said;
}

}  // namespace

Section pumpTestSection(const project::Project& project, const pump_room::PumpPicture& picture,
                        std::size_t pump) {
    const PumpSheet& sheet = picture.sheets[pump];
    const TestTables made(project, sheet);
    Section section;
    section.title = say(kTestTitle, {project.pumps()[pump].tag});
    section.facts = made.facts();
    if (!sheet.readings.empty()) {
        section.statements.push_back(say(kTestOrder));
        const bool isCompared = std::any_of(sheet.sheet.points.begin(), sheet.sheet.points.end(),
                                            [](const PumpPointResult& one) { return !one.closures.empty(); });
        if (isCompared) {
            section.statements.push_back(say(kWaysApart));
        }
    }
    for (Table table : {made.head(), made.flow(), made.motor(), made.electric()}) {
        if (!table.rows.empty()) {
            section.tables.push_back(std::move(table));
        }
    }
    for (base::Fault caution : sheet.shutoff.cautions) {
        // By themselves they would seem to speak of the pump as it runs.
        caution.subject = base::term("shutoff test");
        section.closing.push_back(std::move(caution));
    }
    addOnce(sheet.sheet.findings, section.closing);
    addOnce(findingsByRound(sheet), section.closing);
    section.closing.push_back(say(kTestCaution));
    return section;
}

}  // namespace ww::report
