// What keeps a report from being signed: the list of what is settled and what waits, and the reasons given
// there. The rules are this project's own.
#include <gtest/gtest.h>

#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/pump_rig.h"
#include "tests/ui/support/signing_rig.h"
#include "ui/places/job/job_place.h"
#include "ui/places/report/ready_list.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using support::SigningRig;
using support::textsOf;

TEST(ReportReadiness, isBlockedWithItsReasonsUntilEveryLineIsSettled) {
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

TEST(ReportReadiness, aReviewerWhoReadTheRoundsIsToldBeforeHeSigns) {
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

TEST(ReportReadiness, oneWhoSignedTheReadingsIsToldBeforeHeSignsTheReview) {
    SigningRig rig;
    rig.settle();
    rig.makeKey("B. Stone");
    ASSERT_TRUE(rig.signAs(0, "r.pdf").ok());
    EXPECT_FALSE(textsOf(*rig.place.signing()).contains("in the other role"));
    rig.choose("Meaning of my signature", 1);
    rig.passphrase()->setText("valve and pump");
    rig.button("Sign…")->click();
    const QString told = textsOf(*rig.place.signing());
    EXPECT_TRUE(told.contains("B. Stone signed this revision in the other role too")) << told.toStdString();
    EXPECT_EQ(rig.bridge.project().signedReports().size(), 1u);
    ASSERT_TRUE(rig.signAs(1, "r.pdf").ok()) << "not refused: a firm may be small";
    EXPECT_EQ(rig.bridge.project().signedReports().size(), 2u);
}

// What is still to do is seen first, wherever the list was scrolled to before.
TEST(ReportReadiness, theListBeginsAtItsFirstOpenLine) {
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

TEST(ReportReadiness, aReasonGivenLeadsToTheNextLineThatWaitsForOne) {
    support::DemoOptions options;
    options.hasOverdueMeter = true;
    SigningRig rig(options);
    rig.place.activateWindow();
    const auto open = [&] {
        std::vector<QString> names;
        for (const balancing::SignLine& line : rig.lines()) {
            if (line.state == balancing::SignState::NeedsReason) {
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

TEST(ReportReadiness, whatStandsWithAReasonHasNoTick) {
    using ww::report::Mark;
    SigningRig rig;
    const base::Fault line = rig.lines().front().text;
    ASSERT_EQ(rig.lines().front().state, balancing::SignState::NeedsReason);
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

TEST(ReportReadiness, aLineOfReadinessLeadsToTheList) {
    support::DeskWindow desk({.terminals = 6});
    desk.window.showPlace(MainWindow::Report);
    QCoreApplication::processEvents();
    auto* ready = desk.window.findChild<ReadyList*>();
    ASSERT_NE(ready, nullptr);
    emit ready->placeWanted(ReadyList::Target::Job);
    EXPECT_EQ(desk.window.place(), MainWindow::Job);
    const JobPlace& job = *desk.window.job();
    EXPECT_EQ(job.pages()->currentWidget(), job.readiness());
    EXPECT_TRUE(job.readiness()->isAncestorOf(QApplication::focusWidget()));
}

}  // namespace
}  // namespace ww::ui
