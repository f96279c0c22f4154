#include <algorithm>
#include <cmath>
#include <iterator>

#include "core/base/term.h"
#include "core/report/detail/once.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

namespace {

using namespace detail;
using balancing::curveWords;
using balancing::excessWords;
using pump_room::DecidedOption;
using pump_room::PumpDecision;

std::string word(pump_room::HeadSource source) {
    switch (source) {
        case pump_room::HeadSource::Design:
            return base::term("design losses");
        case pump_room::HeadSource::Learned:
            return base::term("model learned from readings");
        case pump_room::HeadSource::Measured:
            return base::term("measured");
    }
    return "";
}

std::string word(energy::PumpAction action) {
    switch (action) {
        case energy::PumpAction::Throttle:
            return base::term("throttle");
        case energy::PumpAction::Trim:
            return base::term("trim");
        case energy::PumpAction::Slow:
            return base::term("slow");
    }
    return "";
}

class Sheet {
  public:
    Sheet(const Project& project, const PumpDecision& decision)
        : m_project(project), m_decision(decision), m_numbers(project) {}

    std::vector<Fact> facts() const {
        const quantity::ShownUnits& units = m_numbers.units();
        std::vector<Fact> facts;
        if (m_decision.duty) {
            const pump_room::PresentDuty& duty = *m_decision.duty;
            const std::string percent = PumpNumbers::percent(duty.efficiency);
            const base::MessageForm& form = duty.isSpeedRead  ? kPresentDuty
                                            : duty.speedRound ? kPresentDutyCarried
                                                              : kPresentDutyAssumed;
            std::vector<std::string> arguments{
                flowAndUnit(duty.flow),
                units.written(duty.head),
                std::to_string(duty.roundNumber),
                PumpNumbers::percent(duty.speedFraction),
                duty.shaft ? units.text(*duty.shaft, 3) : std::string(base::term("not known")),
                percent.empty() ? std::string(base::term("not known")) : percent + " %"};
            if (duty.speedRound) {
                arguments.push_back(std::to_string(*duty.speedRound));
            }
            facts.push_back({say(kPresentDutyLabel), say(form, std::move(arguments))});
        }
        if (m_decision.headAvailable) {
            facts.push_back(fullSpeed());
        }
        if (const auto excess = m_decision.decidedExcess()) {
            facts.push_back(
                {say(kExcessLabel),
                 say(kExcessDecided, {units.written(excess->head), excessWords(excess->basis, excess->speed),
                                      curveWords(m_decision.curve)})});
        }
        // A pump at full speed has one excess, which is said already.
        const auto decided = m_decision.decidedExcess();
        if (const auto excess = m_decision.excessAsRead();
            excess && !(decided && units.written(excess->head) == units.written(decided->head))) {
            facts.push_back(
                {say(kExcessAsReadLabel),
                 say(kExcessFound, {units.written(excess->head), excessWords(excess->basis, excess->speed),
                                    curveWords(m_decision.curve)})});
        }
        return facts;
    }

    Table required() const {
        const std::string unit = m_numbers.headUnit();
        Table table;
        table.title = say(kRequiredTable);
        table.columns = {column(kSourceColumn, 46), column(kHeadColumn, 16, Alignment::Right, unit)};
        const bool isSureKnown =
            std::any_of(m_decision.required.begin(), m_decision.required.end(),
                        [](const pump_room::RequiredHead& one) { return one.uncertainty.has_value(); });
        if (isSureKnown) {
            table.columns.push_back(column(kUncertaintyColumn, 22, Alignment::Right, unit));
        }
        table.columns.push_back(column(kCountsColumn, 14));
        table.columns.push_back(column(kPathColumn, 70));
        for (std::size_t i = 0; i < m_decision.required.size(); ++i) {
            const pump_room::RequiredHead& one = m_decision.required[i];
            std::string from = word(one.source);
            if (one.source == pump_room::HeadSource::Measured) {
                from += std::string(", ") + base::term("round ") + std::to_string(one.roundNumber);
            }
            std::string path;
            for (const std::size_t branch : one.indexPath) {
                path += (path.empty() ? "" : " → ") + m_project.branches()[branch].tag;
            }
            std::vector<Cell> row{wordCell(from), cell(m_numbers.head(one.head))};
            if (isSureKnown) {
                row.push_back(one.uncertainty ? cell(m_numbers.head(one.uncertainty))
                                              : wordCell(base::term("not known")));
            }
            row.push_back(wordCell(m_decision.counted == i ? base::term("yes") : ""));
            row.push_back(cell(path));
            table.rows.push_back(std::move(row));
        }
        return table;
    }

    Table options() const {
        const std::string head = m_numbers.headUnit();
        const std::string currency = m_project.job().currency;
        Table table;
        table.title = say(kOptionsTable, {curveWords(m_decision.curve)});
        table.isLandscape = true;
        table.columns = {column(kOptionColumn, 28),
                         column(kHeadColumn, 14, Alignment::Right, head),
                         column(kThrottledColumn, 20, Alignment::Right, head),
                         column(kShaftColumn, 18, Alignment::Right, m_numbers.powerUnit()),
                         column(kEfficiencyColumn, 17, Alignment::Right, "%"),
                         column(kSpeedRatioColumn, 15, Alignment::Right, "%"),
                         column(kDiameterColumn, 16, Alignment::Right, m_numbers.lengthUnit()),
                         column(kFirstCutColumn, 16, Alignment::Right, m_numbers.lengthUnit()),
                         column(kEnergyColumn, 20, Alignment::Right, "kWh"),
                         column(kCostColumn, 18, Alignment::Right, currency)};
        for (const DecidedOption& decided : m_decision.options) {
            const energy::PumpOption& option = decided.option;
            const bool isSlow = option.action == energy::PumpAction::Slow;
            table.rows.push_back(
                {wordCell(word(option.action) +
                          (option.isAllowed ? "" : std::string(", ") + base::term("not allowed"))),
                 cell(m_numbers.head(option.head)), cell(m_numbers.head(option.throttled)),
                 cell(m_numbers.power(option.shaft)), cell(PumpNumbers::percent(option.efficiency)),
                 cell(isSlow ? PumpNumbers::percent(option.ratio) : std::string()),
                 cell(m_numbers.length(option.impeller)), cell(m_numbers.length(option.firstCut)),
                 cell(PumpNumbers::kilowattHours(option.energy)), cell(PumpNumbers::money(option.cost))});
        }
        return table;
    }

    Table confirmed() const {
        Table table;
        table.title = say(kConfirmedTable);
        table.columns = {column(kOptionColumn, 28),
                         column(kWantedHeadColumn, 26, Alignment::Right, m_numbers.headUnit()),
                         column(kSolvedHeadColumn, 22, Alignment::Right, m_numbers.headUnit()),
                         column(kHeadOffColumn, 18, Alignment::Right, "%"),
                         column(kSolvedFlowColumn, 22, Alignment::Right, m_numbers.flowUnit()),
                         column(kFlowOffColumn, 18, Alignment::Right, "%")};
        for (const DecidedOption& decided : m_decision.options) {
            if (decided.confirmed) {
                table.rows.push_back({wordCell(word(decided.option.action)),
                                      cell(m_numbers.head(decided.option.head)),
                                      cell(m_numbers.head(decided.confirmed->head)),
                                      cell(PumpNumbers::percent(decided.confirmed->headDifference, 2)),
                                      cell(m_numbers.flow(decided.confirmed->flow)),
                                      cell(PumpNumbers::percent(decided.confirmed->flowDifference, 2))});
            }
        }
        return table;
    }

  private:
    /// What the pump makes, and how far the curve as it was entered is from that where it does not count.
    Fact fullSpeed() const {
        const quantity::ShownUnits& units = m_numbers.units();
        std::vector<std::string> arguments{units.written(*m_decision.headAvailable),
                                           flowAndUnit(m_decision.designFlow), curveWords(m_decision.curve)};
        if (!m_decision.curve.isThroughGauges() || !m_decision.headPublished) {
            return {say(kFullSpeedLabel), say(kFullSpeed, std::move(arguments))};
        }
        const quantity::Head apart = *m_decision.headPublished - *m_decision.headAvailable;
        arguments.push_back(units.written(quantity::Head::si(std::abs(apart.si()))));
        arguments.push_back(apart.si() > 0 ? base::term("more") : base::term("less"));
        return {say(kFullSpeedLabel), say(kFullSpeedGauges, std::move(arguments))};
    }

    /// In the digits of the report's other flows.
    std::string flowAndUnit(quantity::VolumeFlow value) const {
        return m_numbers.flow(value) + " " + m_numbers.flowUnit();
    }
    const Project& m_project;
    const PumpDecision& m_decision;
    PumpNumbers m_numbers;
};

}  // namespace

Section pumpDecisionSection(const project::Project& project, const pump_room::PumpPicture& picture) {
    const PumpDecision& decision = picture.decision;
    const Sheet made(project, decision);
    Section section;
    section.title = say(kDecisionTitle);
    section.facts = made.facts();
    // Where nothing is to be done there is nothing to offer.
    const bool hasOffers = !decision.options.empty() && !decision.isFitting();
    for (Table table :
         {hasOffers ? made.options() : Table(), made.required(), hasOffers ? made.confirmed() : Table()}) {
        if (!table.rows.empty()) {
            section.tables.push_back(std::move(table));
        }
    }
    // What makes every number here doubtful stands above them.
    section.opening = decision.curve.reasons;
    const std::size_t doubts = section.opening.size();
    std::copy_if(decision.findings.begin(), decision.findings.end(), std::back_inserter(section.opening),
                 [](const base::Fault& finding) {
                     return finding.is(energy::kPumpTooSmall) || finding.is(pump_room::kShortUndecided) ||
                            finding.is(pump_room::kPumpFits) || finding.is(pump_room::kFirstLook);
                 });
    const bool isDecided =
        section.opening.size() > doubts || decision.curve.basis == balancing::CurveBasis::Untrusted;
    std::copy_if(decision.findings.begin(), decision.findings.end(), std::back_inserter(section.opening),
                 [](const base::Fault& finding) {
                     return finding.is(pump_room::kSpeedNotRead) || finding.is(pump_room::kSpeedCarried);
                 });
    if (decision.options.empty() && !isDecided) {
        section.statements.push_back(say(kNoDecision));
    }
    for (const DecidedOption& decided : hasOffers ? decision.options : std::vector<DecidedOption>()) {
        for (base::Fault caution : decided.option.cautions) {
            caution.subject = word(decided.option.action);
            section.closing.push_back(std::move(caution));
        }
    }
    std::vector<base::Fault> below = decision.findings;
    std::erase_if(below, [&](const base::Fault& finding) {
        // Without an offer nothing asks for its energy.
        const bool isOfOffer = finding.is(pump_room::kHoursUnknown) ||
                               finding.is(pump_room::kMotorEfficiencyUnknown) ||
                               finding.is(energy::kEfficiencyUnknown);
        return (isOfOffer && decision.isFitting()) ||
               std::find(section.opening.begin(), section.opening.end(), finding) != section.opening.end();
    });
    addOnce(below, section.closing);
    const auto options = pump_room::decisionOptions(project, {});
    if (options.partLoad == energy::PartLoad::HoldsHead && hasOffers) {
        section.statements.push_back(say(kHoldsHead, {project::shownUnits(project).text(options.heldHead)}));
    }
    return section;
}

}  // namespace ww::report
