// A balancing valve's flow coefficient over its setting, from the points of its table, and back.
// Not for the flow itself (valve_flow.h).
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/base/result.h"
#include "core/curve/monotone_cubic.h"
#include "core/quantity/quantity.h"

namespace ww::curve {

using quantity::FlowCoefficient;
using quantity::Setting;

/// One row of a valve's table.
struct ValvePoint {
    Setting setting;
    FlowCoefficient coefficient;
};

inline constexpr base::MessageForm kValveTooFewPoints{
    "valve_too_few_points",
    "points of the valve table: {1}; give at least two, the highest being fully open"};
inline constexpr base::MessageForm kValveSettingRepeated{
    "valve_setting_repeated", "setting {1} stands twice in the valve table; keep one row for it"};
inline constexpr base::MessageForm kValveNotRising{"valve_not_rising",
                                                   "the coefficient falls from {1} to {2} between settings "
                                                   "{3} and {4}; correct the table, a valve passes more as "
                                                   "it opens"};
inline constexpr base::MessageForm kValveCoefficientNotPositive{
    "valve_coefficient_not_positive",
    "the coefficient at setting {1} is {2}; only the lowest setting may have 0, all others must be above 0"};

/// Monotone interpolation of ln(Kv) over the setting (Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980)
/// 238): passes through every point, never overshoots between two. A lowest point with coefficient 0 is the
/// shut valve; between it and the next point the coefficient itself is interpolated linearly. Two neighbours
/// may have the same coefficient (a rounded table); then settingFor() gives the lower of the settings.
class ValveCharacteristic {
  public:
    /// Points in any order, finite. The table's first fault in order of setting is reported: too few points,
    /// a setting twice, a coefficient that is not positive, a falling coefficient.
    static base::Result<ValveCharacteristic> make(std::vector<ValvePoint> points);

    /// The coefficient at a setting within [lowest(), fullyOpen()]; outside is a broken contract.
    FlowCoefficient coefficient(Setting setting) const;
    /// d ln(coefficient) / d setting there, one over the unit of the setting; 0 at and below a shut lowest
    /// point. At the point above a shut one it is the slope towards open. Settings outside are a broken
    /// contract.
    double logSlope(Setting setting) const;
    /// The setting that gives this coefficient, to 1e-12 of the scale; nothing outside the table's range.
    std::optional<Setting> settingFor(FlowCoefficient coefficient) const;

    bool covers(Setting setting) const { return setting >= lowest() && setting <= fullyOpen(); }
    Setting lowest() const { return m_points.front().setting; }
    Setting fullyOpen() const { return m_points.back().setting; }
    FlowCoefficient coefficientFullyOpen() const { return m_points.back().coefficient; }
    std::span<const ValvePoint> points() const { return m_points; }

  private:
    explicit ValveCharacteristic(std::vector<ValvePoint> points);

    std::vector<ValvePoint> m_points;  ///< rising setting
    MonotoneCubic m_logs;              ///< ln(Kv) over setting, of the points whose coefficient is above 0
    bool m_shutsAtLowest = false;      ///< the lowest point's coefficient is 0
};

}  // namespace ww::curve
