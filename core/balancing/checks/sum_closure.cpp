#include <cmath>
#include <utility>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kWarnScore = 2;
constexpr double kErrorScore = 3;

}  // namespace

/// A branch that was read itself against the sum of those it feeds: z = difference over its standard
/// uncertainty (JCGM 100:2008, 5.1.2; all parts). Readings of different states of the loop need not add up.
void sumClosure(const CheckContext& context, std::vector<Finding>& found) {
    ReadingStates states(context.project);
    for (const GroupResult& group : context.now.groups) {
        if (!group.parent) {
            continue;
        }
        const BranchResult& own = context.now.branches[*group.parent];
        if (own.source != FlowSource::ValveDp && own.source != FlowSource::DirectReading) {
            continue;
        }
        VolumeFlow sum;
        double square = own.flowUncertainty->si() * own.flowUncertainty->si();
        bool hasAll = true;
        for (const std::size_t member : group.members) {
            const BranchResult& part = context.now.branches[member];
            hasAll = hasAll && part.flow.has_value();
            if (part.flow) {
                sum += *part.flow;
                square += part.flowUncertainty->si() * part.flowUncertainty->si();
            }
        }
        if (!hasAll || square <= 0) {
            continue;
        }
        const double score = std::abs((sum - *own.flow).si()) / std::sqrt(square);
        if (score <= kWarnScore) {
            continue;
        }
        std::vector<Id> ofParent;
        addReadingsBehind(context.project, context.now, *group.parent, ofParent);
        if (isOfOneState(context, group, std::move(ofParent), states)) {
            found.push_back(
                aboutBranch(context, *group.parent, kSumOpen,
                            {detail::flowText(context.project, *own.flow),
                             detail::flowText(context.project, sum), quantity::significant(score, 2)},
                            score > kErrorScore ? Severity::Error : Severity::Warning));
        }
    }
}

}  // namespace ww::balancing::checks
