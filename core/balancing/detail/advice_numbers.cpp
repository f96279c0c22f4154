#include "core/balancing/detail/advice_numbers.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/branch_flow.h"
#include "core/hydraulics/sensitivity.h"
#include "core/hydraulics/solve.h"

namespace ww::balancing::detail {

namespace {

using estimation::Functional;
using hydraulics::LinkIndex;
using project::Project;

void add(Functional& to, const Functional& what, double factor) {
    for (std::size_t i = 0; i < to.weightByUnknown.size(); ++i) {
        to.weightByUnknown[i] += factor * what.weightByUnknown[i];
    }
}

/// Makes the forecast of one state.
class Forecaster {
  public:
    Forecaster(const Project& project, const LoopFits& fits, LoopLearning& loop, LoopStates& states,
               const LoopState& state)
        : m_project(project),
          m_tree(project.tree()),
          m_fits(fits),
          m_loop(loop),
          m_states(states),
          m_state(state),
          m_case(loop.addCase(states, state)),
          m_design(project::designFlows(project)) {
        for (const std::size_t terminal : m_tree.terminals()) {
            m_totalDesign_m3s += m_design[terminal].si();
        }
    }

    AdviceForecast make() {
        const std::size_t count = m_project.branches().size();
        m_out.flows.resize(count);
        m_out.drops.resize(count);
        m_out.indicated.resize(count);
        m_out.actual.resize(count);
        m_out.indicatedSd.resize(count);
        m_out.actualSd.resize(count);
        m_out.ownResponse.resize(count);
        solveTrusting();
        solveDoubting();
        return std::move(m_out);
    }

  private:
    /// Shares over target of flows by branch.
    std::vector<Ratio> ofTarget(const std::vector<VolumeFlow>& flows) const {
        double total_m3s = 0;
        for (const std::size_t terminal : m_tree.terminals()) {
            total_m3s += flows[terminal].si();
        }
        std::vector<Ratio> out(flows.size());
        for (std::size_t i = 0; i < flows.size(); ++i) {
            if (m_design[i].si() > 0 && total_m3s > 0) {
                out[i] = Ratio::si(flows[i].si() / total_m3s / (m_design[i].si() / m_totalDesign_m3s));
            }
        }
        return out;
    }

    bool isMatched(std::size_t branch) const {
        return m_tree.isTerminal(branch) && m_design[branch].si() > 0 && m_out.flows[branch].si() > 0 &&
               !isSelfActing(m_project.branches()[branch]) &&
               m_project.characteristicOf(m_project.branches()[branch]) != nullptr;
    }

    void solveTrusting() {
        const auto network =
            estimation::learnedNetwork(m_loop.learning, m_case, m_fits.trusting.lnFactorOfUnknowns());
        const hydraulics::Solution solution = hydraulics::solve(network);
        std::vector<hydraulics::Parameter> parameters;
        std::vector<LinkIndex> links;
        std::vector<std::size_t> branches;
        for (std::size_t i = 0; i < m_out.flows.size(); ++i) {
            m_out.flows[i] = solution.flow(m_loop.model->circuitLink[i]);
            if (m_loop.model->valveLink[i]) {
                m_out.drops[i] = solution.drop(network, *m_loop.model->valveLink[i]);
            }
            if (m_loop.branches[i].tableBias && m_out.flows[i].si() > 0) {
                parameters.push_back({*m_loop.model->valveLink[i], hydraulics::ParameterKind::Coefficient});
                links.push_back(m_loop.model->circuitLink[i]);
                branches.push_back(i);
            }
        }
        for (const LinkIndex link : m_loop.model->pumpLinks) {
            m_out.totalFlow += solution.flow(link);
            if (const auto drop = solution.drop(network, link)) {
                m_out.pumpRise = -*drop;
            }
        }
        m_out.indicated = ofTarget(m_out.flows);
        fillResponses(network, solution, parameters, links, branches);
    }

    /// How a share answers its own valve. With many valves in pieces, so that the table stays small.
    void fillResponses(const hydraulics::Network& network, const hydraulics::Solution& solution,
                       const std::vector<hydraulics::Parameter>& parameters,
                       const std::vector<LinkIndex>& links, const std::vector<std::size_t>& branches) {
        constexpr std::size_t kPiece = 64;
        for (std::size_t first = 0; first < links.size(); first += kPiece) {
            const std::size_t size = std::min(kPiece, links.size() - first);
            const auto piece =
                hydraulics::sensitivities(network, solution, std::span(parameters).subspan(first, size),
                                          std::span(links).subspan(first, size));
            for (std::size_t i = 0; i < size; ++i) {
                const std::size_t branch = branches[first + i];
                const double share = m_out.flows[branch] / m_out.totalFlow;
                m_out.ownResponse[branch] = Ratio::si(piece.flow(i, i) / m_out.flows[branch] * (1 - share));
            }
        }
    }

    /// The same without functionals, of terminals and of branches with a valve. Their flow is looked at in
    /// the valve, where there is one: in a link that takes next to nothing it would be a difference of equal
    /// pressures.
    void forecastShares() {
        std::vector<estimation::ToldFlow> told;
        std::vector<std::size_t> branches;
        for (std::size_t i = 0; i < m_out.flows.size(); ++i) {
            const auto& valve = m_loop.model->valveLink[i];
            if (!valve && !m_tree.isTerminal(i)) {
                continue;
            }
            estimation::ToldFlow one{valve.value_or(m_loop.model->circuitLink[i]), m_tree.isTerminal(i), {}};
            const BranchUnknowns& unknowns = m_loop.branches[i];
            if (unknowns.tableBias) {
                one.weightOfUnknowns.emplace_back(*unknowns.tableBias, -1);
            }
            if (unknowns.tableTilt) {
                one.weightOfUnknowns.emplace_back(*unknowns.tableTilt, -m_states.closedFraction(m_state, i));
            }
            told.push_back(std::move(one));
            branches.push_back(i);
        }
        auto made =
            std::make_shared<const estimation::ShareForecast>(m_loop.learning, m_fits.doubting, m_case, told);
        std::vector<VolumeFlow> flows(m_out.flows.size());
        for (std::size_t i = 0; i < branches.size(); ++i) {
            flows[branches[i]] = made->flows()[i];
        }
        m_out.actual = ofTarget(flows);
        for (std::size_t i = 0; i < branches.size(); ++i) {
            const std::size_t branch = branches[i];
            const auto sd = [&](double relative, Ratio mean) {
                return Ratio::si(relative * m_fits.shareSdFactor * mean.si());
            };
            m_out.actualSd[branch] = sd(made->relativeSdOfShares()[i], m_out.actual[branch]);
            m_out.indicatedSd[branch] = sd(made->relativeSdOfToldShares()[i], m_out.indicated[branch]);
            if (flows[branch].si() > 0 && isMatched(branch)) {
                m_out.matched.push_back(branch);
                m_out.aimsOfShares.push_back(i);
            }
        }
        m_out.shares = std::move(made);
    }

    void solveDoubting() {
        if (m_fits.doubting.posterior.isEmpty()) {
            if (m_out.totalFlow.si() > 0) {
                forecastShares();
            }
            return;
        }
        std::vector<LinkIndex> links;
        for (std::size_t i = 0; i < m_out.flows.size(); ++i) {
            links.push_back(m_loop.model->circuitLink[i]);
        }
        const estimation::Forecast forecast =
            estimation::forecast(m_loop.learning, m_fits.doubting.lnFactorOfUnknowns(), m_case, links);
        std::vector<VolumeFlow> flows;
        for (const estimation::LinkForecast& link : forecast.links) {
            flows.push_back(link.flow);
        }
        m_out.actual = ofTarget(flows);
        fillUncertainties(forecast, flows);
    }

    /// ln of what a table reads over what flows there: less the table's error.
    void addTableError(Functional& to, std::size_t branch, double factor) const {
        const BranchUnknowns& unknowns = m_loop.branches[branch];
        if (unknowns.tableBias) {
            to.weightByUnknown[*unknowns.tableBias] -= factor;
        }
        if (unknowns.tableTilt) {
            to.weightByUnknown[*unknowns.tableTilt] -= factor * m_states.closedFraction(m_state, branch);
        }
    }

    void fillUncertainties(const estimation::Forecast& forecast, const std::vector<VolumeFlow>& flows) {
        const std::size_t unknowns = m_loop.learning.unknowns.size();
        Functional actualTotal{std::vector<double>(unknowns, 0.0)};
        Functional indicatedTotal = actualTotal;
        double total_m3s = 0;
        for (const std::size_t terminal : m_tree.terminals()) {
            total_m3s += flows[terminal].si();
        }
        if (total_m3s <= 0) {
            return;
        }
        for (const std::size_t terminal : m_tree.terminals()) {
            const double share = flows[terminal].si() / total_m3s;
            if (share > 0) {
                add(actualTotal, forecast.links[terminal].lnFlow, share);
                add(indicatedTotal, forecast.links[terminal].lnFlow, share);
                addTableError(indicatedTotal, terminal, share);
            }
        }
        std::vector<Functional> actual;
        std::vector<Functional> indicated;
        std::vector<std::size_t> branches;
        for (std::size_t i = 0; i < flows.size(); ++i) {
            if (flows[i].si() <= 0) {
                continue;
            }
            Functional one = forecast.links[i].lnFlow;
            add(one, actualTotal, -1);
            Functional other = forecast.links[i].lnFlow;
            add(other, indicatedTotal, -1);
            addTableError(other, i, 1);
            actual.push_back(std::move(one));
            indicated.push_back(std::move(other));
            branches.push_back(i);
        }
        const estimation::Posterior& posterior = m_fits.doubting.posterior;
        take(posterior.varianceFactorOfEach(actual), branches, m_out.actual, m_out.actualSd);
        take(posterior.varianceFactorOfEach(indicated), branches, m_out.indicated, m_out.indicatedSd);
        takeMatched(actual, indicated, branches);
    }

    void take(const std::vector<double>& variances, const std::vector<std::size_t>& branches,
              const std::vector<Ratio>& means, std::vector<Ratio>& sds) const {
        for (std::size_t i = 0; i < branches.size(); ++i) {
            const double relative = std::sqrt(std::max(0.0, variances[i])) * m_fits.shareSdFactor;
            sds[branches[i]] = Ratio::si(relative * means[branches[i]].si());
        }
    }

    void takeMatched(std::vector<Functional>& actual, std::vector<Functional>& indicated,
                     const std::vector<std::size_t>& branches) {
        std::vector<Functional> matchedActual;
        for (std::size_t i = 0; i < branches.size(); ++i) {
            if (isMatched(branches[i])) {
                m_out.matched.push_back(branches[i]);
                matchedActual.push_back(std::move(actual[i]));
                m_out.shareAims.push_back(std::move(indicated[i]));
            }
        }
        if (m_out.matched.size() > kMostExactTerminals) {
            return;
        }
        const estimation::Posterior& posterior = m_fits.doubting.posterior;
        m_out.actualCovarianceRatio = scaled(posterior.covariance(matchedActual), m_out.actual);
        m_out.indicatedCovarianceRatio = scaled(posterior.covariance(m_out.shareAims), m_out.indicated);
    }

    std::vector<double> scaled(const estimation::CovarianceTable& table,
                               const std::vector<Ratio>& means) const {
        std::vector<double> out(table.size * table.size);
        const double factor = m_fits.shareSdFactor * m_fits.shareSdFactor;
        for (std::size_t i = 0; i < table.size; ++i) {
            for (std::size_t j = 0; j < table.size; ++j) {
                out[i * table.size + j] = table.covarianceWeight(i, j) * factor *
                                          means[m_out.matched[i]].si() * means[m_out.matched[j]].si();
            }
        }
        return out;
    }

    const Project& m_project;
    const project::BranchTree& m_tree;
    const LoopFits& m_fits;
    LoopLearning& m_loop;
    LoopStates& m_states;
    const LoopState& m_state;
    std::size_t m_case;
    std::vector<VolumeFlow> m_design;
    double m_totalDesign_m3s = 0;
    AdviceForecast m_out;
};

}  // namespace

std::vector<estimation::ReadingGain> AdviceForecast::gains(
    const LoopFits& fits, std::span<const estimation::CandidateReading> readings) const {
    return shares != nullptr ? shares->gains(aimsOfShares, readings)
                             : fits.doubting.posterior.gains(shareAims, readings);
}

AdviceForecast adviceForecast(const Project& project, const LoopFits& fits, LoopLearning& loop,
                              LoopStates& states, const LoopState& state) {
    return Forecaster(project, fits, loop, states, state).make();
}

}  // namespace ww::balancing::detail
