// Text of a job is never taken for markup: a note from a stranger's file may hold anything.

#include "ui/plain_labels.h"

#include <gtest/gtest.h>

#include <QLabel>

#include "tests/ui/support/desk_window.h"

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

}  // namespace
}  // namespace ww::ui
