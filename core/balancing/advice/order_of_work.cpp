#include "core/balancing/advice/order_of_work.h"

#include <algorithm>

namespace ww::balancing {

namespace {

/// Members of a group, the largest excess first.
std::vector<std::size_t> ranked(std::span<const std::size_t> members, const std::vector<Ratio>& excess) {
    std::vector<std::size_t> order(members.rbegin(), members.rend());
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return excess[a] > excess[b]; });
    return order;
}

}  // namespace

std::vector<std::size_t> orderOfWork(const project::Project& project, const std::vector<Ratio>& excess) {
    const project::BranchTree& tree = project.tree();
    EXPECTS(excess.size() == tree.size());
    // The reverse of: a branch before what is below it, the smallest excess first.
    std::vector<std::size_t> out;
    std::vector<std::size_t> open = ranked(tree.roots(), excess);
    while (!open.empty()) {
        const std::size_t branch = open.back();
        open.pop_back();
        out.push_back(branch);
        const auto below = ranked(tree.children(branch), excess);
        open.insert(open.end(), below.begin(), below.end());
    }
    std::reverse(out.begin(), out.end());
    return out;
}

}  // namespace ww::balancing
