// The journal of a workbook: every change ever made, in order, each chained to the one before by a digest.
// Not for deciding what is undone next (workbook/undo_state.h).
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "core/base/digest.h"
#include "core/base/instant.h"
#include "core/store/changeset.h"

namespace ww::store {

/// One record without its changes.
struct JournalRecord {
    std::int64_t sequence = 0;
    base::Instant time;  ///< UTC
    std::string person;
    std::string machine;
    std::string label;
    std::optional<std::int64_t> undoes;
    std::optional<std::int64_t> redoes;
    bool canUndo = true;
    /// One of the other laptop's actions, taken over by a merge: undone together with the record that ends
    /// the merge, which is the first behind it without this mark.
    bool isPartOfMerge = false;
    std::int64_t schemaVersion = 0;
    base::Digest digest;
};

/// SHA-256 over the digest of the record before (zeros before the first), every field, and the changes.
base::Digest digestOf(const JournalRecord& record, ByteSpan changeset, const base::Digest& previous);

/// Adds a record behind the others; its digest must be set. Used inside the transaction of its changes.
base::Outcome appendToJournal(Database& database, const JournalRecord& record, ByteSpan changeset);

/// What a walk over the journal found.
struct JournalWalk {
    std::int64_t records = 0;
    std::optional<std::int64_t> firstBroken;  ///< the first record that does not follow from those before it
    base::Digest newest;
};

/// Goes through the journal in order, checking the chain, and calls `visit` for each record that is sound,
/// until it says false. Stops at the first broken record. Records of a newer schema may be chained in another
/// way: they are visited unchecked. Fails where the table cannot be read.
base::Result<JournalWalk> walkJournal(
    const Database& database, const std::function<bool(const JournalRecord&, ByteSpan changeset)>& visit);

/// The changes of one record; the record must exist.
base::Result<Bytes> changesetOf(const Database& database, std::int64_t sequence);

}  // namespace ww::store
