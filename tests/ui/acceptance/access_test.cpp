// What a screen reader and a keyboard find: names of controls, words of commands, no value under the wheel.
#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QPointer>
#include <QSet>
#include <QShortcut>
#include <QTableView>
#include <QWheelEvent>
#include <algorithm>
#include <map>
#include <set>
#include <utility>
#include <vector>

#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/ring_faults.h"
#include "tests/ui/support/spoken.h"
#include "ui/commands.h"
#include "ui/mnemonics.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

bool isControl(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QLineEdit*>(&widget) ||
           qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QPlainTextEdit*>(&widget) ||
           qobject_cast<const QAbstractItemView*>(&widget);
}

/// What a screen reader says of a control.
QString nameOf(const QWidget& widget) {
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    QString name =
        widget.accessibleName().isEmpty() && button != nullptr ? button->text() : widget.accessibleName();
    return name.remove('&').simplified();
}

template <class Check>
void onEveryPage(DeskWindow& desk, const Check& check) {
    support::eachPage(desk.window, [&](const QString& page) {
        QTest::qWait(20);
        SCOPED_TRACE(page.toStdString());
        check();
    });
}

// WCAG 2.2, 4.1.2 Name, Role, Value; that names differ within a window is our own rule.
TEST(Access, everyControlInSightHasANameOfItsOwn) {
    DeskWindow desk;
    onEveryPage(desk, [&] {
        std::set<QString> names;
        for (const QWidget* widget : desk.window.findChildren<QWidget*>()) {
            const bool isInner = widget->parentWidget()->inherits("QComboBox") ||
                                 widget->parentWidget()->inherits("QTabBar") ||
                                 widget->parentWidget()->inherits("QAbstractItemView") ||
                                 widget->parentWidget()->inherits("QLineEdit");
            if (!isControl(*widget) || !widget->isVisible() || isInner) {
                continue;
            }
            const QString name = nameOf(*widget);
            EXPECT_FALSE(name.isEmpty()) << widget->metaObject()->className();
            EXPECT_TRUE(names.insert(name).second) << name.toStdString() << " is the name of two controls";
        }
    });
}

// Acceptance check: cells speak what they are about and their value.
TEST(Access, cellsOfEveryTableSpeakTheirRowAndColumn) {
    DeskWindow desk;
    support::eachPage(desk.window, [&](const QString& page) {
        for (const QTableView* table : desk.window.findChildren<QTableView*>()) {
            const QAbstractItemModel* model = table->model();
            if (!table->isVisible() || model == nullptr) {
                continue;
            }
            for (int row = 0; row < std::min(3, model->rowCount()); ++row) {
                for (int column = 0; column < model->columnCount(); ++column) {
                    const QModelIndex cell = model->index(row, column);
                    const QString value = cell.data().toString();
                    const QString spoken = cell.data(Qt::AccessibleTextRole).toString();
                    EXPECT_FALSE(!value.isEmpty() && column > 0 && spoken.isEmpty())
                        << page.toStdString() << ", " << table->accessibleName().toStdString() << ": "
                        << value.toStdString() << " is spoken without its row and column";
                }
            }
        }
    });
}

TEST(Access, lettersUnderAltMeanOneThingAtATime) {
    DeskWindow desk;
    onEveryPage(desk, [&] {
        std::map<QChar, QString> letters;
        const auto take = [&](const QString& words) {
            const QKeySequence key = QKeySequence::mnemonic(words);
            if (!key.isEmpty()) {
                const QString last = key.toString().right(1);
                EXPECT_TRUE(letters.emplace(last.front(), words).second)
                    << words.toStdString() << " and " << letters[last.front()].toStdString();
            }
        };
        for (const QAction* menu : desk.window.menuBar()->actions()) {
            take(menu->text());
        }
        for (const QWidget* widget : desk.window.findChildren<QWidget*>()) {
            const auto* label = qobject_cast<const QLabel*>(widget);
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            if (widget->isVisible() &&
                ((label != nullptr && label->buddy() != nullptr) || button != nullptr)) {
                take(label != nullptr ? label->text() : button->text());
            }
        }
    });
}

TEST(Access, tablesAreLeftWithF6AndWithCtrlTab) {
    DeskWindow desk;
    for (const auto place : {MainWindow::System, MainWindow::Walk}) {
        for (const bool isF6 : {true, false}) {
            desk.window.showPlace(place);
            QTest::qWait(20);
            const auto* table = qobject_cast<EntryTable*>(QApplication::focusWidget());
            ASSERT_NE(table, nullptr) << "place " << place + 1;
            desk.key(isF6 ? Qt::Key_F6 : Qt::Key_Tab, isF6 ? Qt::NoModifier : Qt::ControlModifier);
            EXPECT_NE(QApplication::focusWidget(), table) << "place " << place + 1;
            EXPECT_NE(QApplication::focusWidget(), nullptr);
        }
    }
}

/// The parts of their nearest common parent that two widgets stand in; the same twice where one holds the
/// other. What is scrolled inside a part counts as where the part is.
std::pair<const QWidget*, const QWidget*> partsApart(const QWidget& first, const QWidget& second) {
    for (const QWidget* part = &second; part != nullptr && part->parentWidget() != nullptr;
         part = part->parentWidget()) {
        for (const QWidget* other = &first; other != nullptr; other = other->parentWidget()) {
            if (other->parentWidget() == part->parentWidget()) {
                return {other, part};
            }
        }
    }
    return {&first, &first};
}

/// Whether `second` is read before `first`: it stands above it, or on the same line where that begins.
bool isReadBefore(const QWidget& second, const QWidget& first) {
    const QRect a = first.geometry();
    const QRect b = second.geometry();
    const bool isAbove = b.bottom() < a.top() && b.left() <= a.right() && a.left() <= b.right();
    const bool isOnOneLine = b.top() <= a.center().y() && a.center().y() <= b.bottom();
    const bool isAtBegin =
        QApplication::layoutDirection() == Qt::RightToLeft ? b.left() > a.right() : b.right() < a.left();
    return isAbove || (isOnOneLine && isAtBegin);
}

/// The stops of a page once nothing more is made or taken away on it.
QList<QWidget*> settledStops(const QWidget& window) {
    constexpr int kTries = 20;
    constexpr int kPause_ms = 150;
    QList<QWidget*> stops;
    for (int i = 0; i < kTries; ++i) {
        const QList<QWidget*> before = stops;
        QTest::qWait(kPause_ms);
        stops = support::tabStops(window);
        if (stops == before) {
            break;
        }
    }
    return stops;
}

/// What has the keys, one after the other, as Tab (or Shift+Tab) is pressed until the first has them again.
QList<QWidget*> wayRound(DeskWindow& desk, Qt::KeyboardModifiers shift) {
    constexpr int kMost = 300;
    QList<QWidget*> way{QApplication::focusWidget()};
    while (way.size() < kMost) {
        // Tables keep Tab for their cells and are left with Ctrl+Tab.
        const bool isTable = qobject_cast<EntryTable*>(QApplication::focusWidget()) != nullptr;
        desk.key(Qt::Key_Tab, (isTable ? Qt::ControlModifier : Qt::NoModifier) | shift);
        if (QApplication::focusWidget() == nullptr || QApplication::focusWidget() == way.front()) {
            break;
        }
        way << QApplication::focusWidget();
    }
    return way;
}

/// What stands before what comes before it on the way, as names.
QString orderFaults(const QList<QWidget*>& way) {
    QStringList faults;
    for (qsizetype i = 0; i < way.size(); ++i) {
        for (qsizetype j = i + 1; j < way.size(); ++j) {
            const auto [first, second] = partsApart(*way[i], *way[j]);
            if (first != second && isReadBefore(*second, *first)) {
                faults << nameOf(*way[j]) + " comes after " + nameOf(*way[i]);
            }
        }
    }
    return faults.join("; ");
}

class TabOrder : public testing::TestWithParam<Qt::LayoutDirection> {
  protected:
    TabOrder() { QApplication::setLayoutDirection(GetParam()); }
    ~TabOrder() override { QApplication::setLayoutDirection(Qt::LeftToRight); }
};

// WCAG 2.2, 2.4.3 Focus Order. Parts that stand in columns side by side are read one column after the other.
TEST_P(TabOrder, isThatOfReadingOnEveryPageAndComesBack) {
    DeskWindow desk;
    support::eachPage(desk.window, [&](const QString& page) {
        SCOPED_TRACE(page.toStdString());
        const QList<QWidget*> stops = settledStops(desk.window);
        ASSERT_GE(stops.size(), 2);
        QWidget* first = *std::min_element(stops.begin(), stops.end(), [](const auto* a, const auto* b) {
            return a->mapToGlobal(QPoint(0, 0)).y() < b->mapToGlobal(QPoint(0, 0)).y();
        });
        first->setFocus(Qt::OtherFocusReason);
        const QList<QWidget*> way = wayRound(desk, Qt::NoModifier);
        EXPECT_EQ(QApplication::focusWidget(), first) << "Tab does not come back";
        EXPECT_EQ(way.size(), stops.size()) << "each stop once";
        EXPECT_EQ(QSet<QWidget*>(way.begin(), way.end()), QSet<QWidget*>(stops.begin(), stops.end()));
        QList<QWidget*> back = wayRound(desk, Qt::ShiftModifier);
        std::reverse(back.begin() + 1, back.end());
        EXPECT_EQ(back, way) << "Shift+Tab goes another way";
        // From what is read first on.
        const std::vector<QWidget*> read = stopsInReadingOrder(desk.window);
        EXPECT_TRUE(orderFaults(QList<QWidget*>(read.begin(), read.end())).isEmpty())
            << orderFaults(QList<QWidget*>(read.begin(), read.end())).toStdString();
        const qsizetype begin = way.indexOf(read.front());
        ASSERT_GE(begin, 0);
        EXPECT_EQ(way.mid(begin) + way.mid(0, begin), QList<QWidget*>(read.begin(), read.end()));
    });
}

INSTANTIATE_TEST_SUITE_P(Directions, TabOrder, testing::Values(Qt::LeftToRight, Qt::RightToLeft),
                         [](const auto& info) {
                             return info.param == Qt::LeftToRight ? "leftToRight" : "rightToLeft";
                         });

TEST(Access, aTakenLetterGivesWayToAFreeOne) {
    QSet<QChar> taken{'F'};
    EXPECT_EQ(withFreeLetter("&Fluid", taken), "F&luid");
    EXPECT_EQ(withFreeLetter("&Lowest", taken), "L&owest");
    EXPECT_EQ(withFreeLetter("Plain", taken), "Plain");
    EXPECT_EQ(withFreeLetter("&Flo", taken), "Flo") << "no letter is left";
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
        QString words = button->text();
        words.remove('&');
        EXPECT_FALSE(words == "OK" || words == "Yes" || words == "No") << words.toStdString();
    }
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

TEST(Access, theWheelChangesNoValueOnAnyPage) {
    DeskWindow desk;
    desk.enter("20.0");
    const auto before = support::recordsOf(desk.project());
    onEveryPage(desk, [&] {
        for (QWidget* widget : desk.window.findChildren<QWidget*>()) {
            const auto* combo = qobject_cast<QComboBox*>(widget);
            const auto* field = qobject_cast<QLineEdit*>(widget);
            if ((combo == nullptr && field == nullptr) || !widget->isVisible()) {
                continue;
            }
            const QString shown = combo != nullptr ? combo->currentText() : field->text();
            for (const bool hasFocus : {false, true}) {
                if (hasFocus) {
                    widget->setFocus();
                }
                QWheelEvent wheel({5, 5}, widget->mapToGlobal(QPointF(5, 5)), {}, {0, 120}, Qt::NoButton,
                                  Qt::NoModifier, Qt::NoScrollPhase, false);
                QApplication::sendEvent(widget, &wheel);
                EXPECT_EQ(combo != nullptr ? combo->currentText() : field->text(), shown)
                    << nameOf(*widget).toStdString();
            }
        }
    });
    EXPECT_EQ(support::recordsOf(desk.project()), before);
}

TEST(Access, aNumberStaysAsItIsTypedInEveryField) {
    DeskWindow desk;
    onEveryPage(desk, [&] {
        // What is left of a field may make others anew.
        std::vector<QPointer<QLineEdit>> fields;
        for (QLineEdit* field : desk.window.findChildren<QLineEdit*>()) {
            fields.emplace_back(field);
        }
        for (const QPointer<QLineEdit>& field : fields) {
            if (!field || !field->isVisible() || !field->isEnabled() || field->isReadOnly()) {
                continue;
            }
            const QString name = nameOf(*field);
            field->setFocus();
            field->selectAll();
            desk.type("250");
            EXPECT_EQ(field->text(), "250") << name.toStdString();
            desk.key(Qt::Key_Escape);
        }
    });
}

}  // namespace
}  // namespace ww::ui
