// What the report says of the devices of every circuit. Own cases.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/pump_room/pump_picture.h"
#include "core/report/pump_sections.h"
#include "tests/support/demo_project.h"

namespace ww::report {
namespace {

TEST(DeviceSection, saysWhatIsMissingOnceWithTheTagsOfAll) {
    const project::Project project = support::demoProject();
    pump_room::PumpPicture picture;
    picture.devices = pump_room::deviceList(project);
    std::multiset<std::string> wanted;
    for (const pump_room::DeviceRow& device : picture.devices) {
        for (const base::Fault& one : device.missing) {
            wanted.insert(base::english(one));
        }
    }
    const std::set<std::string> sentences(wanted.begin(), wanted.end());
    ASSERT_GT(wanted.size(), sentences.size()) << "the straight pipe is recorded nowhere in this job";
    const Section section = deviceSection(project, picture);
    ASSERT_EQ(section.tables.size(), 2U);
    const Table& missing = section.tables.back();
    ASSERT_EQ(missing.rows.size(), sentences.size());
    for (const auto& row : missing.rows) {
        ASSERT_EQ(row.size(), missing.columns.size());
        EXPECT_TRUE(sentences.contains(row[0].text)) << row[0].text;
        const auto commas = std::count(row[1].text.begin(), row[1].text.end(), ',');
        EXPECT_EQ(static_cast<std::size_t>(commas) + 1, wanted.count(row[0].text)) << row[1].text;
    }
}

// What is counted above is what the lists below hold.
TEST(DeviceSection, countsWhatItLists) {
    const project::Project project = support::demoProject();
    pump_room::PumpPicture picture;
    picture.devices = pump_room::deviceList(project);
    const Section section = deviceSection(project, picture);
    std::size_t points = 0;
    std::size_t circuits = 0;
    std::size_t pumps = 0;
    for (const auto& row : section.tables.front().rows) {
        const std::string& missing = row.back().text;
        if (!missing.empty()) {
            points += std::stoul(missing);
            (project.branchTagged(row.front().text) != nullptr ? circuits : pumps) += 1;
        }
    }
    EXPECT_EQ(pumps, 1U) << "its discharge valve";
    EXPECT_EQ(base::english(section.facts.front().value), "in all: " + std::to_string(points) +
                                                              "; at circuits: " + std::to_string(circuits) +
                                                              ", at pumps: " + std::to_string(pumps));
}

}  // namespace
}  // namespace ww::report
