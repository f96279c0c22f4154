#include "core/balancing/design_changes.h"

#include <limits>

#include "core/project/earlier_design.h"

namespace ww::balancing {

namespace {

using project::ChangeAfterRound;
using project::ChangedDesign;
using project::Limits;
using project::Project;

/// The first few of a list, with commas between them.
class ShortList {
  public:
    void add(const std::string& text) {
        constexpr std::size_t kNamed = 5;
        if (m_count < kNamed) {
            m_text += (m_count == 0 ? "" : ", ") + text;
        } else if (m_count == kNamed) {
            m_text += " ...";
        }
        ++m_count;
    }
    const std::string& text() const { return m_text; }

  private:
    std::size_t m_count = 0;
    std::string m_text;
};

std::string flowText(const std::optional<quantity::Measured<quantity::VolumeFlow>>& flow) {
    return flow ? flow->text() : "Σ";
}

std::string withSign(const base::Decimal& digits) {
    return (digits.value() > 0 ? "+" : "") + digits.text();
}

void addDesigns(const Project& project, const ChangeAfterRound& change, std::vector<base::Fault>& out) {
    ShortList added;
    ShortList changed;
    for (const ChangedDesign& design : change.designs) {
        const std::string& tag = project.branches().at(design.branch).tag;
        if (design.wasInLoop) {
            changed.add(tag + " " + flowText(design.before) + " → " + flowText(design.after));
        } else {
            added.add(design.after ? tag + " " + flowText(design.after) : tag);
        }
    }
    const std::string round = std::to_string(change.round);
    if (!added.text().empty()) {
        out.push_back({&kBranchesAdded, "", {round, added.text()}});
    }
    if (!changed.text().empty()) {
        out.push_back({&kDesignChanged, "", {round, changed.text()}});
    }
}

base::Fault limitsFault(const Project& project, const ChangeAfterRound& change) {
    const auto& [before, after] = *change.limits;
    const project::Round* round = project.roundNumbered(change.round);
    const bool isAccepted = round != nullptr && round->state == project::RoundState::Accepted;
    return {
        isAccepted ? &kLimitsChangedAccepted : &kLimitsChanged,
        "",
        {std::to_string(change.round), after.matchingBand.digits.text(), before.matchingBand.digits.text(),
         withSign(after.toleranceLow.digits), withSign(after.toleranceHigh.digits),
         withSign(before.toleranceLow.digits), withSign(before.toleranceHigh.digits)}};
}

}  // namespace

std::vector<base::Fault> changesOf(const Project& project, int first, int last) {
    std::vector<base::Fault> out;
    for (const ChangeAfterRound& change : project::changesAfterRounds(project)) {
        if (change.round >= first && change.round <= last) {
            addDesigns(project, change, out);
            if (change.limits) {
                out.push_back(limitsFault(project, change));
            }
        }
    }
    return out;
}

std::vector<base::Fault> changesSince(const Project& project, int round) {
    return changesOf(project, round, std::numeric_limits<int>::max());
}

}  // namespace ww::balancing
