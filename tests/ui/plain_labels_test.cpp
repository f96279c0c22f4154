// Text of a job is never taken for markup: a note from a stranger's file may hold anything.

#include "ui/plain_labels.h"

#include <gtest/gtest.h>

#include <QHelpEvent>
#include <QLabel>
#include <QToolTip>

#include "tests/ui/support/desk_window.h"
#include "ui/widgets/quiet_combo.h"

namespace ww::ui {
namespace {

TEST(PlainLabels, noLabelGuessesWhatItsTextIs) {
    support::DeskWindow desk;
    for (int place = MainWindow::Job; place <= MainWindow::Report; ++place) {
        desk.window.showPlace(static_cast<MainWindow::Place>(place));
        QTest::qWait(0);
        for (const QLabel* label : desk.window.findChildren<QLabel*>()) {
            EXPECT_TRUE(!label->isVisible() || label->textFormat() != Qt::AutoText)
                << label->objectName().toStdString() << " " << label->text().toStdString();
        }
    }
}

TEST(PlainLabels, richLabelsHoldNoTextOfTheJob) {
    support::DeskWindow desk;
    project::Job job = desk.project().job();
    job.name = "<u>job</u>";
    ASSERT_TRUE(desk.bridge().apply({"name", {job}, {}, true}).ok());
    std::vector<project::AnyRecord> branches;
    for (project::Branch branch : desk.project().branches()) {
        branch.tag = "<u>" + branch.tag + "</u>";
        branch.serves = "<u>" + branch.serves + "</u>";
        branches.emplace_back(branch);
    }
    ASSERT_TRUE(desk.bridge().apply({"<u>label</u>", branches, {}, true}).ok());
    for (int place = MainWindow::Job; place <= MainWindow::Report; ++place) {
        desk.window.showPlace(static_cast<MainWindow::Place>(place));
        QTest::qWait(0);
        for (const QLabel* label : desk.window.findChildren<QLabel*>()) {
            EXPECT_TRUE(!label->isVisible() || label->textFormat() != Qt::RichText ||
                        !label->text().contains("<u>"))
                << label->text().toStdString();
        }
    }
}

TEST(PlainLabels, aLabelThatAsksForRichTextKeepsIt) {
    support::DeskWindow desk;
    QLabel rich("<b>12</b>", &desk.window);
    rich.setTextFormat(Qt::RichText);
    QLabel plain("<b>12</b>", &desk.window);
    rich.show();
    plain.show();
    QTest::qWait(0);
    EXPECT_EQ(rich.textFormat(), Qt::RichText);
    EXPECT_EQ(plain.textFormat(), Qt::PlainText);
}

TEST(PlainLabels, aToolTipThatRepeatsALabelIsShownWhereTheLabelIsCut) {
    support::DeskWindow desk;
    QLabel label("a word that says all of it", &desk.window);
    label.setToolTip(label.text());
    label.show();
    for (const bool isCut : {false, true}) {
        QToolTip::hideText();
        label.resize(isCut ? label.sizeHint().width() / 2 : 2 * label.sizeHint().width(), 30);
        QHelpEvent resting(QEvent::ToolTip, QPoint(5, 5), label.mapToGlobal(QPoint(5, 5)));
        QApplication::sendEvent(&label, &resting);
        EXPECT_EQ(QToolTip::text() == label.text(), isCut);
    }
    QToolTip::hideText();
}

// A menu that named "A & B" after a mark would lose the sign and have two letters under Alt.
TEST(PlainLabels, namesThatAPersonChoseMarkNoLetter) {
    support::DeskWindow desk;
    project::Branch branch = desk.project().branches().at(desk.project().branchTagged("B-01")->id);
    branch.tag = "AHU & FCU";
    ASSERT_TRUE(desk.bridge().apply({"tag of AHU & FCU", {branch}, {}, true}).ok());
    const QString undo = desk.window.commands().undo->text();
    EXPECT_TRUE(undo.contains("AHU && FCU")) << undo.toStdString();
}

TEST(QuietCombo, writesItsWordsNarrowerBeforeItCutsThem) {
    QuietCombo choice;
    choice.addItem("M-2, calibrated to 2027-03-31");
    const int wide = choice.sizeHint().width();
    choice.resize(wide + 20, choice.sizeHint().height());
    EXPECT_EQ(choice.writing().text, choice.currentText());
    EXPECT_EQ(choice.writing().font, choice.font());
    choice.resize(wide * 85 / 100, choice.height());
    EXPECT_EQ(choice.writing().text, choice.currentText()) << "whole, in narrower letters";
    EXPECT_LT(choice.writing().font.stretch(), 100);
    choice.resize(wide / 2, choice.height());
    EXPECT_NE(choice.writing().text, choice.currentText());
}

}  // namespace
}  // namespace ww::ui
