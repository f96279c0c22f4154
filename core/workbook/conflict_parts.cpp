#include "core/workbook/conflict_parts.h"

#include <algorithm>
#include <array>
#include <map>
#include <type_traits>
#include <utility>
#include <variant>

#include "core/project/edit.h"
#include "core/store/record_fields.h"
#include "core/store/review_fields.h"
#include "core/workbook/merge_settlement.h"

namespace ww::workbook {

namespace {

using base::Fault;
using base::MessageForm;
using Parts = std::vector<ConflictPart>;

constexpr std::string_view kBetween = ", ";

/// The columns whose names stand before their values where a place was read twice (merge_readings.cpp).
constexpr std::array<std::string_view, 10> kReadColumns{
    "flow", "setting", "suction", "discharge", "gauge_rise", "speed", "throttle", "volts", "amps", "power"};
constexpr std::array<const MessageForm*, 2> kFixedValues{&conflict_forms::kYes, &conflict_forms::kNo};

ConflictPart saidPart(const MessageForm& form, std::vector<std::string> arguments = {}) {
    return {{}, Fault{&form, {}, std::move(arguments)}, {}};
}
ConflictPart textPart(std::string_view text) {
    return {{}, {}, std::string(text)};
}
Parts textParts(std::string_view text) {
    return text.empty() ? Parts{} : Parts{textPart(text)};
}

/// What stands before these letters; nothing where the text does not end with them.
std::optional<std::string_view> withoutEnd(std::string_view text, std::string_view end) {
    return text.ends_with(end) ? std::optional(text.substr(0, text.size() - end.size())) : std::nullopt;
}

bool isCount(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// The number in a text of this form, whose place is at one of its ends: "round {1}", "{1} rows".
std::optional<std::string_view> numberIn(std::string_view text, const MessageForm& form) {
    const std::size_t place = form.text.find("{1}");
    const std::string_view before = form.text.substr(0, place);
    const auto number = withoutEnd(text, form.text.substr(place + 3));
    if (!number || !number->starts_with(before) || !isCount(number->substr(before.size()))) {
        return {};
    }
    return number->substr(before.size());
}

std::vector<std::string_view> splitAtCommas(std::string_view text) {
    std::vector<std::string_view> pieces;
    for (std::size_t comma = text.find(kBetween); comma != std::string_view::npos;
         comma = text.find(kBetween)) {
        pieces.push_back(text.substr(0, comma));
        text.remove_prefix(comma + kBetween.size());
    }
    pieces.push_back(text);
    return pieces;
}

/// A title, "dp" for "DP"; or "setting 4", the title and its value; or a value alone.
ConflictPart readPart(std::string_view piece) {
    if (piece == conflictTitle("dp")) {
        return {"dp", {}, {}};
    }
    if (piece == conflict_forms::kCannotBeRead.text) {
        return saidPart(conflict_forms::kCannotBeRead);
    }
    for (const std::string_view column : kReadColumns) {
        const std::string title = conflictTitle(std::string(column));
        if (piece == title) {
            return {std::string(column), {}, {}};
        }
        if (piece.starts_with(title + " ")) {
            return {std::string(column), {}, std::string(piece.substr(title.size() + 1))};
        }
    }
    return textPart(piece);
}

Parts readParts(std::string_view text) {
    Parts parts;
    for (const std::string_view piece :
         text.empty() ? std::vector<std::string_view>{} : splitAtCommas(text)) {
        parts.push_back(readPart(piece));
    }
    return parts;
}

/// The round behind a place; what is left stands in `text`.
std::optional<ConflictPart> takeRound(std::string_view& text) {
    const std::size_t comma = text.rfind(kBetween);
    if (comma == std::string_view::npos) {
        return {};
    }
    const auto number = numberIn(text.substr(comma + kBetween.size()), conflict_forms::kRound);
    if (!number) {
        return {};
    }
    text = text.substr(0, comma);
    return saidPart(conflict_forms::kRound, {std::string(*number)});
}

/// The name of a record: a person's, or "round 2".
ConflictPart namePart(std::string_view name) {
    const auto round = numberIn(name, conflict_forms::kRound);
    return round ? saidPart(conflict_forms::kRound, {std::string(*round)}) : textPart(name);
}

/// "B-04, design flow": a name and the title of the column in conflict.
Parts columnPlace(const project::MergeConflict& conflict, std::string_view place) {
    const bool isRemoval = conflict.field == kRemovedField;
    const std::string title =
        isRemoval ? std::string(conflict_forms::kRemoved.text) : conflictTitle(conflict.field);
    if (const auto name = withoutEnd(place, std::string(kBetween) + title)) {
        return {namePart(*name),
                isRemoval ? saidPart(conflict_forms::kRemoved) : ConflictPart{conflict.field, {}, {}}};
    }
    if (const auto name =
            withoutEnd(place, std::string(kBetween) + std::string(conflict_forms::kFedFrom.text))) {
        return {textPart(*name), saidPart(conflict_forms::kFedFrom)};
    }
    return {textPart(place)};
}

/// "B-06, DP, setting": a tag and the columns that differ.
Parts twoReadingsPlace(std::string_view place) {
    const std::size_t comma = place.find(kBetween);
    if (comma == std::string_view::npos) {
        return {textPart(place)};
    }
    Parts parts{textPart(place.substr(0, comma))};
    for (ConflictPart& part : readParts(place.substr(comma + kBetween.size()))) {
        parts.push_back(part.text == "reading" ? ConflictPart{"reading", {}, {}} : std::move(part));
    }
    return parts;
}

/// A sentence of a place; the text itself where it is none.
ConflictPart sentencePart(std::string_view piece) {
    for (const MessageForm* form : {&conflict_forms::kRound, &conflict_forms::kRevision}) {
        if (const auto number = numberIn(piece, *form)) {
            return saidPart(*form, {std::string(*number)});
        }
    }
    for (const MessageForm* form :
         {&conflict_forms::kReadings, &conflict_forms::kPumpReadings, &conflict_forms::kSignedReport,
          &conflict_forms::kRemoved, &conflict_forms::kFedFrom}) {
        if (piece == form->text) {
            return saidPart(*form);
        }
    }
    return textPart(piece);
}

Parts sentencePlace(std::string_view place) {
    Parts parts;
    for (const std::string_view piece : splitAtCommas(place)) {
        parts.push_back(sentencePart(piece));
    }
    return parts;
}

Parts placeParts(const project::MergeConflict& conflict) {
    if (conflict.field == kSameNameField) {
        return {namePart(conflict.place)};
    }
    if (conflict.field == kLateReadingsField || conflict.field == kSameRevisionField) {
        return sentencePlace(conflict.place);
    }
    std::string_view place = conflict.place;
    const auto round = takeRound(place);
    Parts parts =
        conflict.field == kTwoReadingsField ? twoReadingsPlace(place) : columnPlace(conflict, place);
    if (round) {
        parts.push_back(*round);
    }
    return parts;
}

Parts removalValue(const std::string& value) {
    for (const MessageForm* form : {&conflict_forms::kRemoved, &conflict_forms::kKept}) {
        if (value == form->text) {
            return {saidPart(*form)};
        }
    }
    return textParts(value);
}

Parts lateReadingsValue(const std::string& value) {
    if (value == conflict_forms::kOneReading.text) {
        return {saidPart(conflict_forms::kOneReading)};
    }
    if (const auto count = numberIn(value, conflict_forms::kMoreReadings)) {
        return {saidPart(conflict_forms::kMoreReadings, {std::string(*count)})};
    }
    const std::string_view form = conflict_forms::kWithoutThem.text;
    if (const auto state = withoutEnd(value, form.substr(form.find('}') + 1))) {
        return {saidPart(conflict_forms::kWithoutThem, {std::string(*state)})};
    }
    return textParts(value);
}

/// What the values of a column are.
enum class ColumnKind { Text, Word, YesOrNo, Bytes, Rows };

/// Learns the kind of one column from the record's fields.
struct ColumnKindFinder {
    std::string_view wanted;
    std::optional<ColumnKind> found;

    template <class Value>
    void field(const char* column, const Value&) {
        if (column != wanted) {
            return;
        }
        constexpr bool isWord = std::is_enum_v<Value> && !std::is_same_v<Value, quantity::Unit>;
        found = isWord                                     ? ColumnKind::Word
                : std::is_same_v<Value, bool>              ? ColumnKind::YesOrNo
                : std::is_same_v<Value, base::SharedBytes> ? ColumnKind::Bytes
                                                           : ColumnKind::Text;
    }
};

template <std::size_t... Kinds>
ColumnKind kindOfColumn(project::RecordKind kind, std::string_view column, std::index_sequence<Kinds...>) {
    ColumnKindFinder finder{column, {}};
    const auto look = [&](const auto& record) { store::fields(finder, record); };
    (void)((static_cast<std::size_t>(kind) == Kinds &&
            (look(std::variant_alternative_t<Kinds, project::AnyRecord>{}), true)) ||
           ...);
    // No column of the record: a table of rows that belong to it.
    return finder.found.value_or(ColumnKind::Rows);
}

ColumnKind kindOfColumn(const project::MergeConflict& conflict) {
    return kindOfColumn(conflict.recordKind, conflict.field,
                        std::make_index_sequence<std::variant_size_v<project::AnyRecord>>{});
}

/// Takes the titles of a record's columns.
struct ColumnTitles {
    std::map<std::string, std::string> columns;

    template <class Value>
    void field(const char* column, const Value&) {
        columns.emplace(conflictTitle(column), column);
    }
};

template <std::size_t... Kinds>
ColumnTitles titlesOfAll(std::index_sequence<Kinds...>) {
    ColumnTitles titles;
    const auto take = [&](const auto& record) { store::fields(titles, record); };
    (take(std::variant_alternative_t<Kinds, project::AnyRecord>{}), ...);
    return titles;
}

/// The column of a title: "design_flow" for "design flow"; empty where it is of none.
std::string columnTitled(std::string_view title) {
    static const ColumnTitles kTitles =
        titlesOfAll(std::make_index_sequence<std::variant_size_v<project::AnyRecord>>{});
    const auto found = kTitles.columns.find(std::string(title));
    return found == kTitles.columns.end() ? std::string() : found->second;
}

Parts columnValue(const project::MergeConflict& conflict, const std::string& value) {
    const ColumnKind kind = kindOfColumn(conflict);
    const bool isPumpItself = conflict.field == "parent" && value == conflict_forms::kThePump.text;
    if (isPumpItself) {
        return {saidPart(conflict_forms::kThePump)};
    }
    if (kind == ColumnKind::Word && !value.empty()) {
        return {saidPart(conflict_forms::kWord, {value})};
    }
    for (const MessageForm* form : kFixedValues) {
        if (kind == ColumnKind::YesOrNo && value == form->text) {
            return {saidPart(*form)};
        }
    }
    const MessageForm& counted = kind == ColumnKind::Bytes ? conflict_forms::kBytes : conflict_forms::kRows;
    const auto count =
        kind == ColumnKind::Bytes || kind == ColumnKind::Rows ? numberIn(value, counted) : std::nullopt;
    return count ? Parts{saidPart(counted, {std::string(*count)})} : textParts(value);
}

Parts valueParts(const project::MergeConflict& conflict, const std::string& value) {
    if (conflict.field == kRemovedField) {
        return removalValue(value);
    }
    if (conflict.field == kTwoReadingsField) {
        return readParts(value);
    }
    if (conflict.field == kLateReadingsField) {
        return lateReadingsValue(value);
    }
    const bool isName = conflict.field == kSameNameField || conflict.field == kSameRevisionField;
    return isName ? textParts(value) : columnValue(conflict, value);
}

}  // namespace

ConflictParts partsOf(const project::MergeConflict& conflict) {
    return {placeParts(conflict), valueParts(conflict, conflict.ours), valueParts(conflict, conflict.theirs)};
}

std::vector<ConflictPart> partsOfPlace(std::string_view place) {
    Parts parts;
    for (const std::string_view piece : splitAtCommas(place)) {
        ConflictPart part = sentencePart(piece);
        std::string column = columnTitled(piece);
        if (!part.said) {
            part = column.empty() ? readPart(piece) : ConflictPart{std::move(column), {}, {}};
        }
        parts.push_back(std::move(part));
    }
    return parts;
}

std::vector<ConflictPart> partsOfReading(std::string_view value) {
    return readParts(value);
}

std::string conflictTitle(std::string column) {
    if (column == "dp") {
        return "DP";
    }
    std::replace(column.begin(), column.end(), '_', ' ');
    return column;
}

std::string conflictText(const base::MessageForm& form, const std::vector<std::string>& arguments) {
    return base::filledIn(form.text, arguments);
}

}  // namespace ww::workbook
