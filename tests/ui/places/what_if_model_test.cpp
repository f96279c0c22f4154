#include "ui/places/system/what_if_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <algorithm>

#include "core/balancing/assess.h"
#include "tests/support/small_loop.h"
#include "ui/places/system/what_if_bench.h"

namespace ww::ui::system {
namespace {

struct Bench {
    project::Project project = support::loop(support::lastCircuitIsIndex());
    WhatIfModel model;
    QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
    QString refusal;

    Bench() {
        QObject::connect(&model, &WhatIfModel::refused, &model, [this](const base::Fault& why) {
            refusal = QString::fromStdString(base::english(why));
        });
        model.setJob(project, balancing::assessLast(project));
    }
    QString at(int row, int column) {
        return model.data(model.index(row, column), Qt::DisplayRole).toString();
    }
};

// Flows of the fully open loop: the square law, by hand (tests/reference/prediction_test.cpp).
TEST(WhatIfModel, answersForTheLoopAsItStands) {
    Bench bench;
    EXPECT_EQ(bench.model.rowCount(), 4);
    EXPECT_EQ(bench.at(0, WhatIfModel::Tag), "T1");
    EXPECT_EQ(bench.at(0, WhatIfModel::SettingTried), "4.0");
    EXPECT_FALSE(bench.model.isTrying());
    EXPECT_TRUE(bench.model.summary().contains("100 % of full speed")) << bench.model.summary().toStdString();
}

TEST(WhatIfModel, shuttingACircuitSendsItsWaterToTheOthers) {
    Bench bench;
    const double before = bench.at(3, WhatIfModel::OfDesign).toDouble();
    ASSERT_TRUE(
        bench.model.setData(bench.model.index(0, WhatIfModel::Closed), Qt::Checked, Qt::CheckStateRole));
    EXPECT_GT(bench.at(3, WhatIfModel::OfDesign).toDouble(), before);
    EXPECT_TRUE(bench.model.isTrying());
    bench.model.reset();
    EXPECT_DOUBLE_EQ(bench.at(3, WhatIfModel::OfDesign).toDouble(), before);
}

// More resistance in a circuit than the papers say leaves less water for it: the square law.
TEST(WhatIfModel, whatTheReadingsTaughtGoesBeforeTheDesign) {
    Bench bench;
    EXPECT_FALSE(bench.model.isLearned());
    const double byDesign = bench.at(3, WhatIfModel::OfDesign).toDouble();
    const project::Branch& last = *bench.project.branchTagged(bench.at(3, WhatIfModel::Tag).toStdString());
    const double design_m3s = last.designFlow->value.si();
    balancing::Resistances learned;
    learned[last.id].circuit =
        quantity::Resistance::si(4 * last.circuitLoss->value.si() / (design_m3s * design_m3s));
    bench.model.setLearned(learned, 1);
    EXPECT_TRUE(bench.model.isLearned());
    EXPECT_LT(bench.at(3, WhatIfModel::OfDesign).toDouble(), byDesign);
    bench.model.setLearned({}, 0.9);
    EXPECT_FALSE(bench.model.isLearned());
    EXPECT_DOUBLE_EQ(bench.at(3, WhatIfModel::OfDesign).toDouble(), byDesign);
}

TEST(WhatIfModel, theBenchSaysWhatItIsComputedFrom) {
    WhatIfBench bench;
    const project::Project project = support::loop(support::lastCircuitIsIndex());
    const auto says = [&](const char* words) {
        const auto labels = bench.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(),
                           [&](const QLabel* label) { return label->text().contains(words); });
    };
    bench.setJob(project, balancing::assessLast(project));
    EXPECT_TRUE(says("Computed from design losses"));
    balancing::Resistances learned;
    learned[project.branches()[0].id].circuit = quantity::Resistance::si(1e9);
    bench.setLearned(learned, 1);
    EXPECT_TRUE(says("Computed from the learned loop"));
}

TEST(WhatIfModel, whatCannotBeMeantIsRefusedAndChangesNothing) {
    Bench bench;
    EXPECT_FALSE(bench.model.setData(bench.model.index(1, WhatIfModel::SettingTried), "4.5", Qt::EditRole));
    EXPECT_TRUE(bench.refusal.contains("from 1.0 to 4.0")) << bench.refusal.toStdString();
    EXPECT_FALSE(bench.model.setData(bench.model.index(1, WhatIfModel::SettingTried), "2..5", Qt::EditRole));
    EXPECT_FALSE(bench.model.setSpeed("300"));
    EXPECT_FALSE(bench.model.setSpeed("fast"));
    EXPECT_FALSE(bench.model.isTrying());
}

TEST(WhatIfModel, aStoppedPumpIsAnAnswer) {
    Bench bench;
    ASSERT_TRUE(bench.model.setSpeed("0"));
    EXPECT_TRUE(bench.model.summary().contains("No water moves")) << bench.model.summary().toStdString();
}

}  // namespace
}  // namespace ww::ui::system
