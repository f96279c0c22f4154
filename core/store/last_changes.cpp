#include "core/store/last_changes.h"

namespace ww::store {

namespace {

/// Stands for all fields of a record that was put as a whole.
constexpr const char* kWhole = "*";

}  // namespace

LastChanges::LastChanges(const std::vector<TableForm>& forms) {
    for (const TableForm& form : forms) {
        m_forms.emplace(std::string(form.table->name), form);
    }
}

void LastChanges::add(const JournalRecord& record, ByteSpan changeset) {
    const Author author{record.person, record.machine, record.time};
    ChangesetReader reader(changeset);
    while (reader.next()) {
        const auto form = m_forms.find(std::string(reader.table()));
        const auto id = reader.recordId();
        if (form == m_forms.end() || !id) {
            continue;
        }
        if (form->second.table->holdsRowsOfOwner) {
            m_authors[{*id, form->first}] = author;
            continue;
        }
        if (reader.operation() != RowOperation::Updated) {
            m_authors[{*id, reader.operation() == RowOperation::Inserted ? kWhole : ""}] = author;
            continue;
        }
        for (const RowField& field : form->second.fields) {
            for (std::size_t i = field.first; i < field.first + field.count; ++i) {
                const auto column = static_cast<int>(i);
                if (column < reader.columnCount() && reader.after(column)) {
                    m_authors[{*id, field.name}] = author;
                }
            }
        }
    }
}

const Author* LastChanges::find(const project::Id& record, const std::string& field) const {
    for (const std::string& name : {field, std::string(kWhole)}) {
        const auto found = m_authors.find({record, name});
        if (found != m_authors.end()) {
            return &found->second;
        }
    }
    return nullptr;
}

}  // namespace ww::store
