#include "ui/window_look.h"

#include <QApplication>
#include <QCoreApplication>
#include <QStyle>

#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// The palette of the desktop before any display of our own was put over it.
const QPalette& systemPalette() {
    static const QPalette kSystem = QApplication::palette();
    return kSystem;
}

/// The texts of this file.
struct WindowText {
    Q_DECLARE_TR_FUNCTIONS(Window)
};

/// Rules for the frame around the places; those of plain controls come from the theme.
QString frameSheet(const theme::Tokens& t, const theme::Metrics& m) {
    const QString line = (t.isDaylight ? t.ink : t.rule).name();
    return QStringLiteral(
               "QMainWindow, QWidget#frame, QDialog { background: %1; }"
               "QMenuBar { background: %1; color: %3; } QMenuBar::item { padding: 3px 10px; background: "
               "transparent; }"
               "QMenuBar::item:selected { background: %3; color: %2; }"
               "QMenu { background: %2; color: %3; border: 1px solid %4; }"
               "QMenu::item { padding: 4px 28px 4px 24px; } QMenu::item:selected { background: %3; color: "
               "%2; }"
               "QMenu::item:disabled { color: %5; font-style: italic; }"
               "QMenu::separator { height: 1px; background: %4; margin: 4px 8px; }"
               "QLabel { color: %3; background: transparent; }"
               "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; }"
               "QListWidget#side_list, QListWidget#side_list:focus { background: %1; border: none; padding: "
               "0; }"
               "QListWidget#side_list::item { padding: 6px 10px; color: %3; border: 2px solid transparent; }"
               "QListWidget#side_list::item:selected { background: %3; color: %2; font-weight: bold; }"
               "QListWidget#side_list:focus::item:selected { border: 2px solid %2; }"
               "QLabel#notice_line { padding: 0 12px; }"
               "QLabel#notice_line[urgent=\"true\"] { background: %3; color: %2; }"
               "QLabel#read_only_banner { background: %3; color: %2; padding: 5px 12px; }"
               "QLabel[inverse=\"true\"] { background: %3; color: %2; padding: 2px 6px; }"
               "QLabel#key_line { color: %5; padding: 0 12px; border-top: 1px solid %4; }"
               "QLabel#panel_title { font-weight: bold; } QLabel#panel_head { color: %5; }"
               "QLabel#empty_state { color: %5; border: 1px dashed %4; background: %2; padding: 24px; }"
               "QLineEdit#cell_editor { min-height: 0; border: 3px solid %3; border-radius: 0; padding: 0 "
               "4px; }"
               "QComboBox QAbstractItemView { background: %2; color: %3; selection-background-color: %3;"
               " selection-color: %2; }")
        .arg(t.panel.name(), t.paper.name(), t.ink.name(), line, t.soft.name())
        .append(QStringLiteral("QPushButton { min-width: 48px; }"))
        .append(m.textPoints > 12.0 ? QStringLiteral("QPushButton { padding: 0 6px; }") : QString());
}

}  // namespace

Look lookOf(theme::Display display, double textPoints) {
    Look look;
    // Daylight needs at least 11 points: thin strokes vanish in the sun.
    const double points = display == theme::Display::Daylight ? std::max(11.0, textPoints) : textPoints;
    look.tokens = theme::tokens(display, systemPalette());
    look.metrics = theme::metrics(points);
    look.palette = theme::palette(display, systemPalette());
    look.font = QApplication::font();
    look.font.setPointSizeF(points);
    look.styleSheet = theme::styleSheet(look.tokens, look.metrics) + frameSheet(look.tokens, look.metrics);
    return look;
}

void applyToProgram(const Look& look) {
    systemPalette();
    QApplication::setPalette(look.palette);
    QApplication::setFont(look.font);
    qApp->setStyleSheet(look.styleSheet);
}

QString displayName(theme::Display display) {
    switch (display) {
        case theme::Display::Office:
            return WindowText::tr("Office");
        case theme::Display::Daylight:
            return WindowText::tr("Daylight");
        case theme::Display::PlantRoomDark:
            break;
    }
    return WindowText::tr("Plant-room dark");
}

StripText stripText(const WorkbookBridge& bridge, theme::Display display) {
    StripText strip;
    strip.display = displayName(display);
    if (!bridge.isOpen()) {
        strip.job = WindowText::tr("No workbook open");
        return strip;
    }
    const project::Project& project = bridge.project();
    strip.job = QString::fromStdString(project.job().name);
    if (!project.job().practice.empty()) {
        strip.job = WindowText::tr("PRACTICE · %1").arg(strip.job);
    }
    if (const project::Round* round = project.lastRound()) {
        strip.round = WindowText::tr("Round %1, %2, %3")
                          .arg(QString::number(round->number), text::word(round->kind).toLower(),
                               text::word(round->state));
        strip.readCount = static_cast<int>(bridge.assessment().readCount);
        strip.terminalCount = static_cast<int>(bridge.assessment().terminalCount);
    }
    if (const auto id = bridge.instrument()) {
        const project::Instrument& meter = project.instruments().at(*id);
        strip.meter = WindowText::tr("Meter %1").arg(QString::fromStdString(meter.tag));
        if (meter.due) {
            const bool isOverdue = meter.due->seconds < bridge.now().seconds;
            strip.meter += (isOverdue ? WindowText::tr(", was due %1") : WindowText::tr(", calibrated to %1"))
                               .arg(QString::fromStdString(meter.due->date()));
        }
    }
    strip.conflictCount = static_cast<int>(bridge.openConflicts().size());
    if (bridge.notStored()) {
        strip.stored = WindowText::tr("Not stored: %1").arg(text::sentence(*bridge.notStored()));
        strip.isNotStored = true;
    } else if (const auto stored = bridge.lastStored()) {
        const QString time = QString::fromStdString(stored->time.timeOfDay());
        const bool isToday = stored->time.date() == bridge.now().date();
        strip.stored = bridge.storedCount() > 0
                           ? WindowText::tr("%1 stored, %2").arg(QString::number(bridge.storedCount()), time)
                           : WindowText::tr("last stored %1: %2")
                                 .arg(isToday ? time : QString::fromStdString(stored->time.date()),
                                      QString::fromStdString(stored->label));
    }
    return strip;
}

}  // namespace ww::ui
