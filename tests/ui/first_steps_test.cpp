// The first steps of the handbook (resources/handbook/first_steps.md), key by key, lead to what they promise.
// The building is simulated; that all terminals end on share is the aim of a proportional balance.
#include <gtest/gtest.h>

#include <QAction>
#include <QElapsedTimer>

#include "core/balancing/index_proof.h"
#include "core/practice/practice_job.h"
#include "tests/ui/support/desk_window.h"

namespace ww::ui {
namespace {

class FirstSteps : public ::testing::Test {
  protected:
    FirstSteps() {
        const auto made = m_desk.bridge().create(
            QString::fromStdString(m_desk.folder.file("practice.wwj")),
            practice::practiceContent({practice::Difficulty::Steady, 7}, "First steps"));
        EXPECT_TRUE(made.ok());
    }
    void press(const QString& keys) {
        for (QAction* each : m_desk.window.findChildren<QAction*>()) {
            if (each->shortcuts().contains(QKeySequence(keys)) && each->isEnabled()) {
                each->trigger();
                return;
            }
        }
        ADD_FAILURE() << keys.toStdString() << " does nothing here";
    }
    void learn() {
        QElapsedTimer time;
        time.start();
        while (m_desk.window.advisor().isComputing() && time.elapsed() < 60'000) {
            QTest::qWait(5);
        }
    }
    /// A setting is typed at the first valve of the route before it is read; empty: none is.
    void readAll(project::RoundKind kind, const QString& settingOfFirst = {}) {
        ASSERT_TRUE(m_desk.bridge().openRound(kind).ok());
        m_desk.window.showPlace(MainWindow::Walk);
        if (!settingOfFirst.isEmpty()) {
            ASSERT_TRUE(
                m_desk.bridge().storeSetting(m_desk.project().branchTagged("B1")->id, settingOfFirst).ok());
        }
        m_desk.grid().goToRow(0, false);
        for (int valve = 0; valve < kValves; ++valve) {
            press("Ctrl+L");
        }
        press("Ctrl+Alt+L");
        ASSERT_TRUE(m_desk.bridge().closeRound().ok());
        learn();
    }

    static constexpr int kValves = 15;
    static constexpr std::size_t kTerminals = 12;
    static constexpr int kReferences = 4;
    support::DeskWindow m_desk;
};

TEST_F(FirstSteps, bringEveryTerminalOnShare) {
    readAll(project::RoundKind::Survey);
    EXPECT_LT(m_desk.bridge().assessment().onShareCount, kTerminals);
    m_desk.window.showPlace(MainWindow::Adjust);
    learn();
    for (int valve = 0; valve < kValves; ++valve) {
        press("Ctrl+Shift+T");
        press("Ctrl+L");
        learn();
        press("Ctrl+Return");
        learn();
    }
    m_desk.window.showPlace(MainWindow::Walk);
    EXPECT_EQ(m_desk.bridge().walkProgress().unread.size(), std::size_t{kReferences});
    for (int reference = 0; reference < kReferences; ++reference) {
        press("Ctrl+Shift+Down");
        press("Ctrl+L");
    }
    ASSERT_TRUE(m_desk.bridge().walkProgress().unread.empty());
    ASSERT_TRUE(m_desk.bridge().closeRound().ok());
    readAll(project::RoundKind::Final);
    const balancing::Assessment& found = m_desk.bridge().assessment();
    EXPECT_EQ(found.onShareCount, kTerminals);
    ASSERT_TRUE(found.spread.has_value());
    EXPECT_LT(found.spread->si(), 0.03);
    // What page 1 of the report says of the index circuit, and what one mark of the riser B1 changes.
    const auto tagsOf = [&](const std::vector<std::size_t>& branches) {
        std::string tags;
        for (const std::size_t branch : branches) {
            tags += m_desk.project().branches()[branch].tag + ' ';
        }
        return tags;
    };
    const balancing::IndexProof proof = balancing::indexProof(m_desk.project(), found);
    EXPECT_TRUE(proof.isFullyOpen());
    EXPECT_EQ(tagsOf(proof.rivals), "B1-T2 ");
    readAll(project::RoundKind::Final, "2.8");
    const balancing::IndexProof mended =
        balancing::indexProof(m_desk.project(), m_desk.bridge().assessment());
    EXPECT_TRUE(mended.isFullyOpen());
    EXPECT_EQ(tagsOf(mended.rivals), "");
    EXPECT_EQ(tagsOf(mended.undecidedRivals), "B1-T2 B3-T2 ");
}

}  // namespace
}  // namespace ww::ui
