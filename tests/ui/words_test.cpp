// How the texts of core look on the screen and on paper.
#include "ui/text/words.h"

#include <gtest/gtest.h>

#include "ui/text/label.h"
#include "ui/text/parse.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kFlowIs{"words_test_flow", "the flow of {1} is {2}; go on"};

TEST(Words, unitsOfNumbersHaveTheSignsOfPrint) {
    EXPECT_EQ(text::withPrettyUnit("11.64 m3/h"), QStringLiteral("11.64 m³/h"));
    EXPECT_EQ(text::withPrettyUnit("m3/h"), QStringLiteral("m³/h"));
    EXPECT_EQ(text::withPrettyUnit("8 inH2O"), QStringLiteral("8 inH₂O"));
    EXPECT_EQ(text::withPrettyUnit("170 F"), QStringLiteral("170 °F"));
    EXPECT_EQ(text::withPrettyUnit("-5.5 C"), QStringLiteral("-5.5 °C"));
    EXPECT_EQ(text::withPrettyUnit("0.2 m3/s"), QStringLiteral("0.2 m³/s"));
    EXPECT_EQ(text::withPrettyUnit("3F"), "3F") << "a tag";
    EXPECT_EQ(text::withPrettyUnit("C"), "C") << "a tag";
    EXPECT_EQ(text::withPrettyUnit("12 kPa"), "12 kPa");
    EXPECT_EQ(text::withPrettyUnit("room 170 F"), "room 170 F") << "what people wrote stays";
    EXPECT_EQ(text::withPrettyUnit("coil of 8 m3/h"), "coil of 8 m3/h") << "what people wrote stays";
    EXPECT_EQ(text::sentence({&kFlowIs, {}, {"T1", "8 m3/h"}}),
              QStringLiteral("The flow of T1 is 8 m³/h; go on."));
}

// What was typed is quoted whole; where nothing was, nothing is quoted.
TEST(Words, aNumberThatIsMissingIsToldAsSuch) {
    using quantity::Unit;
    const auto unitAlone = text::parseMeasured<quantity::Power>("kW", Unit::Kilowatt);
    EXPECT_TRUE(unitAlone.fault().is(base::kNotANumber));
    EXPECT_EQ(unitAlone.fault().arguments, std::vector<std::string>{"kW"});
    EXPECT_TRUE(
        text::parseMeasured<quantity::VolumeFlow>("abc", Unit::LitrePerSecond).fault().is(base::kNotANumber));
    EXPECT_EQ(text::parseMeasured<quantity::Power>(" ", Unit::Kilowatt).fault().code(), "number_missing");
    EXPECT_EQ(text::parseMeasured<quantity::VolumeFlow>("", Unit::LitrePerSecond).fault().code(),
              "number_missing");
}

TEST(Words, aLabelWithAnEmptyNameSaysSo) {
    EXPECT_EQ(text::label("person "), "person without a name");
    EXPECT_EQ(text::label("reason: "), "reason before signing") << "as journals of before keep it";
    EXPECT_EQ(text::label("reason before signing removed"), "reason before signing removed");
    EXPECT_EQ(text::label("note removed, B-05"), "note removed, B-05");
}

TEST(Words, anEntryOfTheJournalSaysWhatItTookBack) {
    workbook::JournalEntry entry;
    entry.label = "open round 4";
    EXPECT_EQ(text::label(entry), "open round 4");
    entry.undoes = 7;
    EXPECT_EQ(text::label(entry), "taken back: open round 4");
    entry.undoes.reset();
    entry.redoes = 7;
    EXPECT_EQ(text::label(entry), "done again: open round 4");
}

TEST(Words, theTwoStopsHaveTheirOwnWords) {
    balancing::BranchResult result;
    result.state = balancing::State::AtStop;
    result.ofTarget = quantity::Ratio::si(0.8);
    EXPECT_EQ(text::word(result), "At open stop");
    result.ofTarget = quantity::Ratio::si(1.2);
    EXPECT_EQ(text::word(result), "At shut stop");
    EXPECT_EQ(text::word(balancing::AimWord::AtStop), "NO FURTHER") << "a word for the hand, not for a share";
}

TEST(Words, onlyASelfActingValveIsInRange) {
    EXPECT_EQ(text::word(balancing::State::OnShare, false), "On share");
    EXPECT_EQ(text::word(balancing::State::OnShare, true), "In range");
    EXPECT_EQ(text::word(balancing::State::Short, true), "Short");
    project::Branch branch;
    for (const auto kind : {project::BranchKind::Limiter, project::BranchKind::Picv}) {
        branch.kind = kind;
        EXPECT_EQ(text::word(balancing::State::OnShare, branch, {}), "In range");
    }
    branch.kind = project::BranchKind::Manual;
    EXPECT_EQ(text::word(balancing::State::OnShare, branch, {}), "On share");
}

}  // namespace
}  // namespace ww::ui
