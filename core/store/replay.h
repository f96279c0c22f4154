// The job as its journal tells it: all changes applied again from nothing, and compared with the tables.
// Not for the chain itself (journal.h).
#pragma once

#include <vector>

#include "core/store/database.h"

namespace ww::store {

/// An in-memory workbook as it stood after record `last` (all records where `last` is past the end). Fails
/// where the chain is broken (kChainBroken) or a change does not fit (kChangesetUnfit), with the record's
/// number.
base::Result<Database> replayed(const Database& database, std::int64_t last);

/// The same of all records: their joint effect, written once. A change that does not fit those before it is
/// found only where it shows in the end; replayed() finds every one.
base::Result<Database> replayedAtOnce(const Database& database);

/// Whether the rows of the recorded tables are exactly those that the journal tells, for opening: no database
/// is built. False also where this way cannot tell: a broken chain, records of an older schema.
bool isAsRecorded(const Database& database);

/// Rows of the recorded tables that differ from what the journal tells: missing, foreign or changed, each
/// named as people know it (tag, number). At most `limit` findings.
base::Result<std::vector<base::Fault>> differences(const Database& found, const Database& expected,
                                                   std::size_t limit);

}  // namespace ww::store
