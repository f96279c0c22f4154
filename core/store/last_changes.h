// Who changed each field of each record last, in a stretch of journal. Not for the whole history of a record
// (workbook.h, historyOfAll).
#pragma once

#include <map>

#include "core/store/journal.h"
#include "core/store/raw_rows.h"

namespace ww::store {

struct Author {
    std::string person;
    std::string machine;
    base::Instant time;  ///< UTC
};

class LastChanges {
  public:
    explicit LastChanges(const std::vector<TableForm>& forms);

    /// Takes the next record into account.
    void add(const JournalRecord& record, ByteSpan changeset);
    /// `field` as in FieldConflict; null where the stretch does not touch it.
    const Author* find(const project::Id& record, const std::string& field) const;

  private:
    std::map<std::string, TableForm> m_forms;
    std::map<std::pair<project::Id, std::string>, Author> m_authors;
};

}  // namespace ww::store
