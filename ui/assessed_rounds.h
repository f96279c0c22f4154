// The rounds of the job, each judged by itself, kept until something that they rest on changes. Not for
// verdicts (WorkbookBridge::assessment): the numbers alone.
#pragma once

#include <QObject>
#include <memory>
#include <unordered_map>

#include "ui/workbook_bridge.h"

namespace ww::ui {

class AssessedRounds : public QObject {
  public:
    /// Made before whatever is refreshed from it: it has to hear of a change first.
    explicit AssessedRounds(WorkbookBridge& bridge, QObject* parent = nullptr);

    /// The numbers of a round, no gaps filled, as the job stands; made when they are first asked for. The
    /// round must exist. The reference holds until the next change.
    const balancing::Assessment& of(const base::Id& round);
    /// Whether shown() says it without computing.
    bool isJudged(const base::Id& round) const { return isOpen(round) || m_kept.contains(round); }
    /// The same as people see them (balancing::assessAsShown): the gaps of the open round are filled.
    const balancing::Assessment& shown(const base::Id& round);
    /// Another number whenever what of() says may be otherwise than before.
    int edition() const { return m_edition; }

  private:
    void take(const project::ChangeSet& changes);
    bool isOpen(const base::Id& round) const;

    WorkbookBridge& m_bridge;
    /// The job as of the newest change: what the next one erases is still found in it.
    project::Project m_seen;
    std::unordered_map<base::Id, std::unique_ptr<const balancing::Assessment>> m_kept;
    int m_edition = 0;
};

}  // namespace ww::ui
