// All records of one kind: found by id, walked in a steady order, copied at once. Not for storage.
#pragma once

#include <array>
#include <atomic>
#include <compare>
#include <iterator>
#include <memory>
#include <optional>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/base/expects.h"
#include "core/base/id.h"

namespace ww::project {

/// Records of one kind in order of first entry. Pointers and indices hold until the next put or erase. Copies
/// share what neither has changed since, also across threads: a copy costs as little in a large job as in a
/// small one, and a change costs the few records that stand beside it.
template <class Record>
class RecordTable {
  public:
    class Iterator {
      public:
        using iterator_category = std::random_access_iterator_tag;
        using value_type = Record;
        using difference_type = std::ptrdiff_t;
        using pointer = const Record*;
        using reference = const Record&;

        Iterator() = default;
        Iterator(const RecordTable& table, std::size_t at)
            : m_table(&table), m_at(static_cast<difference_type>(at)) {}

        reference operator*() const { return (*m_table)[static_cast<std::size_t>(m_at)]; }
        pointer operator->() const { return &**this; }
        reference operator[](difference_type steps) const { return *(*this + steps); }
        Iterator& operator+=(difference_type steps) {
            m_at += steps;
            return *this;
        }
        Iterator& operator-=(difference_type steps) { return *this += -steps; }
        Iterator& operator++() { return *this += 1; }
        Iterator& operator--() { return *this += -1; }
        Iterator operator++(int) { return std::exchange(*this, *this + 1); }
        Iterator operator--(int) { return std::exchange(*this, *this - 1); }
        friend Iterator operator+(Iterator at, difference_type steps) { return at += steps; }
        friend Iterator operator+(difference_type steps, Iterator at) { return at += steps; }
        friend Iterator operator-(Iterator at, difference_type steps) { return at -= steps; }
        friend difference_type operator-(const Iterator& a, const Iterator& b) { return a.m_at - b.m_at; }
        friend bool operator==(const Iterator& a, const Iterator& b) { return a.m_at == b.m_at; }
        friend auto operator<=>(const Iterator& a, const Iterator& b) { return a.m_at <=> b.m_at; }

      private:
        const RecordTable* m_table = nullptr;
        difference_type m_at = 0;
    };

    const Record* find(const base::Id& id) const {
        const std::optional<std::size_t> index = findIndex(id);
        return index ? &(*this)[*index] : nullptr;
    }
    /// The record with this id, which must exist.
    const Record& at(const base::Id& id) const {
        const Record* record = find(id);
        EXPECTS(record != nullptr);
        return *record;
    }
    /// Index of a record in the order of first entry; the record must exist.
    std::size_t indexOf(const base::Id& id) const {
        const std::optional<std::size_t> index = findIndex(id);
        EXPECTS(index.has_value());
        return *index;
    }
    /// The same; nothing where there is no such record.
    std::optional<std::size_t> findIndex(const base::Id& id) const {
        const auto& shard = m_index[shardOf(id)];
        if (shard == nullptr) {
            return std::nullopt;
        }
        const auto found = shard->find(id);
        return found == shard->end() ? std::nullopt : std::optional(found->second);
    }

    bool contains(const base::Id& id) const { return findIndex(id).has_value(); }
    std::size_t size() const {
        return m_blocks.empty() ? 0 : (m_blocks.size() - 1) * kBlock + m_blocks.back()->size();
    }
    bool empty() const { return m_blocks.empty(); }
    Iterator begin() const { return {*this, 0}; }
    Iterator end() const { return {*this, size()}; }
    const Record& operator[](std::size_t index) const { return (*m_blocks[index / kBlock])[index % kBlock]; }

    /// Adds the record, or replaces the one with the same id in its place.
    void put(Record record) {
        if (const std::optional<std::size_t> there = findIndex(record.id)) {
            own(m_blocks[*there / kBlock])[*there % kBlock] = std::move(record);
            return;
        }
        own(m_index[shardOf(record.id)]).emplace(record.id, size());
        append(std::move(record));
    }
    /// Takes the record out; nothing happens where there is none. Cost grows with what stands behind it.
    void erase(const base::Id& id) {
        const std::optional<std::size_t> gap = findIndex(id);
        if (!gap) {
            return;
        }
        own(m_index[shardOf(id)]).erase(id);
        const std::vector<Record> behind(begin() + static_cast<std::ptrdiff_t>(*gap + 1), end());
        m_blocks.resize((*gap + kBlock - 1) / kBlock);
        if (*gap % kBlock != 0) {
            own(m_blocks.back()).resize(*gap % kBlock);
        }
        for (const Record& record : behind) {
            own(m_index[shardOf(record.id)])[record.id] = size();
            append(record);
        }
    }
    void reserve(std::size_t count) { m_blocks.reserve(count / kBlock + 1); }

  private:
    static constexpr std::size_t kBlock = 64;
    static constexpr std::size_t kShards = 32;
    using Block = std::vector<Record>;
    using Shard = std::unordered_map<base::Id, std::size_t>;

    static std::size_t shardOf(const base::Id& id) {
        constexpr int kTopBits = 5;
        static_assert(kShards == 1U << kTopBits);
        return (std::hash<base::Id>()(id) * 0x9E3779B97F4A7C15ULL) >> (64 - kTopBits);
    }
    /// A part that no copy shares any more.
    template <class Part>
    static Part& own(std::shared_ptr<Part>& part) {
        if (part == nullptr) {
            part = std::make_shared<Part>();
        } else if (part.use_count() > 1) {
            part = std::make_shared<Part>(*part);
        } else {
            // What the last other owner still read is read before what is written now.
            std::atomic_thread_fence(std::memory_order_acquire);
        }
        return *part;
    }
    void append(Record record) {
        if (size() % kBlock == 0) {
            m_blocks.push_back(nullptr);
        }
        own(m_blocks.back()).push_back(std::move(record));
    }

    std::vector<std::shared_ptr<Block>> m_blocks;           ///< of kBlock records, the last of fewer
    std::array<std::shared_ptr<Shard>, kShards> m_index{};  ///< by hash of the id
};

}  // namespace ww::project
