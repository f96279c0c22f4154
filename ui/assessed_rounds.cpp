#include "ui/assessed_rounds.h"

#include <utility>

#include "core/balancing/assess.h"
#include "core/balancing/touched_rounds.h"

namespace ww::ui {

AssessedRounds::AssessedRounds(WorkbookBridge& bridge, QObject* parent)
    : QObject(parent), m_bridge(bridge), m_seen(bridge.project()) {
    connect(&bridge, &WorkbookBridge::changed, this, &AssessedRounds::take);
}

void AssessedRounds::take(const project::ChangeSet& changes) {
    const auto first = balancing::firstRoundTouched(m_seen, m_bridge.project(), changes);
    m_seen = m_bridge.project();
    if (!first) {
        return;
    }
    std::erase_if(m_kept, [first](const auto& kept) { return kept.second->roundNumber >= *first; });
    ++m_edition;
}

bool AssessedRounds::isOpen(const base::Id& round) const {
    const project::Round* open = m_bridge.openRoundOrNull();
    return open != nullptr && open->id == round;
}

const balancing::Assessment& AssessedRounds::of(const base::Id& round) {
    auto kept = m_kept.find(round);
    if (kept == m_kept.end()) {
        auto made = balancing::assess(m_bridge.project(), round, {.numbersOnly = true});
        kept = m_kept.emplace(round, std::make_unique<const balancing::Assessment>(std::move(made))).first;
    }
    return *kept->second;
}

const balancing::Assessment& AssessedRounds::shown(const base::Id& round) {
    return isOpen(round) ? m_bridge.assessment() : of(round);
}

}  // namespace ww::ui
