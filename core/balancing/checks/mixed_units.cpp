#include <algorithm>
#include <map>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

/// Whether somebody changed the unit of these digits: then it is meant.
bool isUnitChosen(const project::Project& project, const project::Reading& reading) {
    const project::Reading* before =
        reading.supersedes ? project.readings().find(*reading.supersedes) : nullptr;
    return before != nullptr && before->dp && before->dp->digits == reading.dp->digits &&
           before->dp->unit != reading.dp->unit;
}

}  // namespace

/// One instrument that was read in two units within a round: often a forgotten unit. It stays a warning,
/// because an instrument can be switched; a reading that is wrong by a unit is doubtful by itself.
void mixedUnits(const CheckContext& context, std::vector<Finding>& found) {
    std::map<base::Id, std::map<quantity::Unit, std::vector<std::size_t>>> byInstrument;
    for (std::size_t i = 0; i < context.now.readings.size(); ++i) {
        const project::Reading* reading = context.now.readings[i].counting;
        if (reading != nullptr && reading->dp && !isUnitChosen(context.project, *reading)) {
            byInstrument[reading->instrument.value_or(base::Id{})][reading->dp->unit].push_back(i);
        }
    }
    for (const auto& [instrument, units] : byInstrument) {
        const auto usual = std::max_element(units.begin(), units.end(), [](const auto& a, const auto& b) {
            return a.second.size() < b.second.size();
        });
        const project::Instrument* record = context.project.instruments().find(instrument);
        for (const auto& [unit, branches] : units) {
            for (const std::size_t branch : unit == usual->first ? std::vector<std::size_t>{} : branches) {
                found.push_back(aboutBranch(
                    context, branch, kUnitsMixed,
                    {context.now.readings[branch].counting->dp->text(), std::string(quantity::symbol(unit)),
                     record != nullptr ? record->tag : "?", std::string(quantity::symbol(usual->first))},
                    Severity::Warning, true));
            }
        }
    }
}

}  // namespace ww::balancing::checks
