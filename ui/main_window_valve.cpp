// The commands of the main window that belong to the valve in hand, in the walk and while it is adjusted.
#include "ui/main_window.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/review/review_place.h"
#include "ui/places/system/system_place.h"
#include "ui/places/walk/walk_place.h"

namespace ww::ui {

void MainWindow::onWalk(QAction* action, void (WalkPlace::*slot)()) {
    connect(action, &QAction::triggered, this, [this, slot] {
        if (place() != Walk) {
            showPlace(Walk);
        }
        (walk()->*slot)();
    });
}

void MainWindow::onWalkOnceStored(QAction* action, void (WalkPlace::*slot)()) {
    connect(action, &QAction::triggered, this, [this, slot] {
        if (storeTyped()) {
            showPlace(Walk);
            (walk()->*slot)();
        }
    });
}

void MainWindow::connectWalkCommands() {
    onWalk(m_commands->newRound, &WalkPlace::beginRound);
    // What is typed anywhere belongs to the round that is about to be closed.
    onWalkOnceStored(m_commands->closeRound, &WalkPlace::beginClosing);
    onWalkOnceStored(m_commands->notTurned, &WalkPlace::markNotTurned);
    connect(m_commands->note, &QAction::triggered, this, [this] {
        // Who was adjusting the valve goes on with it.
        const bool isAdjusting = place() == Adjust;
        if (place() != Walk) {
            showPlace(Walk);
        }
        walk()->editNote();
        disconnect(m_backFromNote);
        if (isAdjusting) {
            m_backFromNote = connect(walk(), &WalkPlace::noteDone, this, [this] {
                disconnect(m_backFromNote);
                showPlace(Adjust);
            });
        }
    });
    onWalk(m_commands->cannotRead, &WalkPlace::recordNotReadable);
    onWalk(m_commands->convergence, &WalkPlace::toggleConvergence);
}

void MainWindow::connectAdjustCommands() {
    // Some keys mean the same at a valve in hand and in the walk.
    const auto onBoth = [this](QAction* action, void (WalkPlace::*walking)(),
                               void (AdjustPlace::*adjusting)()) {
        connect(action, &QAction::triggered, this, [this, walking, adjusting] {
            if (place() == Adjust) {
                (adjust()->*adjusting)();
                return;
            }
            showPlace(Walk);
            (walk()->*walking)();
        });
    };
    onBoth(m_commands->readAgain, &WalkPlace::readAgain, &AdjustPlace::readAgain);
    onBoth(m_commands->takeFix, &WalkPlace::takeFix, &AdjustPlace::takeFix);
    onBoth(m_commands->doubtful, &WalkPlace::toggleDoubtful, &AdjustPlace::toggleDoubtful);
    connect(m_commands->adjustOrHold, &QAction::triggered, this, [this] {
        if (place() == Adjust) {
            adjust()->holdAndNext();
            return;
        }
        adjust()->keepSelected();
        showPlace(Adjust);
    });
    const auto onAdjust = [this](QAction* action, void (AdjustPlace::*slot)()) {
        connect(action, &QAction::triggered, this, [this, slot] {
            if (place() != Adjust) {
                adjust()->keepSelected();
                showPlace(Adjust);
            }
            (adjust()->*slot)();
        });
    };
    onAdjust(m_commands->readReference, &AdjustPlace::readReference);
    onAdjust(m_commands->readShutValve, &AdjustPlace::readShutValve);
    onAdjust(m_commands->takeAdvice, &AdjustPlace::takeAdvice);
    onAdjust(m_commands->advice, &AdjustPlace::goToAdvice);
    onAdjust(m_commands->advisedOrder, &AdjustPlace::restoreOrder);
    connect(m_commands->tableTwin, &QAction::triggered, this, [this] {
        place() == Pump     ? pump()->toggleTable()
        : place() == Review ? review()->toggleTable()
        : place() == System ? system()->toggleTable()
                            : walk()->toggleTable();
    });
}

}  // namespace ww::ui
