// A workbook of its own with the advisors that the place Pump needs, and what a widget says. Not a main
// window.
#pragma once

#include <gtest/gtest.h>

#include <QLabel>
#include <QTest>

#include "tests/support/counting_ids.h"
#include "tests/support/demo_project.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "ui/assessed_rounds.h"
#include "ui/pump_advisor.h"

namespace ww::support {

struct Rig {
    TemporaryFolder folder;
    FixedClock clock;
    CountingIds ids{100000};
    ui::WorkbookBridge bridge{ui::Desk{clock, ids, "A. Fields", "LT-1"}};
    ui::AssessedRounds rounds{bridge};
    ui::LoopAdvisor loop{bridge};
    ui::PumpAdvisor pumps{bridge, loop};

    void open(const project::Project& project) {
        const base::Outcome made =
            bridge.create(QString::fromStdString(folder.file("job.wwj")), contentOf(project));
        ASSERT_TRUE(made.ok()) << base::english(made.fault());
    }
    /// Until the pumps of the job as it stands are computed; somebody must look at them.
    bool waitForPumps() {
        constexpr int kPatience_ms = 20000;
        const bool isThere = QTest::qWaitFor([this] { return pumps.isCurrent(); }, kPatience_ms);
        return isThere;
    }
};

/// All words that a widget shows, when what was just put there has found its place.
inline QString textsOf(const QWidget& widget) {
    QTest::qWait(150);
    QStringList texts;
    for (const QLabel* label : widget.findChildren<QLabel*>()) {
        if (label->isVisibleTo(&widget)) {
            texts << label->text();
        }
    }
    return texts.join('\n');
}

}  // namespace ww::support
