#include "core/practice/detail/design.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <string>

#include "core/base/fault.h"
#include "core/base/term.h"
#include "core/curve/valve_flow.h"
#include "core/practice/random_numbers.h"

namespace ww::practice::detail {

namespace {

using project::Branch;
using project::Project;
using quantity::measured;
using quantity::Unit;
using quantity::VolumeFlow;

/// Streams of random numbers of one seed.
enum Stream : std::uint64_t { kIds = 1, kDesign = 2 };
/// Numbers of ids; branches and valves count on from theirs.
enum IdNumber : std::uint64_t { kJob = 1, kPump, kMeter, kGauge, kTrainee, kValves = 100, kBranches = 1000 };

base::Decimal number(double dimensionless, int decimals) {
    return base::Decimal::fromNumber(dimensionless, decimals);
}

template <class Q>
quantity::Measured<Q> typed(double dimensionless, int decimals, Unit unit) {
    return measured<Q>(number(dimensionless, decimals), unit);
}

class DesignDraft {
  public:
    DesignDraft(const BuildingPlan& plan, std::uint64_t seed, const base::Wording& wording)
        : m_plan(plan), m_seed(seed), m_wording(wording), m_random{seed, kDesign} {
        putJob();
        addGroup(std::nullopt, "", 0);
        putBranches();
        putPump();
    }

    Project take() { return std::move(m_project); }

  private:
    using Id = base::Id;
    Id id(std::uint64_t serial) const { return seededId(m_seed, serial); }

    /// Words of the program as the desk that makes the job writes them.
    std::string say(const char* words) const { return m_wording ? m_wording(words) : words; }

    double between(double low, double high) { return low + (high - low) * m_random.uniformFraction(); }

    void putJob() {
        project::Job job;
        job.id = id(kJob);
        job.name = base::filledIn(say(base::term("Practice building {1}")), {std::to_string(m_seed)});
        job.site = say(base::term("Simulated, no real plant"));
        job.units = project::UnitSystem::SI;
        job.temperature = typed<quantity::Temperature>(12, 0, Unit::Celsius);
        job.concentration = typed<Ratio>(0, 0, Unit::Percent);
        job.toleranceLow = typed<Ratio>(-10, 0, Unit::Percent);
        job.toleranceHigh = typed<Ratio>(10, 0, Unit::Percent);
        job.matchingBand = typed<Ratio>(5, 0, Unit::Percent);
        m_project.put(job);
        m_project.put(project::Person{id(kTrainee), say(base::term("Trainee"))});
        m_project.put(
            meter(kMeter, "DP-1", base::term("dp meter"), m_plan.meterNoise, m_plan.meterResolution));
        m_project.put(
            meter(kGauge, "G-1", base::term("pump gauge"), m_plan.gaugeNoise, m_plan.gaugeResolution));
    }

    project::Instrument meter(IdNumber serial, const char* tag, const char* kind, Ratio noise,
                              PressureDifference resolution) const {
        project::Instrument made;
        made.id = id(serial);
        made.tag = tag;
        made.kind = say(kind);
        made.serial = say(base::term("practice"));
        // Without a range: such a meter sets its range by itself.
        made.accuracy = typed<Ratio>(100 * noise.si(), 2, Unit::Percent);
        // A rounded value is uniformly distributed within its resolution (JCGM 100:2008, 4.3.7).
        made.accuracyFloor =
            typed<PressureDifference>(resolution.in(Unit::Kilopascal) / std::sqrt(12.0), 3, Unit::Kilopascal);
        return made;
    }

    /// Members of a group and all below them, in walking order; gives their design flow in m3/h.
    double addGroup(std::optional<std::size_t> parent, const std::string& prefix, std::size_t level) {
        static constexpr std::array<const char*, 3> kLetters{"T", "B", "R"};
        const std::size_t levelsBelow = m_plan.shape.size() - 1 - level;
        double total_m3h = 0;
        for (int i = 1; i <= m_plan.shape[level]; ++i) {
            const std::size_t at = m_branches.size();
            Branch branch;
            branch.id = id(kBranches + at);
            branch.tag = prefix + kLetters[levelsBelow] + std::to_string(i);
            branch.position = static_cast<int>(at) + 1;
            branch.side = project::Side::Return;
            if (parent) {
                branch.parent = m_branches[*parent].id;
            }
            m_branches.push_back(branch);
            m_flows_m3h.push_back(0);
            m_parents.push_back(parent);
            if (levelsBelow > 0) {
                m_flows_m3h[at] = addGroup(at, branch.tag + "-", level + 1);
            } else {
                m_flows_m3h[at] = std::round(100 * 0.3 * std::exp(between(0, std::log(5.0)))) / 100;
                m_branches[at].designFlow = typed<VolumeFlow>(m_flows_m3h[at], 2, Unit::CubicMetrePerHour);
                m_branches[at].circuitLoss = typed<PressureDifference>(between(15, 30), 1, Unit::Kilopascal);
                m_branches[at].serves = base::filledIn(say(base::term("Cooling coil {1}")), {branch.tag});
            }
            total_m3h += m_flows_m3h[at];
        }
        return total_m3h;
    }

    void putBranches() {
        for (std::size_t at = 0; at < m_branches.size(); ++at) {
            Branch& branch = m_branches[at];
            const bool isFirst = at == 0;
            // The first run holds the plant room too: strainers, boiler or chiller, headers.
            const double plant_kPa = isFirst ? between(12, 18) : 0;
            branch.runLoss = typed<PressureDifference>(plant_kPa + between(1.2, 4.5), 2, Unit::Kilopascal);
            if (branch.circuitLoss || m_plan.hasBranchValves) {
                branch.valve = valveFor(m_flows_m3h[at]);
                branch.setting = number(4, 0);
            } else {
                branch.kind = project::BranchKind::None;
            }
            m_project.put(branch);
        }
    }

    Id valveFor(double flow_m3h) {
        constexpr std::array kFullCv{1.6, 2.7, 4.6, 8.0, 14.0, 24.0, 41.0, 70.0, 120.0, 205.0, 350.0, 600.0};
        static constexpr std::array<const char*, 12> kSizes{base::term("DN 15 low"),
                                                            "DN 15",
                                                            "DN 20",
                                                            "DN 25",
                                                            "DN 32",
                                                            "DN 40",
                                                            "DN 50",
                                                            "DN 65",
                                                            "DN 80",
                                                            "DN 100",
                                                            "DN 125",
                                                            "DN 150"};
        // Share of the full coefficient at each half turn, a mildly equal-percentage shape.
        constexpr std::array kShape{0.0, 0.035, 0.09, 0.17, 0.28, 0.42, 0.59, 0.79, 1.0};
        const VolumeFlow flow = VolumeFlow::from(flow_m3h, Unit::CubicMetrePerHour);
        std::size_t size = 0;
        while (size + 1 < kFullCv.size() && dropOpen(kFullCv[size], flow) > PressureDifference::si(7000)) {
            ++size;
        }
        const Id valve = id(kValves + size);
        if (!m_project.valves().contains(valve)) {
            project::ValveModel model;
            model.id = valve;
            model.model = say(base::term("Practice valve"));
            model.size = say(kSizes[size]);
            model.accuracy = typed<Ratio>(100 * m_plan.tableBias.si(), 1, Unit::Percent);
            model.accuracyShut = typed<Ratio>(100 * m_plan.tableTilt.si(), 1, Unit::Percent);
            for (std::size_t i = 0; i < kShape.size(); ++i) {
                model.rows.push_back(
                    {number(0.5 * static_cast<double>(i), 1), number(kFullCv[size] * kShape[i], 4)});
            }
            m_project.put(model);
        }
        return valve;
    }

    PressureDifference dropOpen(double cv, VolumeFlow flow) const {
        return curve::valveDrop(quantity::FlowCoefficient::from(cv, Unit::Cv), flow,
                                m_project.fluid().density());
    }

    /// What the longest way round needs at design flow by the papers, every valve open.
    PressureDifference headNeeded() const {
        std::vector<PressureDifference> upTo(m_branches.size());
        std::map<std::optional<std::size_t>, PressureDifference> takeOff;
        PressureDifference largest;
        for (std::size_t at = 0; at < m_branches.size(); ++at) {
            const Branch& branch = m_branches[at];
            const auto parent = m_parents[at];
            const auto [run, isNew] =
                takeOff.try_emplace(parent, parent ? upTo[*parent] : PressureDifference());
            run->second += branch.runLoss->value;
            upTo[at] = run->second;
            if (branch.circuitLoss) {
                upTo[at] += branch.circuitLoss->value;
            }
            if (branch.valve) {
                upTo[at] += curve::valveDrop(m_project.characteristicOf(branch)->coefficientFullyOpen(),
                                             VolumeFlow::from(m_flows_m3h[at], Unit::CubicMetrePerHour),
                                             m_project.fluid().density());
            }
            largest = std::max(largest, upTo[at]);
        }
        return largest;
    }

    void putPump() {
        double total_m3h = 0;
        for (std::size_t at = 0; at < m_branches.size(); ++at) {
            total_m3h += m_parents[at] ? 0 : m_flows_m3h[at];
        }
        const double duty_m = m_project.fluid().head(headNeeded() * between(1.05, 1.2)).si();
        project::Pump pump;
        pump.id = id(kPump);
        pump.position = 1;
        pump.tag = "P-1";
        pump.speed = typed<quantity::RotationalSpeed>(1450, 0, Unit::RevolutionPerMinute);
        constexpr int kRows = 10;
        for (int i = 0; i < kRows; ++i) {
            const double part = 1.5 * i / (kRows - 1);
            project::PumpTableRow row;
            row.flow = typed<VolumeFlow>(part * total_m3h, 3, Unit::CubicMetrePerHour);
            row.head = typed<quantity::Head>(duty_m * (1.25 - 0.25 * part * part), 3, Unit::Metre);
            // Best efficiency near the duty point (an invented pump).
            row.efficiency = typed<Ratio>(68 * (1 - (part - 1) * (part - 1)), 1, Unit::Percent);
            pump.rows.push_back(row);
        }
        const double shaft_kW = 9.81 * duty_m * total_m3h / 3600 / 0.6;
        pump.motorPower =
            typed<quantity::Power>(std::max(0.1, std::ceil(14 * shaft_kW) / 10), 1, Unit::Kilowatt);
        m_project.put(pump);
    }

    const BuildingPlan& m_plan;
    std::uint64_t m_seed;
    const base::Wording& m_wording;
    RandomNumbers m_random;
    Project m_project;
    std::vector<Branch> m_branches;
    std::vector<double> m_flows_m3h;
    std::vector<std::optional<std::size_t>> m_parents;
};

}  // namespace

base::Id seededId(std::uint64_t seed, std::uint64_t number) {
    RandomNumbers random{seed, kIds, number};
    base::Id id;
    for (std::size_t word = 0; word < 2; ++word) {
        const std::uint64_t bits = random.next();
        for (std::size_t i = 0; i < 8; ++i) {
            id.bytes[8 * word + i] = static_cast<std::uint8_t>(bits >> (8 * i));
        }
    }
    return id;
}

project::Project makeDesign(const BuildingPlan& plan, std::uint64_t seed, const base::Wording& wording) {
    return DesignDraft(plan, seed, wording).take();
}

base::Id gaugeId(std::uint64_t seed) {
    return seededId(seed, kGauge);
}

}  // namespace ww::practice::detail
