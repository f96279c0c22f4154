// The linear response of a solved network's flows to a pressure put into single links.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/hydraulics/detail/block_newton.h"
#include "core/hydraulics/detail/network_store.h"

namespace ww::hydraulics::detail {

/// Slopes folded and matrices factored once; each response is one pass up and one pass down.
class Linearisation {
  public:
    Linearisation(const NetworkStore& store, std::span<const double> flows_m3s,
                  std::span<const std::uint32_t> heldShut);

    /// Flow changes of all links when the drop of `link` grows by `drop_Pa` at unchanged flow.
    std::span<const double> response(std::uint32_t link, double drop_Pa);
    double slope(std::uint32_t link) const { return m_linkSlopes[link]; }
    const Plan& plan() const { return m_plan; }

  private:
    struct Change {
        double drop = 0;
        double slope = 0;
    };
    Change changeOf(Code code) const;
    void giveStep(Code code, double step);
    void foldPure();
    void unfoldPure();
    void unfoldPureParallel(std::size_t item);

    Plan m_plan;
    ActiveState m_state;
    std::vector<BlockStep> m_steps;
    std::vector<double> m_linkSlopes;
    std::vector<double> m_linkDrops;
    std::vector<double> m_linkSteps;
    std::vector<Change> m_items;
    std::vector<double> m_itemSteps;
};

}  // namespace ww::hydraulics::detail
