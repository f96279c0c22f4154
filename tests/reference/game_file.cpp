#include "tests/reference/game_file.h"

#include <cmath>
#include <fstream>
#include <map>

#include "core/hydraulics/network_builder.h"

namespace ww::estimation {

namespace {

using hydraulics::Element;
using hydraulics::PumpDuty;
using quantity::Unit;

constexpr double kPascals = 1000;  // kPa
constexpr double kCubicMetresPerHour = 3600;

/// The files' interpolation: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300, with the
/// three-point end slopes of C. Moler, Numerical Computing with MATLAB (2004), 3.6 ("pchip"). The program's
/// own curve takes other slopes at the points.
double pchip(const std::vector<double>& x, const std::vector<double>& y, double at) {
    const std::size_t count = x.size();
    std::vector<double> h, chord;
    for (std::size_t i = 0; i + 1 < count; ++i) {
        h.push_back(x[i + 1] - x[i]);
        chord.push_back((y[i + 1] - y[i]) / h[i]);
    }
    const auto endSlope = [](double h0, double h1, double d0, double d1) {
        const double slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
        if (slope * d0 <= 0) {
            return 0.0;
        }
        return d0 * d1 < 0 && std::abs(slope) > 3 * std::abs(d0) ? 3 * d0 : slope;
    };
    std::vector<double> slope(count);
    slope.front() = endSlope(h[0], h[1], chord[0], chord[1]);
    slope.back() = endSlope(h[count - 2], h[count - 3], chord[count - 2], chord[count - 3]);
    for (std::size_t i = 1; i + 1 < count; ++i) {
        const double before = 2 * h[i] + h[i - 1];
        const double after = h[i] + 2 * h[i - 1];
        slope[i] =
            chord[i - 1] * chord[i] <= 0 ? 0 : (before + after) / (before / chord[i - 1] + after / chord[i]);
    }
    std::size_t piece = 0;
    while (piece + 2 < count && at > x[piece + 1]) {
        ++piece;
    }
    const double t = (at - x[piece]) / h[piece];
    return (1 + 2 * t) * (1 - t) * (1 - t) * y[piece] + t * (1 - t) * (1 - t) * h[piece] * slope[piece] +
           t * t * (3 - 2 * t) * y[piece + 1] + t * t * (t - 1) * h[piece] * slope[piece + 1];
}

/// kPa/(m3/h)^2.
Element square(double k) {
    return Element::resistance(
        quantity::Resistance::si(k * kPascals * kCubicMetresPerHour * kCubicMetresPerHour));
}

}  // namespace

GameFile::GameFile(const std::string& name)
    : m_file(nlohmann::json::parse(std::ifstream(std::string(WW_SOURCE_DIR) + "/tests/data/games/" + name))) {
    network(std::vector<double>(terminalCount(), 4.0), terminalCount());
    const auto& prior = m_file.at("known").at("prior_sd_ln");
    const auto add = [&](UnknownKind kind, double sd, const std::vector<hydraulics::LinkIndex>& links) {
        Unknown unknown{kind, 0, sd, {}};
        for (const hydraulics::LinkIndex link : links) {
            unknown.links.push_back({link, hydraulics::ParameterKind::Drop, 1, {}});
        }
        m_learning.unknowns.push_back(std::move(unknown));
    };
    for (const hydraulics::LinkIndex link : m_circuits) {
        add(UnknownKind::Circuit, prior.at("kc"), {link});
    }
    for (const hydraulics::LinkIndex link : m_segments) {
        add(UnknownKind::Run, prior.at("kp"), {link});
    }
    add(UnknownKind::Common, prior.at("common"), m_segments);
    add(UnknownKind::Pump, prior.at("pump"), {m_pump});
}

double GameFile::hiddenLnFactor(std::size_t unknown) const {
    const auto& known = m_file.at("known");
    const auto& hidden = m_file.at("hidden");
    const std::size_t terminals = terminalCount();
    if (unknown < terminals) {
        return std::log(hidden.at("kc").at(unknown).get<double>() /
                        known.at("design_kc").at(unknown).get<double>());
    }
    if (unknown == pump()) {
        return std::log(hidden.at("pump_scale").get<double>());
    }
    const std::size_t position = unknown - terminals;
    return std::log(hidden.at("kp").at(position).get<double>() /
                    known.at("design_kp").at(position).get<double>());
}

hydraulics::Network GameFile::network(const std::vector<double>& turns, std::size_t shut) {
    const auto& known = m_file.at("known");
    hydraulics::NetworkBuilder builder;
    const auto back = builder.addNode("return");
    const auto supply = builder.addNode("supply");
    const auto& law = known.at("pump");
    EXPECTS(law.at("n").get<double>() == 2);
    // A parabola is given back by the law through three of its points.
    std::vector<PumpDuty> duties;
    for (const double flow_m3h : {0.0, 1.0, 2.0}) {
        const double rise_kPa = law.at("h0").get<double>() - law.at("b").get<double>() * flow_m3h * flow_m3h;
        duties.push_back({VolumeFlow::from(flow_m3h, Unit::CubicMetrePerHour),
                          PressureDifference::from(rise_kPa, Unit::Kilopascal)});
    }
    m_pump = builder.addLink("pump", back, supply,
                             Element::pump(hydraulics::PumpModel::powerThroughThree(duties).value()));
    m_segments.clear();
    m_circuits.clear();
    m_valves.clear();
    std::map<std::size_t, hydraulics::NodeIndex> endOf;
    for (std::size_t i = 0; i < terminalCount(); ++i) {
        auto node = supply;
        for (const std::size_t segment : known.at("path_matrix_rows").at(i)) {
            const auto found = endOf.find(segment);
            if (found != endOf.end()) {
                node = found->second;
                continue;
            }
            EXPECTS(segment == m_segments.size());
            const std::string tag = known.at("segments").at(segment);
            const auto next = builder.addNode(tag);
            m_segments.push_back(
                builder.addLink(tag, node, next, square(known.at("design_kp").at(segment).get<double>())));
            endOf.emplace(segment, next);
            node = next;
        }
        const std::string tag = known.at("terminals").at(i);
        const auto between = builder.addNode(tag);
        m_circuits.push_back(
            builder.addLink(tag + ".coil", node, between, square(known.at("design_kc").at(i).get<double>())));
        const auto& curve = known.at("valve_curve");
        const double cv = known.at("valve_cvmax").at(i).get<double>() *
                          pchip(curve.at("turns"), curve.at("cv_over_cvmax"), turns.at(i));
        m_valves.push_back(builder.addLink(
            tag + ".valve", between, back,
            Element::valve(quantity::FlowCoefficient::from(cv, Unit::Cv), quantity::Density::si(999.0)),
            i == shut));
    }
    return *builder.build().network;
}

std::size_t GameFile::addCase(const std::vector<double>& turns, std::size_t shut) {
    m_learning.cases.push_back(network(turns, shut));
    return m_learning.cases.size() - 1;
}

void GameFile::addReading(std::size_t caseIndex, hydraulics::LinkIndex link, Observed what, double dp_kPa,
                          const std::string& instrument) {
    const auto& meter = m_file.at("known").at("instrument");
    Observation observation;
    observation.caseIndex = caseIndex;
    observation.link = link;
    observation.what = what;
    observation.value = PressureDifference::from(dp_kPa, Unit::Kilopascal);
    observation.relativeSd =
        std::hypot(meter.at(instrument + "_rel_sd").get<double>(),
                   meter.at(instrument + "_resolution").get<double>() / std::sqrt(12.0) / dp_kPa);
    m_learning.observations.push_back(observation);
}

void GameFile::addSurvey(const std::string& name) {
    const auto& survey = m_file.at("readings").at(name);
    const std::size_t at = addCase(survey.at("pos"));
    for (std::size_t i = 0; i < terminalCount(); ++i) {
        addReading(at, m_valves[i], Observed::Drop, survey.at("dp").at(i), "dp");
        m_learning.observations.back().place = i;
    }
    addReading(at, m_pump, Observed::Rise, survey.at("head"), "head");
}

void GameFile::addClosedReadings() {
    for (const auto& reading : m_file.at("readings").at("extra_closed_valve")) {
        const std::size_t terminal = reading.at("i");
        const std::size_t at = addCase(reading.at("pos"), terminal);
        addReading(at, m_valves[terminal], Observed::AvailableDrop, reading.at("dp"), "dp");
    }
}

}  // namespace ww::estimation
