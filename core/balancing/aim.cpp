#include "core/balancing/aim.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/prediction.h"
#include "core/balancing/stale_reference.h"
#include "core/base/age.h"
#include "core/base/term.h"

namespace ww::balancing {

namespace {

using project::Project;

std::span<const std::size_t> groupOf(const project::BranchTree& tree, std::size_t branch) {
    const std::size_t parent = tree.parent(branch);
    return parent == project::BranchTree::kNone ? tree.roots() : tree.children(parent);
}

/// Flow at a share of what it makes with the others, and the band around it: the others hold.
void fillBand(AimFlow& made, double others_m3s, double share, double band) {
    const auto at = [&](double s) { return VolumeFlow::si(s / (1 - s) * others_m3s); };
    const double most = 0.999;
    made.low = at(std::min(most, share * (1 - band)));
    made.high = at(std::min(most, share * (1 + band)));
}

/// What an aim is computed from: the newest flows of a branch's group.
class AimFinder {
  public:
    AimFinder(const Project& project, std::size_t branch, const AimOptions& options)
        : m_project(project),
          m_branch(branch),
          m_options(options),
          m_numbers(detail::roundNumbers(project, project.lastRound(), detail::LookBack::ToFillGaps)),
          m_members(groupOf(project.tree(), branch)),
          m_band(project.job().matchingBand.value.si()) {
        sumOthers();
    }

    std::optional<AimFlow> fromModel(const LearnedLoop& learned, const Advice& advice) const {
        const auto own = std::find_if(advice.settings.begin(), advice.settings.end(),
                                      [&](const SettingAdvice& s) { return s.branch == m_branch; });
        if (own == advice.settings.end() || learned.fits == nullptr) {
            return std::nullopt;
        }
        LoopState state = learned.present;
        state.settings[m_project.branches()[m_branch].id] = own->exact;
        const PredictionResult result = predict(m_project, state, learned.resistances);
        if (!result.prediction) {
            return std::nullopt;
        }
        double others_m3s = 0;
        for (const std::size_t member : m_members) {
            others_m3s += member == m_branch ? 0 : result.prediction->branches[member].flow.si();
        }
        AimFlow made;
        made.basis = AimBasis::Model;
        made.flow = result.prediction->branches[m_branch].flow;
        if (made.flow.si() <= 0) {
            return std::nullopt;
        }
        addBand(made, others_m3s);
        return made;
    }

    std::optional<AimFlow> fromReference() const {
        const auto group =
            std::find_if(m_numbers.groups.begin(), m_numbers.groups.end(), [&](const GroupResult& g) {
                return std::find(g.members.begin(), g.members.end(), m_branch) != g.members.end();
            });
        if (group == m_numbers.groups.end() || !group->reference || *group->reference == m_branch) {
            return std::nullopt;
        }
        const BranchResult& reference = m_numbers.branches[*group->reference];
        if (!reference.ofDesign || reference.ofDesign->si() <= 0) {
            return std::nullopt;
        }
        AimFlow made;
        made.basis = AimBasis::Reference;
        made.flow = design() * reference.ofDesign->si();
        made.reference = group->reference;
        made.referenceOfDesign = reference.ofDesign;
        made.oldest = reference.readAt;
        addBand(made, m_others_m3s);
        return made;
    }

    std::optional<AimFlow> fromBranches() const {
        if (m_othersKnown == 0 || m_othersDesign_m3s <= 0) {
            return std::nullopt;
        }
        const double share = design().si() / (design().si() + m_othersDesign_m3s);
        AimFlow made;
        made.basis = AimBasis::Branches;
        made.flow = VolumeFlow::si(share / (1 - share) * m_others_m3s);
        made.branchCount = m_othersKnown;
        made.oldest = m_oldest;
        fillBand(made, m_others_m3s, share, m_band);
        return made;
    }

    base::Fault line(const AimFlow& used) const {
        const std::string& tag = m_project.branches()[m_branch].tag;
        const auto time = used.oldest ? used.oldest->timeOfDay() : std::string("?");
        if (used.basis == AimBasis::Model) {
            return {&kAimFromModel, tag, {detail::flowText(m_project, used.flow)}};
        }
        if (used.basis == AimBasis::Reference) {
            return {&kAimFromReference,
                    tag,
                    {m_project.branches()[*used.reference].tag, detail::percentText(*used.referenceOfDesign),
                     ageText(used.oldest)}};
        }
        return {&kAimFromBranches, tag, {std::to_string(used.branchCount), ageText(used.oldest)}};
    }

    std::vector<base::Fault> stale(const AimFlow& used, const History& history) const {
        if (used.basis == AimBasis::Reference) {
            return staleReference(m_project, history, *used.reference, m_options.now, m_options.limit);
        }
        if (used.basis == AimBasis::Branches && m_options.now && used.oldest) {
            const std::int64_t age_s = m_options.now->seconds - used.oldest->seconds;
            if (static_cast<double>(age_s) > m_options.limit.si()) {
                return {{&kAimOldReading,
                         m_project.branches()[m_branch].tag,
                         {base::ageText(age_s), base::ageText(std::llround(m_options.limit.si()))}}};
            }
        }
        return {};
    }

    VolumeFlow design() const { return m_numbers.branches[m_branch].designFlow; }
    double band() const { return m_band; }

  private:
    std::string ageText(const std::optional<base::Instant>& at) const {
        if (!at) {
            return base::term("without a time");
        }
        if (!m_options.now) {
            return base::term("at ") + at->timeOfDay();
        }
        return base::agoText(m_options.now->seconds - at->seconds);
    }

    void addBand(AimFlow& made, double others_m3s) const {
        if (others_m3s > 0) {
            fillBand(made, others_m3s, made.flow.si() / (made.flow.si() + others_m3s), m_band);
        } else {
            made.low = made.flow * (1 - m_band);
            made.high = made.flow * (1 + m_band);
        }
    }

    /// The newest flows of the other members; those not read are taken to keep step with those that are.
    void sumOthers() {
        double knownDesign_m3s = 0;
        for (const std::size_t member : m_members) {
            if (member == m_branch) {
                continue;
            }
            const BranchResult& result = m_numbers.branches[member];
            m_othersDesign_m3s += result.designFlow.si();
            if (!result.flow) {
                continue;
            }
            ++m_othersKnown;
            m_others_m3s += result.flow->si();
            knownDesign_m3s += result.designFlow.si();
            const auto at = oldestBelow(member);
            if (at && (!m_oldest || *at < *m_oldest)) {
                m_oldest = at;
            }
        }
        if (knownDesign_m3s > 0) {
            m_others_m3s *= m_othersDesign_m3s / knownDesign_m3s;
        }
    }

    /// When a branch was read; of one that is the sum of others, the oldest of these.
    std::optional<base::Instant> oldestBelow(std::size_t branch) const {
        const BranchResult& result = m_numbers.branches[branch];
        if (result.source != FlowSource::SumOfChildren) {
            return result.readAt;
        }
        std::optional<base::Instant> oldest;
        for (const std::size_t child : m_project.tree().children(branch)) {
            const auto at = oldestBelow(child);
            if (at && (!oldest || *at < *oldest)) {
                oldest = at;
            }
        }
        return oldest;
    }

    const Project& m_project;
    std::size_t m_branch;
    const AimOptions& m_options;
    detail::RoundNumbers m_numbers;
    std::span<const std::size_t> m_members;
    double m_band;
    double m_others_m3s = 0;
    double m_othersDesign_m3s = 0;
    std::size_t m_othersKnown = 0;
    std::optional<base::Instant> m_oldest;
};

}  // namespace

Aim aim(const Project& project, std::size_t branch, const LearnedLoop* learned, const Advice* advice,
        const AimOptions& options) {
    Aim out;
    out.branch = branch;
    const project::Branch& record = project.branches()[branch];
    if (project.characteristicOf(record) == nullptr || detail::isSelfActing(record)) {
        out.faults.push_back({&kAimNoValve, record.tag, {}});
        return out;
    }
    const AimFinder finder(project, branch, options);
    if (finder.design().si() <= 0) {
        out.faults.push_back({&kAimNoDesign, record.tag, {}});
        return out;
    }
    if (learned != nullptr && advice != nullptr && advice->isReady()) {
        if (auto made = finder.fromModel(*learned, *advice)) {
            out.all.push_back(std::move(*made));
        }
    }
    for (auto made : {finder.fromReference(), finder.fromBranches()}) {
        if (made) {
            out.all.push_back(std::move(*made));
        }
    }
    if (out.all.empty()) {
        out.faults.push_back({&kAimNothingRead, record.tag, {}});
        return out;
    }
    out.used = out.all.front();
    out.basisLine = finder.line(*out.used);
    out.stale = finder.stale(*out.used, learned != nullptr ? learned->history : history(project));
    const auto [least, most] = std::minmax_element(
        out.all.begin(), out.all.end(), [](const AimFlow& a, const AimFlow& b) { return a.flow < b.flow; });
    if (least->flow.si() > 0) {
        out.divergence = Ratio::si(most->flow / least->flow - 1);
        out.isDivergent = out.divergence.si() > finder.band();
    }
    return out;
}

}  // namespace ww::balancing
