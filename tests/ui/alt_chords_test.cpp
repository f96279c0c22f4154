// What is pressed with Alt held is typed nowhere. Own cases.
#include "ui/alt_chords.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>

#include "tests/ui/support/desk_window.h"

namespace ww::ui {
namespace {

void press(QWidget& widget, Qt::KeyboardModifiers held) {
    QKeyEvent down(QEvent::KeyPress, Qt::Key_P, held, QStringLiteral("P"));
    QApplication::sendEvent(&widget, &down);
}

TEST(AltChords, areNoTextForAnyField) {
    support::DeskWindow desk;
    QLineEdit line;
    QPlainTextEdit note;
    QComboBox choice;
    choice.addItems({"one", "Pump"});
    for (const Qt::KeyboardModifiers held :
         {Qt::AltModifier | Qt::ShiftModifier, Qt::KeyboardModifiers(Qt::AltModifier)}) {
        for (QWidget* widget : std::initializer_list<QWidget*>{&line, &note, &choice}) {
            press(*widget, held);
        }
    }
    EXPECT_EQ(line.text(), "");
    EXPECT_EQ(note.toPlainText(), "");
    EXPECT_EQ(choice.currentIndex(), 0);
    press(line, Qt::ShiftModifier);
    EXPECT_EQ(line.text(), "P");
    press(line, Qt::GroupSwitchModifier | Qt::AltModifier);
    EXPECT_EQ(line.text(), "PP") << "AltGr types";
}

}  // namespace
}  // namespace ww::ui
