#include "core/pump_room/least_throttling.h"

#include <algorithm>

#include "core/balancing/index_rivals.h"
#include "core/project/setting_text.h"
#include "core/quantity/measured.h"

namespace ww::pump_room {

namespace {

using balancing::Assessment;
using balancing::BranchResult;
using project::Branch;
using project::Project;

class Proof {
  public:
    Proof(const Project& project, const Assessment& assessment)
        : m_project(project), m_assessment(assessment) {}

    ThrottlingProof take(bool isExceptionClaimed) {
        m_out.indexPath = m_assessment.index.path;
        if (m_out.indexPath.empty()) {
            m_out.failures.push_back({&kProofNoIndex, "", {}});
        }
        for (const std::size_t branch : m_out.indexPath) {
            if (throttlesByHand(branch) && !m_assessment.branches[branch].isFullyOpen) {
                m_out.failures.push_back({&kProofIndexThrottled, tag(branch), place(branch)});
            }
        }
        for (const balancing::GroupResult& group : m_assessment.groups) {
            takeGroup(group);
        }
        for (const std::size_t rival : balancing::indexRivals(m_assessment.branches, m_assessment.index)) {
            const bool isSure = balancing::isSurelyLess(m_assessment.branches[rival],
                                                        m_assessment.branches[*m_assessment.index.terminal]);
            m_out.failures.push_back({isSure ? &kProofRival : &kProofRivalUndecided, tag(rival), {}});
        }
        for (const project::Pump& pump : m_project.pumps()) {
            if (pump.isRunning && !isExceptionClaimed) {
                takeThrottle(pump);
            }
        }
        m_out.isProved = m_out.failures.empty();
        return std::move(m_out);
    }

  private:
    const std::string& tag(std::size_t branch) const { return m_project.branches()[branch].tag; }

    /// A hand valve with a table: without one nothing says where it is fully open.
    bool throttlesByHand(std::size_t index) const {
        return !m_assessment.branches[index].isSelfActing &&
               m_project.characteristicOf(m_project.branches()[index]) != nullptr;
    }

    std::vector<std::string> place(std::size_t index) const {
        const project::Branch& branch = m_project.branches()[index];
        const auto* curve = m_project.characteristicOf(branch);
        const auto& setting = m_assessment.branches[index].setting;
        return {setting ? settingText(m_project, branch, *setting) : "?",
                settingText(m_project, branch, curve->fullyOpen())};
    }

    void takeGroup(const balancing::GroupResult& group) {
        bool hasHandValve = false;
        for (const std::size_t member : group.members) {
            if (!throttlesByHand(member)) {
                continue;
            }
            hasHandValve = true;
            if (m_assessment.branches[member].isFullyOpen) {
                return;
            }
        }
        if (hasHandValve) {
            m_out.failures.push_back(
                {&kProofGroupThrottled, group.parent ? tag(*group.parent) : pumpTag(), {}});
        }
    }

    std::string pumpTag() const {
        return m_project.pumps().empty() ? std::string("-") : m_project.pumps()[0].tag;
    }

    /// The newest standing reading up to the assessed round that gives the discharge valve's position.
    const project::PumpReading* throttleReading(const project::Pump& pump) const {
        const auto order = m_project.roundsByNumber();
        for (auto at = order.rbegin(); at != order.rend(); ++at) {
            const project::Round& round = m_project.rounds()[*at];
            if (m_assessment.round && round.number > m_assessment.roundNumber) {
                continue;
            }
            const auto& indices = m_project.pumpReadingsOf(round.id);
            for (auto index = indices.rbegin(); index != indices.rend(); ++index) {
                const project::PumpReading& reading = m_project.pumpReadings()[*index];
                const bool counts = reading.pump == pump.id && reading.throttle &&
                                    reading.status == project::ReadingStatus::Standing &&
                                    reading.point != project::PumpPoint::Shutoff &&
                                    reading.point != project::PumpPoint::Static &&
                                    reading.point != project::PumpPoint::ThrottledToDesign;
                if (counts) {
                    return &reading;
                }
            }
        }
        return nullptr;
    }

    void takeThrottle(const project::Pump& pump) {
        const project::PumpReading* reading = throttleReading(pump);
        if (reading == nullptr) {
            if (pump.throttleTag.empty()) {
                m_out.notes.push_back({&kProofNoThrottle, pump.tag, {}});
            } else {
                m_out.failures.push_back({&kProofThrottleUnread, pump.tag, {}});
            }
            return;
        }
        double open = 100;
        if (const Branch* branch = m_project.branchTagged(pump.throttleTag)) {
            if (const auto* curve = m_project.characteristicOf(*branch)) {
                open = curve->fullyOpen().si();
            }
        }
        if (reading->throttle->value() < open * (1 - 1e-9)) {
            m_out.failures.push_back(
                {&kProofThrottle, pump.tag, {reading->throttle->text(), quantity::concise(open, 4)}});
        }
    }

    const Project& m_project;
    const Assessment& m_assessment;
    ThrottlingProof m_out;
};

}  // namespace

ThrottlingProof proveLeastThrottling(const Project& project, const Assessment& assessment,
                                     bool isExceptionClaimed) {
    return Proof(project, assessment).take(isExceptionClaimed);
}

}  // namespace ww::pump_room
