#include "ui/places/adjust/valve_in_hand.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/prediction.h"
#include "core/balancing/standing_readings.h"
#include "core/curve/valve_flow.h"
#include "core/project/review.h"
#include "core/project/setting_text.h"

namespace ww::ui {
namespace {

using balancing::AimRow;
using quantity::PressureDifference;
using quantity::Setting;

constexpr std::size_t kNeighbors = 5;
constexpr double kSamePlace = 1e-6;

bool isSame(Setting left, Setting right) {
    return std::abs((left - right).si()) < kSamePlace;
}

}  // namespace

ValveInHand::ValveInHand(const WorkbookBridge& bridge, const LoopAdvisor& advisor, Wanted wanted)
    : m_bridge(bridge), m_advisor(advisor), m_wanted(wanted) {}

std::size_t ValveInHand::index() const {
    return project().branches().indexOf(*m_branch);
}

const balancing::Advice* ValveInHand::advice() const {
    const LoopPicture* picture = m_advisor.picture();
    return picture != nullptr ? &picture->advice : nullptr;
}

const curve::ValveCharacteristic* ValveInHand::curve() const {
    return m_branch ? project().characteristicOf(project().branches().at(*m_branch)) : nullptr;
}

void ValveInHand::take(std::optional<base::Id> branch) {
    m_branch = branch;
    refresh();
}

Setting ValveInHand::standing() const {
    const project::Branch& branch = project().branches().at(*m_branch);
    const project::Round* last = project().lastRound();
    const auto entered =
        last != nullptr ? balancing::standingSetting(project(), last->id, branch.id) : branch.setting;
    const Setting found = entered ? Setting::si(entered->value()) : curve()->fullyOpen();
    return std::clamp(found, curve()->lowest(), curve()->fullyOpen());
}

void ValveInHand::refresh() {
    m_aim = {};
    m_tries.clear();
    m_last.reset();
    m_row.reset();
    m_rows.clear();
    m_expected.clear();
    m_proposed.reset();
    m_beside.reset();
    m_available.reset();
    if (m_branch && !project().branches().contains(*m_branch)) {
        m_branch.reset();
    }
    if (!m_branch || curve() == nullptr) {
        return;
    }
    m_step = balancing::readableStep(project(), project().branches().at(*m_branch));
    const Setting stands = standing();
    const auto moved = m_moved.find(*m_branch);
    if (moved != m_moved.end() && isSame(moved->second, stands)) {
        m_moved.erase(moved);
    }
    m_setting = m_moved.contains(*m_branch) ? m_moved[*m_branch] : stands;
    balancing::AimOptions options;
    options.now = m_bridge.now();
    if (const auto& limit = project().job().readingAgeLimit) {
        options.limit = quantity::Duration::si(limit->value() * 60);
    }
    const LoopPicture* picture = m_advisor.picture();
    m_aim = balancing::aim(project(), index(), picture != nullptr ? &picture->learned : nullptr, advice(),
                           options);
    readTries();
    decideUntried();
    if (hasAim() && m_wanted == Wanted::All) {
        m_available = balancing::availableHead(project(), index(), plainTries(),
                                               picture != nullptr ? &picture->learned : nullptr);
    }
    place();
    compareWithAdvice();
}

void ValveInHand::decideUntried() {
    const LoopPicture* picture = m_advisor.picture();
    const project::Round* open = project::roundInHand(project());
    const bool isAdjusting = open == nullptr || open->kind == project::RoundKind::Adjusting;
    const bool isTried = !m_tries.empty() || balancing::hasEarlierTries(project(), *m_branch);
    if (picture == nullptr || !isAdjusting || isTried || !m_last || !m_last->row) {
        return;
    }
    const auto beside = balancing::adviceBesideWord(project(), index(), m_last->decision.word,
                                                    m_last->setting, picture->learned, picture->advice);
    m_last->decision = balancing::decideUntried(project(), m_bridge.assessment(), picture->advice, index(),
                                                m_last->setting, m_last->decision, beside);
}

void ValveInHand::readTries() {
    const auto reading = [&](const project::Reading& made, PressureDifference dp) {
        ValveReading out;
        out.reading = &made;
        out.setting = made.setting ? Setting::si(made.setting->value()) : m_setting;
        out.dp = dp;
        if (hasAim() && curve()->covers(out.setting)) {
            if (curve()->coefficient(out.setting).si() > 0) {
                out.row = balancing::aimAt(project(), index(), *m_aim.used, out.setting);
                // With its reason a dp above the range of its meter stands.
                const auto meter = made.reason.empty() ? made.instrument : std::nullopt;
                const auto word = balancing::wordFor(project(), index(), *out.row, dp, meter);
                out.decision = balancing::decideValve(project(), m_bridge.assessment(), advice(), *m_aim.used,
                                                      index(), out.setting, word);
            } else {
                out.decision.word = balancing::AimWord::Open;
            }
        }
        if (balancing::mustBeReadAgain(m_bridge.assessment(), made.id)) {
            out.isDoubtful = true;
            out.decision = {};
        }
        return out;
    };
    double count = 0;
    for (const project::Reading* made : balancing::triesOf(project(), *m_branch)) {
        if (made->isRepeat && !m_tries.empty()) {
            const PressureDifference mean = (m_tries.back().dp * count + made->dp->value) / (count + 1);
            ++count;
            m_tries.back() = reading(*made, mean);
        } else {
            count = 1;
            m_tries.push_back(reading(*made, made->dp->value));
        }
    }
    if (!m_tries.empty()) {
        m_last = m_tries.back();
        return;
    }
    const project::Round* round = project().lastRound();
    if (round == nullptr) {
        return;
    }
    const project::Reading* counting = balancing::countingReading(project(), round->id, *m_branch);
    if (counting == nullptr || !counting->dp) {
        counting = balancing::earlierReading(project(), round->id, *m_branch);
    }
    if (counting != nullptr && counting->dp) {
        m_last = reading(*counting, counting->dp->value);
    }
}

std::vector<balancing::AimTry> ValveInHand::plainTries() const {
    std::vector<balancing::AimTry> tries;
    for (const ValveReading& made : m_tries) {
        if (made.isDoubtful) {
            continue;
        }
        tries.push_back({made.setting, made.dp});
    }
    return tries;
}

std::optional<PressureDifference> ValveInHand::expectedAt(
    Setting setting, const std::optional<balancing::BranchCharacteristic>& found) const {
    const curve::FlowCoefficient coefficient = curve()->coefficient(setting);
    if (coefficient.si() <= 0) {
        return std::nullopt;
    }
    if (found) {
        // Two resistances in series share what is available.
        const auto valve = curve::valveResistance(coefficient, project().fluid().density());
        return found->available * (valve.si() / (valve.si() + found->path.si()));
    }
    const LoopPicture* picture = m_advisor.picture();
    if (picture == nullptr || picture->learned.fits == nullptr) {
        return std::nullopt;
    }
    balancing::LoopState state = picture->learned.present;
    state.settings[*m_branch] = setting;
    const auto result = balancing::predict(project(), state, picture->learned.resistances);
    return result.prediction ? result.prediction->branches[index()].valveDrop : std::nullopt;
}

void ValveInHand::place() {
    m_row.reset();
    m_rows.clear();
    m_expected.clear();
    m_proposed.reset();
    if (!hasAim() || curve()->coefficient(m_setting).si() <= 0) {
        return;
    }
    m_row = balancing::aimAt(project(), index(), *m_aim.used, m_setting);
    if (m_wanted == Wanted::WordAlone) {
        return;
    }
    m_rows = balancing::aimRows(project(), index(), *m_aim.used, m_setting, m_step, kNeighbors);
    const LoopPicture* picture = m_advisor.picture();
    const balancing::LearnedLoop* learned = picture != nullptr ? &picture->learned : nullptr;
    const auto tries = plainTries();
    const auto found = balancing::branchCharacteristic(project(), index(), tries, learned);
    for (const AimRow& row : m_rows) {
        m_expected.push_back(expectedAt(row.setting, found));
    }
    m_proposed =
        balancing::proposedSetting(project(), index(), *m_aim.used, tries, m_step, learned, advice());
}

const balancing::SettingAdvice* ValveInHand::advised() const {
    if (advice() == nullptr) {
        return nullptr;
    }
    const auto& settings = advice()->settings;
    const auto found = std::find_if(settings.begin(), settings.end(),
                                    [&](const auto& each) { return each.branch == index(); });
    return found != settings.end() && balancing::namesSetting(*found) ? &*found : nullptr;
}

bool ValveInHand::isAdviceReady() const {
    return advice() != nullptr && advice()->status != balancing::AdviceStatus::NotReady;
}

bool ValveInHand::isAsAdvised() const {
    return advised() != nullptr && balancing::standsAt(*advised(), m_setting);
}

PressureDifference ValveInHand::aimAt(Setting setting) const {
    return balancing::aimAt(project(), index(), *m_aim.used, setting).dp;
}

AimRow ValveInHand::rowOf(const balancing::AimFlow& flow) const {
    return balancing::aimAt(project(), index(), flow, m_setting);
}

void ValveInHand::compareWithAdvice() {
    m_beside.reset();
    const LoopPicture* picture = m_advisor.picture();
    const auto said = word();
    if (picture != nullptr && said) {
        const Setting at = m_last && m_row ? m_last->setting : m_setting;
        m_beside =
            balancing::adviceBesideWord(project(), index(), *said, at, picture->learned, picture->advice);
        if (const auto* decided = decision(); m_beside && m_beside->reason && decided && decided->rule) {
            m_beside->reason = decided->rule;
        }
    }
}

base::Decimal ValveInHand::settingText(Setting setting) const {
    const project::Branch& branch = project().branches().at(*m_branch);
    return project::writtenSetting(project().valves().at(*branch.valve).scale, setting);
}

bool ValveInHand::isMoved() const {
    return m_branch && m_moved.contains(*m_branch);
}

void ValveInHand::moveTo(Setting setting) {
    if (curve() == nullptr) {
        return;
    }
    m_setting = std::clamp(setting, curve()->lowest(), curve()->fullyOpen());
    if (isSame(m_setting, standing())) {
        m_moved.erase(*m_branch);
    } else {
        m_moved[*m_branch] = m_setting;
    }
    place();
    compareWithAdvice();
}

bool ValveInHand::stepBy(int steps) {
    if (curve() == nullptr) {
        return false;
    }
    const Setting before = m_setting;
    moveTo(balancing::steppedSetting(project(), index(), m_setting, m_step, steps));
    return !isSame(before, m_setting);
}

bool ValveInHand::turnBy(int turns) {
    if (curve() == nullptr) {
        return false;
    }
    const project::Branch& branch = project().branches().at(*m_branch);
    const bool isTurns = project().valves().at(*branch.valve).scale == project::Scale::Turns;
    const Setting before = m_setting;
    moveTo(m_setting + Setting::si(isTurns ? turns : 10.0 * turns));
    return !isSame(before, m_setting);
}

std::optional<balancing::AimWord> ValveInHand::word() const {
    if (hasAim() && !m_row) {
        return balancing::AimWord::Open;
    }
    if (isReadElsewhere()) {
        return balancing::AimWord::ReadAgain;
    }
    return m_last ? std::optional(m_last->decision.word) : std::nullopt;
}

const balancing::ValveDecision* ValveInHand::decision() const {
    return m_last && m_row && !isReadElsewhere() ? &m_last->decision : nullptr;
}

bool ValveInHand::isReadElsewhere() const {
    return m_last && !isSame(m_last->setting, m_setting);
}

bool ValveInHand::isAtStop() const {
    return curve() != nullptr &&
           (isSame(m_setting, curve()->lowest()) || isSame(m_setting, curve()->fullyOpen()));
}

}  // namespace ww::ui
