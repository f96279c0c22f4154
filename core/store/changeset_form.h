// The form of a changeset, without what is in its rows: whether bytes are one at all, before SQLite's session
// extension takes them (it trusts the form and may never come back from bytes that are cut short), and which
// part of it is of some tables. Not for whether the changes fit the tables.
#pragma once

#include <functional>
#include <string_view>
#include <vector>

#include "core/store/statement.h"

namespace ww::store {

/// Walks the bytes by the format that the source of SQLite's session extension describes ("Changeset
/// format"): a head for each table, then its rows with their values. No bytes at all are a changeset without
/// changes.
bool isChangeset(ByteSpan bytes);

/// The changeset of those changes alone whose tables are wanted, in their order. No bytes where none is, or
/// where the bytes are no changeset.
std::vector<std::uint8_t> changesOfTables(ByteSpan changeset,
                                          const std::function<bool(std::string_view table)>& isWanted);

}  // namespace ww::store
