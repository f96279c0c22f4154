#include "ui/window_look.h"

#include <QApplication>
#include <QCoreApplication>
#include <QFormLayout>
#include <QGridLayout>
#include <QStyle>
#include <algorithm>

#include "core/balancing/walk_progress.h"
#include "core/project/calibration.h"
#include "ui/text/label.h"
#include "ui/text/typed_word.h"
#include "ui/text/words.h"
#include "ui/theme/control_style.h"
#include "ui/widgets/number_pad.h"

namespace ww::ui {
namespace {

/// The palette of the desktop as it is now. That of a display of our own is taken off first: it hides it.
QPalette systemPalette() {
    if (QApplication::palette().resolveMask() != 0) {
        QApplication::setPalette(QPalette());
    }
    return QApplication::palette();
}

/// The style of the whole program; it is put over that of the desktop when it is first asked for.
theme::ControlStyle& programStyle() {
    auto* style = qApp->findChild<theme::ControlStyle*>();
    if (style == nullptr) {
        style = new theme::ControlStyle(QApplication::style()->name());
        QApplication::setStyle(style);
    }
    return *style;
}

/// The texts of this file.
struct WindowText {
    Q_DECLARE_TR_FUNCTIONS(Window)
};

/// Everything that is touched, as large as a gloved finger: what the sheet of the theme leaves small.
QString largeSheet(const theme::Metrics& m) {
    return QStringLiteral(
               "QPushButton, QPushButton:focus { padding: 0 16px; }"
               "QMenuBar::item { padding: %1px 14px; } QMenu::item { padding: %1px 28px %1px 24px; }"
               "QCheckBox, QRadioButton { min-height: %2px; }"
               "QCheckBox::indicator, QRadioButton::indicator { width: 28px; height: 28px; }"
               "QTabBar::tab { min-height: %2px; min-width: 48px; margin-right: 8px; padding: 0 8px; border: "
               "none; "
               "border-bottom: 4px solid palette(mid); }"
               "QTabBar::tab:selected { border-bottom: 4px solid palette(window-text); }"
               "QListView::item { min-height: %2px; }"
               "QScrollBar:vertical { width: 48px; } QScrollBar:horizontal { height: 48px; }")
        .arg((m.controlHeight - static_cast<int>(m.textPoints * 1.6)) / 2)
        .arg(m.controlHeight - 8);
}

/// Rules for the frame around the places; those of plain controls come from the theme.
QString frameSheet(const theme::Tokens& t, const theme::Metrics& m) {
    const QString line = (t.isDaylight ? t.ink : t.rule).name();
    const int frame = t.isDaylight ? 2 : 1;
    constexpr double kTitle = 1.2;
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
               "QScrollArea[ringed=\"true\"] { border: 3px solid transparent; }"
               "QScrollArea[ringed=\"true\"]:focus { border: 3px solid %3; }"
               "QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; }"
               "QListWidget#side_list, QListWidget#side_list:focus { background: %1; border: none; padding: "
               "3px; }"
               "QListWidget#side_list::item { padding: 6px 10px; color: %3; border: 2px solid transparent; }"
               "QListWidget#side_list::item:selected { background: %3; color: %2; font-weight: bold; }"
               "QLabel#notice_line { padding: 0 12px; }"
               "QLabel#notice_line[urgent=\"true\"] { background: %3; color: %2; }"
               "QLabel#read_only_banner { background: %3; color: %2; padding: 5px 12px; }"
               "QLabel[inverse=\"true\"] { background: %3; color: %2; padding: 2px 6px; }"
               "QLineEdit[inverse=\"true\"] { background: %3; color: %2; selection-background-color: %2;"
               " selection-color: %3; }"
               "QLineEdit[inverse=\"true\"]:focus { border: %6px double %2; }"
               "QLabel#key_line { color: %5; padding: 0 12px; border-top: 1px solid %4; }"
               "QLabel#panel_title { font-weight: bold; } QLabel#panel_head { color: %5; }"
               "QLabel#place_title { font-weight: bold; font-size: %7pt; }"
               "QLabel#empty_state { color: %5; border: 1px dashed %4; background: %2; padding: 24px; }"
               "QLineEdit#cell_editor { min-height: 0; border: 3px solid %3; border-radius: 0; padding: 0 "
               "4px; }"
               "QCheckBox, QRadioButton { border: 3px solid transparent; padding: 2px 4px; spacing: 6px; }"
               "QCheckBox:focus, QRadioButton:focus { border: 3px solid %3; }"
               "QPlainTextEdit { background: %2; color: %3; border: 1px solid %4; }"
               "QPlainTextEdit:focus { border: 3px solid %3; }"
               "QTextBrowser { border: 3px solid transparent; }"
               "QTextBrowser:focus { border: 3px solid %3; }"
               "QComboBox QAbstractItemView { background: %2; color: %3; selection-background-color: %3;"
               " selection-color: %2; }")
        .arg(t.panel.name(), t.paper.name(), t.ink.name(), line, t.soft.name(), QString::number(frame + 2),
             QString::number(kTitle * m.textPoints))
        .append(m.hasLargeTargets ? largeSheet(m) : QString())
        .append(
            QStringLiteral("QPushButton#pad_key { min-width: %1px; min-height: %2px; padding: 0; }"
                           "QPushButton#pad_key[is_tight=\"true\"] { min-height: %3px; }"
                           "QPushButton#pad_key[is_tight=\"true\"][is_digit=\"true\"] { min-width: %4px; }")
                .arg(NumberPad::kKeyWidth - 2 * frame)
                .arg(NumberPad::kKeyHeight - 2 * frame)
                .arg(NumberPad::kLeastTarget - 2 * frame)
                .arg(NumberPad::kTightDigitWidth - 2 * frame));
}

/// "AF" for "A. Fields".
QString initials(const QString& name) {
    QString letters;
    for (const QString& part : name.split(' ', Qt::SkipEmptyParts)) {
        letters += part.front().toUpper();
    }
    return letters;
}

}  // namespace

Look lookOf(theme::Display display, double textPoints, bool hasLargeTargets) {
    constexpr double kDaylightPoints = 11.0;  // thin strokes vanish in the sun
    constexpr double kLargePoints = 12.0;
    Look look;
    const double points = std::max({textPoints, display == theme::Display::Daylight ? kDaylightPoints : 0.0,
                                    hasLargeTargets ? kLargePoints : 0.0});
    const QPalette system = display == theme::Display::Office ? systemPalette() : QPalette();
    look.tokens = theme::tokens(display, system);
    look.metrics = theme::metrics(points, hasLargeTargets);
    look.palette = theme::palette(display, system);
    look.font = QApplication::font();
    look.font.setPointSizeF(points);
    // Qt draws a word with an underlined letter wider than it measures it where its letters are kerned; and
    // the shaping takes a fifth of the time until the window stands. Scripts that need it have it all the
    // same.
    look.font.setKerning(false);
    look.font.setStyleStrategy(QFont::PreferNoShaping);
    look.styleSheet = theme::styleSheet(look.tokens, look.metrics) + frameSheet(look.tokens, look.metrics);
    return look;
}

const Look& applyToProgram(const Look& look) {
    programStyle().setLook(look.tokens, look.metrics);
    QApplication::setPalette(look.palette);
    QApplication::setFont(look.font);
    // Setting it has every widget polished anew.
    if (qApp->styleSheet() != look.styleSheet) {
        qApp->setStyleSheet(look.styleSheet);
    }
    return look;
}

void keepApart(QWidget& parent, int gap) {
    constexpr const char* kMade = "gap_made";
    const auto widen = [gap](QLayout* layout, const char* name, int made, const auto& set) {
        const QVariant kept = layout->property(name);
        if (!kept.isValid()) {
            layout->setProperty(name, made);
        }
        set(std::max(kept.isValid() ? kept.toInt() : made, gap));
    };
    for (QLayout* layout : parent.findChildren<QLayout*>()) {
        // Layouts of Qt's own widgets hold no targets of ours.
        if (layout->parentWidget() == nullptr || layout->parentWidget()->inherits("QAbstractScrollArea") ||
            layout->parentWidget()->inherits("QDialogButtonBox")) {
            continue;
        }
        if (auto* form = qobject_cast<QFormLayout*>(layout)) {
            widen(form, kMade, form->verticalSpacing(), [form](int to) { form->setVerticalSpacing(to); });
        } else if (auto* grid = qobject_cast<QGridLayout*>(layout)) {
            widen(grid, kMade, grid->verticalSpacing(), [grid](int to) { grid->setVerticalSpacing(to); });
            widen(grid, "gap_made_across", grid->horizontalSpacing(),
                  [grid](int to) { grid->setHorizontalSpacing(to); });
        } else if (auto* box = qobject_cast<QBoxLayout*>(layout)) {
            widen(box, kMade, box->spacing(), [box](int to) { box->setSpacing(to); });
        }
    }
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

StripText stripText(const WorkbookBridge& bridge, theme::Display display, StripLength length) {
    const bool isLeast = length == StripLength::Least;
    const bool isRoundShort = length == StripLength::Short || isLeast;
    const bool isShort = isRoundShort || length == StripLength::RoundInWords;
    const bool isFull = length == StripLength::Full;
    StripText strip;
    strip.display = isFull ? displayName(display) : QString();
    strip.hasBar = isFull;
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
        strip.round = isRoundShort ? WindowText::tr("Rd %1", "round, short").arg(round->number)
                                   : WindowText::tr("Round %1, %2, %3")
                                         .arg(QString::number(round->number), text::nameOf(round->kind),
                                              text::nameOf(round->state));
        const balancing::WalkProgress& progress = bridge.walkProgress();
        strip.readCount = static_cast<int>(progress.read);
        strip.valveCount = static_cast<int>(progress.all);
        // Other branches are read too where they have a valve, though only terminals have shares.
        const std::size_t terminals = bridge.assessment().terminalCount;
        if (progress.all > terminals) {
            strip.wholeRead = WindowText::tr("Valves to read: %1 of terminals, %2 of branches above them")
                                  .arg(terminals)
                                  .arg(progress.all - terminals);
        }
        if (strip.valveCount > 0) {
            strip.read = (isShort ? WindowText::tr("%1 of %2", "valves read, short")
                                  : WindowText::tr("read %1 of %2 valves"))
                             .arg(strip.readCount)
                             .arg(strip.valveCount);
        }
    }
    const bool isNobody = bridge.isNobodyChosen();
    const QString name = QString::fromStdString(bridge.reviewContext().person);
    strip.wholePerson = isNobody
                            ? WindowText::tr("No person chosen, menu Round, Person: the account %1").arg(name)
                            : WindowText::tr("At this desk: %1").arg(name);
    strip.person = isNobody  ? (isLeast ? QStringLiteral("?") : WindowText::tr("nobody chosen"))
                   : isShort ? initials(name)
                             : name;
    if (const auto id = bridge.instrument()) {
        const project::Instrument& meter = project.instruments().at(*id);
        const QString tag = QString::fromStdString(meter.tag);
        const bool isOverdue = project::isOverdue(meter, bridge.now());
        strip.meter = !isShort    ? WindowText::tr("Meter %1").arg(tag)
                      : isOverdue ? WindowText::tr("%1 overdue", "meter, short").arg(tag)
                                  : tag;
        if (meter.due && !isShort && (isFull || isOverdue)) {
            strip.meter += (isOverdue ? WindowText::tr(", was due %1") : WindowText::tr(", calibrated to %1"))
                               .arg(QString::fromStdString(meter.due->date()));
        }
    }
    strip.conflictCount = static_cast<int>(bridge.openConflicts().size());
    if (bridge.notStored()) {
        strip.stored = WindowText::tr("Not stored: %1").arg(text::sentence(*bridge.notStored()));
        strip.isNotStored = true;
    } else if (const auto stored = isLeast ? std::nullopt : bridge.lastStored()) {
        const QString time = QString::fromStdString(stored->time.timeOfDay());
        const bool isToday = stored->time.date() == bridge.now().date();
        const QString when = isToday ? time : QString::fromStdString(stored->time.date());
        const QString what = text::label(*stored);
        // A job that was just opened says where it stands, also in few words.
        if (bridge.storedCount() > 0) {
            strip.stored = isFull ? WindowText::tr("last stored %1").arg(when) : isToday ? time : QString();
        } else {
            strip.stored =
                (isFull ? WindowText::tr("last stored %1: %2") : WindowText::tr("%1: %2", "stored, short"))
                    .arg(when, what);
        }
    }
    return strip;
}

}  // namespace ww::ui
