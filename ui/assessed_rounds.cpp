#include "ui/assessed_rounds.h"

#include <algorithm>

namespace ww::ui {
namespace {

/// Records that are written about a round and leave its numbers as they are.
bool isBesideNumbers(const project::RecordRef& record) {
    using project::RecordKind;
    return record.kind == RecordKind::Comment || record.kind == RecordKind::Attachment ||
           record.kind == RecordKind::SignedReport;
}

bool areAllBesideNumbers(const std::vector<project::RecordRef>& records) {
    return std::all_of(records.begin(), records.end(), isBesideNumbers);
}

}  // namespace

AssessedRounds::AssessedRounds(WorkbookBridge& bridge, QObject* parent) : QObject(parent), m_bridge(bridge) {
    connect(&bridge, &WorkbookBridge::changed, this, &AssessedRounds::take);
}

void AssessedRounds::take(const project::ChangeSet& changes) {
    if (!changes.isEmpty() && areAllBesideNumbers(changes.put) && areAllBesideNumbers(changes.erased)) {
        return;
    }
    m_kept.clear();
    ++m_edition;
}

const balancing::Assessment& AssessedRounds::of(const base::Id& round) {
    std::unique_ptr<const balancing::Assessment>& kept = m_kept[round];
    if (kept == nullptr) {
        kept = std::make_unique<const balancing::Assessment>(
            balancing::assess(m_bridge.project(), round, {.fillGaps = false, .numbersOnly = true}));
    }
    return *kept;
}

}  // namespace ww::ui
