#include "ui/assessed_rounds.h"

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

const balancing::Assessment& AssessedRounds::of(const base::Id& round) {
    std::unique_ptr<const balancing::Assessment>& kept = m_kept[round];
    if (kept == nullptr) {
        kept = std::make_unique<const balancing::Assessment>(
            balancing::assess(m_bridge.project(), round, {.numbersOnly = true}));
    }
    return *kept;
}

const balancing::Assessment& AssessedRounds::shown(const base::Id& round) {
    const project::Round* open = m_bridge.openRoundOrNull();
    return open != nullptr && open->id == round ? m_bridge.assessment() : of(round);
}

}  // namespace ww::ui
