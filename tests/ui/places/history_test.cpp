// The history of a cell and the journal of a job. The source of these checks is the
// interaction design of this project.
#include <gtest/gtest.h>

#include <QPushButton>
#include <QTableView>

#include "core/workbook/cell_history.h"
#include "tests/ui/support/desk_window.h"
#include "ui/history_dialog.h"
#include "ui/journal_dialog.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

TEST(History, listsEveryValueWithWhoAndWhen) {
    DeskWindow desk({.terminals = 6});
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeDp(branch, "20.1").ok());
    ASSERT_TRUE(desk.bridge().storeDp(branch, "21.2").ok());
    const auto history = workbook::cellHistory(*desk.bridge().workbook(), branch);
    ASSERT_TRUE(history.ok());
    // Survey, first reading, its mark as superseded and the second reading.
    ASSERT_EQ(history->size(), 4U);
    EXPECT_EQ(history->at(1).reading.dp->digits.text(), "20.1");
    EXPECT_EQ(history->at(1).person, "A. Fields");
    EXPECT_TRUE(history->at(3).label.find("21.2") != std::string::npos);
    HistoryDialog dialog(desk.bridge(), branch);
    ASSERT_EQ(dialog.values()->rowCount(), 4);
    EXPECT_TRUE(dialog.values()->row(0).cells.join(' ').contains("21.2")) << "the newest stands first";
    EXPECT_TRUE(
        dialog.values()->headerData(4, Qt::Horizontal, Qt::DisplayRole).toString().contains("newest first"));
}

TEST(History, aValueIsUsedAgainAlsoInARoundThatIsClosed) {
    DeskWindow desk({.terminals = 1});
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeDp(branch, "20.1").ok());
    ASSERT_TRUE(desk.bridge().storeDp(branch, "21.2").ok());
    project::Round round = *desk.project().lastRound();
    const auto useButton = [](const HistoryDialog& dialog) {
        for (QPushButton* button : dialog.findChildren<QPushButton*>()) {
            if (button->text().remove('&') == "Use This Value") {
                return button;
            }
        }
        return static_cast<QPushButton*>(nullptr);
    };
    for (const auto& [state, isTaken] :
         {std::pair(project::RoundState::Closed, true), std::pair(project::RoundState::Sent, false)}) {
        round.state = state;
        round.sentBy = "A. Fields";
        ASSERT_TRUE(desk.bridge().apply({"state", {round}, {}, true}).ok());
        HistoryDialog dialog(desk.bridge(), branch);
        ASSERT_NE(useButton(dialog), nullptr);
        EXPECT_EQ(useButton(dialog)->isEnabled(), isTaken);
        for (int row = 0; isTaken && row < dialog.values()->rowCount(); ++row) {
            if (dialog.values()->row(row).cells.join(' ').contains("20.1")) {
                dialog.findChild<QTableView*>()->setCurrentIndex(dialog.values()->index(row, 0));
            }
        }
        useButton(dialog)->click();
        EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
    }
}

TEST(History, aSettingThatItsReadingCompletesIsNotStruck) {
    DeskWindow desk({.terminals = 6});
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeSetting(branch, "2.9").ok());
    ASSERT_TRUE(desk.bridge().storeDp(branch, "20.1").ok());
    const HistoryDialog dialog(desk.bridge(), branch);
    ASSERT_EQ(dialog.values()->rowCount(), 3) << "survey, setting and reading";
    for (int row = 0; row < dialog.values()->rowCount(); ++row) {
        EXPECT_FALSE(dialog.values()->row(row).isStruck) << row;
    }
    ASSERT_TRUE(desk.bridge().storeDp(branch, "21.2").ok());
    const HistoryDialog corrected(desk.bridge(), branch);
    EXPECT_TRUE(corrected.values()->row(1).isStruck) << "a reading that was corrected stays struck";
}

// One record of the journal holds the readings of all rounds that were imported.
TEST(History, ofOneRecordTheNewestRoundStandsFirst) {
    DeskWindow desk({.terminals = 3, .adjustingRounds = 4}, false);
    HistoryDialog dialog(desk.bridge(), desk.project().branchTagged("B-02")->id);
    QStringList rounds;
    for (int row = 0; row < dialog.values()->rowCount(); ++row) {
        rounds << dialog.values()->row(row).cells.front();
    }
    EXPECT_EQ(rounds, (QStringList{"5", "4", "3", "2", "1"}));
}

TEST(History, showsWhatWasUndone) {
    DeskWindow desk({.terminals = 6});
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeDp(branch, "20.1").ok());
    ASSERT_TRUE(desk.bridge().undo().ok());
    const auto history = workbook::cellHistory(*desk.bridge().workbook(), branch);
    ASSERT_TRUE(history.ok());
    ASSERT_EQ(history->size(), 3U) << "survey, reading, and that it was taken back";
    EXPECT_TRUE(history->at(2).isUndone);
    EXPECT_EQ(history->at(2).reading.dp->digits.text(), "20.1");
    HistoryDialog dialog(desk.bridge(), branch);
    EXPECT_TRUE(history->at(1).isGone);
    EXPECT_TRUE(dialog.values()->row(1).isStruck) << "what was taken back does not stand";
    EXPECT_TRUE(dialog.values()->row(1).cells.contains("undone"));
    EXPECT_TRUE(dialog.values()->row(0).isStruck);
    EXPECT_TRUE(dialog.values()->row(0).cells.contains("undone"));
}

TEST(Journal, showsTheJobAsItStoodAfterAnyRecord) {
    DeskWindow desk({.terminals = 6});
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(desk.bridge().storeDp(branch, "20.1").ok());
    const std::int64_t then = desk.bridge().workbook()->newestEntry().sequence;
    ASSERT_TRUE(desk.bridge().storeDp(branch, "31.5").ok());
    JournalDialog dialog(desk.bridge());
    EXPECT_EQ(dialog.actions()->rowCount(), static_cast<int>(desk.bridge().workbook()->journal().size()));
    const auto shown = [&] { return dialog.state()->row(dialog.state()->rowOf(branch)).cells[2]; };
    EXPECT_TRUE(shown().startsWith("31.5")) << "the newest record is in hand";
    EXPECT_EQ(dialog.actions()->row(0).cells.front(),
              QString::number(desk.bridge().workbook()->newestEntry().sequence));
    dialog.showAfter(then);
    EXPECT_TRUE(shown().startsWith("20.1"));
    EXPECT_EQ(desk.stored("B-01"), "31.5 kPa") << "nothing is set back";
}

}  // namespace
}  // namespace ww::ui
