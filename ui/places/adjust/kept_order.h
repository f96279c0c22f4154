// The working order of the valves as it was made for a round. Each try changes which valve takes most; the
// next one is not to change with it under the hand. A person may take a valve earlier or later. Not for the
// order that is advised (core/balancing/adjusting.h).
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "ui/loop_advisor.h"
#include "ui/order_of_round.h"

namespace ww::ui {

inline constexpr base::MessageForm kMovedInOrder{
    "moved_in_order",
    "it is number {1} of {2} in the working order now; Ctrl+Alt+B goes back to the advised order"};
inline constexpr base::MessageForm kOrderRestored{
    "order_restored", "the valves are taken in the advised order again; Alt+Shift+Up and Down change it"};

/// Where the order of the open workbook outlives its window.
struct OrderKeeping {
    std::function<std::optional<OrderOfRound>()> recall;
    std::function<void(const OrderOfRound&)> keep;
};

class KeptOrder {
  public:
    KeptOrder(const WorkbookBridge& bridge, const LoopAdvisor& advisor)
        : m_bridge(bridge), m_advisor(advisor) {}
    /// From now on each order that is made is kept, and one that is kept of the same round is taken instead
    /// of a new one. Without it the order lives as long as this.
    void setKeeping(OrderKeeping keeping) { m_keeping = std::move(keeping); }

    /// Indices into Project::branches(). Made anew when another round is the last one that was closed, when
    /// other valves are to be set (a reference changed), and when the first advice is there. Where a person
    /// changed it, only another round makes it anew: valves that come take the place they have in the advised
    /// order behind the valve before them.
    std::vector<std::size_t> order();
    /// Takes a valve so many places later, below zero earlier. The place it has then, from 0; nothing where
    /// it is not in the order or can go no further.
    std::optional<std::size_t> move(const base::Id& branch, int places);
    /// Goes back to the advised order.
    void reset();
    /// Whether a person changed the order.
    bool isChanged() const { return m_isChanged; }

  private:
    /// Takes the order that is kept of a round, where there is one.
    void recall(const base::Id& round);
    void keep() const;
    std::vector<base::Id> idsOf(const std::vector<std::size_t>& branches) const;
    bool isStillGood(const std::vector<base::Id>& fresh, const std::optional<base::Id>& round,
                     bool isAdvised) const;
    /// The order a person made, with exactly the valves of `fresh`.
    std::vector<base::Id> withValvesOf(const std::vector<base::Id>& fresh) const;

    const WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    OrderKeeping m_keeping;
    std::vector<base::Id> m_order;
    std::optional<base::Id> m_round;
    bool m_isAdvised = false;
    bool m_isChanged = false;
};

}  // namespace ww::ui
