#include "core/balancing/witness.h"
#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

/// A sample that is read again: by somebody else, with another instrument, and near to what was reported
/// (common practice, no source).
void witness(const CheckContext& context, std::vector<Finding>& found) {
    if (context.round.kind != project::RoundKind::Witness || context.round.sample.empty()) {
        return;
    }
    const project::Project& project = context.project;
    for (const WitnessRow& row : witnessResult(project, context.round.id).rows) {
        const std::size_t branch = project.branches().indexOf(row.branch);
        const project::Reading* reading = context.now.readings[branch].counting;
        if (reading == nullptr) {
            continue;
        }
        const auto tell = [&](const base::MessageForm& form, std::vector<std::string> arguments) {
            found.push_back(
                aboutBranch(context, branch, form, std::move(arguments), Severity::Warning, true));
        };
        if (row.isSameReader) {
            tell(kWitnessSameReader, {project.people().at(*reading->person).name});
        }
        if (row.isSameInstrument) {
            tell(kWitnessSameInstrument, {project.instruments().at(*reading->instrument).tag});
        }
        if (row.deviates()) {
            tell(kWitnessDeviates, {detail::flowText(project, *row.reread),
                                    detail::percentText(Ratio::si(*row.reread / *row.reported)),
                                    detail::flowText(project, *row.reported)});
        }
    }
}

}  // namespace ww::balancing::checks
