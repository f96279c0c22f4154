// The pages of the place Job. The source of these checks is the
// interaction design of this project.
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QImage>
#include <QPushButton>
#include <QTabBar>

#include "tests/ui/support/desk_window.h"
#include "ui/models/instrument_model.h"
#include "ui/places/job/job_place.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

TEST(JobPages, theUsualReadinessGatesTheSurveyUntilItIsDoneOrOverruled) {
    DeskWindow desk({.terminals = 3, .hasSurvey = false}, false);
    desk.window.showPlace(MainWindow::Job);
    auto* job = desk.window.findChild<JobPlace*>();
    job->pages()->setCurrentWidget(job->readiness());
    for (QPushButton* button : job->readiness()->findChildren<QPushButton*>()) {
        if (button->text() == "Take Usual List") {
            button->click();
        }
    }
    const int count = job->readiness()->model()->rowCount();
    ASSERT_GT(count, 8);
    EXPECT_FALSE(desk.bridge().openRound(project::RoundKind::Survey).ok());
    EXPECT_FALSE(desk.bridge().openRound(project::RoundKind::Survey, "A. Fields: in a hurry").ok());
    RecordTableModel* model = job->readiness()->model();
    EXPECT_FALSE(model->store(model->index(0, ReadinessPage::State), "maybe").ok());
    for (int row = 0; row < count; ++row) {
        ASSERT_TRUE(model->store(model->index(row, ReadinessPage::State), "done").ok());
    }
    EXPECT_EQ(model->index(0, ReadinessPage::Date).data().toString(), "2026-03-02");
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(model->index(count - 1, ReadinessPage::State).data().toString(), "open");
    ASSERT_TRUE(model->store(model->index(count - 1, ReadinessPage::State), "does not").ok());
    EXPECT_TRUE(desk.bridge().openRound(project::RoundKind::Survey).ok());
    const QAbstractItemModelTester tester(model);
}

TEST(JobPages, F6AndCtrlTabGoRoundTheParts) {
    DeskWindow desk({.terminals = 3}, false);
    desk.window.showPlace(MainWindow::Job);
    const JobPlace& job = *desk.window.job();
    const QWidget* name = job.field(JobField::Name);
    ASSERT_EQ(QApplication::focusWidget(), name);
    for (const bool isF6 : {true, false}) {
        QList<const QWidget*> way;
        constexpr int kMost = 20;
        do {
            desk.key(isF6 ? Qt::Key_F6 : Qt::Key_Tab, isF6 ? Qt::NoModifier : Qt::ControlModifier);
            way << QApplication::focusWidget();
        } while (way.back() != name && way.size() < kMost);
        EXPECT_EQ(way.back(), name) << "comes back";
        EXPECT_TRUE(way.contains(job.pages()->tabBar()));
        EXPECT_TRUE(way.contains(support::named<EntryTable>(job, "Instruments")));
        EXPECT_TRUE(way.contains(support::named<EntryTable>(job, "People")));
    }
}

TEST(JobPages, aTableWithoutRowsSaysWhyNothingIsRemoved) {
    DeskWindow desk({.terminals = 3}, false);
    desk.window.showPlace(MainWindow::Job);
    const auto button = [&](const char* words) {
        for (QPushButton* each : desk.window.job()->findChildren<QPushButton*>()) {
            if (each->text() == words) {
                return each;
            }
        }
        return static_cast<QPushButton*>(nullptr);
    };
    QPushButton* removal = button("Remove Person");
    EntryTable* people = support::named<EntryTable>(*desk.window.job(), "People");
    while (people->model()->rowCount() > 0) {
        people->setCurrentIndex(people->model()->index(0, 0));
        ASSERT_TRUE(removal->isEnabled());
        const int before = people->model()->rowCount();
        removal->click();
        ASSERT_LT(people->model()->rowCount(), before);
    }
    EXPECT_FALSE(removal->isEnabled());
    EXPECT_FALSE(removal->toolTip().isEmpty());
    EXPECT_EQ(removal->accessibleDescription(), removal->toolTip());
    button("Add Person")->click();
    EXPECT_TRUE(removal->isEnabled());
    EXPECT_TRUE(removal->toolTip().isEmpty());
}

TEST(JobPages, theUsualAgeOfAReadingIsShownWhereNoneIsTyped) {
    DeskWindow desk({.terminals = 3}, false);
    desk.window.showPlace(MainWindow::Job);
    EXPECT_EQ(desk.window.job()->field(JobField::ReadingAgeLimit)->text(), "");
    EXPECT_EQ(desk.window.job()->field(JobField::ReadingAgeLimit)->hint(), "30");
}

TEST(JobPages, aRefusedTextOfAFieldStaysWhileTheJobChanges) {
    DeskWindow desk({.terminals = 3}, false);
    desk.window.showPlace(MainWindow::Job);
    EntryField* field = desk.window.job()->field(JobField::Temperature);
    field->setFocus();
    field->selectAll();
    desk.enter("12..4");
    EXPECT_TRUE(field->isRefused());
    project::Job job = desk.project().job();
    job.site = "Harbour Road";
    ASSERT_TRUE(desk.bridge().apply({"site", {job}, {}, true}).ok());
    EXPECT_EQ(field->text(), "12..4");
    EXPECT_EQ(desk.window.job()->field(JobField::Site)->text(), "Harbour Road");
    // Back from another place the message stands again where the field comes to hand.
    desk.window.commands().places[MainWindow::Report]->trigger();
    EXPECT_TRUE(desk.window.notice().contains("12..4")) << desk.window.notice().toStdString();
    desk.window.commands().places[MainWindow::Job]->trigger();
    EXPECT_EQ(field->text(), "12..4");
    field->setFocus();
    EXPECT_TRUE(desk.window.notice().contains("12..4")) << desk.window.notice().toStdString();
    desk.key(Qt::Key_Escape);
    EXPECT_FALSE(field->isTyped());
}

TEST(JobPages, aRefusedTextGoesWithTheRowThatIsTakenAway) {
    DeskWindow desk({.terminals = 3}, false);
    desk.window.showPlace(MainWindow::Job);
    PeopleModel people(desk.bridge());
    ASSERT_TRUE(people.add().ok());
    auto* table = support::named<EntryTable>(desk.window, "People");
    ASSERT_NE(table, nullptr);
    table->setFocus();
    table->beginEdit(table->model()->index(1, PeopleModel::Role));
    desk.enter("nonsense");
    ASSERT_TRUE(table->isEditing());
    desk.window.job()->field(JobField::Name)->setFocus();
    EXPECT_TRUE(table->isEditing()) << "what is refused stays";
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_EQ(table->model()->rowCount(), 1);
    EXPECT_FALSE(table->isEditing());
}

TEST(JobPages, aDeficiencyOfTheValveInHandKeepsItsPhotoSmall) {
    DeskWindow desk({.terminals = 3});
    desk.bridge().selectBranch(desk.project().branchTagged("B-02")->id);
    ASSERT_TRUE(desk.bridge().storeDp(*desk.bridge().selectedBranch(), "20.1").ok());
    desk.key(Qt::Key_Y, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(desk.window.place(), MainWindow::Job);
    ASSERT_EQ(desk.project().deficiencies().size(), 1U);
    EXPECT_EQ(desk.project().deficiencies()[0].branch, desk.project().branchTagged("B-02")->id);
    EXPECT_TRUE(desk.project().deficiencies()[0].reading.has_value());
    desk.enter("no access");
    EXPECT_EQ(desk.project().deficiencies()[0].description, "no access");

    const QString large = QString::fromStdString(desk.folder.file("ceiling.png"));
    QImage image(3200, 1000, QImage::Format_RGB32);
    image.fill(Qt::darkCyan);
    ASSERT_TRUE(image.save(large));
    DeficiencyPage* page = desk.window.findChild<JobPlace*>()->deficiencies();
    ASSERT_TRUE(page->attach(large));
    ASSERT_EQ(desk.project().attachments().size(), 1U);
    const project::Attachment& kept = desk.project().attachments()[0];
    EXPECT_EQ(kept.name, "ceiling.jpg");
    EXPECT_EQ(kept.mediaType, "image/jpeg");
    EXPECT_EQ(kept.deficiency, desk.project().deficiencies()[0].id);
    const auto& bytes = kept.content.bytes();
    const QImage small = QImage::fromData(bytes.data(), static_cast<int>(bytes.size()));
    EXPECT_EQ(small.size(), QSize(1600, 500));

    EXPECT_FALSE(page->attach(desk.bridge().file())) << "no picture";
    EXPECT_EQ(desk.project().attachments().size(), 1U);
    ASSERT_TRUE(desk.bridge().undo().ok());
    EXPECT_TRUE(desk.project().attachments().empty());
}

TEST(JobPages, rolesAreTypedByTheirFirstLetters) {
    DeskWindow desk({.terminals = 3});
    PeopleModel model(desk.bridge());
    EXPECT_TRUE(model.store(model.index(0, PeopleModel::Role), "sup").ok());
    EXPECT_EQ(desk.project().people()[0].role, project::PersonRole::Supervisor);
    EXPECT_FALSE(model.store(model.index(0, PeopleModel::Role), "chief").ok());
    EXPECT_TRUE(model.store(model.index(0, PeopleModel::Role), "").ok());
    EXPECT_EQ(desk.project().people()[0].role, project::PersonRole::Unstated);
    EXPECT_TRUE(model.store(model.index(0, PeopleModel::Certificate), "C-112").ok());
    EXPECT_EQ(desk.project().people()[0].certificate, "C-112");
    const QAbstractItemModelTester tester(&model);
}

}  // namespace
}  // namespace ww::ui
