// waterwright merge: what it writes, lists and refuses.

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/support/command_run.h"
#include "tests/support/two_laptops.h"

namespace ww::app {
namespace {

using support::CommandRun;
using support::runCommand;

class MergeCommandTest : public testing::Test {
  protected:
    CommandRun merge(const std::string& first, const std::string& second, const std::string& out,
                     bool isJson = false) {
        m_two.a.job.reset();
        m_two.b.job.reset();
        std::vector<std::string> arguments{"merge", m_two.fileOf(first), m_two.fileOf(second), "--out",
                                           m_two.fileOf(out)};
        if (isJson) {
            arguments.emplace_back("--json");
        }
        return runCommand(arguments);
    }
    support::TwoLaptops m_two{6};
};

TEST_F(MergeCommandTest, endsWithOneWhileConflictsAreLeft) {
    m_two.a.read("B-01", "21.5");
    m_two.b.read("B-01", "22.5");
    m_two.b.read("B-02", "23.5");
    const CommandRun run = merge("a", "b", "out");
    EXPECT_EQ(run.status, kNotAccepted) << run.err;
    EXPECT_EQ(run.out, m_two.fileOf("out") +
                           ": 2 actions of LT-2 taken over, 2 readings added, 0 read alike on both; 1 "
                           "conflict to decide\n"
                           "  B-01, DP, round 2: 21.5 kPa, setting 4, A. Fields, 2026-03-02T08:01:00Z | 22.5 "
                           "kPa, setting 4, A. Fields, 2026-03-02T08:01:00Z\n");
    EXPECT_EQ(runCommand({"verify", m_two.fileOf("out")}).status, kDone);
}

TEST_F(MergeCommandTest, printsTheContractsDocument) {
    m_two.a.read("B-01", "21.5");
    m_two.b.read("B-01", "22.5");
    const CommandRun run = merge("a", "b", "out", true);
    EXPECT_EQ(run.status, kNotAccepted);
    const auto document = nlohmann::json::parse(run.out);
    EXPECT_EQ(document["written"], m_two.fileOf("out"));
    EXPECT_TRUE(document["faults"].empty());
    ASSERT_EQ(document["conflicts"].size(), 1u);
    EXPECT_EQ(document["conflicts"][0]["ours"]["value"], "21.5 kPa, setting 4");
    EXPECT_EQ(document["conflicts"][0]["theirs"]["instrument"], "M-1");
    EXPECT_EQ(document["readings_added"], 1);
}

TEST_F(MergeCommandTest, endsWithZeroWithoutConflictsAndWithoutNews) {
    m_two.b.read("B-01", "22.5");
    EXPECT_EQ(merge("a", "b", "out").status, kDone);
    const CommandRun again = merge("out", "b", "again");
    EXPECT_EQ(again.status, kDone);
    EXPECT_NE(again.out.find("nothing new"), std::string::npos);
}

TEST_F(MergeCommandTest, neverReplacesAFileAndRefusesStrangers) {
    m_two.b.read("B-01", "22.5");
    const std::string before = m_two.folder.read("c.wwj");
    EXPECT_EQ(merge("a", "b", "c").status, kFileTrouble);
    EXPECT_EQ(m_two.folder.read("c.wwj"), before);
    EXPECT_EQ(merge("a", "a", "out").status, kBadInput);
    EXPECT_EQ(merge("a", "none", "out").status, kFileTrouble);
    const CommandRun refused = merge("a", "none", "out", true);
    const auto document = nlohmann::json::parse(refused.out);
    EXPECT_TRUE(document["written"].is_null());
    EXPECT_EQ(document["faults"].size(), 1u);
    EXPECT_FALSE(m_two.folder.has("out.wwj"));
}

}  // namespace
}  // namespace ww::app
