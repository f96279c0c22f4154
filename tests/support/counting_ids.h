// Ids that count up from one, so that a test meets the same ids in every run.
// Not for programs: two files made with it hold the same ids.
#pragma once

#include <cstdint>

#include "core/base/id.h"

namespace ww::support {

/// 1, 2, 3 ... as the last eight bytes, most significant first: the text of the first is 31 zeros and a 1.
class CountingIds : public base::IdSource {
  public:
    CountingIds() = default;
    /// Two sources that must not meet begin far apart: the first id has the number `first`.
    explicit CountingIds(std::uint64_t first) : m_next(first) {}

    base::Id next() override { return numbered(m_next++); }

    /// The id with this number, without counting.
    static base::Id numbered(std::uint64_t number) {
        base::Id id;
        for (std::size_t i = 0; i < 8; ++i) {
            id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
        }
        return id;
    }

  private:
    std::uint64_t m_next = 1;
};

}  // namespace ww::support
