#include "core/pump_room/what_if.h"

#include <algorithm>
#include <map>

#include "core/balancing/advice/proportional_balance.h"
#include "core/balancing/assess.h"
#include "core/project/units.h"
#include "core/pump_room/test_sheet.h"
#include "core/quantity/measured.h"
#include "core/quantity/shown_units.h"

namespace ww::pump_room {

namespace {

using project::Project;
using quantity::Unit;

class Answer {
  public:
    Answer(const Project& before, ChangedJob changed, const balancing::Resistances& learned)
        : m_before(before), m_learnedBefore(learned), m_learned(learned) {
        for (const MergedRun& merged : changed.mergedRuns) {
            handRunOn(merged);
        }
        m_out.project = std::move(changed.project);
        m_out.edit = std::move(changed.edit);
        m_out.findings = std::move(changed.notes);
    }

    WhatIf take() {
        if (const project::Round* last = m_before.lastRound()) {
            m_out.findings.push_back({&kZoneStale, "", {std::to_string(last->number)}});
        }
        takeBefore();
        takeAfter();
        return std::move(m_out);
    }

  private:
    const Project& job() const { return m_out.project; }

    /// The learned run of a take-off that is gone, added to the next one's where both were learned; else the
    /// next one's comes from the losses of the changed job, which have it already.
    void handRunOn(const MergedRun& merged) {
        const auto from = m_learned.find(merged.from);
        const auto to = m_learned.find(merged.to);
        if (to == m_learned.end() || !to->second.run) {
            return;
        }
        if (from != m_learned.end() && from->second.run) {
            to->second.run = quantity::Resistance::si(to->second.run->si() + from->second.run->si());
        } else {
            to->second.run.reset();
        }
    }

    void takeBefore() {
        const balancing::LoopState state = balancing::stateOfLastRound(job());
        balancing::PredictionResult found = balancing::predict(job(), state, m_learned);
        m_out.faults = std::move(found.faults);
        m_out.branches.resize(job().branches().size());
        for (std::size_t i = 0; i < m_out.branches.size(); ++i) {
            ZoneBranch& branch = m_out.branches[i];
            branch.branch = i;
            const auto setting = state.settings.find(job().branches()[i].id);
            if (setting != state.settings.end()) {
                branch.present = setting->second;
            }
            if (found.prediction) {
                const balancing::BranchPrediction& predicted = found.prediction->branches[i];
                branch.flowBefore = predicted.flow;
                branch.ofTargetBefore = predicted.ofTarget;
                branch.ofDesignBefore = predicted.ofDesign;
            }
        }
        m_out.before = std::move(found.prediction);
        const double low = 1 + job().job().toleranceLow.value.si();
        for (const std::size_t terminal : job().tree().terminals()) {
            const auto& share = m_out.branches[terminal].ofDesignBefore;
            if (share && share->si() < low) {
                m_out.findings.push_back(
                    {&kZoneShort, job().branches()[terminal].tag, {quantity::percentDigits(share->si(), 3)}});
            }
        }
    }

    void takeAfter() {
        const auto found = balancing::proportionalBalance(job(), balancing::LoopState{}, m_learned);
        if (!found.balance) {
            if (m_out.faults.empty()) {
                m_out.faults = found.faults;
            }
            return;
        }
        const balancing::ProportionalBalance& balance = *found.balance;
        for (const balancing::BalancedBranch& balanced : balance.branches) {
            ZoneBranch& branch = m_out.branches[balanced.branch];
            branch.setting = balanced.setting;
            const auto* curve = job().characteristicOf(job().branches()[balanced.branch]);
            branch.isFullyOpen =
                balanced.setting && curve != nullptr && *balanced.setting >= curve->fullyOpen();
            if (balanced.valveDrop && balance.ofDesign.si() > 0) {
                const double share = balance.ofDesign.si();
                branch.dp = *balanced.valveDrop / (share * share);
            }
        }
        m_out.indexPath = balance.indexPath;
        compareIndex();
        m_out.requiredHead = job().fluid().head(balance.neededAtDesign);
        takePump(balance.designFlow);
    }

    static std::string last(const std::vector<std::string>& tags) { return tags.empty() ? "-" : tags.back(); }

    void compareIndex() {
        const auto former = balancing::proportionalBalance(m_before, balancing::LoopState{}, m_learnedBefore);
        std::vector<std::string> formerTags;
        if (former.balance) {
            for (const std::size_t branch : former.balance->indexPath) {
                m_out.formerIndexPath.push_back(m_before.branches()[branch].id);
                formerTags.push_back(m_before.branches()[branch].tag);
            }
        }
        std::vector<Id> path;
        std::vector<std::string> tags;
        for (const std::size_t branch : m_out.indexPath) {
            path.push_back(job().branches()[branch].id);
            tags.push_back(job().branches()[branch].tag);
        }
        if (former.balance && path != m_out.formerIndexPath) {
            m_out.findings.push_back({&kZoneIndexMoves, "", {last(formerTags), last(tags)}});
        }
    }

    void takePump(VolumeFlow design) {
        m_out.curve = balancing::countedCurve(m_before, balancing::assessLast(m_before));
        const RunningPumps running = runningPumps(job(), 1.0, {}, m_out.curve.headFactor);
        m_out.findings.insert(m_out.findings.end(), running.faults.begin(), running.faults.end());
        if (!running.set || design.si() <= 0 || m_out.curve.basis == balancing::CurveBasis::Untrusted) {
            return;
        }
        const curve::PumpSet& set = *running.set;
        const project::Pump& pump = job().pumps()[running.pumps.front()];
        const quantity::ShownUnits units = project::shownUnits(job(), pump);
        const auto available = set.head(design);
        if (!available || !set.isWithinPoints(design)) {
            m_out.findings.push_back(
                {&energy::kDutyBeyondCurve, pump.tag, {units.text(set.members().front().curve.lastFlow())}});
            return;
        }
        m_out.headAvailable = available;
        m_out.canPump = *available >= *m_out.requiredHead * (1 - 1e-9);
        if (!m_out.canPump) {
            m_out.findings.push_back(
                {&kZonePumpShort, pump.tag, {units.written(*available), units.written(*m_out.requiredHead)}});
        }
        const auto factor = energy::speedFactorThrough(set, design, *m_out.requiredHead);
        if (factor && *factor <= 1 + 1e-9) {
            m_out.speedFraction = Ratio::si(*factor);
        }
        takeMotor(set, pump, running.pumps.size(), design);
    }

    /// At full speed, where the pump stands until it is reduced.
    void takeMotor(const curve::PumpSet& set, const project::Pump& pump, std::size_t count,
                   VolumeFlow design) {
        if (m_out.speedFraction) {
            m_out.shaft = set.atSpeed(m_out.speedFraction->si()).shaftPower(design, job().fluid().density());
        }
        const auto full = set.shaftPower(design, job().fluid().density());
        const energy::MotorPlate plate = motorPlate(pump);
        if (!full || !plate.power) {
            m_out.findings.push_back({&kZoneMotorUnknown, pump.tag, {}});
            return;
        }
        const quantity::ShownUnits units = project::shownUnits(job(), pump);
        const Power allowed = *plate.power * (plate.serviceFactor * static_cast<double>(count));
        m_out.canMotor = *full <= allowed;
        if (!*m_out.canMotor) {
            m_out.findings.push_back(
                {&kZoneMotorShort, pump.tag, {units.text(*full, 3), units.text(allowed, 3)}});
        }
    }

    const Project& m_before;
    const balancing::Resistances& m_learnedBefore;
    balancing::Resistances m_learned;
    WhatIf m_out;
};

/// Puts each change into words; branches that earlier changes added are known to later ones.
class ChangeWords {
  public:
    explicit ChangeWords(const Project& project) : m_project(project) {}

    base::Fault operator()(const AddBranch& change) {
        m_added[change.branch.id] = change.branch;
        const std::string flow = flowOf(change.branch);
        const project::Branch* parent = change.branch.parent ? find(*change.branch.parent) : nullptr;
        return parent == nullptr ? base::Fault{&kZoneAddedAtPump, change.branch.tag, {flow}}
                                 : base::Fault{&kZoneAdded, change.branch.tag, {parent->tag, flow}};
    }
    base::Fault operator()(const RemoveBranch& change) {
        const project::Branch* branch = find(change.branch);
        return {&kZoneRemoved, branch == nullptr ? "-" : branch->tag, {}};
    }
    base::Fault operator()(const ChangeFlow& change) {
        const project::Branch* branch = find(change.branch);
        return {&kZoneFlowChanged,
                branch == nullptr ? "-" : branch->tag,
                {branch == nullptr ? "-" : flowOf(*branch), change.flow.text()}};
    }

  private:
    static std::string flowOf(const project::Branch& branch) {
        return branch.designFlow ? branch.designFlow->text() : "-";
    }
    const project::Branch* find(const Id& id) const {
        const auto added = m_added.find(id);
        return added != m_added.end() ? &added->second : m_project.branches().find(id);
    }

    const Project& m_project;
    std::map<Id, project::Branch> m_added;
};

}  // namespace

std::vector<base::Fault> changeSentences(const Project& project, const std::vector<ZoneChange>& changes) {
    ChangeWords words(project);
    std::vector<base::Fault> sentences;
    for (const ZoneChange& change : changes) {
        sentences.push_back(std::visit(words, change));
    }
    return sentences;
}

WhatIf whatIf(const Project& project, const std::vector<ZoneChange>& changes,
              const balancing::Resistances& learned) {
    ChangedJob job = changed(project, changes);
    if (!job.faults.empty()) {
        WhatIf out;
        out.changes = changeSentences(project, changes);
        out.project = std::move(job.project);
        out.faults = std::move(job.faults);
        return out;
    }
    WhatIf out = Answer(project, std::move(job), learned).take();
    out.changes = changeSentences(project, changes);
    out.isFromLearned = !learned.empty();
    return out;
}

}  // namespace ww::pump_room
