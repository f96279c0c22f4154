#include "core/store/row_merge.h"

#include <algorithm>

#include "core/base/hex.h"

namespace ww::store {

namespace {

using base::Outcome;
using base::Result;
using project::Id;

/// Rows about the file itself differ between copies and are not merged.
constexpr std::string_view kFileTable = "meta";
/// Kept by the merge itself (merge_history.h).
constexpr std::string_view kMergedTable = "merged_records";
constexpr std::string_view kConflictTable = "merge_conflicts";
/// Numbers within a round say no more than an order, which is settled for both sides together.
constexpr std::string_view kOrderField = "sequence";

std::string keyText(const TableForm& form, const Row& key, const std::string& field) {
    std::string out(form.table->name);
    for (const Cell& cell : key) {
        out += '/' + text(cell).value_or("");
    }
    return out + '/' + field;
}

bool isSameBut(const Row& a, const Row& b, const TableForm& form) {
    for (std::size_t i = 0; i < a.size(); ++i) {
        if (form.columns[i] != kOrderField && a[i] != b[i]) {
            return false;
        }
    }
    return true;
}

}  // namespace

Result<RowMerge> RowMerge::start(Database& ours, Database& theirs) {
    auto forms = tableForms(ours);
    if (!forms) {
        return forms.fault();
    }
    return RowMerge(ours, theirs, std::move(*forms));
}

const TableForm* RowMerge::formOf(std::string_view table) const {
    const auto found = std::find_if(m_forms.begin(), m_forms.end(),
                                    [&](const TableForm& form) { return form.table->name == table; });
    return found == m_forms.end() ? nullptr : &*found;
}

const TableForm* RowMerge::ownerFormOf(const TableForm& rows) const {
    const auto found = std::find_if(m_forms.begin(), m_forms.end(), [&](const TableForm& form) {
        return form.table->kind == rows.table->kind && !form.table->holdsRowsOfOwner;
    });
    return found == m_forms.end() ? nullptr : &*found;
}

std::vector<PlacedRow> RowMerge::ownedRows(RawRows& side, const TableForm& rows, const Cell& owner) {
    std::vector<PlacedRow> placed;
    for (Row& row : rowsWhere(side, rows, 0, owner)) {
        placed.push_back({std::string(rows.table->name), std::move(row)});
    }
    return placed;
}

RowMerge::Contest* RowMerge::contest(const TableForm& form, const Row& key, const std::string& field) {
    const auto contest = m_contests.find(keyText(form, key, field));
    return contest == m_contests.end() ? nullptr : &contest->second;
}

void RowMerge::openContest(const TableForm& form, const Row& key, const std::string& field,
                           std::optional<Row> before, bool isGoneHere) {
    m_isWhole = false;
    watch(form, key, field, std::move(before), isGoneHere);
}

void RowMerge::watch(const TableForm& form, const Row& key, const std::string& field,
                     std::optional<Row> before, bool isGoneHere) {
    const std::string text = keyText(form, key, field);
    if (m_contests.emplace(text, Contest{&form, key, field, isGoneHere, std::move(before)}).second) {
        m_order.push_back(text);
    }
}

Outcome RowMerge::follow(ByteSpan changeset) {
    return applyChangeset(m_theirs.database(), changeset);
}

Result<bool> RowMerge::take(ByteSpan changeset) {
    m_isWhole = true;
    std::vector<Touched> touched;
    std::map<std::pair<std::string, Row>, std::vector<PlacedRow>> owned;
    ChangesetReader reader(changeset);
    while (reader.next()) {
        const TableForm* form = formOf(reader.table());
        if (form == nullptr || form->table->name == kFileTable || form->table->name == kMergedTable) {
            continue;
        }
        Row key;
        for (std::size_t i = 0; i < form->keyColumns(); ++i) {
            const auto column = static_cast<int>(i);
            const bool isNew = reader.operation() == RowOperation::Inserted;
            key.push_back((isNew ? reader.after(column) : reader.before(column)).value_or(Cell()));
        }
        if (form->table->holdsRowsOfOwner) {
            owned.try_emplace({std::string(form->table->name), Row{key[0]}},
                              ownedRows(m_theirs, *form, key[0]));
        } else {
            touched.push_back({form, key, found(m_theirs, *form, key), {}});
        }
    }
    if (auto moved = follow(changeset); !moved) {
        return moved.fault();
    }
    std::vector<Touched> erased;
    std::set<Row> erasedKeys;
    for (Touched& row : touched) {
        row.after = found(m_theirs, *row.form, row.key);
        if (row.after) {
            put(row);
        } else {
            erasedKeys.insert(row.key);
            erased.push_back(row);
        }
    }
    for (const auto& [where, before] : owned) {
        if (!erasedKeys.contains(where.second)) {
            putOwned({formOf(where.first), where.second}, before);
        }
    }
    eraseAll(std::move(erased));
    if (m_fault) {
        return *m_fault;
    }
    return m_isWhole;
}

void RowMerge::put(const Touched& touched) {
    const TableForm& form = *touched.form;
    const auto current = found(m_ours, form, touched.key);
    if (current && form.table->name == kConflictTable) {
        putConflictRow(touched, *current);
        return;
    }
    if (current && !form.table->kind) {
        return;  // what a merge keeps about a conflict is the same on both sides
    }
    if (current) {
        putFields(touched, *current);
        return;
    }
    if (touched.before) {
        // Ours removed what the other side changed: it is kept, with the other side's change.
        bringBack(form, touched.key[0]);
        return;
    }
    insert(form, *touched.after);
    needReferences(form, *touched.after);
}

void RowMerge::putFields(const Touched& touched, const Row& current) {
    const TableForm& form = *touched.form;
    const Contest* removal = contest(form, touched.key, "");
    const std::optional<Row> base = touched.before       ? touched.before
                                    : removal != nullptr ? removal->before
                                                         : std::nullopt;
    for (const RowField& field : form.fields) {
        const Row after = cellsOf(*touched.after, field);
        const Row now = cellsOf(current, field);
        const bool isContested = contest(form, touched.key, field.name) != nullptr;
        if (touched.before && after == cellsOf(*touched.before, field)) {
            continue;
        }
        if (isContested) {
            m_isWhole = false;
            continue;
        }
        if (after == now) {
            // Both made the same change: what the other side makes of it later, ours did not make.
            if (touched.before && field.name != kOrderField) {
                watch(form, touched.key, field.name, cellsOf(*touched.before, field));
            }
            continue;
        }
        if (base && now == cellsOf(*base, field)) {
            setField(form, touched.key, field, after);
        } else if (field.name != kOrderField) {
            openContest(form, touched.key, field.name,
                        base ? std::optional(cellsOf(*base, field)) : std::nullopt);
        }
    }
    if (const auto merged = found(m_ours, form, touched.key)) {
        needReferences(form, *merged);
    }
}

void RowMerge::putOwned(const Owned& owned, const std::vector<PlacedRow>& before) {
    const auto& [rows, owner] = owned;
    const std::string field(rows->table->name);
    const TableForm& form = *ownerFormOf(*rows);
    if (!found(m_ours, form, owner)) {
        bringBack(form, owner[0]);
        return;
    }
    const auto after = ownedRows(m_theirs, *rows, owner[0]);
    const auto now = ownedRows(m_ours, *rows, owner[0]);
    if (contest(form, owner, field) != nullptr) {
        m_isWhole = false;
        return;
    }
    if (now != before) {
        Row cells;
        for (const PlacedRow& row : before) {
            cells.insert(cells.end(), row.row.begin(), row.row.end());
        }
        if (after == now) {
            watch(form, owner, field, std::move(cells));
        } else {
            openContest(form, owner, field, std::move(cells));
        }
        return;
    }
    if (after == now) {
        return;
    }
    for (const PlacedRow& row : now) {
        erase(*rows, row.row);
    }
    for (const PlacedRow& row : after) {
        insert(*rows, row.row);
        needReferences(*rows, row.row);
    }
}

/// A conflict that both sides know: a choice made on one side holds on the other; two choices that differ
/// leave it open again.
void RowMerge::putConflictRow(const Touched& touched, const Row& current) {
    const TableForm& form = *touched.form;
    const auto value = [&](const Row& row, const char* field) {
        return text(row[form.field(field)->first]).value_or("");
    };
    const bool isTurned = value(current, "ours") != value(*touched.after, "ours") &&
                          value(current, "ours") == value(*touched.after, "theirs");
    const auto choiceOf = [&](const Row& row) {
        const std::string choice = value(row, "choice");
        return isTurned && choice == "ours" ? "theirs" : isTurned && choice == "theirs" ? "ours" : choice;
    };
    const std::string chosen = choiceOf(*touched.after);
    const std::string now = value(current, "choice");
    const bool isTakenBack = chosen == "open" && touched.before && choiceOf(*touched.before) == now;
    if (chosen == now || (chosen == "open" && !isTakenBack)) {
        return;
    }
    const bool isFree = now == "open" || isTakenBack;
    setField(form, touched.key, *form.field("choice"), {isFree ? chosen : std::string("open")});
    for (const char* name : {"decided_by", "decided"}) {
        const RowField& field = *form.field(name);
        const Row nobody = field.count == 1 ? Row{std::string()} : Row{Cell(), Cell()};
        setField(form, touched.key, field, isFree ? cellsOf(*touched.after, field) : nobody);
    }
}

void RowMerge::eraseAll(std::vector<Touched> erased) {
    // What refers goes before what it refers to, in whatever order the changes name them.
    for (bool isProgress = true; isProgress && !erased.empty();) {
        const std::size_t before = erased.size();
        std::erase_if(erased, [&](const Touched& row) { return eraseOne(row, false); });
        isProgress = erased.size() < before;
    }
    for (const Touched& row : erased) {
        eraseOne(row, true);
    }
}

/// Whether the row needs no further try.
bool RowMerge::eraseOne(const Touched& touched, bool isLastTry) {
    const TableForm& form = *touched.form;
    const auto current = found(m_ours, form, touched.key);
    if (!current) {
        return true;
    }
    bool isChanged = touched.before && !isSameBut(*current, *touched.before, form);
    for (const RowField& field : form.fields) {
        isChanged = isChanged || contest(form, touched.key, field.name) != nullptr;
    }
    if (!isChanged && !isReferredTo(form, touched.key[0])) {
        for (const TableForm& rows : m_forms) {
            if (rows.table->holdsRowsOfOwner && rows.table->kind == form.table->kind) {
                for (const PlacedRow& row : ownedRows(m_ours, rows, touched.key[0])) {
                    erase(rows, row.row);
                }
            }
        }
        erase(form, *current);
        return true;
    }
    if (!isLastTry) {
        return false;
    }
    if (form.table->kind) {
        openContest(form, touched.key, "", touched.before);
        keepReferring(form, touched.key[0]);
    }
    return true;
}

std::optional<Row> RowMerge::found(RawRows& side, const TableForm& form, const Row& key) {
    auto row = side.find(form, key);
    if (!row) {
        check(row.fault());
        return std::nullopt;
    }
    return std::move(*row);
}

std::vector<Row> RowMerge::rowsWhere(RawRows& side, const TableForm& form, std::size_t column,
                                     const Cell& value) {
    auto rows = side.where(form, column, value);
    if (!rows) {
        check(rows.fault());
        return {};
    }
    return std::move(*rows);
}

void RowMerge::insert(const TableForm& form, const Row& row) {
    check(m_ours.insert(form, row));
}

void RowMerge::setField(const TableForm& form, const Row& key, const RowField& field, const Row& cells) {
    check(m_ours.setField(form, key, field, cells));
}

void RowMerge::erase(const TableForm& form, const Row& row) {
    m_erased.push_back({std::string(form.table->name), row});
    check(m_ours.erase(form, form.keyOf(row)));
}

void RowMerge::check(const Outcome& outcome) {
    if (!outcome && !m_fault) {
        m_fault = outcome.fault();
    }
}

}  // namespace ww::store
