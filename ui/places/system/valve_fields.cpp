#include "ui/places/system/valve_fields.h"
#include "core/project/equipment_curves.h"

#include <QRegularExpression>

namespace ww::ui {

namespace {

using project::ValveModel;
using Refusal = std::optional<base::Fault>;

constexpr base::MessageForm kValveNameEmpty{
    "valve_name_empty", "a valve model needs a name; type it as its maker's table has it"};
constexpr base::MessageForm kValveRangeOrder{"valve_range_order",
                                             "the most dp {1} is not above the least dp {2}; type another"};
constexpr base::MessageForm kPastedPointShort{
    "pasted_point_short", "line {1} has no two columns; copy the settings and the coefficients beside them"};
constexpr base::MessageForm kPastedPointBad{
    "pasted_point_bad", "line {1}: \"{2}\" is not a number from 0; correct it where it was copied from"};

/// A field whose new value must leave the record sound.
RecordField<ValveModel> checked(RecordField<ValveModel> field,
                                std::function<Refusal(const ValveModel& valve)> check) {
    const auto take = field.take;
    field.take = [take, check](const project::Project& project, ValveModel& record,
                               const QString& typed) -> Refusal {
        ValveModel changed = record;
        Refusal refusal = take(project, changed, typed);
        refusal = refusal ? refusal : check(changed);
        if (!refusal) {
            record = std::move(changed);
        }
        return refusal;
    };
    return field;
}

Refusal checkName(const ValveModel& valve) {
    return valve.model.empty() ? Refusal(base::Fault{&kValveNameEmpty, {}, {}}) : Refusal();
}

Refusal checkRange(const ValveModel& valve) {
    const bool isWrong =
        valve.minimumDp && valve.maximumDp && valve.maximumDp->value <= valve.minimumDp->value;
    return isWrong ? Refusal(base::Fault{
                         &kValveRangeOrder, {}, {valve.maximumDp->text(), valve.minimumDp->text()}})
                   : Refusal();
}

RecordField<ValveModel> coefficientField() {
    return {base::term("Cv or Kv"),
            [](const project::Project&, const ValveModel& valve) {
                return valve.coefficientUnit == quantity::Unit::Cv ? QStringLiteral("Cv")
                                                                   : QStringLiteral("Kv");
            },
            [](const project::Project&, ValveModel& valve, const QString& typed) -> Refusal {
                const QString word = typed.toLower();
                if (word != QStringLiteral("cv") && word != QStringLiteral("c") &&
                    word != QStringLiteral("kv") && word != QStringLiteral("k")) {
                    return base::Fault{&text::kNotOneOf, {}, {typed.toStdString(), "Cv, Kv"}};
                }
                valve.coefficientUnit = word.startsWith('c') ? quantity::Unit::Cv : quantity::Unit::Kv;
                return {};
            }};
}

/// The digits of one pasted cell; nothing where it is no number from 0.
std::optional<base::Decimal> pastedNumber(const QString& cell) {
    auto number = base::Decimal::parse(cell.trimmed().toStdString());
    return number && number->value() >= 0 ? std::optional(std::move(*number)) : std::nullopt;
}

}  // namespace

std::vector<RecordField<ValveModel>> valveFields() {
    using fields::measured;
    using quantity::Unit;
    return {
        checked(fields::words(base::term("Model"), &ValveModel::model), checkName),
        fields::words(base::term("Size"), &ValveModel::size),
        fields::choice(base::term("Scale"), &ValveModel::scale),
        coefficientField(),
        checked(measured(base::term("Least dp"), &ValveModel::minimumDp, fields::pressureUnit,
                         FieldSign::Positive),
                checkRange),
        checked(measured(base::term("Most dp"), &ValveModel::maximumDp, fields::pressureUnit,
                         FieldSign::Positive),
                checkRange),
        measured(base::term("Accuracy"), &ValveModel::accuracy, Unit::Percent, FieldSign::NotNegative),
        measured(base::term("More shut"), &ValveModel::accuracyShut, Unit::Percent, FieldSign::NotNegative),
    };
}

base::Result<std::vector<project::ValveTableRow>> pastedPoints(const QString& pasted,
                                                               const ValveModel& valve) {
    static const QRegularExpression kBetween(QStringLiteral("[\\t;]|\\s+"));
    const QStringList lines = pasted.split(QRegularExpression(QStringLiteral("\\r\\n|\\n|\\r")));
    ValveModel made = valve;
    made.rows.clear();
    for (int i = 0; i < lines.size(); ++i) {
        if (lines[i].trimmed().isEmpty()) {
            continue;
        }
        const QStringList cells = lines[i].trimmed().split(kBetween, Qt::SkipEmptyParts);
        const std::string line = std::to_string(i + 1);
        const auto setting = cells.isEmpty() ? std::nullopt : pastedNumber(cells[0]);
        if (i == 0 && !setting) {
            continue;
        }
        if (cells.size() < 2) {
            return base::Fault{&kPastedPointShort, {}, {line}};
        }
        const auto coefficient = pastedNumber(cells[1]);
        if (!setting || !coefficient) {
            return base::Fault{&kPastedPointBad, {}, {line, cells[setting ? 1 : 0].toStdString()}};
        }
        made.rows.push_back({*setting, *coefficient});
    }
    const auto curve = curve::ValveCharacteristic::make(project::valvePoints(made));
    if (!curve) {
        return curve.fault();
    }
    return made.rows;
}

}  // namespace ww::ui
