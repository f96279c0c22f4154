// Which curve the numbers about a pump count: the one that was entered, or that one through the gauges where
// both contradict each other. Not for what follows from it (system_curve.h, pump_room/).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/balancing/assessment.h"
#include "core/base/fault.h"

namespace ww::balancing {

enum class CurveBasis {
    Published,      ///< as entered: the gauges agree with it, or none was read against it
    ThroughGauges,  ///< its head times one factor at every flow, so that it meets the duty that was read
    Untrusted,      ///< they contradict each other, and nothing says which is right: no number is proposed
};

inline constexpr base::MessageForm kDutyApart{
    "pump_duty_apart",
    "at the sum of the flows, {1}, the gauges read {2} and the pump's curve gives {3}: farther apart than "
    "their uncertainty of {4}; check gauges, speed and impeller and read again before the pump is changed"};
inline constexpr base::MessageForm kCountsGauges{
    "pump_counts_gauges",
    "the numbers here rest on the gauges of round {1}: the pump's curve counts with its head times {2} at "
    "every flow, so that it meets them"};
inline constexpr base::MessageForm kRoundsDiffer{
    "pump_rounds_differ",
    "the gauges read {2} % of the curve's head in round {1} and {4} % in round {3}; something changed or one "
    "was misread: read both taps again, and check speed, air and strainers"};
inline constexpr base::MessageForm kShutoffAgrees{
    "pump_shutoff_agrees",
    "at shutoff the head is {1} % of the curve's too, so the gauges are right; look for another impeller, "
    "wear, a wrong speed or air before the pump is changed"};
inline constexpr base::MessageForm kShutoffOnCurve{
    "pump_shutoff_on_curve",
    "at shutoff the same gauge reads {1} % of the curve's head and at the duty {2} %, so what differs comes "
    "with the flow; the duty counts, as it is what the terminals get: look for an open bypass, a strainer "
    "between the taps and a wrong valve table"};
inline constexpr base::MessageForm kShutoffOff{
    "pump_shutoff_off",
    "at shutoff the head is {1} % of the curve's and at the duty {2} %; the curve counts, as it holds where "
    "the loop runs: read the shutoff head again where that is allowed"};
inline constexpr base::MessageForm kCurveImplausible{
    "pump_curve_implausible",
    "the gauges read {1} % of the head of the curve; below {2} or above {3} % a gauge is wrong or the curve "
    "is of another impeller, so no excess, trim or speed is proposed: read both taps again with one gauge, "
    "test at shutoff where that is allowed, and check impeller, speed and direction of turn"};
inline constexpr base::MessageForm kGaugesDiffer{
    "pump_gauges_differ",
    "at shutoff one gauge reads {1} % of the curve's head and at the duty another reads {2} %; which is "
    "right is not known, so no excess, trim or speed is proposed: read both taps again with one gauge, and "
    "check impeller, speed and direction of turn"};

/// The curve that counts, and why.
struct CountedCurve {
    CurveBasis basis = CurveBasis::Published;
    Ratio headFactor =
        Ratio::si(1);     ///< on the head of every running pump at every flow; 1 but for ThroughGauges
    int roundNumber = 0;  ///< whose gauges were held against the curve; 0: none
    std::vector<base::Fault> reasons;  ///< in words, what makes it so; empty where nothing contradicts

    bool isThroughGauges() const { return basis == CurveBasis::ThroughGauges; }
    /// Of the reasons the one that says what counts; empty where it is the curve as it was entered.
    std::vector<base::Fault> ruling() const;
};

/// Holds the gauges against the curve at the sum of the terminals' flows, in this round or, where it does not
/// read both, in the newest own round before it that does. They contradict each other beyond two standard
/// uncertainties of gauges and sum together (JCGM 100:2008, 6.3.3). Then:
/// - a shutoff reading of a pump that runs alone with the same factor on the curve's head, within 3 % or two
///   uncertainties: the curve goes through the gauges;
/// - one with another factor: through the gauges if it was read with the same gauge, else no curve is
/// trusted;
/// - none: through the gauges where the factor lies in 0.80 to 1.10, else no curve is trusted.
/// A round before with another factor, by more than 3 % or two uncertainties, is told beside it.
/// 3 %, 0.80 and 1.10 are common practice, no source: makers guarantee 5 to 7 % (ISO 9906, grades 2 and 3,
/// from memory), wear and air take more, and nothing but another impeller adds more.
CountedCurve countedCurve(const project::Project& project, const Assessment& assessment);

/// What a number of head rests on, as words of the program: "from the pump's curve", "from the pump's curve
/// through the gauges of round 3".
std::string curveWords(const CountedCurve& curve);

}  // namespace ww::balancing
