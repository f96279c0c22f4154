// The menu Edit of the main window: undo and redo, and where they lead; finding, adding and moving branches.
#include "ui/file_messages.h"
#include "ui/main_window.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/job/job_place.h"
#include "ui/places/review/review_place.h"
#include "ui/places/system/system_place.h"
#include "ui/places/walk/walk_place.h"

namespace ww::ui {

void MainWindow::connectEditCommands() {
    connect(m_commands->undo, &QAction::triggered, this, [this] {
        m_bridge.undoLabel().isEmpty() ? tellOfWithdrawing()
                                       : revert(&WorkbookBridge::undo, kUndone, m_bridge.undoLabel());
    });
    connect(m_commands->redo, &QAction::triggered, this,
            [this] { revert(&WorkbookBridge::redo, kDoneAgain, m_bridge.redoLabel()); });
    connect(m_commands->findValve, &QAction::triggered, this, [this] {
        if (place() == System) {
            system()->findBranch();
        } else if (place() == Adjust) {
            adjust()->findValve();
        } else {
            showPlace(Walk);
            walk()->findValve();
        }
    });
    connect(m_commands->valveTables, &QAction::triggered, this, [this] {
        showPlace(System);
        system()->showValves(true);
    });
    connect(m_commands->tryWhatIf, &QAction::triggered, this, [this] {
        if (place() == System) {
            system()->toggleWhatIf();
            return;
        }
        showPlace(System);
        system()->tryWhatIf();
    });
    connect(m_commands->addBranch, &QAction::triggered, this, [this] {
        showPlace(System);
        system()->addBranch();
    });
    for (const auto& [action, steps] :
         {std::pair(m_commands->moveUp, -1), std::pair(m_commands->moveDown, 1)}) {
        connect(action, &QAction::triggered, this, [this, steps = steps] {
            if (place() == Adjust) {
                adjust()->moveInOrder(steps);
                return;
            }
            showPlace(System);
            system()->moveBranch(steps);
        });
    }
}

void MainWindow::revert(base::Outcome (WorkbookBridge::*step)(), const base::MessageForm& done,
                        const QString& label) {
    m_notice->clearMessage();
    const Place before = place();
    const base::Outcome outcome = (m_bridge.*step)();
    if (!outcome) {
        raise(outcome.fault());
    } else if (place() != before) {
        raise(base::Fault{&done, {}, {label.toStdString()}});
    }
}

void MainWindow::showReverted(const project::ChangeSet& changes) {
    using project::RecordKind;
    Place shown = place();
    if (changes.touches(RecordKind::Comment)) {
        shown = Review;
    } else if (shown == Adjust && changes.touches(RecordKind::Reading)) {
        // The valve in hand shows its readings as well as the walk does.
    } else if (shown == Pump && !changes.touches(RecordKind::Reading) &&
               !changes.touches(RecordKind::Round)) {
        // Its pages show the job's facts, branches and pumps as well as the other places do.
    } else if (shown == Walk && changes.touches(RecordKind::Attachment) &&
               !changes.touches(RecordKind::Deficiency)) {
        // The photos of a valve are shown beside its readings.
    } else if (changes.touches(RecordKind::Reading) || changes.touches(RecordKind::Round) ||
               (shown == Walk && changes.touches(RecordKind::Branch))) {
        shown = Walk;
    } else if (changes.touches(RecordKind::Pump) || changes.touches(RecordKind::SetPoint) ||
               (changes.touches(RecordKind::PumpReading) && shown != Walk)) {
        shown = Pump;
    } else if (changes.touches(RecordKind::Branch) || changes.touches(RecordKind::ValveModel)) {
        shown = System;
    } else if (changes.touches(RecordKind::Job) || changes.touches(RecordKind::Instrument) ||
               changes.touches(RecordKind::Person) || changes.touches(RecordKind::ReadinessLine) ||
               changes.touches(RecordKind::Deficiency) || changes.touches(RecordKind::Attachment)) {
        shown = Job;
    }
    if (shown != place()) {
        showPlace(shown);
        if (shown == Job) {
            job()->showChanged(changes);
        }
    }
    if (changes.touches(RecordKind::ClockOffset)) {
        tellClock();
    }
    if (const auto branch = m_bridge.revertedBranch()) {
        m_bridge.selectBranch(branch);
        shown == System ? system()->showBranch(*branch) : walk()->showBranch(*branch);
        if (shown == Adjust) {
            adjust()->showBranch(*branch);
        }
    }
}

}  // namespace ww::ui
