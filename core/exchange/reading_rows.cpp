#include "core/exchange/reading_rows.h"

#include <algorithm>

#include "core/exchange/read_cells.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kRoundMissing{"round_missing",
                                                 "the row names no round; give its number, 1 is the survey"};
inline constexpr base::MessageForm kRoundRepeated{"round_repeated",
                                                  "round {1} stands twice; keep one row for it"};
inline constexpr base::MessageForm kRoundKindDiffers{
    "round_kind_differs", "round {1} is \"{2}\" in an earlier row; write the same kind in all its rows"};
inline constexpr base::MessageForm kRoundKindMissing{"round_kind_missing",
                                                     "the kind of round {1} is not given; write one of {2}"};
inline constexpr base::MessageForm kRecordRoundLocked{
    "record_round_locked", "round {1} is {2w} and takes no further readings; record them in a new round"};
inline constexpr base::MessageForm kReadingInstrumentUnknown{
    "reading_instrument_unknown", "the instrument \"{1}\" is not in the job; did you mean \"{2}\"?"};
inline constexpr base::MessageForm kReadingBeforeRound{
    "reading_before_round", "{1} is before a reading of round {2} ({3}); correct the date or the round"};
inline constexpr base::MessageForm kReadingBeforeReading{
    "reading_before_reading",
    "{1} is before the row above it in its round ({2}); correct the time or put the rows in order"};
inline constexpr base::MessageForm kPersonRepeated{"person_repeated",
                                                   "the name \"{1}\" stands twice; keep one row for it"};

std::optional<int> roundNumber(TableReader& table) {
    const auto number = table.wholeNumber("round", 9999);
    if (!number && table.text("round").empty()) {
        table.fault("round", kRoundMissing);
    }
    return number;
}

}  // namespace

const project::Round* RoundCells::roundOf(TableReader& table, std::optional<project::RoundKind> kind) {
    const auto number = roundNumber(table);
    if (!number) {
        return nullptr;
    }
    const auto [found, isNew] = m_context.rounds.try_emplace(*number);
    project::Round& round = found->second;
    if (isNew) {
        round.id = m_context.ids.next();
        round.number = *number;
        if (kind) {
            round.kind = *kind;
        } else if (*number != 1) {
            table.fault("kind", kRoundKindMissing,
                        {std::to_string(*number), project::namesOf<project::RoundKind>()});
        }
    } else if (kind && round.kind != *kind) {
        table.fault("kind", kRoundKindDiffers,
                    {std::to_string(*number), std::string(project::name(round.kind))});
    }
    if (m_context.isAdding && round.state != project::RoundState::Open) {
        if (m_told.insert(*number).second) {
            table.fault("round", kRecordRoundLocked,
                        {std::to_string(*number), std::string(project::name(round.state))});
        }
        return nullptr;
    }
    return &round;
}

std::optional<base::Id> instrumentOf(ImportContext& context, TableReader& table) {
    const std::string tag = table.text("instrument");
    if (tag.empty()) {
        return std::nullopt;
    }
    const auto found = context.instrumentByTag.find(folded(tag));
    if (found == context.instrumentByTag.end()) {
        table.unknown(table.row(), "instrument", kReadingInstrumentUnknown, {tag}, tag, "instruments.csv",
                      [&] { return tagsOf(context.instruments); });
        return std::nullopt;
    }
    return context.instruments[found->second].id;
}

std::optional<base::Id> personOf(ImportContext& context, TableReader& table) {
    const std::string name = table.text("person");
    return name.empty() ? std::nullopt : std::optional(context.personNamed(name));
}

void RoundTimes::note(TableReader& table, int round, const std::optional<base::Instant>& time, int row) {
    if (!time) {
        return;
    }
    auto [found, isNew] = m_spans.try_emplace(round, Span{*time, *time, row});
    Span& span = found->second;
    if (!m_isOrderKnown && *time < span.last) {
        table.faultAt(row, "time", {&kReadingBeforeReading, "", {time->text(), span.last.text()}});
    }
    if (!isNew && *time < span.first) {
        span.first = *time;
        span.firstRow = row;
    }
    span.last = std::max(span.last, *time);
}

void RoundTimes::check(TableReader& table) const {
    const std::pair<const int, Span>* before = nullptr;
    for (const auto& span : m_spans) {
        if (before != nullptr && span.second.first < before->second.last) {
            table.faultAt(
                span.second.firstRow, "time",
                {&kReadingBeforeRound,
                 "",
                 {span.second.first.text(), std::to_string(before->first), before->second.last.text()}});
        }
        before = &span;
    }
}

void readRounds(ImportContext& context) {
    TableReader table(context.source, "rounds.csv",
                      columnsOf<project::Round>({{"round", {}, true},
                                                 {"kind", {}, true},
                                                 {"state", {}, false},
                                                 {"opened", {}, false},
                                                 {"closed", {}, false}}),
                      false, context.faults);
    while (table.next()) {
        const auto number = roundNumber(table);
        const auto kind = nameCell<project::RoundKind>(table, "kind");
        if (!number) {
            continue;
        }
        const auto [found, isNew] = context.rounds.try_emplace(*number);
        if (!isNew) {
            table.fault("round", kRoundRepeated, {std::to_string(*number)});
            continue;
        }
        project::Round& round = found->second;
        round.id = context.ids.next();
        round.number = *number;
        if (kind) {
            round.kind = *kind;
        } else if (table.text("kind").empty()) {
            table.fault("kind", kRoundKindMissing,
                        {std::to_string(*number), project::namesOf<project::RoundKind>()});
        }
        round.state = nameCell<project::RoundState>(table, "state").value_or(project::RoundState::Closed);
        round.opened = table.instant("opened");
        round.closed = table.instant("closed");
        ReadCells io(table, context);
        columns(io, round);
    }
    context.hasRoundTable = !context.rounds.empty();
}

void readPeople(ImportContext& context) {
    TableReader table(context.source, "people.csv", columnsOf<project::Person>({{"name", {}, true}}), false,
                      context.faults);
    while (table.next()) {
        const std::string name = table.requiredText("name");
        if (context.personByName.contains(name)) {
            table.fault("name", kPersonRepeated, {name});
        } else if (!name.empty()) {
            context.personNamed(name);
            ReadCells io(table, context);
            columns(io, context.people.back());
        }
    }
}

}  // namespace ww::exchange
