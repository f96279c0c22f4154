#include "tests/ui/support/each_dialog.h"

#include <QLineEdit>

#include "core/practice/practice_job.h"
#include "core/seal/sign_report.h"
#include "tests/support/small_report.h"
#include "tests/ui/support/worked_practice.h"
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
#include "ui/tell_dialog.h"

namespace ww::support {
namespace {

using See = std::function<void(QWidget&)>;
using ui::MainWindow;

/// A report that the technician signed and no supervisor yet.
const std::string& signedReport() {
    static const std::string kSigned = [] {
        const seal::SelfMade who{"Annemarie Fields-Hohenleitner", "Nordlicht", 5};
        const auto key = seal::makeSelfMade(who, "valve and pump", *base::Instant::fromText("2026-03-01"));
        const auto identity = seal::Identity::open(*key, "valve and pump");
        const auto prepared = seal::prepareReport(smallPdf(), smallPreparation(true));
        return *seal::signReport(
            *prepared, *identity,
            {seal::Role::Technician, *base::Instant::fromText("2026-03-05T09:30:00Z"), squareDrawing(0)});
    }();
    return kSigned;
}

/// Three values that differ: a pressure, a note of some length, a round.
std::vector<project::MergeConflict> conflicts(const project::Project& project) {
    CountingIds ids(7'000'000);
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

void shown(QWidget& dialog, const See& see) {
    dialog.show();
    dialog.activateWindow();
    see(dialog);
}

void ofTheRecord(DeskWindow& desk, const See& see) {
    MainWindow& window = desk.window;
    ui::HistoryDialog history(window.bridge(), desk.project().branches()[1].id, &window);
    shown(history, see);
    ui::JournalDialog journal(window.bridge(), &window);
    shown(journal, see);
    ui::KeyList keys(window.commands(), &window);
    shown(keys, see);
}

void thatAsk(DeskWindow& desk, const See& see) {
    MainWindow& window = desk.window;
    ui::CertificateDialog certificate("A. Fields", &window);
    shown(certificate, see);
    ui::NewPracticeDialog practice(1, &window);
    shown(practice, see);
    ui::ClockDialog clock(*window.bridge().workbook(), &window);
    shown(clock, see);
    ui::PreferencesDialog preferences(desk.preferences, &window);
    shown(preferences, see);
    ui::AskDialog checkpoint(MainWindow::tr("Save a Checkpoint"),
                             MainWindow::tr("Everything is stored already. A checkpoint gives this state of "
                                            "the job a name."),
                             MainWindow::tr("&Name"), new QLineEdit("14:02:07"),
                             MainWindow::tr("&Save Checkpoint"), &window);
    shown(checkpoint, see);
}

void thatBringSomethingIn(DeskWindow& desk, const See& see) {
    MainWindow& window = desk.window;
    const std::string tag = desk.project().branches()[4].tag;
    const QString rows = QStringLiteral(
                             "Valve\tSetting\tdp [kPa]\tPerson\tNote\n"
                             "%1\t99\t5.4\tA. Fields\tthe strainer before this valve was dirty and was "
                             "cleaned on the day before\nnowhere\t3\tabc\tA. Fields\t\n")
                             .arg(QString::fromStdString(tag));
    ui::ImportDialog import(window.bridge(), desk.preferences, *ui::pastedSource(rows), "readings.csv",
                            &window);
    shown(import, see);
    import.goOn();
    if (!import.isPreviewShown()) {
        throw std::runtime_error("the import shows no rows");
    }
    shown(import, see);
    import.hide();
    ui::TableFaultsDialog faults({"branches.csv:5:design_flow: \"abc\" is not a number; use digits with one "
                                  "point or comma",
                                  "readings.csv:47:tag: A3 is not among the branches; did you mean A1?"},
                                 &window);
    shown(faults, see);
    workbook::MergeReport preview;
    preview.person = "Annemarie Fields";
    preview.machine = "LT-2";
    preview.actions = 112;
    preview.readingsAdded = 10;
    preview.conflicts = conflicts(desk.project());
    ui::MergeDialog merge(preview, "Practice building copy", &window);
    shown(merge, see);
    ui::MergeDialog open(preview.conflicts, &window);
    shown(open, see);
}

void thatShowWhatWasFound(DeskWindow& desk, const QString& language, const See& see) {
    MainWindow& window = desk.window;
    const std::string file = desk.folder.write("signed.pdf", signedReport());
    ui::VerifyDialog verify(window.bridge(), ui::theme::tokens(desk.preferences.display()), &window);
    verify.show(QString::fromStdString(file));
    if (verify.found().signatures.size() != 1) {
        throw std::runtime_error("the report has not one signature");
    }
    shown(verify, see);
    const practice::PracticeJob job({practice::Difficulty::Steady, 17});
    ui::TruthWindow truth(job, desk.project(), &window);
    shown(truth, see);
    ui::HandbookWindow handbook(ui::installedFile("handbook"), language, {}, &window);
    handbook.showChapter("walk.md");
    shown(handbook, see);
    ui::TellDialog about(MainWindow::tr("Waterwright"),
                         MainWindow::tr("Waterwright %1\n\nA field-balancing workbook for closed water "
                                        "loops.\n\nFree software under the GNU General Public License, "
                                        "version 3 or later. There is no warranty: check results before you "
                                        "act on them.")
                             .arg("1.0.0"),
                         &window);
    shown(about, see);
}

}  // namespace

const project::Edit& jobForDialogs() {
    static const project::Edit kWorked = workedPractice();
    return kWorked;
}

void eachDialog(DeskWindow& desk, DialogKind kind, const QString& language, const See& see) {
    switch (kind) {
        case DialogKind::TellsOfTheRecord:
            ofTheRecord(desk, see);
            break;
        case DialogKind::Asks:
            thatAsk(desk, see);
            break;
        case DialogKind::BringsSomethingIn:
            thatBringSomethingIn(desk, see);
            break;
        case DialogKind::ShowsWhatWasFound:
            thatShowWhatWasFound(desk, language, see);
            break;
    }
}

void eachDialog(DeskWindow& desk, const See& see) {
    for (const DialogKind kind : kDialogKinds) {
        eachDialog(desk, kind, QStringLiteral("en"), see);
    }
}

}  // namespace ww::support
