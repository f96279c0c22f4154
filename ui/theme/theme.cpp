#include "ui/theme/theme.h"

#include <QApplication>
#include <algorithm>

namespace ww::ui::theme {
namespace {

const Tokens& daylight(bool isDaylight) {
    static const auto make = [](bool daylightLines) {
        Tokens t;
        t.paper = QColor(0xFF, 0xFF, 0xFF);
        t.panel = QColor(0xEE, 0xF2, 0xF5);
        t.ink = QColor(0x10, 0x18, 0x1F);
        t.soft = QColor(0x41, 0x4F, 0x5A);
        t.rule = QColor(0x70, 0x7C, 0x85);
        t.shortShare = QColor(0x30, 0x43, 0xBC);
        t.over = QColor(0x65, 0x3D, 0x05);
        t.doubt = QColor(0x93, 0x09, 0x75);
        t.tintShort = QColor(0xE4, 0xEB, 0xFE);
        t.tintOver = QColor(0xFF, 0xEC, 0xCD);
        t.tintDoubt = QColor(0xFF, 0xE6, 0xF6);
        t.tintCurrent = QColor(0xCA, 0xF1, 0xF2);
        t.isDaylight = daylightLines;
        t.grid = daylightLines ? t.ink : t.panel.darker(112);
        t.numerals = daylightLines ? QFont::DemiBold : QFont::Normal;
        return t;
    };
    static const Tokens kOffice = make(false);
    static const Tokens kDaylight = make(true);
    return isDaylight ? kDaylight : kOffice;
}

const Tokens& dark() {
    static const Tokens kDark = [] {
        Tokens t;
        t.paper = QColor(0x12, 0x17, 0x1B);
        t.panel = QColor(0x1C, 0x24, 0x2A);
        t.ink = QColor(0xF2, 0xF6, 0xF8);
        t.soft = QColor(0xB3, 0xC0, 0xCA);
        t.rule = QColor(0x76, 0x82, 0x8B);
        t.shortShare = QColor(0x9C, 0xAA, 0xFE);
        t.over = QColor(0xF4, 0xA2, 0x5C);
        t.doubt = QColor(0xFE, 0xB9, 0xDB);
        t.tintShort = QColor(0x25, 0x2A, 0x50);
        t.tintOver = QColor(0x40, 0x27, 0x12);
        t.tintDoubt = QColor(0x45, 0x23, 0x37);
        t.tintCurrent = QColor(0x19, 0x3C, 0x3D);
        t.isDark = true;
        t.grid = t.panel.lighter(130);
        return t;
    }();
    return kDark;
}

QPalette paletteOf(const Tokens& t) {
    QPalette p;
    p.setColor(QPalette::Window, t.panel);
    p.setColor(QPalette::WindowText, t.ink);
    p.setColor(QPalette::Base, t.paper);
    p.setColor(QPalette::AlternateBase, t.panel);
    p.setColor(QPalette::Text, t.ink);
    p.setColor(QPalette::PlaceholderText, t.soft);
    p.setColor(QPalette::Button, t.panel);
    p.setColor(QPalette::ButtonText, t.ink);
    p.setColor(QPalette::BrightText, t.paper);
    p.setColor(QPalette::Highlight, t.tintCurrent);
    p.setColor(QPalette::HighlightedText, t.ink);
    p.setColor(QPalette::ToolTipBase, t.paper);
    p.setColor(QPalette::ToolTipText, t.ink);
    p.setColor(QPalette::Link, t.shortShare);
    p.setColor(QPalette::LinkVisited, t.shortShare);
    p.setColor(QPalette::Light, t.isDark ? t.panel.lighter(140) : t.paper);
    p.setColor(QPalette::Midlight, t.isDark ? t.panel.lighter(120) : t.panel);
    p.setColor(QPalette::Mid, t.rule);
    p.setColor(QPalette::Dark, t.rule);
    p.setColor(QPalette::Shadow, t.isDark ? t.paper : t.soft);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        // A disabled control stays readable; its dashed outline and its word say that it is off.
        p.setColor(QPalette::Disabled, role, t.soft);
    }
    return p;
}

}  // namespace

Display next(Display display) {
    switch (display) {
        case Display::Office:
            return Display::Daylight;
        case Display::Daylight:
            return Display::PlantRoomDark;
        case Display::PlantRoomDark:
            break;
    }
    return Display::Office;
}

QString name(Display display) {
    switch (display) {
        case Display::Office:
            return QStringLiteral("office");
        case Display::Daylight:
            return QStringLiteral("daylight");
        case Display::PlantRoomDark:
            break;
    }
    return QStringLiteral("plant_room_dark");
}

Display displayNamed(const QString& text) {
    for (const Display display : {Display::Daylight, Display::PlantRoomDark}) {
        if (name(display) == text) {
            return display;
        }
    }
    return Display::Office;
}

bool isDark(const QPalette& palette) {
    return palette.color(QPalette::WindowText).lightness() > palette.color(QPalette::Window).lightness();
}

const Tokens& tokens(Display display, const QPalette& system) {
    switch (display) {
        case Display::Office:
            return isDark(system) ? dark() : daylight(false);
        case Display::Daylight:
            return daylight(true);
        case Display::PlantRoomDark:
            break;
    }
    return dark();
}

const Tokens& tokens(Display display) {
    return tokens(display, QApplication::palette());
}

const Tokens& printTokens() {
    static const Tokens kPrint = [] {
        Tokens t = daylight(true);
        t.panel = QColor(0xF0, 0xF0, 0xF0);
        t.ink = QColor(0, 0, 0);
        t.soft = QColor(0x40, 0x40, 0x40);
        t.rule = QColor(0x70, 0x70, 0x70);
        t.grid = t.rule;
        t.numerals = QFont::Normal;
        t.tintShort = t.tintOver = t.tintDoubt = t.tintCurrent = t.panel;
        return t;
    }();
    return kPrint;
}

QPalette palette(Display display, const QPalette& system) {
    return display == Display::Office ? system : paletteOf(tokens(display, system));
}

QPalette palette(Display display) {
    return palette(display, QApplication::palette());
}

Metrics metrics(double textPoints, bool hasLargeTargets) {
    Metrics m;
    m.textPoints = std::clamp(textPoints, 8.0, 24.0);
    // 26 px at 10 pt, 34 px at 12 pt, and in step with the text above that.
    const double scale = m.textPoints / 10.0;
    m.rowHeight = m.textPoints <= 10.0 ? 26 : std::max(34, static_cast<int>(28.0 * scale));
    m.controlHeight = std::max(28, static_cast<int>(28.0 * scale));
    m.stripHeight = std::max(36, static_cast<int>(30.0 * scale));
    m.keyLineHeight = std::max(28, static_cast<int>(26.0 * scale));
    m.sideListWidth = std::max(112, static_cast<int>(104.0 * scale));
    m.noticeHeight = std::max(44, static_cast<int>(40.0 * scale));
    m.totalsHeight = std::max(28, static_cast<int>(26.0 * scale));
    if (hasLargeTargets) {
        m.hasLargeTargets = true;
        m.rowHeight = std::max(m.rowHeight, 56);
        m.controlHeight = std::max(m.controlHeight, 56);
        m.stripHeight = m.controlHeight + 4;
        m.keyLineHeight = std::max(m.keyLineHeight, 36);
        m.gap = 12;
    }
    return m;
}

namespace {

/// A triangle of the room of an arrow: its point is the middle of a turn of which its angle is filled.
QString triangle(bool isDown, const QColor& color) {
    return QStringLiteral(
               "qconicalgradient(cx: 0.5, cy: %1, angle: %2, stop: 0.17 transparent, stop: 0.18 %3, "
               "stop: 0.32 %3, stop: 0.33 transparent)")
        .arg(isDown ? 1 : 0)
        .arg(isDown ? 0 : 180)
        .arg(color.name());
}

}  // namespace

QString styleSheet(const Tokens& t, const Metrics& m) {
    const QString line = t.isDaylight ? t.ink.name() : t.rule.name();
    const QString width = t.isDaylight ? QStringLiteral("2px") : QStringLiteral("1px");
    QString sheet = QStringLiteral(
        "QPushButton, QToolButton { min-height: %HEIGHT%px; padding: 0 %PADDING%px; border: %WIDTH% solid "
        "%LINE%;"
        " border-radius: 3px; background: %PAPER%; color: %INK%; }\n"
        "QPushButton:pressed, QToolButton:pressed, QPushButton:checked { background: %INK%; color: %PAPER%; "
        "}\n"
        "QPushButton:disabled, QToolButton:disabled { border-style: dashed; color: %SOFT%; background: "
        "%PANEL%; }\n"
        "QPushButton:focus, QToolButton:focus { border: %FOCUS%px solid %INK%; min-height: %INNER%px;"
        " padding: 0 %BUTTONPAD%px; }\n"
        "QLineEdit, QComboBox, QSpinBox { min-height: %HEIGHT%px; border: %WIDTH% solid %LINE%;"
        " border-radius: 2px; background: %PAPER%; color: %INK%; padding: 0 6px; selection-background-color: "
        "%INK%;"
        " selection-color: %PAPER%; }\n"
        // What takes no typing has no paper under it: a dashed frame where it is off for now, a line below
        // where it can only be read and copied.
        "QLineEdit:read-only, QPlainTextEdit:read-only { border-color: %PANEL% %PANEL% %LINE% %PANEL%;"
        " border-radius: 0; background: %PANEL%; }\n"
        "QLineEdit:disabled, QComboBox:disabled, QSpinBox:disabled, QPlainTextEdit:disabled {"
        " border-color: %LINE%; border-style: dashed; color: %SOFT%; background: %PANEL%; }\n"
        "QLineEdit:focus, QComboBox:focus, QSpinBox:focus { border: %FOCUS%px solid %INK%;"
        " min-height: %INNER%px; padding: 0 4px; }\n"
        // A triangle alone says that there is a list: the desktop's frame around it would stand over ours.
        "QComboBox::drop-down, QSpinBox::up-button, QSpinBox::down-button { border: none; width: %DROP%px; "
        "}\n"
        "QComboBox::drop-down:focus, QSpinBox::up-button:focus, QSpinBox::down-button:focus { left: "
        "%RING%px; }\n"
        "QComboBox::down-arrow, QSpinBox::up-arrow, QSpinBox::down-arrow { width: %ARROW%px; height: "
        "%ARROWHEIGHT%px; background: %DOWN%; }\n"
        "QSpinBox::up-arrow { background: %UP%; }\n"
        "QComboBox::down-arrow:disabled, QSpinBox::down-arrow:disabled { background: %DOWNOFF%; }\n"
        "QSpinBox::up-arrow:disabled { background: %UPOFF%; }\n"
        // What opens a menu says so by its sign.
        "QPushButton::menu-indicator { image: none; }\n"
        "QCheckBox::indicator, QRadioButton::indicator { width: %MARK%px; height: %MARK%px; }\n"
        // The desktop's palette may write what is off too pale to be read.
        "QCheckBox:disabled, QRadioButton:disabled, QLabel:disabled { color: %SOFT%; }\n"
        "QTableView, QListView, QTreeView { background: %PAPER%; color: %INK%; border: %WIDTH% solid %LINE%;"
        " padding: %RING%px; gridline-color: %GRID%; selection-background-color: %CURRENT%; selection-color: "
        "%INK%; outline: 0; "
        "}\n"
        "QTableView:focus, QListView:focus, QTreeView:focus { border: %FOCUS%px solid %INK%; padding: 0; }\n"
        "QHeaderView { background: %PANEL%; }\n"
        "QHeaderView::section { background: %PANEL%; color: %INK%; border: 0; border-bottom: %WIDTH% solid "
        "%LINE%;"
        " padding: 2px 6px; }\n"
        "QToolTip { background: %PAPER%; color: %INK%; border: 1px solid %INK%; }\n");
    // The ring of what has the keys adds two pixels, and takes them from within: nothing moves.
    const int frame = t.isDaylight ? 2 : 1;
    const int height = m.controlHeight - (m.hasLargeTargets && !t.isDaylight ? 2 : 4);
    constexpr int kRing = 2;
    const int padding = m.textPoints > 12.0 ? 6 : 10;
    const int arrow = std::max(5, static_cast<int>(m.textPoints * 0.5));
    const std::initializer_list<std::pair<const char*, QString>> places = {
        {"%FOCUS%", QString::number(frame + kRing)},
        {"%RING%", QString::number(kRing)},
        {"%INNER%", QString::number(height - 2 * kRing)},
        {"%BUTTONPAD%", QString::number(padding - kRing)},
        {"%PADDING%", QString::number(padding)},
        {"%ARROW%", QString::number(2 * arrow - 1)},
        {"%ARROWHEIGHT%", QString::number(arrow)},
        {"%DROP%", QString::number(2 * arrow + 7)},
        {"%DOWN%", triangle(true, t.ink)},
        {"%DOWNOFF%", triangle(true, t.soft)},
        {"%UP%", triangle(false, t.ink)},
        {"%UPOFF%", triangle(false, t.soft)},
        {"%MARK%", QString::number(std::max(13, static_cast<int>(m.textPoints * 1.3)))},
        {"%HEIGHT%", QString::number(height)},
        {"%WIDTH%", width},
        {"%LINE%", line},
        {"%GRID%", t.grid.name()},
        {"%PAPER%", t.paper.name()},
        {"%PANEL%", t.panel.name()},
        {"%INK%", t.ink.name()},
        {"%SOFT%", t.soft.name()},
        {"%CURRENT%", t.tintCurrent.name()},
    };
    for (const auto& [place, value] : places) {
        sheet.replace(QLatin1String(place), value);
    }
    return sheet;
}

}  // namespace ww::ui::theme
