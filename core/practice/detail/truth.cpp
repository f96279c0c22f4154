#include "core/practice/detail/truth.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/practice/random_numbers.h"

namespace ww::practice::detail {

namespace {

enum TruthStream : std::uint64_t { kLosses = 3, kTables = 4, kObstructions = 5, kFaults = 6 };

/// Takes terminals out of a list in random order.
class Lots {
  public:
    Lots(std::vector<std::size_t> from, RandomNumbers& random) : m_left(std::move(from)), m_random(random) {}
    bool isEmpty() const { return m_left.empty(); }
    std::size_t draw() {
        const std::size_t at = m_random.below(m_left.size());
        const std::size_t drawn = m_left[at];
        m_left.erase(m_left.begin() + static_cast<std::ptrdiff_t>(at));
        return drawn;
    }

  private:
    std::vector<std::size_t> m_left;
    RandomNumbers& m_random;
};

double factorOf(FaultKind kind, RandomNumbers& random) {
    switch (kind) {
        case FaultKind::AirInCoil:
            return 2.5;
        case FaultKind::ControlValve:
            return 2;
        case FaultKind::CloggingStrainer:
            return 1.6;  // After as many readings as there are terminals.
        case FaultKind::SettingMisread:
            return -1;
        case FaultKind::DpHalved:
            return 0.5;
        case FaultKind::DpDoubled:
            return 2;
        case FaultKind::WrongUnit: {
            // One kPa in psi, mbar, inches and feet of water.
            constexpr std::array kSlips{0.145038, 10.0, 4.01463, 0.334553};
            return kSlips[random.below(kSlips.size())];
        }
    }
    return 1;
}

bool isSlip(FaultKind kind) {
    return kind == FaultKind::SettingMisread || kind == FaultKind::WrongUnit || kind == FaultKind::DpHalved ||
           kind == FaultKind::DpDoubled;
}

}  // namespace

HiddenTruth drawTruth(const BuildingPlan& plan, std::uint64_t seed, const project::Project& design) {
    HiddenTruth truth;
    RandomNumbers losses{seed, kLosses};
    RandomNumbers tables{seed, kTables};
    const DesignErrors& errors = plan.designErrors;
    const double common = std::exp(errors.commonRunFactor * losses.normalScore());
    truth.pumpFactor = std::exp(errors.pumpFactor * losses.normalScore());
    for (const project::Branch& branch : design.branches()) {
        TrueBranch made;
        made.runLoss = branch.runLoss->value * (common * std::exp(errors.runFactor * losses.normalScore()));
        const double circuit = std::exp(errors.circuitFactor * losses.normalScore());
        if (branch.circuitLoss) {
            made.circuitLoss = branch.circuitLoss->value * circuit;
        }
        made.tableBiasFactor = std::exp(plan.tableBias.si() * tables.normalScore());
        made.tableTilt_ratio = plan.tableTilt.si() * tables.normalScore();
        truth.branches.push_back(made);
    }
    const auto terminals = design.tree().terminals();
    const std::vector<std::size_t> all(terminals.begin(), terminals.end());
    if (plan.obstructedOneIn > 0) {
        RandomNumbers random{seed, kObstructions};
        Lots lots(all, random);
        const std::size_t count =
            std::max<std::size_t>(1, all.size() / static_cast<std::size_t>(plan.obstructedOneIn));
        for (std::size_t i = 0; i < count && !lots.isEmpty(); ++i) {
            TrueBranch& branch = truth.branches[lots.draw()];
            branch.circuitLoss = branch.circuitLoss * 3.0;
        }
    }
    RandomNumbers random{seed, kFaults};
    Lots lots(all, random);
    for (const FaultKind kind : plan.faults) {
        if (lots.isEmpty()) {
            break;
        }
        PlantedFault fault;
        fault.kind = kind;
        fault.branch = lots.draw();
        fault.round = isSlip(kind) ? 1 + static_cast<int>(random.below(2)) : 0;
        fault.factor = factorOf(kind, random);
        truth.faults.push_back(fault);
    }
    return truth;
}

}  // namespace ww::practice::detail
