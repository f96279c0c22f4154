#include "core/workbook/kept_designs.h"

#include <algorithm>
#include <unordered_map>

#include "core/project/earlier_design.h"

namespace ww::workbook {

namespace {

using project::AnyRecord;
using project::Branch;
using project::EarlierDesign;
using project::Edit;
using project::Id;
using project::Job;
using project::Project;
using project::Round;
using project::RoundState;

/// A round that was sent back is to be corrected, and closed anew.
bool isClosed(const Round* round) {
    return round != nullptr && round->state != RoundState::Open && round->state != RoundState::SentBack;
}

/// Whether what a closed round is judged by may be touched.
bool concerns(const AnyRecord& record) {
    return std::holds_alternative<Branch>(record) || std::holds_alternative<Job>(record) ||
           std::holds_alternative<Round>(record);
}

/// Keeps for a round what a branch was designed for; null: it was not in the loop. What was kept before
/// stays.
bool keepDesign(Branch& branch, const Id& round, const Branch* then) {
    const auto isOfRound = [&](const EarlierDesign& design) { return design.round == round; };
    const bool isKept = std::any_of(branch.earlierDesigns.begin(), branch.earlierDesigns.end(), isOfRound) ||
                        (then != nullptr && then->designFlow == branch.designFlow);
    if (isKept) {
        return false;
    }
    // In an order that is the same on both of two laptops that merge.
    const auto place = std::find_if(branch.earlierDesigns.begin(), branch.earlierDesigns.end(),
                                    [&](const EarlierDesign& design) { return round < design.round; });
    branch.earlierDesigns.insert(place,
                                 {round, then != nullptr, then != nullptr ? then->designFlow : std::nullopt});
    return true;
}

bool keepLimits(Round& round, const project::Limits& limits) {
    if (round.toleranceLow) {
        return false;
    }
    round.toleranceLow = limits.toleranceLow;
    round.toleranceHigh = limits.toleranceHigh;
    round.matchingBand = limits.matchingBand;
    return true;
}

/// An edit with records put beside those that a person put.
class Keeping {
  public:
    Keeping(const Project& before, const Edit& edit) : m_before(before), m_edit(edit) {
        for (std::size_t i = 0; i < m_edit.put.size(); ++i) {
            m_places[project::idOf(m_edit.put[i])] = i;
        }
        for (const project::RecordRef& erased : m_edit.erase) {
            m_places.try_emplace(erased.id, kErased);
        }
        for (const Round& round : before.rounds()) {
            if (isErased(round.id)) {
                continue;
            }
            const Round* put = putOf<Round>(round.id);
            const Round& after = put != nullptr ? *put : round;
            if (isClosed(&round)) {
                (isClosed(&after) ? m_closed : m_reopened).push_back(round.id);
            }
            if (after.state == RoundState::SentBack) {
                m_sentBack.push_back(round.id);
            }
        }
    }

    std::optional<Edit> run() {
        // Records that come in here are of rounds and of branches that the edit leaves alone.
        const std::size_t count = m_edit.put.size();
        for (std::size_t i = 0; i < count; ++i) {
            if (auto* branch = std::get_if<Branch>(&m_edit.put[i])) {
                keepDesigns(*branch);
            }
        }
        const auto* job = putOf<Job>(m_before.job().id);
        if (job != nullptr && !(project::limitsOf(*job) == project::limitsOf(m_before.job()))) {
            keepLimitsOfRounds();
        }
        for (const Id& round : m_reopened) {
            giveUp(round);
        }
        return m_isChanged ? std::optional(std::move(m_edit)) : std::nullopt;
    }

  private:
    static constexpr std::size_t kErased = static_cast<std::size_t>(-1);

    bool isErased(const Id& id) const {
        const auto found = m_places.find(id);
        return found != m_places.end() && found->second == kErased;
    }
    template <class Record>
    Record* putOf(const Id& id) {
        const auto found = m_places.find(id);
        return found == m_places.end() || found->second == kErased
                   ? nullptr
                   : std::get_if<Record>(&m_edit.put[found->second]);
    }
    /// The record as the edit puts it; put here where it does not.
    template <class Record>
    Record& toPut(const Record& record) {
        if (Record* put = putOf<Record>(record.id)) {
            return *put;
        }
        m_places[record.id] = m_edit.put.size();
        return std::get<Record>(m_edit.put.emplace_back(record));
    }

    void keepDesigns(Branch& branch) {
        const Branch* then = m_before.branches().find(branch.id);
        for (const Id& round : m_closed) {
            m_isChanged = keepDesign(branch, round, then) || m_isChanged;
        }
        for (const Id& round : m_sentBack) {
            m_isChanged = (then == nullptr && keepDesign(branch, round, nullptr)) || m_isChanged;
        }
    }
    void keepLimitsOfRounds() {
        for (const Id& round : m_closed) {
            const Round& before = m_before.rounds().at(round);
            if (!before.toleranceLow) {
                m_isChanged = keepLimits(toPut(before), project::limitsOf(m_before.job())) || m_isChanged;
            }
        }
    }
    void giveUp(const Id& id) {
        Round& round = *putOf<Round>(id);
        m_isChanged = m_isChanged || round.toleranceLow;
        round.toleranceLow.reset();
        round.toleranceHigh.reset();
        round.matchingBand.reset();
        if (!m_before.hasEarlierDesigns()) {
            return;
        }
        // A round that was sent back takes no reading of a branch that came later: it stays out of it.
        const bool isSentBack = round.state == RoundState::SentBack;
        for (const Branch& branch : m_before.branches()) {
            const auto isGivenUp = [&](const EarlierDesign& design) {
                return design.round == id && (design.isInLoop || !isSentBack);
            };
            const auto& kept = branch.earlierDesigns;
            if (!isErased(branch.id) && std::any_of(kept.begin(), kept.end(), isGivenUp)) {
                std::erase_if(toPut(branch).earlierDesigns, isGivenUp);
                m_isChanged = true;
            }
        }
    }

    const Project& m_before;
    Edit m_edit;
    std::unordered_map<Id, std::size_t> m_places;  ///< in m_edit.put
    std::vector<Id> m_closed;
    std::vector<Id> m_reopened;
    std::vector<Id> m_sentBack;
    bool m_isChanged = false;
};

/// Rounds of the merged job that this side has closed and the other does not know as closed.
std::vector<Id> closedHereAlone(const Project& side, const Project& other, const Project& merged) {
    std::vector<Id> rounds;
    for (const Round& round : side.rounds()) {
        if (isClosed(&round) && !isClosed(other.rounds().find(round.id)) &&
            isClosed(merged.rounds().find(round.id))) {
            rounds.push_back(round.id);
        }
    }
    return rounds;
}

}  // namespace

std::optional<Edit> withKeptDesigns(const Project& before, const Edit& edit) {
    const bool isConcerned =
        !before.rounds().empty() && std::any_of(edit.put.begin(), edit.put.end(), concerns);
    return isConcerned ? Keeping(before, edit).run() : std::nullopt;
}

std::vector<AnyRecord> keptOfSides(const Project& ours, const Project& theirs, const Project& merged) {
    const std::vector<Id> ofOurs = closedHereAlone(ours, theirs, merged);
    const std::vector<Id> ofTheirs = closedHereAlone(theirs, ours, merged);
    std::vector<AnyRecord> put;
    if (ofOurs.empty() && ofTheirs.empty()) {
        return put;
    }
    for (const Branch& branch : merged.branches()) {
        Branch kept = branch;
        for (const Id& round : ofOurs) {
            keepDesign(kept, round, ours.branches().find(branch.id));
        }
        for (const Id& round : ofTheirs) {
            keepDesign(kept, round, theirs.branches().find(branch.id));
        }
        if (kept.earlierDesigns.size() > branch.earlierDesigns.size()) {
            put.emplace_back(std::move(kept));
        }
    }
    const project::Limits now = project::limitsOf(merged.job());
    const auto keepOf = [&](const Project& side, const std::vector<Id>& rounds) {
        for (const Id& id : rounds) {
            Round round = merged.rounds().at(id);
            if (!(project::limitsOf(side.job()) == now) && keepLimits(round, project::limitsOf(side.job()))) {
                put.emplace_back(std::move(round));
            }
        }
    };
    keepOf(ours, ofOurs);
    keepOf(theirs, ofTheirs);
    return put;
}

}  // namespace ww::workbook
