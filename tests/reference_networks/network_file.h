// Reads a reference network: a loop, its cases and the answers of two independent solvers, as JSON.
#pragma once

#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "core/hydraulics/network_builder.h"

namespace ww::hydraulics {

/// One answer: flows and pressures by id.
struct ReferenceAnswer {
    std::string name;
    nlohmann::json flows;
    nlohmann::json pressures;  ///< may be empty
    bool isColebrook = false;
    double agreement = 0;  ///< on which the references agree, as a fraction of the largest flow
};

struct ReferenceCase {
    std::string name;
    nlohmann::json overrides;
    std::vector<ReferenceAnswer> answers;
};

class NetworkFile {
  public:
    explicit NetworkFile(const std::filesystem::path& path);
    const std::string& name() const { return m_name; }
    const std::vector<ReferenceCase>& cases() const { return m_cases; }
    /// The network of a case, with the pipes' law of an answer.
    BuiltNetwork network(const ReferenceCase& one, FrictionLaw friction) const;

  private:
    Element element(const nlohmann::json& link, FrictionLaw friction) const;

    std::string m_name;
    nlohmann::json m_file;
    std::vector<ReferenceCase> m_cases;
};

/// Files in tests/data/networks and in the folders named by the environment variable WW_NETWORKS and by
/// --networks.
std::vector<std::filesystem::path> networkFiles();
void addNetworkFolder(const std::filesystem::path& folder);

}  // namespace ww::hydraulics
