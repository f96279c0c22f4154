// One valve as it is being adjusted: where its handle stands, what to aim at there, what was tried, and what
// neighboring settings would give. Plain values from core; not for words (adjust_words.h) and not for
// storing.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "core/balancing/adjusting.h"
#include "core/balancing/advice_beside_word.h"
#include "core/balancing/aim.h"
#include "core/balancing/available_head.h"
#include "core/balancing/valve_decision.h"
#include "ui/loop_advisor.h"

namespace ww::ui {

/// A reading at the valve in hand.
struct ValveReading {
    const project::Reading* reading = nullptr;  ///< until the job changes
    quantity::Setting setting;
    quantity::PressureDifference dp;       ///< the mean with what it repeats
    std::optional<balancing::AimRow> row;  ///< the aim there; nothing where no water passes
    balancing::ValveDecision decision;     ///< what it asks of the hand
    bool isDoubtful = false;               ///< it tells nothing: it is to be read again
};

class ValveInHand {
  public:
    /// What is asked of a valve.
    enum class Wanted { All, WordAlone };  ///< the word alone: no neighboring settings, none to try

    ValveInHand(const WorkbookBridge& bridge, const LoopAdvisor& advisor, Wanted wanted = Wanted::All);

    /// Takes a branch in hand; nothing: none.
    void take(std::optional<base::Id> branch);
    /// Reads everything anew after a change of the job or of what was learned.
    void refresh();

    std::optional<base::Id> branch() const { return m_branch; }
    /// Index into Project::branches(); there must be a branch.
    std::size_t index() const;
    /// Whether there is an aim: a branch with a valve, and enough read.
    bool hasAim() const { return m_aim.used.has_value(); }
    const balancing::Aim& aim() const { return m_aim; }

    /// Where the handle stands, and the same as it is written.
    quantity::Setting setting() const { return m_setting; }
    base::Decimal settingText(quantity::Setting setting) const;
    quantity::Setting step() const { return m_step; }
    /// The setting of record.
    quantity::Setting standing() const;
    /// Whether the handle was moved here without a reading at the new place.
    bool isMoved() const;
    /// Moves the handle, no further than its stops; false where it did not move.
    bool stepBy(int steps);
    bool turnBy(int turns);
    void moveTo(quantity::Setting setting);
    bool isAtStop() const;

    /// The aim at the setting in hand; nothing without an aim, and where the valve is shut.
    const std::optional<balancing::AimRow>& row() const { return m_row; }
    /// The neighbors with it, lowest setting first.
    const std::vector<balancing::AimRow>& rows() const { return m_rows; }
    /// The dp expected at each of rows(); nothing where nothing tells it.
    const std::vector<std::optional<quantity::PressureDifference>>& expected() const { return m_expected; }
    /// Tries since another valve was turned, oldest first; repeats as one.
    const std::vector<ValveReading>& tries() const { return m_tries; }
    /// The last of them, else what was read here before; nothing where nothing was.
    const std::optional<ValveReading>& last() const { return m_last; }
    /// What the hand does next: a valve at a shut setting is opened, one that was moved since it was read is
    /// to be read again, else as the last reading says; nothing where nothing was read.
    std::optional<balancing::AimWord> word() const;
    /// That word with its reasons; nothing where no reading at the setting in hand says it.
    const balancing::ValveDecision* decision() const;
    /// Whether the last reading was made at another setting than the one in hand, so that it says nothing of
    /// it.
    bool isReadElsewhere() const;
    /// How that word and the advised setting of this valve stand beside each other; nothing without a word or
    /// an advised setting.
    const std::optional<balancing::AdviceBesideWord>& besideAdvice() const { return m_beside; }
    const std::optional<balancing::ProposedSetting>& proposed() const { return m_proposed; }
    /// What the advice says of this valve; null where it says nothing.
    const balancing::SettingAdvice* advised() const;
    /// Whether what is advised may be taken: advice that is not ready is a first guess.
    bool isAdviceReady() const;
    /// Whether the valve stands in hand where it is advised to.
    bool isAsAdvised() const;
    /// The head available here as the others stand; nothing where nothing tells it.
    const std::optional<balancing::AvailableHead>& available() const { return m_available; }
    /// Whether the aim at the setting in hand lies above it.
    bool isAimBeyond() const { return m_available && m_row && balancing::isBeyond(*m_available, *m_row); }
    /// The dp aimed at with a setting that passes water; there must be an aim.
    quantity::PressureDifference aimAt(quantity::Setting setting) const;
    /// The aim as another basis gives it, at the setting in hand; there must be a row().
    balancing::AimRow rowOf(const balancing::AimFlow& flow) const;

  private:
    const project::Project& project() const { return m_bridge.project(); }
    const balancing::Advice* advice() const;
    const curve::ValveCharacteristic* curve() const;
    void readTries();
    void place();
    void compareWithAdvice();
    void decideUntried();
    std::optional<quantity::PressureDifference> expectedAt(
        quantity::Setting setting, const std::optional<balancing::BranchCharacteristic>& found) const;
    std::vector<balancing::AimTry> plainTries() const;

    const WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    Wanted m_wanted;
    std::optional<base::Id> m_branch;
    balancing::Aim m_aim;
    quantity::Setting m_setting;
    quantity::Setting m_step;
    std::optional<balancing::AimRow> m_row;
    std::vector<balancing::AimRow> m_rows;
    std::vector<std::optional<quantity::PressureDifference>> m_expected;
    std::vector<ValveReading> m_tries;
    std::optional<ValveReading> m_last;
    std::optional<balancing::ProposedSetting> m_proposed;
    std::optional<balancing::AdviceBesideWord> m_beside;
    std::optional<balancing::AvailableHead> m_available;
    std::map<base::Id, quantity::Setting> m_moved;  ///< handles moved here without a reading yet
};

}  // namespace ww::ui
