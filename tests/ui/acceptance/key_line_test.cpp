// The line of keys at the bottom: it offers only what acts where the keys are, in every place and in every
// kind of control, and it is one line in every language. The source of these checks is the interaction design
// of this project.
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QGraphicsView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>
#include <QTableWidget>
#include <set>

#include "tests/support/solved_job.h"
#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/screens.h"
#include "tests/ui/support/spoken.h"
#include "ui/key_list.h"
#include "ui/widgets/key_hints.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

/// A desk on a solved loop of six terminals; a round of it is open, or all are closed.
struct KeyDesk {
    explicit KeyDesk(bool isWalking) : job(6), desk(job.content(), isWalking) {
        while (desk.window.advisor().isComputing()) {
            QTest::qWait(5);
        }
    }

    support::SolvedJob job;
    DeskWindow desk;
};

/// What a person can see of a window, a line each.
QString lookOf(const MainWindow& window) {
    QStringList look{QString::number(window.place()), window.notice()};
    const QWidget* inHand = QApplication::focusWidget();
    const auto name = [](const QWidget* widget) {
        return widget != nullptr ? widget->metaObject()->className() + widget->accessibleName() : QString();
    };
    look << name(inHand);
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible()) {
            continue;
        }
        QStringList says{name(widget)};
        if (const auto* line = qobject_cast<const QLineEdit*>(widget)) {
            says << line->text() << line->placeholderText() << line->selectedText();
        } else if (const auto* text = qobject_cast<const QPlainTextEdit*>(widget)) {
            says << text->toPlainText();
        } else if (const auto* choice = qobject_cast<const QComboBox*>(widget)) {
            says << choice->currentText();
        } else if (const auto* label = qobject_cast<const QLabel*>(widget)) {
            says << (label->objectName() == "key_line" ? QString() : label->text());
        } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
            says << QString::number(tabs->currentIndex());
        } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
            says << button->text() << QString::number(button->isChecked());
        }
        if (const auto* view = qobject_cast<const QAbstractItemView*>(widget)) {
            says << QString::number(view->currentIndex().row())
                 << QString::number(view->currentIndex().column());
        } else if (const auto* picture = qobject_cast<const QGraphicsView*>(widget)) {
            says << QString::number(picture->transform().m11()) << picture->accessibleDescription();
        } else if (const auto* area = qobject_cast<const QAbstractScrollArea*>(widget)) {
            says << QString::number(area->verticalScrollBar()->value());
        }
        look << says.join('|');
    }
    return look.join('\n');
}

/// Closes what stands before the window, and tells whether anything did.
class DialogWatch : public QTimer {
  public:
    DialogWatch() {
        callOnTimeout([this] {
            QWidget* modal = QApplication::activeModalWidget();
            QWidget* popup = QApplication::activePopupWidget();
            for (QWidget* other : QApplication::topLevelWidgets()) {
                const bool isOther = other->isVisible() && qobject_cast<MainWindow*>(other) == nullptr &&
                                     other->windowType() != Qt::ToolTip;
                modal = modal == nullptr && popup == nullptr && isOther ? other : modal;
            }
            if (QWidget* shown = popup != nullptr ? popup : modal) {
                wasAny = true;
                shown->close();
            }
        });
        start(20);
    }
    bool wasAny = false;
};

/// The keys that a hint begins with: "Up, Down rows" has two. What is typed in its stead for one that says
/// "digits".
std::vector<QStringList> pressesOf(const QString& hint) {
    const QStringList words = hint.split(' ');
    if (words.front() == "digits") {
        return {hint.contains("handle") ? QStringList{"2", "Return"} : QStringList{"2", "0", "Return"}};
    }
    if (words.front() == "type") {
        return {{"7"}};
    }
    if (words.front() == "x") {
        return {{"X", "Return"}};
    }
    if (words.front() == "arrows") {
        return {{"Right"}, {"Down"}};
    }
    static const std::set<QString> kNames{"Enter", "Esc",   "Tab", "Del", "Space", "Up", "Down",
                                          "Left",  "Right", "+",   "-",   "F1",    "F6"};
    std::vector<QStringList> presses;
    for (QString word : words) {
        if (word.size() > 1 && word.endsWith(',')) {
            word.chop(1);
        }
        const bool isChord = word.startsWith("Ctrl+") || word.startsWith("Alt+");
        if (!isChord && !kNames.contains(word)) {
            // "Ctrl+Alt+1 to 0, Ctrl+Alt+Z": the keys between are told by the first and the last.
            if (word == "to" || word == "0") {
                continue;
            }
            break;
        }
        presses.push_back({word == "Enter" ? "Return" : word});
    }
    return presses;
}

void press(const QString& key) {
    const QKeySequence sequence(key, QKeySequence::PortableText);
    ASSERT_EQ(sequence.count(), 1) << key.toStdString();
    QWidget* inHand = QApplication::focusWidget();
    ASSERT_NE(inHand, nullptr) << key.toStdString();
    QTest::keyClick(inHand, sequence[0].key(), sequence[0].keyboardModifiers());
    QTest::qWait(60);
}

QStringList offered(const DeskWindow& desk) {
    QTest::qWait(0);  // it follows what has the keys
    return desk.keyLine().split(QStringLiteral("   |   "), Qt::SkipEmptyParts);
}

/// A control on a page, by its place in the order of reading, and what is typed there first.
struct Spot {
    MainWindow::Place place;
    int page;
    std::size_t stop;
    QString typed;
};

void showPage(DeskWindow& desk, MainWindow::Place place, int page) {
    desk.window.showPlace(place);
    for (QTabWidget* tabs : desk.window.findChildren<QTabWidget*>()) {
        if (tabs->isVisible() && tabs->count() > page) {
            tabs->setCurrentIndex(page);
        }
    }
    // What is in hand on a page is what the place takes in hand there.
    desk.window.showPlace(place);
    QTest::qWait(80);
}

/// Gives the control the keys; false where it is not there.
bool goTo(DeskWindow& desk, const Spot& spot) {
    desk.window.activateWindow();
    if (!QTest::qWaitForWindowActive(&desk.window)) {
        return false;
    }
    showPage(desk, spot.place, spot.page);
    const std::vector<QWidget*> stops = stopsInReadingOrder(desk.window);
    if (spot.stop >= stops.size()) {
        return false;
    }
    stops[spot.stop]->setFocus(Qt::TabFocusReason);
    QTest::qWait(0);
    if (QApplication::focusWidget() == nullptr) {
        return false;
    }
    for (const QChar letter : spot.typed) {
        QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
    }
    QTest::qWait(20);  // the line follows what has the keys
    return QApplication::focusWidget() != nullptr;
}

/// Whether one of the keys of a hint changes anything that can be seen, where each is pressed anew.
bool acts(const Spot& spot, const QString& hint, bool isWalking) {
    for (const QStringList& keys : pressesOf(hint)) {
        KeyDesk fresh(isWalking);
        if (!goTo(fresh.desk, spot)) {
            return false;
        }
        // Charts are there once they are computed.
        EXPECT_TRUE(QTest::qWaitFor([&] { return fresh.desk.keyLine().contains(hint); }))
            << hint.toStdString() << " is not in " << fresh.desk.keyLine().toStdString();
        DialogWatch dialogs;
        const QString before = lookOf(fresh.desk.window);
        const auto records = support::recordsOf(fresh.desk.project());
        for (const QString& key : keys) {
            press(key);
        }
        if (dialogs.wasAny || lookOf(fresh.desk.window) != before ||
            support::recordsOf(fresh.desk.project()) != records) {
            return true;
        }
    }
    return false;
}

class OfferedKeys : public testing::TestWithParam<std::tuple<MainWindow::Place, bool>> {};

TEST_P(OfferedKeys, actWhereTheyAreOffered) {
    const auto& [place, isWalking] = GetParam();
    // One of a kind stands for all: a command for the place, what a control takes for its kind.
    std::set<QString> tried;
    KeyDesk whole(isWalking);
    showPage(whole.desk, place, 0);
    int pages = 1;
    for (const QTabWidget* tabs : whole.desk.window.findChildren<QTabWidget*>()) {
        pages = tabs->isVisible() ? tabs->count() : pages;
    }
    for (int page = 0; page < pages; ++page) {
        showPage(whole.desk, place, page);
        const std::size_t stops = stopsInReadingOrder(whole.desk.window).size();
        for (std::size_t stop = 0; stop < stops; ++stop) {
            for (const QString& typed : {QString(), QStringLiteral("7")}) {
                const Spot spot{place, page, stop, typed};
                if (!goTo(whole.desk, spot)) {
                    continue;
                }
                const QWidget* inHand = QApplication::focusWidget();
                const bool takesText = inHand->inherits("QLineEdit") || inHand->inherits("QPlainTextEdit");
                const QString kind = inHand->metaObject()->className();
                const QStringList keys = offered(whole.desk);
                const QString name = inHand->accessibleName();
                if (!typed.isEmpty()) {
                    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
                    if (auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget())) {
                        line->undo();  // a field that does not know Escape
                    }
                }
                if (!typed.isEmpty() && !takesText) {
                    continue;
                }
                for (const QString& hint : keys) {
                    const bool isCommand = hint.startsWith("Ctrl+") || hint.startsWith("Alt+");
                    if (tried.insert(isCommand ? hint : kind + typed + hint).second) {
                        EXPECT_TRUE(acts(spot, hint, isWalking))
                            << hint.toStdString() << " does nothing on page " << page << " in "
                            << kind.toStdString() << " " << name.toStdString() << " after \""
                            << typed.toStdString() << '"';
                    }
                }
            }
        }
    }
    EXPECT_GE(tried.size(), 6U);
}

INSTANTIATE_TEST_SUITE_P(Places, OfferedKeys,
                         testing::Combine(testing::Values(MainWindow::Job, MainWindow::System,
                                                          MainWindow::Walk, MainWindow::Adjust,
                                                          MainWindow::Pump, MainWindow::Review,
                                                          MainWindow::Report),
                                          testing::Bool()),
                         [](const auto& info) {
                             return "place" + std::to_string(std::get<0>(info.param) + 1) +
                                    (std::get<1>(info.param) ? "_walking" : "_closed");
                         });

TEST(KeyLine, leavesOutTheLastKeysAndCutsNone) {
    KeyHints keys;
    keys.add("Enter stores").add("Esc restores").add("Ctrl+Z undo DP 12.4 kPa, B-05", true, "Ctrl+Z undo");
    const QFontMetrics metrics(QApplication::font());
    const auto in = [&](const QString& words) {
        return keys.line(metrics, metrics.horizontalAdvance(words)).toStdString();
    };
    EXPECT_EQ(in(keys.line()), keys.line().toStdString());
    EXPECT_EQ(in("Enter stores   |   Esc restores   |   Ctrl+Z undo"),
              "Enter stores   |   Esc restores   |   Ctrl+Z undo");
    EXPECT_EQ(in("Enter stores   |   Esc restores   |   Ctrl+Z"), "Enter stores   |   Esc restores");
    EXPECT_EQ(in("Enter"), "");
}

class KeyLineIn : public testing::TestWithParam<const char*> {};

TEST_P(KeyLineIn, isOneLineOfTheSameHeightOnEveryPage) {
    const support::Spoken spoken(GetParam());
    KeyDesk key(true);
    key.desk.window.resize(1366, 694);
    key.desk.enter("20.5");
    std::set<int> heights;
    support::eachPage(key.desk.window, [&](const QString& page) {
        QTest::qWait(30);
        const auto* line = key.desk.window.findChild<QLabel*>("key_line");
        const QString words = key.desk.keyLine();
        EXPECT_FALSE(words.isEmpty()) << page.toStdString();
        EXPECT_FALSE(words.contains('\n'));
        EXPECT_FALSE(line->wordWrap());
        EXPECT_LE(line->fontMetrics().horizontalAdvance(words), line->contentsRect().width())
            << page.toStdString() << ": " << words.toStdString();
        heights.insert(line->height());
    });
    EXPECT_EQ(heights.size(), 1U);
}

INSTANTIATE_TEST_SUITE_P(Languages, KeyLineIn, testing::Values("en", "de", "fr", "es"));

/// All actions of a menu and of the menus in it.
void addActions(const QMenu& menu, QSet<const QAction*>& all) {
    for (const QAction* action : menu.actions()) {
        all.insert(action);
        if (action->menu() != nullptr) {
            addActions(*action->menu(), all);
        }
    }
}

TEST(Commands, allStandInTheMenusAndInTheListOfKeysWithTheirKeys) {
    DeskWindow desk;
    QSet<const QAction*> inMenus;
    for (const QAction* menu : desk.window.menuBar()->actions()) {
        addActions(*menu->menu(), inMenus);
    }
    const KeyList list(desk.window.commands(), nullptr);
    const auto* table = list.findChild<QTableWidget*>();
    for (const QAction* action : desk.window.commands().all()) {
        EXPECT_TRUE(inMenus.contains(action)) << action->text().toStdString() << " is in no menu";
        EXPECT_FALSE(action->shortcuts().isEmpty()) << action->text().toStdString() << " has no key";
        EXPECT_TRUE(action->isShortcutVisibleInContextMenu() || action->shortcut().isEmpty());
        QString words = action->text().remove('&');
        words.remove(QChar(0x2026));
        bool isListed = false;
        for (int row = 0; row < table->rowCount(); ++row) {
            isListed =
                isListed ||
                (table->item(row, 0)->text() == words &&
                 table->item(row, 1)->text().contains(action->shortcut().toString(QKeySequence::NativeText)));
        }
        EXPECT_TRUE(isListed) << words.toStdString() << " is not in the list of keys";
    }
}

// Undo in the field that finds a valve takes back what is typed there first, and then the last action.
TEST(FindField, undoesWhatIsTypedThereBeforeTheWindowUndoes) {
    for (const auto place : {MainWindow::Walk, MainWindow::Adjust, MainWindow::System}) {
        KeyDesk key(true);
        key.desk.window.showPlace(MainWindow::Walk);
        key.desk.enter("20.5");
        const std::size_t readings = key.desk.project().readings().size();
        key.desk.window.showPlace(place);
        key.desk.key(Qt::Key_J, Qt::ControlModifier);
        auto* find = qobject_cast<QLineEdit*>(QApplication::focusWidget());
        ASSERT_NE(find, nullptr) << "place " << place + 1;
        key.desk.type("T");
        key.desk.key(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_TRUE(find->text().isEmpty()) << find->text().toStdString();
        EXPECT_EQ(key.desk.project().readings().size(), readings) << "the window has not undone";
        key.desk.key(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_LT(key.desk.project().readings().size(), readings) << "place " << place + 1;
    }
}

TEST(FindField, hasNothingToTakeBackOnceItsValveIsFound) {
    DeskWindow desk;
    desk.enter("20.5");
    desk.key(Qt::Key_J, Qt::ControlModifier);
    desk.enter("B-03");
    desk.key(Qt::Key_J, Qt::ControlModifier);
    auto* find = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(find, nullptr);
    desk.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(find->text().isEmpty());
    EXPECT_EQ(desk.storedCount(), 0) << "the window undid the reading";
}

}  // namespace
}  // namespace ww::ui
