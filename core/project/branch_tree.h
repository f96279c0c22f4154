// The branches of a job as a tree in flat arrays: children in order along their parent, terminals, depth.
// Not for flows.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/project/record_table.h"
#include "core/project/records.h"

namespace ww::project {

/// Nodes are numbered like the branches of the table it was built from (index into RecordTable<Branch>).
class BranchTree {
  public:
    static constexpr std::size_t kNone = static_cast<std::size_t>(-1);

    /// A parent that does not exist, or a cycle, counts as fed at the pump. A branch that is not in the loop
    /// (Branch::isInLoop) is in no list; what it feeds is fed where it is.
    explicit BranchTree(const RecordTable<Branch>& branches);

    /// Branches fed at the pump, nearest first: the top group.
    std::span<const std::size_t> roots() const { return m_roots; }
    /// Children of a branch, nearest first.
    std::span<const std::size_t> children(std::size_t branch) const;
    std::size_t parent(std::size_t branch) const { return m_parent[branch]; }
    bool isTerminal(std::size_t branch) const { return children(branch).empty(); }
    /// All branches, every parent before its children, siblings nearest first.
    std::span<const std::size_t> topDown() const { return m_topDown; }
    /// Terminals in walking order (Branch::position).
    std::span<const std::size_t> terminals() const { return m_terminals; }
    /// All branches in walking order (Branch::position).
    std::span<const std::size_t> walkingOrder() const { return m_walking; }
    std::size_t size() const { return m_parent.size(); }

  private:
    std::vector<std::size_t> m_parent;
    std::vector<std::size_t> m_roots;
    std::vector<std::size_t> m_children;       ///< all children lists, one after the other
    std::vector<std::size_t> m_childrenStart;  ///< size() + 1 entries
    std::vector<std::size_t> m_topDown;
    std::vector<std::size_t> m_terminals;
    std::vector<std::size_t> m_walking;
};

}  // namespace ww::project
