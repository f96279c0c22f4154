// A made-up two-pipe loop with hidden factors on its resistances, and readings of it: branches of terminals
// on a riser, each terminal a circuit and a valve, one pump. For tests and benches of core/estimation.
#pragma once

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <string>
#include <vector>

#include "core/estimation/learn.h"
#include "core/hydraulics/network_builder.h"
#include "core/hydraulics/solve.h"

namespace ww::support {

struct HiddenLoopOptions {
    int branches = 3;
    int terminalsOfBranch = 4;
    unsigned seed = 1;
    double priorSdFactor = 0.3;     ///< of circuits and runs
    double hiddenSdFactor = 0.3;    ///< by which they are really off
    double relativeNoise = 0.01;    ///< of readings, also the uncertainty they state
    bool hasTableErrors = false;    ///< valve tables really off by 2 % and a tilt of 4 %
    double instrumentFactor = 1;    ///< that the dp meter really has
    double instrumentSdFactor = 0;  ///< prior of it; 0: no such unknown
};

class HiddenLoop {
  public:
    using Learning = estimation::Learning;
    using Observation = estimation::Observation;
    using LinkIndex = hydraulics::LinkIndex;
    using PressureDifference = quantity::PressureDifference;
    using VolumeFlow = quantity::VolumeFlow;

    explicit HiddenLoop(HiddenLoopOptions options = {}) : m_options(options), m_random(options.seed) {
        sizeLoop();
        addUnknowns();
    }

    std::size_t terminalCount() const { return m_openings.size(); }
    const Learning& learning() const { return m_learning; }
    Learning& learning() { return m_learning; }
    const std::vector<double>& truth() const { return m_truth; }
    const std::vector<LinkIndex>& valves() const { return m_valves; }
    const std::vector<LinkIndex>& circuits() const { return m_circuits; }
    LinkIndex pump() const { return m_pump; }
    std::optional<std::size_t> instrument() const { return m_instrument; }

    /// A state of the loop: openings of the valves as fractions of the full flow coefficient; 0 is shut.
    std::size_t addCase(std::vector<double> openingFractions) {
        m_openings = std::move(openingFractions);
        m_learning.cases.push_back(network(m_openings));
        for (std::size_t i = 0; i < m_tilts.size(); ++i) {
            m_learning.unknowns[m_tilts[i]].links.front().weightByCase.push_back(1 - m_openings[i]);
        }
        return m_learning.cases.size() - 1;
    }
    std::size_t addOpenCase() { return addCase(std::vector<double>(terminalCount(), 1.0)); }
    std::size_t addThrottledCase() {
        std::vector<double> openings;
        for (std::size_t i = 0; i < terminalCount(); ++i) {
            openings.push_back(uniform(0.35, 1.0));
        }
        return addCase(std::move(openings));
    }
    /// The last state with one valve shut.
    std::size_t addShutCase(std::size_t terminal) {
        const std::vector<double> before = m_openings;
        std::vector<double> openings = m_openings;
        openings[terminal] = 0;
        const std::size_t at = addCase(std::move(openings));
        m_openings = before;
        return at;
    }

    /// Reads what stands there in truth, with noise.
    void read(std::size_t caseIndex, LinkIndex link, estimation::Observed what,
              std::optional<std::size_t> place = std::nullopt) {
        const auto state = estimation::learnedNetwork(m_learning, caseIndex, m_truth);
        read(caseIndex, state, hydraulics::solve(state), link, what, place);
    }
    /// Every valve and the pump.
    void readRound(std::size_t caseIndex) {
        const auto state = estimation::learnedNetwork(m_learning, caseIndex, m_truth);
        const auto solution = hydraulics::solve(state);
        for (std::size_t i = 0; i < terminalCount(); ++i) {
            read(caseIndex, state, solution, m_valves[i], estimation::Observed::Drop, i);
        }
        read(caseIndex, state, solution, m_pump, estimation::Observed::Rise, std::nullopt);
    }

    /// True shares of the terminals in a case.
    std::vector<double> trueShares(std::size_t caseIndex) const {
        return shares(estimation::learnedNetwork(m_learning, caseIndex, m_truth));
    }
    std::vector<double> shares(const hydraulics::Network& state) const {
        const auto solution = hydraulics::solve(state);
        std::vector<double> out;
        for (const LinkIndex link : m_circuits) {
            out.push_back(solution.flow(link).si());
        }
        const double sum = std::accumulate(out.begin(), out.end(), 0.0);
        for (double& share : out) {
            share /= sum;
        }
        return out;
    }

  private:
    double uniform(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }
    double normal(double sd) { return sd * std::normal_distribution<double>()(m_random); }

    void sizeLoop() {
        const int count = m_options.branches * m_options.terminalsOfBranch;
        for (int i = 0; i < count; ++i) {
            m_flows_m3s.push_back(uniform(0.5, 1.5) / 3600);
            m_circuitLosses_Pa.push_back(uniform(8e3, 25e3));
            m_runLosses_Pa.push_back(uniform(4e3, 12e3) / m_options.terminalsOfBranch);
            m_valveLosses_Pa.push_back(uniform(3e3, 8e3));
        }
        for (int i = 0; i < m_options.branches; ++i) {
            m_mainLosses_Pa.push_back(uniform(4e3, 12e3) / m_options.branches);
        }
        m_openings.assign(static_cast<std::size_t>(count), 1.0);
        network(m_openings);
    }

    static hydraulics::Element through(double loss_Pa, double flow_m3s) {
        return hydraulics::Element::exponentLaw(PressureDifference::si(loss_Pa), VolumeFlow::si(flow_m3s), 2);
    }

    hydraulics::Network network(const std::vector<double>& openings) {
        hydraulics::NetworkBuilder builder;
        const auto back = builder.addNode("return");
        auto main = builder.addNode("supply");
        const double total_m3s = std::accumulate(m_flows_m3s.begin(), m_flows_m3s.end(), 0.0);
        const std::vector<hydraulics::PumpDuty> duties{
            {VolumeFlow(), PressureDifference::si(80e3)},
            {VolumeFlow::si(total_m3s), PressureDifference::si(60e3)},
            {VolumeFlow::si(1.5 * total_m3s), PressureDifference::si(35e3)}};
        m_pump = builder.addLink(
            "pump", back, main,
            hydraulics::Element::pump(hydraulics::PumpModel::powerThroughThree(duties).value()));
        m_runs.clear();
        m_circuits.clear();
        m_valves.clear();
        double left_m3s = total_m3s;
        std::size_t terminal = 0;
        for (int b = 0; b < m_options.branches; ++b) {
            const std::string branch = "b" + std::to_string(b);
            const auto head = builder.addNode(branch);
            m_runs.push_back(
                builder.addLink(branch + ".main", main, head,
                                through(m_mainLosses_Pa[static_cast<std::size_t>(b)], left_m3s)));
            main = head;
            double onBranch_m3s = std::accumulate(
                m_flows_m3s.begin() + static_cast<std::ptrdiff_t>(terminal),
                m_flows_m3s.begin() + static_cast<std::ptrdiff_t>(terminal) + m_options.terminalsOfBranch,
                0.0);
            left_m3s -= onBranch_m3s;
            auto last = head;
            for (int t = 0; t < m_options.terminalsOfBranch; ++t, ++terminal) {
                const std::string tag = branch + ".t" + std::to_string(t);
                const auto takeOff = builder.addNode(tag);
                const auto between = builder.addNode(tag + ".coil");
                m_runs.push_back(builder.addLink(tag + ".run", last, takeOff,
                                                 through(m_runLosses_Pa[terminal], onBranch_m3s)));
                m_circuits.push_back(
                    builder.addLink(tag + ".circuit", takeOff, between,
                                    through(m_circuitLosses_Pa[terminal], m_flows_m3s[terminal])));
                const double opening = openings[terminal];
                const double loss_Pa = m_valveLosses_Pa[terminal] / std::pow(std::max(opening, 1e-3), 2);
                m_valves.push_back(builder.addLink(tag + ".valve", between, back,
                                                   through(loss_Pa, m_flows_m3s[terminal]), opening == 0));
                onBranch_m3s -= m_flows_m3s[terminal];
                last = takeOff;
            }
        }
        return *builder.build().network;
    }

    void addUnknown(estimation::UnknownKind kind, double priorSd, double hidden,
                    std::vector<estimation::ScaledLink> links) {
        m_learning.unknowns.push_back({kind, 0, priorSd, std::move(links)});
        m_truth.push_back(hidden);
    }

    void addUnknowns() {
        using estimation::UnknownKind;
        using hydraulics::ParameterKind;
        for (const LinkIndex link : m_circuits) {
            addUnknown(UnknownKind::Circuit, m_options.priorSdFactor, normal(m_options.hiddenSdFactor),
                       {{link, ParameterKind::Drop, 1, {}}});
        }
        std::vector<estimation::ScaledLink> runs;
        for (const LinkIndex link : m_runs) {
            runs.push_back({link, ParameterKind::Drop, 1, {}});
            addUnknown(UnknownKind::Run, m_options.priorSdFactor, normal(m_options.hiddenSdFactor),
                       {runs.back()});
        }
        addUnknown(UnknownKind::Common, 0.2, normal(std::min(0.2, m_options.hiddenSdFactor)), runs);
        addUnknown(UnknownKind::Pump, 0.03, normal(std::min(0.03, m_options.hiddenSdFactor)),
                   {{m_pump, ParameterKind::Drop, 1, {}}});
        for (const LinkIndex link : m_valves) {
            const double factor = m_options.hasTableErrors ? 1 : 0;
            addUnknown(UnknownKind::ValveTable, 0.02, normal(0.02 * factor),
                       {{link, ParameterKind::Coefficient, 1, {}}});
            m_tilts.push_back(m_learning.unknowns.size());
            addUnknown(UnknownKind::ValveTable, 0.04, normal(0.04 * factor),
                       {{link, ParameterKind::Coefficient, 1, {}}});
        }
        if (m_options.instrumentSdFactor > 0) {
            m_instrument = m_learning.unknowns.size();
            addUnknown(UnknownKind::Instrument, m_options.instrumentSdFactor,
                       std::log(m_options.instrumentFactor), {});
        }
    }

    void read(std::size_t caseIndex, const hydraulics::Network& state, const hydraulics::Solution& solution,
              LinkIndex link, estimation::Observed what, std::optional<std::size_t> place) {
        Observation observation;
        observation.caseIndex = caseIndex;
        observation.link = link;
        observation.what = what;
        observation.relativeSd = std::max(m_options.relativeNoise, 1e-6);
        observation.place = place;
        double factor = std::exp(normal(m_options.relativeNoise));
        const bool isDp = what == estimation::Observed::Drop || what == estimation::Observed::AvailableDrop;
        if (m_instrument && isDp) {
            observation.instrument = m_instrument;
            factor *= m_options.instrumentFactor;
        }
        if (what == estimation::Observed::Flow) {
            observation.value = solution.flow(link) * factor;
        } else {
            const PressureDifference drop = *solution.drop(state, link);
            observation.value = (what == estimation::Observed::Rise ? -drop : drop) * factor;
        }
        m_learning.observations.push_back(observation);
    }

    HiddenLoopOptions m_options;
    std::mt19937 m_random;
    std::vector<double> m_flows_m3s, m_circuitLosses_Pa, m_runLosses_Pa, m_valveLosses_Pa, m_mainLosses_Pa;
    std::vector<double> m_openings;
    Learning m_learning;
    std::vector<double> m_truth;
    std::vector<LinkIndex> m_runs, m_circuits, m_valves;
    std::vector<std::size_t> m_tilts;
    std::optional<std::size_t> m_instrument;
    LinkIndex m_pump;
};

}  // namespace ww::support
