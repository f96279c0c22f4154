// What is still open after the last record of the other side.
#include <algorithm>

#include "core/store/row_merge.h"

namespace ww::store {

namespace {

Row cellsOf(const std::vector<PlacedRow>& rows) {
    Row cells;
    for (const PlacedRow& row : rows) {
        cells.insert(cells.end(), row.row.begin(), row.row.end());
    }
    return cells;
}

/// The cells that one side of a kept conflict had.
std::optional<Row> sideOf(const Cell& kept, const TableForm& form, const RowField& field) {
    const Bytes* bytes = std::get_if<Bytes>(&kept);
    if (bytes == nullptr) {
        return std::nullopt;
    }
    for (const PlacedRow& placed : unpacked(*bytes)) {
        if (placed.table == form.table->name && placed.row.size() >= field.first + field.count) {
            return cellsOf(placed.row, field);
        }
    }
    return std::nullopt;
}

}  // namespace

base::Result<std::vector<FieldConflict>> RowMerge::settle() {
    std::vector<FieldConflict> conflicts;
    for (const std::string& text : m_order) {
        if (auto conflict = settled(m_contests.at(text))) {
            conflicts.push_back(std::move(*conflict));
        }
    }
    if (m_fault) {
        return *m_fault;
    }
    return conflicts;
}

std::optional<FieldConflict> RowMerge::settled(const Contest& contest) {
    const TableForm& form = *contest.form;
    const auto current = found(m_ours, form, contest.key);
    const auto other = found(m_theirs, form, contest.key);
    const auto id = idIn(contest.key[0]);
    const std::string table(form.table->name);
    if (!id || !form.table->kind) {
        return std::nullopt;
    }
    FieldConflict conflict{&form, *form.table->kind, *id, contest.field, false, false, {}, {}};
    if (contest.field.empty()) {
        conflict.isGoneHere = contest.isGoneHere && current && other;
        conflict.isGoneThere = !contest.isGoneHere && current && !other;
        if ((!conflict.isGoneHere && !conflict.isGoneThere) || isDecided(contest, nullptr, nullptr)) {
            return std::nullopt;
        }
        conflict.ours = {{table, *current}};
        conflict.theirs = {{table, other ? *other : *current}};
        return conflict;
    }
    if (!current || !other) {
        return std::nullopt;
    }
    if (const TableForm* rows = formOf(contest.field); rows != nullptr && rows->table->holdsRowsOfOwner) {
        conflict.ours = ownedRows(m_ours, *rows, contest.key[0]);
        conflict.theirs = ownedRows(m_theirs, *rows, contest.key[0]);
        const Row theirCells = cellsOf(conflict.theirs);
        const bool isOpen = conflict.ours != conflict.theirs && theirCells != contest.before;
        return isOpen ? std::optional(std::move(conflict)) : std::nullopt;
    }
    const RowField* field = form.field(contest.field);
    const Row theirCells = cellsOf(*other, *field);
    if (cellsOf(*current, *field) == theirCells || theirCells == contest.before ||
        isDecided(contest, &*current, &*other)) {
        return std::nullopt;
    }
    conflict.ours = {{table, *current}};
    conflict.theirs = {{table, *other}};
    return conflict;
}

/// Whether a person has picked already, here or on the other side; what was picked there is put into ours.
bool RowMerge::isDecided(const Contest& contest, const Row* current, const Row* other) {
    const TableForm& conflicts = *formOf("merge_conflicts");
    const RowField& name = *conflicts.field("field");
    const RowField& choice = *conflicts.field("choice");
    const TableForm& values = *formOf("conflict_values");
    for (const Row& row : rowsWhere(m_ours, conflicts, conflicts.field("record")->first, contest.key[0])) {
        const std::string chosen = text(row[choice.first]).value_or("");
        if (text(row[name.first]) != contest.field || chosen == "open") {
            continue;
        }
        if (current == nullptr) {
            return true;
        }
        const auto kept = found(m_ours, values, {row[0]});
        if (!kept) {
            continue;
        }
        const RowField& field = *contest.form->field(contest.field);
        const Row now = cellsOf(*current, field);
        const Row there = cellsOf(*other, field);
        const auto first = sideOf((*kept)[1], *contest.form, field);
        const auto second = sideOf((*kept)[2], *contest.form, field);
        const auto isSide = [&](const Row& cells) { return cells == first || cells == second; };
        const auto& picked = chosen == "ours" ? first : second;
        // Both texts together are neither side's own.
        const bool isPickedHere = chosen == "both" ? !isSide(now) && isSide(there) : now == picked;
        const bool isPickedThere = chosen == "both" ? isSide(now) && !isSide(there) : there == picked;
        if (isPickedThere && !isPickedHere) {
            setField(*contest.form, contest.key, field, there);
        }
        if (isPickedHere || isPickedThere) {
            return true;
        }
    }
    return false;
}

}  // namespace ww::store
