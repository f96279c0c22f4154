#include "core/pump_room/pressure_profile.h"

#include <algorithm>
#include <numeric>
#include <unordered_map>

#include "core/energy/air_in_water.h"
#include "core/energy/suction.h"
#include "core/hydraulics/solve.h"
#include "core/project/units.h"
#include "core/quantity/measured.h"

namespace ww::pump_room {

namespace {

using balancing::HydraulicModel;
using hydraulics::LinkIndex;
using project::Branch;
using project::Project;

/// A valve that takes less does not matter for air (common practice, no source).
constexpr double kLittleDrop_Pa = 1000;

/// One element before pressures are known.
struct Piece {
    ProfilePart part{};
    std::optional<std::size_t> branch;
    PressureDifference drop;
};

/// The way round a circuit: out to the unit, and back.
struct Way {
    std::vector<Piece> out;   ///< from the pump's suction to the unit's inlet
    std::vector<Piece> unit;  ///< unit and balancing valve, in their order
    std::vector<Piece> back;
    /// By the branch that leaves the pipe there: the piece of the way back that begins at its return's tee.
    std::unordered_map<std::size_t, std::size_t> tees;
};

class Circuit {
  public:
    Circuit(const Project& project, const HydraulicModel& model, std::size_t terminal)
        : m_project(project),
          m_tree(project.tree()),
          m_model(model),
          m_terminal(terminal),
          m_solution(hydraulics::solve(model.network)) {}

    Way way(bool isValveOnSupply) const {
        Way way;
        way.out.push_back(
            {ProfilePart::Pump, std::nullopt, -balancing::pumpsTogether(m_model, m_solution).rise});
        if (const auto throttle = m_model.network.findLink("discharge valve")) {
            way.out.push_back({ProfilePart::DischargeThrottle, std::nullopt, dropOf(*throttle)});
        }
        std::vector<std::size_t> path;
        for (std::size_t at = m_terminal; at != project::BranchTree::kNone; at = m_tree.parent(at)) {
            path.insert(path.begin(), at);
        }
        for (const std::size_t branch : path) {
            addSupply(branch, way);
        }
        const auto valve = valveOf(m_terminal);
        const Piece unit{ProfilePart::Unit, m_terminal, dropOf(m_model.circuitLink[m_terminal])};
        way.unit.push_back(unit);
        if (valve) {
            way.unit.insert(isValveOnSupply ? way.unit.begin() : way.unit.end(), *valve);
        }
        for (auto at = path.rbegin(); at != path.rend(); ++at) {
            addReturn(*at, way);
        }
        return way;
    }

  private:
    PressureDifference dropOf(LinkIndex link) const {
        return m_solution.drop(m_model.network, link).value_or(PressureDifference());
    }
    PressureDifference dropOf(const std::optional<LinkIndex>& link) const {
        return link ? dropOf(*link) : PressureDifference();
    }
    const Branch& branchAt(std::size_t index) const { return m_project.branches()[index]; }

    std::optional<Piece> valveOf(std::size_t branch) const {
        if (!m_model.valveLink[branch]) {
            return std::nullopt;
        }
        return Piece{ProfilePart::Valve, branch, dropOf(m_model.valveLink[branch])};
    }

    std::span<const std::size_t> group(std::size_t branch) const {
        const std::size_t parent = m_tree.parent(branch);
        return parent == project::BranchTree::kNone ? m_tree.roots() : m_tree.children(parent);
    }
    bool isReverse(std::size_t branch) const {
        const std::size_t parent = m_tree.parent(branch);
        return parent != project::BranchTree::kNone &&
               branchAt(parent).returns == project::ReturnKind::Reverse;
    }

    void addSupply(std::size_t branch, Way& way) const {
        for (const std::size_t member : group(branch)) {
            if (m_model.runLink[member]) {
                const PressureDifference drop = dropOf(m_model.runLink[member]);
                way.out.push_back({ProfilePart::SupplyRun, member, isReverse(branch) ? drop : drop * 0.5});
            }
            if (member == branch) {
                break;
            }
        }
        if (branch != m_terminal) {
            const auto valve = valveOf(branch);
            if (valve && branchAt(branch).side == project::Side::Supply) {
                way.out.push_back(*valve);
            }
            way.out.push_back({ProfilePart::BranchPath, branch, dropOf(m_model.circuitLink[branch]) * 0.5});
        }
    }

    void addReturn(std::size_t branch, Way& way) const {
        if (branch != m_terminal) {
            way.back.push_back({ProfilePart::BranchPath, branch, dropOf(m_model.circuitLink[branch]) * 0.5});
            const auto valve = valveOf(branch);
            if (valve && branchAt(branch).side != project::Side::Supply) {
                way.back.push_back(*valve);
            }
        }
        way.tees[branch] = way.back.size();
        if (isReverse(branch)) {
            addReverseReturn(branch, way);
            return;
        }
        const auto members = group(branch);
        for (auto at = std::find(members.rbegin(), members.rend(), branch); at != members.rend(); ++at) {
            way.tees[*at] = way.back.size();
            if (m_model.runLink[*at]) {
                way.back.push_back({ProfilePart::ReturnRun, *at, dropOf(m_model.runLink[*at]) * 0.5});
            }
        }
    }

    /// Past all take-offs behind this one, then the last pipe back.
    void addReverseReturn(std::size_t branch, Way& way) const {
        const auto members = group(branch);
        for (auto at = std::find(members.begin(), members.end(), branch) + 1; at != members.end(); ++at) {
            if (m_model.returnRunLink[*at]) {
                way.back.push_back({ProfilePart::ReturnRun, *at, dropOf(m_model.returnRunLink[*at])});
            }
        }
        way.back.push_back(
            {ProfilePart::ReturnRun, branch, dropOf(m_model.lastReturnLink[m_tree.parent(branch)])});
    }

    const Project& m_project;
    const project::BranchTree& m_tree;
    const HydraulicModel& m_model;
    std::size_t m_terminal;
    hydraulics::Solution m_solution;
};

class Profiler {
  public:
    Profiler(const Project& project, const Circuit& circuit, std::size_t terminal)
        : m_project(project), m_circuit(circuit) {
        const project::Job& job = project.job();
        if (job.fillPressure) {
            m_fill = job.fillPressure->value;
        }
        if (const auto& elevation = project.branches()[terminal].elevation) {
            m_top = elevation->value;
        }
        m_perMetre_Pa = project.fluid().density().si() * quantity::kStandardGravity;
    }

    CircuitProfile profile(bool isValveOnSupply) const {
        const Way way = m_circuit.way(isValveOnSupply);
        CircuitProfile out;
        walk(way.out, 0, m_top.si(), out);
        walk(way.unit, m_top.si(), m_top.si(), out);
        for (const ProfileElement& element : out.elements) {
            if (element.part == ProfilePart::Unit) {
                out.unitRunning = element.after;
                out.unitAtRest = element.atRest;
            }
        }
        walk(way.back, m_top.si(), 0, out);
        findAvailable(way, out);
        const auto lowest =
            std::min_element(out.elements.begin(), out.elements.end(),
                             [](const auto& one, const auto& other) { return one.after < other.after; });
        out.lowest = lowest->after;
        out.lowestAt = static_cast<std::size_t>(lowest - out.elements.begin());
        out.airRunning = airAt(out.unitRunning);
        out.airAtRest = airAt(out.unitAtRest);
        return out;
    }

  private:
    /// Appends the pieces; height goes linearly from piece to piece.
    void walk(const std::vector<Piece>& pieces, double from_m, double to_m, CircuitProfile& out) const {
        double height_m = from_m;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const double next_m =
                from_m + (to_m - from_m) * static_cast<double>(i + 1) / static_cast<double>(pieces.size());
            ProfileElement element;
            element.part = pieces[i].part;
            element.branch = pieces[i].branch;
            element.height = Length::si(next_m);
            element.before = out.elements.empty() ? m_fill : out.elements.back().after;
            element.after =
                element.before - pieces[i].drop - PressureDifference::si(m_perMetre_Pa * (next_m - height_m));
            element.atRest = m_fill - PressureDifference::si(m_perMetre_Pa * next_m);
            out.elements.push_back(element);
            height_m = next_m;
        }
    }

    /// What the way from a tee out through the unit and back to the tee takes.
    static void findAvailable(const Way& way, CircuitProfile& out) {
        const auto sum = [](PressureDifference before, const Piece& piece) { return before + piece.drop; };
        const PressureDifference unit =
            std::accumulate(way.unit.begin(), way.unit.end(), PressureDifference(), sum);
        for (std::size_t i = 0; i < way.out.size(); ++i) {
            const auto tee = way.out[i].part == ProfilePart::SupplyRun ? way.tees.find(*way.out[i].branch)
                                                                       : way.tees.end();
            if (tee != way.tees.end()) {
                const auto from = way.out.begin() + static_cast<std::ptrdiff_t>(i + 1);
                const auto to = way.back.begin() + static_cast<std::ptrdiff_t>(tee->second);
                out.elements[i].available = std::accumulate(
                    way.back.begin(), to, std::accumulate(from, way.out.end(), unit, sum), sum);
            }
        }
    }

    std::optional<Ratio> airAt(GaugePressure gauge) const {
        if (m_project.fluid().kind() != fluid::FluidKind::Water || !m_project.job().fillPressure) {
            return std::nullopt;
        }
        const auto& altitude = m_project.job().altitude;
        const double height_m = altitude ? std::clamp(altitude->value.si(), -500.0, 11000.0) : 0.0;
        const double total_Pa = std::max(0.0, energy::airPressure(Length::si(height_m)).si() + gauge.si());
        const auto held =
            energy::airHeld(quantity::AbsolutePressure::si(total_Pa), m_project.fluid().temperature());
        return held ? std::optional(*held) : std::nullopt;
    }

    const Project& m_project;
    const Circuit& m_circuit;
    GaugePressure m_fill;
    Length m_top;
    double m_perMetre_Pa = 0;
};

/// Height of the highest recorded unit over the pump; at least the pump's own.
Length highestUnit(const Project& project) {
    Length highest;
    for (const Branch& branch : project.branches()) {
        if (branch.elevation) {
            highest = std::max(highest, branch.elevation->value);
        }
    }
    return highest;
}

void adviseOnPressure(const Project& project, const Branch& branch, CircuitComparison& out) {
    const auto& fill = project.job().fillPressure;
    if (!fill) {
        out.findings.push_back({&kFillUnknown, "", {}});
        return;
    }
    const quantity::ShownUnits units = project::shownUnits(project);
    const double top_Pa =
        fill->value.si() - project.fluid().pressure(quantity::Head::si(highestUnit(project).si())).si();
    if (top_Pa < kLeastStatic.si()) {
        out.advice.push_back({&kStaticLow,
                              branch.tag,
                              {units.text(PressureDifference::si(top_Pa), 3), units.text(kLeastStatic, 3)}});
    }
    const CircuitProfile& asBuilt = branch.side == project::Side::Supply ? *out.onSupply : *out.onReturn;
    if (asBuilt.lowest.si() < 0) {
        out.advice.push_back(
            {&kBelowAir, branch.tag, {units.text(PressureDifference::si(-asBuilt.lowest.si()), 3)}});
    }
}

void adviseOnSide(const Project& project, const Branch& branch, CircuitComparison& out) {
    const PressureDifference gain = out.onReturn->unitRunning - out.onSupply->unitRunning;
    if (gain.si() < kLittleDrop_Pa) {
        out.advice.push_back({&kAirLittle, branch.tag, {}});
        return;
    }
    if (out.onReturn->airRunning && out.onSupply->airRunning) {
        const double more_mL = 1000 * (out.onReturn->airRunning->si() - out.onSupply->airRunning->si());
        out.advice.push_back({&kAirReturnBetter,
                              branch.tag,
                              {project::shownUnits(project).text(gain, 3), quantity::concise(more_mL, 3)}});
    }
    if (branch.side == project::Side::Supply) {
        out.advice.push_back({&kAirOnSupply, branch.tag, {}});
    }
}

}  // namespace

CircuitComparison compareSides(const Project& project, std::size_t terminal,
                               const balancing::LoopState& state, const balancing::Resistances& learned) {
    CircuitComparison out;
    out.terminal = terminal;
    out.isFillKnown = project.job().fillPressure.has_value();
    const Branch& branch = project.branches()[terminal];
    if (!project.tree().isTerminal(terminal)) {
        out.findings.push_back({&kProfileNoUnit, branch.tag, {}});
        return out;
    }
    const balancing::BuiltModel built = balancing::hydraulicModel(project, state, learned);
    if (!built.model) {
        out.findings = built.faults;
        return out;
    }
    const Circuit circuit(project, *built.model, terminal);
    const Profiler profiler(project, circuit, terminal);
    if (const auto setting = state.settings.find(branch.id); setting != state.settings.end()) {
        out.setting = setting->second;
    }
    out.onReturn = profiler.profile(false);
    out.onSupply = profiler.profile(true);
    if (!branch.elevation) {
        out.findings.push_back({&kHeightUnknown, branch.tag, {}});
    }
    adviseOnSide(project, branch, out);
    adviseOnPressure(project, branch, out);
    return out;
}

}  // namespace ww::pump_room
