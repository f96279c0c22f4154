#include "core/project/project.h"

#include <gtest/gtest.h>

#include "core/project/names.h"

namespace ww::project {
namespace {

Id id(unsigned char number) {
    Id made;
    made.bytes[15] = number;
    return made;
}

Branch branch(unsigned char number, std::optional<unsigned char> parent, int position) {
    Branch made;
    made.id = id(number);
    if (parent) {
        made.parent = id(*parent);
    }
    made.position = position;
    made.tag = "B" + std::to_string(number);
    return made;
}

Reading reading(unsigned char number, unsigned char round, int sequence) {
    Reading made;
    made.id = id(number);
    made.round = id(round);
    made.sequence = sequence;
    return made;
}

std::vector<std::size_t> list(std::span<const std::size_t> indices) {
    return {indices.begin(), indices.end()};
}

TEST(BranchTree, putsParentsBeforeChildrenAndSiblingsNearestFirst) {
    Project project;
    project.put(branch(1, 2, 3));  // entered before its parent
    project.put(branch(2, std::nullopt, 0));
    project.put(branch(3, 2, 1));
    project.put(branch(4, std::nullopt, 9));
    const BranchTree& tree = project.tree();
    EXPECT_EQ(list(tree.roots()), (std::vector<std::size_t>{1, 3}));
    EXPECT_EQ(list(tree.children(1)), (std::vector<std::size_t>{2, 0}));
    EXPECT_EQ(list(tree.topDown()), (std::vector<std::size_t>{1, 3, 2, 0}));
    EXPECT_EQ(list(tree.terminals()), (std::vector<std::size_t>{2, 0, 3}));
}

TEST(BranchTree, aCircleOfParentsIsCutOnce) {
    Project project;
    project.put(branch(1, 2, 0));  // a tail into the circle 2 -> 3 -> 4 -> 2
    project.put(branch(2, 3, 1));
    project.put(branch(3, 4, 2));
    project.put(branch(4, 2, 3));
    EXPECT_EQ(project.tree().roots().size(), 1u);
    EXPECT_EQ(project.tree().topDown().size(), 4u);
}

TEST(Project, keepsReadingsOfARoundInOrderOfEntry) {
    Project project;
    project.put(reading(1, 100, 2));
    project.put(reading(2, 100, 1));
    project.put(reading(3, 101, 1));
    project.put(reading(4, 100, 3));
    EXPECT_EQ(project.readingsOf(id(100)), (std::vector<std::size_t>{1, 0, 3}));
    project.eraseReading(id(2));
    EXPECT_EQ(project.readingsOf(id(100)), (std::vector<std::size_t>{0, 2}));
    EXPECT_EQ(project.readingsOf(id(101)), (std::vector<std::size_t>{1}));
    project.put(reading(1, 100, 9));
    EXPECT_EQ(project.readingsOf(id(100)), (std::vector<std::size_t>{2, 0}));
}

TEST(Project, aHeadOfTheFlowingFluidFollowsTheFluid) {
    Project project;
    Job job;
    job.temperature = quantity::measured<Temperature>(*Decimal::parse("60"), quantity::Unit::Fahrenheit);
    project.put(job);
    Reading made = reading(1, 100, 1);
    made.dp = quantity::measuredDifference(*Decimal::parse("10.0"), quantity::Unit::Foot,
                                           project.fluid().density());
    project.put(made);
    // 2.309 ft of water at 60 F to the psi: IAPWS-IF97 density under standard gravity.
    EXPECT_NEAR(project.readings()[0].dp->value.in(quantity::Unit::Psi), 10.0 / 2.309, 0.001);
    job.temperature = quantity::measured<Temperature>(*Decimal::parse("180"), quantity::Unit::Fahrenheit);
    project.put(job);
    EXPECT_NEAR(project.readings()[0].dp->value.in(quantity::Unit::Psi), 10.0 / 2.3768, 0.001);
    EXPECT_EQ(project.readings()[0].dp->digits.text(), "10.0");
}

TEST(Names, everyWordReadsBack) {
    EXPECT_EQ(fromName<RoundState>("Sent Back"), RoundState::SentBack);
    EXPECT_EQ(fromName<fluid::FluidKind>("propylene glycol"), fluid::FluidKind::PropyleneGlycol);
    EXPECT_EQ(fromName<Scale>("furlongs"), std::nullopt);
    EXPECT_EQ(namesOf<Scale>(), "turns, degrees, percent");
}

}  // namespace
}  // namespace ww::project
