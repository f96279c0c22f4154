// Seeded numbers that are the same with every compiler and library. Not for ids of real records and not for
// secrets.
#pragma once

#include <cstdint>
#include <initializer_list>

namespace ww::practice {

/// A stream that its keys alone decide: asking for one reading twice gives it twice, whatever was asked
/// before. SplitMix64 (Steele, Lea and Flood, OOPSLA 2014); normal numbers by Box and Muller (Ann. Math.
/// Statist. 29 (1958) 610).
class RandomNumbers {
  public:
    RandomNumbers(std::initializer_list<std::uint64_t> keys);

    std::uint64_t next();
    /// From 0 inclusive to 1 exclusive, in steps of 2^-53.
    double uniformFraction();
    /// Mean 0 and standard deviation 1.
    double normalScore();
    /// From 0 to `count` - 1; `count` at least 1.
    std::size_t below(std::size_t count);

  private:
    std::uint64_t m_state = 0;
};

}  // namespace ww::practice
