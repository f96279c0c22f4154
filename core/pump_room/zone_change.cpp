#include "core/pump_room/zone_change.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>
#include <unordered_set>

#include "core/project/edit_label.h"

namespace ww::pump_room {

namespace {

using project::Branch;
using project::Project;
using quantity::PressureDifference;
using quantity::Unit;

/// Flows at which a branch's losses are stated: its own, and everything downstream of its take-off.
struct StatedFlows {
    VolumeFlow own;
    VolumeFlow carried;
};

std::unordered_map<Id, StatedFlows> statedFlows(const Project& project) {
    const std::vector<VolumeFlow> design = project::designFlows(project);
    std::unordered_map<Id, StatedFlows> flows;
    const auto takeGroup = [&](std::span<const std::size_t> members) {
        VolumeFlow carried;
        for (auto at = members.rbegin(); at != members.rend(); ++at) {
            carried += design[*at];
            flows[project.branches()[*at].id] = {design[*at], carried};
        }
    };
    takeGroup(project.tree().roots());
    for (const std::size_t branch : project.tree().topDown()) {
        takeGroup(project.tree().children(branch));
    }
    return flows;
}

/// The loss at another flow; digits enough that nothing is lost in a solve.
quantity::Measured<PressureDifference> restated(const quantity::Measured<PressureDifference>& loss,
                                                double part) {
    constexpr int kDecimals = 9;
    const double factor = part * part;
    return {base::Decimal::fromNumber(loss.digits.value() * factor, kDecimals), loss.unit,
            loss.value * factor};
}

class Changer {
  public:
    explicit Changer(const Project& project) : m_before(project) { m_out.project = project; }

    ChangedJob take(const std::vector<ZoneChange>& changes) {
        if (changes.empty()) {
            m_out.faults.push_back({&kZoneNothing, "", {}});
        }
        for (const ZoneChange& change : changes) {
            std::visit([&](const auto& one) { apply(one); }, change);
        }
        if (m_out.faults.empty()) {
            restateLosses();
            writeEdit();
        }
        return std::move(m_out);
    }

  private:
    Project& job() { return m_out.project; }

    void apply(const AddBranch& change) {
        if (job().branchTagged(change.branch.tag) != nullptr || job().branches().contains(change.branch.id)) {
            m_out.faults.push_back({&kZoneExists, change.branch.tag, {}});
            return;
        }
        if (change.branch.parent && !job().branches().contains(*change.branch.parent)) {
            m_out.faults.push_back({&kZoneUnknown, change.branch.tag, {}});
            return;
        }
        job().put(change.branch);
    }

    void apply(const RemoveBranch& change) {
        if (!job().branches().contains(change.branch)) {
            m_out.faults.push_back({&kZoneUnknown, "", {}});
            return;
        }
        std::vector<Id> doomed{change.branch};
        for (std::size_t i = 0; i < doomed.size(); ++i) {
            for (const std::size_t child : job().tree().children(job().branches().indexOf(doomed[i]))) {
                doomed.push_back(job().branches()[child].id);
            }
        }
        handRunOn(change.branch);
        for (auto at = doomed.rbegin(); at != doomed.rend(); ++at) {
            removeOne(*at);
        }
    }

    /// The pipe to a take-off that goes still leads to the next one.
    void handRunOn(const Id& id) {
        const std::size_t index = job().branches().indexOf(id);
        const std::size_t parent = job().tree().parent(index);
        const auto group =
            parent == project::BranchTree::kNone ? job().tree().roots() : job().tree().children(parent);
        const auto next = std::find(group.begin(), group.end(), index) + 1;
        if (next == group.end()) {
            return;
        }
        Branch other = job().branches()[*next];
        m_out.mergedRuns.push_back({id, other.id});
        // Until restateLosses() all losses are stated at the flows of the job before the changes.
        const auto flows = statedFlows(m_before);
        const auto from = flows.find(id);
        const auto to = flows.find(other.id);
        const auto& loss = job().branches()[index].runLoss;
        if (!loss || from == flows.end() || to == flows.end()) {
            return;
        }
        const VolumeFlow here = from->second.carried;
        const VolumeFlow there = to->second.carried;
        if (here.si() <= 0 || there.si() <= 0) {
            return;
        }
        // At the flow that the next one's own run is stated at.
        auto added = restated(*loss, there / here);
        if (other.runLoss) {
            constexpr int kDecimals = 6;
            const PressureDifference sum = added.value + other.runLoss->value;
            added = {base::Decimal::fromNumber(sum.in(Unit::Pascal), kDecimals), Unit::Pascal, sum};
        }
        other.runLoss = added;
        job().put(std::move(other));
    }

    void removeOne(const Id& id) {
        std::vector<Id> readings;
        for (const project::Reading& reading : job().readings()) {
            if (reading.branch == id) {
                readings.push_back(reading.id);
            }
        }
        if (!readings.empty()) {
            m_out.notes.push_back({&kZoneHasReadings, job().branches().at(id).tag, {}});
            m_canBeKept = false;
        }
        for (const Id& reading : readings) {
            job().eraseReading(reading);
        }
        job().eraseBranch(id);
        m_erased.push_back(id);
    }

    void apply(const ChangeFlow& change) {
        const Branch* branch = job().branches().find(change.branch);
        if (branch == nullptr) {
            m_out.faults.push_back({&kZoneUnknown, "", {}});
            return;
        }
        if (change.flow.value.si() <= 0) {
            m_out.faults.push_back({&kZoneFlow, branch->tag, {}});
            return;
        }
        Branch other = *branch;
        other.designFlow = change.flow;
        job().put(std::move(other));
    }

    void restateLosses() {
        const auto before = statedFlows(m_before);
        const auto after = statedFlows(job());
        std::vector<Branch> restatedBranches;
        std::size_t moved = 0;
        for (const Branch& branch : job().branches()) {
            const auto old = before.find(branch.id);
            if (old == before.end()) {
                continue;
            }
            const StatedFlows now = after.at(branch.id);
            Branch other = branch;
            if (other.circuitLoss && old->second.own.si() > 0 && now.own != old->second.own) {
                other.circuitLoss = restated(*other.circuitLoss, now.own / old->second.own);
            }
            if (other.runLoss && old->second.carried.si() > 0 && now.carried != old->second.carried) {
                other.runLoss = restated(*other.runLoss, now.carried / old->second.carried);
            }
            const Branch& former = m_before.branches().at(branch.id);
            moved += other.runLoss == former.runLoss && other.circuitLoss == former.circuitLoss ? 0 : 1;
            if (!(other == branch)) {
                restatedBranches.push_back(std::move(other));
            }
        }
        if (moved > 0) {
            m_out.notes.push_back({&kZoneLossesMoved, "", {std::to_string(moved)}});
        }
        for (Branch& branch : restatedBranches) {
            job().put(std::move(branch));
        }
    }

    void writeEdit() {
        if (!m_canBeKept) {
            return;
        }
        m_out.edit.label = project::label(project::labels::kZones);
        for (const Branch& branch : job().branches()) {
            const Branch* old = m_before.branches().find(branch.id);
            if (old == nullptr || !(*old == branch)) {
                m_out.edit.put.push_back(branch);
            }
        }
        for (const Id& id : m_erased) {
            if (m_before.branches().contains(id)) {
                m_out.edit.erase.push_back({project::RecordKind::Branch, id});
            }
        }
    }

    const Project& m_before;
    ChangedJob m_out;
    std::vector<Id> m_erased;
    bool m_canBeKept = true;
};

bool isNamed(const Id& branch, const std::vector<ZoneChange>& changes) {
    return std::any_of(changes.begin(), changes.end(), [&](const ZoneChange& change) {
        const auto* flow = std::get_if<ChangeFlow>(&change);
        return flow != nullptr && flow->branch == branch;
    });
}

/// A flow in the unit of another one, with the fewest decimals from that one's on that say it, at most four.
quantity::Measured<VolumeFlow> typedNear(const quantity::Measured<VolumeFlow>& like, VolumeFlow flow) {
    constexpr int kMostDecimals = 4;
    constexpr double kRounding = 1e-7;
    const double value = flow.in(like.unit);
    int decimals = like.digits.decimals();
    while (decimals < kMostDecimals &&
           std::abs(base::Decimal::fromNumber(value, decimals).value() - value) > kRounding) {
        ++decimals;
    }
    return quantity::measured<VolumeFlow>(base::Decimal::fromNumber(value, decimals), like.unit);
}

}  // namespace

std::vector<FollowingFlow> followingFlows(const Project& project, const std::vector<ZoneChange>& changes) {
    const ChangedJob job = changed(project, changes);
    if (!job.faults.empty()) {
        return {};
    }
    const std::vector<VolumeFlow> before = project::designFlows(project);
    std::vector<VolumeFlow> after = project::designFlows(job.project);
    const project::BranchTree& tree = job.project.tree();
    std::vector<FollowingFlow> following;
    const auto order = tree.topDown();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        const Branch& branch = job.project.branches()[*at];
        const auto old = project.branches().findIndex(branch.id);
        if (tree.isTerminal(*at) || (old && project.tree().isTerminal(*old))) {
            continue;
        }
        VolumeFlow fed;
        for (const std::size_t child : tree.children(*at)) {
            fed += after[child];
        }
        if (!branch.designFlow) {
            after[*at] = fed;
            continue;
        }
        if (!old || isNamed(branch.id, changes)) {
            continue;
        }
        VolumeFlow fedBefore;
        for (const std::size_t child : project.tree().children(*old)) {
            fedBefore += before[child];
        }
        const double more_m3s = fed.si() - fedBefore.si();
        auto flow = typedNear(*branch.designFlow, VolumeFlow::si(branch.designFlow->value.si() + more_m3s));
        if (flow.value.si() > 0 && flow.digits.value() != branch.designFlow->digits.value()) {
            after[*at] = flow.value;
            following.push_back({{branch.id, flow}, *branch.designFlow});
        }
    }
    std::reverse(following.begin(), following.end());
    return following;
}

ChangedJob changed(const Project& project, const std::vector<ZoneChange>& changes) {
    return Changer(project).take(changes);
}

}  // namespace ww::pump_room
