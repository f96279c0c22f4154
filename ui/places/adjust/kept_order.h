// The working order of the valves as it was made for a round. Each try changes which valve takes most; the
// next one is not to change with it under the hand. Not for the order itself (core/balancing/adjusting.h).
#pragma once

#include <optional>
#include <vector>

#include "ui/loop_advisor.h"

namespace ww::ui {

class KeptOrder {
  public:
    KeptOrder(const WorkbookBridge& bridge, const LoopAdvisor& advisor)
        : m_bridge(bridge), m_advisor(advisor) {}

    /// Indices into Project::branches(). Made anew when another round is the last one that was closed, when
    /// other valves are to be set (a reference changed), and when the first advice is there.
    std::vector<std::size_t> order();

  private:
    std::vector<base::Id> idsOf(const std::vector<std::size_t>& branches) const;
    bool isStillGood(const std::vector<base::Id>& fresh, const std::optional<base::Id>& round,
                     bool isAdvised) const;

    const WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    std::vector<base::Id> m_order;
    std::optional<base::Id> m_round;
    bool m_isAdvised = false;
};

}  // namespace ww::ui
