// What the commands and fields of the place Adjust do with the valve in hand. What it shows is in
// adjust_place.cpp.
#include <QAccessible>

#include "ui/models/branch_finder.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/places/reading_fix.h"
#include "ui/places/reading_notice.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kNoSuchValve{"no_valve_to_adjust",
                                         "no valve of the job is called \"{1}\"; type its tag or its number"};
constexpr base::MessageForm kIsReference{
    "valve_is_reference",
    "this valve is the reference of its group; read it as a try, or find another valve"};
constexpr base::MessageForm kNoReferenceYet{
    "no_reference_yet", "the group of this valve has no reference yet; read its members in a survey first"};
constexpr base::MessageForm kAllHeld{
    "all_held",
    "every valve of the working order is held; close this round and read all again (Ctrl+Shift+W)"};
constexpr base::MessageForm kNothingAdvised{"nothing_advised",
                                            "no setting is advised for this valve; see the remark beside "
                                            "the table"};
constexpr base::MessageForm kNoRoomForAdvice{
    "no_room_for_advice",
    "the table of advice has no room here; make the window higher or the text smaller (Ctrl+-)"};
constexpr base::MessageForm kSettingOffScale{
    "handle_off_scale", "{1} is not on the scale, {2} to {3}; type what the handle shows"};

}  // namespace

void AdjustPlace::speak() {
    m_word->setAccessibleDescription(spokenWords(m_bridge, m_valve));
    QAccessibleEvent event(m_word, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

bool AdjustPlace::store(const QString& text) {
    if (!m_valve.branch() || !m_valve.hasAim()) {
        return false;
    }
    const base::Id branch = *m_valve.branch();
    const TypedDp what = m_what;
    const auto place = what == TypedDp::Reference ? reference() : std::optional(branch);
    if (!place) {
        return m_bridge.tell(base::Fault{&kNoReferenceYet, {}, {}});
    }
    m_what = TypedDp::Try;
    if (!m_bridge.tell(
            storeTyped(m_bridge, *place, text, what, m_valve.settingText(m_valve.setting()), m_isHolding))) {
        m_what = what;
        return false;
    }
    tellDoubt(m_bridge, *place);
    // Unseen, the valve in hand is as it was before.
    if (isVisible() && m_valve.branch() && m_valve.hasAim()) {
        speak();
    }
    return true;
}

QWidget* AdjustPlace::storeFields() {
    // A dp was read at the setting that stands, so it comes before a setting that is typed beside it.
    const bool isThere = m_content->currentWidget() == m_page && m_valve.branch() &&
                         m_bridge.project().branches().contains(*m_valve.branch());
    for (TryField* field : {m_field, m_settingField}) {
        if (!isThere) {
            field->clear();  // The valve that it was typed for is gone.
        }
        if (!field->commit()) {
            return field;
        }
    }
    return nullptr;
}

void AdjustPlace::takeMeter(PracticeDesk& desk) {
    if (!m_valve.branch() || !m_valve.hasAim()) {
        return;  // The page says what is missing.
    }
    const auto place = m_what == TypedDp::Reference ? reference() : m_valve.branch();
    if (!place) {
        emit m_bridge.messageRaised(base::Fault{&kNoReferenceYet, {}, {}});
        return;
    }
    const bool isTry = m_what == TypedDp::Try || m_what == TypedDp::RepeatedTry;
    const auto shown = desk.tryDp(*place, isTry ? std::optional(m_valve.setting()) : std::nullopt,
                                  m_what == TypedDp::ShutValve);
    if (!shown) {
        emit m_bridge.messageRaised(shown.fault());
        return;
    }
    store(*shown);
}

bool AdjustPlace::moveSetting(const QString& text) {
    const auto typed = base::Decimal::parse(text.toStdString());
    if (!typed) {
        return m_bridge.tell(typed.fault());
    }
    const auto* curve =
        m_bridge.project().characteristicOf(m_bridge.project().branches().at(*m_valve.branch()));
    const quantity::Setting setting = quantity::Setting::si(typed->value());
    if (!curve->covers(setting)) {
        return m_bridge.tell(base::Fault{&kSettingOffScale,
                                         {},
                                         {typed->text(), quantity::concise(curve->lowest().si(), 4),
                                          quantity::concise(curve->fullyOpen().si(), 4)}});
    }
    m_valve.moveTo(setting);
    showValve();
    takeFocus();
    return true;
}

void AdjustPlace::stepSetting(int steps) {
    if (m_valve.branch() && m_valve.hasAim()) {
        m_valve.stepBy(steps);
        showValve();
    }
}

void AdjustPlace::expect(TypedDp what) {
    m_what = what;
    showEntry();
    emit hintChanged();
    m_field->setFocus(Qt::ShortcutFocusReason);
}

std::optional<base::Id> AdjustPlace::reference() const {
    for (const balancing::GroupResult& group : m_bridge.assessment().groups) {
        for (const std::size_t member : group.members) {
            if (m_valve.branch() && member == m_valve.index() && group.reference) {
                return m_bridge.project().branches()[*group.reference].id;
            }
        }
    }
    return std::nullopt;
}

std::vector<std::size_t> AdjustPlace::workingOrder() const {
    const LoopPicture* picture = m_advisor.picture();
    return balancing::workingOrder(
        m_bridge.project(), m_bridge.assessment(),
        picture != nullptr && picture->advice.isReady() ? &picture->advice : nullptr);
}

std::optional<std::size_t> AdjustPlace::next() const {
    return balancing::nextToAdjust(m_bridge.project(), workingOrder(), m_valve.index());
}

void AdjustPlace::findValve() {
    m_find->setFocus(Qt::ShortcutFocusReason);
    m_find->selectAll();
}

void AdjustPlace::jump() {
    const auto order = m_bridge.project().tree().walkingOrder();
    const auto place = placeFound(m_bridge.project(), order, m_find->text());
    if (!place) {
        m_bridge.tell(base::Fault{&kNoSuchValve, {}, {m_find->text().toStdString()}});
        m_find->selectAll();
        return;
    }
    // What is typed belongs to the valve that is left.
    if (!m_field->commit()) {
        m_field->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_find->clear();
    showBranch(m_bridge.project().branches()[order[*place]].id);
    takeFocus();
}

void AdjustPlace::holdAndNext() {
    if (!m_valve.branch() || !m_valve.hasAim()) {
        return;
    }
    if (m_field->text().trimmed().isEmpty() || m_what != TypedDp::Try) {
        if (!m_field->commit() ||
            !m_bridge.tell(holdTyped(m_bridge, *m_valve.branch(), m_valve.settingText(m_valve.setting())))) {
            return;
        }
    } else {
        m_isHolding = true;
        const bool isStored = m_field->commit();
        m_isHolding = false;
        if (!isStored) {
            return;
        }
    }
    const auto following = next();
    if (!following) {
        m_bridge.tell(base::Fault{&kAllHeld, {}, {}});
        return;
    }
    showBranch(m_bridge.project().branches()[*following].id);
    takeFocus();
}

void AdjustPlace::readReference() {
    if (!m_valve.branch()) {
        return;
    }
    const auto tagged = reference();
    if (!tagged || tagged == m_valve.branch()) {
        m_bridge.tell(base::Fault{tagged ? &kIsReference : &kNoReferenceYet, {}, {}});
        return;
    }
    expect(TypedDp::Reference);
}

void AdjustPlace::readShutValve() {
    if (m_valve.branch() && m_valve.hasAim()) {
        expect(TypedDp::ShutValve);
    }
}

void AdjustPlace::readAgain() {
    if (m_valve.branch() && m_valve.hasAim()) {
        expect(m_valve.tries().empty() ? TypedDp::Try : TypedDp::RepeatedTry);
    }
}

void AdjustPlace::takeFix() {
    if (!m_valve.branch()) {
        return;
    }
    const auto taken = takeFixOf(m_bridge, m_advisor, *m_valve.branch());
    if (m_bridge.tell(taken.value_or(base::Fault{&kNoFixOffered, {}, {}}))) {
        tellDoubt(m_bridge, *m_valve.branch());
    }
}

void AdjustPlace::toggleDoubtful() {
    if (m_valve.branch()) {
        m_bridge.tell(m_bridge.toggleDoubtful(*m_valve.branch()));
    }
}

void AdjustPlace::goToAdvice() {
    if (!m_advice->isVisible()) {
        m_bridge.tell(base::Fault{&kNoRoomForAdvice, {}, {}});
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
    m_valve.moveTo(m_advice->model()->at(row).setting);
    showValve();
}

}  // namespace ww::ui
