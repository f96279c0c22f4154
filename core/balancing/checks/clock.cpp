#include "core/balancing/checks/support.h"
#include "core/project/clock_offset.h"

namespace ww::balancing::checks {

/// Readings dated before one that was entered before them in the same round. Corrections keep the time of
/// what they correct and are left out, and so are times that a clock wrote which was set right since.
void clock(const CheckContext& context, std::vector<Finding>& found) {
    std::optional<base::Instant> latest;
    std::size_t count = 0;
    std::optional<Finding> first;
    for (const std::size_t index : context.project.readingsOf(context.round.id)) {
        const project::Reading& reading = context.project.readings()[index];
        const project::Branch* branch = context.project.branches().find(reading.branch);
        if (!reading.time || reading.supersedes || branch == nullptr ||
            project::uncertainTime(context.project, *reading.time) != nullptr) {
            continue;
        }
        if (latest && *reading.time < *latest) {
            if (++count == 1) {
                first = Finding{
                    base::Fault{&kClockWentBack, branch->tag, {"", reading.time->text(), latest->text()}},
                    Severity::Warning, branch->id, reading.id};
            }
            continue;
        }
        latest = reading.time;
    }
    if (first) {
        first->fault.arguments[0] = detail::numberText(count);
        found.push_back(std::move(*first));
    }
}

}  // namespace ww::balancing::checks
