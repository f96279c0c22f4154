// Colours and sizes of the screen: one table of tokens for every display. Everything painted takes its
// colours from here. Not for shapes (state_shape.h).
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>
#include <QString>

namespace ww::ui::theme {

/// How the screen is shown. Office follows the palette of the desktop; the others have palettes of their own.
enum class Display { Office, Daylight, PlantRoomDark };

/// The next display in the order in which Ctrl+Shift+D steps.
Display next(Display display);
/// The name kept in settings: "office", "daylight", "plant_room_dark".
QString name(Display display);
/// The display of that name; Office for any other text.
Display displayNamed(const QString& name);

/// Colours by what they mean. Every text colour has a contrast of at least 7:1 on paper and panel, lines and
/// shapes at least 3:1 (WCAG 2.2, 1.4.6 and 1.4.11); text on a tint is always ink.
struct Tokens {
    QColor paper;        ///< behind tables, fields and charts
    QColor panel;        ///< behind everything else
    QColor ink;          ///< text; a branch on share
    QColor soft;         ///< secondary text
    QColor rule;         ///< lines, rings, axes
    QColor grid;         ///< between the cells of a table
    QColor shortShare;   ///< below the band
    QColor over;         ///< above the band
    QColor doubt;        ///< a reading that must be resolved
    QColor tintShort;    ///< behind a row whose share is short
    QColor tintOver;     ///< behind a row whose share is over
    QColor tintDoubt;    ///< behind a row with a doubtful reading
    QColor tintCurrent;  ///< behind the row in hand
    bool isDark = false;
    bool isDaylight = false;                 ///< hairlines in ink, lines one pixel wider
    QFont::Weight numerals = QFont::Normal;  ///< of numbers, in cells and large

    bool operator==(const Tokens&) const = default;
};

/// The tokens of a display. Office takes the light or the dark column by the window lightness of `system`.
const Tokens& tokens(Display display, const QPalette& system);
/// The same for the palette that the application has now.
const Tokens& tokens(Display display);
/// Black and greys on white: what is printed.
const Tokens& printTokens();

/// Whether text is lighter than the window behind it.
bool isDark(const QPalette& palette);

/// The palette of a display; for Office `system` itself.
QPalette palette(Display display, const QPalette& system);
QPalette palette(Display display);

/// Sizes in device-independent pixels.
struct Metrics {
    int stripHeight = 36;    ///< job strip on top
    int keyLineHeight = 28;  ///< key line at the bottom
    int sideListWidth = 112;
    int noticeHeight = 44;  ///< reserved line above a grid and its header
    int totalsHeight = 28;
    int rowHeight = 26;
    int controlHeight = 28;  ///< never below 24 (WCAG 2.2, 2.5.8)
    int gap = 8;
    int shapeSize = 16;
    double textPoints = 10.0;
    bool hasLargeTargets = false;

    /// What large targets are kept apart by; 0 where there are none and layouts keep their own gaps.
    int targetGap() const { return hasLargeTargets ? gap : 0; }
};
/// Sizes for a text size (points, 8 to 24) and for large targets.
Metrics metrics(double textPoints, bool hasLargeTargets = false);

/// Style sheet of the whole program: focus ring, tables, buttons, in these colours and sizes.
QString styleSheet(const Tokens& tokens, const Metrics& metrics);

}  // namespace ww::ui::theme
