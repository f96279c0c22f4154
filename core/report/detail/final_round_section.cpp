#include <set>

#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

/// Letters behind a tag or a value and what they mean; only those used are explained.
struct Notes {
    bool hasIndex = false;
    bool hasCorrected = false;
    bool hasRepeat = false;
    bool hasSum = false;
    bool hasDirect = false;
    bool hasEarlier = false;
    bool hasShareOfOwnValve = false;

    std::vector<Statement> statements() const {
        std::vector<Statement> all;
        const auto add = [&all](bool isUsed, const base::MessageForm& form,
                                std::vector<std::string> arguments = {}) {
            if (isUsed) {
                all.push_back(say(form, std::move(arguments)));
            }
        };
        add(hasIndex, kIndexNote);
        add(hasCorrected, kCorrectedNote, {std::to_string(kExceptions)});
        add(hasRepeat, kRepeatNote);
        add(hasDirect, kReadNote);
        add(hasSum, kSumNote);
        add(hasEarlier, kEarlierNote);
        add(hasShareOfOwnValve, kShareNote);
        return all;
    }
};

std::set<base::Id> branchesWithCorrections(const Source& source) {
    std::set<base::Id> branches;
    if (source.last.round) {
        for (const std::size_t index : source.project.readingsOf(*source.last.round)) {
            const project::Reading& reading = source.project.readings()[index];
            if (isCorrection(source.project, reading)) {
                branches.insert(reading.branch);
            }
        }
    }
    return branches;
}

std::string dpText(const Source& source, const BranchResult& result, Notes& notes) {
    const project::Reading* reading =
        result.reading ? source.project.readings().find(*result.reading) : nullptr;
    std::string text;
    if (reading != nullptr) {
        text = reading->dp             ? typed(*reading->dp)
               : reading->cannotBeRead ? std::string(base::term("not readable"))
                                       : std::string();
    }
    const auto mark = [&text](bool& isUsed, std::string_view letter) {
        isUsed = true;
        text += text.empty() ? std::string(letter) : " " + std::string(letter);
    };
    if (result.dpRepeatability) {
        mark(notes.hasRepeat, "r");
    }
    if (result.isFromEarlierRound) {
        mark(notes.hasEarlier, "e");
    }
    return text;
}

std::string flowText(const Source& source, const BranchResult& result, Notes& notes) {
    if (result.source == balancing::FlowSource::Range && result.flowLow && result.flowHigh) {
        return source.display.flow(result.flowLow) + " – " + source.display.flow(result.flowHigh);
    }
    std::string text = source.display.flow(result.flow);
    if (text.empty()) {
        return text;
    }
    if (result.source == balancing::FlowSource::SumOfChildren) {
        notes.hasSum = true;
        text += " s";
    } else if (result.source == balancing::FlowSource::DirectReading) {
        notes.hasDirect = true;
        text += " f";
    }
    return text;
}

std::vector<Column> columns(const Source& source) {
    const std::string flow = printed(source.display.flowUnit());
    return {column(kTagColumn, 24),
            column(kServesColumn, 44),
            column(kSettingColumn, 22, Alignment::Right, base::term("of max")),
            column(kDpColumn, 26, Alignment::Right, base::term("with unit")),
            column(kFlowColumn, 23, Alignment::Right, flow),
            column(kDesignColumn, 19, Alignment::Right, flow),
            column(kShareColumn, 16, Alignment::Right, "%"),
            column(kTargetColumn, 16, Alignment::Right, "%"),
            column(kOfTargetColumn, 20, Alignment::Right, "%"),
            column(kOfDesignColumn, 21, Alignment::Right, "%"),
            column(kStateColumn, 28)};
}

}  // namespace

Section finalRoundSection(const Source& source) {
    Section section;
    section.number = kFinal;
    section.title = say(source.isFinalRound() ? kFinalTitle : kLastRoundTitle);
    if (!source.hasRound()) {
        section.statements.push_back(say(kNoRound));
        return section;
    }
    Notes notes;
    const std::set<base::Id> corrected = branchesWithCorrections(source);
    Table table;
    table.isLandscape = true;
    table.title =
        say(kFinalTable, {std::to_string(source.last.roundNumber),
                          std::string(project::name(source.last.kind)), datesOf(source, source.last.round)});
    table.columns = columns(source);
    const Display& display = source.display;
    for (const auto& [index, depth] : source.outline()) {
        const BranchResult& result = source.last.branches[index];
        std::string tag(static_cast<std::size_t>(depth) * 3, ' ');
        tag += source.branch(index).tag;
        notes.hasShareOfOwnValve =
            notes.hasShareOfOwnValve ||
            (!result.isTerminal && result.share && result.source != balancing::FlowSource::SumOfChildren);
        if (source.last.index.terminal == index) {
            notes.hasIndex = true;
            tag += " *";
        }
        if (corrected.contains(source.branch(index).id)) {
            notes.hasCorrected = true;
            tag += " c";
        }
        table.rows.push_back({cell(tag), cell(source.branch(index).serves),
                              cell(source.settingOfMaximum(index)), wordCell(dpText(source, result, notes)),
                              cell(flowText(source, result, notes)), cell(display.flow(result.designFlow)),
                              cell(display.percent(result.share)), cell(display.percent(result.targetShare)),
                              cell(display.percent(result.ofTarget)), cell(display.percent(result.ofDesign)),
                              stateCell(result)});
    }
    std::optional<quantity::Ratio> whole;
    if (source.last.totalFlow && source.last.totalDesign.si() > 0) {
        whole = quantity::Ratio::si(*source.last.totalFlow / source.last.totalDesign);
    }
    table.totals = {
        wordCell(base::term("Sum")),
        wordCell(base::term("of the terminals")),
        {},
        {},
        cell(display.flow(source.last.totalFlow)),
        cell(display.flow(source.last.totalDesign)),
        cell(source.last.totalFlow ? "100.0" : ""),
        cell("100.0"),
        {},
        cell(display.percent(whole)),
        source.last.spread ? cell({say(kSpreadTotal, {display.percent(source.last.spread)})}, "") : Cell{}};
    table.notes = notes.statements();
    section.tables.push_back(std::move(table));
    return section;
}

}  // namespace ww::report::detail
