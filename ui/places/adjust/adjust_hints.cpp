// The keys that act in the place Adjust, by what it shows and what has the keys.
#include <cmath>

#include "ui/places/adjust/adjust_place.h"
#include "ui/widgets/control_keys.h"

namespace ww::ui {

KeyHints AdjustPlace::hint(const QWidget* inHand) const {
    const project::Project& project = m_bridge.project();
    KeyHints keys;
    if (isValveShown()) {
        keys.add(controlHint(inHand));
        if (isReadingApart()) {
            return keys;
        }
        return keys.add(commandHint()).add(tr("Ctrl+J find"), inHand != m_find);
    }
    return keys.add(findHint(), inHand == m_find)
        .add(tr("Alt+3 walk"), project.rounds().empty())
        .add(tr("Ctrl+J find"), !project.branches().empty() && inHand != m_find);
}

/// What acts in the control that has the keys and nowhere else.
KeyHints AdjustPlace::controlHint(const QWidget* inHand) const {
    const bool isWritable = !m_bridge.isReadOnly();
    const bool isBlank = m_field->isBlank();
    KeyHints keys;
    if (inHand == m_field && isReadingApart()) {
        return keys.add(tr("digits Enter stores this one reading and returns"))
            .add(isBlank ? tr("Esc gives it up") : tr("Esc clears"));
    }
    if (inHand == m_field) {
        return keys.add(tr("digits Enter logs a try"), takesReadings())
            .add(tr("Up, Down setting"), isWritable && isBlank)
            .add(tr("Esc clears"), !isBlank);
    }
    if (inHand == m_settingField) {
        return keys.add(tr("digits Enter moves the handle"), isWritable)
            .add(tr("Up, Down setting"), isWritable && isBlank && m_settingField->isBlank())
            .add(m_settingField->isBlank() ? tr("Esc back") : tr("Esc clears"));
    }
    if (inHand == m_advice->table()) {
        return keys
            .add(tr("Enter takes the setting"),
                 isWritable && isBlank && m_advice->model()->isReady() && m_advice->branchInHand())
            .add(controlKeys(*inHand))
            .add(tr("Alt+Shift+Up, Alt+Shift+Down working order"), isWritable && m_advice->branchInHand())
            .add(tr("Esc back"));
    }
    if (inHand == m_find) {
        return findHint();
    }
    return keys.add(inHand != nullptr && isAncestorOf(inHand) ? controlKeys(*inHand) : KeyHints());
}

KeyHints AdjustPlace::findHint() const {
    return KeyHints()
        .add(tr("Enter goes to the valve"), !m_find->text().trimmed().isEmpty())
        .add(tr("Esc back"), isValveShown());
}

/// What acts wherever the keys are.
KeyHints AdjustPlace::commandHint() const {
    const bool isWritable = !m_bridge.isReadOnly();
    const bool takes = takesReadings();
    const auto tagged = reference();
    const bool isTried = !m_valve.tries().empty() && !m_valve.isReadElsewhere();
    const bool isDone = !m_hasNext && balancing::isHeld(m_bridge.project(), *m_valve.branch());
    const bool hasAdvice = m_advice->isVisibleTo(this) && m_advice->model()->rowCount() > 0;
    return KeyHints()
        .add(tr("Ctrl+Shift+W closes the round first"), isWritable && !takes)
        .add(m_hasNext ? tr("Ctrl+Enter hold, next") : tr("Ctrl+Enter hold"),
             takes && ((isTried && !isDone) || !m_field->isBlank()))
        .add(tr("Ctrl+Shift+T advised setting"), canTakeAdvice())
        .add(tr("Ctrl+B reference"), isWritable && tagged && tagged != m_valve.branch())
        .add(tr("Ctrl+I advice"), hasAdvice && !m_advice->table()->hasFocus());
}

bool AdjustPlace::canTakeAdvice() const {
    const int row = m_valve.branch() ? m_advice->model()->rowOf(*m_valve.branch()) : -1;
    constexpr double kSame = 1e-6;
    const bool isLeft = row >= 0 && m_advice->model()->isReady() && m_advisor.picture() != nullptr &&
                        m_advisor.picture()->advice.status != balancing::AdviceStatus::Verified;
    return isLeft && !m_bridge.isReadOnly() && m_field->isBlank() && !isWordAgainstAdvice(m_valve) &&
           std::abs((m_advice->model()->at(row).setting - m_valve.setting()).si()) > kSame;
}

}  // namespace ww::ui
