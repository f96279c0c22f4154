// One value of a record that a person types: its title, what stands there, and a typed text taken into it.
// For tables described by their fields. Not for showing them.
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <utility>
#include <vector>

#include "core/project/project.h"
#include "ui/text/format.h"
#include "ui/text/parse.h"
#include "ui/text/typed_word.h"

namespace ww::ui {

inline constexpr base::MessageForm kFieldNegative{"field_negative",
                                                  "{1} is below zero; type zero or more, or nothing"};

inline constexpr base::MessageForm kEfficiencyTooHigh{
    "efficiency_too_high", "{1} is more than a whole; type an efficiency of 100 % at most"};

/// Which numbers a field takes.
enum class FieldSign { Any, NotNegative, Positive };

/// What a field is called: on the screen, and in English for the labels of the journal. From base::term() it
/// has both; a text that was translated already is for fields that no label names.
struct FieldTitle {
    FieldTitle(const char* word) : shown(text::term(word)), english(word) {}
    FieldTitle(QString translated) : shown(std::move(translated)), english(shown.toStdString()) {}

    QString shown;
    std::string english;
};

/// A value of a record as it is shown and typed.
template <class Record>
struct RecordField {
    using Refusal = std::optional<base::Fault>;

    FieldTitle title;
    std::function<QString(const project::Project& project, const Record& record)> text;
    /// An empty text empties the value where that may be. A refusal leaves the record as it was.
    std::function<Refusal(const project::Project& project, Record& record, const QString& typed)> take;
};

namespace fields {

/// The unit of digits that are typed without one.
using UsualUnit = std::function<quantity::Unit(const project::Project& project)>;

/// Why a value is not taken by its sign; nothing where it is.
template <class Q>
std::optional<base::Fault> faultOfSign(const quantity::Measured<Q>& value, FieldSign sign) {
    if (sign == FieldSign::Positive && !(value.value.si() > 0)) {
        return base::Fault{&text::kMustBePositive, {}, {value.text()}};
    }
    if (sign == FieldSign::NotNegative && value.value.si() < 0) {
        return base::Fault{&kFieldNegative, {}, {value.text()}};
    }
    return {};
}

/// Digits and unit as one quantity: differences of pressure and gauge pressures may be typed as a head, and a
/// head as a pressure, both by the density of the job's fluid.
template <class Q>
base::Result<quantity::Measured<Q>> parsed(const project::Project& project, const QString& typed,
                                           quantity::Unit usual) {
    if constexpr (std::is_same_v<Q, quantity::PressureDifference>) {
        return quantity::parseDifference(typed.toStdString(), usual, project.fluid().density());
    } else if constexpr (std::is_same_v<Q, quantity::GaugePressure>) {
        auto difference = quantity::parseDifference(typed.toStdString(), usual, project.fluid().density());
        if (!difference) {
            return difference.fault();
        }
        return quantity::Measured<Q>{difference->digits, difference->unit, Q::si(difference->value.si())};
    } else if constexpr (std::is_same_v<Q, quantity::Head>) {
        const text::DigitsAndUnit said = text::split(typed);
        // Behind a head "m" is a metre; the letters of a dp come after the symbols of a length.
        const auto length = quantity::unitFromSymbol(said.unit, quantity::Dimension::Length);
        const quantity::Density density = project.fluid().density();
        auto entered = quantity::parseDifference(length ? said.digits : said.digits + " " + said.unit,
                                                 length.value_or(usual), density);
        if (!entered) {
            return entered.fault();
        }
        return quantity::measuredHead(std::move(entered->digits), entered->unit, density);
    } else {
        return text::parseMeasured<Q>(typed, usual);
    }
}

/// A quantity with its unit; digits alone are in the unit that stood there before, else in the usual one.
template <class Record, class Q>
RecordField<Record> measured(const FieldTitle& title, std::optional<quantity::Measured<Q>> Record::*member,
                             UsualUnit usual, FieldSign sign = FieldSign::Any) {
    return {title,
            [member](const project::Project&, const Record& record) { return text::entered(record.*member); },
            [=](const project::Project& project, Record& record,
                const QString& typed) -> std::optional<base::Fault> {
                if (typed.isEmpty()) {
                    (record.*member).reset();
                    return {};
                }
                auto value =
                    parsed<Q>(project, typed, record.*member ? (record.*member)->unit : usual(project));
                if (!value) {
                    return value.fault();
                }
                if (auto refusal = faultOfSign(*value, sign)) {
                    return refusal;
                }
                record.*member = std::move(value).value();
                return {};
            }};
}

template <class Record, class Q>
RecordField<Record> measured(const FieldTitle& title, std::optional<quantity::Measured<Q>> Record::*member,
                             quantity::Unit usual, FieldSign sign = FieldSign::Any) {
    return measured(
        title, member, [usual](const project::Project&) { return usual; }, sign);
}

/// An efficiency: above zero, 100 % at most.
template <class Record>
RecordField<Record> efficiency(const FieldTitle& title,
                               std::optional<quantity::Measured<quantity::Ratio>> Record::*member) {
    RecordField<Record> field = measured(title, member, quantity::Unit::Percent, FieldSign::Positive);
    field.take = [member, take = field.take](const project::Project& project, Record& record,
                                             const QString& typed) -> std::optional<base::Fault> {
        Record taken = record;
        if (auto refusal = take(project, taken, typed)) {
            return refusal;
        }
        if (taken.*member && (taken.*member)->value.si() > 1) {
            return base::Fault{&kEfficiencyTooHigh, {}, {(taken.*member)->text()}};
        }
        record = std::move(taken);
        return {};
    };
    return field;
}

/// Digits without a unit.
template <class Record>
RecordField<Record> number(const FieldTitle& title, std::optional<base::Decimal> Record::*member,
                           FieldSign sign = FieldSign::Any) {
    return {title,
            [member](const project::Project&, const Record& record) {
                return record.*member ? QString::fromStdString((record.*member)->text()) : QString();
            },
            [=](const project::Project&, Record& record, const QString& typed) -> std::optional<base::Fault> {
                if (typed.isEmpty()) {
                    (record.*member).reset();
                    return {};
                }
                auto value = base::Decimal::parse(typed.toStdString());
                if (!value) {
                    return value.fault();
                }
                if (sign == FieldSign::Positive && !(value->value() > 0)) {
                    return base::Fault{&text::kMustBePositive, {}, {value->text()}};
                }
                if (sign == FieldSign::NotNegative && value->value() < 0) {
                    return base::Fault{&kFieldNegative, {}, {value->text()}};
                }
                record.*member = std::move(value).value();
                return {};
            }};
}

/// Any text.
template <class Record>
RecordField<Record> words(const FieldTitle& title, std::string Record::*member) {
    return {title,
            [member](const project::Project&, const Record& record) {
                return QString::fromStdString(record.*member);
            },
            [member](const project::Project&, Record& record,
                     const QString& typed) -> std::optional<base::Fault> {
                record.*member = typed.toStdString();
                return {};
            }};
}

/// Another record, by its tag in any case; `unknown` is said of a tag that no record of the table has.
template <class Record, class Table>
RecordField<Record> reference(const FieldTitle& title, std::optional<base::Id> Record::*member,
                              const Table& (project::Project::*table)() const,
                              const base::MessageForm& unknown) {
    return {title,
            [=](const project::Project& project, const Record& record) {
                const auto* found = record.*member ? (project.*table)().find(*(record.*member)) : nullptr;
                return found != nullptr ? QString::fromStdString(found->tag) : QString();
            },
            [member, table, &unknown](const project::Project& project, Record& record,
                                      const QString& typed) -> std::optional<base::Fault> {
                if (typed.isEmpty()) {
                    (record.*member).reset();
                    return {};
                }
                for (const auto& each : (project.*table)()) {
                    if (QString::fromStdString(each.tag).compare(typed, Qt::CaseInsensitive) == 0) {
                        record.*member = each.id;
                        return {};
                    }
                }
                return base::Fault{&unknown, {}, {typed.toStdString()}};
            }};
}

/// One word of an enumeration, whole or by its first letters.
template <class Record, class Enumeration>
RecordField<Record> choice(const FieldTitle& title, Enumeration Record::*member) {
    return {title,
            [member](const project::Project&, const Record& record) { return text::nameOf(record.*member); },
            [member](const project::Project&, Record& record,
                     const QString& typed) -> std::optional<base::Fault> {
                if (!text::takeWord(record.*member, typed)) {
                    return text::wordFault<Enumeration>(typed);
                }
                return {};
            }};
}

/// "yes" or "no", whole or by their first letter.
template <class Record>
RecordField<Record> yesOrNo(const FieldTitle& title, bool Record::*member) {
    return {title,
            [member](const project::Project&, const Record& record) { return text::yesOrNo(record.*member); },
            [member](const project::Project&, Record& record,
                     const QString& typed) -> std::optional<base::Fault> {
                const std::optional<bool> isYes = text::takeYesOrNo(typed);
                if (!isYes) {
                    return base::Fault{&text::kNotOneOf, {}, {typed.toStdString(), "yes, no"}};
                }
                record.*member = *isYes;
                return {};
            }};
}

/// psi or kPa, by the job.
inline quantity::Unit pressureUnit(const project::Project& project) {
    return project.job().units == project::UnitSystem::US ? quantity::Unit::Psi : quantity::Unit::Kilopascal;
}
/// The unit that the newest gauge at a pump was read in, else psi or kPa.
inline quantity::Unit gaugeUnit(const project::Project& project) {
    for (std::size_t i = project.pumpReadings().size(); i > 0; --i) {
        if (const auto& discharge = project.pumpReadings()[i - 1].discharge) {
            return discharge->unit;
        }
    }
    return pressureUnit(project);
}
/// ft or m, by the job.
inline quantity::Unit lengthUnit(const project::Project& project) {
    return project.job().units == project::UnitSystem::US ? quantity::Unit::Foot : quantity::Unit::Metre;
}
/// in or mm, by the job.
inline quantity::Unit boreUnit(const project::Project& project) {
    return project.job().units == project::UnitSystem::US ? quantity::Unit::Inch : quantity::Unit::Millimetre;
}
/// hp or kW, by the job.
inline quantity::Unit powerUnit(const project::Project& project) {
    return project.job().units == project::UnitSystem::US ? quantity::Unit::Horsepower
                                                          : quantity::Unit::Kilowatt;
}

}  // namespace fields

/// The titles of fields as the screen shows them.
template <class Record>
QStringList titlesOf(const std::vector<RecordField<Record>>& fields) {
    QStringList titles;
    for (const RecordField<Record>& field : fields) {
        titles << field.title.shown;
    }
    return titles;
}

}  // namespace ww::ui
