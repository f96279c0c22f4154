// Merging from the window: counts and both values are shown, nothing is picked beforehand, the badge stays
// until everything is decided, and undo takes the whole merge back.

#include "ui/merge/merge_dialog.h"

#include <gtest/gtest.h>

#include <QRadioButton>
#include <QTimer>

#include "core/workbook/cell_history.h"
#include "core/workbook/merge_files.h"
#include "tests/support/two_laptops.h"
#include "tests/ui/support/desk_window.h"

namespace ww::ui {
namespace {

using project::ConflictChoice;

class MergeWindow : public testing::Test {
  protected:
    MergeWindow() : m_other("K. Meyer", "LT-2", 3'000'000) {
        m_file = m_desk.folder.file("copy.wwj");
        std::filesystem::copy_file(m_desk.folder.file("walk.wwj"), m_file);
        m_other.clock.set("2026-03-02T10:00:00Z");
        m_other.open(m_file);
    }
    void read(int number, const char* dp) {
        const base::Id branch = m_desk.project().branchTagged(support::walkTag(number))->id;
        ASSERT_TRUE(m_desk.bridge().storeDp(branch, dp).ok());
    }
    /// Ten readings only there, five alike, three that differ.
    void tenFiveThree() {
        for (int i = 1; i <= 18; ++i) {
            m_other.read(support::walkTag(i), i <= 5 ? "20.5" : "40.5", "4");
        }
        for (int i = 1; i <= 8; ++i) {
            read(i, i <= 5 ? "20.5" : "30.5");
            // A dp typed in the walk leaves the setting as before; on the other laptop it was typed again.
            const base::Id branch = m_desk.project().branchTagged(support::walkTag(i))->id;
            ASSERT_TRUE(m_desk.bridge().storeSetting(branch, "4").ok());
        }
        m_other.job.reset();
    }
    /// Does this with the dialog that opens next.
    static void withDialog(const std::function<void(MergeDialog&)>& action) {
        QTimer::singleShot(0, qApp, [action] {
            auto* dialog = qobject_cast<MergeDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            action(*dialog);
        });
    }
    static QRadioButton* button(MergeDialog& dialog, int row, int column) {
        const QWidget* cell = dialog.table()->cellWidget(row, column);
        return cell != nullptr ? cell->findChild<QRadioButton*>() : nullptr;
    }
    static void accept(MergeDialog& dialog) {
        QTest::mouseClick(dialog.findChild<QPushButton*>("merge_accept"), Qt::LeftButton);
    }
    /// Ctrl+H of a cell where 30.5 was read here and 40.5 there.
    void expectHistory(const std::string& tag, bool isOurs) {
        const auto history =
            workbook::cellHistory(*m_desk.bridge().workbook(), m_desk.project().branchTagged(tag)->id);
        ASSERT_TRUE(history.ok());
        std::map<std::string, project::ReadingStatus> last;
        std::map<std::string, std::string> who;
        for (const workbook::CellValue& value : *history) {
            if (value.round == m_desk.project().lastRound()->number) {
                const std::string dp = value.reading.dp->digits.text();
                last[dp] = value.reading.status;
                who.emplace(dp, value.person + (value.reading.time ? ", timed" : ""));
            }
        }
        using Status = project::ReadingStatus;
        EXPECT_EQ(last["30.5"], isOurs ? Status::Standing : Status::Struck) << tag;
        EXPECT_EQ(last["40.5"], isOurs ? Status::Struck : Status::Standing) << tag;
        EXPECT_EQ(who["30.5"], "A. Fields, timed") << tag;
        EXPECT_EQ(who["40.5"], "K. Meyer, timed") << tag;
    }
    QPushButton* badge() { return m_desk.window.findChild<QPushButton*>("conflict_badge"); }

    support::DeskWindow m_desk;
    support::Laptop m_other;
    std::string m_file;
};

TEST_F(MergeWindow, tenNewFiveAlikeThreeDifferingAreShownMergedAndDecidedLater) {
    tenFiveThree();
    const auto before = m_desk.project().readings().size();
    EXPECT_TRUE(badge()->isHidden());
    withDialog([](MergeDialog& dialog) {
        EXPECT_TRUE(dialog.summary().contains("5 places read alike")) << dialog.summary().toStdString();
        ASSERT_EQ(dialog.table()->rowCount(), 3);
        for (int row = 0; row < 3; ++row) {
            EXPECT_FALSE(button(dialog, row, 1)->isChecked());
            EXPECT_FALSE(button(dialog, row, 2)->isChecked());
            EXPECT_TRUE(button(dialog, row, 1)->text().startsWith("30.5 kPa"));
            EXPECT_TRUE(button(dialog, row, 2)->text().startsWith("40.5 kPa"));
        }
        EXPECT_TRUE(dialog.choices().empty());
        accept(dialog);
    });
    m_desk.window.mergeFile(QString::fromStdString(m_file));
    EXPECT_EQ(m_desk.project().readings().size(), before + 18);
    EXPECT_EQ(m_desk.bridge().openConflicts().size(), 3u);
    EXPECT_FALSE(badge()->isHidden());
    EXPECT_TRUE(badge()->text().startsWith("3 "));
    // The cell shows both values until one is picked.
    const int row = m_desk.model().rowOf(m_desk.project().branchTagged("B-06")->id);
    const QModelIndex cell = m_desk.model().index(row, WalkModel::Dp);
    EXPECT_EQ(cell.data().toString(), "30.5 | 40.5");
    withDialog([](MergeDialog& dialog) {
        ASSERT_EQ(dialog.table()->rowCount(), 3);
        button(dialog, 0, 1)->setChecked(true);
        button(dialog, 1, 2)->setChecked(true);
        accept(dialog);
    });
    QTest::mouseClick(badge(), Qt::LeftButton);
    EXPECT_EQ(m_desk.bridge().openConflicts().size(), 1u);
    EXPECT_FALSE(badge()->isHidden());
    EXPECT_EQ(m_desk.project().readings().size(), before + 18) << "both values are kept";
    withDialog([](MergeDialog& dialog) {
        button(dialog, 0, 2)->setChecked(true);
        accept(dialog);
    });
    QTest::mouseClick(badge(), Qt::LeftButton);
    EXPECT_TRUE(badge()->isHidden());
    // What was chosen is current, the other value in the history with who and when; what nobody else read is
    // as it was read.
    for (int i = 1; i <= 18; ++i) {
        const std::string tag = support::walkTag(i);
        const bool isOurs = i == 6;
        EXPECT_EQ(m_desk.stored(tag), i <= 5 ? "20.5 kPa" : isOurs ? "30.5 kPa" : "40.5 kPa") << tag;
        if (i >= 6 && i <= 8) {
            expectHistory(tag, isOurs);
        }
    }
}

TEST_F(MergeWindow, undoTakesTheWholeMergeBackAtOnce) {
    tenFiveThree();
    const auto before = m_desk.project().readings().size();
    withDialog([](MergeDialog& dialog) { accept(dialog); });
    m_desk.window.mergeFile(QString::fromStdString(m_file));
    ASSERT_EQ(m_desk.project().readings().size(), before + 18);
    m_desk.window.commands().undo->trigger();
    EXPECT_EQ(m_desk.project().readings().size(), before);
    EXPECT_TRUE(badge()->isHidden());
    m_desk.window.commands().redo->trigger();
    EXPECT_EQ(m_desk.project().readings().size(), before + 18);
}

TEST_F(MergeWindow, cancelAndNothingNewStoreNothing) {
    const QString file = QString::fromStdString(m_file);
    m_desk.window.mergeFile(file);
    EXPECT_TRUE(m_desk.window.notice().contains("nothing to merge"));
    m_other.read("B-01", "20.5");
    m_other.job.reset();
    const auto stored = m_desk.bridge().storedCount();
    withDialog([](MergeDialog& dialog) { dialog.reject(); });
    m_desk.window.mergeFile(file);
    EXPECT_EQ(m_desk.bridge().storedCount(), stored);
}

TEST_F(MergeWindow, textOfAnotherLaptopIsNeverTakenForMarkup) {
    m_other.change(m_other.branch("B-02"), [](project::Branch& branch) { branch.serves = "<h1>A&B</h1>"; });
    m_other.job.reset();
    project::Branch branch = *m_desk.project().branchTagged("B-02");
    branch.serves = "Kitchen";
    ASSERT_TRUE(m_desk.bridge().apply({"serves", {branch}, {}, true}).ok());
    const auto preview = m_desk.bridge().previewMerge(QString::fromStdString(m_file));
    ASSERT_TRUE(preview.ok());
    MergeDialog dialog(*preview, "<b>copy</b>");
    EXPECT_TRUE(button(dialog, 0, 2)->text().startsWith("<h1>A&&B</h1>"));
    for (const QLabel* label : dialog.findChildren<QLabel*>()) {
        EXPECT_EQ(label->textFormat(), Qt::PlainText);
    }
}

}  // namespace
}  // namespace ww::ui
