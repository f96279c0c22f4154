// The place Adjust while a dp apart from the valve as it stands is asked for: of the reference, or across the
// shut valve. All that is large says so, that no reading is taken for another.
#include <QStyle>

#include "core/project/setting_text.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/adjust/adjust_words.h"
#include "ui/text/format.h"

namespace ww::ui {

void AdjustPlace::markApart(QWidget& widget) const {
    if (widget.property("inverse").toBool() == isReadingApart()) {
        return;
    }
    widget.setProperty("inverse", isReadingApart());
    if (auto* label = qobject_cast<QLabel*>(&widget)) {
        constexpr int kFromEdge = 6;
        label->setIndent(isReadingApart() ? kFromEdge : -1);
    }
    widget.style()->unpolish(&widget);
    widget.style()->polish(&widget);
}

void AdjustPlace::showApart() {
    for (QWidget* widget : {static_cast<QWidget*>(m_state), static_cast<QWidget*>(m_fieldLabel),
                            static_cast<QWidget*>(m_field)}) {
        markApart(*widget);
    }
    m_field->setAccessibleName(tr("DP read at this setting"));
    if (!isReadingApart()) {
        return;
    }
    const project::Project& project = m_bridge.project();
    const QString inHand = QString::fromStdString(project.branches().at(*m_valve.branch()).tag);
    const QString none(QChar(0x2013));
    const QString unit = text::symbol(text::dpUnit(project, m_bridge.instrument()));
    m_ladder->show(std::nullopt, unit, tr("no aim while it is read apart"));
    m_proposal->setWords({});
    m_aim->show(none, {unit, tr("no aim here")}, true);
    if (m_what == TypedDp::ShutValve) {
        const QString back = QString::fromStdString(m_valve.settingText(m_valve.setting()).text());
        const QString what = tr("dp across %1 while it is shut").arg(inHand);
        m_state->setWords(
            tr("Shut %1 and read the dp across it. Enter stores it, then set the handle back to "
               "%2; Esc comes back without it.")
                .arg(inHand, back));
        m_setting->show(none, {tr("shut for a moment"), tr("then back to %1").arg(back)}, false);
        m_reading->show(none, {unit, tr("valve shut")}, true);
        m_word->show(balancing::AimWord::ReadAgain, tr("SHUT"), what);
        m_field->setAccessibleName(what);
        return;
    }
    const auto tagged = reference();
    if (!tagged) {
        return;
    }
    const project::Branch& record = project.branches().at(*tagged);
    const QString tag = QString::fromStdString(record.tag);
    const balancing::BranchResult& read = m_bridge.assessment().branches[project.branches().indexOf(*tagged)];
    const QString what = tr("dp at the reference %1, not at %2").arg(tag, inHand);
    m_title->setText(tr("Reference %1").arg(tag));
    m_state->setWords(
        tr("You read %1 now, not %2. Enter stores it and comes back to %2; Esc comes back without "
           "it.")
            .arg(tag, inHand));
    m_setting->show(
        read.setting ? QString::fromStdString(project::settingText(project, record, *read.setting)) : none,
        {tr("at %1").arg(tag), tr("leave it there")}, false);
    m_reading->show(read.dp ? dpNumber(m_bridge, *read.dp) : none, {unit, tr("last at %1").arg(tag)}, true);
    m_word->show(balancing::AimWord::ReadAgain, tr("REFERENCE"), what);
    m_field->setAccessibleName(what);
}

}  // namespace ww::ui
