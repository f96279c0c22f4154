// Where every branch stands on the one-line diagram: supply and return drawn as one pipe, branches as teeth.
// Not for drawing (schematic_view.h). Pure.
#pragma once

#include <QLineF>
#include <QPointF>
#include <QRectF>
#include <optional>
#include <vector>

#include "core/project/branch_tree.h"

namespace ww::ui::schematic {

/// A branch leaves its parent's pipe downward or to the right; its own children leave it the other way.
enum class Direction { Down, Right };

/// Place of one branch. Scene units are device-independent pixels at 100 %.
struct BranchPlace {
    Direction direction = Direction::Down;
    QPointF takeOff;  ///< on the parent's pipe
    QPointF valve;    ///< middle of its valve
    QLineF pipe;      ///< from the take-off to its end (of a group: to its last child's take-off)
    QRectF label;     ///< tag, state and share: beside the valve, or on a pipe that goes right
};

/// The next branch that an arrow key leads to.
enum class Step { Left, Right, Up, Down };

struct SchematicLayout {
    std::vector<BranchPlace> places;  ///< by index into Project::branches()
    QPointF pump;
    QLineF mainPipe;  ///< from the pump to the last take-off
    QRectF bounds;
};

SchematicLayout layOut(const project::BranchTree& tree);

/// Where an arrow leads from a branch: along the pipe to its neighbours, out to its children, back to its
/// parent. Nothing at an end.
std::optional<std::size_t> step(const project::BranchTree& tree, const SchematicLayout& layout,
                                std::size_t from, Step direction);

}  // namespace ww::ui::schematic
