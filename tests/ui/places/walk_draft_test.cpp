// What is typed in the walk and not entered outlives a program that is killed, and is no reading by itself.
// The source of these checks is the interaction design of this project.
#include <gtest/gtest.h>

#include <QCloseEvent>
#include <QFile>
#include <memory>

#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

constexpr int kLongerThanKeeping = 1500;

/// A session on copies of the files that a killed one left behind: its workbook and what its desk remembers.
class SessionAfter {
  public:
    explicit SessionAfter(DeskWindow& killed) : m_desk(killed) {
        const QString file = copied(killed.bridge().file(), "after.wwj");
        const QString settings =
            copied(QString::fromStdString(killed.folder.file("settings.ini")), "after.ini");
        preferences = std::make_unique<Preferences>(settings);
        window =
            std::make_unique<MainWindow>(Desk{killed.clock, killed.ids, "A. Fields", "LT-1"}, *preferences);
        window->resize(1366, 694);
        window->show();
        window->activateWindow();
        QTest::qWait(0);
        EXPECT_TRUE(window->openFile(file));
        QTest::qWait(20);
    }
    WalkGrid& grid() { return *window->walk()->grid(); }
    std::vector<TypedDraft> kept() const {
        return preferences->draftsIn(window->bridge().workbook()->workbookId());
    }
    /// The dp of a branch in the open round; empty: none.
    std::string stored(const std::string& tag) {
        const project::Project& job = window->bridge().project();
        const auto* reading = balancing::countingReading(job, job.lastRound()->id, job.branchTagged(tag)->id);
        return reading != nullptr && reading->dp ? reading->dp->text() : "";
    }
    std::string currentTag() {
        const project::Project& job = window->bridge().project();
        return job.branches().at(window->walk()->model()->branchAt(grid().currentRow())).tag;
    }

    std::unique_ptr<Preferences> preferences;
    std::unique_ptr<MainWindow> window;

  private:
    QString copied(const QString& from, const char* name) {
        const QString to = QString::fromStdString(m_desk.folder.file(name));
        QFile::remove(to);
        EXPECT_TRUE(QFile::copy(from, to)) << from.toStdString();
        return to;
    }

    DeskWindow& m_desk;
};

TEST(WalkDraft, comesBackInItsCellAndIsNoReading) {
    DeskWindow desk;
    desk.enter("20.5");
    const auto records = support::recordsOf(desk.project());
    desk.type("31.2");
    QTest::qWait(kLongerThanKeeping);
    SessionAfter after(desk);
    EXPECT_EQ(support::recordsOf(after.window->bridge().project()), records) << "typed is not read";
    EXPECT_EQ(after.currentTag(), "B-02");
    ASSERT_TRUE(after.grid().isRefused()) << "it waits as a refused text does";
    EXPECT_EQ(after.grid().editor()->text(), "31.2");
    EXPECT_TRUE(after.window->notice().contains("31.2")) << after.window->notice().toStdString();
    // Entered, it is a reading, and nothing is kept any longer.
    after.grid().setFocus(Qt::OtherFocusReason);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(after.stored("B-02"), "31.2 kPa");
    EXPECT_TRUE(after.kept().empty());
}

TEST(WalkDraft, isStoredByNothingButEnter) {
    DeskWindow desk;
    desk.enter("20.5");
    desk.type("31.2");
    QTest::qWait(kLongerThanKeeping);
    SessionAfter after(desk);
    after.grid().setFocus(Qt::OtherFocusReason);
    for (const auto key : {Qt::Key_Down, Qt::Key_Tab, Qt::Key_F6}) {
        QTest::keyClick(QApplication::focusWidget(), key);
        EXPECT_EQ(after.stored("B-02"), "") << key;
    }
    after.window->showPlace(MainWindow::Job);
    after.window->showPlace(MainWindow::Walk);
    EXPECT_EQ(after.stored("B-02"), "");
    EXPECT_EQ(after.grid().editor()->text(), "31.2");
    // It keeps no window open, and is offered again.
    QCloseEvent closing;
    QApplication::sendEvent(after.window.get(), &closing);
    EXPECT_TRUE(closing.isAccepted());
    EXPECT_EQ(after.stored("B-02"), "");
    EXPECT_EQ(after.kept().size(), 1U);
}

TEST(WalkDraft, isForgottenOnceItIsEnteredOrCleared) {
    for (const auto key : {Qt::Key_Return, Qt::Key_Escape}) {
        DeskWindow desk;
        const base::Id workbook = desk.bridge().workbook()->workbookId();
        desk.enter("20.5");
        desk.type("31.2");
        QTest::qWait(kLongerThanKeeping);
        ASSERT_EQ(desk.preferences.draftsIn(workbook).size(), 1U);
        EXPECT_EQ(desk.preferences.draftsIn(workbook).front().text, "31.2");
        desk.key(key);
        EXPECT_TRUE(desk.preferences.draftsIn(workbook).empty());
        SessionAfter after(desk);
        EXPECT_FALSE(after.grid().isEditing());
    }
}

TEST(WalkDraft, isGivenUpWithEscape) {
    DeskWindow desk;
    desk.type("31.2");
    QTest::qWait(kLongerThanKeeping);
    SessionAfter after(desk);
    after.grid().setFocus(Qt::OtherFocusReason);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(after.grid().isEditing());
    EXPECT_EQ(after.stored("B-01"), "");
    EXPECT_TRUE(after.kept().empty());
}

TEST(WalkDraft, whatIsEnteredAtOnceIsNeverKept) {
    DeskWindow desk;
    const base::Id workbook = desk.bridge().workbook()->workbookId();
    for (int i = 0; i < 3; ++i) {
        desk.enter("20.5");
    }
    QTest::qWait(kLongerThanKeeping);
    EXPECT_TRUE(desk.preferences.draftsIn(workbook).empty());
}

TEST(WalkDraft, ofAnotherRoundIsNotOffered) {
    DeskWindow desk;
    desk.type("31.2");
    QTest::qWait(kLongerThanKeeping);
    const base::Id workbook = desk.bridge().workbook()->workbookId();
    auto drafts = desk.preferences.draftsIn(workbook);
    ASSERT_EQ(drafts.size(), 1U);
    drafts.front().round = desk.ids.next();
    desk.preferences.keepDrafts(workbook, drafts);
    SessionAfter after(desk);
    EXPECT_FALSE(after.grid().isEditing());
    EXPECT_TRUE(after.kept().empty());
}

TEST(WalkDraft, comesBackOnTheCard) {
    DeskWindow desk;
    desk.window.commands().largeTargets->trigger();
    QTest::qWait(50);
    ASSERT_TRUE(desk.window.walk()->isCard());
    desk.window.walk()->takeFocus();
    desk.type("31.2");
    QTest::qWait(kLongerThanKeeping);
    SessionAfter after(desk);
    ASSERT_TRUE(after.window->walk()->isCard());
    WalkField* dp = after.window->walk()->card()->dp();
    EXPECT_EQ(dp->text(), "31.2");
    EXPECT_TRUE(dp->isRefused());
    after.window->walk()->takeFocus();
    EXPECT_EQ(after.stored("B-01"), "") << "the keys in the field do not enter it";
    QTest::keyClick(dp, Qt::Key_Down);
    EXPECT_EQ(after.stored("B-01"), "");
    QTest::keyClick(dp, Qt::Key_Return);
    EXPECT_EQ(after.stored("B-01"), "31.2 kPa");
    EXPECT_TRUE(after.kept().empty());
}

}  // namespace
}  // namespace ww::ui
