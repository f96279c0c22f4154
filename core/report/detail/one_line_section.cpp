#include "core/report/detail/record_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {

Section oneLineSection(const Source& source) {
    Section section;
    section.number = kOneLine;
    section.title = say(kOneLineTitle);
    if (source.project.branches().empty()) {
        section.statements.push_back(say(kNoBranches));
        return section;
    }
    std::string path;
    for (const std::size_t branch : source.last.index.path) {
        path += (path.empty() ? "" : " → ") + source.branch(branch).tag;
    }
    section.statements.push_back(say(kOneLineText));
    section.figures.push_back(
        {FigureKind::OneLine, say(source.isFinalRound() ? kOneLineFigure : kOneLineLastFigure),
         say(kOneLineReading, {std::to_string(source.project.branches().size()),
                               std::to_string(source.project.tree().terminals().size()),
                               path.empty() ? base::english(say(kIndexNotKnown)) : path})});
    return section;
}

}  // namespace ww::report::detail
