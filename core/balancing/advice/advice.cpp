#include "core/balancing/advice/advice.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/adjusting.h"
#include "core/balancing/advice/advice_forms.h"
#include "core/balancing/advice/order_of_work.h"
#include "core/balancing/advice/pump_advice.h"
#include "core/balancing/assess.h"
#include "core/balancing/detail/advice_numbers.h"
#include "core/balancing/detail/band_probability.h"
#include "core/balancing/detail/confirming_round.h"
#include "core/balancing/detail/round_numbers.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/balancing/prediction.h"
#include "core/curve/valve_flow.h"
#include "core/project/setting_text.h"

namespace ww::balancing {

namespace {

using project::Branch;
using project::Project;

/// Below this part of its scale a valve's table and marks are not reliable: half a turn of four (common
/// practice, no source).
Setting lowestReliable(const project::ValveModel& valve, const curve::ValveCharacteristic& curve) {
    constexpr double kHalfTurn = 0.5;
    constexpr double kPartOfScale = 0.125;
    return valve.scale == project::Scale::Turns ? Setting::si(kHalfTurn) : curve.fullyOpen() * kPartOfScale;
}

class Adviser {
  public:
    Adviser(const Project& project, const LearnedLoop& learned, const AdviceOptions& options)
        : m_project(project),
          m_learned(learned),
          m_options(options),
          m_states(project, detail::priorResistances(project)) {}

    Advice advise() {
        if (m_learned.fits == nullptr) {
            m_out.whyNot = m_learned.faults;
            return std::move(m_out);
        }
        BalanceResult result = proportionalBalance(m_project, m_learned.present, m_learned.resistances);
        if (!result.balance) {
            m_out.whyNot = std::move(result.faults);
            return std::move(m_out);
        }
        m_balance = std::move(*result.balance);
        m_out.indexPath = m_balance.indexPath;
        roundSettings();
        forecast();
        fillSettings();
        m_out.pump = pumpAdvice(m_project, m_balance, m_learned.present, m_learned.resistances);
        fillNotes();
        judge();
        findIndexSteps();
        findNext();
        findHelpful();
        return std::move(m_out);
    }

  private:
    const Branch& branchAt(std::size_t index) const { return m_project.branches()[index]; }

    std::optional<Setting> present(std::size_t branch) const {
        const auto found = m_learned.present.settings.find(branchAt(branch).id);
        return found == m_learned.present.settings.end() ? std::nullopt : std::optional(found->second);
    }

    static bool isSettable(const BalancedBranch& branch) {
        return branch.reach == BalanceReach::Set || branch.reach == BalanceReach::FullyOpen ||
               branch.reach == BalanceReach::BelowScale;
    }

    void roundSettings() {
        m_advised = m_learned.present;
        m_rounded.resize(m_balance.branches.size());
        m_steps.resize(m_balance.branches.size());
        std::unordered_map<Id, Setting> steps;
        for (const BalancedBranch& branch : m_balance.branches) {
            if (!isSettable(branch)) {
                continue;
            }
            const Branch& record = branchAt(branch.branch);
            const auto& curve = *m_project.characteristicOf(record);
            const auto [step, isNew] = steps.try_emplace(*record.valve);
            if (isNew) {
                step->second = m_options.step.value_or(readableStep(m_project, record));
            }
            m_steps[branch.branch] = step->second;
            Setting rounded = *branch.setting;
            if (branch.reach == BalanceReach::Set) {
                rounded = std::clamp(step->second * std::round(rounded / step->second), curve.lowest(),
                                     curve.fullyOpen());
                if (curve.coefficient(rounded).si() <= 0) {
                    rounded = step->second * std::ceil(*branch.setting / step->second);
                }
            }
            m_rounded[branch.branch] = rounded;
            m_advised.settings[record.id] = rounded;
        }
    }

    void forecast() {
        m_loop = m_learned.fits->loop;
        m_forecast = detail::adviceForecast(m_project, *m_learned.fits, m_loop, m_states, m_advised);
        m_out.totalFlow = m_forecast.totalFlow;
        m_out.pumpRise = m_forecast.pumpRise;
        double low = 0;
        double high = 0;
        bool isFirst = true;
        std::vector<double> indicated;
        std::vector<double> actual;
        std::vector<double> indicatedSds;
        std::vector<double> actualSds;
        for (const std::size_t branch : m_forecast.matched) {
            const double share = m_forecast.indicated[branch].si();
            low = isFirst ? share : std::min(low, share);
            high = isFirst ? share : std::max(high, share);
            isFirst = false;
            indicated.push_back(share);
            actual.push_back(m_forecast.actual[branch].si());
            indicatedSds.push_back(m_forecast.indicatedSd[branch].si());
            actualSds.push_back(m_forecast.actualSd[branch].si());
        }
        m_out.spread = Ratio::si(high - low);
        const double from = 1 - band();
        const double to = 1 + band();
        m_out.isProbabilityBound = m_forecast.indicatedCovarianceRatio.empty() && !m_forecast.matched.empty();
        if (m_out.isProbabilityBound) {
            m_out.indicatedProbability =
                Ratio::si(detail::leastProbabilityWithin(indicated, indicatedSds, from, to));
            m_out.actualProbability = Ratio::si(detail::leastProbabilityWithin(actual, actualSds, from, to));
        } else {
            m_out.indicatedProbability = Ratio::si(
                detail::probabilityWithin(indicated, m_forecast.indicatedCovarianceRatio, from, to));
            m_out.actualProbability =
                Ratio::si(detail::probabilityWithin(actual, m_forecast.actualCovarianceRatio, from, to));
        }
    }

    double band() const { return m_project.job().matchingBand.value.si(); }

    void fillSettings() {
        const PredictionResult now = predict(m_project, m_learned.present, m_learned.resistances);
        m_now.resize(m_balance.branches.size());
        if (now.prediction) {
            for (const BranchPrediction& branch : now.prediction->branches) {
                m_now[branch.branch] = branch.ofTarget.value_or(Ratio());
            }
        }
        for (const std::size_t branch : orderOfWork(m_project, m_now)) {
            if (isSettable(m_balance.branches[branch])) {
                m_out.settings.push_back(settingOf(m_balance.branches[branch]));
            }
        }
    }

    SettingAdvice settingOf(const BalancedBranch& balanced) const {
        const std::size_t index = balanced.branch;
        const auto& curve = *m_project.characteristicOf(branchAt(index));
        SettingAdvice made;
        made.branch = index;
        made.reach = balanced.reach;
        made.setting = *m_rounded[index];
        made.exact = *balanced.setting;
        made.step = m_steps[index];
        made.coefficient = curve.coefficient(made.setting);
        made.isFullyOpen = made.setting >= curve.fullyOpen();
        made.isReference = balanced.isReference;
        made.present = present(index);
        constexpr double kHalf = 0.5 - 1e-9;
        made.isSet =
            made.present && std::abs(made.present->si() - made.setting.si()) <= kHalf * made.step.si();
        made.flow = m_forecast.flows[index];
        made.dp = m_forecast.drops[index].value_or(PressureDifference());
        made.indicated = {m_forecast.indicated[index], m_forecast.indicatedSd[index]};
        made.actual = {m_forecast.actual[index], m_forecast.actualSd[index]};
        // The setting is as uncertain as the share it makes, by how the share answers the handle.
        const double answer = m_forecast.ownResponse[index].si() * curve.logSlope(made.setting);
        if (!made.isFullyOpen && answer > 0 && made.indicated.ofTarget.si() > 0) {
            made.settingUncertainty =
                Setting::si(made.indicated.uncertainty.si() / made.indicated.ofTarget.si() / answer);
        }
        addNotes(balanced, made);
        return made;
    }

    void addNotes(const BalancedBranch& balanced, SettingAdvice& made) const {
        const Branch& branch = branchAt(balanced.branch);
        const project::ValveModel& valve = m_project.valves().at(*branch.valve);
        const auto& curve = *m_project.characteristicOf(branch);
        const PressureDifference minimum = detail::readableMinimum(branch, &valve, nullptr);
        if (made.dp < minimum) {
            made.notes.push_back({&kAdviceValveTooLarge,
                                  branch.tag,
                                  {detail::dpText(m_project, made.dp), detail::dpText(m_project, minimum)}});
        }
        const Setting reliable = lowestReliable(valve, curve);
        if (balanced.reach == BalanceReach::BelowScale) {
            made.notes.push_back({&kAdviceBelowScale,
                                  branch.tag,
                                  {settingText(m_project, branch, curve.lowest()),
                                   detail::percentText(m_forecast.indicated[balanced.branch])}});
        } else if (made.setting < reliable) {
            made.notes.push_back(
                {&kAdviceBelowReliable,
                 branch.tag,
                 {settingText(m_project, branch, made.setting), settingText(m_project, branch, reliable)}});
        }
    }

    void fillNotes() {
        for (const ShiftedRound& shifted : m_learned.shifted) {
            m_out.notes.push_back(shifted.why);
        }
        if (m_learned.isMisfit) {
            m_out.notes.push_back(
                {&kModelMisfit, "", {detail::smallPercentText(m_learned.misfitProbability)}});
        }
        if (m_learned.isPriorWidened) {
            m_out.notes.push_back({&kModelPriorWidened, "", {}});
        }
        for (const BalancedBranch& branch : m_balance.branches) {
            const std::string& tag = branchAt(branch.branch).tag;
            if (branch.reach == BalanceReach::SelfActing) {
                m_out.notes.push_back({&kAdviceSelfActing, tag, {}});
            } else if (branch.reach == BalanceReach::NoValve && branch.unspent.si() > 0 &&
                       m_project.tree().isTerminal(branch.branch) &&
                       std::abs(m_forecast.indicated[branch.branch].si() - 1) > band()) {
                m_out.notes.push_back(
                    {&kAdviceNoValve, tag, {detail::percentText(m_forecast.indicated[branch.branch])}});
            }
        }
    }

    /// By branch: whether it was read at all, and whether a reading of it counts.
    void findRead() {
        m_wasRead.assign(m_project.branches().size(), false);
        m_isRead = m_wasRead;
        for (const ComparedReading& reading : m_learned.readings) {
            if (reading.branch) {
                m_wasRead[*reading.branch] = true;
                m_isRead[*reading.branch] = m_isRead[*reading.branch] || !reading.isLeftOut;
            }
        }
    }

    void judge() {
        findRead();
        if (m_out.settings.empty()) {
            m_out.whyNot.push_back({&kAdviceNothingToSet, "", {}});
        }
        if (m_learned.outcome != LoopLearnOutcome::Learned) {
            m_out.whyNot.push_back({&kAdviceNotSettled, "", {}});
        }
        for (const std::size_t terminal : m_forecast.matched) {
            if (!m_isRead[terminal]) {
                m_out.whyNot.push_back(
                    {m_wasRead[terminal] ? &kAdviceAllDoubtful : &kAdviceUnread, branchAt(terminal).tag, {}});
            }
        }
        std::optional<std::size_t> worst;
        for (const std::size_t terminal : m_forecast.matched) {
            if (!worst || m_forecast.indicatedSd[terminal] > m_forecast.indicatedSd[*worst]) {
                worst = terminal;
            }
        }
        constexpr double kTwoSided = 2;
        if (worst && kTwoSided * m_forecast.indicatedSd[*worst].si() > band()) {
            m_out.whyNot.push_back({&kAdviceUncertain,
                                    branchAt(*worst).tag,
                                    {detail::percentText(Ratio::si(band())),
                                     detail::percentText(m_forecast.indicatedSd[*worst])}});
        }
        if (m_out.whyNot.empty()) {
            m_confirmed = detail::confirmingRound(m_project, m_learned, m_forecast.matched);
            m_out.status = isVerified() ? AdviceStatus::Verified : AdviceStatus::Unverified;
        }
    }

    /// A round confirms every share, and every valve on the index path stands open in it.
    bool isVerified() const {
        return m_confirmed &&
               std::all_of(m_out.indexPath.begin(), m_out.indexPath.end(), [&](std::size_t branch) {
                   return detail::isUnthrottled(m_project, m_confirmed->branches[branch]);
               });
    }

    /// From the round that confirms the shares; once a valve was turned since, from the last one before it.
    void findIndexSteps() {
        const LoopState& present = m_learned.present;
        if (m_confirmed) {
            m_out.indexSteps =
                indexSteps(m_project, assess(m_project, m_project.lastRound()->id, {.byDesignOfToday = true}),
                           present, m_learned.resistances, m_steps);
        } else if (m_out.isReady() && m_learned.doubtful.empty()) {
            m_out.indexSteps = indexStepsLeft(m_project, present, m_learned.resistances, m_steps);
        }
    }

    void findNext() {
        if (!m_out.indexSteps.empty()) {
            const IndexStep& step = m_out.indexSteps.front();
            m_out.next = {step.branch, step.setting, dpAfter(step.branch, step.setting), step.why};
            return;
        }
        if (m_out.status == AdviceStatus::Verified) {
            return;
        }
        // A valve that was left on share stays until the next round shows that it must be turned.
        const auto next = std::find_if(
            m_out.settings.begin(), m_out.settings.end(),
            [&](const SettingAdvice& s) { return !s.isSet && !isHeld(m_project, branchAt(s.branch).id); });
        if (next == m_out.settings.end()) {
            return;
        }
        NextMove move;
        move.branch = next->branch;
        move.setting = next->setting;
        move.dp = dpAfter(next->branch, next->setting);
        const project::Branch& record = branchAt(next->branch);
        const std::string from = next->present ? settingText(m_project, record, *next->present) : "?";
        const std::string to = settingText(m_project, record, next->setting);
        const std::string& tag = record.tag;
        move.reason =
            next->isFullyOpen
                ? base::Fault{&kAdviceOpenFirst, tag, {from, to}}
                : base::Fault{&kAdviceNextMove, tag, {detail::percentText(m_now[next->branch]), from, to}};
        m_out.next = std::move(move);
    }

    /// Read right after that turn, with all others as they stand.
    PressureDifference dpAfter(std::size_t branch, Setting setting) const {
        LoopState state = m_learned.present;
        state.settings[branchAt(branch).id] = setting;
        const auto then = predict(m_project, state, m_learned.resistances).prediction;
        const auto drop = then ? then->branches[branch].valveDrop : std::nullopt;
        return drop.value_or(m_forecast.drops[branch].value_or(PressureDifference()));
    }

    void findHelpful() {
        if (!m_learned.doubtful.empty()) {
            m_out.helpful =
                readingOf(m_learned.doubtful.front().branch, ReadingKind::RepeatedDp, kHelpfulDoubtful);
            return;
        }
        for (const std::size_t terminal : m_forecast.matched) {
            if (!m_isRead[terminal]) {
                m_out.helpful = readingOf(terminal, ReadingKind::UnreadValveDp, kHelpfulUnread);
                return;
            }
        }
        if (m_options.findHelpfulReading) {
            m_out.helpful = detail::helpfulReading(m_project, m_learned, m_loop, m_states, m_forecast);
        }
    }

    HelpfulReading readingOf(std::size_t branch, ReadingKind kind, const base::MessageForm& form) const {
        HelpfulReading made;
        made.branch = branch;
        made.kind = kind;
        made.setting = present(branch);
        made.largestUncertaintyFactor = Ratio::si(1);
        if (const auto now = predict(m_project, m_learned.present, m_learned.resistances); now.prediction) {
            made.expectedDp = now.prediction->branches[branch].valveDrop.value_or(PressureDifference());
        }
        made.why = {&form, branchAt(branch).tag, {}};
        return made;
    }

    const Project& m_project;
    const LearnedLoop& m_learned;
    const AdviceOptions& m_options;
    detail::LoopStates m_states;
    detail::LoopLearning m_loop;
    ProportionalBalance m_balance;
    LoopState m_advised;
    std::vector<std::optional<Setting>> m_rounded;
    std::vector<Setting> m_steps;
    detail::AdviceForecast m_forecast;
    std::optional<detail::RoundNumbers> m_confirmed;  ///< the round that confirms every share
    std::vector<bool> m_wasRead;
    std::vector<bool> m_isRead;
    std::vector<Ratio> m_now;  ///< of target by branch, as the loop stands
    Advice m_out;
};

}  // namespace

Advice advise(const Project& project, const LearnedLoop& learned, const AdviceOptions& options) {
    return Adviser(project, learned, options).advise();
}

}  // namespace ww::balancing
