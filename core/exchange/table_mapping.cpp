#include "core/exchange/table_mapping.h"

#include <algorithm>
#include <array>
#include <utility>

namespace ww::exchange {

namespace {

/// Rows that may stand above the headings.
constexpr std::size_t kMostTitleRows = 30;

/// Other words for our columns (common practice, no source), in letters and digits alone.
struct OtherWords {
    std::string_view column;
    std::vector<std::string_view> words;
};
const std::vector<OtherWords>& otherWords() {
    static const std::vector<OtherWords> kWords{
        {"tag", {"valve", "valvetag", "id", "no", "number", "branch", "terminal", "pump", "unit", "name"}},
        {"pump", {"tag", "pumptag"}},
        {"parent", {"fedfrom", "fedby", "from", "riser", "upstream"}},
        {"serves", {"room", "area", "location", "description", "zone", "served", "service"}},
        {"kind", {"type"}},
        {"design_flow", {"design", "designflowrate", "flow", "flowdesign", "specified", "required"}},
        {"valve_model", {"valve", "model", "valvetype", "bv"}},
        {"valve_size", {"size", "dn", "diameter", "nps"}},
        {"model", {"valve", "valvemodel", "type"}},
        {"size", {"dn", "diameter", "valvesize", "nps"}},
        {"scale", {"handle", "unitofsetting"}},
        {"setting", {"position", "turns", "presetting", "preset", "handwheel", "opening"}},
        {"minimum_dp", {"mindp", "dpmin", "leastdp"}},
        {"maximum_dp", {"maxdp", "dpmax"}},
        {"dp",
         {"deltap", "differentialpressure", "pressuredrop", "pressuredifference", "dpreading", "reading"}},
        {"flow", {"flowrate", "measuredflow", "q", "actualflow"}},
        {"head", {"h", "pumphead", "totalhead"}},
        {"efficiency", {"eta", "eff"}},
        {"npshr", {"npsh", "npshrequired"}},
        {"time", {"date", "datetime", "when"}},
        {"person", {"by", "readby", "technician", "who"}},
        {"instrument", {"meter", "gauge", "instrumenttag"}},
        {"note", {"notes", "remark", "remarks", "comment", "comments"}},
        {"serial", {"serialnumber", "serialno", "sn"}},
        {"due", {"calibrationdue", "nextcalibration", "validuntil"}},
        {"calibrated", {"calibration", "calibrationdate", "lastcalibration"}},
        {"impeller", {"impellerdiameter", "trim"}},
        {"motor_power", {"power", "ratedpower", "kw", "hp"}},
        {"speed", {"rpm", "ratedspeed"}},
    };
    return kWords;
}

/// Letters and digits in small letters, without what stands in brackets.
std::string bareName(std::string_view heading) {
    std::string bare;
    for (const char c : heading.substr(0, heading.find_first_of("[("))) {
        const char small = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        const bool isKept = (small >= 'a' && small <= 'z') || (small >= '0' && small <= '9');
        bare += isKept ? std::string(1, small) : "";
    }
    return bare;
}

bool isOtherWord(std::string_view column, const std::string& bare) {
    const auto found = std::find_if(otherWords().begin(), otherWords().end(),
                                    [&](const OtherWords& entry) { return entry.column == column; });
    return found != otherWords().end() &&
           std::find(found->words.begin(), found->words.end(), bare) != found->words.end();
}

const std::vector<std::string>& headingsAt(const SourceTable& table, std::size_t headRow) {
    static const std::vector<std::string> kNone;
    return headRow < table.text.rows.size() ? table.text.rows[headRow].cells : kNone;
}

/// How well headings fit: a name of ours counts more than another word for it.
int fit(const std::vector<ColumnSpec>& columns, const std::vector<std::string>& headings,
        const TableMapping& mapping) {
    int points = 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (mapping.columns[i].source) {
            const bool isOurs = bareName(headings[*mapping.columns[i].source]) == bareName(columns[i].name);
            points += (isOurs ? 3 : 1) + (columns[i].isRequired ? 2 : 0);
        } else {
            points -= columns[i].isRequired ? 2 : 0;
        }
    }
    return points;
}

constexpr std::array<const char*, 7> kAddedTables{"readings.csv",     "branches.csv",   "valves.csv",
                                                  "pumps.csv",        "pump_curve.csv", "instruments.csv",
                                                  "pump_readings.csv"};

}  // namespace

std::optional<Unit> unitInHeading(std::string_view heading, const ColumnSpec& column) {
    const std::size_t open = heading.find_first_of("[(");
    const std::size_t close = heading.find_last_of("])");
    if (!column.dimension || open == std::string_view::npos || close == std::string_view::npos ||
        close < open) {
        return std::nullopt;
    }
    std::string_view inside = heading.substr(open + 1, close - open - 1);
    while (!inside.empty() && inside.front() == ' ') {
        inside.remove_prefix(1);
    }
    while (!inside.empty() && inside.back() == ' ') {
        inside.remove_suffix(1);
    }
    return unitFor(inside, *column.dimension, column.name);
}

TableMapping guessMapping(const std::string& file, const SourceTable& table, std::size_t headRow) {
    TableMapping mapping{file, headRow, {}};
    const std::vector<ColumnSpec> columns = columnsOfTable(file);
    const std::vector<std::string>& headings = headingsAt(table, headRow);
    mapping.columns.resize(columns.size());
    std::set<std::size_t> taken;
    // What a table cannot do without first, by its name or another word for it; then names of ours, so that
    // another word for one column does not take the very name of a second.
    for (const auto& [isRequired, isExact] :
         {std::pair(true, true), std::pair(true, false), std::pair(false, true), std::pair(false, false)}) {
        for (std::size_t i = 0; i < columns.size(); ++i) {
            if (columns[i].isRequired != isRequired) {
                continue;
            }
            for (std::size_t k = 0; k < headings.size() && !mapping.columns[i].source; ++k) {
                const std::string bare = bareName(headings[k]);
                const bool isIt =
                    !bare.empty() && !taken.contains(k) &&
                    (isExact ? bare == bareName(columns[i].name) : isOtherWord(columns[i].name, bare));
                if (isIt) {
                    mapping.columns[i] = {k, unitInHeading(headings[k], columns[i])};
                    taken.insert(k);
                }
            }
        }
    }
    return mapping;
}

TableMapping guessMapping(const std::string& file, const SourceTable& table) {
    const std::vector<ColumnSpec> columns = columnsOfTable(file);
    TableMapping best = guessMapping(file, table, 0);
    int most = fit(columns, headingsAt(table, 0), best);
    for (std::size_t row = 1; row < std::min(kMostTitleRows, table.text.rows.size()); ++row) {
        TableMapping mapping = guessMapping(file, table, row);
        const int points = fit(columns, headingsAt(table, row), mapping);
        if (points > most) {
            most = points;
            best = std::move(mapping);
        }
    }
    return best;
}

std::string guessTable(const SourceTable& table) {
    std::string best = kAddedTables.front();
    int most = -1000;
    for (const char* file : kAddedTables) {
        const TableMapping mapping = guessMapping(file, table);
        const int points = fit(columnsOfTable(file), headingsAt(table, mapping.headRow), mapping);
        if (points > most) {
            most = points;
            best = file;
        }
    }
    return best;
}

std::vector<std::string> unmatched(const TableMapping& mapping) {
    const std::vector<ColumnSpec> columns = columnsOfTable(mapping.file);
    std::vector<std::string> names;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const ColumnMatch& match = mapping.columns[i];
        const bool isMissing = columns[i].isRequired && !match.source && match.constant.empty();
        const bool isWithoutUnit = match.source && columns[i].dimension && !match.unit;
        if (isMissing || isWithoutUnit) {
            names.emplace_back(columns[i].name);
        }
    }
    return names;
}

SourceTable mapped(const SourceTable& table, const TableMapping& mapping, const std::set<int>& leftOut) {
    const std::vector<ColumnSpec> columns = columnsOfTable(mapping.file);
    SourceTable out;
    out.isThere = true;
    out.failures = table.failures;
    out.text.separator = table.text.separator;
    std::vector<std::size_t> used;
    CsvRow head{mapping.headRow < table.text.rows.size() ? table.text.rows[mapping.headRow].line : 1, {}};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const ColumnMatch& match = mapping.columns[i];
        if (match.source || !match.constant.empty()) {
            used.push_back(i);
            const std::string unit =
                match.unit ? "[" + std::string(quantity::symbol(*match.unit)) + "]" : std::string();
            head.cells.push_back(std::string(columns[i].name) + unit);
        }
    }
    out.text.rows.push_back(std::move(head));
    for (std::size_t row = mapping.headRow + 1; row < table.text.rows.size(); ++row) {
        const CsvRow& theirs = table.text.rows[row];
        CsvRow ours{theirs.line, {}};
        bool isEmpty = true;
        for (const std::size_t i : used) {
            const ColumnMatch& match = mapping.columns[i];
            const bool isThere = match.source && *match.source < theirs.cells.size();
            ours.cells.push_back(isThere ? theirs.cells[*match.source] : match.constant);
            isEmpty = isEmpty && (!isThere || ours.cells.back().empty());
        }
        const auto broken = [&](const CellFailure& failure) { return failure.line == theirs.line; };
        const bool hasBroken = std::any_of(table.cellFailures.begin(), table.cellFailures.end(), broken);
        if ((!isEmpty || hasBroken) && !leftOut.contains(theirs.line)) {
            out.text.rows.push_back(std::move(ours));
        }
    }
    for (const CellFailure& failure : table.cellFailures) {
        for (std::size_t k = 0; k < used.size() && !leftOut.contains(failure.line); ++k) {
            if (mapping.columns[used[k]].source == failure.index) {
                out.cellFailures.push_back({failure.line, k, failure.fault});
            }
        }
    }
    return out;
}

}  // namespace ww::exchange
