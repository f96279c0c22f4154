// What a person changes in the working order of the place Adjust. The order itself is kept_order.h.
#include "ui/places/adjust/adjust_place.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kMovesNoFurther{"moves_no_further",
                                            "it goes no further in the working order; move another valve"};

}  // namespace

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
