#include <algorithm>
#include <cmath>

#include "core/balancing/advice/advice_forms.h"
#include "core/balancing/detail/advice_numbers.h"
#include "core/balancing/detail/branch_flow.h"
#include "core/balancing/detail/wording.h"
#include "core/project/setting_text.h"

namespace ww::balancing::detail {

namespace {

using estimation::CandidateReading;
using project::Project;

/// What a further reading is expected to be uncertain by, where it is readable (common practice, no source).
constexpr double kReadingSd = 0.01;
/// The floor of a usual meter, Pa; small dp are less certain.
constexpr double kReadingFloor_Pa = 30;

/// Valves considered shut in a large loop: each costs a state.
constexpr std::size_t kMostShutInLarge = 32;
/// Unread valves considered there: each costs a row over all unknowns.
constexpr std::size_t kMostUnreadInLarge = 64;

struct Candidate {
    std::size_t branch = 0;
    ReadingKind kind = ReadingKind::RepeatedDp;
    PressureDifference expected;
};

class Search {
  public:
    Search(const Project& project, const LearnedLoop& learned, LoopLearning& loop, LoopStates& states)
        : m_project(project), m_learned(learned), m_loop(loop), m_states(states) {
        m_isRead.resize(project.branches().size(), false);
        for (const ComparedReading& reading : learned.readings) {
            if (reading.branch && !reading.isLeftOut) {
                m_isRead[*reading.branch] = true;
            }
        }
    }

    void collect(const AdviceForecast& forecast) {
        const bool isLarge = m_project.tree().terminals().size() > kMostExactTerminals;
        openReadings(isLarge);
        std::vector<std::size_t> terminals;
        for (const std::size_t terminal : m_project.tree().terminals()) {
            if (m_loop.branches[terminal].tableBias && (!isLarge || isLastOfGroup(terminal))) {
                terminals.push_back(terminal);
            }
        }
        if (isLarge && terminals.size() > kMostShutInLarge) {
            std::stable_sort(terminals.begin(), terminals.end(), [&](std::size_t one, std::size_t other) {
                return forecast.indicatedSd[one] > forecast.indicatedSd[other];
            });
            terminals.resize(kMostShutInLarge);
        }
        for (const std::size_t terminal : terminals) {
            closedReading(terminal);
        }
    }

    std::optional<HelpfulReading> best(const AdviceForecast& forecast) const {
        if (m_candidates.empty() || forecast.matched.empty()) {
            return std::nullopt;
        }
        const auto gains = forecast.gains(*m_learned.fits, m_readings);
        std::size_t most = 0;
        for (std::size_t i = 1; i < gains.size(); ++i) {
            if (gains[i].largestVarianceFactor < gains[most].largestVarianceFactor) {
                most = i;
            }
        }
        const Candidate& chosen = m_candidates[most];
        HelpfulReading out;
        out.branch = chosen.branch;
        out.kind = chosen.kind;
        out.expectedDp = chosen.expected;
        out.varianceTaken = Ratio::si(gains[most].traceGainRatio);
        out.largestUncertaintyFactor = Ratio::si(std::sqrt(gains[most].largestVarianceFactor));
        const auto stands = m_learned.present.settings.find(m_project.branches()[chosen.branch].id);
        const bool hasPlace = stands != m_learned.present.settings.end();
        if (hasPlace && chosen.kind != ReadingKind::ClosedValveDp) {
            out.setting = stands->second;
        } else if (chosen.kind == ReadingKind::ClosedValveDp) {
            out.setting = Setting();
        }
        const std::string falls = percentText(Ratio::si(1 - out.largestUncertaintyFactor.si()));
        const project::Branch& branch = m_project.branches()[chosen.branch];
        const std::string& tag = branch.tag;
        switch (chosen.kind) {
            case ReadingKind::ClosedValveDp:
                out.why = {&kHelpfulClosed,
                           tag,
                           {hasPlace ? settingText(m_project, branch, stands->second) : "?", falls}};
                break;
            case ReadingKind::UnreadValveDp:
                out.why = {&kHelpfulGroup, tag, {falls}};
                break;
            case ReadingKind::RepeatedDp:
                out.why = {&kHelpfulRepeat, tag, {falls}};
                break;
        }
        return out;
    }

  private:
    bool isLastOfGroup(std::size_t terminal) const {
        const project::BranchTree& tree = m_project.tree();
        const std::size_t parent = tree.parent(terminal);
        const auto members = parent == project::BranchTree::kNone ? tree.roots() : tree.children(parent);
        return members.back() == terminal;
    }

    void add(std::size_t branch, ReadingKind kind, const estimation::LinkForecast& link) {
        if (!link.drop || link.drop->si() <= 0 || link.lnDrop.weightByUnknown.empty()) {
            return;
        }
        m_candidates.push_back({branch, kind, *link.drop});
        m_readings.push_back({link.lnDrop, std::hypot(kReadingSd, kReadingFloor_Pa / link.drop->si())});
    }

    void openReadings(bool onlyUnread) {
        std::vector<hydraulics::LinkIndex> links;
        std::vector<std::size_t> branches;
        for (std::size_t i = 0; i < m_project.branches().size(); ++i) {
            if (onlyUnread && links.size() == kMostUnreadInLarge) {
                break;
            }
            if (m_loop.branches[i].tableBias && (!onlyUnread || !m_isRead[i])) {
                links.push_back(*m_loop.model->valveLink[i]);
                branches.push_back(i);
            }
        }
        if (links.empty()) {
            return;
        }
        const auto forecast = forecastOf(m_loop.addCase(m_states, m_learned.present), links);
        for (std::size_t i = 0; i < links.size(); ++i) {
            add(branches[i], m_isRead[branches[i]] ? ReadingKind::RepeatedDp : ReadingKind::UnreadValveDp,
                forecast.links[i]);
        }
    }

    /// The valve is taken as all but shut: what stands across it is then as good as the head available, and
    /// one folding of the loop tells how it depends on all unknowns, where a shut link would need one for
    /// each.
    void closedReading(std::size_t terminal) {
        constexpr double kAllButShut = 1e-4;
        const project::Branch& branch = m_project.branches()[terminal];
        const curve::ValveCharacteristic& curve = *m_project.characteristicOf(branch);
        const hydraulics::LinkIndex link = *m_loop.model->valveLink[terminal];
        const hydraulics::LinkChange change{
            link, hydraulics::Element::valve(curve.coefficientFullyOpen() * kAllButShut,
                                             m_project.fluid().density())};
        const std::size_t added = m_loop.addCase(m_states, m_learned.present);
        hydraulics::Network& network = m_loop.learning.cases[added];
        network = *network.with(std::span(&change, 1)).network;
        add(terminal, ReadingKind::ClosedValveDp, forecastOf(added, std::span(&link, 1)).links.front());
    }

    estimation::Forecast forecastOf(std::size_t caseIndex,
                                    std::span<const hydraulics::LinkIndex> links) const {
        return estimation::forecast(m_loop.learning, m_learned.fits->doubting.lnFactorOfUnknowns(), caseIndex,
                                    links);
    }

    const Project& m_project;
    const LearnedLoop& m_learned;
    LoopLearning& m_loop;
    LoopStates& m_states;
    std::vector<bool> m_isRead;
    std::vector<Candidate> m_candidates;
    std::vector<CandidateReading> m_readings;
};

}  // namespace

std::optional<HelpfulReading> helpfulReading(const Project& project, const LearnedLoop& learned,
                                             LoopLearning& loop, LoopStates& states,
                                             const AdviceForecast& forecast) {
    Search search(project, learned, loop, states);
    search.collect(forecast);
    return search.best(forecast);
}

}  // namespace ww::balancing::detail
