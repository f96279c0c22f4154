#include "ui/models/instrument_model.h"

#include "core/project/edit_label.h"
#include "ui/text/format.h"
#include "ui/text/parse.h"
#include "ui/text/typed_word.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using quantity::Measured;
using quantity::PressureDifference;
using quantity::Ratio;
using quantity::Unit;
using Refusal = std::optional<base::Fault>;

constexpr base::MessageForm kNameEmpty{"name_empty", "a name is missing; type one, or press Esc"};
constexpr base::MessageForm kDueBeforeCalibrated{
    "due_before_calibrated", "{1} is not after the calibration of {2}; correct one of the dates"};

QString date(const std::optional<base::Instant>& instant) {
    return instant ? QString::fromStdString(instant->date()) : QString();
}

/// Takes what a reader made of the text into a place of the record; an empty text empties the place.
template <class Value, class Read>
Refusal take(std::optional<Value>& place, const QString& text, Read read) {
    if (text.isEmpty()) {
        place.reset();
        return {};
    }
    auto value = read(text);
    if (!value) {
        return value.fault();
    }
    place = std::move(value).value();
    return {};
}

Refusal positive(const std::optional<Measured<PressureDifference>>& value) {
    if (value && !(value->value.si() > 0.0)) {
        return base::Fault{&text::kMustBePositive, {}, {value->text()}};
    }
    return {};
}

Refusal setColumn(const project::Project& project, project::Instrument& record, int column,
                  const QString& typed) {
    const auto pressure = [&](const QString& text) {
        return quantity::parseDifference(text.toStdString(), text::dpUnit(project, record.id),
                                         project.fluid().density());
    };
    Refusal refusal;
    switch (column) {
        case InstrumentModel::Tag:
            if (typed.isEmpty()) {
                return base::Fault{&kNameEmpty, {}, {}};
            }
            record.tag = typed.toStdString();
            return {};
        case InstrumentModel::Kind:
            record.kind = typed.toStdString();
            return {};
        case InstrumentModel::Serial:
            record.serial = typed.toStdString();
            return {};
        case InstrumentModel::Range:
            refusal = take(record.range, typed, pressure);
            return refusal ? refusal : positive(record.range);
        case InstrumentModel::Accuracy:
            refusal = take(record.accuracy, typed, [](const QString& text) {
                return text::parseMeasured<Ratio>(text, Unit::Percent);
            });
            if (!refusal && record.accuracy && !(record.accuracy->value.si() > 0.0)) {
                refusal = base::Fault{&text::kMustBePositive, {}, {record.accuracy->text()}};
            }
            return refusal;
        case InstrumentModel::Floor:
            refusal = take(record.accuracyFloor, typed, pressure);
            return refusal ? refusal : positive(record.accuracyFloor);
        case InstrumentModel::Certificate:
            record.certificate = typed.toStdString();
            return {};
        case InstrumentModel::Reason:
            record.overdueReason = typed.toStdString();
            return {};
        case InstrumentModel::Calibrated:
            refusal = take(record.calibrated, typed, text::parseDate);
            break;
        case InstrumentModel::Due:
            refusal = take(record.due, typed, text::parseDate);
            break;
        default:
            return {};
    }
    if (!refusal && record.calibrated && record.due && record.due->seconds <= record.calibrated->seconds) {
        refusal = base::Fault{&kDueBeforeCalibrated, {}, {record.due->date(), record.calibrated->date()}};
    }
    return refusal;
}

}  // namespace

InstrumentModel::InstrumentModel(WorkbookBridge& bridge, QObject* parent)
    : CountedRows(
          bridge, project::RecordKind::Instrument,
          [](const project::Project& project) { return project.instruments().size(); }, parent) {}

QString InstrumentModel::cellText(int row, int column) const {
    const project::Instrument& record = m_bridge.project().instruments()[static_cast<std::size_t>(row)];
    switch (column) {
        case Tag:
            return QString::fromStdString(record.tag);
        case Kind:
            return QString::fromStdString(record.kind);
        case Serial:
            return QString::fromStdString(record.serial);
        case Range:
            return text::entered(record.range);
        case Accuracy:
            return text::entered(record.accuracy);
        case Floor:
            return text::entered(record.accuracyFloor);
        case Calibrated:
            return date(record.calibrated);
        case Due:
            return date(record.due);
        case Certificate:
            return QString::fromStdString(record.certificate);
        default:
            return QString::fromStdString(record.overdueReason);
    }
}

QStringList InstrumentModel::titles() const {
    return {tr("Tag"),         tr("Kind"),       tr("Serial"), tr("Range"),       tr("Accuracy"),
            tr("Fixed error"), tr("Calibrated"), tr("Due"),    tr("Certificate"), tr("If overdue, why")};
}

base::Outcome InstrumentModel::store(const QModelIndex& cell, const QString& text) {
    const project::Project& project = m_bridge.project();
    const project::Instrument& before = project.instruments()[static_cast<std::size_t>(cell.row())];
    project::Instrument record = before;
    if (auto refusal = setColumn(project, record, cell.column(), text.trimmed())) {
        refusal->subject = before.tag;
        return *refusal;
    }
    if (record == before) {
        return base::Done{};
    }
    return m_bridge.apply({project::label(project::labels::kInstrument, {record.tag}), {record}, {}, true});
}

base::Outcome InstrumentModel::add() {
    project::Instrument record;
    record.id = m_bridge.newId();
    record.tag = "M-" + std::to_string(rowCount() + 1);
    record.kind = text::term(project::kUsualInstrumentKind).toStdString();
    return m_bridge.apply(
        {project::label(project::labels::kNewInstrument, {record.tag}), {record}, {}, true});
}

base::Outcome InstrumentModel::remove(int row) {
    const project::Instrument record = m_bridge.project().instruments()[static_cast<std::size_t>(row)];
    return m_bridge.apply({project::label(project::labels::kRemoveInstrument, {record.tag}),
                           {},
                           {{project::RecordKind::Instrument, record.id}},
                           true});
}

PeopleModel::PeopleModel(WorkbookBridge& bridge, QObject* parent)
    : CountedRows(
          bridge, project::RecordKind::Person,
          [](const project::Project& project) { return project.people().size(); }, parent) {}

QString PeopleModel::cellText(int row, int column) const {
    const project::Person& record = m_bridge.project().people()[static_cast<std::size_t>(row)];
    switch (column) {
        case Name:
            return QString::fromStdString(record.name);
        case Role:
            return text::nameOf(record.role);
        case Certificate:
            return QString::fromStdString(record.certificate);
        default:
            return QString::fromStdString(record.firm);
    }
}

QStringList PeopleModel::titles() const {
    return {tr("Name"), tr("Role"), tr("Certificate"), tr("Firm")};
}

base::Outcome PeopleModel::store(const QModelIndex& cell, const QString& typed) {
    const project::Person& before = m_bridge.project().people()[static_cast<std::size_t>(cell.row())];
    project::Person record = before;
    const std::string text = typed.trimmed().toStdString();
    switch (cell.column()) {
        case Name:
            if (text.empty()) {
                return base::Fault{&kNameEmpty, record.name, {}};
            }
            record.name = text;
            break;
        case Role:
            if (!text::takeWord(record.role, typed)) {
                return text::wordFault<project::PersonRole>(typed);
            }
            break;
        case Certificate:
            record.certificate = text;
            break;
        default:
            record.firm = text;
            break;
    }
    if (record == before) {
        return base::Done{};
    }
    return m_bridge.apply({project::label(project::labels::kPerson, {record.name}), {record}, {}, true});
}

base::Outcome PeopleModel::add() {
    project::Person record;
    record.id = m_bridge.newId();
    record.name = tr("Person %1").arg(rowCount() + 1).toStdString();
    return m_bridge.apply({project::label(project::labels::kNewPerson), {record}, {}, true});
}

base::Outcome PeopleModel::remove(int row) {
    const project::Person record = m_bridge.project().people()[static_cast<std::size_t>(row)];
    return m_bridge.apply({project::label(project::labels::kRemovePerson, {record.name}),
                           {},
                           {{project::RecordKind::Person, record.id}},
                           true});
}

}  // namespace ww::ui
