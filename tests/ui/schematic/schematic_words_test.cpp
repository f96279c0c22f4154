// What is written on the one-line diagram and in its key. That words are no smaller than the text of the
// display is a decision of this project; no meaning by a shape alone: WCAG 2.2, 1.4.1.
#include <gtest/gtest.h>

#include <QApplication>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QTest>

#include "core/balancing/assess.h"
#include "tests/support/demo_project.h"
#include "tests/ui/support/written_runs.h"
#include "ui/schematic/schematic_key.h"
#include "ui/schematic/schematic_view.h"
#include "ui/text/words.h"

namespace ww::ui::schematic {
namespace {

BranchPicture pictured() {
    BranchPicture picture;
    picture.tag = "B-05";
    picture.share = "113 %";
    picture.setting = "2.5";
    return picture;
}

TEST(SchematicWords, lessIsWrittenWhereThereIsLessRoom) {
    const QFont font = QApplication::font();
    const QFontMetricsF metrics(font);
    const double line = metrics.capHeight() + metrics.descent();
    const double tag = metrics.horizontalAdvance("B-05");
    const double all = metrics.horizontalAdvance("B-05  113 %  at 2.5");
    const auto written = [&](double width, double height, bool isStacked) {
        const auto words = wordsOf(pictured(), {width, height}, isStacked, font);
        return !words           ? QString("nothing")
               : words->isBelow ? words->tag + '/' + words->rest
                                : words->tag + '|' + words->rest;
    };
    const double both = line + metrics.height();
    EXPECT_EQ(written(all + 2, both, true), "B-05/113 %  at 2.5");
    EXPECT_EQ(written(all + 2, line, true), "B-05|113 %  at 2.5");
    EXPECT_EQ(written(all + 2, both, false), "B-05|113 %  at 2.5");
    EXPECT_EQ(written(metrics.horizontalAdvance("113 %") + 1, both, true), "B-05/113 %");
    EXPECT_EQ(written(tag + 1, line, true), "B-05|");
    EXPECT_EQ(written(0.85 * tag, line, true), "B-05|") << "in narrower letters";
    EXPECT_EQ(written(0.5 * tag, line, true), "nothing");
    EXPECT_EQ(written(all, 0.9 * line, true), "nothing") << "never lower than its letters";
}

class SchematicText : public testing::TestWithParam<double> {};

TEST_P(SchematicText, isNeverSmallerThanThatOfTheDisplay) {
    const project::Project project = support::demoProject();
    SchematicView view;
    QFont font = QApplication::font();
    font.setPointSizeF(GetParam());
    view.setFont(font);
    view.resize(1200, 400);
    view.show(project, balancing::assessLast(project));
    const int least = QFontInfo(font).pixelSize();
    double zoom = 0.2;
    bool isTagWritten = false;
    for (view.zoomBy(zoom / view.transform().m11()); zoom < 4; zoom *= 1.3, view.zoomBy(1.3)) {
        const auto smallest = support::smallestWritten(view);
        EXPECT_TRUE(!smallest || *smallest >= least - 0.5) << zoom << ": " << smallest.value_or(0);
        isTagWritten = isTagWritten || smallest.has_value();
    }
    EXPECT_TRUE(isTagWritten);
    view.fit();
    EXPECT_TRUE(support::smallestWritten(view).has_value()) << "a small loop is fitted so that it is read";
}

INSTANTIATE_TEST_SUITE_P(Points, SchematicText, testing::Values(10.0, 11.0, 14.0, 20.0));

TEST(SchematicKey, hasAWordForEveryShapeOfTheDrawingAndNoOther) {
    const project::Project project = support::demoProject();
    const balancing::Assessment last = balancing::assessLast(project);
    SchematicKey key;
    key.show(drawingOf(project, last));
    for (const balancing::BranchResult& result : last.branches) {
        EXPECT_TRUE(key.words().contains(text::word(result))) << text::word(result).toStdString();
    }
    EXPECT_TRUE(key.words().contains("open part of a valve"));
    EXPECT_TRUE(key.words().contains("index circuit, * its end"));
    QStringList once = key.words();
    once.removeDuplicates();
    EXPECT_EQ(once, key.words());
    // Before anything is read no state but one is drawn, and no index circuit.
    project::Project unread;
    project::Branch branch = project.branches()[0];
    branch.parent.reset();
    branch.valve.reset();
    unread.put(branch);
    key.show(drawingOf(unread, balancing::assessLast(unread)));
    EXPECT_EQ(key.words(), (QStringList{"Not read", "unit", "pump"}));
    EXPECT_EQ(key.accessibleDescription(), "Not read; unit; pump");
}

TEST(SchematicKey, isAsHighAsItsWordsAsk) {
    const project::Project project = support::demoProject();
    SchematicKey key;
    key.show(drawingOf(project, balancing::assessLast(project)));
    key.resize(2000, 10);
    key.QWidget::show();
    QTest::qWait(0);
    const int oneLine = key.height();
    key.resize(std::max(200, key.minimumSizeHint().width()), 10);
    QTest::qWait(0);
    EXPECT_GT(key.height(), 2 * oneLine);
    QStringList written;
    for (const QString& run : support::writtenRuns(key)) {
        written << run.split(' ', Qt::SkipEmptyParts);
    }
    for (const QString& words : key.words()) {
        for (const QString& word : words.split(' ')) {
            EXPECT_TRUE(written.contains(word)) << word.toStdString();
        }
    }
}

}  // namespace
}  // namespace ww::ui::schematic
