// How the word that follows from a reading and the setting advised for the same valve stand beside each
// other, so that a person is told one thing to do. Not for the word (aim.h) nor for the setting (advice/).
#pragma once

#include <optional>

#include "core/balancing/aim.h"

namespace ww::balancing {

/// The reading decides what is done now; the advised setting is where a valve ends once all others are set.
enum class AdviceStand {
    Agrees,       ///< the word turns towards the advised setting, or holds at it
    HoldsToEnd,   ///< HOLD at another setting, whose share surely stays within the band once all others are
                  ///< set
    HoldsForNow,  ///< HOLD at another setting, whose share may be outside the band then, or is not known
    ReadingLeads  ///< the word turns away from the advised setting
};

inline constexpr base::MessageForm kHoldsToEnd{
    "advice_holds_to_end", "leave it at {1}; {2} % of target expected here with the others set"};
inline constexpr base::MessageForm kHoldsForNow{
    "advice_holds_for_now",
    "hold at {1} for now; {2} % of target expected here with the others set, turn to {3} then"};
inline constexpr base::MessageForm kHoldsUnforeseen{
    "advice_holds_unforeseen",
    "hold at {1} for now; the learned loop advises {2} with the others set, read it again then"};
inline constexpr base::MessageForm kReadingLeads{
    "advice_reading_leads", "follow the word now; {1} is expected once all valves are set"};
inline constexpr base::MessageForm kStopsForNow{
    "advice_stops_for_now", "leave it at its stop for now; {1} is expected once all valves are set"};

struct AdviceBesideWord {
    AdviceStand stand = AdviceStand::Agrees;
    /// Of the branch at the setting where it was read, once all others stand at their advised settings; with
    /// a HOLD at another setting than the advised one alone, and where the loop can be solved.
    std::optional<Ratio> ofTarget;
    std::optional<base::Fault> reason;  ///< why the word stands; nothing where both agree. Subject: the tag
};

/// Whether an advice names a place on the scale of its valve, and whether the valve stands there: to half the
/// readable step.
bool namesSetting(const SettingAdvice& advised);
bool standsAt(const SettingAdvice& advised, Setting at);

/// `word` follows from a reading of the branch at the setting `at`. Nothing where no setting is advised for
/// it or the word is READ AGAIN, which says nothing of a setting. Settings are the same to half the readable
/// step. Pure.
std::optional<AdviceBesideWord> adviceBesideWord(const project::Project& project, std::size_t branch,
                                                 AimWord word, Setting at, const LearnedLoop& learned,
                                                 const Advice& advice);

}  // namespace ww::balancing
