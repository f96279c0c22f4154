#include "core/workbook/conflict_words.h"

#include "core/workbook/conflict_parts.h"
#include "core/workbook/merge_settlement.h"

namespace ww::workbook {

namespace {

using project::Id;
using project::Project;
using project::RecordKind;
using store::Cell;
using store::Row;
using store::RowField;
using store::TableForm;

/// The name of whatever record an id stands for; its digits where the job has none.
std::string nameOfId(const Project& project, const Id& id) {
    std::string name;
    const auto look = [&](const auto& table) {
        if (const auto* record = table.find(id)) {
            name = project::nameOf(*record);
        }
    };
    look(project.branches());
    look(project.valves());
    look(project.pumps());
    look(project.instruments());
    look(project.people());
    look(project.rounds());
    look(project.readings());
    look(project.pumpReadings());
    look(project.deficiencies());
    look(project.comments());
    return name.empty() ? id.text() : name;
}

bool isYesOrNo(const std::string& column) {
    return column.starts_with("is_") || column.starts_with("has_") || column.starts_with("can");
}

std::string wordsOf(const Project& project, const TableForm& form, const RowField& field, const Row& row) {
    const Cell& first = row[field.first];
    const std::string column = form.columns[field.first];
    if (const auto* number = std::get_if<std::int64_t>(&first)) {
        const bool isMoment = field.count == 2;
        if (isMoment) {
            base::Instant moment{*number, {}};
            if (const auto* zone = std::get_if<std::int64_t>(&row[field.first + 1])) {
                moment.zoneMinutes = static_cast<std::int16_t>(*zone);
            }
            return moment.text();
        }
        return isYesOrNo(column) ? conflictText(*number != 0 ? conflict_forms::kYes : conflict_forms::kNo)
                                 : std::to_string(*number);
    }
    if (const auto id = store::idIn(first)) {
        return nameOfId(project, *id);
    }
    if (const auto* bytes = std::get_if<store::Bytes>(&first)) {
        return conflictText(conflict_forms::kBytes, {std::to_string(bytes->size())});
    }
    std::string words = store::text(first).value_or("");
    if (field.count == 2) {
        const auto unit = store::text(row[field.first + 1]);
        words += unit ? " " + *unit : "";
    }
    return words;
}

std::string roundWords(const Project& project, const Id& id) {
    const project::Round* round = project.rounds().find(id);
    return round == nullptr ? ""
                            : ", " + conflictText(conflict_forms::kRound, {std::to_string(round->number)});
}

std::string placeWords(const Project& project, const store::FieldConflict& found, const std::string& label) {
    if (const auto* reading = project.readings().find(found.record)) {
        const auto* branch = project.branches().find(reading->branch);
        return (branch == nullptr ? "?" : branch->tag) + ", " + label + roundWords(project, reading->round);
    }
    if (const auto* reading = project.pumpReadings().find(found.record)) {
        const auto* pump = project.pumps().find(reading->pump);
        return (pump == nullptr ? "?" : pump->tag) + ", " + label + roundWords(project, reading->round);
    }
    const std::string name =
        found.kind == RecordKind::Job ? project.job().name : nameOfId(project, found.record);
    return name + ", " + label;
}

/// Tag of the instrument of a reading that stands in this row.
std::string instrumentOf(const Project& project, const store::FieldConflict& found,
                         const std::vector<store::PlacedRow>& rows) {
    const RowField* field = found.form->field("instrument");
    if (field == nullptr || rows.empty()) {
        return "";
    }
    const auto id = store::idIn(rows.front().row[field->first]);
    const auto* instrument = id ? project.instruments().find(*id) : nullptr;
    return instrument == nullptr ? "" : instrument->tag;
}

std::string contentOf(const std::vector<store::PlacedRow>& rows, const RowField* field) {
    std::string content;
    for (const store::PlacedRow& row : rows) {
        const Row cells = field == nullptr ? row.row : store::cellsOf(row.row, *field);
        for (const Cell& cell : cells) {
            const auto words = store::text(cell);
            content += (words ? "=" + *words : std::string("-")) + '\x1F';
        }
    }
    return content;
}

}  // namespace

project::MergeConflict conflictOf(const store::FieldConflict& found, const Project& merged,
                                  const store::LastChanges& ourChanges,
                                  const store::LastChanges& theirChanges) {
    const RowField* field = found.form->field(found.field);
    const bool isRemoval = found.field == kRemovedField;
    project::MergeConflict conflict;
    conflict.recordKind = found.kind;
    conflict.record = found.record;
    conflict.field = found.field;
    conflict.place = placeWords(
        merged, found, isRemoval ? conflictText(conflict_forms::kRemoved) : conflictTitle(found.field));
    const auto words = [&](const std::vector<store::PlacedRow>& rows, bool isGone) {
        if (isRemoval) {
            return conflictText(isGone ? conflict_forms::kRemoved : conflict_forms::kKept);
        }
        return field == nullptr ? conflictText(conflict_forms::kRows, {std::to_string(rows.size())})
                                : wordsOf(merged, *found.form, *field, rows.front().row);
    };
    conflict.ours = words(found.ours, found.isGoneHere);
    conflict.theirs = words(found.theirs, found.isGoneThere);
    conflict.id = isRemoval ? conflictId(found.kind, found.record, found.field, "", "")
                            : conflictId(found.kind, found.record, found.field, contentOf(found.ours, field),
                                         contentOf(found.theirs, field));
    if (const store::Author* author = ourChanges.find(found.record, found.field)) {
        conflict.ourPerson = author->person;
        conflict.ourTime = author->time;
    }
    if (const store::Author* author = theirChanges.find(found.record, found.field)) {
        conflict.theirPerson = author->person;
        conflict.theirTime = author->time;
    }
    conflict.ourInstrument = instrumentOf(merged, found, found.ours);
    conflict.theirInstrument = instrumentOf(merged, found, found.theirs);
    return conflict;
}

}  // namespace ww::workbook
