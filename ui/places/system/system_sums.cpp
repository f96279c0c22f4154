// The line below the branches of the place System: their sums, and the way to what these miss.
#include "ui/places/system/system_place.h"
#include "ui/text/format.h"

namespace ww::ui {

void SystemPlace::refreshSums() {
    if (m_model->rowCount() == 0) {
        m_sums->clear();
        m_showWithout->hide();
        return;
    }
    const project::Project& project = m_bridge.project();
    // Of the design as it stands, like the rows above: a closed round is judged by that of then.
    const std::vector<quantity::VolumeFlow> designs = project::designFlows(project);
    quantity::VolumeFlow total;
    int withoutTable = 0;
    for (const std::size_t terminal : project.tree().terminals()) {
        total += designs[terminal];
        withoutTable += project.characteristicOf(project.branches()[terminal]) == nullptr ? 1 : 0;
    }
    m_showWithout->setVisible(withoutTable > 0);
    const QString gap = QStringLiteral("&nbsp;&nbsp;&nbsp;&nbsp; ");
    quantity::Ratio shares;
    for (const std::size_t terminal : project.tree().terminals()) {
        shares += quantity::Ratio::si(total.si() > 0 ? designs[terminal] / total : 0);
    }
    QString words = tr("%n terminal(s)", nullptr, static_cast<int>(project.tree().terminals().size())) + gap +
                    tr("sum of design <b>%1 %2</b>")
                        .arg(text::flow(total, project), text::symbol(text::flowUnit(project))) +
                    gap + tr("target shares add to <b>%1 %</b>").arg(text::percent(shares));
    if (withoutTable > 0) {
        words += gap + tr("%n terminal(s) without a valve table", nullptr, withoutTable);
    }
    m_sums->setText(words);
}

void SystemPlace::showWithoutTable() {
    const project::Project& project = m_bridge.project();
    for (const std::size_t branch : project.tree().walkingOrder()) {
        if (project.tree().isTerminal(branch) &&
            project.characteristicOf(project.branches()[branch]) == nullptr) {
            showWhatIf(false);
            m_bridge.selectBranch(project.branches()[branch].id);
            showBranch(project.branches()[branch].id);
            const QModelIndex tag = m_table->currentIndex().siblingAtColumn(SystemModel::Tag);
            const QModelIndex valve = tag.siblingAtColumn(SystemModel::Valve);
            m_table->setCurrentIndex(m_table->isColumnHidden(valve.column()) ? tag : valve);
            m_table->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
}

}  // namespace ww::ui
