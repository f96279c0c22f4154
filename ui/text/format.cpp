#include "ui/text/format.h"

#include <algorithm>
#include <cmath>

#include "core/base/age.h"
#include "core/base/term.h"
#include "core/project/setting_text.h"
#include "core/quantity/printed_unit.h"
#include "core/quantity/shown_units.h"
#include "ui/text/words.h"

namespace ww::ui::text {

using project::UnitSystem;
using quantity::Unit;

Unit flowUnit(const project::Project& project) {
    return project.shownFlowUnit();
}

Unit headUnit(UnitSystem units) {
    return units == UnitSystem::US ? Unit::Foot : Unit::Metre;
}

Unit dpUnit(const project::Project& project, const std::optional<base::Id>& instrument) {
    const project::Instrument* record = instrument ? project.instruments().find(*instrument) : nullptr;
    if (record != nullptr && record->range) {
        return record->range->unit;
    }
    for (std::size_t i = project.readings().size(); i > 0; --i) {
        if (const auto& dp = project.readings()[i - 1].dp) {
            return dp->unit;
        }
    }
    return project.job().units == UnitSystem::US ? Unit::FootOfWater : Unit::Kilopascal;
}

QString symbol(Unit unit) {
    if (unit == Unit::RevolutionPerMinute) {
        return term(base::term("rpm"));
    }
    return QString::fromStdString(quantity::printed(unit));
}

namespace {

QString figures(double number) {
    return QString::fromStdString(quantity::significant(number, 3));
}

}  // namespace

QString flow(quantity::VolumeFlow flow, const project::Project& project) {
    return figures(flow.in(flowUnit(project)));
}

QString dp(quantity::PressureDifference dp, Unit unit, const fluid::Fluid& fluid) {
    return figures(quantity::isHeadUnit(unit) ? fluid.head(dp).in(unit) : dp.in(unit));
}

QString setting(quantity::Setting setting, const project::Project& project, const project::Branch& branch) {
    return QString::fromStdString(project::settingText(project, branch, setting));
}

QString head(quantity::Head head, UnitSystem units) {
    return QString::fromStdString(quantity::headDigits(head, headUnit(units)));
}

QString percent(quantity::Ratio ratio) {
    return QString::number(ratio.in(Unit::Percent), 'f', 1);
}

QString ofTarget(quantity::Ratio ratio, const project::Project& project) {
    const double band = project.job().matchingBand.value.in(Unit::Percent);
    constexpr double kRounding = 1e-7;
    constexpr int kMostPlaces = 4;
    const auto isInside = [&](double percent) { return std::abs(percent - 100) <= band + kRounding; };
    const double percent = ratio.in(Unit::Percent);
    int places = 1;
    while (places < kMostPlaces &&
           isInside(QString::number(percent, 'f', places).toDouble()) != isInside(percent)) {
        ++places;
    }
    return QString::number(percent, 'f', places);
}

QString onShare(const balancing::ShareCount& count) {
    return QStringLiteral("%1/%2")
        .arg(count.onShare ? QString::number(*count.onShare) : QString(QChar(0x2013)))
        .arg(count.all);
}

QString timeOf(const base::Instant& moment, const std::optional<base::Instant>& sameDay) {
    constexpr int kToTheMinute = 5;
    const QString time = QString::fromStdString(moment.timeOfDay()).left(kToTheMinute);
    const bool isSameDay = sameDay && sameDay->date() == moment.date();
    return isSameDay ? time : QString::fromStdString(moment.date()) + ' ' + time;
}

QString age(const base::Instant& moment, const base::Instant& now) {
    return terms(QString::fromStdString(base::ageText(now.seconds - moment.seconds)));
}

QString ago(const base::Instant& moment, const base::Instant& now) {
    return terms(QString::fromStdString(base::agoText(now.seconds - moment.seconds)));
}

QString moment(const base::Instant& time) {
    constexpr qsizetype kToSeconds = 19;
    return QString::fromStdString(time.text()).left(kToSeconds).replace('T', ' ');
}

}  // namespace ww::ui::text
