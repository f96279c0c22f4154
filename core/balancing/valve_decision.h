// What is done at a valve after a reading, as one decision: its word, and why its share may say otherwise.
// Not for the aim (aim.h) nor for the advised setting (advice_beside_word.h).
#pragma once

#include <optional>

#include "core/balancing/advice_beside_word.h"

namespace ww::balancing {

inline constexpr base::MessageForm kReferenceToOpen{
    "reference_to_open", "reference of its group, at {1}; open it fully to {2}, the others are set to it"};
inline constexpr base::MessageForm kReferenceOpen{
    "reference_open", "reference of its group, fully open; leave it, the others are set to it"};
inline constexpr base::MessageForm kAdviceFirst{"advice_first",
                                                "advised {2} instead of {1}; turn it, then read"};
// The reading alone would say otherwise.
inline constexpr base::MessageForm kAdviceBeforeReading{
    "advice_before_reading",
    "an old reading, with the others not set; advised {2} instead of {1}: turn it, then read"};
// Why a share says otherwise than the word; the word alone says what the hand does.
inline constexpr base::MessageForm kWordCountsOthersSet{
    "word_counts_others_set", "the word counts what the others take once they are set"};
inline constexpr base::MessageForm kWordMatchesReference{
    "word_matches_reference", "the word matches it to the reference {1}, at {2} % of design"};
inline constexpr base::MessageForm kWordCountsNewest{"word_counts_newest",
                                                     "the word counts the newest readings of the others"};

struct ValveDecision {
    AimWord word = AimWord::ReadAgain;
    /// Where a rule names a setting to turn to before the valve is read.
    std::optional<Setting> turnTo;
    /// Why the word stands whatever the reading says: the valve of the reference, or one that the advice
    /// turns before it is read. Subject: the tag.
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

/// The decision at a valve that was read, and not tried in this round yet: the others were turned since, or
/// are to be. Towards the advised setting, to be read there; as it was `decided` where the advice is not
/// ready or confirmed by a round, where the valve stands as advised, where the rule of a reference stands or
/// the word is READ AGAIN, and where it was on share and HOLD stays right to the end
/// (AdviceStand::HoldsToEnd). `beside`: how the word and the advice stand beside each other. Where the index
/// is not proved for this valve (Advice::indexSteps), it is opened for that whatever its share says. Pure.
ValveDecision decideUntried(const project::Project& project, const Assessment& assessment,
                            const Advice& advice, std::size_t branch, Setting at,
                            const ValveDecision& decided, const std::optional<AdviceBesideWord>& beside);

}  // namespace ww::balancing
