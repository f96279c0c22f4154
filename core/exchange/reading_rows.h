// What rows of readings.csv and pump_readings.csv have in common: round, instrument, person, time,
// corrections.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <vector>

#include "core/exchange/import_context.h"
#include "core/exchange/name_cell.h"

namespace ww::exchange {

inline constexpr base::MessageForm kCorrectsUnknown{
    "corrects_unknown",
    "the row corrects row {1} of its round, which has {2} in this table; give the number of another one"};

/// The round that a row names; one is made on first use. Null, with a fault, where the row names none, and
/// where a workbook holds it closed.
class RoundCells {
  public:
    explicit RoundCells(ImportContext& context) : m_context(context) {}
    /// `kind`: as the row says, where it does.
    const project::Round* roundOf(TableReader& table, std::optional<project::RoundKind> kind);

  private:
    ImportContext& m_context;
    std::set<int> m_told;  ///< closed rounds that a fault names already
};

/// The instrument whose tag stands in the row; nothing where none does, and, with a fault, where there is no
/// such instrument.
std::optional<base::Id> instrumentOf(ImportContext& context, TableReader& table);
/// The person named in the row; one who is not known yet is made.
std::optional<base::Id> personOf(ImportContext& context, TableReader& table);

/// Times of a later round may not lie before those of an earlier one; nor, unless `isOrderKnown`, times of a
/// row before those of the row above it in its round. Corrections are not noted: they may come at any time.
class RoundTimes {
  public:
    explicit RoundTimes(bool isOrderKnown) : m_isOrderKnown(isOrderKnown) {}
    /// Notes the time of a row of this round; a fault where it lies before that of the row above it.
    void note(TableReader& table, int round, const std::optional<base::Instant>& time, int row);
    /// After all rows: a fault at every round whose times begin before an earlier one ends.
    void check(TableReader& table) const;

  private:
    struct Span {
        base::Instant first;
        base::Instant last;
        int firstRow = 0;
    };
    bool m_isOrderKnown;
    std::map<int, Span> m_spans;
};

/// A reading with what its row says besides.
template <class Reading>
struct ReadingRow {
    Reading reading;
    int row = 0;
    int round = 0;
    std::optional<int> corrects;  ///< number of a row within the round, from 1
};

/// What was read: the branch, the pump.
inline const base::Id& placeOf(const project::Reading& reading) {
    return reading.branch;
}
inline const base::Id& placeOf(const project::PumpReading& reading) {
    return reading.pump;
}

/// Sets which reading each one corrects: as the column `corrects` says, or without that column the reading
/// that follows a superseded one at the same place.
template <class Reading>
void joinCorrections(std::vector<ReadingRow<Reading>>& rows, TableReader& table) {
    if (!table.hasColumn("corrects")) {
        std::map<std::pair<base::Id, base::Id>, base::Id> waiting;
        for (ReadingRow<Reading>& row : rows) {
            const auto place = std::pair(row.reading.round, placeOf(row.reading));
            if (const auto found = waiting.find(place); found != waiting.end()) {
                row.reading.supersedes = found->second;
                waiting.erase(found);
            }
            if (row.reading.status == project::ReadingStatus::Superseded) {
                waiting[place] = row.reading.id;
            }
        }
        return;
    }
    std::map<int, std::vector<base::Id>> byRound;
    for (const ReadingRow<Reading>& row : rows) {
        byRound[row.round].push_back(row.reading.id);
    }
    for (ReadingRow<Reading>& row : rows) {
        if (!row.corrects) {
            continue;
        }
        const std::vector<base::Id>& ids = byRound[row.round];
        const auto number = static_cast<std::size_t>(*row.corrects);
        if (number > ids.size() || ids[number - 1] == row.reading.id) {
            table.faultAt(row.row, "corrects",
                          {&kCorrectsUnknown, "", {std::to_string(number), std::to_string(ids.size())}});
        } else {
            row.reading.supersedes = ids[number - 1];
        }
    }
}

/// The last steps for a table of readings: corrections joined, times held against each other, readings kept.
template <class Reading>
void finishRows(std::vector<ReadingRow<Reading>>& rows, TableReader& table, const ImportContext& context,
                std::vector<Reading>& out) {
    std::map<base::Id, int> sequence;
    for (const Reading& reading : out) {
        sequence[reading.round] = std::max(sequence[reading.round], reading.sequence);
    }
    joinCorrections(rows, table);
    RoundTimes times(context.hasRoundTable);
    for (ReadingRow<Reading>& row : rows) {
        if (!row.reading.supersedes) {
            times.note(table, row.round, row.reading.time, row.row);
        }
        row.reading.sequence = ++sequence[row.reading.round];
        out.push_back(std::move(row.reading));
    }
    times.check(table);
}

}  // namespace ww::exchange
