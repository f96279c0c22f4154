#include "ui/places/job/job_edit.h"

#include "core/base/term.h"
#include "core/project/units.h"
#include "ui/text/format.h"
#include "ui/text/parse.h"

namespace ww::ui {
namespace {

using project::Job;
using quantity::Measured;
using quantity::Ratio;
using quantity::Temperature;
using quantity::Unit;

constexpr base::MessageForm kNameMissing{"job_name_empty", "a job needs a name; type one"};
constexpr base::MessageForm kLowNotNegative{"tolerance_low_not_negative",
                                            "{1} is not below zero; type the lower limit as -10"};
constexpr base::MessageForm kLimitTooWide{"tolerance_too_wide",
                                          "{1} is out of reason; type a value within {2} %"};

constexpr base::MessageForm kAltitudeOutside{
    "altitude_outside", "{1} is no height of a building above the sea; type one within -500 and 6000 m"};
constexpr quantity::Length kLowestSite = quantity::Length::si(-500);
constexpr quantity::Length kHighestSite = quantity::Length::si(6000);

template <class Q>
QString plain(const Measured<Q>& value) {
    return text::entered(std::optional(value)).replace(QChar(0xA0), ' ');
}

template <class Q>
std::optional<base::Fault> take(Measured<Q>& place, const QString& text, Unit usual) {
    auto value = text::parseMeasured<Q>(text, usual);
    if (!value) {
        return value.fault();
    }
    place = std::move(value).value();
    return {};
}

std::optional<base::Fault> takeNumber(std::optional<base::Decimal>& place, const QString& text) {
    if (text.isEmpty()) {
        place.reset();
        return {};
    }
    auto value = base::Decimal::parse(text.toStdString());
    if (!value) {
        return value.fault();
    }
    if (!(value->value() > 0.0)) {
        return base::Fault{&text::kMustBePositive, {}, {value->text()}};
    }
    place = std::move(value).value();
    return {};
}

std::optional<base::Fault> faultOfFluid(const Job& job) {
    const auto made = fluid::Fluid::make(job.fluid, job.concentration.value, job.temperature.value,
                                         project::fluidUnits(job));
    return made ? std::nullopt : std::optional(made.fault());
}

/// A limit above zero and at most one half.
std::optional<base::Fault> faultOfLimit(const Measured<Ratio>& limit) {
    if (!(limit.value.si() > 0.0)) {
        return base::Fault{&text::kMustBePositive, {}, {limit.text()}};
    }
    if (limit.value.si() > 0.5) {
        return base::Fault{&kLimitTooWide, {}, {limit.text(), "50"}};
    }
    return {};
}

std::optional<base::Fault> takeAltitude(Job& job, const QString& text) {
    const bool isUs = job.units == project::UnitSystem::US;
    if (text.isEmpty()) {
        job.altitude.reset();
        return {};
    }
    Measured<quantity::Length> altitude;
    auto refusal = take<quantity::Length>(altitude, text, isUs ? Unit::Foot : Unit::Metre);
    if (refusal) {
        return refusal;
    }
    if (altitude.value < kLowestSite || altitude.value > kHighestSite) {
        return base::Fault{&kAltitudeOutside, {}, {altitude.text()}};
    }
    job.altitude = std::move(altitude);
    return {};
}

/// A gauge pressure in a pressure unit, or as a head of the job's fluid.
std::optional<base::Fault> takeFillPressure(Job& job, const QString& text) {
    if (text.isEmpty()) {
        job.fillPressure.reset();
        return {};
    }
    const bool isUs = job.units == project::UnitSystem::US;
    const auto fluid = fluid::Fluid::make(job.fluid, job.concentration.value, job.temperature.value);
    auto typed = quantity::parseDifference(text.toStdString(), isUs ? Unit::Psi : Unit::Kilopascal,
                                           (fluid ? *fluid : fluid::Fluid()).density());
    if (!typed) {
        return typed.fault();
    }
    job.fillPressure = Measured<quantity::GaugePressure>{typed->digits, typed->unit,
                                                         quantity::GaugePressure::si(typed->value.si())};
    return {};
}

std::optional<base::Fault> set(Job& job, JobField field, const QString& text) {
    std::optional<base::Fault> refusal;
    switch (field) {
        case JobField::Name:
            job.name = text.toStdString();
            return job.name.empty() ? std::optional(base::Fault{&kNameMissing, {}, {}}) : std::nullopt;
        case JobField::Site:
            job.site = text.toStdString();
            return {};
        case JobField::Client:
            job.client = text.toStdString();
            return {};
        case JobField::Currency:
            job.currency = text.toStdString();
            return {};
        case JobField::Concentration:
            refusal = take<Ratio>(job.concentration, text, Unit::Percent);
            return refusal ? refusal : faultOfFluid(job);
        case JobField::Temperature:
            refusal = take<Temperature>(job.temperature, text, job.temperature.unit);
            return refusal ? refusal : faultOfFluid(job);
        case JobField::ToleranceLow:
            refusal = take<Ratio>(job.toleranceLow, text, Unit::Percent);
            if (!refusal && !(job.toleranceLow.value.si() < 0.0)) {
                refusal = base::Fault{&kLowNotNegative, {}, {job.toleranceLow.text()}};
            }
            if (!refusal && job.toleranceLow.value.si() < -0.5) {
                refusal = base::Fault{&kLimitTooWide, {}, {job.toleranceLow.text(), "-50"}};
            }
            return refusal;
        case JobField::ToleranceHigh:
            refusal = take<Ratio>(job.toleranceHigh, text, Unit::Percent);
            return refusal ? refusal : faultOfLimit(job.toleranceHigh);
        case JobField::MatchingBand:
            refusal = take<Ratio>(job.matchingBand, text, Unit::Percent);
            return refusal ? refusal : faultOfLimit(job.matchingBand);
        case JobField::PowerPrice:
            return takeNumber(job.powerPrice, text);
        case JobField::HoursPerYear:
            return takeNumber(job.hoursPerYear, text);
        case JobField::ReadingAgeLimit:
            return takeNumber(job.readingAgeLimit, text);
        case JobField::Altitude:
            return takeAltitude(job, text);
        case JobField::FillPressure:
            return takeFillPressure(job, text);
        case JobField::CodeEdition:
            job.codeEdition = text.toStdString();
            return {};
        case JobField::CodeClause:
            job.codeClause = text.toStdString();
            return {};
        case JobField::CodeException:
            job.codeException = text.toStdString();
            return {};
    }
    return {};
}

}  // namespace

const char* jobFieldName(JobField field) {
    switch (field) {
        case JobField::Name:
            return base::term("name");
        case JobField::Site:
            return base::term("site");
        case JobField::Client:
            return base::term("client");
        case JobField::Concentration:
            return base::term("glycol by mass");
        case JobField::Temperature:
            return base::term("temperature");
        case JobField::ToleranceLow:
            return base::term("lowest off design");
        case JobField::ToleranceHigh:
            return base::term("highest off design");
        case JobField::MatchingBand:
            return base::term("band of target");
        case JobField::PowerPrice:
            return base::term("price of a kWh");
        case JobField::Currency:
            return base::term("currency");
        case JobField::HoursPerYear:
            return base::term("hours a year");
        case JobField::Altitude:
            return base::term("altitude");
        case JobField::FillPressure:
            return base::term("fill pressure");
        case JobField::ReadingAgeLimit:
            return base::term("age of old readings");
        case JobField::CodeEdition:
            return base::term("code and edition");
        case JobField::CodeClause:
            return base::term("clause");
        case JobField::CodeException:
            break;
    }
    return base::term("exception claimed");
}

QString jobFieldText(const Job& job, JobField field) {
    const auto number = [](const std::optional<base::Decimal>& value) {
        return value ? QString::fromStdString(value->text()) : QString();
    };
    switch (field) {
        case JobField::Name:
            return QString::fromStdString(job.name);
        case JobField::Site:
            return QString::fromStdString(job.site);
        case JobField::Client:
            return QString::fromStdString(job.client);
        case JobField::Currency:
            return QString::fromStdString(job.currency);
        case JobField::Concentration:
            return plain(job.concentration);
        case JobField::Temperature:
            return plain(job.temperature);
        case JobField::ToleranceLow:
            return plain(job.toleranceLow);
        case JobField::ToleranceHigh:
            return plain(job.toleranceHigh);
        case JobField::MatchingBand:
            return plain(job.matchingBand);
        case JobField::PowerPrice:
            return number(job.powerPrice);
        case JobField::HoursPerYear:
            return number(job.hoursPerYear);
        case JobField::ReadingAgeLimit:
            return number(job.readingAgeLimit);
        case JobField::Altitude:
            return job.altitude ? plain(*job.altitude) : QString();
        case JobField::FillPressure:
            return job.fillPressure ? plain(*job.fillPressure) : QString();
        case JobField::CodeEdition:
            return QString::fromStdString(job.codeEdition);
        case JobField::CodeClause:
            return QString::fromStdString(job.codeClause);
        case JobField::CodeException:
            return QString::fromStdString(job.codeException);
    }
    return {};
}

base::Result<Job> withJobField(const Job& job, JobField field, const QString& text) {
    Job changed = job;
    if (auto refusal = set(changed, field, text.trimmed())) {
        return *refusal;
    }
    return changed;
}

base::Result<Job> withFluid(const Job& job, fluid::FluidKind kind) {
    Job changed = job;
    changed.fluid = kind;
    if (kind == fluid::FluidKind::Water) {
        changed.concentration = quantity::measured<Ratio>(*base::Decimal::parse("0"), Unit::Percent);
    }
    if (auto refusal = faultOfFluid(changed)) {
        return *refusal;
    }
    return changed;
}

}  // namespace ww::ui
