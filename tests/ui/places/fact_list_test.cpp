// Facts one below the other: one that goes on from the fact above it has no label and takes no empty line for
// it. The rule is this program's own; no outside source.
#include "ui/places/fact_list.h"

#include <gtest/gtest.h>

#include <QLabel>

namespace ww::ui {
namespace {

constexpr base::MessageForm kWords{"fact_list_words", "{1}"};

TEST(FactList, aFactWithoutALabelTakesNoLineForIt) {
    const auto plain = [](const char* words) { return base::Fault{&kWords, {}, {words}}; };
    const auto heightOf = [&](const char* label) {
        FactList facts;
        facts.resize(300, 600);
        facts.show({{plain("Speed of the pump"), plain("93 %"), ww::report::Mark::None},
                    {plain(label), plain("1353 rpm"), ww::report::Mark::None}},
                   theme::tokens(theme::Display::Office));
        facts.ensurePolished();
        return facts.sizeHint().height();
    };
    FactList shown;
    EXPECT_LE(heightOf("") + shown.fontMetrics().height(), heightOf("Speed ordered"));
}

}  // namespace
}  // namespace ww::ui
