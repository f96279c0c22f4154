// Other accounts of a reading that does not fit, and what is said about it. Not for how it is found
// (estimation/).
#pragma once

#include "core/balancing/detail/loop_fits.h"
#include "core/estimation/gross_error.h"

namespace ww::balancing::detail {

/// What a hypothesis would mean.
struct HypothesisMeaning {
    enum class Kind { Unit, Point, Setting, Valve, Sign } kind = Kind::Unit;
    std::string text;                      ///< the unit, the dp of Point, the setting or the valve
    std::optional<PressureDifference> dp;  ///< of Unit, Point and Sign, where a dp was read
    std::optional<Setting> setting;        ///< of Setting
};

struct Hypotheses {
    std::vector<estimation::Hypothesis> list;
    std::vector<HypothesisMeaning> meanings;  ///< beside list
};

/// For the readings of a place: the same digits in another unit of pressure or of flow; of a dp also the
/// point moved, the setting one turn (ten degrees, ten percent) off, another valve of the job, the hoses the
/// other way round.
Hypotheses hypothesesOf(const project::Project& project, const History& history, const LoopLearning& loop,
                        LoopStates& states, std::size_t place);

/// The doubtful readings of a finding, largest score first.
std::vector<DoubtfulReading> doubtfulReadings(const project::Project& project, const LoopLearning& loop,
                                              const estimation::GrossErrorFinding& finding,
                                              const Hypotheses& hypotheses);

}  // namespace ww::balancing::detail
