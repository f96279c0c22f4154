#include <algorithm>
#include <cmath>

#include "core/balancing/detail/judgment.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/verdict_forms.h"
#include "core/project/setting_text.h"

namespace ww::balancing::detail {

namespace {

using project::Project;

/// Branches that share a fate, and the one that is farthest off.
struct Tally {
    std::size_t count = 0;
    std::string tags;  ///< the first few
    std::size_t worst = 0;
    double worstDistance = -1;

    void add(const Project& project, std::size_t branch, double distance = 0) {
        constexpr std::size_t kNamed = 5;
        const std::string& tag = project.branches()[branch].tag;
        if (count < kNamed) {
            tags += (count == 0 ? "" : ", ") + tag;
        } else if (count == kNamed) {
            tags += " ...";
        }
        ++count;
        if (distance > worstDistance) {
            worstDistance = distance;
            worst = branch;
        }
    }
};

enum class Fate { Holds, Unsure, Fails };

/// A value with its uncertainty against limits that may be reached.
Fate against(double value, double uncertainty, double low, double high) {
    constexpr double kRounding = 1e-12;
    low -= kRounding;
    high += kRounding;
    if (value + uncertainty < low || value - uncertainty > high) {
        return Fate::Fails;
    }
    return value - uncertainty < low || value + uncertainty > high ? Fate::Unsure : Fate::Holds;
}

/// Everything the verdict rests on.
struct Evidence {
    Tally unread;
    Tally unreadable;
    Tally unknownShare;
    Tally offShare;
    Tally nearShare;
    Tally offDesign;
    Tally nearDesign;
    Tally selfActing;
    Tally doubtful;
    Tally ranges;
    std::size_t judged = 0;
};

void weighDesign(const Project& project, const BranchResult& result, Evidence& out) {
    if (!result.ofDesign) {
        return;
    }
    const double off = result.ofDesign->si() - 1;
    const double u = result.readingUncertainty->si() / result.designFlow.si();
    const Fate fate =
        against(off, u, project.job().toleranceLow.value.si(), project.job().toleranceHigh.value.si());
    if (fate == Fate::Fails) {
        out.offDesign.add(project, result.branch, std::abs(off));
    } else if (fate == Fate::Unsure) {
        out.nearDesign.add(project, result.branch);
    }
}

void weighShare(const Project& project, const BranchResult& result, Evidence& out) {
    ++out.judged;
    if (!result.ofTarget) {
        out.unknownShare.add(project, result.branch);
        return;
    }
    const double band = project.job().matchingBand.value.si();
    const double ofTarget = result.ofTarget->si();
    const Fate fate = against(ofTarget, result.ofTargetUncertainty->si(), 1 - band, 1 + band);
    if (fate == Fate::Fails) {
        out.offShare.add(project, result.branch, std::abs(ofTarget - 1));
    } else if (fate == Fate::Unsure) {
        out.nearShare.add(project, result.branch);
    }
}

Evidence weigh(const Project& project, const RoundNumbers& numbers) {
    Evidence out;
    const bool isFinal = numbers.round->kind == project::RoundKind::Final;
    for (const BranchResult& result : numbers.branches) {
        const BranchReadings& readings = numbers.readings[result.branch];
        if (result.isTerminal && !readings.hasValue()) {
            const bool isExplained = readings.counting != nullptr && !readings.counting->reason.empty();
            (isExplained ? out.unreadable : out.unread).add(project, result.branch);
            continue;
        }
        if (result.state == State::Doubtful) {
            out.doubtful.add(project, result.branch);
            continue;
        }
        if (result.source == FlowSource::Range) {
            out.ranges.add(project, result.branch);
            continue;
        }
        if (result.isSelfActing) {
            if (result.state == State::Short || result.state == State::Over) {
                out.selfActing.add(project, result.branch);
            }
        } else if (result.isMatchable && result.designFlow.si() > 0) {
            weighShare(project, result, out);
        }
        if (isFinal && result.isTerminal) {
            weighDesign(project, result, out);
        }
    }
    return out;
}

void addOpenness(const Project& project, const RoundNumbers& numbers, std::vector<base::Fault>& failing) {
    const std::vector<std::size_t>& path = numbers.index.path;
    for (const std::size_t branch : path) {
        if (auto fault = indexThrottledFault(project, numbers, branch)) {
            failing.push_back(std::move(*fault));
        }
    }
    for (const GroupResult& group : numbers.groups) {
        if (group.reference && std::find(path.begin(), path.end(), *group.reference) != path.end()) {
            continue;  // Named already.
        }
        if (auto fault = groupShutFault(project, numbers, group)) {
            failing.push_back(std::move(*fault));
        }
    }
}

void addFailing(const Project& project, const RoundNumbers& numbers, const Evidence& e, std::size_t terminals,
                std::vector<base::Fault>& out) {
    const project::Job& job = project.job();
    const auto tagOf = [&](const Tally& tally) { return project.branches()[tally.worst].tag; };
    if (e.selfActing.count > 0) {
        out.push_back({&kSelfActingOutside, "", {numberText(e.selfActing.count), e.selfActing.tags}});
    }
    if (e.offShare.count > 0) {
        out.push_back({&kOffShare,
                       "",
                       {numberText(e.offShare.count), numberText(e.judged),
                        percentText(job.matchingBand.value), e.offShare.tags, tagOf(e.offShare),
                        percentText(*numbers.branches[e.offShare.worst].ofTarget)}});
    }
    if (e.offDesign.count > 0) {
        out.push_back({&kOffDesign,
                       "",
                       {numberText(e.offDesign.count), numberText(terminals),
                        percentText(Ratio::si(1 + job.toleranceLow.value.si())),
                        percentText(Ratio::si(1 + job.toleranceHigh.value.si())), e.offDesign.tags,
                        tagOf(e.offDesign), percentText(*numbers.branches[e.offDesign.worst].ofDesign)}});
    }
}

void addUnsure(const Evidence& e, std::size_t terminals, std::vector<base::Fault>& out) {
    const auto add = [&](const base::MessageForm& form, const Tally& tally) {
        if (tally.count > 0) {
            out.push_back({&form, "", {numberText(tally.count), tally.tags}});
        }
    };
    if (e.unreadable.count > 0) {
        out.push_back({&kTerminalsUnreadable,
                       "",
                       {numberText(e.unreadable.count), numberText(terminals), e.unreadable.tags}});
    }
    add(kReadingsDoubtful, e.doubtful);
    add(kDpUnreadable, e.ranges);
    if (e.unread.count == 0) {
        add(kShareUnknown, e.unknownShare);
    }
    add(kShareUncertain, e.nearShare);
    add(kDesignUncertain, e.nearDesign);
}

}  // namespace

std::string groupName(const Project& project, const GroupResult& group) {
    if (group.parent) {
        return project.branches()[*group.parent].tag;
    }
    return project.pumps().empty() ? "-" : project.pumps()[0].tag;
}

std::vector<std::string> placeOfValve(const Project& project, const BranchResult& branch) {
    const project::Branch& record = project.branches()[branch.branch];
    const curve::ValveCharacteristic* curve = project.characteristicOf(record);
    return {branch.setting ? settingText(project, record, *branch.setting) : "?",
            curve != nullptr ? settingText(project, record, curve->fullyOpen()) : "?"};
}

std::optional<base::Fault> indexThrottledFault(const Project& project, const RoundNumbers& numbers,
                                               std::size_t branch) {
    const BranchResult& result = numbers.branches[branch];
    if (isUnthrottled(project, result)) {
        return std::nullopt;
    }
    const auto place = placeOfValve(project, result);
    const std::string& tag = project.branches()[branch].tag;
    return base::Fault{&kIndexValveThrottled, tag, {tag, place[0], place[1]}};
}

std::optional<base::Fault> groupShutFault(const Project& project, const RoundNumbers& numbers,
                                          const GroupResult& group) {
    const bool hasOpen = std::any_of(group.members.begin(), group.members.end(), [&](std::size_t member) {
        return numbers.branches[member].isMatchable && isUnthrottled(project, numbers.branches[member]);
    });
    if (!group.reference || hasOpen) {
        return std::nullopt;
    }
    const auto place = placeOfValve(project, numbers.branches[*group.reference]);
    const std::string name = groupName(project, group);
    return base::Fault{
        &kGroupWithoutOpenValve, name, {name, project.branches()[*group.reference].tag, place[0], place[1]}};
}

void fillVerdict(const Project& project, const RoundNumbers& numbers,
                 const std::vector<const Finding*>& judging, Assessment& out) {
    out.verdict = Verdict::NotAccepted;
    if (numbers.round == nullptr || out.terminalCount == 0) {
        out.reasons.push_back({numbers.round == nullptr ? &kNoRoundYet : &kNoTerminals, "", {}});
        return;
    }
    const Evidence evidence = weigh(project, numbers);
    std::vector<base::Fault> failing;
    if (evidence.unread.count > 0) {
        failing.push_back(
            {&kTerminalsUnread,
             "",
             {numberText(evidence.unread.count), numberText(out.terminalCount), evidence.unread.tags}});
    }
    addOpenness(project, numbers, failing);
    addFailing(project, numbers, evidence, out.terminalCount, failing);
    for (const Finding* finding : judging) {
        const bool isNew = std::find(failing.begin(), failing.end(), finding->fault) == failing.end();
        if (finding->severity == Severity::Error && isNew) {
            failing.push_back(finding->fault);
        }
    }
    std::vector<base::Fault> unsure;
    addUnsure(evidence, out.terminalCount, unsure);
    out.verdict = !failing.empty()  ? Verdict::NotAccepted
                  : !unsure.empty() ? Verdict::Undecidable
                                    : Verdict::Accepted;
    out.reasons = std::move(failing);
    out.reasons.insert(out.reasons.end(), unsure.begin(), unsure.end());
}

}  // namespace ww::balancing::detail
