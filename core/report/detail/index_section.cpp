#include <algorithm>

#include "core/balancing/index_proof.h"
#include "core/balancing/index_rivals.h"
#include "core/base/term.h"
#include "core/project/units.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

using balancing::IndexProof;

const project::ValveModel* valveOf(const Source& source, std::size_t branch) {
    const auto& valve = source.branch(branch).valve;
    return valve ? source.project.valves().find(*valve) : nullptr;
}

std::optional<quantity::Measured<quantity::PressureDifference>> minimumOf(const Source& source,
                                                                          std::size_t branch) {
    const project::ValveModel* valve = valveOf(source, branch);
    return valve != nullptr ? valve->minimumDp : std::nullopt;
}

/// The dp that counts as it was typed.
std::string dpOf(const Source& source, std::size_t branch) {
    const auto& id = source.last.branches[branch].reading;
    const project::Reading* reading = id ? source.project.readings().find(*id) : nullptr;
    return reading != nullptr ? typed(reading->dp) : std::string();
}

/// "B1 (3.9 / 4.0), B2 (2.0 / 4.0)": with the settings at which they stand.
std::string tagsOf(const Source& source, const std::vector<std::size_t>& branches) {
    std::string tags;
    for (const std::size_t branch : branches) {
        const std::string place = source.settingOfMaximum(branch);
        tags += (tags.empty() ? "" : ", ") + source.branch(branch).tag;
        tags += place.empty() ? "" : " (" + place + ")";
    }
    return tags;
}

Fact openFact(const Source& source, const IndexProof& proof) {
    const std::size_t terminal = *source.last.index.terminal;
    std::vector<std::string> arguments{source.branch(terminal).tag, source.setting(terminal),
                                       source.fullyOpen(terminal)};
    if (arguments[1].empty() || arguments[2].empty()) {
        return {say(kFullyOpenLabel), say(kIndexWithoutSetting, {arguments[0]}), Mark::Open};
    }
    if (proof.isFullyOpen()) {
        return {say(kFullyOpenLabel), say(kPathFullyOpen, arguments), Mark::Pass};
    }
    arguments.push_back(tagsOf(source, proof.notOpen));
    return {say(kFullyOpenLabel), say(kPathNotFullyOpen, arguments), Mark::Fail};
}

Fact readableFact(const Source& source, const IndexProof& proof) {
    const std::size_t terminal = *source.last.index.terminal;
    const std::string tag = source.branch(terminal).tag;
    const std::string dp = dpOf(source, terminal);
    if (dp.empty()) {
        return {say(kReadableLabel), say(kDpMissing, {tag}), Mark::Open};
    }
    if (!proof.readableMinimum) {
        return {say(kReadableLabel), say(kDpMissing, {tag}), Mark::Open};
    }
    const auto entered = minimumOf(source, terminal);
    const std::string minimum = entered && entered->value == *proof.readableMinimum
                                    ? typed(*entered)
                                    : project::shownUnits(source.project).text(*proof.readableMinimum, 3);
    if (proof.undecidedDp) {
        return {say(kReadableLabel),
                say(kDpUndecided,
                    {dp, tag, minimum, project::shownUnits(source.project).text(*proof.undecidedDp)}),
                Mark::Open};
    }
    return {say(kReadableLabel), say(proof.isReadable ? kDpReadable : kDpTooSmall, {dp, tag, minimum}),
            proof.isReadable ? Mark::Pass : Mark::Fail};
}

/// That no other terminal may be the index: its valve can be open all along the path and another be worse
/// off.
Fact aloneFact(const Source& source, const IndexProof& proof) {
    if (proof.isAlone()) {
        return {say(kNoOtherLabel), say(kNoOtherShorter), Mark::Pass};
    }
    const auto ofDesign = [&](std::size_t branch) {
        return source.display.percent(source.last.branches[branch].ofDesign);
    };
    const auto named = [&](const std::vector<std::size_t>& rivals) {
        std::string names;
        for (const std::size_t rival : rivals) {
            names += (names.empty() ? "" : ", ") + source.branch(rival).tag + " (" + ofDesign(rival) + " %)";
        }
        return names;
    };
    const std::size_t terminal = *source.last.index.terminal;
    std::vector<std::string> arguments{source.branch(terminal).tag, ofDesign(terminal)};
    if (!proof.rivals.empty() && proof.undecidedRivals.empty()) {
        arguments.push_back(named(proof.rivals));
        return {say(kNoOtherLabel), say(kOtherShorter, std::move(arguments)), Mark::Open};
    }
    quantity::Ratio least;
    for (const std::size_t rival : proof.undecidedRivals) {
        least = std::max(least, balancing::distanceUncertainty(source.last.branches[rival],
                                                               source.last.branches[terminal]));
    }
    arguments.push_back(named(proof.undecidedRivals));
    arguments.push_back(source.display.percent(least));
    if (!proof.rivals.empty()) {
        arguments.push_back(named(proof.rivals));
        return {say(kNoOtherLabel), say(kOtherShorterOrUndecided, std::move(arguments)), Mark::Open};
    }
    return {say(kNoOtherLabel), say(kOtherUndecided, std::move(arguments)), Mark::Open};
}

/// The parts of the proof, one a fact, in the order in which they are judged.
std::vector<Fact> proofFacts(const Source& source, const IndexProof& proof) {
    return {openFact(source, proof), readableFact(source, proof), aloneFact(source, proof)};
}

Table pathTable(const Source& source) {
    const std::string flow = printed(source.display.flowUnit());
    Table table;
    table.title = say(kIndexTable);
    table.columns = {column(kTagColumn, 20),
                     column(kServesColumn, 40),
                     column(kSettingColumn, 22, Alignment::Right, base::term("of max")),
                     column(kFullyOpenColumn, 20),
                     column(kDpColumn, 26, Alignment::Right, base::term("with unit")),
                     column(kMinimumColumn, 22, Alignment::Right),
                     column(kFlowColumn, 18, Alignment::Right, flow),
                     column(kOfDesignColumn, 20, Alignment::Right, "%")};
    for (const std::size_t branch : source.last.index.path) {
        const BranchResult& result = source.last.branches[branch];
        const std::string open = valveOf(source, branch) == nullptr ? base::term("no valve")
                                 : result.isFullyOpen               ? base::term("yes")
                                                                    : base::term("no");
        table.rows.push_back({cell(source.branch(branch).tag), cell(source.branch(branch).serves),
                              cell(source.settingOfMaximum(branch)), wordCell(open),
                              cell(dpOf(source, branch)), cell(typed(minimumOf(source, branch))),
                              cell(source.display.flow(result.flow)),
                              cell(source.display.percent(result.ofDesign))});
    }
    return table;
}

}  // namespace

std::string indexPathText(const Source& source) {
    std::string path;
    for (const std::size_t branch : source.last.index.path) {
        path += (path.empty() ? "" : " → ") + source.branch(branch).tag;
    }
    return path;
}

std::optional<Fact> indexProofFact(const Source& source) {
    const IndexProof proof = balancing::indexProof(source.project, source.last);
    if (!source.hasRound() || !proof.isKnown) {
        return std::nullopt;
    }
    if (proof.isProved()) {
        return Fact{say(kIndexProofLabel), say(kIndexProved), Mark::Pass};
    }
    for (const Fact& part : proofFacts(source, proof)) {
        if (part.mark != Mark::Pass) {
            return Fact{say(kIndexProofLabel), part.value, part.mark};
        }
    }
    return std::nullopt;
}

Section indexSection(const Source& source) {
    Section section;
    section.number = kIndex;
    section.title = say(kIndexTitle);
    const IndexProof proof = balancing::indexProof(source.project, source.last);
    if (!source.hasRound() || !proof.isKnown) {
        section.statements.push_back(say(source.hasRound() ? kIndexUnknown : kNoRound));
        return section;
    }
    section.facts = proofFacts(source, proof);
    section.facts.insert(section.facts.begin(), {say(kPathLabel), plain(indexPathText(source))});
    section.statements.push_back(proof.isProved() ? say(kIndexProved) : say(kIndexNotProved));
    section.tables.push_back(pathTable(source));
    return section;
}

}  // namespace ww::report::detail
