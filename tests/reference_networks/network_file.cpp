#include "tests/reference_networks/network_file.h"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <stdexcept>

namespace ww::hydraulics {

namespace {

PumpModel pumpModel(const nlohmann::json& curve) {
    std::vector<PumpDuty> points;
    for (const auto& point : curve.at("points")) {
        points.push_back({VolumeFlow::si(point.at("q_m3s").get<double>()),
                          PressureDifference::si(point.at("dp_Pa").get<double>())});
    }
    const std::string model = curve.at("model");
    if (model == "power3") {
        return PumpModel::powerThroughThree(points).value();
    }
    if (model == "pwl") {
        return PumpModel::straightLines(points).value();
    }
    throw std::runtime_error("unknown pump model " + model);
}

std::vector<std::filesystem::path>& extraFolders() {
    static std::vector<std::filesystem::path> folders;
    return folders;
}

}  // namespace

NetworkFile::NetworkFile(const std::filesystem::path& path)
    : m_file(nlohmann::json::parse(std::ifstream(path))) {
    m_name = m_file.at("name");
    for (const auto& one : m_file.at("cases")) {
        ReferenceCase read{one.at("name"), one.value("overrides", nlohmann::json::object()), {}};
        const auto& solution = one.at("solution");
        double agreement = 0;
        if (one.contains("agreement") && one["agreement"].is_object()) {
            agreement = one["agreement"].value("max_flow_over_Qmax", 0.0);
        }
        // One answer for every key "<solver>_flow_m3s"; the first solver's has no prefix.
        for (const auto& [key, flows] : solution.items()) {
            const std::string ending = "flow_m3s";
            if (!key.ends_with(ending) || !flows.is_object()) {
                continue;
            }
            const std::string prefix = key.substr(0, key.size() - ending.size());
            const auto pressures = solution.find(prefix + "pressure_Pa");
            const bool hasPressures = pressures != solution.end() && pressures->is_object();
            const bool isColebrook = prefix == "colebrook_";
            const std::string name = prefix.empty() ? "first" : isColebrook ? "Colebrook" : "second";
            read.answers.push_back(
                {name, flows, hasPressures ? *pressures : nlohmann::json::object(), isColebrook, agreement});
        }
        m_cases.push_back(std::move(read));
    }
}

Element NetworkFile::element(const nlohmann::json& link, FrictionLaw friction) const {
    const auto& fluid = m_file.at("fluid");
    const auto density = Density::si(fluid.at("rho_kgm3").get<double>());
    const std::string type = link.at("type");
    if (type == "pump") {
        PumpOperation operation;
        operation.speedFraction = link.value("speed", 1.0);
        return Element::pump(pumpModel(link.at("curve")), operation);
    }
    if (type == "pipe") {
        Pipe pipe;
        pipe.length = Length::si(link.at("length_m").get<double>());
        pipe.insideDiameter = Length::si(link.at("d_m").get<double>());
        pipe.roughness = Length::si(link.at("rough_m").get<double>());
        pipe.minorLossSum = link.value("k_minor", 0.0);
        pipe.friction = friction;
        return Element::pipe(pipe, density, KinematicViscosity::si(fluid.at("nu_m2s").get<double>()));
    }
    if (type == "valve" && link.contains("cv")) {
        // The files' own law of a valve: specific gravity over 999.1 kg/m3.
        const double atOnePsi_m3s = link["cv"].get<double>() * 6.30901964e-5;
        return Element::resistance(
            Resistance::si(6894.757293168361 * (density.si() / 999.1) / (atOnePsi_m3s * atOnePsi_m3s)));
    }
    if (type == "valve" || type == "resistance") {
        return Element::resistance(Resistance::si(link.at("k_Pa_per_m3s2").get<double>()));
    }
    throw std::runtime_error("unknown link type " + type);
}

BuiltNetwork NetworkFile::network(const ReferenceCase& one, FrictionLaw friction) const {
    NetworkBuilder builder;
    for (const auto& node : m_file.at("nodes")) {
        builder.addNode(node.is_string() ? node.get<std::string>() : node.at("id").get<std::string>());
    }
    for (nlohmann::json link : m_file.at("links")) {
        const std::string id = link.at("id");
        if (one.overrides.contains(id)) {
            link.update(one.overrides[id]);
        }
        builder.addLink(id, link.at("from").get<std::string>(), link.at("to").get<std::string>(),
                        element(link, friction), link.value("closed", false));
    }
    builder.setReference(m_file.at("reference_node"),
                         GaugePressure::si(m_file.value("reference_pressure_Pa", 0.0)));
    return builder.build();
}

void addNetworkFolder(const std::filesystem::path& folder) {
    extraFolders().push_back(folder);
}

std::vector<std::filesystem::path> networkFiles() {
    std::vector<std::filesystem::path> folders = extraFolders();
    folders.emplace_back(std::filesystem::path(WW_SOURCE_DIR) / "tests/data/networks");
    if (const char* more = std::getenv("WW_NETWORKS")) {
        folders.emplace_back(more);
    }
    std::vector<std::filesystem::path> files;
    for (const auto& folder : folders) {
        for (const auto& entry : std::filesystem::directory_iterator(folder)) {
            if (entry.path().extension() == ".json") {
                files.push_back(entry.path());
            }
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

}  // namespace ww::hydraulics
