// Reads a balancing game: a hidden building, what is known of it, readings of several rounds and a reference
// estimate, as JSON. Its units and laws are stated in the file.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "core/estimation/learning.h"

namespace ww::estimation {

class GameFile {
  public:
    explicit GameFile(const std::string& name);

    const nlohmann::json& json() const { return m_file; }
    std::size_t terminalCount() const { return m_file.at("known").at("terminals").size(); }
    /// Unknowns in this order: circuits, segments, the common factor of the segments, the pump's factor.
    const Learning& learning() const { return m_learning; }
    Learning& learning() { return m_learning; }
    /// ln of hidden over design: circuits and the pump; of a segment its own and the common factor together.
    double hiddenLnFactor(std::size_t unknown) const;
    std::size_t segment(std::size_t position) const { return terminalCount() + position; }
    std::size_t segmentCount() const { return m_file.at("known").at("segments").size(); }
    std::size_t common() const { return segment(segmentCount()); }
    std::size_t pump() const { return common() + 1; }
    const std::vector<hydraulics::LinkIndex>& circuits() const { return m_circuits; }

    /// A state with the valves at these turns, `shut` shut.
    std::size_t addCase(const std::vector<double>& turns, std::size_t shut);
    std::size_t addCase(const std::vector<double>& turns) { return addCase(turns, terminalCount()); }
    void addSurvey(const std::string& name);
    void addClosedReadings();

  private:
    hydraulics::Network network(const std::vector<double>& turns, std::size_t shut);
    void addReading(std::size_t caseIndex, hydraulics::LinkIndex link, Observed what, double dp_kPa,
                    const std::string& instrument);

    nlohmann::json m_file;
    Learning m_learning;
    std::vector<hydraulics::LinkIndex> m_circuits, m_segments, m_valves;
    hydraulics::LinkIndex m_pump;
};

}  // namespace ww::estimation
