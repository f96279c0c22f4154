// The one-line diagram as it is drawn, on screen and on paper: pump, pipes, valves with their open fraction,
// state and "of target" of every branch, the index circuit as a double line. Not for keys and zoom
// (schematic_view.h).
#pragma once

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
    QString family;        ///< of the font; empty: the painter's
    bool hasTexts = true;  ///< tags, shares and settings; without them the shapes alone, larger
};

SchematicDrawing drawingOf(const project::Project& project, const balancing::Assessment& assessment);

/// Paints what lies within `exposed`, in scene units; the ground is left as it is.
void paintSchematic(QPainter& painter, const SchematicDrawing& drawing, const QRectF& exposed,
                    const SchematicStyle& style);

}  // namespace ww::ui::schematic
