// What can be done about a pump that makes more head than its loop needs: throttle, trim or slow, side by
// side. Not for how much head the loop needs (pump_room/), nor for the energy code (code_test.h).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/fault.h"
#include "core/curve/impeller_family.h"
#include "core/energy/load_profile.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

using quantity::Length;
using quantity::RotationalSpeed;

enum class PumpAction { Throttle, Trim, Slow };

inline constexpr base::MessageForm kPumpTooSmall{
    "pump_too_small",
    "at design flow the pump makes {1} of head and the index circuit needs {2}, {3} more; see that the index "
    "path is open and its strainers and filters are clean, check speed and impeller: a larger impeller or "
    "pump is for the engineer to decide"};
inline constexpr base::MessageForm kDutyBeyondCurve{
    "pump_duty_beyond_curve",
    "design flow lies beyond the last point of the pump's curve at {1}; get the maker's curve for this "
    "flow, no number is computed there"};
inline constexpr base::MessageForm kThrottleWastes{"pump_throttle_wastes",
                                                   "the throttle keeps wasting {1} of head, {2w} at the "
                                                   "shaft; leave it only where the energy code exempts "
                                                   "the pump"};
inline constexpr base::MessageForm kTrimOvershoots{"pump_trim_overshoots",
                                                   "the law of trimming cuts too much, by 15 to 20 % of the "
                                                   "change; cut first to {1} (three quarters of the "
                                                   "calculated cut), test, and cut again"};
inline constexpr base::MessageForm kTrimBelowMinimum{
    "pump_trim_below_minimum",
    "the impeller would be {1}, below the least of {2} for this casing; do not trim, slow the pump or "
    "replace it"};
inline constexpr base::MessageForm kTrimBelowShare{
    "pump_trim_below_share",
    "the impeller would be {1} % of the largest that the casing takes, below {2} %; ask the maker, slow the "
    "pump or replace it"};
inline constexpr base::MessageForm kTrimPairAlike{
    "pump_trim_pair_alike", "{1} pumps share this duty; trim all alike, and the stand-by with them"};
inline constexpr base::MessageForm kTrimUnknownImpeller{
    "pump_trim_unknown_impeller",
    "the impeller in the pump is not known, the trimmed one would have {1} % of its diameter; find it with a "
    "shutoff test or enter it"};
inline constexpr base::MessageForm kTrimBeyondFamily{
    "pump_trim_beyond_family",
    "the diameter lies beyond the smallest curve of the family; ask the maker before cutting"};
inline constexpr base::MessageForm kTrimForGood{"pump_trim_for_good",
                                                "a trim cannot be taken back; make sure that no more "
                                                "circuits will be added, and let the pump's maker or a "
                                                "licensed shop do it"};
inline constexpr base::MessageForm kTrimReadingHigh{
    "pump_trim_npsh", "NPSH required may rise after a trim; check the margin at the suction again"};
inline constexpr base::MessageForm kSlowBelowMinimum{"pump_slow_below_minimum",
                                                     "the speed would be {1} % of rated, below the least of "
                                                     "{2} %; trim or throttle instead, or ask the maker"};
inline constexpr base::MessageForm kSlowLosesEfficiency{
    "pump_slow_loses_efficiency",
    "below 60 % of full speed the efficiency falls by 1 to 3 points and the drive loses more; take the "
    "saving "
    "as an upper limit"};
inline constexpr base::MessageForm kSlowNeedsDrive{
    "pump_slow_needs_drive",
    "the pump has no drive; slowing needs one, or other sheaves, installed by licensed people"};
inline constexpr base::MessageForm kDriveLossUnknown{
    "pump_drive_loss_unknown", "the drive's losses are not known and are left out; enter its efficiency"};
inline constexpr base::MessageForm kEfficiencyUnknown{
    "pump_efficiency_unknown",
    "neither the pump's table nor a reading gives its efficiency here, so no power is computed; enter "
    "efficiency or power with the curve, or read the motor's power"};

/// What the choice needs to know.
struct PumpOptionsInput {
    /// The running pumps as they are without throttling, at full speed.
    const curve::PumpSet* set = nullptr;  ///< not null
    VolumeFlow designFlow;                ///< above 0
    Head requiredHead;                    ///< of the index circuit at design flow, above 0
    Density density;
    EnergyTerms terms;
    PartLoad partLoad = PartLoad::RidesCurve;  ///< of the slowed pump; the others ride their curves
    bool hasDrive = false;
    std::optional<RotationalSpeed> fullSpeed;  ///< of the set as it stands

    std::optional<Length> impeller;                 ///< in the pump now
    std::optional<Length> impellerMinimum;          ///< of the casing, by the maker
    std::optional<Length> impellerMaximum;          ///< of the casing
    const curve::ImpellerFamily* family = nullptr;  ///< null: the law of trimming on the one curve
    double trimFlowExponent = 1.0;                  ///< 1 or 2 (curve/pump_set.h)
    /// Of the calculated cut that is taken first, 0.7 to 0.8 (common practice, no source).
    Ratio firstCut = Ratio::si(0.75);
    /// Of the largest impeller (US DOE, Pumping Systems Tip Sheet 7).
    Ratio leastOfMaximum = Ratio::si(0.75);
    /// Of rated speed. 30 % where nobody says more (common practice, no source).
    Ratio minimumSpeed = Ratio::si(0.30);
    quantity::ShownUnits units;  ///< of numbers in findings and cautions
};

/// One way to bring the total to design flow.
struct PumpOption {
    PumpAction action{};
    Head head;                              ///< that the pump makes at design flow
    Head throttled;                         ///< of it, what stays across a throttle: all excess, or none
    std::optional<Power> shaft;             ///< all running pumps
    std::optional<Ratio> efficiency;        ///< of the pumps there
    std::optional<Power> wire;              ///< drawn from the mains
    std::optional<Energy> energy;           ///< a year
    std::optional<Money> cost;              ///< a year
    Ratio ratio = Ratio::si(1);             ///< new over present: diameter or speed; 1 for the throttle
    std::optional<Length> impeller;         ///< after the whole calculated cut
    std::optional<Length> firstCut;         ///< diameter to cut to first
    std::optional<Head> headAfterFirstCut;  ///< at design flow
    std::optional<RotationalSpeed> speed;
    bool isAllowed = true;  ///< false: a caution says why not
    std::vector<base::Fault> cautions;
    /// The pumps with this impeller or speed, for a solve of the loop.
    std::optional<curve::PumpSet> set;
};

struct PumpOptions {
    std::optional<Head> headAvailable;  ///< at design flow, as the pump is
    std::optional<Head> excess;         ///< of it over the head required; below 0: it falls short
    std::vector<PumpOption> options;    ///< throttle, trim, slow; empty where a finding says why
    std::vector<base::Fault> findings;
};

/// Throttle: the present curve at design flow. Trim: the diameter whose curve passes through design flow and
/// required head: of the family where there is one, else by the law of trimming. Slow: likewise by speed.
PumpOptions pumpOptions(const PumpOptionsInput& input);

/// A diameter to order or cut by, in the same digits on every page: whole millimetres, hundredths of an inch.
std::string diameterDigits(Length diameter, quantity::Unit unit);

}  // namespace ww::energy
