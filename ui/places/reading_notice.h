// What is said right after a reading was stored. Not for deciding whether it is doubtful (core/balancing).
#pragma once

#include <QTimer>

#include "ui/loop_advisor.h"

namespace ww::ui {

inline constexpr base::MessageForm kRoundOpenedByTry{
    "round_opened_by_try", "round {1} opened; close it (Ctrl+Shift+W) once its valves are held and read"};

class ReadingNotice : public QObject {
  public:
    ReadingNotice(WorkbookBridge& bridge, const LoopAdvisor& advisor, QObject* parent = nullptr);

    /// Raises the first doubt about the counting reading of a branch as a message, with the fix that one key
    /// takes where there is one, and that the reading opened a round where it did. Where there is no doubt it
    /// says that readings name nobody, or clears the message; what else the checks find at the branch is said
    /// as soon as the hand rests, so that no key waits for them. What the learned loop advises otherwise is
    /// not said. True where there is a doubt.
    bool tell(const base::Id& branch, bool hasOpenedRound = false);
    /// The branch that the newest message offers to read again with a key; nothing where it offers none.
    const std::optional<base::Id>& offeredAgain() const { return m_offeredAgain; }

  private:
    /// A reading that nothing was said of yet.
    struct Told {
        base::Id branch;
        base::Id reading;
        bool hasOpenedRound = false;
    };
    bool isSaid(const balancing::Assessment& all, const base::Id& branch, bool hasOpenedRound);
    void tellRest();

    WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    QTimer m_rest;
    std::optional<Told> m_told;
    std::optional<base::Id> m_offeredAgain;
};

}  // namespace ww::ui
