// Exact folding of items that consist of square laws only: resistances up, flows down.
#pragma once

#include <span>
#include <vector>

#include "core/hydraulics/detail/plan.h"

namespace ww::hydraulics::detail {

/// One number an item: on the way up the resistance of a series item or the conductance 1/sqrt(k) of a
/// parallel one; on the way down the flow of a series item or the square root of a parallel one's drop.
class PureFold {
  public:
    PureFold(const Program& program, std::span<const double> linkResistances);

    /// Resistance of a link or item after the fold.
    double resistanceOf(Code code) const;
    /// Gives an item of the program its flow; links get theirs in `linkFlows`.
    void seed(Code code, double flow_m3s, std::span<double> linkFlows);
    /// Spreads the seeded flows over all links below.
    void unfold(std::span<double> linkFlows);
    std::size_t bytes() const { return m_values.size() * sizeof(double); }

  private:
    double conductanceOf(Code code) const;

    const Program& m_program;
    std::span<const double> m_resistances;
    std::vector<double> m_values;
};

}  // namespace ww::hydraulics::detail
