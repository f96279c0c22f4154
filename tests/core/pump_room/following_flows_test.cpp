// The design flows of risers that follow what they come to feed. Own cases.
#include <gtest/gtest.h>

#include "core/pump_room/zone_change.h"
#include "tests/support/field_job.h"

namespace ww::pump_room {
namespace {

using support::FieldJob;

/// R1 (8, its own) feeds A, B and the group G (no flow of its own), which feeds C.
FieldJob riserJob() {
    FieldJob job;
    const base::Id valve = job.valve({{"0", "0"}, {"4", "8"}});
    job.branch("R1", "", "8", valve);
    job.branch("A", "R1", "4", valve);
    job.branch("B", "R1", "2", valve);
    job.branch("G", "R1", "", {}, project::BranchKind::None);
    job.branch("C", "G", "2", valve);
    return job;
}

project::Branch freshBranch(FieldJob& job, std::string_view tag, std::string_view parent,
                            std::string_view flow) {
    project::Branch made = job.project().branches().at(job.idOf("A"));
    made.id = job.ids().next();
    made.tag = tag;
    made.parent = job.idOf(parent);
    made.designFlow = job.flowOf(flow);
    return made;
}

std::string followed(const FieldJob& job, const std::vector<ZoneChange>& changes) {
    std::string text;
    for (const FollowingFlow& flow : followingFlows(job.project(), changes)) {
        text += job.project().branches().at(flow.change.branch).tag + " " + flow.before.text() + " > " +
                flow.change.flow.text() + ";";
    }
    return text;
}

TEST(FollowingFlows, aRiserFollowsWhatIsAddedBelowIt) {
    FieldJob job = riserJob();
    EXPECT_EQ(followed(job, {AddBranch{freshBranch(job, "D", "R1", "1.25")}}), "R1 8 m3/h > 9.25 m3/h;");
    EXPECT_EQ(followed(job, {AddBranch{freshBranch(job, "D", "G", "1")}}), "R1 8 m3/h > 9 m3/h;")
        << "through a group without a flow of its own";
    EXPECT_EQ(followed(job, {ChangeFlow{job.idOf("C"), job.flowOf("2.5")}, RemoveBranch{job.idOf("B")}}),
              "R1 8 m3/h > 6.5 m3/h;");
}

TEST(FollowingFlows, nothingFollowsWhatIsSaidOtherwise) {
    FieldJob job = riserJob();
    const project::Branch fresh = freshBranch(job, "D", "R1", "1");
    EXPECT_EQ(followed(job, {AddBranch{fresh}, ChangeFlow{job.idOf("R1"), job.flowOf("12")}}), "");
    EXPECT_EQ(followed(job, {AddBranch{freshBranch(job, "A", "R1", "1")}}), "") << "cannot be carried out";
    EXPECT_EQ(followed(job, {AddBranch{freshBranch(job, "A1", "A", "1")}}), "")
        << "what was a terminal says itself what it takes";
    job.change(job.project().branches().at(job.idOf("R1")),
               [](project::Branch& branch) { branch.designFlow.reset(); });
    EXPECT_EQ(followed(job, {AddBranch{fresh}}), "");
}

}  // namespace
}  // namespace ww::pump_room
