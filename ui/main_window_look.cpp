// The commands of the main window that change how it looks, and what follows from them.
#include <QAbstractItemView>
#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QShortcut>
#include <algorithm>

#include "ui/main_window.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/system/system_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/preferences_dialog.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {

void MainWindow::connectViewCommands() {
    connect(m_commands->nextDisplay, &QAction::triggered, this,
            [this] { setDisplay(theme::next(m_preferences.display())); });
    connect(m_commands->preferences, &QAction::triggered, this, &MainWindow::showPreferences);
    // Not by toggled: the look that a window starts with marks the command before a place is made.
    connect(m_commands->largeTargets, &QAction::triggered, this, &MainWindow::setLargeTargets);
    connect(m_commands->largerText, &QAction::triggered, this,
            [this] { setTextPoints(m_preferences.textPoints() + 1.0); });
    connect(m_commands->smallerText, &QAction::triggered, this,
            [this] { setTextPoints(m_preferences.textPoints() - 1.0); });
    connect(m_commands->normalText, &QAction::triggered, this, [this] {
        m_preferences.resetTextPoints();
        applyLook();
    });
    connect(m_commands->fullScreen, &QAction::triggered, this,
            [this](bool isFull) { isFull ? showFullScreen() : showNormal(); });
    connectReportCommands();
    // F6 and Ctrl+Tab lead from a grid to the next field, from there to the next part of the place, and
    // behind the last one to where the place begins.
    for (const QKeySequence& keys :
         {QKeySequence(Qt::Key_F6), QKeySequence(Qt::ControlModifier | Qt::Key_Tab)}) {
        auto* next = new QShortcut(keys, this);
        connect(next, &QShortcut::activated, this, [this] {
            if (!goToNextPart(*m_places[place()].widget)) {
                m_places[place()].takeFocus();
            }
        });
    }
}

NumberPad* MainWindow::pad() {
    if (m_pad == nullptr) {
        m_pad = new NumberPad(this);
        m_pad->hide();
        m_beside->addWidget(m_pad, 0, Qt::AlignTop);
        connect(m_pad, &NumberPad::keyTouched, this, &MainWindow::typeFromPad);
        connect(m_pad, &NumberPad::noteWanted, m_commands->note, &QAction::trigger);
        connect(m_pad, &NumberPad::settingStepped, this, [this](int steps) {
            place() == Adjust ? adjust()->stepSetting(steps) : walk()->stepSetting(steps);
        });
    }
    return m_pad;
}

void MainWindow::setDisplay(theme::Display display) {
    m_preferences.setDisplay(display);
    applyLook();
}

void MainWindow::setTextPoints(double points) {
    m_preferences.setTextPoints(points);
    applyLook();
}

void MainWindow::applyLook() {
    m_isApplyingLook = true;
    m_isDressed = true;
    m_look = lookOf(m_preferences.display(), m_preferences.textPoints(), m_preferences.hasLargeTargets());
    if (auto* pump = there<PumpPlace>(Pump)) {
        pump->forgetUnseen();
    }
    applyToProgram(m_look);
    // The first font of the program does not reach widgets that are there already.
    setFont(m_look.font);
    keepGaps();
    m_strip->setTokens(m_look.tokens, m_look.metrics);
    fitSideList();
    m_keyLine->setFixedHeight(std::max(m_look.metrics.keyLineHeight, QFontMetrics(m_look.font).height() + 4));
    m_notice->setReserved(std::max(34, 2 * QFontMetrics(m_look.font).height() + 4));
    for (const PlaceEntry& entry : m_places) {
        if (entry.widget != nullptr) {
            entry.setLook(m_look);
        }
    }
    m_isApplyingLook = false;
    m_shownStrip.reset();
    arrange();
    refreshStrip();
}

void MainWindow::fitSideList() {
    constexpr int kItemMargin = 14;
    m_sideList->setFixedWidth(
        std::max(m_look.metrics.sideListWidth, m_sideList->wantedWidth() + kItemMargin));
}

void MainWindow::showPreferences() {
    PreferencesDialog dialog(m_preferences, this);
    connect(&dialog, &PreferencesDialog::changed, this, [this] {
        applyLook();
        refreshRecent();
    });
    connect(&dialog, &PreferencesDialog::languageChanged, this, &MainWindow::followLanguage);
    dialog.exec();
}

/// In a field as ever; in a table Copy takes the cell, and Paste what the place makes of it.
void MainWindow::connectClipboardCommands() {
    const auto onField = [](const char* slot) {
        QWidget* field = QApplication::focusWidget();
        const bool isField =
            qobject_cast<QLineEdit*>(field) != nullptr || qobject_cast<QPlainTextEdit*>(field) != nullptr;
        return isField && QMetaObject::invokeMethod(field, slot);
    };
    connect(m_commands->cut, &QAction::triggered, this, [onField] { onField("cut"); });
    connect(m_commands->copy, &QAction::triggered, this, [onField] {
        const auto* table = qobject_cast<QAbstractItemView*>(QApplication::focusWidget());
        if (!onField("copy") && table != nullptr && table->currentIndex().isValid()) {
            QApplication::clipboard()->setText(table->currentIndex().data().toString());
        }
    });
    connect(m_commands->paste, &QAction::triggered, this, [this, onField] {
        if (place() == Walk && walk()->takesPaste(QApplication::focusWidget())) {
            walk()->paste();
        } else if (auto* system = there<SystemPlace>(System);
                   !onField("paste") && system != nullptr && place() == System) {
            system->paste();
        }
    });
}

void MainWindow::setLargeTargets(bool isLarge) {
    m_preferences.setLargeTargets(isLarge);
    applyLook();
    m_places[place()].takeFocus();
}

void MainWindow::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    constexpr QSize kLeast(900, 520);
    const bool isSmall = width() < kLeast.width() || height() < kLeast.height();
    m_isSmall = isSmall;
    arrange();
}

void MainWindow::arrange() {
    const bool isLarge = m_preferences.hasLargeTargets();
    const bool isFolded = m_isSmall || isLarge;
    menuBar()->setVisible(!m_isSmall);
    // In large text the list would take what the places need.
    constexpr double kRoomForList = 560.0;
    const double wide = width() * 10.0 / m_look.metrics.textPoints;
    const bool isListFolded = isFolded || wide < kRoomForList;
    m_sideList->setVisible(!isListFolded);
    m_strip->setMenu(isListFolded ? m_folded : nullptr, m_placeNames.value(m_stack->currentIndex()));
    m_keyLine->setVisible(!m_isSmall);
    if (auto* walk = there<WalkPlace>(Walk)) {
        walk->setCard(!isFolded              ? WalkPlace::Card::None
                      : m_isSmall && isLarge ? WalkPlace::Card::BesidePad
                                             : WalkPlace::Card::Wide);
    }
    const bool hasPad = isLarge && (place() == Walk || place() == Adjust);
    if (hasPad) {
        // Five rows of large keys need as much below the strip and the notice.
        constexpr int kRoomForHighPad = 620;
        pad()->setMetrics(m_look.metrics, m_isSmall, height() < kRoomForHighPad);
    }
    if (m_pad != nullptr) {
        m_pad->setVisible(hasPad);
    }
    // A low window is arranged as a small one, which needs less: it may be made that low in one step.
    constexpr int kLeastPlaceHeight = 120;
    setMinimumHeight(m_strip->minimumHeight() + m_notice->minimumHeight() +
                     (isLarge ? NumberPad::leastHeight() : kLeastPlaceHeight));
    m_commands->largeTargets->setChecked(isLarge);
    // Places put side by side what they have room for; larger text leaves less of it.
    constexpr double kRoomAtTenPoints = 800.0;
    const int taken = (isListFolded ? 0 : m_sideList->width()) + (hasPad ? m_pad->sizeHint().width() : 0);
    const int room = width() - taken;
    const bool isNarrow = room * 10.0 / m_look.metrics.textPoints < kRoomAtTenPoints;
    if (auto* system = there<SystemPlace>(System)) {
        system->setNarrow(isNarrow);
    }
    if (auto* pump = there<PumpPlace>(Pump)) {
        pump->setNarrow(room < pump->wantedWidth());
    }
    if (isVisible()) {
        // The button of the folded places says another name, which takes another width.
        refreshStrip();
    }
}

void MainWindow::typeFromPad(int key, const QString& text) {
    if (qobject_cast<QLineEdit*>(QApplication::focusWidget()) == nullptr) {
        m_places[place()].takeFocus();
    }
    QWidget* field = QApplication::focusWidget();
    if (field == nullptr) {
        return;
    }
    for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, key, Qt::NoModifier, text);
        QApplication::sendEvent(field, &event);
    }
}

bool MainWindow::event(QEvent* event) {
    // The desktop changed its own colors: the display "Office" follows.
    if (event->type() == QEvent::ApplicationPaletteChange && !m_isApplyingLook &&
        m_preferences.display() == theme::Display::Office) {
        applyLook();
    }
    return QMainWindow::event(event);
}

}  // namespace ww::ui
