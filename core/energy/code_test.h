// The energy code's test whether a throttled pump must be trimmed or slowed, in two forms. It states no
// edition and no clause: the user types what the adopted code calls them. Not legal advice: the authority
// having jurisdiction decides.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/fault.h"
#include "core/energy/power.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

/// Where a code draws its lines.
struct CodeThresholds {
    Power smallMotor;  ///< motors up to this, itself included, are exempt
    Ratio plateShare = Ratio::si(0.05);
    std::optional<Power> floor;  ///< the excess that is always allowed
};

/// The form that exempts motors to 10 hp (7.5 kW) and an excess to 5 % of the plate or 3 hp (2.2 kW),
/// whichever is more: ASHRAE/IES 90.1-2010, 6.7.2.3.3 (main sentence published; exceptions from memory). A
/// plate given in kilowatts is held to the figures in kilowatts.
CodeThresholds percentOrFloorThresholds(bool isPlateMetric = false);
/// The form that exempts motors to 5 hp (3.7 kW) and an excess to 5 % of the plate: IECC C408.2.2.2 (from
/// memory).
CodeThresholds percentOnlyThresholds(bool isPlateMetric = false);

struct CodeTestInput {
    VolumeFlow flow;     ///< design
    Head headThrottled;  ///< the pump makes at that flow with its present impeller and speed
    Head headNeeded;     ///< the index circuit takes
    Density density;
    std::optional<Ratio> efficiency;         ///< at the throttled duty
    std::optional<Ratio> efficiencyReduced;  ///< of the trimmed or slowed pump; nothing: the same
    std::optional<Power> plate;
    std::string edition;           ///< typed by the user; may be empty
    std::string clause;            ///< likewise
    std::string exceptionClaimed;  ///< likewise: which one, and by whom
    quantity::ShownUnits units;    ///< of numbers in basis and findings
};

enum class CodeDecision { ExemptSmallMotor, ExemptSmallExcess, MustReduce };

inline constexpr base::MessageForm kCodeSmallMotor{"code_small_motor",
                                                   "the motor's plate, {1}, is not above {2}: the pump "
                                                   "need not be trimmed or slowed; keep the balance "
                                                   "with the least throttling all the same"};
inline constexpr base::MessageForm kCodeSmallExcess{
    "code_small_excess",
    "throttling takes {1} more than a reduced pump would, not above the limit of {2}: the throttle may "
    "stay; write down its position"};
inline constexpr base::MessageForm kCodeMustReduce{
    "code_must_reduce",
    "throttling takes {1} more than a reduced pump would, above the limit of {2}; trim the impeller or "
    "slow the pump, and open its valve"};
inline constexpr base::MessageForm kCodeFormula{
    "code_formula",
    "excess power = Q rho g (H1/eta1 - H2/eta2) with Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, "
    "eta2 "
    "= {5} %; limit = the greater of {6} % of the plate and {7}"};
inline constexpr base::MessageForm kCodeFormulaPlate{"code_formula_plate",
                                                     "excess power = Q rho g (H1/eta1 - H2/eta2) with Q = "
                                                     "{1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 "
                                                     "= {5} %; limit = {6} % of the plate"};
inline constexpr base::MessageForm kCodeReference{
    "code_reference", "tested by {1w}, {2w}; the authority having jurisdiction decides"};
inline constexpr base::MessageForm kCodeNotNamed{
    "code_not_named",
    "edition and clause of the adopted energy code are not entered, so the report names none; enter them"};
inline constexpr base::MessageForm kCodeClaimed{"code_claimed", "exception claimed: {1}; keep its proof"};
inline constexpr base::MessageForm kCodePlateUnknown{
    "code_plate_unknown", "the motor's plate power is not entered, so the clause cannot be tested; enter it"};
inline constexpr base::MessageForm kCodeEfficiencyUnknown{
    "code_efficiency_unknown",
    "the pump's efficiency is not known, so the excess power cannot be computed; enter it with the curve, or "
    "read the motor's power"};

struct CodeTest {
    std::optional<CodeDecision> decision;  ///< nothing where a finding says why
    std::optional<Power> excess;
    std::optional<Power> limit;
    std::vector<base::Fault> basis;     ///< the decision with its numbers, formula, reference, claim
    std::vector<base::Fault> findings;  ///< what is missing
};

/// Motor up to the small one: exempt. Else excess = Q rho g (H1/eta1 - H2/eta2) against the limit, the
/// greater of the share of the plate and the floor; at the limit it is exempt.
CodeTest codeTest(const CodeTestInput& input, const CodeThresholds& thresholds);

}  // namespace ww::energy
