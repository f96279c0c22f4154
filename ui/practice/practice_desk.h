// Answers readings of the practice job that is open, as the building's instruments would. Not for real jobs:
// it never answers there.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "core/practice/practice_job.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

inline constexpr base::MessageForm kNotPractice{
    "not_practice", "only a practice job answers by itself; read the meter and type what it shows"};
inline constexpr base::MessageForm kNoRoundForMeter{
    "no_round_for_meter",
    "round {1} takes no new readings any more; open the next round (Ctrl+Shift+N), then read"};
inline constexpr base::MessageForm kHandleSeen{
    "handle_seen", "the handle stands at {1}, not where it was noted; the setting was corrected, check it"};
inline constexpr base::MessageForm kGaugesRead{
    "gauges_read", "the gauges of {1} show a rise of {2} at {3}; both were stored"};

inline constexpr base::MessageForm kAllReadByMeter{
    "all_read_by_meter",
    "every valve of the walk is read; close the round (Ctrl+Shift+W), or read this one again (Ctrl+R)"};

/// Keeps the building of the workbook that is open. The bridge must outlive it.
class PracticeDesk {
  public:
    explicit PracticeDesk(WorkbookBridge& bridge) : m_bridge(bridge) {}

    bool isPractice() const;
    /// The job's building; the fault of a job that is none or names none.
    base::Result<const practice::PracticeJob*> job();
    /// Stores the dp that the meter shows at a branch in the open round; as a repeat beside the first where
    /// wanted. A handle seen to stand elsewhere is noted first: then there is something to tell.
    base::Result<std::optional<base::Fault>> takeDp(const base::Id& branch, bool isRepeat);
    /// The dp that the meter shows at a branch after the last round: with its handle at a setting not noted
    /// yet, or where it stands, or across the valve shut for a moment. Stores nothing.
    base::Result<QString> tryDp(const base::Id& branch, std::optional<quantity::Setting> handle, bool isShut);
    /// Stores the rise that the gauges of every running pump show in the open round.
    base::Outcome takeGauges();

  private:
    /// Why nothing is read now, while no round is open.
    base::Fault noRound() const;
    base::Outcome takeGauge(const practice::PracticeJob& job, const project::Round& round,
                            const project::Pump& pump);

    WorkbookBridge& m_bridge;
    std::string m_text;  ///< of the building at hand
    std::unique_ptr<practice::PracticeJob> m_job;
};

}  // namespace ww::ui
