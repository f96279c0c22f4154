#include <algorithm>

#include "core/base/term.h"
#include "core/project/names.h"
#include "core/report/detail/record_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {

Section readinessSection(const Source& source) {
    Section section;
    section.number = kReadiness;
    section.title = say(kReadinessTitle);
    std::vector<const project::ReadinessLine*> lines;
    std::size_t mandatory = 0;
    std::size_t settled = 0;
    for (const project::ReadinessLine& line : source.project.readiness()) {
        lines.push_back(&line);
        mandatory += line.isMandatory ? 1U : 0U;
        settled += line.isMandatory && line.state != project::ReadinessState::Open ? 1U : 0U;
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto* a, const auto* b) { return a->position < b->position; });
    section.statements.push_back(
        lines.empty() ? say(kNoReadiness)
                      : say(kReadinessCount, {std::to_string(settled), std::to_string(mandatory)}));
    for (const base::Id& id : source.walked) {
        const project::Round& round = source.project.rounds().at(id);
        if (!round.readiness.empty()) {
            section.statements.push_back(
                say(kSurveyedEarly, {std::to_string(round.number), round.readiness}));
        }
    }
    if (lines.empty()) {
        return section;
    }
    Table table;
    table.title = say(kReadinessTable);
    table.columns = {column(kLineColumn, 70),  column(kMustColumn, 14, Alignment::Center),
                     column(kStateColumn, 22), column(kOwnerColumn, 26),
                     column(kDatesColumn, 20), column(kEvidenceColumn, 40)};
    for (const project::ReadinessLine* line : lines) {
        table.rows.push_back({cell({plain(line->text)}, ""),
                              wordCell(line->isMandatory ? base::term("yes") : base::term("no")),
                              wordCell(std::string(project::name(line->state))), cell(line->owner),
                              cell(line->date ? line->date->date() : ""), cell(line->evidence)});
    }
    section.tables.push_back(std::move(table));
    return section;
}

}  // namespace ww::report::detail
