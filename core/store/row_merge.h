// Takes the changes of another copy over into ours, row by row and field by field, and remembers the fields
// that both changed. Nothing is blended: a field is one side's or the other's, and ours stands until a person
// picks. Not for the rules of a job (workbook/merge_settlement.h).
#pragma once

#include <map>
#include <set>

#include "core/store/raw_rows.h"

namespace ww::store {

/// A field that ends differently on both sides after both changed it.
struct FieldConflict {
    const TableForm* form = nullptr;  ///< of the record's own table
    project::RecordKind kind{};
    project::Id record;
    /// The first column; the name of a table of rows that belong to the record; empty: one side removed the
    /// record, and it was kept.
    std::string field;
    bool isGoneHere = false;
    bool isGoneThere = false;
    std::vector<PlacedRow> ours;  ///< the record's row, or all its rows of that table
    std::vector<PlacedRow> theirs;
};

class RowMerge {
  public:
    /// `ours` is changed inside the caller's transaction; `theirs` stands in memory as both copies were at
    /// their last common record, in the present schema. Both must outlive the merge.
    static base::Result<RowMerge> start(Database& ours, Database& theirs);

    /// The other side moves on by one record; ours stays as it is.
    base::Outcome follow(ByteSpan changeset);
    /// The other side moves on by one record, and ours takes what does not conflict. False where something
    /// was left out.
    base::Result<bool> take(ByteSpan changeset);
    /// After the last record: the fields that are still open. Those that were decided on the other side
    /// already are settled in ours here.
    base::Result<std::vector<FieldConflict>> settle();

  private:
    struct Contest {
        const TableForm* form = nullptr;
        Row key;
        std::string field;
        bool isGoneHere = false;
        std::optional<Row> before;
    };
    struct Touched {
        const TableForm* form = nullptr;
        Row key;
        std::optional<Row> before;
        std::optional<Row> after;
    };
    using Owned = std::pair<const TableForm*, Row>;  ///< a table of rows, and the owner's id

    RowMerge(Database& ours, Database& theirs, std::vector<TableForm> forms)
        : m_ours(ours), m_theirs(theirs), m_forms(std::move(forms)) {}

    const TableForm* formOf(std::string_view table) const;
    const TableForm* ownerFormOf(const TableForm& rows) const;
    std::vector<PlacedRow> ownedRows(RawRows& side, const TableForm& rows, const Cell& owner);
    Contest* contest(const TableForm& form, const Row& key, const std::string& field);
    void openContest(const TableForm& form, const Row& key, const std::string& field,
                     std::optional<Row> before, bool isGoneHere = false);
    /// Remembers a field that both changed; whether they differ in the end is seen by settle().
    void watch(const TableForm& form, const Row& key, const std::string& field, std::optional<Row> before,
               bool isGoneHere = false);

    void put(const Touched& touched);
    void putFields(const Touched& touched, const Row& current);
    void putOwned(const Owned& owned, const std::vector<PlacedRow>& before);
    void putConflictRow(const Touched& touched, const Row& current);
    void eraseAll(std::vector<Touched> erased);
    bool eraseOne(const Touched& touched, bool isLastTry);
    void keepReferring(const TableForm& form, const Cell& id);
    void needReferences(const TableForm& form, const Row& row);
    void bringBack(const TableForm& form, const Cell& id);
    void bringBackReferring(const TableForm& form, const Cell& id);
    bool isReferredTo(const TableForm& form, const Cell& id);

    std::optional<FieldConflict> settled(const Contest& contest);
    bool isDecided(const Contest& contest, const Row* current, const Row* other);

    // Reading and writing that remembers the first fault: the steps above have no other way to fail.
    std::optional<Row> found(RawRows& side, const TableForm& form, const Row& key);
    std::vector<Row> rowsWhere(RawRows& side, const TableForm& form, std::size_t column, const Cell& value);
    void insert(const TableForm& form, const Row& row);
    void setField(const TableForm& form, const Row& key, const RowField& field, const Row& cells);
    void erase(const TableForm& form, const Row& row);
    void check(const base::Outcome& outcome);

    RawRows m_ours;
    RawRows m_theirs;
    std::vector<TableForm> m_forms;
    std::map<std::string, Contest> m_contests;
    std::vector<std::string> m_order;  ///< of the contests, as they came up
    std::vector<PlacedRow> m_erased;   ///< rows that this merge took out of ours
    bool m_isWhole = true;
    std::optional<base::Fault> m_fault;
};

}  // namespace ww::store
