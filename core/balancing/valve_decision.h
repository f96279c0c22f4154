// What is done at a valve after a reading, as one decision: its word, and why its share may say otherwise.
// Not for the aim (aim.h) nor for the advised setting (advice_beside_word.h).
#pragma once

#include <optional>

#include "core/balancing/aim.h"

namespace ww::balancing {

inline constexpr base::MessageForm kReferenceToOpen{
    "reference_to_open", "reference of its group, at {1}; open it fully to {2}, the others are set to it"};
inline constexpr base::MessageForm kReferenceOpen{
    "reference_open", "reference of its group, fully open; leave it, the others are set to it"};
inline constexpr base::MessageForm kInProportion{
    "in_proportion", "in proportion with the reference {1}, at {2} % of design; leave it"};
inline constexpr base::MessageForm kRightOnceSet{"right_once_set",
                                                 "its share comes right once the others are set; leave it"};
inline constexpr base::MessageForm kTurnByWord{
    "turn_by_word", "the aim counts what the others will take once they are set; turn by the word"};
inline constexpr base::MessageForm kMatchedToReference{
    "matched_to_reference", "matched to the reference {1}, at {2} % of design; turn by the word"};
inline constexpr base::MessageForm kByNewestReadings{
    "by_newest_readings", "counted with the newest readings of the others; follow the word"};

struct ValveDecision {
    AimWord word = AimWord::ReadAgain;
    /// Why the word stands whatever the reading says: the valve of the reference. Subject: the tag.
    std::optional<base::Fault> rule;
    /// Where the state of the branch's share says otherwise than the word: why. Subject: the tag.
    std::optional<base::Fault> apart;
};

/// The reference of a branch's group: that of the advice where it is ready and names one there, else that of
/// the readings; nothing where neither does. `advice` may be null.
std::optional<std::size_t> referenceOf(const Assessment& assessment, const Advice* advice,
                                       std::size_t branch);

/// `byReading` is the word of a reading at the setting `at` (wordFor). The valve of a reference is opened
/// fully and stays so, as every group keeps one valve open (common practice, no source): where the advice is
/// ready its reference, else that of the readings, which is opened only where no other valve of its group is
/// open. READ AGAIN stays what it is. `advice` may be null. Pure.
ValveDecision decideValve(const project::Project& project, const Assessment& assessment, const Advice* advice,
                          const AimFlow& aimed, std::size_t branch, Setting at, AimWord byReading);

}  // namespace ww::balancing
