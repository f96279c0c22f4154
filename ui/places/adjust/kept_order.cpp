#include "ui/places/adjust/kept_order.h"

#include <algorithm>

#include "core/balancing/adjusting.h"

namespace ww::ui {
namespace {

/// The last round that is not open; nothing where there is none.
std::optional<base::Id> lastClosedRound(const project::Project& project) {
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        if (project.rounds()[*at].state != project::RoundState::Open) {
            return project.rounds()[*at].id;
        }
    }
    return std::nullopt;
}

}  // namespace

std::vector<std::size_t> KeptOrder::order() {
    const project::Project& project = m_bridge.project();
    const LoopPicture* picture = m_advisor.picture();
    const bool isAdvised =
        picture != nullptr && picture->advice.isReady() && !picture->advice.settings.empty();
    const std::vector<std::size_t> made =
        balancing::workingOrder(project, m_bridge.assessment(), isAdvised ? &picture->advice : nullptr);
    const std::vector<base::Id> fresh = idsOf(made);
    const std::optional<base::Id> round = lastClosedRound(project);
    if (!isStillGood(fresh, round, isAdvised)) {
        m_order = fresh;
        m_round = round;
        m_isAdvised = isAdvised;
        return made;
    }
    std::vector<std::size_t> kept;
    for (const base::Id& branch : m_order) {
        kept.push_back(project.branches().indexOf(branch));
    }
    return kept;
}

std::vector<base::Id> KeptOrder::idsOf(const std::vector<std::size_t>& branches) const {
    std::vector<base::Id> ids;
    for (const std::size_t branch : branches) {
        ids.push_back(m_bridge.project().branches()[branch].id);
    }
    return ids;
}

bool KeptOrder::isStillGood(const std::vector<base::Id>& fresh, const std::optional<base::Id>& round,
                            bool isAdvised) const {
    if (round != m_round || (isAdvised && !m_isAdvised)) {
        return false;
    }
    if (m_isAdvised && !isAdvised) {
        // Advice that is not ready for a moment takes nothing away from what was advised.
        return std::all_of(m_order.begin(), m_order.end(), [&](const base::Id& branch) {
            return m_bridge.project().branches().contains(branch);
        });
    }
    const auto sorted = [](std::vector<base::Id> ids) {
        std::sort(ids.begin(), ids.end());
        return ids;
    };
    return sorted(m_order) == sorted(fresh);
}

}  // namespace ww::ui
