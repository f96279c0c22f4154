#include "core/balancing/readiness.h"

#include "core/project/edit_label.h"

#include <algorithm>
#include <array>

namespace ww::balancing {

namespace {

struct UsualLine {
    const char* text;
    bool isMandatory;
};
constexpr std::array kUsualLines{
    UsualLine{base::term("Pipework is complete and pressure tested"), true},
    UsualLine{base::term("The loop is flushed and chemically cleaned"), true},
    UsualLine{base::term("Strainers are cleaned and start-up screens are out"), true},
    UsualLine{
        base::term(
            "The loop is filled and vented at its high points; the pressure with the pumps off is noted"),
        true},
    UsualLine{base::term("The expansion vessel works and its pre-charge is checked"), true},
    UsualLine{base::term("Pumps turn the right way, are aligned and lubricated"), true},
    UsualLine{base::term("Motor protection is set to the motor's plate"), true},
    UsualLine{base::term("All isolating and balancing valves are open"), true},
    UsualLine{base::term("Bypasses are closed"), true},
    UsualLine{base::term("Control valves stand at full flow through their coils, seen at the valve"), true},
    UsualLine{base::term("The controls hold that position until balancing is done"), true},
    UsualLine{base::term("Chillers or boilers keep their design temperatures"), false},
    UsualLine{base::term("The air side is balanced, where heat is to be checked"), false},
};

int lastPosition(const project::Project& project) {
    int last = 0;
    for (const project::ReadinessLine& line : project.readiness()) {
        last = std::max(last, line.position);
    }
    return last;
}

}  // namespace

project::Edit addUsualReadiness(const project::Project& project, base::IdSource& ids,
                                const base::Wording& wording) {
    project::Edit edit;
    edit.label = project::label(project::labels::kUsualReadiness);
    int position = lastPosition(project);
    for (const UsualLine& usual : kUsualLines) {
        const std::string worded = wording ? wording(usual.text) : std::string(usual.text);
        const bool isThere = std::any_of(project.readiness().begin(), project.readiness().end(),
                                         [&](const project::ReadinessLine& line) {
                                             return line.text == usual.text || line.text == worded;
                                         });
        if (!isThere) {
            project::ReadinessLine line;
            line.id = ids.next();
            line.position = ++position;
            line.text = usual.text;
            line.isMandatory = usual.isMandatory;
            edit.put.emplace_back(std::move(line));
        }
    }
    return edit;
}

bool isUsualReadiness(std::string_view text) {
    return std::any_of(kUsualLines.begin(), kUsualLines.end(),
                       [&](const UsualLine& usual) { return usual.text == text; });
}

project::Edit putReadinessLine(const project::Project& project, project::ReadinessLine line) {
    if (line.position == 0) {
        line.position = lastPosition(project) + 1;
    }
    project::Edit edit;
    edit.label = project::label(project::labels::kReadiness, {line.text});
    edit.put.emplace_back(std::move(line));
    return edit;
}

}  // namespace ww::balancing
