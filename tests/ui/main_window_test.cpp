#include "ui/main_window.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QDropEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMenuBar>
#include <QMimeData>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <algorithm>
#include <set>

#include "tests/support/demo_project.h"
#include "tests/support/field_job.h"
#include "tests/support/full_disk.h"
#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "ui/file_messages.h"
#include "ui/places/job/job_place.h"
#include "ui/places/system/system_place.h"
#include "ui/places/system/what_if_bench.h"
#include "ui/window_look.h"

// The source of these checks is the interaction design of this project; where a guideline says the same it is
// named.
namespace ww::ui {
namespace {

using support::DeskWindow;

template <class PlaceWidget>
PlaceWidget& placeOf(DeskWindow& desk, MainWindow::Place place) {
    desk.window.showPlace(place);
    return *desk.window.findChild<PlaceWidget*>();
}

TEST(MainWindow, everyCommandHasItsOwnChordAndAPlaceInAMenu) {
    DeskWindow desk;
    std::set<QString> seen;
    std::set<const QAction*> inMenus;
    for (const QMenu* menu : desk.window.menuBar()->findChildren<QMenu*>()) {
        for (const QAction* action : menu->actions()) {
            inMenus.insert(action);
        }
    }
    for (const QAction* action : desk.window.commands().exportAs->actions()) {
        inMenus.insert(action);
    }
    for (const QAction* action : desk.window.commands().all()) {
        bool hasChord = false;
        for (const QKeySequence& key : action->shortcuts()) {
            const QString text = key.toString(QKeySequence::PortableText);
            EXPECT_TRUE(seen.insert(text).second) << text.toStdString() << " stands twice";
            hasChord = hasChord || text.startsWith("Ctrl+") || text.startsWith("Alt+");
        }
        EXPECT_TRUE(hasChord) << action->text().toStdString();
        EXPECT_TRUE(inMenus.contains(action)) << action->text().toStdString();
        EXPECT_FALSE(action->text() == "OK" || action->text() == "Yes");
    }
}

TEST(MainWindow, tryingWhatIfComesAndGoesByItsKey) {
    DeskWindow desk;
    const auto benchHasTheKeys = [] {
        const QWidget* inHand = QApplication::focusWidget();
        return inHand != nullptr && qobject_cast<system::WhatIfBench*>(inHand->parentWidget()) != nullptr;
    };
    const auto press = [&] { desk.key(Qt::Key_F, Qt::ControlModifier | Qt::AltModifier); };
    press();
    EXPECT_EQ(desk.window.place(), MainWindow::System);
    EXPECT_TRUE(benchHasTheKeys());
    press();
    EXPECT_NE(qobject_cast<EntryTable*>(QApplication::focusWidget()), nullptr) << "back in the table";
    // It takes the place of the valve tables too.
    desk.window.commands().valveTables->trigger();
    press();
    EXPECT_TRUE(benchHasTheKeys());
}

TEST(MainWindow, tabReachesEveryEnabledControlAndComesBack) {
    DeskWindow desk;
    for (const auto place : {MainWindow::Job, MainWindow::System, MainWindow::Walk, MainWindow::Adjust,
                             MainWindow::Pump, MainWindow::Review, MainWindow::Report}) {
        desk.window.showPlace(place);
        QCoreApplication::processEvents();
        std::set<const QWidget*> reached;
        const QWidget* first = QApplication::focusWidget();
        ASSERT_NE(first, nullptr);
        for (int i = 0; i < 200; ++i) {
            reached.insert(QApplication::focusWidget());
            // Tables keep Tab for their cells and are left with Ctrl+Tab.
            const bool isTable = qobject_cast<EntryTable*>(QApplication::focusWidget()) != nullptr;
            desk.key(Qt::Key_Tab, isTable ? Qt::ControlModifier : Qt::NoModifier);
            if (QApplication::focusWidget() == first) {
                break;
            }
        }
        EXPECT_EQ(QApplication::focusWidget(), first) << "place " << place;
        for (const QWidget* widget : desk.window.findChildren<QWidget*>()) {
            const bool isControl =
                qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QPushButton*>(widget) ||
                qobject_cast<const QComboBox*>(widget) || qobject_cast<const EntryTable*>(widget);
            if (isControl && widget->isVisible() && widget->isEnabled() &&
                widget->focusPolicy() & Qt::TabFocus) {
                EXPECT_TRUE(reached.contains(widget))
                    << "place " << place << ": " << widget->accessibleName().toStdString();
            }
        }
    }
}

TEST(MainWindow, everyControlHasAnAccessibleName) {
    // WCAG 2.2, 4.1.2 Name, Role, Value.
    DeskWindow desk;
    for (const auto place : {MainWindow::Job, MainWindow::System, MainWindow::Walk, MainWindow::Adjust}) {
        desk.window.showPlace(place);
        for (const QWidget* widget : desk.window.findChildren<QWidget*>()) {
            const auto* button = qobject_cast<const QPushButton*>(widget);
            const bool isControl = button != nullptr || qobject_cast<const QLineEdit*>(widget) != nullptr ||
                                   qobject_cast<const QComboBox*>(widget) != nullptr ||
                                   qobject_cast<const EntryTable*>(widget) != nullptr;
            if (isControl && widget->isVisible()) {
                EXPECT_FALSE(widget->accessibleName().isEmpty() &&
                             (button == nullptr || button->text().isEmpty()))
                    << widget->metaObject()->className() << " in place " << place;
            }
        }
    }
}

TEST(MainWindow, opensAWorkbookThatIsDropped) {
    DeskWindow desk;
    const QString copy = QString::fromStdString(desk.folder.file("copy.wwj"));
    ASSERT_TRUE(desk.bridge().saveCopy(copy).ok());
    desk.bridge().close();
    EXPECT_FALSE(desk.bridge().isOpen());
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(copy)});
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&desk.window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop({10, 10}, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&desk.window, &drop);
    EXPECT_EQ(desk.bridge().file(), copy);
    EXPECT_EQ(desk.preferences.recentFiles(), QStringList{copy});
    EXPECT_TRUE(desk.window.windowTitle().startsWith("Test job"));
}

TEST(MainWindow, aSecondWindowReadsAndNamesTheHolder) {
    DeskWindow desk;
    MainWindow second(Desk{desk.clock, desk.ids, "K. Mills", "LT-2"}, desk.preferences);
    second.show();
    ASSERT_TRUE(second.openFile(desk.bridge().file()));
    EXPECT_TRUE(second.bridge().isReadOnly());
    const auto* banner = second.findChild<QLabel*>("read_only_banner");
    ASSERT_NE(banner, nullptr);
    EXPECT_TRUE(banner->isVisible());
    EXPECT_TRUE(banner->text().contains("A. Fields")) << banner->text().toStdString();
    EXPECT_TRUE(banner->text().contains("LT-1")) << banner->text().toStdString();
    const auto* work = second.findChild<QPushButton*>("work_in_copy");
    ASSERT_NE(work, nullptr);
    EXPECT_TRUE(work->isVisible());
    EXPECT_FALSE(desk.window.findChild<QPushButton*>("work_in_copy")->isVisible());
}

// What the button beside the banner does, past its file dialog.
TEST(MainWindow, workGoesOnInACopyAndComesTogetherLater) {
    DeskWindow desk;
    MainWindow second(Desk{desk.clock, desk.ids, "K. Mills", "LT-2"}, desk.preferences);
    second.show();
    ASSERT_TRUE(second.openFile(desk.bridge().file()));
    const QString copy = QString::fromStdString(desk.folder.file("copy.wwj"));
    ASSERT_TRUE(second.bridge().goOnIn(copy).ok());
    EXPECT_FALSE(second.bridge().isReadOnly());
    EXPECT_FALSE(second.findChild<QLabel*>("read_only_banner")->isVisible());
    EXPECT_FALSE(second.findChild<QPushButton*>("work_in_copy")->isVisible());
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    ASSERT_TRUE(second.bridge().storeDp(branch, "20.1").ok());
    second.bridge().close();
    ASSERT_TRUE(desk.bridge().merge(copy).ok());
    EXPECT_EQ(desk.stored("B-01"), "20.1 kPa");
}

TEST(MainWindow, theStripNamesWhoWorksAtThisDesk) {
    DeskWindow desk;
    const auto labels = desk.window.findChildren<QLabel*>();
    const auto found = std::find_if(labels.begin(), labels.end(),
                                    [](const QLabel* label) { return label->accessibleName() == "Person"; });
    ASSERT_NE(found, labels.end());
    const QLabel& person = **found;
    for (const auto place : {MainWindow::Job, MainWindow::Walk, MainWindow::Report}) {
        desk.window.showPlace(place);
        EXPECT_TRUE(person.isVisible());
        EXPECT_EQ(person.text(), "A. Fields");
    }
    EXPECT_TRUE(person.toolTip().contains("A. Fields"));
    const StripText narrow = stripText(desk.bridge(), theme::Display::Office, StripLength::Short);
    EXPECT_EQ(narrow.person, "AF");
    EXPECT_EQ(narrow.wholePerson, person.toolTip());
    desk.bridge().setPerson({});
    EXPECT_EQ(person.text(), "nobody chosen");
}

TEST(MainWindow, theShortFormOfARoundIsNoTagOfABranch) {
    DeskWindow desk;
    const int number = desk.project().lastRound()->number;
    EXPECT_EQ(stripText(desk.bridge(), theme::Display::Office, StripLength::Short).round,
              QStringLiteral("Rd %1").arg(number));
    desk.window.showPlace(MainWindow::Walk);
    const auto labels = desk.window.findChildren<QLabel*>();
    const auto found = std::find_if(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->accessibleName() == "Of target by round";
    });
    ASSERT_NE(found, labels.end());
    const QString shown = (*found)->text().replace(QChar(QChar::Nbsp), ' ');
    EXPECT_TRUE(shown.startsWith(QStringLiteral("Rd 1: "))) << shown.toStdString();
}

TEST(MainWindow, theStripSaysWhatWasStoredLastInOneWay) {
    DeskWindow desk;
    const auto stored = [&] {
        return stripText(desk.bridge(), theme::Display::Office, StripLength::Full).stored;
    };
    EXPECT_TRUE(stored().startsWith("last stored ")) << stored().toStdString();
    desk.enter("20.1");
    EXPECT_EQ(stored(),
              "last stored " + QString::fromStdString(desk.bridge().lastStored()->time.timeOfDay()));
}

TEST(MainWindow, theStripSaysWhatItsValvesAreOf) {
    support::FieldJob job;
    const base::Id valve = job.valve({{"1", "1"}, {"4", "10"}});
    job.branch("R", "", "", valve);
    job.branch("A", "R", "4", valve);
    job.branch("B", "R", "4", valve);
    job.round(project::RoundKind::Survey, project::RoundState::Open);
    DeskWindow desk(support::contentOf(job.project()), false);
    const StripText strip = stripText(desk.bridge(), theme::Display::Office, StripLength::Full);
    EXPECT_EQ(strip.read, "read 0 of 3 valves");
    EXPECT_EQ(strip.wholeRead, "Valves to read: 2 of terminals, 1 of branches above them");
}

TEST(MainWindow, nothingOpenSaysHowToBegin) {
    DeskWindow desk;
    desk.bridge().close();
    for (int place = MainWindow::Job; place <= MainWindow::Report; ++place) {
        desk.window.showPlace(static_cast<MainWindow::Place>(place));
        QTest::qWait(0);
        bool isSaid = false;
        for (const QLabel* label : desk.window.findChildren<QLabel*>("empty_state")) {
            isSaid =
                isSaid || (label->isVisible() && label->width() > 100 && label->text().contains("Ctrl+O"));
        }
        EXPECT_TRUE(isSaid) << "place " << place + 1;
    }
}

TEST(JobPlace, storesFieldsAndRefusesWhatIsNoValue) {
    DeskWindow desk;
    JobPlace& job = placeOf<JobPlace>(desk, MainWindow::Job);
    EntryField& band = *job.field(JobField::MatchingBand);
    const auto typeInto = [&](EntryField& field, const QString& text) {
        field.setFocus();
        field.selectAll();
        desk.enter(text);
    };
    typeInto(band, "7,5");
    EXPECT_EQ(desk.project().job().matchingBand.digits.text(), "7.5");
    typeInto(band, "250");
    EXPECT_EQ(band.text(), "250");  // never made into 25
    EXPECT_EQ(desk.project().job().matchingBand.digits.text(), "7.5");
    EXPECT_FALSE(desk.window.notice().isEmpty());
    desk.key(Qt::Key_Escape);
    EXPECT_EQ(band.text(), "7.5 %");
    typeInto(*job.field(JobField::Temperature), "45 F");
    EXPECT_EQ(desk.project().job().temperature.unit, quantity::Unit::Fahrenheit);
    typeInto(*job.field(JobField::Temperature), "400");
    EXPECT_EQ(desk.project().job().temperature.digits.text(), "45");
    desk.key(Qt::Key_Escape);
    typeInto(*job.field(JobField::Name), "Riverside");
    const QString file = QFileInfo(desk.bridge().file()).completeBaseName();
    EXPECT_TRUE(desk.window.windowTitle().startsWith("Riverside (" + file + ")"))
        << desk.window.windowTitle().toStdString();
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.project().job().name, "Test job");
}

TEST(JobPlace, instrumentsTakeDatesAndRefuseOthers) {
    DeskWindow desk;
    InstrumentModel model(desk.bridge());
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(model.add().ok());
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_TRUE(model.store(model.index(1, InstrumentModel::Due), "2027-04-30").ok());
    EXPECT_FALSE(model.store(model.index(1, InstrumentModel::Calibrated), "2027-05-01").ok());
    EXPECT_FALSE(model.store(model.index(1, InstrumentModel::Calibrated), "30.4.2026").ok());
    EXPECT_TRUE(model.store(model.index(1, InstrumentModel::Range), "15 psi").ok());
    EXPECT_FALSE(model.store(model.index(1, InstrumentModel::Range), "-15 psi").ok());
    EXPECT_EQ(desk.project().instruments()[1].range->text(), "15 psi");
    ASSERT_TRUE(desk.bridge().undo().ok());
    ASSERT_TRUE(desk.bridge().undo().ok());
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(model.rowCount(), 1);
}

TEST(SystemPlace, editsTheBranchInHand) {
    DeskWindow desk;
    SystemPlace& system = placeOf<SystemPlace>(desk, MainWindow::System);
    const QAbstractItemModelTester tester(system.model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    const auto typeInto = [&](SystemModel::Column column, const QString& text) {
        system.table()->setCurrentIndex(system.model()->index(system.model()->rowOf(branch), column));
        system.table()->setFocus();
        desk.enter(text);
    };
    const auto record = [&] { return desk.project().branches().at(branch); };
    typeInto(SystemModel::Design, "2.5");
    EXPECT_EQ(record().designFlow->text(), "2.5 m3/h");
    typeInto(SystemModel::Design, "0.5 L/s");
    EXPECT_EQ(record().designFlow->text(), "0.5 L/s");
    typeInto(SystemModel::Design, "-1");
    EXPECT_EQ(record().designFlow->text(), "0.5 L/s");
    EXPECT_TRUE(system.table()->isEditing());
    desk.key(Qt::Key_Escape);
    typeInto(SystemModel::Tag, "B-02");  // taken
    EXPECT_EQ(record().tag, "B-01");
    desk.key(Qt::Key_Escape);
    typeInto(SystemModel::Parent, "R3");
    EXPECT_EQ(desk.project().branches().at(*record().parent).tag, "R3");
    typeInto(SystemModel::Valve, "no such");
    EXPECT_TRUE(record().valve.has_value());
    desk.key(Qt::Key_Escape);
    EXPECT_EQ(DeskWindow::dialogCount(), 0);
}

TEST(SystemPlace, addsABranchBesideTheOneInHand) {
    DeskWindow desk;
    SystemPlace& system = placeOf<SystemPlace>(desk, MainWindow::System);
    const std::size_t before = desk.project().branches().size();
    desk.bridge().selectBranch(desk.project().branchTagged("B-05")->id);
    system.addBranch();
    ASSERT_EQ(desk.project().branches().size(), before + 1);
    const project::Branch& made = desk.project().branches()[before];
    EXPECT_EQ(made.parent, desk.project().branchTagged("B-05")->parent);
    EXPECT_EQ(desk.bridge().selectedBranch(), made.id);
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(desk.project().branches().size(), before);
}

TEST(MainWindow, aNoticeGoesWithItsPlaceUnlessItIsAboutStoring) {
    DeskWindow desk({.terminals = 6});
    emit desk.bridge().messageRaised(base::Fault{&kFileWritten, {}, {"walk.csv"}});
    desk.window.commands().places[MainWindow::Walk]->trigger();
    EXPECT_TRUE(desk.window.notice().contains("walk.csv")) << "the place is the same";
    desk.window.commands().places[MainWindow::System]->trigger();
    EXPECT_TRUE(desk.window.notice().isEmpty()) << desk.window.notice().toStdString();
    const base::Id branch = desk.project().branchTagged("B-01")->id;
    {
        const support::FullDisk full(4096);
        EXPECT_FALSE(desk.bridge().storeDp(branch, "20.1").ok());
    }
    ASSERT_TRUE(desk.bridge().notStored().has_value());
    emit desk.bridge().messageRaised(*desk.bridge().notStored());
    desk.window.commands().places[MainWindow::Job]->trigger();
    EXPECT_FALSE(desk.window.notice().isEmpty()) << "what is not stored is said everywhere";
}

// One bar is enough to scroll: our own rule.
TEST(MainWindow, noPageOfPumpHasTwoBarsBesideOneAnother) {
    DeskWindow desk;
    desk.window.showPlace(MainWindow::Pump);
    support::eachPage(desk.window, [&](const QString& page) {
        if (desk.window.place() != MainWindow::Pump) {
            return;
        }
        QTest::qWait(100);
        std::vector<const QScrollArea*> scrolled;
        for (const QScrollArea* area : desk.window.findChildren<QScrollArea*>()) {
            if (area->isVisible() && area->verticalScrollBar()->isVisible()) {
                scrolled.push_back(area);
            }
        }
        for (const QScrollArea* outer : scrolled) {
            for (const QScrollArea* inner : scrolled) {
                EXPECT_FALSE(outer != inner && outer->isAncestorOf(inner))
                    << page.toStdString() << ": " << inner->accessibleName().toStdString() << " "
                    << inner->metaObject()->className() << " in " << outer->accessibleName().toStdString()
                    << " " << outer->metaObject()->className() << " " << outer->height() << " for "
                    << outer->widget()->height();
            }
        }
    });
}

}  // namespace
}  // namespace ww::ui
