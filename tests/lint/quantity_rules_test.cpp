#include "tests/lint/quantity_rules.h"

#include <gtest/gtest.h>

namespace ww::lint {
namespace {

// The rule is seen to catch what it is for. Source: a decision of this project.
std::size_t faults(const std::string& code, const std::string& path = "core/curve/x.h",
                   const std::string& allowed = "") {
    std::set<std::string> used;
    return doubleViolations({path, code}, readAllowedDoubles(allowed), used).size();
}

TEST(QuantityRules, aUnitInTheNameIsCaught) {
    EXPECT_EQ(faults("double drop_Pa;"), 1u);
    EXPECT_EQ(faults("void f(double flow_m3s, double ratio_m);"), 2u);
    EXPECT_EQ(faults("double head_m();"), 1u);
    EXPECT_EQ(faults("std::optional<double> power_W;"), 1u);
    EXPECT_EQ(faults("struct S { std::vector<double> heads_kPa; };"), 1u);
}

TEST(QuantityRules, aNameMustSayThatThereIsNoUnit) {
    EXPECT_EQ(faults("double f(double x);"), 2u);
    EXPECT_EQ(
        faults("double speedFraction = 1.0; double flowRatio(int i); constexpr double kExponent = 1.85;"),
        0u);
    EXPECT_EQ(faults("void f(std::span<const double> weights);"), 1u);
    EXPECT_EQ(faults("void f(std::span<const double> shareOfEach);"), 0u);
    EXPECT_EQ(faults("std::array<double, 3> shareOfEach;"), 0u);
    EXPECT_EQ(faults("std::array<double, 3> heads;"), 1u);
    EXPECT_EQ(faults("auto flow(int i) -> double;"), 1u);
    EXPECT_EQ(faults("auto flowRatio(int i) -> double;"), 0u);
    EXPECT_EQ(faults("std::function<double(double)> ratio;"), 2u);
    EXPECT_EQ(faults("void f(double);"), 1u);
    EXPECT_EQ(faults("std::map<double, Head> ratio;"), 1u);
}

TEST(QuantityRules, whatOthersCannotSeeIsFree) {
    EXPECT_EQ(faults("class C { double m_x; public: Head h() const { double drop_Pa = 1; return {}; } };"),
              0u);
    EXPECT_EQ(faults("class C { public: double drop; private: double flow_m3s; };"), 1u);
    EXPECT_EQ(faults("class C { struct Row { double flow_m3s; }; };"), 0u);
    EXPECT_EQ(faults("struct C { struct Row { double flow_m3s; }; };"), 1u);
    EXPECT_EQ(faults("inline Head f() { double x = 1; return {}; }"), 0u);
    EXPECT_EQ(faults("namespace a::b { template <class T> struct S { double x; }; }"), 1u);
    EXPECT_EQ(faults("struct S : Other { double x; };"), 1u);
    EXPECT_EQ(faults("enum class E { A }; class F; double x;"), 1u);
    EXPECT_EQ(faults("// double flow_m3s\nconst char* text = \"double flow_m3s\";"), 0u);
}

TEST(QuantityRules, someFilesAreFree) {
    EXPECT_EQ(faults("double drop_Pa;", "core/curve/x.cpp"), 0u);
    EXPECT_EQ(faults("double drop_Pa;", "core/quantity/x.h"), 0u);
    EXPECT_EQ(faults("double drop_Pa;", "core/hydraulics/detail/x.h"), 0u);
    EXPECT_EQ(faults("double drop_Pa;", "ui/charts/x.h"), 0u);
}

TEST(QuantityRules, theListAllowsOneNameOrAHeader) {
    EXPECT_EQ(faults("double a; double b;", "core/curve/x.h", "# remark\ncore/curve/x.h a: no unit\n"), 1u);
    EXPECT_EQ(faults("double a; double b;", "core/curve/x.h", "core/curve/x.h *: no unit\n"), 0u);
    EXPECT_EQ(faults("double a; double b;", "core/curve/y.h", "core/curve/x.h *: no unit\n"), 2u);
    const auto entries = readAllowedDoubles("core/curve/x.h a: because\ncore/curve/y.h b\n");
    ASSERT_EQ(entries.size(), 2u);
    EXPECT_EQ(entries[0].reason, "because");
    EXPECT_EQ(entries[1].reason, "");
}

TEST(QuantityRules, theEntryThatWasNeededIsNamed) {
    std::set<std::string> used;
    doubleViolations({"core/curve/x.h", "double a;"},
                     readAllowedDoubles("core/curve/x.h a: no unit\ncore/curve/x.h b: no unit"), used);
    EXPECT_EQ(used, std::set<std::string>{"core/curve/x.h a"});
}

}  // namespace
}  // namespace ww::lint
