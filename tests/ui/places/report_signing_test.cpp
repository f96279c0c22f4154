#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include "core/project/review.h"
#include "core/seal/verify_report.h"
#include "tests/support/counting_ids.h"
#include "tests/support/demo_project.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/ui/support/pump_rig.h"
#include "ui/places/fact_list.h"
#include "ui/places/report/certificate_dialog.h"
#include "ui/places/report/report_place.h"
#include "ui/places/report/signing_panel.h"
#include "ui/places/report/verify_dialog.h"
#include "ui/report/report_file_name.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using balancing::SignState;
using support::textsOf;

/// The demo job with every round accepted, in a workbook of its own, on the place Report.
struct SigningRig {
    support::TemporaryFolder folder;
    support::FixedClock clock{"2026-03-05T09:00:00Z"};
    support::CountingIds ids{100000};
    WorkbookBridge bridge{Desk{clock, ids, "A. Fields", "LT-1"}};
    ReportPlace place{bridge};

    explicit SigningRig(support::DemoOptions options = {}) {
        project::Project project = support::demoProject(options);
        std::vector<project::Round> rounds(project.rounds().begin(), project.rounds().end());
        for (project::Round& round : rounds) {
            round.state = project::RoundState::Accepted;
            project.put(round);
        }
        const base::Outcome made =
            bridge.create(QString::fromStdString(folder.file("job.wwj")), support::contentOf(project));
        EXPECT_TRUE(made.ok()) << base::english(made.fault());
        place.resize(1254, 606);
        place.show();
        QApplication::processEvents();
    }
    std::vector<balancing::SignLine> lines() const {
        return balancing::readyToSign(bridge.project(), balancing::assessLast(bridge.project()));
    }
    /// Lists a deficiency for every terminal off design and gives every reason that is asked for.
    void settle() {
        for (const balancing::SignLine& line : lines()) {
            if (line.state == SignState::Blocks && line.branch) {
                project::Edit edit;
                edit.label = "deficiency";
                edit.put.emplace_back(
                    balancing::newDeficiency(bridge.project(), *line.branch, bridge.reviewContext()));
                ASSERT_TRUE(bridge.apply(edit).ok());
            } else if (line.state == SignState::NeedsReason) {
                ASSERT_TRUE(place.ready()->giveReason(line.text, "agreed with the engineer"));
            }
        }
        QApplication::processEvents();
    }
    void makeKey(const char* name) {
        const QString file = QString::fromStdString(folder.file(std::string(name) + ".p12"));
        ASSERT_TRUE(place.signing()->makeCertificate({name, "", 5}, "valve and pump", file).ok());
    }
    QLineEdit* passphrase() const { return field("Passphrase of the key"); }
    QLineEdit* field(const char* name) const {
        for (QLineEdit* edit : place.findChildren<QLineEdit*>()) {
            if (edit->accessibleName() == name) {
                return edit;
            }
        }
        return nullptr;
    }
    QPushButton* button(const char* words) const {
        for (QPushButton* button : place.findChildren<QPushButton*>()) {
            if (button->text().remove('&') == words) {
                return button;
            }
        }
        return nullptr;
    }
    void choose(const char* combo, int index) {
        for (QComboBox* box : place.findChildren<QComboBox*>()) {
            if (box->accessibleName() == combo) {
                box->setCurrentIndex(index);
            }
        }
    }
    QComboBox* combo(const char* name) const {
        for (QComboBox* box : place.findChildren<QComboBox*>()) {
            if (box->accessibleName() == name) {
                return box;
            }
        }
        return nullptr;
    }
    base::Outcome signAs(int meaning, const std::string& file, const char* words = "valve and pump") {
        choose("Meaning of my signature", meaning);
        passphrase()->setText(words);
        return place.signing()->signInto(folder.file(file));
    }
};

TEST(ReportSigning, isBlockedWithItsReasonsUntilEveryLineIsSettled) {
    SigningRig rig;
    EXPECT_FALSE(balancing::isReady(rig.lines()));
    EXPECT_FALSE(rig.button("Sign…")->isEnabled());
    const QString why = rig.button("Sign…")->accessibleDescription();
    EXPECT_FALSE(why.isEmpty());
    EXPECT_TRUE(textsOf(*rig.place.signing()).contains(why)) << "in sight below the button";
    EXPECT_EQ(rig.place.signing()->signInto(rig.folder.file("r.pdf")).fault().code(), kNotReadyToSign.code);
    const QString texts = textsOf(rig.place);
    for (const balancing::SignLine& line : rig.lines()) {
        EXPECT_TRUE(texts.contains(QString::fromStdString(base::english(line.text)).mid(1, 30)))
            << base::english(line.text);
    }
    rig.settle();
    EXPECT_TRUE(balancing::isReady(rig.lines()));
    EXPECT_TRUE(rig.button("Sign…")->isEnabled());
    EXPECT_EQ(rig.button("Sign…")->accessibleDescription(), "");
    EXPECT_TRUE(textsOf(rig.place).contains("Ready to sign"));
}

TEST(ReportSigning, aReviewerWhoReadTheRoundsIsToldBeforeHeSigns) {
    SigningRig rig;
    rig.settle();
    rig.makeKey("A. Fields");
    rig.choose("Meaning of my signature", 1);
    rig.passphrase()->setText("valve and pump");
    rig.button("Sign…")->click();
    const QString told = textsOf(*rig.place.signing());
    EXPECT_TRUE(told.contains("A. Fields read or sent rounds 1, 2")) << told.toStdString();
    EXPECT_TRUE(told.contains("or sign once more")) << told.toStdString();
    EXPECT_EQ(rig.passphrase()->text(), "valve and pump") << "kept for the second press";
    EXPECT_EQ(rig.bridge.project().signedReports().size(), 0u);
    ASSERT_TRUE(rig.signAs(1, "r.pdf").ok()) << "not refused: a firm may be small";
    EXPECT_EQ(rig.bridge.project().signedReports()[0].signer, "A. Fields");
}

// What is still to do is seen first, wherever the list was scrolled to before.
TEST(ReportSigning, theListBeginsAtItsFirstOpenLine) {
    SigningRig rig;
    QScrollArea* area = nullptr;
    for (QScrollArea* candidate : rig.place.findChildren<QScrollArea*>()) {
        area = candidate->isAncestorOf(rig.place.ready()) ? candidate : area;
    }
    ASSERT_NE(area, nullptr);
    area->setFixedHeight(160);
    QApplication::processEvents();
    QScrollBar& bar = *area->verticalScrollBar();
    const auto expectAtFirstOpen = [&](const char* when) {
        ASSERT_GT(bar.maximum(), 0);
        ASSERT_NE(rig.place.ready()->firstOpen(), nullptr);
        const ReadyList& list = *rig.place.ready();
        const int first = list.firstOpen()->y();
        EXPECT_EQ(bar.value(), std::min(bar.maximum(), first > 0 ? list.y() + first : 0)) << when;
    };
    bar.setValue(bar.maximum());
    ASSERT_TRUE(rig.place.ready()->giveReason(rig.lines().front().text, "agreed with the engineer"));
    QApplication::processEvents();
    expectAtFirstOpen("filled anew");
    bar.setValue(bar.maximum());
    rig.place.hide();
    rig.place.show();
    QApplication::processEvents();
    expectAtFirstOpen("opened again");
}

TEST(ReportSigning, aReasonGivenLeadsToTheNextLineThatWaitsForOne) {
    support::DemoOptions options;
    options.hasOverdueMeter = true;
    SigningRig rig(options);
    rig.place.activateWindow();
    const auto open = [&] {
        std::vector<QString> names;
        for (const balancing::SignLine& line : rig.lines()) {
            if (line.state == SignState::NeedsReason) {
                names.push_back("Reason: " + text::text(line.text));
            }
        }
        return names;
    };
    const std::vector<QString> before = open();
    ASSERT_GE(before.size(), 2U);
    for (std::size_t given = 0; given < before.size(); ++given) {
        QLineEdit* field = nullptr;
        for (QLineEdit* edit : rig.place.findChildren<QLineEdit*>()) {
            field = edit->isVisible() && edit->accessibleName() == before[given] ? edit : field;
        }
        ASSERT_NE(field, nullptr) << before[given].toStdString();
        if (given == 0) {
            field->setFocus();
        }
        ASSERT_EQ(QApplication::focusWidget(), field) << "after " << given << " reasons";
        QTest::keyClicks(field, "agreed with the engineer");
        QTest::keyClick(field, Qt::Key_Return);
        QApplication::processEvents();
        ASSERT_EQ(open().size(), before.size() - given - 1);
    }
    // With none left the keys stay with the last.
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), before.back());
}

TEST(ReportSigning, whatStandsWithAReasonHasNoTick) {
    using ww::report::Mark;
    SigningRig rig;
    const base::Fault line = rig.lines().front().text;
    ASSERT_EQ(rig.lines().front().state, SignState::NeedsReason);
    const auto mark = [&]() -> std::optional<Mark> {
        QApplication::processEvents();
        for (const QLabel* words : rig.place.ready()->findChildren<QLabel*>()) {
            if (words->isVisible() && words->text() == text::text(line)) {
                return words->parentWidget()->findChild<MarkShape*>()->mark();
            }
        }
        return std::nullopt;
    };
    EXPECT_EQ(mark(), Mark::Open);
    ASSERT_TRUE(rig.place.ready()->giveReason(line, "kept on paper"));
    EXPECT_EQ(mark(), Mark::None) << "its words still say what is missing";
}

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
        overdue += line.state == SignState::NeedsReason &&
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
    rig.makeKey("S. Weir");
    ASSERT_TRUE(rig.signAs(1, "r.pdf").ok()) << textsOf(rig.place).toStdString();
    EXPECT_FALSE(textsOf(rig.place).contains("Next the")) << "both have signed";
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
