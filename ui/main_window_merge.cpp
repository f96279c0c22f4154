// Merging from the main window: asking, showing what comes of it, storing what was picked; and what to open
// where a file is damaged.
#include <QFileInfo>

#include "core/workbook/sound_copy.h"
#include "ui/job_files.h"
#include "ui/main_window.h"
#include "ui/merge/merge_messages.h"
#include "ui/text/words.h"

namespace ww::ui {

void MainWindow::raiseWithAdvice(const base::Fault& fault, const QString& file) {
    raise(fault);
    if (workbook::isDamage(fault)) {
        const base::Fault advice = workbook::adviceFor(file.toStdString());
        m_notice->showMessage(text::text(fault) + QStringLiteral(" ") + text::text(advice), true);
    }
}

void MainWindow::mergeCopy() {
    const QString copy = askWorkbookToOpen(this, QFileInfo(m_bridge.file()).absolutePath());
    if (!copy.isEmpty()) {
        mergeFile(copy);
    }
}

void MainWindow::mergeFile(const QString& copy) {
    const auto preview = m_bridge.previewMerge(copy);
    if (!preview) {
        raiseWithAdvice(preview.fault(), copy);
        return;
    }
    if (preview->actions == 0) {
        raise(base::Fault{&kNothingNew, {}, {}});
        return;
    }
    MergeDialog dialog(*preview, QFileInfo(copy).completeBaseName(), this);
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    const auto merged = m_bridge.merge(copy);
    if (!merged) {
        raise(merged.fault());
        return;
    }
    if (storeChoices(dialog.choices())) {
        raise(base::Fault{&kMerged,
                          {},
                          {std::to_string(merged->actions), merged->machine,
                           std::to_string(m_bridge.openConflicts().size())}});
    }
}

void MainWindow::decideConflicts() {
    MergeDialog dialog(m_bridge.openConflicts(), this);
    if (dialog.exec() == QDialog::Accepted) {
        storeChoices(dialog.choices());
    }
}

bool MainWindow::storeChoices(const MergeDialog::Choices& choices) {
    for (const auto& [conflict, choice] : choices) {
        const base::Outcome stored = m_bridge.choose(conflict, choice);
        if (!stored) {
            raise(stored.fault());
            return false;
        }
    }
    return true;
}

}  // namespace ww::ui
