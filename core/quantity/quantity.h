// Typed physical quantities: a number in SI that cannot be mixed up with another kind.
// Not for what a person typed: that is Measured (measured.h). A display unit is an argument, never a state.
#pragma once

#include <cmath>
#include <compare>

#include "core/base/expects.h"
#include "core/quantity/unit.h"

namespace ww::quantity {

/// A quantity of one kind, held in SI. `Kind` carries the dimension its units must have.
template <class Kind>
class Quantity {
  public:
    constexpr Quantity() = default;
    /// From a number already in the SI unit of this kind.
    static constexpr Quantity si(double number) { return Quantity(number); }
    /// From a number in `unit`, which must measure this kind.
    static Quantity from(double number, Unit unit) {
        const UnitRow& r = row(unit);
        EXPECTS(r.dimension == Kind::kDimension);
        return Quantity((number + (Kind::kIsDifference ? 0.0 : r.offset)) * r.factor);
    }

    constexpr double si() const { return m_si; }
    /// The number in `unit`, which must measure this kind.
    double in(Unit unit) const {
        const UnitRow& r = row(unit);
        EXPECTS(r.dimension == Kind::kDimension);
        return m_si / r.factor - (Kind::kIsDifference ? 0.0 : r.offset);
    }
    /// False for an infinity and for no number, which files never hold.
    bool isFinite() const { return std::isfinite(m_si); }

    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator-() const { return Quantity(-m_si); }
    constexpr Quantity operator+(Quantity other) const { return Quantity(m_si + other.m_si); }
    constexpr Quantity operator-(Quantity other) const { return Quantity(m_si - other.m_si); }
    constexpr Quantity operator*(double factor) const { return Quantity(m_si * factor); }
    constexpr Quantity operator/(double divisor) const { return Quantity(m_si / divisor); }
    constexpr double operator/(Quantity other) const { return m_si / other.m_si; }
    constexpr Quantity& operator+=(Quantity other) {
        m_si += other.m_si;
        return *this;
    }

  private:
    constexpr explicit Quantity(double number) : m_si(number) {}
    double m_si = 0.0;
};

template <class Kind>
constexpr Quantity<Kind> operator*(double factor, Quantity<Kind> q) {
    return q * factor;
}

#define WW_QUANTITY(Name, Dim, IsDifference)                        \
    struct Name##Kind {                                             \
        static constexpr Dimension kDimension = Dimension::Dim;     \
        static constexpr bool kIsDifference = IsDifference;         \
    };                                                              \
    using Name = Quantity<Name##Kind>;

WW_QUANTITY(VolumeFlow, Flow, true)
WW_QUANTITY(PressureDifference, Pressure, true)
WW_QUANTITY(Head, Length, true)
WW_QUANTITY(Length, Length, true)
WW_QUANTITY(FlowCoefficient, FlowCoefficient, true)
WW_QUANTITY(TemperatureDifference, Temperature, true)
WW_QUANTITY(Power, Power, true)
WW_QUANTITY(RotationalSpeed, RotationalSpeed, true)
WW_QUANTITY(Voltage, Voltage, true)
WW_QUANTITY(Current, Current, true)
WW_QUANTITY(Ratio, Fraction, true)
WW_QUANTITY(Duration, Duration, true)
WW_QUANTITY(Setting, Scale, true)
#undef WW_QUANTITY

/// A pressure point (gauge or absolute): two points subtract to a PressureDifference; points do not add.
template <class Reference>
class PressurePoint {
  public:
    constexpr PressurePoint() = default;
    /// From Pa; from a number in a unit of pressure. A head is no unit of it.
    static constexpr PressurePoint si(double number) { return PressurePoint(number); }
    static PressurePoint from(double number, Unit unit) {
        return PressurePoint(PressureDifference::from(number, unit).si());
    }
    constexpr double si() const { return m_si; }
    double in(Unit unit) const { return PressureDifference::si(m_si).in(unit); }
    constexpr auto operator<=>(const PressurePoint&) const = default;
    constexpr PressureDifference operator-(PressurePoint other) const {
        return PressureDifference::si(m_si - other.m_si);
    }
    constexpr PressurePoint operator+(PressureDifference d) const { return PressurePoint(m_si + d.si()); }
    constexpr PressurePoint operator-(PressureDifference d) const { return PressurePoint(m_si - d.si()); }

  private:
    constexpr explicit PressurePoint(double number) : m_si(number) {}
    double m_si = 0.0;
};
/// Pressure above the surrounding air, Pa.
using GaugePressure = PressurePoint<struct GaugeReference>;
/// Pressure above vacuum, Pa.
using AbsolutePressure = PressurePoint<struct VacuumReference>;

/// A temperature point, K. Two points subtract to a TemperatureDifference.
class Temperature {
  public:
    constexpr Temperature() = default;
    /// From K; from a number in a unit of temperature.
    static constexpr Temperature si(double kelvin) { return Temperature(kelvin); }
    static Temperature from(double number, Unit unit) {
        const UnitRow& r = row(unit);
        EXPECTS(r.dimension == Dimension::Temperature);
        return Temperature((number + r.offset) * r.factor);
    }
    constexpr double si() const { return m_kelvin; }
    double in(Unit unit) const {
        const UnitRow& r = row(unit);
        EXPECTS(r.dimension == Dimension::Temperature);
        return m_kelvin / r.factor - r.offset;
    }
    constexpr auto operator<=>(const Temperature&) const = default;
    constexpr TemperatureDifference operator-(Temperature other) const {
        return TemperatureDifference::si(m_kelvin - other.m_kelvin);
    }

  private:
    constexpr explicit Temperature(double kelvin) : m_kelvin(kelvin) {}
    double m_kelvin = 273.15;
};

/// Quantities that are computed and never typed; SI only.
template <class Kind>
class DerivedQuantity {
  public:
    constexpr DerivedQuantity() = default;
    /// From, and as, a number in the SI unit of its kind.
    static constexpr DerivedQuantity si(double number) { return DerivedQuantity(number); }
    constexpr double si() const { return m_si; }
    constexpr auto operator<=>(const DerivedQuantity&) const = default;

  private:
    constexpr explicit DerivedQuantity(double number) : m_si(number) {}
    double m_si = 0.0;
};
using Density = DerivedQuantity<struct DensityKind>;                        ///< kg/m3
using DynamicViscosity = DerivedQuantity<struct DynamicViscosityKind>;      ///< Pa s
using KinematicViscosity = DerivedQuantity<struct KinematicViscosityKind>;  ///< m2/s
using SpecificHeat = DerivedQuantity<struct SpecificHeatKind>;              ///< J/(kg K)
using Resistance = DerivedQuantity<struct ResistanceKind>;                  ///< Pa/(m3/s)^2, of the square law
using Energy = DerivedQuantity<struct EnergyKind>;                          ///< J

/// Head <-> pressure difference of a fluid of that density under standard gravity.
constexpr PressureDifference pressureOf(Head head, Density density) {
    return PressureDifference::si(head.si() * density.si() * kStandardGravity);
}
constexpr Head headOf(PressureDifference dp, Density density) {
    return Head::si(dp.si() / (density.si() * kStandardGravity));
}

}  // namespace ww::quantity
