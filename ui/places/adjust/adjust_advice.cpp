// What the place Adjust does with the advised settings: which one it proposes, and taking one. What else its
// commands do is in adjust_actions.cpp.
#include <algorithm>

#include "core/balancing/advice/advice_forms.h"
#include "ui/places/adjust/adjust_place.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kNothingAdvised{"nothing_advised",
                                            "no setting is advised for this valve; see the remark beside "
                                            "the table"};
constexpr base::MessageForm kNoTableOfAdvice{"no_table_of_advice",
                                             "there is no table of advice here; do first what the page says"};

/// Nothing is left to turn.
bool isConfirmed(const LoopPicture& picture) {
    return picture.advice.status == balancing::AdviceStatus::Verified;
}

}  // namespace

bool AdjustPlace::holds(const ValveInHand& valve) const {
    const auto& beside = valve.besideAdvice();
    return valve.word() == balancing::AimWord::Hold && beside && beside->reason;
}

bool AdjustPlace::isWordAgainstAdvice(const ValveInHand& valve) const {
    const auto& beside = valve.besideAdvice();
    return holds(valve) || (beside && beside->stand == balancing::AdviceStand::ReadingLeads);
}

bool AdjustPlace::holdsAgainstAdvice() const {
    return holds(m_valve);
}

std::optional<base::Id> AdjustPlace::offered() const {
    const LoopPicture* picture = m_advisor.picture();
    if (picture == nullptr || !m_valve.branch() || isConfirmed(*picture)) {
        const auto step = picture != nullptr ? indexStepToTurn(*picture, {}) : std::nullopt;
        return step ? std::optional(m_bridge.project().branches()[*step].id) : std::nullopt;
    }
    const auto& settings = picture->advice.settings;
    const bool isLeft =
        std::any_of(settings.begin(), settings.end(), [&](const balancing::SettingAdvice& advised) {
            return advised.branch == m_valve.index() && !advised.isSet;
        });
    const bool isTaken = m_valve.hasAim() && !isWordAgainstAdvice(m_valve) &&
                         !balancing::isHeld(m_bridge.project(), *m_valve.branch());
    return isLeft && isTaken ? m_valve.branch() : m_offerElsewhere;
}

std::optional<std::size_t> AdjustPlace::indexStepToTurn(const LoopPicture& picture,
                                                        std::optional<base::Id> but) const {
    for (const balancing::IndexStep& step : picture.advice.indexSteps) {
        const base::Id& branch = m_bridge.project().branches()[step.branch].id;
        if (branch != but && !isDone(branch)) {
            return step.branch;
        }
    }
    return std::nullopt;
}

void AdjustPlace::findOfferElsewhere() {
    // What would be said of a valve costs a prediction.
    constexpr int kMostProbed = 3;
    m_offerElsewhere.reset();
    const LoopPicture* picture = m_advisor.picture();
    const auto order = workingOrder();
    if (picture == nullptr || order.empty() || isConfirmed(*picture)) {
        return;
    }
    const project::Project& project = m_bridge.project();
    const std::size_t own = m_valve.branch() ? m_valve.index() : project.branches().size();
    int probed = 0;
    for (const std::size_t candidate :
         balancing::leftToTurn(project, order, own, picture->advice, leftAsRead())) {
        if (++probed > kMostProbed) {
            return;
        }
        const base::Id& id = project.branches()[candidate].id;
        ValveInHand there(m_bridge, m_advisor, ValveInHand::Wanted::WordAlone);
        there.take(id);
        if (there.hasAim() && !isWordAgainstAdvice(there)) {
            m_offerElsewhere = id;
            return;
        }
    }
}

void AdjustPlace::goToAdvice() {
    if (m_content->currentWidget() != m_page) {
        m_bridge.tell(base::Fault{&kNoTableOfAdvice, {}, {}});
    } else if (m_advice->model()->rowCount() > 0) {
        m_advice->table()->setFocus(Qt::ShortcutFocusReason);
    }
}

void AdjustPlace::takeAdvice() {
    const int row = m_valve.branch() ? m_advice->model()->rowOf(*m_valve.branch()) : -1;
    if (row < 0) {
        m_bridge.tell(base::Fault{&kNothingAdvised, {}, {}});
        return;
    }
    if (!m_advice->model()->isReady()) {
        const auto& whyNot = m_advice->model()->shown()->advice.whyNot;
        m_bridge.tell(whyNot.empty() ? base::Fault{&kNothingAdvised, {}, {}} : whyNot.front());
        return;
    }
    if (m_advice->model()->isLeftAsItIs(row)) {
        m_bridge.tell(base::Fault{&balancing::kAdviceVerified, {}, {}});
        return;
    }
    if (holdsAgainstAdvice()) {
        m_bridge.tell(*m_valve.besideAdvice()->reason);
        return;
    }
    if (!mayMoveHandle()) {
        return;
    }
    const auto* decided = m_valve.decision();
    m_valve.moveTo(decided != nullptr && decided->turnTo ? *decided->turnTo
                                                         : m_advice->model()->askedAt(row));
    showValve();
}

}  // namespace ww::ui
