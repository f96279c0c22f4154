// All records of one kind: found by id, walked in a steady order. Not for storage.
#pragma once

#include <unordered_map>
#include <vector>

#include "core/base/expects.h"
#include "core/base/id.h"

namespace ww::project {

/// Records of one kind in order of first entry. Pointers and indices hold until the next put or erase.
template <class Record>
class RecordTable {
  public:
    const Record* find(const base::Id& id) const {
        const auto found = m_index.find(id);
        return found == m_index.end() ? nullptr : &m_records[found->second];
    }
    /// The record with this id, which must exist.
    const Record& at(const base::Id& id) const {
        const Record* record = find(id);
        EXPECTS(record != nullptr);
        return *record;
    }
    /// Index of a record in the order of walking; the record must exist.
    std::size_t indexOf(const base::Id& id) const {
        const auto found = m_index.find(id);
        EXPECTS(found != m_index.end());
        return found->second;
    }

    bool contains(const base::Id& id) const { return m_index.contains(id); }
    std::size_t size() const { return m_records.size(); }
    bool empty() const { return m_records.empty(); }
    auto begin() const { return m_records.begin(); }
    auto end() const { return m_records.end(); }
    const Record& operator[](std::size_t index) const { return m_records[index]; }

    /// Adds the record, or replaces the one with the same id in its place.
    void put(Record record) {
        const auto [found, isNew] = m_index.try_emplace(record.id, m_records.size());
        if (isNew) {
            m_records.push_back(std::move(record));
        } else {
            m_records[found->second] = std::move(record);
        }
    }
    /// Takes the record out; nothing happens where there is none. Cost grows with the table.
    void erase(const base::Id& id) {
        const auto found = m_index.find(id);
        if (found == m_index.end()) {
            return;
        }
        const std::size_t gap = found->second;
        m_records.erase(m_records.begin() + static_cast<std::ptrdiff_t>(gap));
        m_index.erase(found);
        for (std::size_t i = gap; i < m_records.size(); ++i) {
            m_index[m_records[i].id] = i;
        }
    }
    void reserve(std::size_t count) {
        m_records.reserve(count);
        m_index.reserve(count);
    }

  private:
    std::vector<Record> m_records;
    std::unordered_map<base::Id, std::size_t> m_index;
};

}  // namespace ww::project
