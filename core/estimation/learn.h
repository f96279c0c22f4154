// Learns a loop's resistances from readings.
#pragma once

#include <optional>
#include <vector>

#include "core/base/fault.h"
#include "core/estimation/learn_options.h"
#include "core/estimation/learned.h"
#include "core/estimation/learning.h"

namespace ww::estimation {

inline constexpr base::MessageForm kLearnNothing{
    "learn_nothing", "there is no reading to learn from; enter at least one dp at a valve"};
inline constexpr base::MessageForm kLearnReadingUncertainty{
    "learn_reading_uncertainty",
    "the standard uncertainty of this reading is {1} of its value; it must be above 0, state the "
    "instrument's "
    "accuracy"};
inline constexpr base::MessageForm kLearnReadingShut{"learn_reading_shut",
                                                     "a flow or the dp of an open valve was read where the "
                                                     "valve is shut; record it as a closed-valve reading"};
inline constexpr base::MessageForm kLearnReadingOpen{
    "learn_reading_open",
    "a closed-valve dp was read where the valve is open; record it at the setting it was read at"};
inline constexpr base::MessageForm kLearnPrior{
    "learn_prior", "what is known beforehand of factor {1} is no number; correct its design loss"};

/// A fit, or everything that prevents it. The subject of a fault is the position of the reading.
struct LearnResult {
    std::optional<Learned> learned;
    std::vector<base::Fault> faults;
};

/// Weighted nonlinear least squares on logarithms: the unknowns that make
/// sum ((ln value - ln fitted)/sd)^2 + sum ((unknown - prior)/prior sd)^2 least, by Gauss-Newton steps that
/// are shortened until the sum falls. Every case is solved exactly at every step. Indices outside the
/// Learning, cases of different shapes and options outside their ranges are a broken contract.
LearnResult learn(const Learning& learning, const LearnOptions& options = {});

}  // namespace ww::estimation
