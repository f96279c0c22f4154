#include "ui/places/adjust/kept_order.h"

#include <algorithm>
#include <iterator>

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
    if (round && round != m_round) {
        recall(*round);
    }
    if (!isStillGood(fresh, round, isAdvised)) {
        m_isChanged = m_isChanged && round == m_round;
        m_order = m_isChanged ? withValvesOf(fresh) : fresh;
        m_round = round;
        m_isAdvised = isAdvised;
        keep();
    }
    std::vector<std::size_t> kept;
    for (const base::Id& branch : m_order) {
        kept.push_back(project.branches().indexOf(branch));
    }
    return kept;
}

std::optional<std::size_t> KeptOrder::move(const base::Id& branch, int places) {
    order();
    const auto from = std::find(m_order.begin(), m_order.end(), branch);
    const auto to = from - m_order.begin() + places;
    if (from == m_order.end() || to < 0 || to >= std::ssize(m_order)) {
        return std::nullopt;
    }
    const base::Id moved = *from;
    m_order.erase(from);
    m_order.insert(m_order.begin() + to, moved);
    m_isChanged = true;
    keep();
    return static_cast<std::size_t>(to);
}

void KeptOrder::recall(const base::Id& round) {
    const auto kept = m_keeping.recall ? m_keeping.recall() : std::nullopt;
    const auto isThere = [&](const base::Id& branch) {
        return m_bridge.project().branches().contains(branch);
    };
    if (kept && kept->round == round && std::all_of(kept->branches.begin(), kept->branches.end(), isThere)) {
        m_order = kept->branches;
        m_round = kept->round;
        m_isAdvised = kept->isAdvised;
        m_isChanged = kept->isChanged;
    }
}

void KeptOrder::keep() const {
    if (m_keeping.keep && m_round) {
        m_keeping.keep({*m_round, m_order, m_isAdvised, m_isChanged});
    }
}

void KeptOrder::reset() {
    m_isChanged = false;
    m_isAdvised = false;
    m_order.clear();
}

std::vector<base::Id> KeptOrder::withValvesOf(const std::vector<base::Id>& fresh) const {
    std::vector<base::Id> all = m_order;
    std::erase_if(all, [&](const base::Id& branch) {
        return std::find(fresh.begin(), fresh.end(), branch) == fresh.end();
    });
    for (std::size_t i = 0; i < fresh.size(); ++i) {
        if (std::find(all.begin(), all.end(), fresh[i]) == all.end()) {
            const auto before = i > 0 ? std::find(all.begin(), all.end(), fresh[i - 1]) : all.end();
            all.insert(before == all.end() ? all.begin() : before + 1, fresh[i]);
        }
    }
    return all;
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
    if (round != m_round || (isAdvised && !m_isAdvised && !m_isChanged)) {
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
