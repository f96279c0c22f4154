// The clock of this laptop: told where it cannot be right, and set right for the job.
#include "core/project/clock_offset.h"
#include "ui/clock_dialog.h"
#include "ui/file_messages.h"
#include "ui/main_window.h"

namespace ww::ui {
namespace {

/// Minutes that the clock stands before the newest action; 0 where it does not, or where that action's time
/// is known to come from this clock while it was ahead.
std::int64_t behind_min(const workbook::Workbook& open) {
    const base::Instant newest = open.newestEntry().time;
    const base::Instant now = open.now();
    const project::ClockOffset* offset = project::newestOffset(open.project(), open.machine());
    const bool isAnswered = offset != nullptr && offset->showed && offset->stated &&
                            newest <= *offset->showed && now >= *offset->stated;
    return isAnswered ? 0 : (newest.seconds - now.seconds) / 60;
}

}  // namespace

void MainWindow::tellClock() {
    const workbook::Workbook& open = *m_bridge.workbook();
    const std::int64_t behind = behind_min(open);
    const std::int64_t added_s = project::addedNow_s(m_bridge.project(), open.machine());
    if (behind > 0) {
        raise(base::Fault{&kClockBehind, {}, {std::to_string(behind / 60), std::to_string(behind % 60)}});
    } else if (added_s != 0 && m_notice->message().isEmpty()) {
        raise(base::Fault{&kClockAdded, {}, {project::offsetText(added_s)}});
    }
}

void MainWindow::connectClockCommand() {
    connect(m_commands->setClock, &QAction::triggered, this, [this] {
        ClockDialog dialog(*m_bridge.workbook(), this);
        if (dialog.exec() != QDialog::Accepted) {
            return;
        }
        const base::Outcome done = m_bridge.apply(m_bridge.workbook()->settingOfClock(dialog.stated()));
        if (!done) {
            raise(done.fault());
            return;
        }
        m_notice->clearMessage();
        tellClock();
        if (m_notice->message().isEmpty()) {
            raise(base::Fault{&kClockOwn, {}, {}});
        }
    });
}

}  // namespace ww::ui
