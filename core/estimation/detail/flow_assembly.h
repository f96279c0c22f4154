// The terms of the sparse system of flow_system.h: links and readings of whole cases. Inside estimation only.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/estimation/detail/case_state.h"
#include "core/estimation/detail/frontal_factor.h"

namespace ww::estimation::detail {

/// How one quantity depends on the variables of the system: few of them.
struct SparseRow {
    std::vector<std::uint32_t> variables;
    std::vector<double> weights;
};

/// ln of the flow of a link that water moves through, plus weights times some unknowns that meet the same
/// link or its neighbors.
struct FlowProbe {
    std::size_t caseIndex = 0;
    hydraulics::LinkIndex link;
    std::vector<std::pair<std::size_t, double>> besides;  ///< position in Learning::unknowns, weight
};

/// Variables are the free unknowns, in prior standard deviations, then for every case and node that is not
/// the ground of its part the pressure and the multiplier of its balance. Pressures are counted in the
/// largest pressure of their case, flows in its largest flow.
class FlowAssembly {
  public:
    FlowAssembly(const Learning& learning, const FreeUnknowns& unknowns, std::span<const std::size_t> cases,
                 std::span<const CaseState* const> states);

    std::uint32_t variableCount() const { return m_variables; }
    const std::vector<MatrixTerm>& terms() const { return m_terms; }

    /// Makes room for a probe, without weight, and tells how it depends on the variables.
    SparseRow addProbe(const FlowProbe& probe);
    /// Adds a reading's term, weight 1/sd^2, and tells how it depends on the variables.
    SparseRow addReading(const Observation& observation, double weight);
    /// Variables in groups in the order of elimination: nodes from the far ends inwards, each with the
    /// unknowns that meet no node before it, last the unknowns that meet many.
    std::vector<std::vector<std::uint32_t>> groups() const;

  private:
    struct Use {
        std::uint32_t free;
        const ScaledLink* scaled;
    };

    std::uint32_t pressureOf(std::size_t position, hydraulics::NodeIndex node) const {
        return m_pressureOf[position * m_nodes + node.value];
    }

    void numberVariables();
    void collectUses();
    /// The change of a link's flow over the largest flow of its case as a row of few variables.
    SparseRow flowRow(std::size_t position, hydraulics::LinkIndex link) const;
    /// The same of the drop between its ends over the largest pressure.
    SparseRow dropRow(std::size_t position, hydraulics::LinkIndex link) const;
    void addLinks(std::size_t position);

    const Learning& m_learning;
    const FreeUnknowns& m_unknowns;
    std::span<const std::size_t> m_cases;
    std::span<const CaseState* const> m_states;
    std::size_t m_nodes;
    std::uint32_t m_variables = 0;
    std::vector<std::uint32_t> m_pressureOf;  ///< by case and node; kNone where it is the ground
    std::vector<std::vector<Use>> m_usesOf;   ///< by link
    std::vector<MatrixTerm> m_terms;
};

}  // namespace ww::estimation::detail
