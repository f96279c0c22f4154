#include "tests/lint/include_rules.h"

#include <gtest/gtest.h>

namespace ww::lint {
namespace {

// Every rule is seen to catch what it is for. Source: decisions of this project.
const std::set<std::string> kPaths{
    "core/base/id.h",       "core/store/file.h",           "core/project/project.h",
    "core/balancing/a.h",   "core/hydraulics/a.h",         "core/workbook/workbook.h",
    "ui/places/walk.h",     "ui/workbook_bridge.h",        "ui/main_window/main_window.h",
    "app/commands/check.h", "tests/support/counting_ids.h"};

std::string faultOf(const std::string& path, const std::string& include) {
    const auto found = includeViolations({path, "// Head\n#include " + include + "\n"}, kPaths);
    EXPECT_LE(found.size(), 1u);
    EXPECT_TRUE(found.empty() || found.front().line == 2);
    return found.empty() ? "" : found.front().what;
}
bool isFine(const std::string& path, const std::string& include) {
    return faultOf(path, include).empty();
}

TEST(IncludeRules, aRowBringsWhatItRestsOn) {
    EXPECT_EQ(foldersAllowed("quantity"), (std::set<std::string>{"base", "quantity"}));
    EXPECT_EQ(foldersAllowed("estimation"),
              (std::set<std::string>{"base", "curve", "estimation", "fluid", "hydraulics", "quantity"}));
    EXPECT_EQ(foldersAllowed("no_such_folder"), std::set<std::string>{});
}

TEST(IncludeRules, coreFollowsTheTable) {
    EXPECT_TRUE(isFine("core/balancing/x.cpp", "\"core/hydraulics/a.h\""));
    EXPECT_TRUE(isFine("core/project/x.h", "\"core/base/id.h\""));
    EXPECT_EQ(faultOf("core/project/x.h", "\"core/hydraulics/a.h\""),
              "core/project must not include core/hydraulics (\"core/hydraulics/a.h\")");
    EXPECT_FALSE(isFine("core/base/x.h", "\"core/project/project.h\""));
    EXPECT_FALSE(isFine("core/store/x.cpp", "\"core/workbook/workbook.h\""));
    EXPECT_FALSE(isFine("core/project/x.cpp", "\"ui/places/walk.h\""));
    EXPECT_FALSE(isFine("core/project/x.cpp", "\"app/commands/check.h\""));
    EXPECT_FALSE(isFine("core/project/x.cpp", "\"tests/support/counting_ids.h\""));
}

TEST(IncludeRules, aFolderThatIsNotListedIsRefused) {
    const auto found = includeViolations({"core/novelty/x.h", "// Head\n"}, kPaths);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found.front().line, 0u);
    EXPECT_FALSE(includeViolations({"core/loose.h", "// Head\n"}, kPaths).empty());
}

TEST(IncludeRules, includesAreNamedFromTheTop) {
    EXPECT_FALSE(isFine("core/base/x.cpp", "\"id.h\""));
    EXPECT_FALSE(isFine("core/base/x.cpp", "\"../base/id.h\""));
    EXPECT_FALSE(isFine("core/base/x.cpp", "\"core/base/gone.h\""));
    EXPECT_TRUE(isFine("ui/places/walk.cpp", "\"walk.moc\""));
}

TEST(IncludeRules, screensAreLayered) {
    EXPECT_TRUE(isFine("ui/places/x.cpp", "\"ui/workbook_bridge.h\""));
    EXPECT_TRUE(isFine("app/desktop.cpp", "\"ui/main_window/main_window.h\""));
    EXPECT_TRUE(isFine("tests/ui/x.cpp", "\"core/store/file.h\""));
    EXPECT_FALSE(isFine("ui/places/x.cpp", "\"app/commands/check.h\""));
    EXPECT_FALSE(isFine("ui/places/x.cpp", "\"core/store/file.h\""));
    EXPECT_FALSE(isFine("ui/places/x.cpp", "\"ui/main_window/main_window.h\""));
    EXPECT_FALSE(isFine("ui/widgets/x.cpp", "\"ui/workbook_bridge.h\""));
    EXPECT_FALSE(isFine("ui/widgets/x.cpp", "\"core/workbook/workbook.h\""));
    EXPECT_FALSE(isFine("ui/widgets/x.cpp", "\"core/project/project.h\""));
    EXPECT_FALSE(isFine("ui/charts/x.cpp", "\"ui/places/walk.h\""));
}

TEST(IncludeRules, coreHasNoQt) {
    for (const char* header : {"<QString>", "<QtCore/QString>", "<QtGlobal>", "<QChartView>"}) {
        EXPECT_FALSE(isFine("core/report/x.cpp", header)) << header;
    }
    EXPECT_TRUE(isFine("ui/report/x.cpp", "<QString>"));
}

TEST(IncludeRules, librariesStayInTheirPlaces) {
    EXPECT_TRUE(isFine("core/store/x.cpp", "<sqlite3.h>"));
    EXPECT_FALSE(isFine("core/store/x.h", "<sqlite3.h>"));
    EXPECT_FALSE(isFine("core/workbook/x.cpp", "<sqlite3.h>"));
    EXPECT_TRUE(isFine("core/hydraulics/x.cpp", "<Eigen/Sparse>"));
    EXPECT_TRUE(isFine("core/hydraulics/detail/x.h", "<Eigen/Sparse>"));
    EXPECT_FALSE(isFine("core/hydraulics/x.h", "<Eigen/Sparse>"));
    EXPECT_FALSE(isFine("core/balancing/x.cpp", "<Eigen/Dense>"));
    EXPECT_TRUE(isFine("core/base/digest.cpp", "<openssl/evp.h>"));
    EXPECT_FALSE(isFine("core/base/id.cpp", "<openssl/rand.h>"));
    EXPECT_TRUE(isFine("core/spreadsheet/x.cpp", "<xlsxwriter.h>"));
    EXPECT_FALSE(isFine("app/commands/x.cpp", "<zip.h>"));
    EXPECT_TRUE(isFine("app/commands/x.cpp", "<nlohmann/json.hpp>"));
    EXPECT_FALSE(isFine("ui/models/x.cpp", "<nlohmann/json.hpp>"));
    EXPECT_FALSE(isFine("core/exchange/x.cpp", "<CLI/CLI.hpp>"));
    EXPECT_TRUE(isFine("ui/charts/x.cpp", "<QLineSeries>"));
    EXPECT_FALSE(isFine("ui/places/x.cpp", "<QValueAxis>"));
    EXPECT_FALSE(isFine("ui/places/x.cpp", "<QtCharts/QChartView>"));
    EXPECT_TRUE(isFine("core/store/x.cpp", "<sys/file.h>"));
    EXPECT_FALSE(isFine("core/curve/x.cpp", "<unistd.h>"));
    EXPECT_FALSE(isFine("core/curve/x.cpp", "<boost/array.hpp>"));
    EXPECT_TRUE(isFine("core/curve/x.cpp", "<charconv>"));
}

TEST(IncludeRules, commentsAndLiteralsAreNoIncludes) {
    EXPECT_TRUE(
        includeViolations({"core/base/x.h", "// #include <QString>\n/*\n#include <QString>\n*/\n"}, kPaths)
            .empty());
    EXPECT_TRUE(includeViolations({"core/base/x.cpp", "f(\"#include <QString>\");\n"}, kPaths).empty());
}

}  // namespace
}  // namespace ww::lint
