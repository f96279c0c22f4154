// What the commands and fields of the place Adjust do with the valve in hand. What it shows is in
// adjust_place.cpp.
#include <QAccessible>
#include <QSignalBlocker>
#include <algorithm>
#include <utility>

#include "core/balancing/adjusting.h"
#include "core/balancing/walk_progress.h"
#include "core/project/review.h"
#include "ui/models/branch_finder.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/places/reading_fix.h"
#include "ui/text/words.h"

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
constexpr base::MessageForm kAllHeldButUnread{
    "all_held_but_unread",
    "every valve of the working order is held, but {1} of {2} valves are not read in this round, the next "
    "along the route is {3}; go to each in Walk (Alt+3, Ctrl+Shift+Down), then close the round "
    "(Ctrl+Shift+W)"};
constexpr base::MessageForm kTypedNotStored{
    "typed_not_stored",
    "\"{1}\" is typed and not stored; store it with Enter or clear it with Esc before the handle moves"};
constexpr base::MessageForm kTypedKept{
    "typed_kept",
    "\"{1}\" is typed in Adjust and not stored; store it there with Enter, or clear it with Esc"};
constexpr base::MessageForm kHeldAgainstWord{
    "held_against_word",
    "{1} is held although its word is {2}; go back and turn it, or take the hold back with Ctrl+Z"};
constexpr base::MessageForm kReadShut{
    "read_shut", "{1} is the head available here with the valve shut; set the handle back to {2}"};
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
    const bool opensRound = project::roundInHand(m_bridge.project()) == nullptr;
    if (opensRound && m_bridge.nextReader() != m_bridge.person()) {
        m_bridge.setPerson(m_bridge.nextReader());
    }
    if (!m_bridge.tell(
            storeTyped(m_bridge, *place, text, what, m_valve.settingText(m_valve.setting()), m_isHolding))) {
        m_what = what;
        return false;
    }
    if (!m_readingNotice.tell(*place, opensRound) && what == TypedDp::ShutValve) {
        const project::Reading* shut = balancing::shutReading(m_bridge.project(), branch);
        emit m_bridge.messageRaised(
            base::Fault{&kReadShut,
                        m_bridge.project().branches().at(branch).tag,
                        {shut->dp->text(), m_valve.settingText(m_valve.setting()).text()}});
    }
    // Unseen, the valve in hand is as it was before.
    if (isVisible() && m_valve.branch() && m_valve.hasAim()) {
        speak();
    }
    return true;
}

QWidget* AdjustPlace::storeFields() {
    // A dp was read at the setting that stands, so it comes before a setting that is typed beside it.
    const auto refused = [this]() -> QWidget* {
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
    };
    QWidget* found = refused();
    while (found == nullptr && !m_typed.empty()) {
        const base::Id branch = m_typed.begin()->first;
        if (!m_bridge.project().branches().contains(branch)) {
            m_typed.erase(branch);
            continue;
        }
        m_bridge.selectBranch(branch);
        refresh();
        m_typed.erase(branch);
        found = refused();
    }
    return found;
}

void AdjustPlace::exchangeTyped(const std::optional<base::Id>& taken) {
    if (m_valve.branch() && !(m_field->isBlank() && m_settingField->isBlank())) {
        m_typed[*m_valve.branch()] = {m_field->text(), m_settingField->text(), m_what};
    }
    const auto kept = taken ? m_typed.find(*taken) : m_typed.end();
    const Typed typed = kept != m_typed.end() ? kept->second : Typed{};
    if (kept != m_typed.end()) {
        m_typed.erase(kept);
    }
    // The newest picture is taken anyway.
    const QSignalBlocker blocker(m_field);
    m_isPictureWaiting = false;
    m_field->setText(typed.dp);
    m_isFieldBlank = m_field->isBlank();
    m_settingField->setText(typed.setting);
    m_what = typed.what;
}

void AdjustPlace::tellTyped() {
    if (m_field->isBlank() || !m_valve.branch() ||
        !m_bridge.project().branches().contains(*m_valve.branch())) {
        return;
    }
    m_bridge.tell(base::Fault{&kTypedKept,
                              m_bridge.project().branches().at(*m_valve.branch()).tag,
                              {m_field->text().trimmed().toStdString()}});
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
                                         {typed->text(), m_valve.settingText(curve->lowest()).text(),
                                          m_valve.settingText(curve->fullyOpen()).text()}});
    }
    m_valve.moveTo(setting);
    showValve();
    takeFocus();
    return true;
}

bool AdjustPlace::mayMoveHandle() {
    if (m_field->isBlank()) {
        return true;
    }
    m_field->setRefused();
    return m_bridge.tell(base::Fault{&kTypedNotStored, {}, {m_field->text().trimmed().toStdString()}});
}

void AdjustPlace::stepSetting(int steps) {
    if (m_valve.branch() && m_valve.hasAim() && mayMoveHandle()) {
        m_valve.stepBy(steps);
        showValve();
    }
}

void AdjustPlace::expect(TypedDp what) {
    m_what = what;
    isValveShown() ? showValve() : showEntry();
    m_field->setFocus(Qt::ShortcutFocusReason);
}

std::optional<base::Id> AdjustPlace::reference() const {
    if (!m_valve.branch()) {
        return std::nullopt;
    }
    const LoopPicture* picture = m_advisor.picture();
    const auto found = balancing::referenceOf(
        m_bridge.assessment(), picture != nullptr ? &picture->advice : nullptr, m_valve.index());
    return found ? std::optional(m_bridge.project().branches()[*found].id) : std::nullopt;
}

void AdjustPlace::watchRound(const project::ChangeSet& changes) {
    const project::Round* open = project::roundInHand(m_bridge.project());
    if (open != nullptr || changes.isEmpty()) {
        m_selectedAtClosing.reset();
    } else if (m_openRound && m_bridge.project().rounds().contains(*m_openRound) && !isVisible()) {
        m_selectedAtClosing = m_bridge.selectedBranch();
    }
    const auto now = open != nullptr ? std::optional(open->id) : std::nullopt;
    if (m_openRound && m_openRound != now) {
        m_leftAsRead.clear();
    }
    m_openRound = now;
}

void AdjustPlace::noteWhereTheRoundEnded() {
    const project::Project& project = m_bridge.project();
    const project::Round* last = m_bridge.isOpen() ? project.lastRound() : nullptr;
    if (last == nullptr || project::roundInHand(project) != nullptr || project.readingsOf(last->id).empty()) {
        return;
    }
    // Before this place was there: where the newest reading was made nobody chose a valve since.
    const project::Reading& newest = project.readings()[project.readingsOf(last->id).back()];
    if (m_bridge.selectedBranch() == newest.branch) {
        m_selectedAtClosing = newest.branch;
    }
}

void AdjustPlace::startAtFirst() {
    const auto left = std::exchange(m_selectedAtClosing, std::nullopt);
    if (!left || left != m_bridge.selectedBranch()) {
        return;
    }
    const auto order = workingOrder();
    if (!order.empty()) {
        showBranch(m_bridge.project().branches()[order.front()].id);
    }
}

std::optional<std::size_t> AdjustPlace::next() {
    const LoopPicture* picture = m_advisor.picture();
    const auto step = picture != nullptr ? indexStepToTurn(*picture, m_valve.branch()) : std::nullopt;
    if (step) {
        return step;
    }
    // What is bold in the table is also what comes next.
    if (m_offerElsewhere && m_offerElsewhere != m_valve.branch() &&
        m_bridge.project().branches().contains(*m_offerElsewhere)) {
        return m_bridge.project().branches().indexOf(*m_offerElsewhere);
    }
    return balancing::nextToAdjust(m_bridge.project(), workingOrder(), m_valve.index(), leftAsRead());
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
    m_find->setText(QString());
    showBranch(m_bridge.project().branches()[order[*place]].id);
    takeFocus();
}

void AdjustPlace::holdAndNext() {
    if (!m_valve.branch() || !m_valve.hasAim()) {
        return;
    }
    if (m_field->text().trimmed().isEmpty() || m_what != TypedDp::Try) {
        if (!m_field->commit()) {
            return;
        }
        const base::Outcome held =
            holdTyped(m_bridge, *m_valve.branch(), m_valve.settingText(m_valve.setting()));
        // What was read in a walk and fits is left as it is: no try of it is there to hold.
        const bool isLeft = !held && held.fault().is(balancing::kNotTriedHere) && m_valve.last() &&
                            m_valve.word() == balancing::AimWord::Hold;
        if (isLeft) {
            leaveAsRead(*m_valve.branch());
        } else if (!m_bridge.tell(held)) {
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
    // The word before another valve is in hand.
    const auto word = m_valve.word();
    const bool isAgainst = word && *word != balancing::AimWord::Hold && *word != balancing::AimWord::AtStop;
    const base::Fault against{&kHeldAgainstWord,
                              {},
                              {m_bridge.project().branches().at(*m_valve.branch()).tag,
                               isAgainst ? text::word(*word).toStdString() : std::string()}};
    const auto following = next();
    if (following) {
        showBranch(m_bridge.project().branches()[*following].id);
        takeFocus();
    }
    if (isAgainst) {
        emit m_bridge.messageRaised(against);
    } else if (!following) {
        m_bridge.tell(allHeld());
    }
}

base::Fault AdjustPlace::allHeld() const {
    const balancing::WalkProgress& progress = m_bridge.walkProgress();
    if (m_bridge.openRoundOrNull() == nullptr || progress.unread.empty()) {
        return {&kAllHeld, {}, {}};
    }
    // As Go to Next Open Item goes: on from the valve in hand, from the last to the first again.
    const auto& branches = m_bridge.project().branches();
    const auto route = m_bridge.project().tree().walkingOrder();
    const auto rank = [&](std::size_t branch) { return std::find(route.begin(), route.end(), branch); };
    const auto here = rank(m_valve.index());
    const auto ahead =
        std::find_if(progress.unread.begin(), progress.unread.end(),
                     [&](const base::Id& each) { return rank(branches.indexOf(each)) > here; });
    const base::Id& next = ahead != progress.unread.end() ? *ahead : progress.unread.front();
    return {&kAllHeldButUnread,
            {},
            {std::to_string(progress.unread.size()), std::to_string(progress.all), branches.at(next).tag}};
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
        // A doubtful value must not enter a mean: what is typed now stands beside it and counts alone.
        const bool isFirst = m_valve.tries().empty() || m_valve.tries().back().isDoubtful;
        expect(isFirst ? TypedDp::Try : TypedDp::RepeatedTry);
    }
}

void AdjustPlace::takeFix() {
    if (!m_valve.branch()) {
        return;
    }
    const auto taken = takeFixOf(m_bridge, m_advisor, *m_valve.branch());
    if (m_bridge.tell(taken.value_or(base::Fault{&kNoFixOffered, {}, {}}))) {
        m_readingNotice.tell(*m_valve.branch());
    }
}

void AdjustPlace::toggleDoubtful() {
    if (m_valve.branch()) {
        m_bridge.tell(m_bridge.toggleDoubtful(*m_valve.branch()));
    }
}

}  // namespace ww::ui
