// The one-line diagram as it is drawn, on screen and on paper: pump, pipes, valves with their open fraction,
// state and "of target" of every branch, the index circuit as a double line. Not for keys and zoom
// (schematic_view.h).
#pragma once

#include <QFont>
#include <QPainter>
#include <optional>
#include <vector>

#include "core/balancing/assessment.h"
#include "ui/schematic/schematic_layout.h"
#include "ui/theme/theme.h"

namespace ww::ui::schematic {

/// What one branch shows, taken out of project and assessment so that painting needs neither.
struct BranchPicture {
    base::Id id;
    QString tag;
    QString share;
    QString setting;
    balancing::State state{};
    bool isOver = false;
    bool isTerminal = true;
    bool isSelfActing = false;
    bool hasValve = false;
    bool isOnIndexPath = false;
    bool isIndexTerminal = false;
    double openFraction = 1;
};

/// A loop with its layout. Copies share nothing and need no project.
struct SchematicDrawing {
    SchematicLayout layout;
    std::vector<BranchPicture> pictures;   ///< by index into Project::branches()
    std::vector<std::size_t> fromPumpOut;  ///< branches, each parent before its children
};

/// How a drawing is painted.
struct SchematicStyle {
    theme::Tokens tokens;
    QFont font;       ///< of all words, with a size in pixels
    double unit = 1;  ///< scene units that a pixel of that font takes
};

/// What is written beside the shape of a branch.
struct BranchWords {
    QString tag;
    QFont tagFont;
    QString rest;          ///< of target and setting, or the first of them; may be empty
    bool isBelow = false;  ///< the rest has a line of its own
};
/// As many words of a branch as have room, pixels of `font`: tag, of target and setting; tag and of target;
/// the tag alone, in letters as narrow as they may be. Nothing where not even that can be read. `isStacked`:
/// in two lines where the room is as high, else in one.
std::optional<BranchWords> wordsOf(const BranchPicture& picture, QSizeF room, bool isStacked,
                                   const QFont& font);

SchematicDrawing drawingOf(const project::Project& project, const balancing::Assessment& assessment);

/// Paints what lies within `exposed`, in scene units; the ground is left as it is.
void paintSchematic(QPainter& painter, const SchematicDrawing& drawing, const QRectF& exposed,
                    const SchematicStyle& style);

}  // namespace ww::ui::schematic
