#include "core/hydraulics/detail/linearisation.h"

#include <algorithm>
#include <cmath>

namespace ww::hydraulics::detail {

namespace {

/// As a part of pressure over flow: keeps the matrix of still water regular.
constexpr double kSlopeFloor = 1e-14;
constexpr std::size_t kDenseLoops = 40;

}  // namespace

Linearisation::Linearisation(const NetworkStore& store, std::span<const double> flows_m3s,
                             std::span<const std::uint32_t> heldShut)
    : m_plan(heldShut.empty() ? store.plans->folded() : store.plans->without(heldShut, true)),
      m_state(m_plan.activeLeaves.size(), m_plan.active.size()),
      m_linkSlopes(flows_m3s.size(), 0),
      m_linkDrops(flows_m3s.size(), 0),
      m_linkSteps(flows_m3s.size(), 0),
      m_items(m_plan.pure.size()),
      m_itemSteps(m_plan.pure.size(), 0) {
    double largestFlow = 0;
    double largestDrop = 0;
    for (std::uint32_t link = 0; link < flows_m3s.size(); ++link) {
        if (store.states.isClosed[link] == 0) {
            const DropAndSlope here = store.states.evaluateLink(link, flows_m3s[link]);
            m_linkSlopes[link] = here.slope;
            largestFlow = std::max(largestFlow, std::abs(flows_m3s[link]));
            largestDrop = std::max(largestDrop, std::abs(here.drop_Pa));
        }
    }
    const double floor = largestFlow > 0 ? kSlopeFloor * largestDrop / largestFlow : 1;
    for (double& slope : m_linkSlopes) {
        slope += floor;
    }
    foldPure();
    m_steps.reserve(m_plan.blocks.size());
    for (const BlockPlan& block : m_plan.blocks) {
        m_steps.emplace_back(m_plan, block, m_state, kDenseLoops);
        m_steps.back().fold(true);
        m_steps.back().solve();
    }
}

Linearisation::Change Linearisation::changeOf(Code code) const {
    if (code.kind() == Code::Kind::Leaf) {
        return {code.sign() * m_linkDrops[code.index()], m_linkSlopes[code.index()]};
    }
    return {code.sign() * m_items[code.index()].drop, m_items[code.index()].slope};
}

void Linearisation::giveStep(Code code, double step) {
    (code.kind() == Code::Kind::Leaf ? m_linkSteps : m_itemSteps)[code.index()] = code.sign() * step;
}

void Linearisation::foldPure() {
    for (std::size_t item = 0; item < m_items.size(); ++item) {
        const bool isParallel = m_plan.pure.isParallel[item] != 0;
        Change sum;
        for (const Code child : m_plan.pure.childrenOf(item)) {
            const Change one = changeOf(child);
            sum.drop += isParallel ? one.drop / one.slope : one.drop;
            sum.slope += isParallel ? 1 / one.slope : one.slope;
        }
        m_items[item] = isParallel ? Change{sum.drop / sum.slope, 1 / sum.slope} : sum;
    }
    for (std::size_t leaf = 0; leaf < m_plan.activeLeaves.size(); ++leaf) {
        const Change one = changeOf(m_plan.activeLeaves[leaf]);
        m_state.leafDrops[leaf] = one.drop;
        m_state.leafSlopes[leaf] = one.slope;
    }
}

void Linearisation::unfoldPureParallel(std::size_t item) {
    const auto children = m_plan.pure.childrenOf(item);
    const double drop = m_items[item].drop + m_items[item].slope * m_itemSteps[item];
    std::size_t easiest = 0;
    for (std::size_t i = 1; i < children.size(); ++i) {
        easiest = changeOf(children[i]).slope < changeOf(children[easiest]).slope ? i : easiest;
    }
    double rest = m_itemSteps[item];
    for (std::size_t i = 0; i < children.size(); ++i) {
        if (i != easiest) {
            const Change one = changeOf(children[i]);
            const double step = (drop - one.drop) / one.slope;
            rest -= step;
            giveStep(children[i], step);
        }
    }
    giveStep(children[easiest], rest);
}

void Linearisation::unfoldPure() {
    for (std::size_t leaf = 0; leaf < m_plan.activeLeaves.size(); ++leaf) {
        giveStep(m_plan.activeLeaves[leaf], m_state.leafSteps[leaf]);
    }
    for (std::size_t item = m_items.size(); item-- > 0;) {
        if (m_plan.pure.isParallel[item] != 0) {
            unfoldPureParallel(item);
            continue;
        }
        for (const Code child : m_plan.pure.childrenOf(item)) {
            giveStep(child, m_itemSteps[item]);
        }
    }
}

std::span<const double> Linearisation::response(std::uint32_t link, double drop_Pa) {
    m_linkDrops[link] = drop_Pa;
    foldPure();
    for (BlockStep& step : m_steps) {
        step.foldAgain();
        step.solve(false);
    }
    unfoldPure();
    m_linkDrops[link] = 0;
    return m_linkSteps;
}

}  // namespace ww::hydraulics::detail
