#include <gtest/gtest.h>

#include <QLineEdit>
#include <QListWidget>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>

#include "core/project/review.h"
#include "core/seal/verify_report.h"
#include "tests/support/demo_project.h"
#include "tests/ui/support/pump_rig.h"
#include "tests/ui/support/signing_rig.h"
#include "ui/places/report/certificate_dialog.h"
#include "ui/places/report/signing_panel.h"
#include "ui/places/report/verify_dialog.h"
#include "ui/report/report_file_name.h"

namespace ww::ui {
namespace {

using support::SigningRig;
using support::textsOf;

// A round that is opened does not take the last finished report away; which is which is said.
TEST(ReportSigning, theReportOfTheFinishedRoundStaysInReach) {
    SigningRig rig;
    rig.settle();
    QComboBox* choice = rig.combo("Round of the report");
    ASSERT_NE(choice, nullptr);
    EXPECT_EQ(choice->itemText(0), "Round 3: accepted");
    EXPECT_EQ(rig.place.currentReport().roundNumber, 3);
    project::Round next;
    next.id = rig.ids.next();
    next.number = 4;
    next.kind = project::RoundKind::Adjusting;
    next.state = project::RoundState::Open;
    project::Edit edit;
    edit.label = "round";
    edit.put.emplace_back(next);
    ASSERT_TRUE(rig.bridge.apply(edit).ok());
    QApplication::processEvents();
    EXPECT_EQ(choice->itemText(0), "Round 4: draft");
    EXPECT_EQ(choice->itemText(1), "Round 3: accepted");
    EXPECT_EQ(rig.place.currentReport().roundNumber, 4);
    choice->setCurrentIndex(1);
    emit choice->activated(1);
    QApplication::processEvents();
    EXPECT_EQ(rig.place.currentReport().roundNumber, 3);
    rig.place.signing()->setObstacles(0);
    EXPECT_FALSE(rig.button("Sign…")->isEnabled());
    EXPECT_TRUE(rig.button("Sign…")->accessibleDescription().contains("newest round"));
    // It stays while the open round goes on.
    next.opened = rig.clock.now();
    edit.put = {next};
    ASSERT_TRUE(rig.bridge.apply(edit).ok());
    QApplication::processEvents();
    EXPECT_EQ(rig.place.currentReport().roundNumber, 3);
}

// A report takes what was learned of the loop: signing meanwhile would hold up the window.
TEST(ReportSigning, waitsWhileTheLoopIsBeingLearned) {
    SigningRig rig;
    rig.settle();
    ASSERT_TRUE(rig.button("Sign…")->isEnabled());
    rig.place.signing()->setWaiting("The loop is being learned.");
    EXPECT_FALSE(rig.button("Sign…")->isEnabled());
    EXPECT_TRUE(rig.button("Sign…")->accessibleDescription().contains("being learned"));
    rig.place.signing()->setWaiting({});
    EXPECT_TRUE(rig.button("Sign…")->isEnabled());
}

// Acceptance check: entry goes on with an overdue meter, signing waits for a reason, and the report lists it.
TEST(ReportSigning, anOverdueMeterWaitsForAReasonAndIsListed) {
    support::DemoOptions options;
    options.hasOverdueMeter = true;
    SigningRig rig(options);
    std::size_t overdue = 0;
    for (const balancing::SignLine& line : rig.lines()) {
        overdue += line.state == balancing::SignState::NeedsReason &&
                           base::english(line.text).find("calibration") != std::string::npos
                       ? 1U
                       : 0U;
    }
    EXPECT_EQ(overdue, 1U) << "one finding a meter";
    rig.settle();
    EXPECT_TRUE(rig.button("Sign…")->isEnabled());
    bool isListed = false;
    const auto report = rig.place.currentReport();
    for (const auto& table : ww::report::sectionOf(report, ww::report::kExceptions).tables) {
        for (const auto& row : table.rows) {
            isListed = isListed || (row[2].text == "overdue" && row[0].text == "M-2");
        }
    }
    EXPECT_TRUE(isListed);
}

TEST(ReportSigning, aWrongPassphraseIsToldForgottenAndLeavesNoFile) {
    SigningRig rig;
    rig.settle();
    rig.makeKey("T. Ashdown");
    EXPECT_FALSE(rig.signAs(0, "r.pdf", "pump and valve").ok());
    EXPECT_TRUE(textsOf(rig.place).contains("passphrase does not open"));
    EXPECT_TRUE(rig.passphrase()->text().isEmpty());
    EXPECT_EQ(rig.place.focusWidget(), rig.passphrase()) << "it is typed again at once";
    EXPECT_FALSE(rig.folder.has("r.pdf"));
    rig.place.signing()->setKeyFile("/nowhere/key.p12");
    EXPECT_EQ(rig.signAs(0, "r.pdf").fault().code(), kKeyFileMissing.code);
}

TEST(ReportSigning, whatIsMissingIsToldBeforeAFileIsAskedFor) {
    SigningRig rig;
    rig.settle();
    rig.place.signing()->sign();
    EXPECT_EQ(rig.place.focusWidget(), rig.field("Key file"));
    EXPECT_TRUE(textsOf(rig.place).contains("No key file is chosen"));
    rig.makeKey("T. Ashdown");
    rig.place.signing()->sign();
    EXPECT_EQ(rig.place.focusWidget(), rig.passphrase());
    EXPECT_TRUE(textsOf(rig.place).contains("passphrase of the key is missing"));
}

TEST(ReportSigning, theDraftHasANameOfItsOwn) {
    SigningRig rig;
    ww::report::Report report = rig.place.currentReport();
    ASSERT_TRUE(report.isDraft);
    const QString draft = report::fileNameOf(report);
    report.isDraft = false;
    EXPECT_TRUE(draft.contains(" draft")) << draft.toStdString();
    EXPECT_NE(report::fileNameOf(report), draft);
}

// The tool pdfsig of poppler stands for any viewer.
TEST(ReportSigning, technicianThenSupervisorSignAndOthersSeeIt) {
    SigningRig rig;
    rig.settle();
    rig.makeKey("T. Ashdown");
    ASSERT_TRUE(rig.signAs(0, "r.pdf").ok()) << textsOf(rig.place).toStdString();
    EXPECT_TRUE(rig.passphrase()->text().isEmpty()) << "asked for each time";
    EXPECT_TRUE(textsOf(rig.place).contains("self-made"));
    EXPECT_TRUE(textsOf(rig.place).contains("Next the supervisor signs"));
    rig.settle();
    EXPECT_TRUE(textsOf(rig.place).contains("Revision 1 is signed by T. Ashdown; nothing was changed since"));
    rig.makeKey("S. Weir");
    ASSERT_TRUE(rig.signAs(1, "r.pdf").ok()) << textsOf(rig.place).toStdString();
    EXPECT_FALSE(textsOf(rig.place).contains("Next the")) << "both have signed";
    rig.settle();
    EXPECT_TRUE(
        textsOf(rig.place).contains("Revision 1 is signed by T. Ashdown, S. Weir; nothing was changed since"))
        << textsOf(rig.place).toStdString();
    const auto found = seal::verifyReport(rig.folder.read("r.pdf"));
    EXPECT_TRUE(found.isIntact);
    ASSERT_EQ(found.signatures.size(), 2U);
    EXPECT_TRUE(found.signatures[1].coversWholeFile);
    QProcess process;
    process.start("pdfsig", {QString::fromStdString(rig.folder.file("r.pdf"))});
    ASSERT_TRUE(process.waitForFinished());
    const QString said = QString::fromUtf8(process.readAllStandardOutput());
    EXPECT_EQ(said.count("Signature is Valid"), 2) << said.toStdString();
    EXPECT_EQ(said.count("Total document signed"), 1) << said.toStdString();
    auto* versions = rig.place.findChild<QListWidget*>(QString(), Qt::FindChildrenRecursively);
    ASSERT_NE(versions, nullptr);
    EXPECT_EQ(rig.bridge.project().signedReports().size(), 2U);
    EXPECT_FALSE(rig.signAs(1, "r.pdf").ok()) << "a role signs once";
    // The pages in sight are those of the signed file, until something is changed.
    const ww::report::Report copy = rig.place.currentReport();
    EXPECT_EQ(copy.copyOf, 1);
    EXPECT_TRUE(report::fileNameOf(copy).contains("revision 1 copy"))
        << report::fileNameOf(copy).toStdString();
    EXPECT_EQ(rig.place.currentReport(ww::report::Signers::Technician).revision, 2);
    project::Job job = rig.bridge.project().job();
    job.site += ", east wing";
    ASSERT_TRUE(rig.bridge.apply({"Site", {job}, {}, false}).ok());
    EXPECT_EQ(rig.place.currentReport().copyOf, std::nullopt);
    EXPECT_EQ(rig.place.currentReport().revision, 2);
}

TEST(ReportSigning, aRevisionIsWithdrawnWithAReasonAndStaysOnRecord) {
    SigningRig rig;
    rig.settle();
    rig.makeKey("T. Ashdown");
    rig.choose("Who signs this report", 1);
    ASSERT_TRUE(rig.signAs(0, "r.pdf").ok());
    EXPECT_TRUE(seal::verifyReport(rig.folder.read("r.pdf")).waiting.empty()) << "technician only";
    QPushButton* withdraw = rig.button("Withdraw Report");
    EXPECT_FALSE(withdraw->isEnabled());
    rig.field("Reason for withdrawing the report")->setText("wrong meter");
    EXPECT_TRUE(withdraw->isEnabled());
    withdraw->click();
    ASSERT_EQ(rig.bridge.project().signedReports().size(), 1U);
    EXPECT_TRUE(rig.bridge.project().signedReports()[0].isWithdrawn);
    EXPECT_EQ(rig.bridge.project().signedReports()[0].reason, "wrong meter");
    EXPECT_EQ(rig.place.currentReport().revision, 2);
}

TEST(ReportSigning, verifyingGivesFourAnswersAndTheWorkbooksOwn) {
    SigningRig rig;
    rig.settle();
    rig.makeKey("T. Ashdown");
    ASSERT_TRUE(rig.signAs(0, "r.pdf").ok());
    VerifyDialog dialog(rig.bridge, theme::tokens(theme::Display::Office));
    dialog.show(QString::fromStdString(rig.folder.file("r.pdf")));
    QString texts = textsOf(dialog);
    for (const char* part : {"T. Ashdown (self-made certificate)", "by the signer's clock", "Unchanged",
                             "Not trusted", "as it stands now", "Not signed yet"}) {
        EXPECT_TRUE(texts.contains(part)) << part << " in " << texts.toStdString();
    }
    static const QRegularExpression kGroups(QStringLiteral("(?:[0-9a-f]{4} ){15}[0-9a-f]{4}"));
    EXPECT_TRUE(kGroups.match(texts).hasMatch()) << "a fingerprint breaks between its groups";
    std::string bytes = rig.folder.read("r.pdf");
    bytes[bytes.find("Registry") == std::string::npos ? 3000 : 3001] ^= 1;
    rig.folder.write("changed.pdf", bytes);
    dialog.show(QString::fromStdString(rig.folder.file("changed.pdf")));
    EXPECT_FALSE(dialog.found().isIntact);
    EXPECT_TRUE(textsOf(dialog).contains("NOT proved"));
    dialog.show("/nowhere.pdf");
    EXPECT_TRUE(textsOf(dialog).contains("could not be read"));
    dialog.trust(QString::fromStdString(rig.folder.file("r.pdf")));
    EXPECT_TRUE(textsOf(dialog).contains("certificate in PEM form"));
}

TEST(ReportSigning, aKeyIsNeverOverwrittenAndAShortPassphraseIsRefused) {
    SigningRig rig;
    rig.folder.write("mine.p12", "something");
    const QString file = QString::fromStdString(rig.folder.file("mine.p12"));
    EXPECT_EQ(rig.place.signing()->makeCertificate({"A", "", 5}, "valve and pump", file).fault().code(),
              kKeyFileStands.code);
    EXPECT_EQ(rig.folder.read("mine.p12"), "something");
    CertificateDialog dialog("A. Fields");
    const auto fields = dialog.findChildren<QLineEdit*>();
    const auto* make = dialog.findChildren<QPushButton*>().first();
    for (QPushButton* button : dialog.findChildren<QPushButton*>()) {
        make = button->text() == "Make Certificate" ? button : make;
    }
    EXPECT_FALSE(make->isEnabled());
    for (QLineEdit* edit : fields) {
        if (edit->echoMode() == QLineEdit::Password) {
            edit->setText("valve and pump");
        }
    }
    EXPECT_TRUE(make->isEnabled());
    EXPECT_EQ(dialog.who().name, "A. Fields");
}

}  // namespace
}  // namespace ww::ui
