// What a screen reader and a keyboard find: names of controls, words and keys of commands. Not for the way of
// Tab (tab_order_test.cpp) nor for what is typed (typed_value_test.cpp).
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QSet>
#include <QShortcut>
#include <QTableView>
#include <algorithm>
#include <map>
#include <set>

#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_dialog.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/spoken.h"
#include "tests/ui/support/spoken_name.h"
#include "ui/commands.h"
#include "ui/mnemonics.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

/// Whether a widget is one that a person works with: it is touched or takes the keys. A section's view is
/// named by the section that it shows, a bar of tabs by the tab in front.
bool isControl(const QWidget& widget) {
    const QWidget* parent = widget.parentWidget();
    const bool isInner = parent == nullptr || parent->inherits("QComboBox") || parent->inherits("QTabBar") ||
                         parent->inherits("QAbstractScrollArea") || parent->inherits("QLineEdit");
    return !isInner && widget.isVisible() && !widget.inherits("ww::ui::SectionView") &&
           !widget.inherits("QTabBar") &&
           (qobject_cast<const QAbstractButton*>(&widget) ||
            (widget.focusPolicy() & Qt::TabFocus) == Qt::TabFocus);
}

template <class Check>
void onEveryPage(DeskWindow& desk, const Check& check) {
    support::eachPage(desk.window, [&](const QString& page) {
        QTest::qWait(20);
        SCOPED_TRACE(page.toStdString());
        check();
    });
}

void expectNamesOfTheirOwn(const QWidget& window) {
    std::set<QString> names;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!isControl(*widget) || widget->window() != &window) {
            continue;
        }
        const QString name = support::spokenName(*widget);
        EXPECT_FALSE(name.isEmpty()) << widget->metaObject()->className();
        EXPECT_TRUE(names.insert(name).second) << name.toStdString() << " is the name of two controls";
    }
}

// WCAG 2.2, 4.1.2 Name, Role, Value; that names differ within a window is our own rule.
TEST(Access, everyControlInSightHasANameOfItsOwn) {
    DeskWindow desk;
    onEveryPage(desk, [&] { expectNamesOfTheirOwn(desk.window); });
}

TEST(Access, everyControlOfADialogHasANameOfItsOwn) {
    for (const char* language : {"en", "de", "es", "fr"}) {
        const support::Spoken spoken(language);
        DeskWindow desk(support::jobForDialogs(), false);
        support::eachDialog(desk, [&](const QWidget& dialog) {
            SCOPED_TRACE(std::string(language) + ", " + dialog.windowTitle().toStdString());
            EXPECT_FALSE(dialog.windowTitle().isEmpty());
            expectNamesOfTheirOwn(dialog);
        });
    }
}

void expectSpokenCells(const QWidget& window) {
    for (const QTableView* table : window.findChildren<QTableView*>()) {
        const QAbstractItemModel* model = table->model();
        if (!table->isVisible() || table->window() != &window || model == nullptr) {
            continue;
        }
        for (int row = 0; row < std::min(3, model->rowCount()); ++row) {
            for (int column = 0; column < model->columnCount(); ++column) {
                const QModelIndex cell = model->index(row, column);
                const QString value = cell.data().toString();
                const QString spoken = cell.data(Qt::AccessibleTextRole).toString();
                EXPECT_FALSE(!value.isEmpty() && column > 0 && spoken.isEmpty())
                    << table->accessibleName().toStdString() << ": " << value.toStdString()
                    << " is spoken without its row and column";
            }
        }
    }
}

// Acceptance check: cells speak what they are about and their value.
TEST(Access, cellsOfEveryTableSpeakTheirRowAndColumn) {
    DeskWindow desk;
    onEveryPage(desk, [&] { expectSpokenCells(desk.window); });
}

TEST(Access, cellsOfEveryDialogSpeakTheirRowAndColumn) {
    DeskWindow desk(support::jobForDialogs(), false);
    support::eachDialog(desk, [](const QWidget& dialog) {
        SCOPED_TRACE(dialog.windowTitle().toStdString());
        expectSpokenCells(dialog);
    });
}

/// Takes the letter of a text, which no other in the window may have.
void takeLetter(const QString& words, std::map<QChar, QString>& letters) {
    const QKeySequence key = QKeySequence::mnemonic(words);
    if (!key.isEmpty()) {
        const QChar letter = key.toString().back();
        EXPECT_TRUE(letters.emplace(letter, words).second)
            << words.toStdString() << " and " << letters[letter].toStdString();
    }
}

void takeLettersIn(const QWidget& window, std::map<QChar, QString>& letters) {
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        const auto* label = qobject_cast<const QLabel*>(widget);
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const bool isLettered = (label != nullptr && label->buddy() != nullptr) || button != nullptr;
        if (isLettered && widget->isVisible() && widget->window() == &window) {
            takeLetter(label != nullptr ? label->text() : button->text(), letters);
        }
    }
}

TEST(Access, lettersUnderAltMeanOneThingAtATime) {
    DeskWindow desk;
    onEveryPage(desk, [&] {
        std::map<QChar, QString> letters;
        for (const QAction* menu : desk.window.menuBar()->actions()) {
            takeLetter(menu->text(), letters);
        }
        takeLettersIn(desk.window, letters);
    });
}

TEST(Access, lettersUnderAltMeanOneThingInEachDialog) {
    for (const char* language : {"en", "de", "es", "fr"}) {
        const support::Spoken spoken(language);
        DeskWindow desk(support::jobForDialogs(), false);
        support::eachDialog(desk, [&](const QWidget& dialog) {
            SCOPED_TRACE(std::string(language) + ", " + dialog.windowTitle().toStdString());
            std::map<QChar, QString> letters;
            takeLettersIn(dialog, letters);
        });
    }
}

TEST(Access, aTakenLetterGivesWayToAFreeOne) {
    QSet<QChar> taken{'F'};
    EXPECT_EQ(withFreeLetter("&Fluid", taken), "F&luid");
    EXPECT_EQ(withFreeLetter("&Lowest", taken), "L&owest");
    EXPECT_EQ(withFreeLetter("Plain", taken), "Plain");
    EXPECT_EQ(withFreeLetter("&Flo", taken), "Flo") << "no letter is left";
}

void expectNoBareAnswer(const QAbstractButton& button) {
    QString words = button.text();
    words.remove('&');
    EXPECT_FALSE(words == "OK" || words == "Yes" || words == "No") << words.toStdString();
}

TEST(Access, commandsSayWhatTheyDo) {
    DeskWindow desk;
    // Verbs, and the four words of every editor.
    const std::set<QString> first{
        "New",  "Open",   "Save",  "Merge",    "Decide", "Export", "Close",   "Quit",   "Undo",
        "Redo", "Cut",    "Copy",  "Paste",    "Find",   "Write",  "Show",    "Go",     "Read",
        "Take", "Mark",   "List",  "Record",   "Add",    "Adjust", "Hold",    "Change", "Switch",
        "Make", "Reset",  "Enter", "Test",     "Try",    "Sign",   "Compare", "Verify", "Use",
        "Move", "Import", "Print", "Practice", "Send",   "Accept", "Set",     "Restore"};
    for (const QAction* action : desk.window.commands().all()) {
        QString words = action->text();
        words.remove('&');
        EXPECT_TRUE(first.contains(words.section(' ', 0, 0).remove(QChar(0x2026)))) << words.toStdString();
    }
    for (const QAbstractButton* button : desk.window.findChildren<QAbstractButton*>()) {
        expectNoBareAnswer(*button);
    }
}

TEST(Access, buttonsOfDialogsSayWhatTheyDo) {
    DeskWindow desk(support::jobForDialogs(), false);
    const std::set<QString> first{"Use",   "Close", "Export", "Make",  "Cancel",  "Set",
                                  "Reset", "Save",  "Show",   "Leave", "Import",  "Merge",
                                  "Store", "Trust", "Find", "Go"};
    support::eachDialog(desk, [&](const QWidget& dialog) {
        for (const QPushButton* button : dialog.findChildren<QPushButton*>()) {
            QString words = button->text();
            words.remove('&');
            EXPECT_TRUE(first.contains(words.section(' ', 0, 0)))
                << dialog.windowTitle().toStdString() << ": " << words.toStdString();
            expectNoBareAnswer(*button);
        }
    });
}

// Languages may have one name for the two Enter keys: a chord that was read by its name there would stand
// twice, and a chord that stands twice does nothing.
TEST(Access, chordsAreTheSameInEveryLanguage) {
    const auto chords = [] {
        const Commands commands(nullptr);
        QStringList all;
        for (const QAction* action : commands.all()) {
            QSet<QKeySequence> own;
            for (const QKeySequence& chord : action->shortcuts()) {
                EXPECT_FALSE(own.contains(chord)) << action->text().toStdString();
                own.insert(chord);
                all << chord.toString(QKeySequence::PortableText);
            }
        }
        return all;
    };
    const QStringList english = chords();
    EXPECT_TRUE(english.contains("Ctrl+Return"));
    for (const char* language : {"de", "es", "fr"}) {
        const support::Spoken spoken(language);
        EXPECT_EQ(chords(), english) << language;
    }
}

// Both Enter keys, in a language that has one name for them.
TEST(Access, theChordOfBothEnterKeysWorksInEveryLanguage) {
    for (const char* language : {"en", "de", "es", "fr"}) {
        const support::Spoken spoken(language);
        DeskWindow desk;
        desk.window.showPlace(MainWindow::Walk);
        for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter}) {
            desk.window.showPlace(MainWindow::Walk);
            desk.key(key, Qt::ControlModifier);
            EXPECT_EQ(desk.window.place(), MainWindow::Adjust) << language;
        }
    }
}

// A control's shortcut beside a command with the same keys leaves both without effect.
TEST(Access, noControlTakesTheKeysOfACommand) {
    DeskWindow desk;
    QSet<QKeySequence> ofCommands;
    for (const QAction* action : desk.window.commands().all()) {
        for (const QKeySequence& chord : action->shortcuts()) {
            ofCommands.insert(chord);
        }
    }
    desk.window.showPlace(MainWindow::System);
    desk.key(Qt::Key_V, Qt::ControlModifier | Qt::AltModifier);
    onEveryPage(desk, [&] {
        for (const QShortcut* shortcut : desk.window.findChildren<QShortcut*>()) {
            EXPECT_FALSE(ofCommands.contains(shortcut->key()))
                << shortcut->key().toString(QKeySequence::PortableText).toStdString();
        }
    });
}

TEST(Access, functionKeysHaveAChordBesideThem) {
    DeskWindow desk;
    for (const QAction* action : desk.window.commands().all()) {
        bool hasFunctionKey = false;
        bool hasChord = false;
        for (const QKeySequence& key : action->shortcuts()) {
            const QString words = key.toString(QKeySequence::PortableText);
            hasFunctionKey = hasFunctionKey || words.startsWith('F');
            hasChord = hasChord || words.startsWith("Ctrl+") || words.startsWith("Alt+");
        }
        EXPECT_TRUE(!hasFunctionKey || hasChord) << action->text().toStdString();
    }
}

}  // namespace
}  // namespace ww::ui
