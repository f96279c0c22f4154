// What is to be learned about a loop, and from which readings: unknown factors, states of the loop, readings.
// Knows networks, not jobs: what a link or a reading stands for is the caller's.
#pragma once

#include <cstddef>
#include <optional>
#include <variant>
#include <vector>

#include "core/hydraulics/network.h"
#include "core/hydraulics/sensitivity.h"

namespace ww::estimation {

using quantity::PressureDifference;
using quantity::VolumeFlow;

/// What an unknown factor stands for. The fit treats them alike but for what its options say.
enum class UnknownKind {
    Circuit,     ///< resistance of one circuit without its valve
    Run,         ///< resistance of one run
    Common,      ///< one factor on many links, as on all runs
    Pump,        ///< factor on a pump's curve
    Instrument,  ///< factor on the readings of one instrument; scales no link
    ValveTable,  ///< error of a valve's table; held at its prior unless the options say otherwise
};

/// A link that an unknown scales: its parameter grows by exp(weight x unknown).
struct ScaledLink {
    hydraulics::LinkIndex link;
    hydraulics::ParameterKind kind = hydraulics::ParameterKind::Drop;
    double weight = 1;
    /// Instead of `weight` where its effect depends on the state, as a table's tilt towards closed: one
    /// number a case of the Learning.
    std::vector<double> weightByCase;

    double weightIn(std::size_t caseIndex) const {
        return weightByCase.empty() ? weight : weightByCase.at(caseIndex);
    }
};

/// The natural logarithm of a factor, with what is known of it before any reading: a normal distribution.
struct Unknown {
    UnknownKind kind = UnknownKind::Circuit;
    double lnFactorPrior = 0;
    double lnFactorPriorSd = 0.3;  ///< 0 or more; 0 holds the unknown at its prior
    std::vector<ScaledLink> links;
};

/// What a reading is of.
enum class Observed {
    Drop,           ///< across an open link, in its direction
    AvailableDrop,  ///< across a shut link: the head available at its taps; never counted as flow
    Flow,           ///< through a link, in its direction
    Rise,           ///< of a pump
};

using ObservedValue = std::variant<PressureDifference, VolumeFlow>;

/// One reading: the value is exp(instrument factor + noise) times what the loop makes in its case.
struct Observation {
    std::size_t caseIndex = 0;  ///< in Learning::cases
    hydraulics::LinkIndex link;
    Observed what = Observed::Drop;
    /// A flow for Observed::Flow, else a pressure difference. One of 0 or less has no logarithm: it is left
    /// out of the fit.
    ObservedValue value;
    double relativeSd = 0.01;               ///< standard uncertainty of ln(value), above 0
    std::optional<std::size_t> instrument;  ///< in Learning::unknowns, of kind Instrument
    /// Readings with the same number are of the same place: where one is wrong the place is named first.
    std::optional<std::size_t> place;
    bool isLeftOut = false;  ///< compared with the fit, but without weight in it

    /// ln of the value in SI; nothing of one of 0 or less.
    std::optional<double> lnValueRatio() const;
    bool hasWeight() const { return !isLeftOut && lnValueRatio().has_value(); }
};

/// All that a fit rests on.
struct Learning {
    std::vector<Unknown> unknowns;
    /// The loop as it stood while readings were taken, at the priors' means: all of the same shape, with
    /// links in the same order. A case without readings costs nothing.
    std::vector<hydraulics::Network> cases;
    std::vector<Observation> observations;
};

/// The network of a case with the unknowns' factors on its links; one number an unknown. Links that are
/// closed stay so. Factors must be finite.
hydraulics::Network learnedNetwork(const Learning& learning, std::size_t caseIndex,
                                   const std::vector<double>& lnFactorOfUnknowns);

}  // namespace ww::estimation
