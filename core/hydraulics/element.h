// What one link of a network does to the water: its pressure drop over flow.
// Not where it stands (network_builder.h). Drops are positive in the direction of positive flow; a pump's
// are negative.
#pragma once

#include <optional>
#include <vector>

#include "core/base/fault.h"
#include "core/hydraulics/detail/law.h"
#include "core/hydraulics/friction.h"
#include "core/hydraulics/pump_model.h"
#include "core/quantity/quantity.h"

namespace ww::hydraulics {

using quantity::FlowCoefficient;
using quantity::KinematicViscosity;
using quantity::Length;
using quantity::Resistance;

using DropSlope = quantity::DerivedQuantity<struct DropSlopeKind>;  ///< d(dp)/dQ, Pa/(m3/s)

inline constexpr base::MessageForm kElementResistance{
    "element_resistance",
    "the resistance is {1} Pa/(m3/s)^2; it must be a number of 0 or more, correct it or close the link"};
inline constexpr base::MessageForm kElementExponent{
    "element_exponent", "the exponent of the loss is {1}; it must lie between 1 and 4, water has 1.7 to 2"};
inline constexpr base::MessageForm kElementReference{
    "element_reference", "the loss of {1} Pa at {2} m3/s is no point of a loss; both must be above 0"};
inline constexpr base::MessageForm kElementCoefficient{
    "element_coefficient",
    "the flow coefficient is Kv {1}; it must be a number of 0 (shut) or more, correct the setting"};
inline constexpr base::MessageForm kElementDensity{"element_density",
                                                   "the density is {1} kg/m3; it must be above 0"};
inline constexpr base::MessageForm kPipeLength{"pipe_length",
                                               "the pipe's length is {1} m; it must be above 0"};
inline constexpr base::MessageForm kPipeDiameter{"pipe_diameter",
                                                 "the pipe's inside diameter is {1} m; it must be above 0"};
inline constexpr base::MessageForm kPipeRoughness{
    "pipe_roughness",
    "the pipe's roughness is {1} m; it must lie between 0 and a tenth of the inside diameter"};
inline constexpr base::MessageForm kPipeMinorLoss{
    "pipe_minor_loss", "the sum of minor loss coefficients is {1}; it must not be below 0"};
inline constexpr base::MessageForm kPipeViscosity{"pipe_viscosity",
                                                  "the viscosity is {1} m2/s; it must be above 0"};
inline constexpr base::MessageForm kPumpSpeed{
    "pump_speed", "the pump's speed is {1} of rated; it must be a number of 0 (stopped) or more"};
inline constexpr base::MessageForm kPumpDiameter{
    "pump_diameter", "the impeller is {1} of the curve's own diameter; it must be above 0"};
inline constexpr base::MessageForm kPumpFactor{"pump_factor",
                                               "the factor on the pump curve is {1}; it must be above 0"};
inline constexpr base::MessageForm kPumpShutoff{
    "pump_shutoff", "the pump makes {1} Pa at zero flow; it must be above 0, check the curve"};
inline constexpr base::MessageForm kLimiterFlow{"limiter_flow",
                                                "the set flow is {1} m3/s; it must be a number of 0 or more"};
inline constexpr base::MessageForm kLimiterRange{
    "limiter_range",
    "the range of constant flow is {1} to {2} Pa; the start must be above 0 and the end above it"};
inline constexpr base::MessageForm kLiftNumber{"lift_number", "the static lift is {1} Pa; give a number"};

/// A round pipe with its fittings.
struct Pipe {
    Length length;
    Length insideDiameter;
    Length roughness;
    double minorLossSum = 0;  ///< sum of the K of fittings, on rho v^2 / 2
    FrictionLaw friction = FrictionLaw::Colebrook;
};

/// How a pump runs.
struct PumpOperation {
    bool isRunning = true;
    double speedFraction = 1;     ///< of rated; 0 counts as stopped
    double diameterFraction = 1;  ///< of the curve's own impeller; Q ~ D, H ~ D^2 as for speed
    double curveFactor = 1;       ///< on the rise: a worn or mistaken curve
    bool hasNonReturn = true;
    /// Of the stopped pump in forward flow (and backward without a non-return flap). Nothing: a stopped pump
    /// stands in its circuit like a shut valve.
    std::optional<Resistance> stoppedResistance;
};

/// A law with its numbers, and the faults of what it was made from. Making one never fails; a network with a
/// faulty element is not built. Drop and slope of every law are finite at every finite flow, and the drop
/// never falls with flow.
///
/// Two places are bent a little. A limiter's flow rises by 0.1 % over its range, far below any reading. A
/// non-return flap's law has a steep line backwards (1e-6 of the forward flow at 1 bar; of a pump: of its
/// last flow at its shutoff pressure) that only guides the solver: a solved network has exactly no flow
/// through a flap pressed shut. No law is changed near zero flow, so none loses accuracy there.
class Element {
  public:
    /// dp = k q |q|. A k below 1e-6 Pa/(m3/s)^2 counts as that (1e-6 Pa at 1 m3/s).
    static Element resistance(Resistance resistance);
    /// dp = drop (q/flow)^exponent through one known point; exponent 1 to 4.
    static Element exponentLaw(PressureDifference drop, VolumeFlow flow, double exponent);
    /// dp of the square law of Kv (curve/valve_flow.h); 0 is shut.
    static Element valve(FlowCoefficient coefficient, Density density);
    /// Darcy-Weisbach: dp = (f L/D + K) rho/2 v^2, f by `friction`; laminar f = 64/Re (Re below 2000).
    static Element pipe(const Pipe& pipe, Density density, KinematicViscosity viscosity);
    /// A check valve: the resistance forwards, shut backwards.
    static Element checkValve(Resistance forward);
    /// An automatic flow limiter: `flow` while dp lies between start and end; a fixed orifice below (that
    /// passes `flow` at start) and above (`flow` at end). Flow 0 is shut. Backwards the orifice of the start.
    static Element flowLimiter(VolumeFlow flow, PressureDifference start, PressureDifference end);
    /// A pressure-independent control valve: a limiter whose flow is `openFraction` (0 to 1) of `fullFlow`.
    static Element pressureIndependentValve(VolumeFlow fullFlow, double openFraction,
                                            PressureDifference start, PressureDifference end);
    /// A common pipe between two loops: a square law so small that the loops hardly feel each other.
    static Element decoupler(Resistance resistance) { return Element::resistance(resistance); }
    /// A constant drop, positive against the direction of the link: the geodetic height of an open circuit.
    /// Closed loops need none: it cancels.
    static Element staticLift(PressureDifference drop);
    static Element pump(PumpModel model, PumpOperation operation = {});

    /// The drop at a flow; a shut element has no law and may not be asked.
    PressureDifference drop(VolumeFlow flow) const;
    DropSlope slope(VolumeFlow flow) const;

    /// No flow can pass: Cv 0, limiter at 0, stopped pump.
    bool isShut() const { return m_isShut; }
    /// A pump, running or not, or a static lift.
    bool isPumpOrLift() const { return m_isPumpOrLift; }
    /// What is wrong with the numbers it was made from; the subject is empty.
    const std::vector<base::Fault>& faults() const { return m_faults; }
    const detail::Law& law() const { return m_law; }
    /// Back from a law, for a network's own use.
    explicit Element(detail::Law law) : m_law(std::move(law)), m_isPumpOrLift(detail::isDriver(m_law)) {}

  private:
    Element() = default;
    static Element shut();
    static Element stoppedPump(const PumpOperation& operation);
    void require(bool isGood, const base::MessageForm& form, std::vector<double> numbers);

    detail::Law m_law;
    bool m_isShut = false;
    bool m_isPumpOrLift = false;
    std::vector<base::Fault> m_faults;
};

}  // namespace ww::hydraulics
