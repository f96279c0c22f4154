#include "core/project/branch_tree.h"

#include <algorithm>

namespace ww::project {

namespace {

/// Marks every branch whose chain of parents runs in a circle as fed at the pump.
void cutCycles(std::vector<std::size_t>& parent) {
    enum class Mark : unsigned char { Fresh, Climbing, Done };
    std::vector<Mark> marks(parent.size(), Mark::Fresh);
    std::vector<std::size_t> climbed;
    for (std::size_t start = 0; start < parent.size(); ++start) {
        climbed.clear();
        std::size_t at = start;
        while (at != BranchTree::kNone && marks[at] == Mark::Fresh) {
            marks[at] = Mark::Climbing;
            climbed.push_back(at);
            at = parent[at];
        }
        if (at != BranchTree::kNone && marks[at] == Mark::Climbing) {
            parent[at] = BranchTree::kNone;
        }
        for (const std::size_t branch : climbed) {
            marks[branch] = Mark::Done;
        }
    }
}

}  // namespace

BranchTree::BranchTree(const RecordTable<Branch>& branches) {
    const std::size_t count = branches.size();
    m_parent.assign(count, kNone);
    for (std::size_t i = 0; i < count; ++i) {
        const auto& parent = branches[i].parent;
        if (parent && branches.contains(*parent)) {
            m_parent[i] = branches.indexOf(*parent);
        }
    }
    cutCycles(m_parent);
    for (std::size_t& parent : m_parent) {
        while (parent != kNone && !branches[parent].isInLoop) {
            parent = m_parent[parent];
        }
    }

    m_walking.reserve(count);
    for (std::size_t i = 0; i < count; ++i) {
        if (branches[i].isInLoop) {
            m_walking.push_back(i);
        }
    }
    std::stable_sort(m_walking.begin(), m_walking.end(), [&](std::size_t a, std::size_t b) {
        return branches[a].position < branches[b].position;
    });

    m_childrenStart.assign(count + 1, 0);
    for (const std::size_t branch : m_walking) {
        if (m_parent[branch] == kNone) {
            m_roots.push_back(branch);
        } else {
            ++m_childrenStart[m_parent[branch] + 1];
        }
    }
    for (std::size_t i = 0; i < count; ++i) {
        m_childrenStart[i + 1] += m_childrenStart[i];
    }
    m_children.resize(m_childrenStart[count]);
    std::vector<std::size_t> next(m_childrenStart.begin(), m_childrenStart.end() - (count > 0 ? 1 : 0));
    for (const std::size_t branch : m_walking) {
        if (m_parent[branch] != kNone) {
            m_children[next[m_parent[branch]]++] = branch;
        }
    }

    m_topDown.reserve(count);
    m_topDown.assign(m_roots.begin(), m_roots.end());
    for (std::size_t i = 0; i < m_topDown.size(); ++i) {
        const auto below = children(m_topDown[i]);
        m_topDown.insert(m_topDown.end(), below.begin(), below.end());
    }
    for (const std::size_t branch : m_walking) {
        if (isTerminal(branch)) {
            m_terminals.push_back(branch);
        }
    }
}

std::span<const std::size_t> BranchTree::children(std::size_t branch) const {
    return {m_children.data() + m_childrenStart[branch],
            m_childrenStart[branch + 1] - m_childrenStart[branch]};
}

}  // namespace ww::project
