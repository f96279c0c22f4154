// The pages of a large job are made beside the screen: they come, they can be stopped, a change makes them
// anew. That a window answers while something long is computed is common practice, no source.
#include <gtest/gtest.h>

#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <algorithm>

#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/walk_job.h"
#include "tests/ui/support/pump_rig.h"
#include "ui/places/report/report_place.h"
#include "ui/report/report_writer.h"

namespace ww::ui {
namespace {

using support::textsOf;

/// A job of 600 readings on the place Report.
struct LargeRig {
    support::TemporaryFolder folder;
    support::FixedClock clock{"2026-03-05T09:00:00Z"};
    support::CountingIds ids{100000};
    WorkbookBridge bridge{Desk{clock, ids, "A. Fields", "LT-1"}};
    ReportPlace place{bridge};

    LargeRig() {
        support::WalkJobOptions options;
        options.terminals = 200;
        options.adjustingRounds = 2;
        const base::Outcome made =
            bridge.create(QString::fromStdString(folder.file("job.wwj")), support::walkJob(options));
        EXPECT_TRUE(made.ok()) << base::english(made.fault());
        place.resize(1254, 606);
        place.show();
    }
    QPushButton* button(const QString& words) const {
        for (QPushButton* candidate : place.findChildren<QPushButton*>()) {
            if (QString(candidate->text()).remove('&') == words && candidate->isVisible()) {
                return candidate;
            }
        }
        return nullptr;
    }
    int listed() const { return place.findChild<QListWidget*>()->count(); }
    bool waitForPages() const {
        return QTest::qWaitFor([&] { return listed() > 0 && button("Stop Laying Out") == nullptr; }, 60'000);
    }
};

TEST(ReportMaking, thePagesOfALargeJobComeBesideTheScreen) {
    LargeRig rig;
    EXPECT_EQ(rig.listed(), 0) << "the window does not wait for them";
    ASSERT_NE(rig.button("Stop Laying Out"), nullptr);
    // At once: a moment later they may be there.
    const QList<QLabel*> labels = rig.place.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
        return label->isVisibleTo(&rig.place) &&
               (label->text().contains("the pages follow") || label->text().contains("being laid out"));
    }));
    ASSERT_TRUE(rig.waitForPages());
    const auto pages = report::layOut(rig.place.currentReport(), rig.bridge.project());
    EXPECT_EQ(static_cast<std::size_t>(rig.listed()), pages.pages.size());
}

TEST(ReportMaking, isStoppedAndTakenUpAgain) {
    LargeRig rig;
    ASSERT_NE(rig.button("Stop Laying Out"), nullptr);
    rig.button("Stop Laying Out")->click();
    ASSERT_NE(rig.button("Lay Out the Pages"), nullptr);
    EXPECT_TRUE(textsOf(rig.place).contains("Laying out the pages was stopped."));
    QTest::qWait(300);
    EXPECT_EQ(rig.listed(), 0);
    rig.button("Lay Out the Pages")->click();
    EXPECT_TRUE(rig.waitForPages());
}

TEST(ReportMaking, aChangeMakesThemAnewAndTheOldOnesStayMeanwhile) {
    LargeRig rig;
    ASSERT_TRUE(rig.waitForPages());
    const int before = rig.listed();
    project::Edit edit;
    edit.label = "name";
    project::Job job = rig.bridge.project().job();
    job.name = "Another name";
    edit.put.emplace_back(job);
    ASSERT_TRUE(rig.bridge.apply(edit).ok());
    EXPECT_NE(rig.button("Stop Laying Out"), nullptr);
    EXPECT_EQ(rig.listed(), before);
    EXPECT_TRUE(rig.waitForPages());
}

TEST(ReportMaking, theFileHoldsThePagesShown) {
    LargeRig rig;
    ASSERT_TRUE(rig.waitForPages());
    const std::string file = rig.folder.file("draft.pdf");
    ASSERT_TRUE(rig.place.exportTo(file).ok());
    QFile written(QString::fromStdString(file));
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_EQ(written.readAll(), report::pdf(rig.place.currentReport(), rig.bridge.project()))
        << "laid out on another thread, the report is the same";
}

TEST(ReportMaking, aFileThatIsStoppedIsNotWritten) {
    LargeRig rig;
    const ww::report::Report report = rig.place.currentReport();
    for (const bool isWriting : {false, true}) {
        report::Waiting waiting;
        waiting.layingOut = [&](std::size_t pages) { return isWriting || pages < 3; };
        waiting.writing = [&](std::size_t pages) { return pages < 3; };
        const std::string file = rig.folder.file("stopped.pdf");
        const base::Outcome outcome = report::writePdf(report, rig.bridge.project(), file, waiting);
        ASSERT_FALSE(outcome.ok());
        EXPECT_TRUE(outcome.fault().is(report::kReportStopped));
        EXPECT_FALSE(std::filesystem::exists(file));
    }
}

}  // namespace
}  // namespace ww::ui
