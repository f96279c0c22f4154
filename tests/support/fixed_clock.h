// A clock that shows what a test sets, and moves only when told.
// Not for measuring: no time passes.
#pragma once

#include <chrono>

#include "core/base/expects.h"
#include "core/base/instant.h"

namespace ww::support {

/// Stands at the given moment, 2026-03-02T08:00:00Z (a Monday morning) unless told otherwise.
class FixedClock : public base::Clock {
  public:
    FixedClock() : FixedClock("2026-03-02T08:00:00Z") {}
    /// ISO 8601, as Instant::fromText reads it; anything else is a broken contract.
    explicit FixedClock(std::string_view moment) { set(moment); }

    base::Instant now() override { return m_now; }

    /// Stands at another moment from now on; the same text rules.
    void set(std::string_view moment) {
        const auto instant = base::Instant::fromText(moment);
        EXPECTS(instant.has_value());
        m_now = *instant;
    }
    /// Moves on (or back, below zero).
    void advance(std::chrono::seconds by) { m_now.seconds += by.count(); }

  private:
    base::Instant m_now;
};

}  // namespace ww::support
