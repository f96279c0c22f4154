// The numbers of a solution and of its derivatives, in flat arrays for the code of this folder.
#pragma once

#include <cstdint>
#include <vector>

namespace ww::hydraulics::detail {

struct SolvedState {
    std::vector<double> flows_m3s;        ///< of links
    std::vector<double> pressures_Pa;     ///< of nodes; not a number: unknown
    std::vector<std::uint32_t> heldShut;  ///< links whose non-return flap is pressed shut, rising
};

/// Parameter by parameter, each with all links asked for; per relative change.
struct DerivativeTable {
    DerivativeTable(std::size_t linkCount, std::size_t parameterCount)
        : links(linkCount),
          parameters(parameterCount),
          flows_m3s(linkCount * parameterCount, 0),
          drops_Pa(linkCount * parameterCount, 0) {}

    std::size_t at(std::size_t link, std::size_t parameter) const { return parameter * links + link; }

    std::size_t links;
    std::size_t parameters;
    std::vector<double> flows_m3s;
    std::vector<double> drops_Pa;  ///< not a number: unknown
};

}  // namespace ww::hydraulics::detail
