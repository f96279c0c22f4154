// The first steps of the handbook (resources/handbook/first_steps.md), key by key, lead to what they promise.
// The building is simulated; that all terminals end on share is the aim of a proportional balance.
#include <gtest/gtest.h>

#include <QAction>
#include <QElapsedTimer>
#include <QPushButton>

#include "core/balancing/index_proof.h"
#include "core/practice/comparison.h"
#include "core/practice/practice_job.h"
#include "tests/ui/support/desk_window.h"
#include "ui/places/adjust/adjust_place.h"

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
    using Settings = std::vector<std::pair<std::string, std::string>>;
    /// Settings, by tag, are typed before the first valve is read.
    void readAll(project::RoundKind kind, const Settings& settings = {}) {
        ASSERT_TRUE(m_desk.bridge().openRound(kind).ok());
        m_desk.window.showPlace(MainWindow::Walk);
        for (const auto& [tag, setting] : settings) {
            const auto stored = m_desk.bridge().storeSetting(m_desk.project().branchTagged(tag)->id,
                                                             QString::fromStdString(setting));
            ASSERT_TRUE(stored.ok());
        }
        m_desk.grid().goToRow(0, false);
        for (int valve = 0; valve < kValves; ++valve) {
            press("Ctrl+L");
        }
        press("Ctrl+Alt+L");
        ASSERT_TRUE(m_desk.bridge().closeRound().ok());
        learn();
    }

    /// The largest error of a share, true in the building, as Truth against Found shows it.
    double largestTrueError_percent() {
        const practice::PracticeJob job({practice::Difficulty::Steady, 7});
        return 100 * practice::compare(job, m_desk.project()).now.worstTrue.si();
    }

    static constexpr int kValves = 15;
    static constexpr std::size_t kTerminals = 12;
    static constexpr int kReferences = 4;
    const Settings kOpened{{"B1", "2.9"}, {"B3", "3.3"}};
    support::DeskWindow m_desk;
};

TEST_F(FirstSteps, bringEveryTerminalOnShare) {
    readAll(project::RoundKind::Survey);
    EXPECT_LT(m_desk.bridge().assessment().onShareCount, kTerminals);
    m_desk.window.showPlace(MainWindow::Adjust);
    learn();
    EXPECT_EQ(m_desk.bridge().openRoundOrNull(), nullptr) << "round 2 opens with the first reading";
    for (int valve = 0; valve < kValves; ++valve) {
        press("Ctrl+Shift+T");
        press("Ctrl+L");
        learn();
        for (const char* later : {"spreads over", "on the index circuit"}) {
            EXPECT_FALSE(m_desk.window.notice().contains(later)) << m_desk.window.notice().toStdString();
        }
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
    press("Ctrl+Shift+W");
    for (QPushButton* button : m_desk.window.findChildren<QPushButton*>()) {
        if (button->text() == "Close Round 2") {
            button->click();
        }
    }
    ASSERT_EQ(m_desk.bridge().openRoundOrNull(), nullptr);
    EXPECT_TRUE(m_desk.window.notice().contains("ends at B1-T2 now, no more at B2-T3"))
        << m_desk.window.notice().toStdString();
    learn();
    readAll(project::RoundKind::Final);
    const balancing::Assessment& found = m_desk.bridge().assessment();
    EXPECT_EQ(found.onShareCount, kTerminals);
    ASSERT_TRUE(found.spread.has_value());
    EXPECT_LT(found.spread->si(), 0.03);
    EXPECT_NEAR(largestTrueError_percent(), 1.9, 0.05);
    // What page 1 of the report says of the index circuit, and what opening two risers by marks changes.
    const auto tagsOf = [&](const std::vector<std::size_t>& branches) {
        std::string tags;
        for (const std::size_t branch : branches) {
            tags += m_desk.project().branches()[branch].tag + ' ';
        }
        return tags;
    };
    const balancing::IndexProof proof = balancing::indexProof(m_desk.project(), found);
    EXPECT_TRUE(proof.isFullyOpen());
    EXPECT_EQ(tagsOf(proof.rivals), "B1-T2 B3-T2 ");
    m_desk.window.showPlace(MainWindow::Adjust);
    learn();
    AdjustPlace& place = *m_desk.window.adjust();
    for (const auto& [riser, setting] : kOpened) {
        place.showBranch(m_desk.project().branchTagged(riser)->id);
        EXPECT_EQ(place.valve().word(), balancing::AimWord::Open) << riser;
        const AdviceModel& model = *place.advice()->model();
        const int row = model.rowOf(m_desk.project().branchTagged(riser)->id);
        EXPECT_EQ(model.index(row, AdviceModel::Note).data().toString().toStdString(), "open to " + setting);
        press("Ctrl+Shift+T");
        EXPECT_EQ(place.valve().settingText(place.valve().setting()).text(), setting) << riser;
    }
    readAll(project::RoundKind::Final, kOpened);
    EXPECT_EQ(m_desk.bridge().assessment().onShareCount, kTerminals);
    const balancing::IndexProof mended =
        balancing::indexProof(m_desk.project(), m_desk.bridge().assessment());
    for (const balancing::Finding& finding : m_desk.bridge().assessment().findings) {
        EXPECT_EQ(finding.severity, balancing::Severity::Note) << base::englishWithSubject(finding.fault);
    }
    EXPECT_NEAR(largestTrueError_percent(), 3.4, 0.05) << "what the proof costs";
    EXPECT_TRUE(mended.isProved()) << tagsOf(mended.rivals) << tagsOf(mended.undecidedRivals);
    // Nothing is left to turn: no row says another setting, and none is taken.
    m_desk.window.showPlace(MainWindow::Adjust);
    learn();
    const AdviceModel& model = *place.advice()->model();
    int left = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        const auto cell = [&](AdviceModel::Column column) {
            return model.index(row, column).data().toString();
        };
        EXPECT_EQ(cell(AdviceModel::SetTo), cell(AdviceModel::Now)) << cell(AdviceModel::Tag).toStdString();
        if (cell(AdviceModel::Note) != "leave it") {
            continue;
        }
        ++left;
        place.showBranch(model.branchAt(row));
        const double stands = place.valve().setting().si();
        place.takeAdvice();
        EXPECT_EQ(place.valve().setting().si(), stands) << cell(AdviceModel::Tag).toStdString();
        EXPECT_TRUE(m_desk.window.notice().contains("othing is left to turn"));
    }
    EXPECT_GT(left, 0);
}

}  // namespace
}  // namespace ww::ui
