// Numbers as the screens show them, in the units of the job. Not for parsing, nor for words (words.h).
#pragma once

#include <QString>

#include "core/balancing/share_count.h"
#include "core/project/project.h"

namespace ww::ui::text {

/// The unit in which most design flows were entered: gpm, L/s or m3/h.
quantity::Unit flowUnit(const project::Project& project);
/// m or ft of the flowing fluid.
quantity::Unit headUnit(project::UnitSystem units);
/// The unit that a bare dp is taken in and that columns of dp show: that of the instrument's range, else that
/// of the newest reading, else kPa or ftH2O.
quantity::Unit dpUnit(const project::Project& project, const std::optional<base::Id>& instrument = {});

/// The symbol with its small figures: "m³/h", "inH₂O"; that of revolutions in the language of the screen.
QString symbol(quantity::Unit unit);

/// Three significant figures, without the unit.
QString flow(quantity::VolumeFlow flow, const project::Project& project);
/// Three significant figures, without the unit; `unit` may be a pressure or a head of the job's fluid.
QString dp(quantity::PressureDifference dp, quantity::Unit unit, const fluid::Fluid& fluid);
/// A setting as it is written at a branch, without the unit of its scale (project::settingText()).
QString setting(quantity::Setting setting, const project::Project& project, const project::Branch& branch);
/// As every page writes a head (quantity::headDigits), without the unit.
QString head(quantity::Head head, project::UnitSystem units);
/// One decimal, without the sign: 1.024 gives "102.4".
QString percent(quantity::Ratio ratio);
/// The same of a share over its target, with as many decimals more as it takes to see on which side of the
/// band's limit it lies: "94.96" at a band of 5 %, not "95.0".
QString ofTarget(quantity::Ratio ratio, const project::Project& project);
/// Terminals on share of all, "3/12"; a dash where no share is known.
QString onShare(const balancing::ShareCount& count);
/// What was entered: "52.7 kPa", of a plain number "0.82"; nothing entered gives "".
template <class Q>
QString entered(const std::optional<quantity::Measured<Q>>& value) {
    if (!value) {
        return {};
    }
    const QString digits = QString::fromStdString(value->digits.text());
    return value->unit == quantity::Unit::One ? digits : digits + QChar(0xA0) + text::symbol(value->unit);
}

/// The time of day of a moment, "14:02"; with the date before it, "2026-03-04 14:02", where that is another
/// than the date of `sameDay` or where there is no such day.
QString timeOf(const base::Instant& moment, const std::optional<base::Instant>& sameDay = {});

/// "40 s", "12 min", "3 h 20 min", "4 days", "3 months" (base::ageText): the age of a moment at `now`.
QString age(const base::Instant& moment, const base::Instant& now);
/// The same with "ago".
QString ago(const base::Instant& moment, const base::Instant& now);

/// "2026-03-02 14:02:07", as it stands in the record.
QString moment(const base::Instant& time);

}  // namespace ww::ui::text
