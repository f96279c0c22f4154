// What a person changes in the working order of the place Adjust, and which of its valves are done. The order
// itself is kept_order.h.
#include <algorithm>

#include "core/balancing/standing_readings.h"
#include "ui/places/adjust/adjust_place.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kMovesNoFurther{"moves_no_further",
                                            "it goes no further in the working order; move another valve"};

/// The newest reading that counts at a branch; nothing where there is none.
std::optional<base::Id> countedAt(const project::Project& project, const base::Id& branch) {
    const project::Round* last = project.lastRound();
    if (last == nullptr) {
        return std::nullopt;
    }
    const project::Reading* counting = balancing::countingReading(project, last->id, branch);
    if (counting == nullptr) {
        counting = balancing::earlierReading(project, last->id, branch);
    }
    return counting != nullptr ? std::optional(counting->id) : std::nullopt;
}

}  // namespace

void AdjustPlace::leaveAsRead(const base::Id& branch) {
    m_leftAsRead[branch] = countedAt(m_bridge.project(), branch);
}

std::vector<base::Id> AdjustPlace::leftAsRead() const {
    std::vector<base::Id> left;
    for (const auto& [branch, counted] : m_leftAsRead) {
        if (m_bridge.project().branches().contains(branch) &&
            countedAt(m_bridge.project(), branch) == counted) {
            left.push_back(branch);
        }
    }
    return left;
}

bool AdjustPlace::isDone(const base::Id& branch) const {
    const std::vector<base::Id> left = leftAsRead();
    return balancing::isHeld(m_bridge.project(), branch) ||
           std::find(left.begin(), left.end(), branch) != left.end();
}

void AdjustPlace::moveInOrder(int places) {
    const auto row = m_advice->table()->hasFocus() ? m_advice->branchInHand() : std::nullopt;
    const auto branch = row ? row : m_valve.branch();
    if (!branch || !m_bridge.project().branches().contains(*branch)) {
        return;
    }
    const std::string& tag = m_bridge.project().branches().at(*branch).tag;
    const auto place = m_order.move(*branch, places);
    if (!place) {
        m_bridge.tell(base::Fault{&kMovesNoFurther, tag, {}});
        return;
    }
    refresh();
    m_bridge.tell(base::Fault{
        &kMovedInOrder, tag, {std::to_string(*place + 1), std::to_string(workingOrder().size())}});
}

void AdjustPlace::restoreOrder() {
    m_order.reset();
    refresh();
    m_bridge.tell(base::Fault{&kOrderRestored, {}, {}});
}

}  // namespace ww::ui
