#include "core/balancing/detail/round_numbers.h"

#include <algorithm>
#include <cmath>

#include "core/base/expects.h"
#include "core/base/root_sum_square.h"

namespace ww::balancing::detail {

namespace {

using project::Branch;
using project::BranchTree;
using project::Project;

/// What each branch adds to the total.
struct Sums {
    std::vector<std::optional<double>> covered_m3s;  ///< of children where all are known, else own
    std::vector<double> coveredSquare;               ///< squared reading uncertainty of that
};

void fillDesign(const Project& project, const BranchTree& tree, RoundNumbers& out) {
    const std::vector<VolumeFlow> design = project::designFlows(project);
    const auto order = tree.topDown();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        BranchResult& result = out.branches[*at];
        const Branch& branch = project.branches()[*at];
        result.branch = *at;
        result.isTerminal = tree.isTerminal(*at);
        result.isSelfActing = isSelfActing(branch);
        result.isMatchable = result.isTerminal;
        for (const std::size_t child : tree.children(*at)) {
            result.isMatchable = result.isMatchable || out.branches[child].isMatchable;
        }
        result.isMatchable = result.isMatchable && !result.isSelfActing;
        result.designFlow = design[*at];
        if (result.isTerminal) {
            out.totalDesign += result.designFlow;
        }
    }
    for (std::size_t i = 0; i < out.branches.size(); ++i) {
        if (BranchResult& result = out.branches[i]; !project.branches()[i].isInLoop) {
            result.branch = i;
            result.isInLoop = false;
            result.isTerminal = false;
            result.isMatchable = false;
        }
    }
}

void fillSetting(const Project& project, const Branch& branch, const BranchReadings& readings,
                 const EarlierReading& earlier, BranchResult& result) {
    result.setting = settingStanding(project, branch, readings, earlier);
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    if (curve != nullptr && result.setting) {
        result.isFullyOpen =
            *result.setting >= curve->fullyOpen() || isSameSetting(*result.setting, curve->fullyOpen());
        result.isShut = *result.setting <= curve->lowest() || isSameSetting(*result.setting, curve->lowest());
    }
}

void takeFlow(const BranchFlow& flow, BranchResult& result) {
    result.source = flow.source;
    result.flow = flow.flow;
    result.flowLow = flow.low;
    result.flowHigh = flow.high;
    if (flow.flow) {
        result.flowUncertainty = flow.uncertainty;
        result.readingUncertainty = flow.readingUncertainty;
    }
}

void fillOwnFlow(const Project& project, RoundNumbers& out, std::size_t index, bool fillGaps) {
    const Branch& branch = project.branches()[index];
    const BranchReadings& now = out.readings[index];
    const EarlierReading& earlier = out.earlier[index];
    BranchResult& result = out.branches[index];
    fillSetting(project, branch, now, earlier, result);
    const BranchReadings* counting = &now;
    std::optional<Setting> setting = settingRead(project, branch, now, earlier);
    if (fillGaps && !now.hasValue() && earlier.readings.counting != nullptr) {
        counting = &earlier.readings;
        setting = earlier.readAtSetting;
        result.isFromEarlierRound = true;
        if (now.counting != nullptr) {
            result.unreadable = now.counting->id;
        }
    } else if (now.counting == nullptr) {
        return;
    }
    takeFlow(branchFlow(project, branch, *counting, setting), result);
    result.dp = counting->dp();
    if (counting->dpCount > 1 && counting->dpMean.si() != 0) {
        result.dpRepeatability =
            Ratio::si(std::abs(0.5 * ((counting->dpHigh - counting->dpLow) / counting->dpMean)));
    }
    result.readAt = counting->counting->time;
    result.reading = counting->counting->id;
}

/// Flows of groups from their children, and what covers the total.
Sums fillSums(const BranchTree& tree, RoundNumbers& out) {
    const std::size_t count = out.branches.size();
    Sums sums{std::vector<std::optional<double>>(count), std::vector<double>(count, 0.0)};
    const auto order = tree.topDown();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        BranchResult& result = out.branches[*at];
        const auto children = tree.children(*at);
        double flow_m3s = 0;
        double readingSquare = 0;
        double wholeSquare = 0;
        double coveredFlow_m3s = 0;
        bool hasAll = !children.empty();
        bool isCovered = !children.empty();
        for (const std::size_t child : children) {
            const BranchResult& part = out.branches[child];
            hasAll = hasAll && part.flow.has_value();
            if (part.flow) {
                flow_m3s += part.flow->si();
                readingSquare += part.readingUncertainty->si() * part.readingUncertainty->si();
                wholeSquare += part.flowUncertainty->si() * part.flowUncertainty->si();
            }
            isCovered = isCovered && sums.covered_m3s[child].has_value();
            coveredFlow_m3s += sums.covered_m3s[child].value_or(0.0);
            sums.coveredSquare[*at] += sums.coveredSquare[child];
        }
        if (hasAll && (!result.flow || result.source == FlowSource::Range)) {
            result.source = FlowSource::SumOfChildren;
            result.flow = VolumeFlow::si(flow_m3s);
            result.readingUncertainty = VolumeFlow::si(std::sqrt(readingSquare));
            result.flowUncertainty = VolumeFlow::si(std::sqrt(wholeSquare));
            result.flowLow.reset();
            result.flowHigh.reset();
        }
        if (isCovered) {
            sums.covered_m3s[*at] = coveredFlow_m3s;
        } else if (result.flow) {
            const double u_m3s = result.readingUncertainty->si();
            sums.covered_m3s[*at] = result.flow->si();
            sums.coveredSquare[*at] = u_m3s * u_m3s;
        }
    }
    return sums;
}

/// Total flow, and the flow that shares are taken of.
std::optional<double> shareBase_m3s(const BranchTree& tree, const Sums& sums, RoundNumbers& out,
                                    bool fillGaps) {
    double total_m3s = 0;
    double square = 0;
    bool isCovered = !tree.roots().empty();
    double known_m3s = 0;
    double knownDesign_m3s = 0;
    for (const std::size_t root : tree.roots()) {
        isCovered = isCovered && sums.covered_m3s[root].has_value();
        total_m3s += sums.covered_m3s[root].value_or(0.0);
        square += sums.coveredSquare[root];
    }
    out.totalUncertainty = VolumeFlow::si(std::sqrt(square));
    if (isCovered) {
        out.total = VolumeFlow::si(total_m3s);
        return total_m3s;
    }
    if (!fillGaps) {
        return std::nullopt;
    }
    for (const std::size_t terminal : tree.terminals()) {
        if (out.branches[terminal].flow) {
            known_m3s += out.branches[terminal].flow->si();
            knownDesign_m3s += out.branches[terminal].designFlow.si();
        }
    }
    if (knownDesign_m3s <= 0) {
        return std::nullopt;
    }
    return known_m3s * out.totalDesign.si() / knownDesign_m3s;
}

void fillShares(RoundNumbers& out, std::optional<double> base_m3s) {
    const double totalSquare = out.totalUncertainty.si() * out.totalUncertainty.si();
    for (BranchResult& result : out.branches) {
        if (out.totalDesign.si() > 0) {
            result.targetShare = Ratio::si(result.designFlow / out.totalDesign);
        }
        if (!result.flow) {
            continue;
        }
        if (result.designFlow.si() > 0) {
            result.ofDesign = Ratio::si(*result.flow / result.designFlow);
        }
        if (!base_m3s || *base_m3s <= 0) {
            continue;
        }
        const double share = result.flow->si() / *base_m3s;
        result.share = Ratio::si(share);
        if (result.targetShare.si() <= 0) {
            continue;
        }
        result.ofTarget = Ratio::si(share / result.targetShare.si());
        // share = q / total, and q is a part of the total unless its own valve was read for it: then both
        // vary.
        const double u_m3s = result.readingUncertainty->si();
        const bool isPart = result.isTerminal || result.source == FlowSource::SumOfChildren;
        const double ownPart = isPart ? (1 - share) * u_m3s : u_m3s;
        const double rest = isPart ? std::max(0.0, totalSquare - u_m3s * u_m3s) : totalSquare;
        result.ofTargetUncertainty = Ratio::si(base::rootSumSquare(ownPart, share * std::sqrt(rest)) /
                                               *base_m3s / result.targetShare.si());
    }
}

}  // namespace

bool isUnthrottled(const Project& project, const BranchResult& branch) {
    return branch.isFullyOpen || !project.branches()[branch.branch].valve;
}

RoundNumbers ownNumbers(const Project& project, const project::Round* round, LookBack lookBack) {
    RoundNumbers out;
    out.round = round;
    out.branches.resize(project.branches().size());
    fillDesign(project, project.tree(), out);
    if (round != nullptr) {
        out.readings = readingsByBranch(project, round->id);
        out.earlier = earlierReadings(project, *round, out.readings, lookBack);
    } else {
        out.readings.resize(out.branches.size());
        out.earlier.resize(out.branches.size());
    }
    for (std::size_t i = 0; i < out.branches.size(); ++i) {
        fillOwnFlow(project, out, i, lookBack == LookBack::ToFillGaps);
    }
    return out;
}

void readAgain(const Project& project, LookBack lookBack, std::span<const std::size_t> branches,
               RoundNumbers& numbers) {
    EXPECTS(numbers.round != nullptr);
    readAgain(project, numbers.round->id, branches, numbers.readings);
    lookBackAgain(project, *numbers.round, numbers.readings, lookBack, branches, numbers.earlier);
    for (const std::size_t branch : branches) {
        BranchResult& result = numbers.branches[branch];
        BranchResult anew;
        anew.branch = branch;
        anew.isTerminal = result.isTerminal;
        anew.isSelfActing = result.isSelfActing;
        anew.isMatchable = result.isMatchable;
        anew.designFlow = result.designFlow;
        result = anew;
        fillOwnFlow(project, numbers, branch, lookBack == LookBack::ToFillGaps);
    }
}

void addUp(const Project& project, LookBack lookBack, RoundNumbers& numbers) {
    const BranchTree& tree = project.tree();
    const Sums sums = fillSums(tree, numbers);
    fillShares(numbers, shareBase_m3s(tree, sums, numbers, lookBack == LookBack::ToFillGaps));
    numbers.groups = groupResults(project, numbers.branches);
    numbers.index = indexCircuit(project, numbers.branches, numbers.groups);
}

RoundNumbers roundNumbers(const Project& project, const project::Round* round, LookBack lookBack) {
    RoundNumbers out = ownNumbers(project, round, lookBack);
    addUp(project, lookBack, out);
    return out;
}

}  // namespace ww::balancing::detail
