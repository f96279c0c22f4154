// A hand that types values without looking, over a refusal: none of them lands where another one belongs. The
// source of these checks is the interaction design of this project.
#include "ui/widgets/blind_typing.h"

#include <gtest/gtest.h>

#include "tests/ui/support/desk_window.h"
#include "ui/places/system/system_place.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

/// Keys that come at given moments, as a real keyboard sends them.
class TimedKeys {
  public:
    void press(int key, const QString& text = {}, quint64 after_ms = 20) {
        m_now += after_ms;
        for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, key, Qt::NoModifier, text);
            event.setTimestamp(m_now);
            QApplication::sendEvent(QApplication::focusWidget(), &event);
        }
    }
    void type(const char* digits, quint64 after_ms = 20) {
        for (const char* at = digits; *at != '\0'; ++at) {
            press(Qt::Key_0 + (*at - '0'), QString(QLatin1Char(*at)), at == digits ? after_ms : 20);
        }
    }

  private:
    quint64 m_now = 10'000;
};

TEST(BlindTyping, valuesBehindARefusedOneLandNowhere) {
    DeskWindow desk;
    desk.window.showPlace(MainWindow::System);
    QTest::qWait(0);
    EntryTable& table = *desk.window.system()->table();
    const auto design = [&](int row) { return table.model()->index(row, SystemModel::Design); };
    const QStringList before{design(0).data().toString(), design(1).data().toString(),
                             design(2).data().toString()};
    const QString wrong = "abc";
    table.setFocus();
    table.beginEdit(design(0), &wrong);
    TimedKeys keys;
    keys.press(Qt::Key_Return);
    ASSERT_TRUE(table.isRefused());
    keys.type("4000");
    keys.press(Qt::Key_Return);
    keys.type("130");
    keys.press(Qt::Key_Down);
    keys.press(Qt::Key_Tab);
    EXPECT_EQ(table.editedCell(), design(0));
    EXPECT_EQ(table.currentIndex(), design(0));
    EXPECT_EQ(table.editor()->text(), "abc") << "what was refused waits as it was typed";
    for (int row = 0; row < 3; ++row) {
        EXPECT_EQ(design(row).data().toString(), before[row]) << row;
    }
    // A hand that rested has seen it, and mends it: what it types replaces the text.
    keys.type("4", BlindTyping::kRest);
    keys.press(Qt::Key_Return);
    EXPECT_FALSE(table.isEditing());
    EXPECT_TRUE(design(0).data().toString().startsWith("4")) << design(0).data().toString().toStdString();
    // From there on nothing is held back.
    keys.type("5");
    keys.press(Qt::Key_Return);
    EXPECT_TRUE(design(1).data().toString().startsWith("5")) << design(1).data().toString().toStdString();
}

TEST(BlindTyping, escapeAndCommandsAreTakenAtOnce) {
    BlindTyping blind;
    const auto isHeldBack = [&](int code, Qt::KeyboardModifiers modifiers, quint64 time) {
        QKeyEvent event(QEvent::KeyPress, code, modifiers);
        event.setTimestamp(time);
        return blind.holdsBack(event);
    };
    EXPECT_FALSE(isHeldBack(Qt::Key_1, Qt::NoModifier, 1000)) << "nothing was refused";
    QKeyEvent refused(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier);
    refused.setTimestamp(1000);
    blind.refusedAt(refused);
    EXPECT_FALSE(isHeldBack(Qt::Key_Escape, Qt::NoModifier, 1010));
    EXPECT_FALSE(isHeldBack(Qt::Key_Z, Qt::ControlModifier, 1020));
    EXPECT_TRUE(isHeldBack(Qt::Key_1, Qt::ShiftModifier, 1030));
    EXPECT_TRUE(isHeldBack(Qt::Key_1, Qt::NoModifier, 1029 + BlindTyping::kRest))
        << "counted from the last key";
    blind.end();
    EXPECT_FALSE(isHeldBack(Qt::Key_1, Qt::NoModifier, 1030 + BlindTyping::kRest));
}

}  // namespace
}  // namespace ww::ui
