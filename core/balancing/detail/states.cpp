#include <cmath>

#include "core/balancing/detail/judgment.h"
#include "core/project/earlier_design.h"
#include "core/project/review.h"

namespace ww::balancing::detail {

namespace {

using project::Project;

/// A limit is met when it is reached; this is the noise of a chain of computing with doubles.
constexpr double kRounding = 1e-9;

State selfActingState(const Project& project, const RoundNumbers& numbers, const BranchResult& result) {
    const project::Branch& branch = project.branches()[result.branch];
    const BranchReadings& readings = numbers.readings[result.branch];
    if (readings.dpCount > 0 && !readings.counting->flow) {
        const project::ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
        const int place = placeInRange(valve, readings.dpMean);
        return place < 0 ? State::Short : place > 0 ? State::Over : State::OnShare;
    }
    if (!result.ofDesign) {
        return State::NotRead;
    }
    const double off = result.ofDesign->si() - 1;
    if (off < project.job().toleranceLow.value.si() - kRounding) {
        return State::Short;
    }
    return off > project.job().toleranceHigh.value.si() + kRounding ? State::Over : State::OnShare;
}

bool wasOnShareUnmoved(const Project& project, const BranchResult& now, const RoundNumbers* before) {
    if (before == nullptr) {
        return false;
    }
    const BranchResult& then = before->branches[now.branch];
    const bool isUnmoved = then.setting.has_value() == now.setting.has_value() &&
                           (!now.setting || isSameSetting(*now.setting, *then.setting));
    return isUnmoved && then.ofTarget && isWithinBand(project, *then.ofTarget);
}

State matchedState(const Project& project, const BranchResult& result, Before& before) {
    if (!result.ofTarget) {
        return State::NotRead;
    }
    if (isWithinBand(project, *result.ofTarget)) {
        return State::OnShare;
    }
    const bool isShort = result.ofTarget->si() < 1;
    if (isShort ? result.isFullyOpen : result.isShut) {
        return State::AtStop;
    }
    if (wasOnShareUnmoved(project, result, before.numbers())) {
        return State::Drifted;
    }
    return isShort ? State::Short : State::Over;
}

}  // namespace

const project::Round* previousRound(const Project& project, const project::Round& round) {
    return project::lastOwnRound(project, round.number - 1);
}

Before::Before(const Project& project, const project::Round* round, RoundMemory* memory)
    : m_project(project),
      m_round(round != nullptr ? previousRound(project, *round) : nullptr),
      m_memory(memory) {}

const RoundNumbers* Before::numbers() {
    if (m_round == nullptr) {
        return nullptr;
    }
    if (m_memory != nullptr) {
        return &m_memory->before(m_project, *m_round);
    }
    if (!m_own) {
        m_then = project::asJudged(m_project, *m_round);
        m_own = roundNumbers(m_then ? *m_then : m_project, m_round, LookBack::ForSettings);
    }
    return &*m_own;
}

bool isWithinBand(const Project& project, Ratio ofTarget) {
    return std::abs(ofTarget.si() - 1) <= project.job().matchingBand.value.si() + kRounding;
}

void fillStates(const Project& project, RoundNumbers& numbers, Before& before,
                const std::vector<bool>& isDoubtful) {
    for (BranchResult& result : numbers.branches) {
        const bool isRead = numbers.readings[result.branch].hasValue();
        if (isDoubtful[result.branch]) {
            result.state = State::Doubtful;
        } else if (!isRead && (result.isTerminal || result.source == FlowSource::None)) {
            result.state = State::NotRead;
        } else if (result.isSelfActing) {
            result.state = selfActingState(project, numbers, result);
        } else {
            result.state = matchedState(project, result, before);
        }
    }
}

}  // namespace ww::balancing::detail
