// The records of a job as plain values: what was designed, who measured with what, and what was read.
// Not for rules of the trade (balancing/) nor for storage (store/). A record refers to another by id.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/decimal.h"
#include "core/base/id.h"
#include "core/base/instant.h"
#include "core/fluid/fluid.h"
#include "core/quantity/measured.h"

namespace ww::project {

using base::Decimal;
using base::Id;
using base::Instant;
using quantity::GaugePressure;
using quantity::Head;
using quantity::Length;
using quantity::Measured;
using quantity::Power;
using quantity::PressureDifference;
using quantity::Ratio;
using quantity::RotationalSpeed;
using quantity::Temperature;
using quantity::VolumeFlow;

/// Units that the screens and the report of a job show. Entered digits keep their own unit.
enum class UnitSystem { US, SI };

/// Which form of the energy code's balancing clause is tested.
enum class CodeForm {
    NotStated,
    PercentOrFloor,  ///< motors to 10 hp exempt; excess to 5 % of the plate or 3 hp, whichever is more
    PercentOnly,     ///< motors to 5 hp exempt; excess to 5 % of the plate
};

/// How long in a year the loop runs at a part of its design flow.
struct LoadRow {
    Decimal hours;                 ///< a year
    Measured<Ratio> flowFraction;  ///< of design flow, percent

    bool operator==(const LoadRow&) const = default;
};

/// The work at one site. Exactly one per workbook.
struct Job {
    Id id;
    std::string name;
    std::string site;
    std::string client;
    UnitSystem units = UnitSystem::SI;
    fluid::FluidKind fluid = fluid::FluidKind::Water;
    Measured<Ratio> concentration;      ///< mass fraction of glycol, entered in percent
    Measured<Temperature> temperature;  ///< of the flowing fluid while balancing
    Measured<Ratio> toleranceLow;       ///< lower limit of (flow/design - 1), e.g. -10 %
    Measured<Ratio> toleranceHigh;      ///< upper limit of (flow/design - 1), e.g. +10 %
    Measured<Ratio> matchingBand;       ///< half width of the band of "of target" around 1, e.g. 5 %
    std::optional<Decimal> powerPrice;  ///< currency units a kWh
    std::string currency;
    std::optional<Decimal> hoursPerYear;
    std::string practice;  ///< of a practice job: which simulated building answers; else empty
    std::optional<Measured<Length>> altitude;             ///< of the site, for the air pressure
    std::optional<Measured<GaugePressure>> fillPressure;  ///< at the expansion vessel, pumps off
    std::optional<Decimal> readingAgeLimit;               ///< minutes after which a reference reading is old
    CodeForm codeForm = CodeForm::NotStated;
    std::string codeEdition;    ///< as the adopted code calls itself
    std::string codeClause;     ///< number of the clause, typed by the user
    std::string codeException;  ///< the exception claimed and why; empty: none
    std::vector<LoadRow> loadRows;

    bool operator==(const Job&) const = default;
};

/// The scale printed on a valve's handle.
enum class Scale { Turns, Degrees, Percent };

/// One row of a valve's table, as entered.
struct ValveTableRow {
    Decimal setting;
    Decimal coefficient;

    bool operator==(const ValveTableRow&) const = default;
};

/// One model and size of balancing valve with its table; the highest setting is fully open.
struct ValveModel {
    Id id;
    std::string model;
    std::string size;
    Scale scale = Scale::Turns;
    quantity::Unit coefficientUnit = quantity::Unit::Cv;  ///< Cv or Kv
    std::vector<ValveTableRow> rows;                      ///< in order of entry
    std::optional<Measured<PressureDifference>>
        minimumDp;  ///< readable minimum, or start of a limiter's range
    std::optional<Measured<PressureDifference>> maximumDp;  ///< end of a limiter's range
    std::optional<Measured<Ratio>> accuracy;                ///< of the coefficient, percent
    /// Further standard error of the coefficient, growing in a straight line from fully open (none of it) to
    /// shut (all of it), percent.
    std::optional<Measured<Ratio>> accuracyShut;

    bool operator==(const ValveModel&) const = default;
};

enum class BranchKind {
    Manual,   ///< a calibrated balancing valve
    Orifice,  ///< a fixed meter and a valve
    Limiter,  ///< an automatic flow limiter
    Picv,     ///< a pressure-independent control valve
    None,     ///< no balancing device
};
enum class Side { Unknown, Supply, Return };
/// What stands in the pipe before the device and wants more straight length.
enum class Disturbance { Ordinary, Pump, TwoElbows };
/// How a branch is dealt with while balancing.
enum class BalancingPolicy {
    Unstated,
    Proportional,
    VerifyLimiter,
    VerifyPressureIndependent,
    NotBalanced,  ///< with a reason
};
enum class ReturnKind { Direct, Reverse };

/// The design of a branch by which a closed round is judged, where it is another one today.
struct EarlierDesign {
    Id round;
    bool isInLoop = false;                           ///< false: the branch came after the round was closed
    std::optional<Measured<VolumeFlow>> designFlow;  ///< as Branch::designFlow then

    bool operator==(const EarlierDesign&) const = default;
};

/// Any part of the distribution that is fed at one point of its parent. A branch without children is a
/// terminal.
struct Branch {
    Id id;
    std::optional<Id> parent;  ///< nothing: fed at the pump
    int position = 0;          ///< order along the parent, nearest first; also the walking order
    std::string tag;
    std::string serves;
    BranchKind kind = BranchKind::Manual;
    std::optional<Measured<VolumeFlow>> designFlow;           ///< required for a terminal
    std::optional<Measured<PressureDifference>> runLoss;      ///< supply + return from the previous take-off
    std::optional<Measured<PressureDifference>> circuitLoss;  ///< own path at design flow without its valve
    std::optional<Id> valve;                                  ///< a ValveModel
    std::optional<Decimal> setting;                           ///< as found or as planned, before any reading
    Side side = Side::Unknown;
    std::optional<Decimal> upstreamDiameters;
    std::optional<Decimal> downstreamDiameters;
    ReturnKind returns = ReturnKind::Direct;  ///< of the branch's children
    Disturbance disturbance = Disturbance::Ordinary;
    std::optional<Measured<Length>> elevation;  ///< of the unit above the pump
    BalancingPolicy policy = BalancingPolicy::Unstated;
    std::string policyReason;
    std::string notes;
    std::vector<EarlierDesign> earlierDesigns;  ///< a round without one is judged by the design above
    /// False only in a job as it was for a round (asJudged) that was closed before the branch came. Never
    /// stored.
    bool isInLoop = true;

    bool operator==(const Branch&) const = default;
};

/// Whether a branch keeps its flow by itself.
inline bool isSelfActing(const Branch& branch) {
    return branch.kind == BranchKind::Limiter || branch.kind == BranchKind::Picv;
}

/// One row of a pump's table, as entered.
struct PumpTableRow {
    std::optional<Measured<Length>> impeller;
    Measured<VolumeFlow> flow;
    Measured<Head> head;
    std::optional<Measured<Ratio>> efficiency;
    std::optional<Measured<Power>> power;
    std::optional<Measured<Head>> npshRequired;

    bool operator==(const PumpTableRow&) const = default;
};

/// How several running pumps stand to each other.
enum class PumpArrangement { Parallel, Series };

struct Pump {
    Id id;
    int position = 0;
    std::string tag;
    bool isRunning = true;
    std::optional<Measured<RotationalSpeed>> speed;  ///< rated
    std::optional<Measured<Length>> impeller;
    std::optional<Measured<Length>> impellerMinimum;
    std::optional<Measured<Power>> motorPower;
    std::optional<Measured<Ratio>> motorEfficiency;
    std::optional<Measured<quantity::Voltage>> volts;
    std::optional<Measured<quantity::Current>> amps;
    std::optional<Decimal> serviceFactor;
    std::string throttleTag;  ///< tag of the discharge throttling valve, may be empty
    std::vector<PumpTableRow> rows;
    PumpArrangement arrangement = PumpArrangement::Parallel;
    std::optional<Measured<Length>> suctionDiameter;        ///< inside, at the gauge tap
    std::optional<Measured<Length>> dischargeDiameter;      ///< inside, at the gauge tap
    std::optional<Measured<Length>> suctionGaugeHeight;     ///< gauge centre above the shaft
    std::optional<Measured<Length>> dischargeGaugeHeight;   ///< gauge centre above the shaft
    std::optional<Measured<Ratio>> powerFactor;             ///< of the motor's plate
    std::optional<Measured<quantity::Current>> noLoadAmps;  ///< uncoupled
    std::optional<Measured<RotationalSpeed>> plateSpeed;    ///< of the motor at full load
    std::optional<Measured<RotationalSpeed>> synchronousSpeed;
    std::optional<Measured<Ratio>> minimumSpeed;  ///< of rated speed, as the drive or the pump allows
    bool hasDrive = false;                        ///< a variable-frequency drive feeds the motor
    bool isPositiveDisplacement = false;
    bool guardsSource = false;  ///< the only pump that keeps water moving through a chiller or boiler

    bool operator==(const Pump&) const = default;
};

/// The kind that an instrument has until somebody says another.
inline constexpr std::string_view kUsualInstrumentKind = "dp meter";

struct Instrument {
    Id id;
    std::string tag;
    std::string kind;  ///< free text, such as "dp meter"
    std::string serial;
    std::optional<Measured<PressureDifference>> range;          ///< full scale
    std::optional<Measured<Ratio>> accuracy;                    ///< of reading
    std::optional<Measured<PressureDifference>> accuracyFloor;  ///< absolute part, added in quadrature
    std::optional<Instant> calibrated;                          ///< date
    std::optional<Instant> due;                                 ///< date
    std::optional<Measured<PressureDifference>> resolution;     ///< of the display
    std::string certificate;                                    ///< number of the calibration certificate
    std::optional<Measured<PressureDifference>> zeroStart;      ///< zero check before the day's readings
    std::optional<Measured<PressureDifference>> zeroEnd;        ///< and after them
    std::string overdueReason;  ///< why readings with an overdue instrument stand

    bool operator==(const Instrument&) const = default;
};

enum class PersonRole { Unstated, Technician, Supervisor, Engineer, Witness };

struct Person {
    Id id;
    std::string name;
    PersonRole role = PersonRole::Unstated;
    std::string certificate{};  ///< number
    std::string firm{};

    bool operator==(const Person&) const = default;
};

enum class RoundKind { Survey, Adjusting, Final, Witness };
enum class RoundState { Open, Closed, Sent, Accepted, SentBack };

/// One terminal of a witness round's sample.
struct SampleRow {
    Id branch;

    bool operator==(const SampleRow&) const = default;
};

/// One walk of readings, judged together.
struct Round {
    Id id;
    int number = 0;  ///< 1, 2, 3 ...; unique in the job
    RoundKind kind = RoundKind::Survey;
    RoundState state = RoundState::Open;
    std::optional<Instant> opened;
    std::optional<Instant> closed;
    std::optional<Instant> sent;
    std::optional<Instant> decided;  ///< accepted or sent back
    std::string sentBy;
    std::string decidedBy;
    std::string reason;     ///< why it was sent back or withdrawn
    std::string readiness;  ///< of a survey opened while mandatory lines were open: who says so, and why
    std::optional<Decimal> sampleSeed;  ///< of a witness round
    std::vector<SampleRow> sample;      ///< likewise
    /// The limits by which the round is judged, where those of the job were changed after it was closed: all
    /// three or none.
    std::optional<Measured<Ratio>> toleranceLow;
    std::optional<Measured<Ratio>> toleranceHigh;
    std::optional<Measured<Ratio>> matchingBand;

    bool operator==(const Round&) const = default;
};

/// Whether a reading counts.
enum class ReadingStatus {
    Standing,
    Superseded,  ///< another reading corrects it; it stays for the record
    Struck,      ///< taken back with a reason; it stays for the record
};

/// What a reading was taken for.
enum class ReadingPurpose {
    Walk,       ///< on the round's walk
    Try,        ///< while the valve was being adjusted
    Hold,       ///< the try at which the valve was left
    Reference,  ///< to renew the reference while another valve was being adjusted
    ShutValve,  ///< the valve shut for a moment: the head available there, never a flow
};

/// One instrument value as entered, at one branch. Standing readings of a branch in a round: the one with the
/// highest sequence counts, together with those it repeats.
struct Reading {
    Id id;
    Id round;
    Id branch;
    int sequence = 0;  ///< order of entry within the round, unique there
    std::optional<Instant> time;
    std::optional<Decimal> setting;  ///< nothing: as before
    std::optional<Measured<PressureDifference>> dp;
    std::optional<Measured<VolumeFlow>> flow;  ///< read directly
    std::optional<Id> instrument;
    std::optional<Id> person;
    std::string note;
    ReadingStatus status = ReadingStatus::Standing;
    std::optional<Id> supersedes;  ///< the reading that this one corrects
    bool isRepeat = false;         ///< taken again at the same setting: the mean with the one before counts
    bool cannotBeRead = false;     ///< the technician could not read it; `reason` says why before closing
    bool isDoubtful = false;       ///< marked by hand
    std::string reason;            ///< why a doubtful or unread value stands, or why it was struck
    ReadingPurpose purpose = ReadingPurpose::Walk;

    bool operator==(const Reading&) const = default;
};

/// What a pump was doing when it was read.
enum class PumpPoint { Running, Static, Shutoff, FullOpen, ThrottledToDesign, Final };

struct PumpReading {
    Id id;
    Id round;
    Id pump;
    int sequence = 0;
    std::optional<Instant> time;
    std::optional<Measured<GaugePressure>> suction;
    std::optional<Measured<GaugePressure>> discharge;
    std::optional<Measured<PressureDifference>> gaugeRise;  ///< discharge minus suction, read as one value
    std::optional<Measured<RotationalSpeed>> speed;
    std::optional<Decimal> throttle;  ///< setting of the discharge throttle
    std::optional<Measured<VolumeFlow>> flow;
    std::optional<Measured<quantity::Voltage>> volts;
    std::optional<Measured<quantity::Current>> amps;
    std::optional<Measured<Power>> power;
    std::optional<Id> instrument;
    std::optional<Id> person;
    ReadingStatus status = ReadingStatus::Standing;
    std::optional<Id> supersedes;
    PumpPoint point = PumpPoint::Running;
    std::optional<Measured<quantity::Voltage>>
        voltsSecond;  ///< phases 2 and 3; `volts` is phase 1 or the mean
    std::optional<Measured<quantity::Voltage>> voltsThird;
    std::optional<Measured<quantity::Current>> ampsSecond;
    std::optional<Measured<quantity::Current>> ampsThird;
    std::optional<Measured<Ratio>> powerFactor;
    bool isDoubtful = false;
    std::string note;
    std::string reason;

    bool operator==(const PumpReading&) const = default;
};

/// How a drive's dp set-point follows the flow.
enum class ResetLaw { None, Square, Linear };
enum class SetPointMethod {
    Unstated,
    IndexAtDesign,  ///< pump slowed until the index terminal just takes its design flow
    WorstCoil,      ///< pump slowed until the control valve of the worst coil stands at about 85 %
    Estimated,  ///< where the pump cannot be slowed: sensor dp less what the worst coil and its valve take,
                ///< plus what they need, 7 to 35 kPa as a rule (US DOE/FEMP, Continuous Commissioning
                ///< Guidebook, 2002, chapter 5)
};

/// The dp that a pump's drive is to hold, and how it was found.
struct SetPoint {
    Id id;
    std::optional<Id> pump;
    std::string sensor;    ///< tag
    std::string location;  ///< where in the loop
    SetPointMethod method = SetPointMethod::Unstated;
    std::optional<Measured<PressureDifference>> zero;  ///< sensor reading with the pumps off
    std::optional<Measured<PressureDifference>> dp;    ///< the set-point
    std::optional<Measured<VolumeFlow>> flow;          ///< while it was found
    std::optional<Measured<RotationalSpeed>> speed;    ///< likewise
    std::optional<Measured<PressureDifference>> margin;
    std::optional<Measured<PressureDifference>> lowLimit;
    std::optional<Measured<PressureDifference>> highLimit;
    ResetLaw reset = ResetLaw::None;
    std::string setBy;
    std::optional<Instant> time;
    std::string note;

    bool operator==(const SetPoint&) const = default;
};

}  // namespace ww::project
