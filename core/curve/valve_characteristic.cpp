#include "core/curve/valve_characteristic.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/quantity/measured.h"

namespace ww::curve {

namespace {

// Conversions between Cv and Kv may leave a coefficient a few last places outside the table's end values.
constexpr double kEndTolerance = 1e-12;

std::string text(Setting setting) {
    return quantity::concise(setting.si(), 6);
}

std::string text(FlowCoefficient coefficient) {
    return quantity::concise(coefficient.si(), 6);
}

std::optional<base::Fault> faultIn(const std::vector<ValvePoint>& sorted) {
    if (sorted.size() < 2) {
        return base::Fault{&kValveTooFewPoints, "", {std::to_string(sorted.size())}};
    }
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        const ValvePoint& point = sorted[i];
        if (i > 0 && point.setting == sorted[i - 1].setting) {
            return base::Fault{&kValveSettingRepeated, "", {text(point.setting)}};
        }
        const bool isShut = i == 0 && point.coefficient.si() == 0;
        if (!isShut && !(point.coefficient.si() > 0)) {
            return base::Fault{
                &kValveCoefficientNotPositive, "", {text(point.setting), text(point.coefficient)}};
        }
        if (i > 0 && point.coefficient < sorted[i - 1].coefficient) {
            return base::Fault{&kValveNotRising,
                               "",
                               {text(sorted[i - 1].coefficient), text(point.coefficient),
                                text(sorted[i - 1].setting), text(point.setting)}};
        }
    }
    return std::nullopt;
}

}  // namespace

base::Result<ValveCharacteristic> ValveCharacteristic::make(std::vector<ValvePoint> points) {
    for (const ValvePoint& point : points) {
        EXPECTS(point.setting.isFinite() && point.coefficient.isFinite());
    }
    std::stable_sort(points.begin(), points.end(),
                     [](const ValvePoint& a, const ValvePoint& b) { return a.setting < b.setting; });
    if (const auto fault = faultIn(points)) {
        return *fault;
    }
    return ValveCharacteristic(std::move(points));
}

ValveCharacteristic::ValveCharacteristic(std::vector<ValvePoint> points)
    : m_points(std::move(points)), m_shutsAtLowest(m_points.front().coefficient.si() == 0) {
    std::vector<double> settings;
    std::vector<double> logs;
    for (std::size_t i = m_shutsAtLowest ? 1 : 0; i < m_points.size(); ++i) {
        settings.push_back(m_points[i].setting.si());
        logs.push_back(std::log(m_points[i].coefficient.si()));
    }
    m_logs = MonotoneCubic(settings, logs);
}

FlowCoefficient ValveCharacteristic::coefficient(Setting setting) const {
    EXPECTS(covers(setting));
    if (m_shutsAtLowest && setting < m_points[1].setting) {
        const double opening = (setting - m_points[0].setting) / (m_points[1].setting - m_points[0].setting);
        return m_points[1].coefficient * opening;
    }
    return FlowCoefficient::si(std::exp(m_logs.value(setting.si())));
}

double ValveCharacteristic::logSlope(Setting setting) const {
    EXPECTS(covers(setting));
    if (m_shutsAtLowest && setting < m_points[1].setting) {
        return setting > lowest() ? 1 / (setting - lowest()).si() : 0;
    }
    return m_logs.slope(setting.si());
}

std::optional<Setting> ValveCharacteristic::settingFor(FlowCoefficient coefficient) const {
    const FlowCoefficient least = m_points.front().coefficient;
    const FlowCoefficient most = coefficientFullyOpen();
    // Written so that a coefficient that is not a number is refused as well.
    if (!(coefficient >= least * (1 - kEndTolerance) && coefficient <= most * (1 + kEndTolerance))) {
        return std::nullopt;
    }
    const FlowCoefficient wanted = std::clamp(coefficient, least, most);
    if (m_shutsAtLowest && wanted <= m_points[1].coefficient) {
        const double opening = wanted / m_points[1].coefficient;
        return lowest() + (m_points[1].setting - lowest()) * opening;
    }
    return std::min(Setting::si(m_logs.inverse(std::log(wanted.si()))), fullyOpen());
}

}  // namespace ww::curve
