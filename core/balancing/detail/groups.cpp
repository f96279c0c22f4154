#include <algorithm>

#include "core/balancing/detail/round_numbers.h"

namespace ww::balancing::detail {

namespace {

using project::BranchTree;
using project::Project;

constexpr double kTieRatio = 1e-9;

/// The lowest of design among members for which `counts` holds; a tie goes to the later one.
template <class Counts>
std::optional<std::size_t> lowest(const std::vector<std::size_t>& members,
                                  const std::vector<BranchResult>& branches, Counts counts) {
    std::optional<std::size_t> best;
    for (const std::size_t member : members) {
        if (!counts(branches[member])) {
            continue;
        }
        const double ratio = branches[member].ofDesign->si();
        if (!best || ratio <= branches[*best].ofDesign->si() * (1 + kTieRatio)) {
            best = member;
        }
    }
    return best;
}

void judge(const Project& project, const std::vector<BranchResult>& branches, GroupResult& group) {
    std::optional<double> low;
    std::optional<double> high;
    for (const std::size_t member : group.members) {
        const BranchResult& result = branches[member];
        if (!result.isMatchable) {
            continue;
        }
        if (!result.ofDesign || !result.ofTarget) {
            return;  // The lowest may be the one that is missing.
        }
        low = std::min(low.value_or(result.ofTarget->si()), result.ofTarget->si());
        high = std::max(high.value_or(result.ofTarget->si()), result.ofTarget->si());
    }
    if (!low) {
        return;
    }
    group.spread = Ratio::si(*high - *low);
    group.reference = lowest(group.members, branches, [](const BranchResult& b) { return b.isMatchable; });
    const double reach =
        branches[*group.reference].ofDesign->si() * (1 + project.job().matchingBand.value.si());
    const auto open = lowest(group.members, branches, [&](const BranchResult& b) {
        return b.isMatchable && b.ofDesign->si() <= reach && isUnthrottled(project, b);
    });
    if (open) {
        group.reference = open;
    }
}

}  // namespace

std::vector<GroupResult> groupResults(const Project& project, const std::vector<BranchResult>& branches) {
    const BranchTree& tree = project.tree();
    std::vector<GroupResult> groups;
    const auto add = [&](std::optional<std::size_t> parent, std::span<const std::size_t> members) {
        GroupResult group;
        group.parent = parent;
        group.members.assign(members.begin(), members.end());
        judge(project, branches, group);
        groups.push_back(std::move(group));
    };
    if (!tree.roots().empty()) {
        add(std::nullopt, tree.roots());
    }
    for (const std::size_t branch : tree.topDown()) {
        if (!tree.isTerminal(branch)) {
            add(branch, tree.children(branch));
        }
    }
    return groups;
}

IndexCircuit indexCircuit(const Project& project, const std::vector<BranchResult>& branches,
                          const std::vector<GroupResult>& groups) {
    constexpr std::size_t kNoGroup = static_cast<std::size_t>(-1);
    std::vector<std::size_t> groupBelow(branches.size(), kNoGroup);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        if (groups[i].parent) {
            groupBelow[*groups[i].parent] = i;
        }
    }
    IndexCircuit index;
    std::size_t at = groups.empty() ? kNoGroup : 0;
    while (at != kNoGroup) {
        if (!groups[at].reference) {
            return {};
        }
        index.path.push_back(*groups[at].reference);
        at = groupBelow[index.path.back()];
    }
    if (index.path.empty()) {
        return {};
    }
    index.terminal = index.path.back();
    index.isValveFullyOpen = isUnthrottled(project, branches[*index.terminal]);
    index.isPathFullyOpen = std::all_of(index.path.begin(), index.path.end(), [&](std::size_t branch) {
        return isUnthrottled(project, branches[branch]);
    });
    return index;
}

}  // namespace ww::balancing::detail
