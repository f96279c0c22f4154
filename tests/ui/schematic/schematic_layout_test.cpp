#include "ui/schematic/schematic_layout.h"

#include <gtest/gtest.h>

#include "core/project/project.h"

namespace ww::ui::schematic {
namespace {

base::Id id(int number) {
    base::Id made;
    made.bytes[14] = static_cast<std::uint8_t>(number / 256);
    made.bytes[15] = static_cast<std::uint8_t>(number % 256);
    return made;
}

/// Three risers with a floor branch each on top, and terminals on both: four levels in all.
project::Project house() {
    project::Project project;
    int next = 1;
    const auto add = [&](std::optional<int> parent) {
        project::Branch branch;
        branch.id = id(next);
        branch.position = next;
        branch.tag = "B-" + std::to_string(next);
        if (parent) {
            branch.parent = id(*parent);
        }
        project.put(branch);
        return next++;
    };
    for (int riser = 0; riser < 3; ++riser) {
        const int trunk = add(std::nullopt);
        for (int i = 0; i < 4; ++i) {
            add(trunk);
        }
        const int floor = add(trunk);
        add(floor);
        add(floor);
    }
    return project;
}

TEST(SchematicLayout, noTwoLabelsOrValvesLieOnEachOther) {
    const project::Project project = house();
    const SchematicLayout layout = layOut(project.tree());
    for (std::size_t i = 0; i < layout.places.size(); ++i) {
        const QRectF valve(layout.places[i].valve - QPointF(10, 10), QSizeF(20, 20));
        EXPECT_TRUE(layout.bounds.contains(layout.places[i].label)) << i;
        for (std::size_t k = 0; k < layout.places.size(); ++k) {
            if (i != k) {
                EXPECT_FALSE(layout.places[i].label.intersects(layout.places[k].label)) << i << " " << k;
                EXPECT_FALSE(valve.intersects(layout.places[k].label)) << i << " " << k;
            }
        }
    }
}

TEST(SchematicLayout, everyTakeOffStandsOnItsParentsPipe) {
    const project::Project project = house();
    const SchematicLayout layout = layOut(project.tree());
    for (std::size_t i = 0; i < layout.places.size(); ++i) {
        const std::size_t parent = project.tree().parent(i);
        const QLineF pipe =
            parent == project::BranchTree::kNone ? layout.mainPipe : layout.places[parent].pipe;
        const QPointF at = layout.places[i].takeOff;
        const double along = QLineF(pipe.p1(), at).length() + QLineF(at, pipe.p2()).length();
        EXPECT_NEAR(along, pipe.length(), 1e-9) << i;
    }
}

TEST(SchematicLayout, arrowsReachEveryBranchAndLeadBack) {
    const project::Project project = house();
    const project::BranchTree& tree = project.tree();
    const SchematicLayout layout = layOut(tree);
    std::vector<bool> isReached(tree.size(), false);
    std::vector<std::size_t> open{tree.roots().front()};
    isReached[open.front()] = true;
    while (!open.empty()) {
        const std::size_t from = open.back();
        open.pop_back();
        for (const Step direction : {Step::Left, Step::Right, Step::Up, Step::Down}) {
            const auto next = step(tree, layout, from, direction);
            if (next && !isReached[*next]) {
                isReached[*next] = true;
                open.push_back(*next);
            }
        }
    }
    EXPECT_EQ(std::count(isReached.begin(), isReached.end(), true), static_cast<long>(tree.size()));
    // Down the first riser to its first take-off, and back to the left.
    const auto down = step(tree, layout, tree.roots().front(), Step::Down);
    ASSERT_TRUE(down.has_value());
    EXPECT_EQ(step(tree, layout, *down, Step::Left), tree.roots().front());
}

}  // namespace
}  // namespace ww::ui::schematic
