#include "core/project/edit_label.h"

#include <gtest/gtest.h>

#include <set>

namespace ww::project {
namespace {

// The forms are words of this program; no outside source.

/// Arguments that no form holds as its letters.
std::vector<std::string> sampleArguments() {
    return {"7.5", "8.5", "9.5", "10.5"};
}

TEST(EditLabel, everyLabelIsReadBackAsItsForm) {
    std::set<std::string_view> texts;
    for (const base::MessageForm* form : labelForms()) {
        EXPECT_TRUE(texts.insert(form->text).second) << form->text;
        const auto said = readLabel(label(*form, sampleArguments()));
        ASSERT_TRUE(said.has_value()) << form->text;
        EXPECT_TRUE(said->is(*form)) << form->text << " is read as " << said->form->text;
        for (std::size_t i = 0; i < said->arguments.size(); ++i) {
            EXPECT_EQ(said->arguments[i], sampleArguments()[i]) << form->text;
        }
    }
}

TEST(EditLabel, readsWhatStandsInAJournal) {
    const auto dp = readLabel("DP 52.7 kPa, B-05");
    ASSERT_TRUE(dp.has_value());
    EXPECT_TRUE(dp->is(labels::kDp));
    EXPECT_EQ(dp->arguments, (std::vector<std::string>{"52.7 kPa", "B-05"}));
    const auto again = readLabel("DP 26 kPa read again, A");
    ASSERT_TRUE(again.has_value());
    EXPECT_TRUE(again->is(labels::kDpAgain));
    const auto merge = readLabel("merge of 2 actions of LT-2");
    ASSERT_TRUE(merge.has_value());
    EXPECT_EQ(merge->arguments, (std::vector<std::string>{"2", "LT-2"}));
    const auto test = readLabel("test of P-1, full open: or rise, one gauge = 100 kPa");
    ASSERT_TRUE(test.has_value());
    EXPECT_EQ(test->arguments,
              (std::vector<std::string>{"P-1", "full open", "or rise, one gauge", "100 kPa"}));
    EXPECT_FALSE(readLabel("what another program wrote").has_value());
}

TEST(EditLabel, aNameWithACommaStaysWhole) {
    const auto said = readLabel("setting 2.5, Hall, north");
    ASSERT_TRUE(said.has_value());
    EXPECT_EQ(said->arguments, (std::vector<std::string>{"2.5", "Hall, north"}));
}

TEST(EditLabel, aTitleBeginsSmallInsideALabel) {
    EXPECT_EQ(fieldInLabel("Rated speed"), "rated speed");
    EXPECT_EQ(fieldInLabel("NPSH required"), "NPSH required");
    EXPECT_EQ(fieldInLabel(""), "");
}

}  // namespace
}  // namespace ww::project
