// Every dialog at the sizes, scales, text sizes and languages that the program is made for: the screen has
// room for it, nothing in it is cut, nothing but a table of many columns is scrolled sideways.
#include <gtest/gtest.h>

#include <QDialog>
#include <QLineEdit>
#include <QRegularExpression>
#include <QScreen>
#include <QTableView>
#include <memory>
#include <vector>

#include "core/practice/practice_job.h"
#include "core/seal/sign_report.h"
#include "tests/support/small_report.h"
#include "tests/ui/support/screens.h"
#include "tests/ui/support/spoken.h"
#include "tests/ui/support/worked_practice.h"
#include "tests/ui/support/written_runs.h"
#include "ui/ask_dialog.h"
#include "ui/clock_dialog.h"
#include "ui/handbook/handbook_window.h"
#include "ui/history_dialog.h"
#include "ui/import/import_dialog.h"
#include "ui/installed_files.h"
#include "ui/journal_dialog.h"
#include "ui/key_list.h"
#include "ui/merge/merge_dialog.h"
#include "ui/places/report/certificate_dialog.h"
#include "ui/places/report/verify_dialog.h"
#include "ui/practice/new_practice_dialog.h"
#include "ui/practice/truth_window.h"
#include "ui/preferences_dialog.h"
#include "ui/table_faults_dialog.h"
#include "ui/widgets/dialog_area.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {
namespace {

std::vector<support::Screen> dialogScreens() {
    std::vector<support::Screen> all(support::kScreens.begin(), support::kScreens.end());
    all.push_back(support::kSmallestForGloves);
    return all;
}

/// A report that the technician signed and no supervisor yet.
const std::string& signedReport() {
    static const std::string kSigned = [] {
        const seal::SelfMade who{"Annemarie Fields-Hohenleitner", "Nordlicht", 5};
        const auto key = seal::makeSelfMade(who, "valve and pump", *base::Instant::fromText("2026-03-01"));
        const auto identity = seal::Identity::open(*key, "valve and pump");
        const auto prepared = seal::prepareReport(support::smallPdf(), support::smallPreparation(true));
        return *seal::signReport(*prepared, *identity,
                                 {seal::Role::Technician, *base::Instant::fromText("2026-03-05T09:30:00Z"),
                                  support::squareDrawing(0)});
    }();
    return kSigned;
}

/// Three values that differ: a pressure, a note of some length, a round.
std::vector<project::MergeConflict> conflicts(const project::Project& project) {
    support::CountingIds ids(7'000'000);
    const base::Instant time = *base::Instant::fromText("2026-03-02T14:06:00Z");
    std::vector<project::MergeConflict> all;
    const auto add = [&](const char* field, std::string place, std::string ours, std::string theirs) {
        project::MergeConflict conflict;
        conflict.id = ids.next();
        conflict.recordKind = project::RecordKind::Reading;
        conflict.record = project.readings()[0].id;
        conflict.field = field;
        conflict.place = std::move(place);
        conflict.ours = std::move(ours);
        conflict.theirs = std::move(theirs);
        conflict.ourPerson = "Annemarie Fields";
        conflict.theirPerson = "K. Meyer";
        conflict.ourTime = conflict.theirTime = time;
        conflict.ourInstrument = conflict.theirInstrument = "DPM-3";
        all.push_back(std::move(conflict));
    };
    add("dp", "B-04, dp, round 3", "48.8 kPa", "47.1 kPa");
    add("note", "B-11, note, round 3", "the strainer before this valve was dirty and was cleaned", "");
    add("setting", "B-09, setting, round 3", "2.9", "3.0");
    return all;
}

class Dialogs : public testing::TestWithParam<std::tuple<support::Screen, const char*>> {
  protected:
    Dialogs()
        : m_spoken(std::get<1>(GetParam())),
          m_screen(std::get<0>(GetParam())),
          m_shown(m_screen, kContent()) {}

    static const project::Edit& kContent() {
        static const project::Edit kWorked = support::workedPractice();
        return kWorked;
    }
    MainWindow& window() { return m_shown.desk.window; }

    /// A dialog's layout faults at the size that it takes, and where it is given all of the screen.
    void look(QWidget& dialog) {
        constexpr QSize kFrame(24, 30);
        const QSize room = QSize(m_screen.width, m_screen.height) - kFrame;
        const std::string title = dialog.windowTitle().toStdString();
        dialog.show();
        for (const DialogArea* area : dialog.findChildren<DialogArea*>()) {
            const QWidget* keys = dialog.focusWidget();
            EXPECT_TRUE(!area->isVisible() || stopsInReadingOrder(*area->widget()).empty() ||
                        area->isAncestorOf(keys))
                << title << ": the keys begin at "
                << (keys != nullptr ? keys->accessibleName().toStdString() : "-");
        }
        for (const QSize& size : {dialog.size().boundedTo(room), room}) {
            dialog.resize(size);
            QStringList faults = support::settledFaults(dialog);
            if (const auto* import = qobject_cast<const ImportDialog*>(&dialog)) {
                // Of a person's table any number of columns may be taken.
                const QString rows = import->findChild<QTableView*>()->accessibleName();
                faults =
                    faults.filter(QRegularExpression("^(?!QTableView " + rows + ".*: scrolls sideways)"));
            }
            EXPECT_TRUE(faults.isEmpty()) << title << '\n' << faults.join('\n').toStdString();
            EXPECT_TRUE(dialog.width() <= room.width() && dialog.height() <= room.height())
                << title << ": " << dialog.width() << 'x' << dialog.height();
        }
    }

    const support::Spoken m_spoken;
    const support::Screen m_screen;
    support::ScreenWindow m_shown;
};

TEST_P(Dialogs, ofTheRecordAreWhole) {
    ASSERT_TRUE(m_shown.show(theme::Display::Office));
    HistoryDialog history(window().bridge(), window().bridge().project().branches()[1].id, &window());
    JournalDialog journal(window().bridge(), &window());
    KeyList keys(window().commands(), &window());
    look(history);
    look(journal);
    look(keys);
}

TEST_P(Dialogs, thatAskAreWhole) {
    ASSERT_TRUE(m_shown.show(theme::Display::Daylight));
    CertificateDialog certificate("A. Fields", &window());
    NewPracticeDialog practice(1, &window());
    ClockDialog clock(*window().bridge().workbook(), &window());
    PreferencesDialog preferences(m_shown.desk.preferences, &window());
    AskDialog checkpoint(MainWindow::tr("Save a Checkpoint"),
                         MainWindow::tr("Everything is stored already. A checkpoint gives this state of the "
                                        "job a name."),
                         MainWindow::tr("&Name"), new QLineEdit("14:02:07"),
                         MainWindow::tr("&Save Checkpoint"), &window());
    for (QWidget* dialog :
         std::initializer_list<QWidget*>{&certificate, &practice, &clock, &preferences, &checkpoint}) {
        look(*dialog);
    }
}

TEST_P(Dialogs, thatBringSomethingInAreWhole) {
    ASSERT_TRUE(m_shown.show(theme::Display::Office));
    const std::string tag = m_shown.desk.project().branches()[4].tag;
    const QString rows = QStringLiteral(
                             "Valve\tSetting\tdp [kPa]\tPerson\tNote\n"
                             "%1\t99\t5.4\tA. Fields\tthe strainer before this valve was dirty and was "
                             "cleaned on the day before\nnowhere\t3\tabc\tA. Fields\t\n")
                             .arg(QString::fromStdString(tag));
    ImportDialog import(window().bridge(), m_shown.desk.preferences, *pastedSource(rows), "readings.csv",
                        &window());
    look(import);
    import.goOn();
    ASSERT_TRUE(import.isPreviewShown());
    look(import);
    TableFaultsDialog faults({"branches.csv:5:design_flow: \"abc\" is not a number; use digits with one "
                              "point or comma",
                              "readings.csv:47:tag: A3 is not among the branches; did you mean A1?"},
                             &window());
    look(faults);
    workbook::MergeReport preview;
    preview.person = "Annemarie Fields";
    preview.machine = "LT-2";
    preview.actions = 112;
    preview.readingsAdded = 10;
    preview.conflicts = conflicts(m_shown.desk.project());
    MergeDialog merge(preview, "Practice building copy", &window());
    look(merge);
    MergeDialog open(preview.conflicts, &window());
    look(open);
}

TEST_P(Dialogs, thatShowWhatWasFoundAreWhole) {
    ASSERT_TRUE(m_shown.show(theme::Display::PlantRoomDark));
    const std::string file = m_shown.desk.folder.write("signed.pdf", signedReport());
    VerifyDialog verify(window().bridge(), theme::tokens(theme::Display::PlantRoomDark), &window());
    verify.show(QString::fromStdString(file));
    ASSERT_EQ(verify.found().signatures.size(), 1U);
    look(verify);
    const practice::PracticeJob job({practice::Difficulty::Steady, 17});
    TruthWindow truth(job, m_shown.desk.project(), &window());
    look(truth);
    HandbookWindow handbook(installedFile("handbook"), std::get<1>(GetParam()), {}, &window());
    handbook.showChapter("walk.md");
    look(handbook);
    constexpr QChar kDots(0x2026);
    const QStringList cut = support::writtenRuns(*handbook.contents()).filter(kDots);
    EXPECT_TRUE(cut.isEmpty()) << cut.join(" | ").toStdString();
}

// Also one of Qt's own: what asks for a file, a printer, or only says something.
TEST(AnyDialog, isShownNoLargerThanTheScreen) {
    const support::DeskWindow desk;
    QDialog dialog;
    dialog.resize(3000, 3000);
    dialog.show();
    const QSize screen = dialog.screen()->availableSize();
    EXPECT_EQ(dialog.size(), dialog.size().boundedTo(screen)) << dialog.width() << 'x' << dialog.height();
}

INSTANTIATE_TEST_SUITE_P(Screens, Dialogs,
                         testing::Combine(testing::ValuesIn(dialogScreens()),
                                          testing::Values("en", "de", "es", "fr")),
                         [](const auto& info) {
                             return std::string(std::get<0>(info.param).name) + '_' + std::get<1>(info.param);
                         });

}  // namespace
}  // namespace ww::ui
