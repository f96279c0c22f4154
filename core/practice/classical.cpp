#include "core/practice/classical.h"

#include <algorithm>
#include <cmath>

#include "core/curve/valve_flow.h"

namespace ww::practice {

namespace {

class Player {
  public:
    Player(const Building& building, const ClassicalRules& rules)
        : m_building(building),
          m_rules(rules),
          m_project(building.design()),
          m_design(project::designFlows(m_project)),
          m_read(m_design.size()),
          m_looks(m_design.size() + 1) {
        for (const std::size_t terminal : m_project.tree().terminals()) {
            m_designTotal += m_design[terminal];
        }
        listGroups();
    }

    ClassicalGame play() {
        survey();
        for (int pass = 1; pass <= m_rules.maxPasses && !isWithin(m_rules.band.si()); ++pass) {
            for (std::vector<std::size_t>& group : m_groups) {
                workGroup(group);
            }
            survey();
        }
        m_game.isWithinBand = isWithin(m_rules.band.si());
        return std::move(m_game);
    }

  private:
    bool hasValve(std::size_t branch) const {
        return m_project.characteristicOf(m_project.branches()[branch]) != nullptr;
    }

    /// Members with a valve only, innermost groups first.
    void listGroups() {
        const project::BranchTree& tree = m_project.tree();
        const auto add = [&](std::span<const std::size_t> members) {
            std::vector<std::size_t> group;
            std::copy_if(members.begin(), members.end(), std::back_inserter(group),
                         [&](std::size_t member) { return hasValve(member); });
            if (group.size() > 1) {
                m_groups.push_back(std::move(group));
            }
        };
        if (!m_rules.isByGroups) {
            add(tree.terminals());
            return;
        }
        const auto order = tree.topDown();
        for (auto branch = order.rbegin(); branch != order.rend(); ++branch) {
            add(tree.children(*branch));
        }
        add(tree.roots());
    }

    /// `reader` is a branch, or their number for the pump's gauges.
    ReadingMoment nextMoment(std::size_t reader) {
        ReadingMoment moment;
        moment.round = static_cast<int>(m_game.passes.size()) + 1;
        moment.look = ++m_looks[reader];
        moment.takenBefore = m_readings++;
        return moment;
    }

    const TrueState& realAt(ReadingMoment moment) {
        if (!m_real) {
            m_real = m_building.stateAt(m_game.state, moment);
        }
        return *m_real;
    }

    /// The flow that the meter and the valve's table give at a setting.
    double readFlow_m3s(std::size_t branch) {
        const ReadingMoment moment = nextMoment(branch);
        const auto answer = m_building.readDp(realAt(moment), m_game.state, branch, moment);
        const auto& characteristic = *m_project.characteristicOf(m_project.branches()[branch]);
        const double flow_m3s = curve::valveFlow(characteristic.coefficient(setting(branch)), answer.dp.value,
                                                 m_project.fluid().density())
                                    .si();
        m_read[branch] = VolumeFlow::si(flow_m3s);
        return flow_m3s;
    }

    double totalByPumpCurve_m3s() {
        const ReadingMoment moment = nextMoment(m_design.size());
        const auto rise = m_building.readPumpRise(realAt(moment), moment);
        const auto* curve = m_project.pumpCurve(m_project.pumps()[0].id);
        const auto flow = curve->flowAtHead(m_project.fluid().head(rise.value));
        return flow ? flow->si() : 0.0;
    }

    quantity::Setting setting(std::size_t branch) const {
        const project::Branch& record = m_project.branches()[branch];
        const auto found = m_game.state.settings.find(record.id);
        return found == m_game.state.settings.end() ? m_project.characteristicOf(record)->fullyOpen()
                                                    : found->second;
    }

    void turn(const project::Branch& branch, quantity::Setting to) {
        m_game.state.settings[branch.id] = to;
        m_real.reset();
    }

    void survey() {
        for (std::size_t branch = 0; branch < m_design.size(); ++branch) {
            const bool isWanted = m_rules.isByGroups || m_project.tree().isTerminal(branch);
            if (isWanted && hasValve(branch)) {
                readFlow_m3s(branch);
            }
        }
        m_game.passes.push_back({m_moves, m_readings, outcomeOf(m_building, m_game.state, m_readings)});
        std::fill(m_looks.begin(), m_looks.end(), 0);
    }

    /// Whether every terminal's share reads within the band.
    bool isWithin(double bandFraction) const {
        VolumeFlow total;
        const auto terminals = m_project.tree().terminals();
        for (const std::size_t terminal : terminals) {
            total += m_read[terminal];
        }
        return std::all_of(terminals.begin(), terminals.end(), [&](std::size_t terminal) {
            const double ofTarget = (m_read[terminal] / total) / (m_design[terminal] / m_designTotal);
            return std::abs(ofTarget - 1) <= bandFraction;
        });
    }

    double ofDesign(std::size_t branch) const { return m_read[branch] / m_design[branch]; }

    void workGroup(std::vector<std::size_t>& group) {
        // In the first pass the least supplied member becomes the reference for good: its valve stays open.
        if (m_game.passes.size() == 1) {
            for (const std::size_t member : group) {
                readFlow_m3s(member);
            }
            std::sort(group.begin(), group.end(),
                      [&](std::size_t a, std::size_t b) { return ofDesign(a) > ofDesign(b); });
        } else {
            std::sort(group.begin(), group.end() - 1,
                      [&](std::size_t a, std::size_t b) { return ofDesign(a) > ofDesign(b); });
        }
        const std::size_t reference = group.back();
        for (const std::size_t member : group) {
            if (member != reference) {
                workValve(member, reference, group);
            }
        }
    }

    /// The flow that the member should have, as the method sees it now.
    double aim_m3s(std::size_t member, std::size_t reference, double others_m3s, double othersDesign_m3s) {
        switch (m_rules.aim) {
            case ClassicalAim::ReferenceRatio:
                return m_design[member].si() * readFlow_m3s(reference) / m_design[reference].si();
            case ClassicalAim::SumOfBranches:
                // Its share of all the group's flow: others over their design.
                return m_design[member].si() * others_m3s / othersDesign_m3s;
            case ClassicalAim::PumpCurveTotal:
                return totalByPumpCurve_m3s() * (m_design[member] / m_designTotal);
        }
        return 0;
    }

    /// Turns the valve until its flow reads nearest to the aim: halving the way between too open and too far
    /// shut, as many tries as the scale has steps for.
    void workValve(std::size_t member, std::size_t reference, const std::vector<std::size_t>& group) {
        double others_m3s = 0;
        double othersDesign_m3s = 0;
        if (m_rules.aim == ClassicalAim::SumOfBranches) {
            for (const std::size_t other : group) {
                if (other != member) {
                    others_m3s += readFlow_m3s(other);
                    othersDesign_m3s += m_design[other].si();
                }
            }
        }
        const auto excess = [&]() {
            const double aim = aim_m3s(member, reference, others_m3s, othersDesign_m3s);
            return readFlow_m3s(member) / aim - 1;
        };
        const double found = excess();
        if (std::abs(found) <= m_rules.band.si() / 2) {
            return;
        }
        const project::Branch& branch = m_project.branches()[member];
        const auto& characteristic = *m_project.characteristicOf(branch);
        const quantity::Setting before = setting(member);
        quantity::Setting shut = found > 0 ? characteristic.lowest() : before;
        quantity::Setting open = found > 0 ? before : characteristic.fullyOpen();
        quantity::Setting best = before;
        double least = std::abs(found);
        while (open - shut > m_building.plan().settingStep * 1.5) {
            const quantity::Setting middle = m_building.onScale((open + shut) * 0.5, member);
            turn(branch, middle);
            const double now = excess();
            if (std::abs(now) < least) {
                least = std::abs(now);
                best = middle;
            }
            if (std::abs(now) < m_rules.band.si() / 5) {
                break;
            }
            (now > 0 ? open : shut) = middle;
        }
        turn(branch, best);
        m_moves += best == before ? 0 : 1;
    }

    const Building& m_building;
    const ClassicalRules& m_rules;
    const project::Project& m_project;
    std::vector<VolumeFlow> m_design;
    std::vector<VolumeFlow> m_read;  ///< newest reading by branch
    VolumeFlow m_designTotal;
    std::vector<std::vector<std::size_t>> m_groups;
    ClassicalGame m_game;
    std::optional<TrueState> m_real;  ///< since the last turn
    int m_moves = 0;
    int m_readings = 0;
    std::vector<int> m_looks;  ///< readings by branch within the pass, and of the gauges
};

}  // namespace

ClassicalGame playClassical(const Building& building, const ClassicalRules& rules) {
    return Player(building, rules).play();
}

}  // namespace ww::practice
