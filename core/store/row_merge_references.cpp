// Records that refer to each other stay and come back together.
#include <algorithm>

#include "core/store/row_merge.h"

namespace ww::store {

/// Puts back what this merge took out of ours and what refers to a record that stays after all.
void RowMerge::keepReferring(const TableForm& form, const Cell& id) {
    const std::vector<PlacedRow> erased = m_erased;
    for (const PlacedRow& row : erased) {
        const TableForm& other = *formOf(row.table);
        const bool refers =
            std::any_of(other.references.begin(), other.references.end(), [&](const RowReference& reference) {
                return reference.table == form.table->name && row.row[reference.column] == id;
            });
        if (refers && !found(m_ours, other, other.keyOf(row.row))) {
            insert(other, row.row);
            needReferences(other, row.row);
            keepReferring(other, row.row[0]);
        }
    }
}

bool RowMerge::isReferredTo(const TableForm& form, const Cell& id) {
    for (const TableForm& other : m_forms) {
        if (other.table->holdsRowsOfOwner && other.table->kind == form.table->kind) {
            continue;
        }
        for (const RowReference& reference : other.references) {
            if (reference.table == form.table->name &&
                !rowsWhere(m_ours, other, reference.column, id).empty()) {
                return true;
            }
        }
    }
    return false;
}

void RowMerge::needReferences(const TableForm& form, const Row& row) {
    for (const RowReference& reference : form.references) {
        const Cell& id = row[reference.column];
        const TableForm* other = formOf(reference.table);
        if (idIn(id) && other != nullptr && !found(m_ours, *other, {id})) {
            bringBack(*other, id);
        }
    }
}

/// Puts a record that ours removed back as the other side has it, with all that goes with it.
void RowMerge::bringBack(const TableForm& form, const Cell& id) {
    const auto row = found(m_theirs, form, {id});
    if (!row || found(m_ours, form, {id})) {
        return;
    }
    insert(form, *row);
    if (form.table->kind) {
        openContest(form, {id}, "", row, true);
    }
    for (const TableForm& rows : m_forms) {
        if (rows.table->holdsRowsOfOwner && rows.table->kind == form.table->kind) {
            for (const PlacedRow& own : ownedRows(m_theirs, rows, id)) {
                insert(rows, own.row);
                needReferences(rows, own.row);
            }
        }
    }
    needReferences(form, *row);
    bringBackReferring(form, id);
}

void RowMerge::bringBackReferring(const TableForm& form, const Cell& id) {
    for (const TableForm& other : m_forms) {
        if (other.table->holdsRowsOfOwner || !other.table->kind) {
            continue;
        }
        for (const RowReference& reference : other.references) {
            if (reference.table != form.table->name) {
                continue;
            }
            for (const Row& row : rowsWhere(m_theirs, other, reference.column, id)) {
                if (!found(m_ours, other, other.keyOf(row))) {
                    insert(other, row);
                    needReferences(other, row);
                    bringBackReferring(other, row[0]);
                }
            }
        }
    }
}

}  // namespace ww::store
