// Practice jobs on the desktop: made by a dialog, read by one key, compared with the truth at the end.
#include <gtest/gtest.h>

#include <QAction>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "tests/ui/support/desk_window.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/practice/new_practice_dialog.h"
#include "ui/practice/truth_window.h"
#include "ui/widgets/job_strip.h"

namespace ww::ui {
namespace {

class PracticeTest : public ::testing::Test {
  protected:
    PracticeTest() {
        const auto made =
            m_desk.bridge().create(QString::fromStdString(m_desk.folder.file("practice.wwj")),
                                   practice::practiceContent({practice::Difficulty::Steady, 17}, "Exercise"));
        EXPECT_TRUE(made.ok());
        m_desk.window.showPlace(MainWindow::Walk);
    }
    void openRound() {
        ASSERT_TRUE(m_desk.bridge().openRound(project::RoundKind::Survey).ok());
        m_desk.window.showPlace(MainWindow::Walk);
    }
    QAction* action(const QString& key) {
        for (QAction* each : m_desk.window.findChildren<QAction*>()) {
            if (each->shortcuts().contains(QKeySequence(key))) {
                return each;
            }
        }
        return nullptr;
    }

    support::DeskWindow m_desk;
};

TEST_F(PracticeTest, theStripSaysPractice) {
    QStringList texts;
    for (const QLabel* label : m_desk.window.findChild<JobStrip*>()->findChildren<QLabel*>()) {
        texts << label->text();
    }
    EXPECT_TRUE(texts.contains(QStringLiteral("PRACTICE · Exercise"))) << texts.join('|').toStdString();
}

TEST_F(PracticeTest, theKeyLineOffersTheMeterWhereItIsTaken) {
    EXPECT_FALSE(m_desk.keyLine().contains("Ctrl+L")) << "no round is open";
    openRound();
    EXPECT_TRUE(m_desk.keyLine().contains("Ctrl+L")) << m_desk.keyLine().toStdString();
    m_desk.window.showPlace(MainWindow::Job);
    EXPECT_FALSE(m_desk.keyLine().contains("Ctrl+L")) << m_desk.keyLine().toStdString();
}

TEST_F(PracticeTest, oneKeyReadsEveryValveInTurn) {
    openRound();
    QAction* take = action(QStringLiteral("Ctrl+L"));
    ASSERT_NE(take, nullptr);
    ASSERT_TRUE(take->isEnabled());
    m_desk.grid().goToRow(0, false);
    for (int row = 0; row < m_desk.model().rowCount(); ++row) {
        take->trigger();
    }
    EXPECT_EQ(m_desk.storedCount(), 15);
    EXPECT_EQ(m_desk.stored("B3-T4").substr(m_desk.stored("B3-T4").size() - 3), "kPa");
    action(QStringLiteral("Ctrl+Alt+L"))->trigger();
    ASSERT_EQ(m_desk.project().pumpReadings().size(), 1u);
    EXPECT_TRUE(m_desk.project().pumpReadings()[0].gaugeRise.has_value());
    action(QStringLiteral("Ctrl+Alt+L"))->trigger();
    ASSERT_EQ(m_desk.project().pumpReadings().size(), 2u);
    EXPECT_EQ(m_desk.project().pumpReadings()[0].status, project::ReadingStatus::Superseded);
}

TEST_F(PracticeTest, theKeyWaitsForWhatIsTyped) {
    openRound();
    m_desk.grid().goToRow(0, false);
    m_desk.enter("a");
    action(QStringLiteral("Ctrl+L"))->trigger();
    EXPECT_EQ(m_desk.storedCount(), 0) << "a refused text is settled first";
    EXPECT_TRUE(m_desk.window.notice().contains("\"a\"")) << m_desk.window.notice().toStdString();
    EXPECT_EQ(m_desk.grid().currentRow(), 0);
    m_desk.key(Qt::Key_Escape);
    action(QStringLiteral("Ctrl+L"))->trigger();
    EXPECT_EQ(m_desk.storedCount(), 1);
}

TEST_F(PracticeTest, atTheEndOfTheRouteTheKeyGoesToWhatIsUnread) {
    openRound();
    QAction* take = action(QStringLiteral("Ctrl+L"));
    m_desk.grid().goToRow(1, false);  // the first valve is passed over
    const int rows = m_desk.model().rowCount();
    for (int row = 1; row < rows; ++row) {
        take->trigger();
    }
    EXPECT_EQ(m_desk.grid().currentRow(), 0);
    // Once all are read, the key at the last valve stores nothing.
    m_desk.grid().goToRow(rows - 1, false);
    take->trigger();
    EXPECT_EQ(m_desk.grid().currentRow(), 0);
    take->trigger();
    m_desk.grid().goToRow(rows - 1, false);
    take->trigger();
    const std::size_t before = m_desk.project().readings().size();
    take->trigger();
    EXPECT_EQ(m_desk.project().readings().size(), before);
    EXPECT_TRUE(m_desk.window.notice().contains("Ctrl+R")) << m_desk.window.notice().toStdString();
}

TEST_F(PracticeTest, anUnreadRiserIsCountedAndFound) {
    openRound();
    const auto isTerminal = [&](int row) {
        const project::Project& project = m_desk.project();
        return project.tree().isTerminal(project.branches().indexOf(m_desk.model().branchAt(row)));
    };
    const auto take = [&](bool ofTerminals) {
        for (int row = 0; row < m_desk.model().rowCount(); ++row) {
            if (isTerminal(row) == ofTerminals) {
                m_desk.grid().goToRow(row, false);
                action(QStringLiteral("Ctrl+L"))->trigger();
            }
        }
    };
    QAction* next = action(QStringLiteral("Ctrl+Shift+Down"));
    ASSERT_NE(next, nullptr);
    take(true);
    next->trigger();
    EXPECT_FALSE(isTerminal(m_desk.grid().currentRow()));
    EXPECT_TRUE(m_desk.window.notice().contains("12 of 15")) << m_desk.window.notice().toStdString();
    take(false);
    next->trigger();
    EXPECT_TRUE(m_desk.window.notice().contains("Ctrl+Shift+W")) << m_desk.window.notice().toStdString();
}

TEST_F(PracticeTest, inAdjustTheKeyReadsTheValveInHandWhereItsHandleStands) {
    openRound();
    m_desk.grid().goToRow(0, false);
    QAction* take = action(QStringLiteral("Ctrl+L"));
    for (int row = 0; row < m_desk.model().rowCount(); ++row) {
        take->trigger();
    }
    ASSERT_TRUE(m_desk.bridge().closeRound().ok());
    m_desk.window.showPlace(MainWindow::Adjust);
    ASSERT_TRUE(take->isEnabled()) << "Adjust opens a round of its own";
    const base::Id branch = *m_desk.window.adjust()->valve().branch();
    const std::size_t before = m_desk.project().readings().size();
    take->trigger();
    ASSERT_EQ(m_desk.project().readings().size(), before + 1);
    const project::Reading& taken = m_desk.project().readings()[before];
    EXPECT_EQ(taken.branch, branch);
    EXPECT_EQ(taken.purpose, project::ReadingPurpose::Try);
    EXPECT_TRUE(taken.dp.has_value());
}

TEST_F(PracticeTest, nothingIsTakenWithoutAnOpenRound) {
    for (const char* key : {"Ctrl+L", "Ctrl+Alt+L"}) {
        action(QString(key))->trigger();
        EXPECT_TRUE(m_desk.window.notice().contains("open the next round")) << key;
    }
    EXPECT_TRUE(m_desk.project().readings().empty());
    openRound();
    for (int row = 0; row < m_desk.model().rowCount(); ++row) {
        action(QStringLiteral("Ctrl+L"))->trigger();
    }
    const std::size_t stored = m_desk.project().readings().size();
    ASSERT_TRUE(m_desk.bridge().closeRound().ok());
    for (const char* key : {"Ctrl+L", "Ctrl+Alt+L"}) {
        action(QString(key))->trigger();
        const QString notice = m_desk.window.notice();
        EXPECT_TRUE(notice.contains("Round 1 takes no new readings") && notice.contains("Ctrl+Shift+N"))
            << notice.toStdString();
    }
    EXPECT_EQ(m_desk.project().readings().size(), stored);
    EXPECT_TRUE(action(QStringLiteral("Ctrl+Shift+U"))->isEnabled());
}

TEST_F(PracticeTest, truthStandsBesideWhatWasFound) {
    openRound();
    m_desk.grid().goToRow(0, false);
    for (int row = 0; row < m_desk.model().rowCount(); ++row) {
        action(QStringLiteral("Ctrl+L"))->trigger();
    }
    const practice::PracticeJob job({practice::Difficulty::Steady, 17});
    const TruthWindow window(job, m_desk.project());
    EXPECT_EQ(window.findChild<QLabel*>()->text(), "Practice building Steady, number 17");
    EXPECT_EQ(window.summary()->rowCount(), 10);
    // Fifteen runs and twelve circuits.
    EXPECT_EQ(window.losses()->rowCount(), 27);
    EXPECT_EQ(window.summary()->item(8, 2)->text(), QStringLiteral("15"));
    for (int row = 0; row < window.losses()->rowCount(); ++row) {
        EXPECT_NE(window.losses()->item(row, 3)->text(), QStringLiteral("–"));
    }
}

TEST_F(PracticeTest, theSummaryOfTheTruthIsSeenWholeWithColumnsAlike) {
    const practice::PracticeJob job({practice::Difficulty::Steady, 17});
    TruthWindow window(job, m_desk.project());
    window.show();
    QTest::qWait(50);
    const QTableWidget& summary = *window.summary();
    const QRect last = summary.visualItemRect(summary.item(summary.rowCount() - 1, 0));
    EXPECT_GE(summary.viewport()->height(), last.bottom());
    EXPECT_LT(summary.columnWidth(3), 2 * summary.columnWidth(2)) << "one value is as long as another";
}

TEST(PracticeOfRealJobsTest, aRealJobIsNeverAnswered) {
    support::DeskWindow desk;
    PracticeDesk practice(desk.bridge());
    EXPECT_FALSE(practice.isPractice());
    const auto refused = practice.takeDp(desk.model().branchAt(0), false);
    ASSERT_FALSE(refused);
    EXPECT_TRUE(refused.fault().is(kNotPractice));
    EXPECT_TRUE(practice.takeGauges().fault().is(kNotPractice));
}

TEST(NewPracticeDialogTest, asksForNameDifficultyAndSeed) {
    NewPracticeDialog dialog(17);
    EXPECT_EQ(dialog.key(), (practice::PracticeKey{practice::Difficulty::Steady, 17}));
    auto* seed = dialog.findChildren<QLineEdit*>().at(1);
    const auto buttons = dialog.findChild<QDialogButtonBox*>()->buttons();
    const auto* make = *std::find_if(buttons.begin(), buttons.end(), [&](const QAbstractButton* button) {
        return button->text().contains(QStringLiteral("Make"));
    });
    seed->setText(QStringLiteral("x"));
    EXPECT_FALSE(make->isEnabled());
    seed->setText(QStringLiteral("4"));
    EXPECT_TRUE(make->isEnabled());
    dialog.findChild<QComboBox*>()->setCurrentIndex(4);
    EXPECT_EQ(dialog.key(), (practice::PracticeKey{practice::Difficulty::LargeFaulty, 4}));
}

}  // namespace
}  // namespace ww::ui
