// Whether the pump makes more head than the loop needs, and what to do about it: required head by every way
// there is, options with their duty proved by a solve of the loop, the energy code's test. Rests on balancing
// and energy and joins them. Not for drawing.
#pragma once

#include <optional>
#include <vector>

#include "core/balancing/counted_curve.h"
#include "core/balancing/excess_head.h"
#include "core/balancing/hydraulic_model.h"
#include "core/energy/code_test.h"
#include "core/energy/pump_options.h"
#include "core/pump_room/confirmed_duty.h"
#include "core/pump_room/decision_notes.h"
#include "core/pump_room/least_throttling.h"
#include "core/pump_room/required_head.h"
#include "core/pump_room/running_pumps.h"

namespace ww::pump_room {

using quantity::Power;
using quantity::Ratio;
using quantity::VolumeFlow;

struct DecidedOption {
    energy::PumpOption option;
    /// Nothing where the loop cannot be built, or the need was read by the gauges that the curve goes
    /// through.
    std::optional<ConfirmedDuty> confirmed;
};

/// The last round's duty of the running pumps together.
struct PresentDuty {
    int roundNumber = 0;
    VolumeFlow flow;
    Head head;
    std::optional<Power> shaft;       ///< from the motor's readings, else from the table
    std::optional<Ratio> efficiency;  ///< water power over shaft power
    bool isPowerMeasured = false;
    Ratio speedFraction = Ratio::si(1);
    /// The round whose reading gave the speed, that of the duty or one before it; nothing: full speed is
    /// taken.
    std::optional<int> speedRound;
    bool isSpeedRead = true;  ///< in the round of the duty, of every running pump
    std::optional<Ratio> ofBestFlow;
};

struct PumpDecisionOptions {
    balancing::Resistances learned;  ///< empty: nothing was learned
    std::vector<Id> running;         ///< these pumps instead of those marked as running
    energy::PartLoad partLoad = energy::PartLoad::RidesCurve;  ///< of a slowed pump
    Head heldHead;                                             ///< of PartLoad::HoldsHead
    double trimFlowExponent = 1.0;
    Ratio firstCut = Ratio::si(0.75);
    std::optional<Ratio> driveEfficiency;
    /// That counts; nothing: measured by the gauges that the curve goes through, else learned, else measured,
    /// else design.
    std::optional<HeadSource> source;
};

inline constexpr base::MessageForm kRequiredUnknown{
    "pump_required_unknown",
    "the head that the index circuit needs is not known; enter the design losses, or finish a round whose "
    "shares are within the band"};
inline constexpr base::MessageForm kRequiredApart{
    "pump_required_apart",
    "the head required is {1} by one way and {2} by another; find out why before the pump is changed"};
inline constexpr base::MessageForm kConfirmedApart{"pump_confirmed_apart",
                                                   "solved with this impeller or speed the loop takes {1} % "
                                                   "of design flow; the affinity laws do not hold for "
                                                   "this loop, take the solved figure"};
inline constexpr base::MessageForm kDutyUnknown{
    "pump_duty_unknown", "no round has flow and head of the pumps; read suction and discharge, and a round"};
inline constexpr base::MessageForm kHoursUnknown{
    "pump_hours_unknown",
    "neither hours a year nor a load profile is entered, so no yearly energy is computed; enter one in Job"};
inline constexpr base::MessageForm kMotorEfficiencyUnknown{
    "pump_motor_efficiency_unknown",
    "the motor's efficiency is not entered, so no energy is computed; enter it with the pump"};
inline constexpr base::MessageForm kSpeedAboveFull{
    "pump_speed_above_full",
    "the pump was read at {1} % of full speed; a motor does not run above 100 % without a drive that allows "
    "it, check the reading and the rated speed entered"};
inline constexpr base::MessageForm kSpeedNotRead{
    "pump_speed_not_read",
    "no speed was read in round {1}, so full speed is taken and no number here is certain; read it on the "
    "drive before the pump is changed"};
inline constexpr base::MessageForm kSpeedCarried{
    "pump_speed_carried",
    "no speed was read in round {1}, so the {2} % of full speed of round {3} are taken and no number here is "
    "certain; read it on the drive before the pump is changed"};
inline constexpr base::MessageForm kCodeMet{"pump_code_met",
                                            "the pump runs at {1} % of full speed, where it makes no excess "
                                            "head; it is reduced as asked, keep it so"};
inline constexpr base::MessageForm kCodeFormUnset{
    "pump_code_form_unset",
    "the form of the energy code's clause is not chosen, the one with {1} and {2} is tested; choose it on "
    "the page Energy Code of Pump"};

struct PumpDecision {
    std::optional<PresentDuty> duty;
    /// What the pump makes here, by which curve. Untrusted: no head available, no excess, no option. Of all
    /// pumps marked as running, also where the decision is about some of them.
    balancing::CountedCurve curve;
    VolumeFlow designFlow;
    std::vector<RequiredHead> required;  ///< side by side, in the order of HeadSource
    std::optional<std::size_t> counted;  ///< index into required
    /// At design flow, at full speed, with the impeller that is in the pump. Full speed: rated, or what was
    /// read within 3 % of it.
    std::optional<Head> headAvailable;
    std::optional<Head> headPublished;  ///< the same by the curve as it was entered
    std::optional<Head> excess;         ///< headAvailable over the head that counts
    std::optional<Head> presentExcess;  ///< the same at the last round's speed
    std::vector<DecidedOption> options;
    energy::CodeTest code;  ///< of the pump nearest to its limit, one efficiency for both duties
    std::optional<energy::CodeTest> codeOwnEfficiencies;  ///< the same with each duty's own efficiency
    energy::CodeTest codeOtherForm;  ///< of the same pump, by the form that the job does not name
    bool isCodeMet = false;          ///< exempt, or the pump was reduced already
    ThrottlingProof throttling;
    std::vector<base::Fault> findings;  ///< the reasons of `curve` first

    /// Nothing is to be done: the options change nothing that could be told (kPumpFits among the findings).
    bool isFitting() const;
    /// The pump makes less than the need by no more than can be told (kShortUndecided among the findings).
    bool isShortUndecided() const;
    /// The pump was slowed already: what it makes over the need at the last round's speed, which was read,
    /// cannot be told.
    bool runsAsDecided() const;
    /// Why no option is an order yet: the loop is not balanced (kFirstLook), else the speed of the last round
    /// was not read (kSpeedNotRead, kSpeedCarried); null where nothing stands against it.
    const base::Fault* notYet() const;
    const DecidedOption* find(energy::PumpAction action) const;  ///< null: there is no such option
    /// The excess that the options take away, and the same at the last round's speed, each with what it is
    /// counted above; nothing where the number is not known.
    std::optional<balancing::ExcessHead> decidedExcess() const;
    std::optional<balancing::ExcessHead> excessAsRead() const;
};

/// Pure: same job and options, same answer.
PumpDecision decidePump(const project::Project& project, const PumpDecisionOptions& options = {});

/// The load of a year: the job's rows, else its hours at full flow; empty where neither is entered.
std::vector<energy::LoadStep> loadOf(const project::Job& job);

}  // namespace ww::pump_room
