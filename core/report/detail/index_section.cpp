#include "core/balancing/index_rivals.h"
#include "core/base/term.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

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

bool isReadable(const Source& source, std::size_t branch) {
    const auto& dp = source.last.branches[branch].dp;
    const auto minimum = minimumOf(source, branch);
    return dp && (!minimum || *dp >= minimum->value);
}

Fact openFact(const Source& source, const IndexProof& proof) {
    const std::size_t terminal = *source.last.index.terminal;
    std::vector<std::string> arguments{source.branch(terminal).tag, source.setting(terminal),
                                       source.fullyOpen(terminal)};
    if (arguments[1].empty() || arguments[2].empty()) {
        return {say(kFullyOpenLabel), say(kIndexWithoutSetting, {arguments[0]}), Mark::Open};
    }
    if (proof.isFullyOpen) {
        return {say(kFullyOpenLabel), say(kPathFullyOpen, arguments), Mark::Pass};
    }
    arguments.push_back(proof.notOpen);
    return {say(kFullyOpenLabel), say(kPathNotFullyOpen, arguments), Mark::Fail};
}

Fact readableFact(const Source& source) {
    const std::size_t terminal = *source.last.index.terminal;
    const std::string tag = source.branch(terminal).tag;
    const std::string dp = dpOf(source, terminal);
    if (dp.empty()) {
        return {say(kReadableLabel), say(kDpMissing, {tag}), Mark::Open};
    }
    const auto minimum = minimumOf(source, terminal);
    if (!minimum) {
        return {say(kReadableLabel), say(kDpWithoutMinimum, {dp, tag}), Mark::Pass};
    }
    const bool isEnough = isReadable(source, terminal);
    return {say(kReadableLabel), say(isEnough ? kDpReadable : kDpTooSmall, {dp, tag, typed(*minimum)}),
            isEnough ? Mark::Pass : Mark::Fail};
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

IndexProof indexProof(const Source& source) {
    IndexProof proof;
    const balancing::IndexCircuit& index = source.last.index;
    if (!source.hasRound() || !index.terminal) {
        return proof;
    }
    proof.isKnown = true;
    proof.isFullyOpen = index.isValveFullyOpen && index.isPathFullyOpen;
    for (const std::size_t branch : index.path) {
        if (valveOf(source, branch) != nullptr && !source.last.branches[branch].isFullyOpen) {
            proof.notOpen += (proof.notOpen.empty() ? "" : ", ") + source.branch(branch).tag;
        }
    }
    proof.isReadable = isReadable(source, *index.terminal);
    for (const std::size_t rival : balancing::indexRivals(source.last.branches, index)) {
        proof.otherShorter += (proof.otherShorter.empty() ? "" : ", ") + source.branch(rival).tag;
    }
    proof.isAlone = proof.otherShorter.empty();
    return proof;
}

Section indexSection(const Source& source) {
    Section section;
    section.number = kIndex;
    section.title = say(kIndexTitle);
    const IndexProof proof = indexProof(source);
    if (!proof.isKnown) {
        section.statements.push_back(say(source.hasRound() ? kIndexUnknown : kNoRound));
        return section;
    }
    std::string path;
    for (const std::size_t branch : source.last.index.path) {
        path += (path.empty() ? "" : " → ") + source.branch(branch).tag;
    }
    section.facts = {
        {say(kPathLabel), plain(path)},
        openFact(source, proof),
        readableFact(source),
        {say(kNoOtherLabel), proof.isAlone ? say(kNoOtherShorter) : say(kOtherShorter, {proof.otherShorter}),
         proof.isAlone ? Mark::Pass : Mark::Fail},
    };
    section.statements.push_back(
        say(proof.isProved() ? kIndexProved : kIndexNotProved, {std::to_string(kIndex)}));
    section.tables.push_back(pathTable(source));
    return section;
}

}  // namespace ww::report::detail
