// Writes the columns of a record (record_columns.h) as cells of a CSV table's row.
#pragma once

#include <map>

#include "core/base/digest.h"
#include "core/exchange/csv_table.h"
#include "core/exchange/record_columns.h"
#include "core/project/names.h"

namespace ww::exchange {

/// Files beside the tables, by name.
using FilesBeside = std::map<std::string, base::SharedBytes>;

class WriteCells {
  public:
    WriteCells(CsvTable& table, const project::Project& project, FilesBeside& files)
        : m_table(table), m_project(project), m_files(files) {}

    void cell(const char*, const std::string& text) { m_table.add(text); }
    void cell(const char*, bool value) { m_table.add(std::string(value ? "yes" : "no")); }
    void cell(const char*, int number) { m_table.add(number); }
    void cell(const char*, const base::Decimal& number) { m_table.add(number); }
    void cell(const char*, const std::optional<base::Decimal>& number) { m_table.add(number); }
    void cell(const char*, const std::optional<base::Instant>& moment) { m_table.add(moment); }
    template <class Enumeration>
    requires std::is_enum_v<Enumeration>
    void cell(const char*, Enumeration word) { m_table.add(std::string(project::name(word))); }
    template <class Q>
    void cell(const char*, const std::optional<Measured<Q>>& value, Sign) {
        m_table.add(value);
    }
    void refers(const char*, RecordKind kind, const std::optional<base::Id>& id) {
        m_table.add(id ? referenceText(m_project, kind, *id) : std::string());
    }
    void record(const char*, RecordKind kind, const base::Id& id) {
        m_table.add(referenceText(m_project, kind, id));
    }
    /// The file is named by what it holds, so that another file of the same name is never spoiled.
    void file(const char*, const base::SharedBytes& bytes, const std::string& name) {
        const std::string own = base::sha256(bytes.bytes()).text().substr(0, 16) +
                                std::filesystem::path(name).extension().string();
        m_files.insert_or_assign(own, bytes);
        m_table.add(own);
    }

  private:
    CsvTable& m_table;
    const project::Project& m_project;
    FilesBeside& m_files;
};

}  // namespace ww::exchange
