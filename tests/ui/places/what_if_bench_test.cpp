// What is typed on the bench where settings are tried: refused texts stay, and no key leaves Qt with a wrong
// editor. The source of these checks is the interaction design of this project.
#include "ui/places/system/what_if_bench.h"

#include <gtest/gtest.h>

#include "tests/ui/support/desk_window.h"
#include "ui/places/system/system_place.h"

namespace ww::ui {
namespace {

QStringList& saidByQt() {
    static QStringList said;
    return said;
}

/// Keeps what Qt warns of while it lives.
class QtWarnings {
  public:
    QtWarnings() {
        saidByQt().clear();
        m_before = qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
            if (type != QtDebugMsg && type != QtInfoMsg) {
                saidByQt() << text;
            }
        });
    }
    ~QtWarnings() { qInstallMessageHandler(m_before); }
    QtWarnings(const QtWarnings&) = delete;
    QtWarnings& operator=(const QtWarnings&) = delete;

  private:
    QtMessageHandler m_before;
};

class BenchKeys : public testing::Test {
  protected:
    void SetUp() override {
        m_desk.window.showPlace(MainWindow::System);
        m_desk.window.system()->tryWhatIf();
        m_bench = m_desk.window.findChild<system::WhatIfBench*>();
        EntryTable& table = *m_bench->table();
        table.setFocus();
        // The first branch with a valve.
        while (!table.model()->index(m_row, kTried).flags().testFlag(Qt::ItemIsEditable)) {
            ASSERT_LT(++m_row, table.model()->rowCount());
        }
        table.setCurrentIndex(table.model()->index(m_row, kTried));
    }
    QString tried() const { return m_bench->table()->model()->index(m_row, kTried).data().toString(); }

    support::DeskWindow m_desk;
    static constexpr int kTried = system::WhatIfModel::SettingTried;
    system::WhatIfBench* m_bench = nullptr;
    int m_row = 0;
};

TEST_F(BenchKeys, aRefusedTextStaysInItsCellWithTheMessage) {
    const QString before = tried();
    m_desk.enter("99");
    EXPECT_TRUE(m_bench->table()->isRefused());
    EXPECT_EQ(m_bench->table()->editor()->text(), "99");
    EXPECT_TRUE(m_desk.window.notice().contains("off the scale")) << m_desk.window.notice().toStdString();
    m_desk.key(Qt::Key_Escape);
    EXPECT_FALSE(m_bench->table()->isEditing());
    EXPECT_TRUE(m_desk.window.notice().isEmpty()) << m_desk.window.notice().toStdString();
    EXPECT_EQ(tried(), before);
    m_desk.enter("99");
    m_bench->table()->editor()->selectAll();
    m_desk.enter("2.0");
    EXPECT_EQ(tried(), "2.0");
    EXPECT_TRUE(m_desk.window.notice().isEmpty()) << m_desk.window.notice().toStdString();
}

TEST_F(BenchKeys, aSpeedThatIsNoneStaysInItsField) {
    m_bench->speed()->setFocus();
    m_bench->speed()->selectAll();
    m_desk.enter("300");
    EXPECT_EQ(m_bench->speed()->text(), "300");
    EXPECT_TRUE(m_desk.window.notice().contains("is not a speed"));
    m_bench->speed()->selectAll();
    m_desk.enter("90");
    EXPECT_EQ(m_bench->model().speed(), "90");
    EXPECT_TRUE(m_desk.window.notice().isEmpty()) << m_desk.window.notice().toStdString();
}

TEST_F(BenchKeys, spaceShutsABranchOff) {
    EntryTable& table = *m_bench->table();
    const QModelIndex cell = table.model()->index(0, system::WhatIfModel::Closed);
    table.setCurrentIndex(cell);
    m_desk.key(Qt::Key_Space);
    EXPECT_EQ(cell.data(Qt::CheckStateRole).toInt(), Qt::Checked);
    m_desk.key(Qt::Key_Space);
    EXPECT_EQ(cell.data(Qt::CheckStateRole).toInt(), Qt::Unchecked);
}

TEST_F(BenchKeys, quickKeysLeaveQtWithoutAWarning) {
    const QtWarnings watch;
    for (const int last : {int(Qt::Key_Return), int(Qt::Key_Tab), int(Qt::Key_2)}) {
        m_desk.type("2");
        m_desk.key(last);
        for (int i = 0; i < 3; ++i) {
            m_desk.key(Qt::Key_F, Qt::ControlModifier | Qt::AltModifier);
        }
        m_desk.type("3");
        m_desk.key(Qt::Key_F, Qt::ControlModifier | Qt::AltModifier);
        QTest::qWait(20);
    }
    EXPECT_TRUE(saidByQt().isEmpty()) << saidByQt().join('\n').toStdString();
}

}  // namespace
}  // namespace ww::ui
