// The line of keys at the bottom of the main window: what acts where the keys are, and nothing else.
#include <QApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollBar>

#include "ui/main_window.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/job/job_place.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/system/system_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/widgets/control_keys.h"

namespace ww::ui {

void MainWindow::connectKeyLine() {
    m_followingKeys.setSingleShot(true);
    connect(&m_followingKeys, &QTimer::timeout, this, &MainWindow::refreshKeyLine);
    // Not at once: what has the keys changes while parts of a place are still those of the job before.
    const auto follow = [this] { m_followingKeys.start(0); };
    // Charts of the pump come when they are computed.
    connect(&m_pumpAdvisor, &PumpAdvisor::changed, this, follow);
    connect(qApp, &QApplication::focusChanged, this, [this, follow](const QWidget*, QWidget* now) {
        disconnect(m_typedInHand);
        if (now == nullptr || now->window() != this) {
            return;
        }
        if (const auto* line = qobject_cast<QLineEdit*>(now)) {
            m_typedInHand = connect(line, &QLineEdit::textChanged, this, follow);
        } else if (const auto* text = qobject_cast<QPlainTextEdit*>(now)) {
            m_typedInHand = connect(text, &QPlainTextEdit::textChanged, this, follow);
        } else if (const auto* area = qobject_cast<QAbstractScrollArea*>(now)) {
            m_typedInHand = connect(area->verticalScrollBar(), &QScrollBar::rangeChanged, this, follow);
        }
        follow();
    });
}

KeyHints MainWindow::usualHint(Place place, const QWidget* inHand) const {
    KeyHints keys;
    if (inHand != nullptr && m_places[place].widget->isAncestorOf(inHand)) {
        keys.add(controlKeys(*inHand));
    }
    switch (place) {
        case Job: {
            const auto* job = there<JobPlace>(Job);
            keys.add(tr("Del removes the row"), job != nullptr && job->canRemoveRow(inHand));
            break;
        }
        case System: {
            const auto* system = there<SystemPlace>(System);
            keys.add(system != nullptr ? system->hint(inHand) : KeyHints());
            break;
        }
        case Pump: {
            const auto* pump = there<PumpPlace>(Pump);
            keys.add(tr("Ctrl+Alt+1 to 0, Ctrl+Alt+Z pages"))
                .add(tr("Ctrl+T numbers as a table"), pump != nullptr && pump->hasChart());
            break;
        }
        case Review:
            keys.add(tr("Ctrl+Alt+C comment on the cell"), m_commands->comment->isEnabled())
                .add(tr("Ctrl+H its history"),
                     m_bridge.selectedBranch().has_value() && !m_bridge.project().rounds().empty())
                .add(tr("Ctrl+Shift+Down next open item"));
            break;
        case Report:
            keys.add(tr("Ctrl+P export as PDF"));
            break;
        case Walk:
        case Adjust:
            break;
    }
    return keys;
}

bool MainWindow::takesMeter() const {
    if (!m_commands->takeMeter->isEnabled()) {
        return false;
    }
    const auto* walking = there<WalkPlace>(Walk);
    const auto* adjusting = there<AdjustPlace>(Adjust);
    return (place() == Walk && walking != nullptr && walking->takesReadings()) ||
           (place() == Adjust && adjusting != nullptr && adjusting->takesReadings());
}

void MainWindow::refreshKeyLine() {
    KeyHints keys;
    if (!m_bridge.isOpen()) {
        keys.add(tr("Ctrl+O opens a workbook"))
            .add(tr("Ctrl+N new job"))
            .add(tr("Ctrl+Shift+P practice"))
            .add(tr("F1 handbook"));
        m_keyLine->show(keys);
        return;
    }
    const QWidget* inHand = focusWidget();
    keys.add(tr("Ctrl+L takes the meter's value"), takesMeter());
    if (inHand == m_sideList) {
        keys.add(tr("Up, Down places"));
    } else if (inHand != nullptr && !m_stack->isAncestorOf(inHand)) {
        keys.add(controlKeys(*inHand));
    }
    const QString undo = m_bridge.undoLabel();
    const bool isUndone = !undo.isEmpty() && (inHand == nullptr || !undoesItsOwn(*inHand));
    keys.add(m_places[place()].hint(inHand)).add(tr("Ctrl+Z undo %1").arg(undo), isUndone, tr("Ctrl+Z undo"));
    m_keyLine->show(keys);
}

}  // namespace ww::ui
