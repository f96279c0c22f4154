#include "ui/schematic/schematic_layout.h"

#include <algorithm>

namespace ww::ui::schematic {

namespace {

constexpr double kValveAt = 34;      ///< from the take-off to the middle of the valve
constexpr double kValveLength = 68;  ///< pipe used up by the branch's own valve
constexpr double kColumn = 128;      ///< a terminal that hangs down: its width
constexpr double kColumnHeight = 92;
constexpr double kRow = 30;  ///< a terminal that goes right: its height
constexpr double kRowWidth = 206;
constexpr double kLabelWidth = 128;
constexpr double kMargin = 8;
constexpr double kPump = 16;  ///< its radius with its line

struct Size {
    double width = 0;
    double height = 0;
};

class Layer {
  public:
    Layer(const project::BranchTree& tree, SchematicLayout& layout) : m_tree(tree), m_layout(layout) {
        m_layout.places.resize(tree.size());
        m_sizes.resize(tree.size());
    }

    void run() {
        m_layout.pump = QPointF(0, 0);
        double right = 48;
        double bottom = 40;
        double lastTakeOff = right;
        for (const std::size_t root : m_tree.roots()) {
            const Size size = measure(root, Direction::Down);
            lastTakeOff = right + 16;
            place(root, Direction::Down, QPointF(lastTakeOff, 0));
            right += size.width;
            bottom = std::max(bottom, size.height);
        }
        m_layout.mainPipe = QLineF(m_layout.pump, QPointF(lastTakeOff, 0));
        m_layout.bounds = QRectF(QPointF(-kPump, -kPump), QPointF(right, bottom))
                              .adjusted(-kMargin, -kMargin, kMargin, kMargin);
    }

  private:
    static Direction across(Direction direction) {
        return direction == Direction::Down ? Direction::Right : Direction::Down;
    }

    /// Size of a branch with all below it, from its take-off on. Depth is bounded by the tree, a few levels.
    Size measure(std::size_t branch, Direction direction) {
        Size size;
        const bool isDown = direction == Direction::Down;
        if (m_tree.isTerminal(branch)) {
            size = isDown ? Size{kColumn, kColumnHeight} : Size{kRowWidth, kRow};
        } else {
            for (const std::size_t child : m_tree.children(branch)) {
                const Size below = measure(child, across(direction));
                if (isDown) {
                    size.width = std::max(size.width, below.width);
                    size.height += below.height;
                } else {
                    size.width += below.width;
                    size.height = std::max(size.height, below.height);
                }
            }
            if (isDown) {
                size.height += kValveLength;
                size.width = std::max(size.width, kColumn) + 24;
            } else {
                size.width += kValveLength + kLabelWidth;
                size.height += 12;
            }
        }
        m_sizes[branch] = size;
        return size;
    }

    void place(std::size_t branch, Direction direction, QPointF takeOff) {
        BranchPlace& spot = m_layout.places[branch];
        const bool isDown = direction == Direction::Down;
        spot.direction = direction;
        spot.takeOff = takeOff;
        spot.valve = takeOff + (isDown ? QPointF(0, kValveAt) : QPointF(kValveAt, 0));
        spot.label = isDown ? QRectF(spot.valve.x() + 12, spot.valve.y() - 16, kColumn - 26, 34)
                            : QRectF(spot.valve.x() + 14, spot.valve.y() - 14, kLabelWidth, 28);
        QPointF end = takeOff + (isDown ? QPointF(0, kValveLength) : QPointF(kValveLength, 0));
        if (m_tree.isTerminal(branch)) {
            end = isDown ? takeOff + QPointF(0, kColumnHeight - 24) : takeOff + QPointF(kRowWidth - 24, 0);
        }
        QPointF next = end;
        for (const std::size_t child : m_tree.children(branch)) {
            const Size below = m_sizes[child];
            end = next + (isDown ? QPointF(0, 12) : QPointF(kLabelWidth - 16, 0));
            place(child, across(direction), end);
            next += isDown ? QPointF(0, below.height) : QPointF(below.width, 0);
        }
        spot.pipe = QLineF(takeOff, end);
    }

    const project::BranchTree& m_tree;
    SchematicLayout& m_layout;
    std::vector<Size> m_sizes;
};

}  // namespace

SchematicLayout layOut(const project::BranchTree& tree) {
    SchematicLayout layout;
    Layer(tree, layout).run();
    return layout;
}

std::optional<std::size_t> step(const project::BranchTree& tree, const SchematicLayout& layout,
                                std::size_t from, Step direction) {
    const bool hangsDown = layout.places[from].direction == Direction::Down;
    const Step outward = hangsDown ? Step::Down : Step::Right;
    const Step inward = hangsDown ? Step::Up : Step::Left;
    if (direction == outward) {
        const auto children = tree.children(from);
        return children.empty() ? std::nullopt : std::optional(children.front());
    }
    const std::size_t parent = tree.parent(from);
    if (direction == inward) {
        return parent == project::BranchTree::kNone ? std::nullopt : std::optional(parent);
    }
    const auto siblings = parent == project::BranchTree::kNone ? tree.roots() : tree.children(parent);
    const auto at = std::find(siblings.begin(), siblings.end(), from);
    const bool isForward = direction == Step::Right || direction == Step::Down;
    if (isForward) {
        return at + 1 == siblings.end() ? std::nullopt : std::optional(*(at + 1));
    }
    if (at != siblings.begin()) {
        return *(at - 1);
    }
    // Before the first take-off the pipe leads back to the parent's own valve.
    return parent == project::BranchTree::kNone ? std::nullopt : std::optional(parent);
}

}  // namespace ww::ui::schematic
