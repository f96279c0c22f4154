// Whether bytes have the form of a changeset at all, before SQLite's session extension takes them: it trusts
// the form and may never come back from bytes that are cut short. Not for whether the changes fit the tables.
#pragma once

#include "core/store/statement.h"

namespace ww::store {

/// Walks the bytes by the format that the source of SQLite's session extension describes ("Changeset
/// format"): a head for each table, then its rows with their values. No bytes at all are a changeset without
/// changes.
bool isChangeset(ByteSpan bytes);

}  // namespace ww::store
