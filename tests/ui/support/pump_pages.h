// The place Pump on a job whose loop can be solved.
#pragma once

#include <gtest/gtest.h>

#include "tests/ui/support/pump_rig.h"
#include "ui/places/pump/pump_place.h"

namespace ww::support {

/// The place on a job with losses, so that its loop can be solved.
class PumpPages : public testing::Test {
  protected:
    void SetUp() override {
        project::Project job = support::demoProject();
        for (project::Branch branch :
             std::vector<project::Branch>(job.branches().begin(), job.branches().end())) {
            const auto loss = [](const char* kilopascals) {
                return quantity::measured<quantity::PressureDifference>(*base::Decimal::parse(kilopascals),
                                                                        quantity::Unit::Kilopascal);
            };
            branch.runLoss = loss("4");
            branch.circuitLoss = loss(branch.parent ? "20" : "6");
            job.put(branch);
        }
        project::Pump pump = job.pumps()[0];
        for (project::PumpTableRow& row : pump.rows) {
            row.efficiency =
                quantity::measured<quantity::Ratio>(*base::Decimal::parse("62"), quantity::Unit::Percent);
        }
        job.put(pump);
        m_rig.open(job);
        ASSERT_TRUE(m_rig.bridge.openRound(project::RoundKind::Adjusting).ok());
        m_place.setTokens(ui::theme::tokens(ui::theme::Display::Daylight));
        m_place.setMetrics(ui::theme::metrics(10, false));
        m_place.resize(1254, 606);
        m_place.show();
        ASSERT_TRUE(m_rig.waitForPumps());
    }

    template <class Page>
    Page& page(ui::PumpPlace::Page which) {
        m_place.showPage(which);
        QTest::qWait(0);
        return dynamic_cast<Page&>(*m_place.page(which));
    }
    const project::Project& job() const { return m_rig.bridge.project(); }
    const project::PumpReading* reading(project::PumpPoint point) const {
        const project::PumpReading* found = nullptr;
        for (const project::PumpReading& one : job().pumpReadings()) {
            if (one.point == point && one.status == project::ReadingStatus::Standing &&
                one.round == job().lastRound()->id) {
                found = &one;
            }
        }
        return found;
    }

    Rig m_rig;
    ui::PumpPlace m_place{m_rig.bridge, m_rig.pumps, m_rig.rounds};
};

}  // namespace ww::support
