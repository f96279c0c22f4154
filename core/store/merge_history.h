// What two copies of a workbook have in common, and what the other one did since. Not for taking it over
// (row_merge.h).
#pragma once

#include <vector>

#include "core/store/journal.h"

namespace ww::store {

/// One record of the other copy's journal behind the last common one.
struct IncomingRecord {
    JournalRecord record;
    Bytes changeset;
    /// Digest of the record in the copy where the action was first made; its own unless it came there by a
    /// merge.
    base::Digest origin;
    /// False where ours has the action already, or where it was taken back with everything behind it.
    bool isNew = true;
};

struct MergeHistory {
    std::int64_t common = 0;  ///< sequence of the last common record; 0: there is none
    std::vector<IncomingRecord> incoming;

    /// Whether any record of the other copy is new here.
    bool hasNews() const;
};

/// Fails where a chain is broken (kChainBroken, with the file) or a table cannot be read.
base::Result<MergeHistory> mergeHistory(const Database& ours, const Database& theirs);

/// A row of the table that names the actions taken over by merges.
struct MergedRecord {
    base::Digest origin;
    std::int64_t sequence = 0;  ///< where the action was first made
    std::string machine;
    std::string person;
    std::optional<Bytes> withheld;  ///< all its changes, where not all could be taken over
};

/// Adds such a row; nothing happens where the action is named already.
base::Outcome putMergedRecord(Database& database, const MergedRecord& record);
/// The row of an action; nothing where there is none.
base::Result<std::optional<MergedRecord>> mergedRecord(const Database& database, const base::Digest& origin);

}  // namespace ww::store
