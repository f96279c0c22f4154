#include "core/balancing/advice/index_step.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/assess.h"
#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/index_proof.h"
#include "core/balancing/index_rivals.h"
#include "core/balancing/prediction.h"
#include "core/balancing/share_count.h"
#include "core/project/setting_text.h"

namespace ww::balancing {

namespace {

constexpr double kSameSetting = 1e-6;

/// The last round that is neither a witness's nor one in which valves were turned.
const project::Round* lastWalkedRound(const project::Project& project) {
    const auto order = project.roundsByNumber();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        const project::Round& round = project.rounds()[*at];
        if (round.kind != project::RoundKind::Witness && round.kind != project::RoundKind::Adjusting) {
            return &round;
        }
    }
    return nullptr;
}

class IndexStepFinder {
  public:
    IndexStepFinder(const project::Project& project, const Assessment& assessment, const LoopState& present,
                    const Resistances& resistances, const std::vector<Setting>& steps)
        : m_project(project),
          m_round(assessment),
          m_present(present),
          m_resistances(resistances),
          m_steps(steps) {}

    std::vector<IndexStep> take() {
        const ShareCount count = shareCount(m_round);
        const IndexProof proof = indexProof(m_project, m_round);
        if (!proof.isKnown || proof.isProved() || count.onShare != count.all) {
            return {};
        }
        for (const std::size_t branch : proof.notOpen) {
            openFully(branch);
        }
        for (const auto* rivals : {&proof.rivals, &proof.undecidedRivals}) {
            for (const std::size_t rival : *rivals) {
                openAbove(rival);
            }
        }
        return std::move(m_found);
    }

  private:
    const project::Branch& branchAt(std::size_t index) const { return m_project.branches()[index]; }

    bool isFound(std::size_t branch) const {
        return std::any_of(m_found.begin(), m_found.end(),
                           [&](const IndexStep& step) { return step.branch == branch; });
    }

    std::optional<Prediction> predicted(std::size_t branch, Setting setting) const {
        LoopState state = m_present;
        state.settings[branchAt(branch).id] = setting;
        return predict(m_project, state, m_resistances).prediction;
    }

    /// As it was read, changed by what the loop says.
    std::optional<Ratio> changed(const std::optional<Ratio>& read, const std::optional<Ratio>& before,
                                 const std::optional<Ratio>& after) const {
        return read && before && after ? std::optional(*read + (*after - *before)) : std::nullopt;
    }

    bool isWithinBand(const Prediction& before, const Prediction& after) const {
        const double band = m_project.job().matchingBand.value.si();
        return std::all_of(m_round.branches.begin(), m_round.branches.end(), [&](const BranchResult& each) {
            if (!each.isTerminal || !each.isMatchable) {
                return true;
            }
            const auto then = changed(each.ofTarget, before.branches[each.branch].ofTarget,
                                      after.branches[each.branch].ofTarget);
            return then && std::abs(then->si() - 1) <= band;
        });
    }

    void openFully(std::size_t branch) {
        const auto* curve = m_project.characteristicOf(branchAt(branch));
        const auto& at = m_round.branches[branch].setting;
        if (curve == nullptr || !at || m_found.size() >= kMostIndexSteps) {
            return;
        }
        const auto before = predicted(branch, *at);
        const auto after = predicted(branch, curve->fullyOpen());
        if (before && after && isWithinBand(*before, *after)) {
            add(branch, *at, curve->fullyOpen(), kIndexPathToOpen, {});
        }
    }

    /// The nearest branch above a terminal whose valve takes something away from it.
    std::optional<std::size_t> throttledAbove(std::size_t terminal) const {
        const project::BranchTree& tree = m_project.tree();
        for (std::size_t at = tree.parent(terminal); at != project::BranchTree::kNone; at = tree.parent(at)) {
            const auto& path = m_round.index.path;
            if (std::find(path.begin(), path.end(), at) == path.end() &&
                !detail::isUnthrottled(m_project, m_round.branches[at])) {
                return at;
            }
        }
        return std::nullopt;
    }

    void openAbove(std::size_t rival) {
        const auto branch = throttledAbove(rival);
        const auto* curve = branch ? m_project.characteristicOf(branchAt(*branch)) : nullptr;
        if (curve == nullptr || isFound(*branch) || !m_round.branches[*branch].setting ||
            m_steps[*branch].si() <= 0 || m_found.size() >= kMostIndexSteps) {
            return;
        }
        const Setting at = *m_round.branches[*branch].setting;
        const BranchResult& index = m_round.branches[*m_round.index.terminal];
        const BranchResult& own = m_round.branches[rival];
        const auto before = predicted(*branch, at);
        std::optional<Setting> enough;
        for (Setting to = at; before && to < curve->fullyOpen();) {
            to = std::min(to + m_steps[*branch], curve->fullyOpen());
            const auto after = predicted(*branch, to);
            if (!after || !isWithinBand(*before, *after)) {
                break;
            }
            const auto above = [&](const BranchResult& each) {
                return changed(each.ofDesign, before->branches[each.branch].ofDesign,
                               after->branches[each.branch].ofDesign);
            };
            const double lift = above(own)->si() - above(index)->si();
            if (lift >= 0) {
                enough = to;
            }
            if (lift >= distanceUncertainty(own, index).si()) {
                break;
            }
        }
        if (enough) {
            add(*branch, at, *enough, kOpensForIndex,
                {branchAt(rival).tag, detail::percentText(*own.ofDesign), branchAt(index.branch).tag,
                 detail::percentText(*index.ofDesign)});
        }
    }

    void add(std::size_t branch, Setting from, Setting to, const base::MessageForm& form,
             std::vector<std::string> more) {
        const project::Branch& record = branchAt(branch);
        std::vector<std::string> arguments{project::settingText(m_project, record, from),
                                           project::settingText(m_project, record, to)};
        arguments.insert(arguments.end(), more.begin(), more.end());
        m_found.push_back({branch, to, base::Fault{&form, record.tag, std::move(arguments)}});
    }

    const project::Project& m_project;
    const Assessment& m_round;
    const LoopState& m_present;
    const Resistances& m_resistances;
    const std::vector<Setting>& m_steps;
    std::vector<IndexStep> m_found;
};

}  // namespace

std::vector<IndexStep> indexSteps(const project::Project& project, const Assessment& assessment,
                                  const LoopState& state, const Resistances& resistances,
                                  const std::vector<Setting>& steps) {
    return IndexStepFinder(project, assessment, state, resistances, steps).take();
}

std::vector<IndexStep> indexStepsLeft(const project::Project& project, const LoopState& present,
                                      const Resistances& resistances, const std::vector<Setting>& steps) {
    const project::Round* round = lastWalkedRound(project);
    if (round == nullptr) {
        return {};
    }
    const Assessment assessment = assess(project, round->id, {.byDesignOfToday = true});
    LoopState state = present;
    for (const BranchResult& each : assessment.branches) {
        if (each.setting) {
            state.settings[project.branches()[each.branch].id] = *each.setting;
        }
    }
    std::vector<IndexStep> left = indexSteps(project, assessment, state, resistances, steps);
    for (std::size_t branch = 0; branch < project.branches().size() && !left.empty(); ++branch) {
        const base::Id& id = project.branches()[branch].id;
        const auto is = present.settings.find(id);
        const auto was = state.settings.find(id);
        if (is == present.settings.end() || was == state.settings.end() ||
            std::abs((is->second - was->second).si()) < kSameSetting) {
            continue;
        }
        const auto turned = std::find_if(left.begin(), left.end(),
                                         [&](const IndexStep& step) { return step.branch == branch; });
        if (turned == left.end()) {
            return {};
        }
        left.erase(turned);
    }
    return left;
}

}  // namespace ww::balancing
