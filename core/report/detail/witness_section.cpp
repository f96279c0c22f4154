#include "core/balancing/standing_readings.h"
#include "core/balancing/witness.h"
#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/record_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

using balancing::WitnessResult;
using balancing::WitnessVerdict;

Fact verdictOf(const project::Round& round, const WitnessResult& result) {
    const base::Fault label = say(kWitnessLabel, {std::to_string(round.number)});
    const std::string all = std::to_string(result.rows.size());
    const std::string within = std::to_string(result.rows.size() - result.failing);
    switch (result.verdict) {
        case WitnessVerdict::Confirmed:
            return {label, say(kWitnessConfirmed, {within, all}), Mark::Pass};
        case WitnessVerdict::NotConfirmed:
            return {label, say(kWitnessNotConfirmed, {within, all}), Mark::Fail};
        case WitnessVerdict::Unfinished:
            break;
    }
    return {label, say(kWitnessUnfinished, {std::to_string(result.unread), all}), Mark::Open};
}

Cell marked(std::string name, bool isSame) {
    return isSame ? cell({say(kTheSame, {std::move(name)})}, "") : cell(std::move(name));
}

Table tableOf(const Source& source, const project::Round& round, const WitnessResult& result) {
    const project::Round* reported = balancing::reportedRound(source.project, &round);
    const std::string unit = printed(source.display.flowUnit());
    Table table;
    table.title = say(kWitnessTable, {std::to_string(round.number),
                                      reported == nullptr ? "-" : std::to_string(reported->number)});
    table.columns = {column(kTagColumn, 20),
                     column(kServesColumn, 36),
                     column(kReportedColumn, 18, Alignment::Right, unit),
                     column(kRereadColumn, 18, Alignment::Right, unit),
                     column(kRatioColumn, 20, Alignment::Right, "%"),
                     column(kWithinColumn, 16, Alignment::Center),
                     column(kPersonColumn, 30),
                     column(kInstrumentColumn, 22)};
    for (const balancing::WitnessRow& row : result.rows) {
        const project::Branch& branch = source.project.branches().at(row.branch);
        const project::Reading* reading = balancing::countingReading(source.project, round.id, row.branch);
        std::optional<quantity::Ratio> ratio;
        if (row.reread && row.reported) {
            ratio = quantity::Ratio::si(*row.reread / *row.reported);
        }
        table.rows.push_back(
            {cell(branch.tag), cell(branch.serves), cell(source.display.flow(row.reported)),
             cell(source.display.flow(row.reread)), cell(source.display.percent(ratio)),
             wordCell(!ratio           ? ""
                      : row.deviates() ? base::term("NO")
                                       : base::term("yes")),
             reading == nullptr ? Cell{} : marked(source.person(reading->person), row.isSameReader),
             reading == nullptr ? Cell{}
                                : marked(source.instrument(reading->instrument), row.isSameInstrument)});
    }
    return table;
}

}  // namespace

Section witnessSection(const Source& source) {
    Section section;
    section.number = kWitness;
    section.title = say(kWitnessTitle);
    for (const base::Id& id : source.walked) {
        const project::Round& round = source.project.rounds().at(id);
        if (round.kind != project::RoundKind::Witness || round.sample.empty()) {
            continue;
        }
        const WitnessResult result = balancing::witnessResult(source.project, id);
        section.facts.push_back(verdictOf(round, result));
        section.statements.push_back(say(kWitnessText, {round.sampleSeed ? round.sampleSeed->text() : "-"}));
        section.tables.push_back(tableOf(source, round, result));
    }
    if (section.tables.empty()) {
        section.statements.push_back(say(kNoWitness));
    }
    return section;
}

}  // namespace ww::report::detail
