#include <algorithm>

#include "core/base/term.h"
#include "core/report/detail/once.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {

namespace {

using namespace detail;
using energy::CodeDecision;
using energy::CodeTest;

std::string word(const std::optional<CodeDecision>& decision) {
    if (!decision) {
        return base::term("not decided");
    }
    switch (*decision) {
        case CodeDecision::ExemptSmallMotor:
            return base::term("exempt as a small motor");
        case CodeDecision::ExemptSmallExcess:
            return base::term("exempt as a small excess");
        case CodeDecision::MustReduce:
            return base::term("must be trimmed or slowed");
    }
    return "";
}

std::string formWord(bool isPercentOnly) {
    return isPercentOnly ? base::term("5 % of the plate") : base::term("5 % of the plate or a fixed power");
}

Table formsTable(const Project& project, const pump_room::PumpDecision& decision) {
    const PumpNumbers numbers(project);
    const bool isPercentOnly = project.job().codeForm == project::CodeForm::PercentOnly;
    Table table;
    table.title = say(kCodeTable);
    table.columns = {
        column(kFormColumn, 70), column(kExcessPowerColumn, 24, Alignment::Right, numbers.powerUnit()),
        column(kLimitColumn, 20, Alignment::Right, numbers.powerUnit()), column(kDecisionColumn, 50)};
    const auto add = [&](const CodeTest& test, const std::string& form) {
        table.rows.push_back({wordCell(form), cell(numbers.power(test.excess)),
                              cell(numbers.power(test.limit)), wordCell(word(test.decision))});
    };
    const bool isStated = project.job().codeForm != project::CodeForm::NotStated;
    add(decision.code,
        formWord(isPercentOnly) + (isStated ? std::string(", ") + base::term("chosen for this job") : ""));
    if (decision.codeOwnEfficiencies) {
        add(*decision.codeOwnEfficiencies, base::term("the same, each duty with its own efficiency"));
    }
    add(decision.codeOtherForm, formWord(!isPercentOnly) + ", " + base::term("for comparison"));
    return table;
}

std::string pathOf(const Project& project, const std::vector<std::size_t>& path) {
    std::string text;
    for (const std::size_t branch : path) {
        text += (text.empty() ? "" : " → ") + project.branches()[branch].tag;
    }
    return text;
}

}  // namespace

Section energyCodeSection(const project::Project& project, const pump_room::PumpPicture& picture) {
    const pump_room::PumpDecision& decision = picture.decision;
    const project::Job& job = project.job();
    Section section;
    section.title = say(kCodeTitle);
    section.opening = decision.curve.ruling();
    const bool isNamed = !job.codeEdition.empty() && !job.codeClause.empty();
    section.facts.push_back({say(kCodeLabel),
                             isNamed ? say(kCodeTyped, {job.codeEdition, job.codeClause}) : say(kCodeUntyped),
                             isNamed ? Mark::None : Mark::Open});
    section.facts.push_back(
        {say(kExceptionLabel), job.codeException.empty() ? say(kNoneClaimed) : plain(job.codeException)});
    if (decision.code.decision) {
        section.facts.push_back(
            {say(kDecisionLabel),
             say(decision.isCodeMet ? kCodeIsMet : kCodeIsNotMet,
                 {decision.isCodeMet && *decision.code.decision == CodeDecision::MustReduce
                      ? base::term("the pump is reduced already")
                      : word(decision.code.decision)}),
             decision.isCodeMet ? Mark::Pass : Mark::Fail});
        section.tables.push_back(formsTable(project, decision));
    } else {
        section.facts.push_back({say(kDecisionLabel), say(kNotKnown), Mark::Open});
    }
    const pump_room::ThrottlingProof& proof = decision.throttling;
    const bool isThrottleKnown =
        std::none_of(proof.notes.begin(), proof.notes.end(),
                     [](const base::Fault& note) { return note.is(pump_room::kProofNoThrottle); });
    section.facts.push_back({say(kProofLabel),
                             proof.isProved ? say(isThrottleKnown ? kProofGiven : kProofWithoutThrottle,
                                                  {pathOf(project, proof.indexPath)})
                                            : say(kProofMissing, {std::to_string(proof.failures.size())}),
                             proof.isProved ? Mark::Pass : Mark::Fail});
    section.statements = decision.code.basis;
    addOnce(decision.code.findings, section.closing);
    addOnce(proof.failures, section.closing);
    addOnce(proof.notes, section.closing);
    section.closing.push_back(say(kCodeCaution));
    return section;
}

}  // namespace ww::report
