// A desk in the place Adjust, on a loop whose readings are computed.
#pragma once

#include <gtest/gtest.h>

#include <QElapsedTimer>

#include "tests/support/solved_job.h"
#include "tests/ui/support/desk_window.h"
#include "ui/places/adjust/adjust_place.h"

namespace ww::support {

/// A desk in Adjust on a solved loop, the first terminal in hand, what is to be learned learned.
class AdjustDesk : public ::testing::Test {
  protected:
    explicit AdjustDesk(SolvedJob job = SolvedJob(6))
        : m_job(std::move(job)), m_desk(m_job.content(), false) {
        m_desk.bridge().selectBranch(idOf("T-01"));
        m_desk.window.showPlace(ui::MainWindow::Adjust);
        settle();
    }
    ui::AdjustPlace& place() { return *m_desk.window.adjust(); }
    base::Id idOf(const std::string& tag) { return m_desk.project().branchTagged(tag)->id; }
    /// Lets the learning come to its end.
    void settle() {
        QElapsedTimer time;
        time.start();
        while (m_desk.window.advisor().isComputing() && time.elapsed() < 60'000) {
            QTest::qWait(5);
        }
        ASSERT_FALSE(m_desk.window.advisor().isComputing());
    }
    double setting() { return place().valve().setting().si(); }
    const project::Reading* newest() {
        const auto& indices = m_desk.project().readingsOf(m_desk.project().lastRound()->id);
        return &m_desk.project().readings()[indices.back()];
    }

    SolvedJob m_job;
    DeskWindow m_desk;
};

}  // namespace ww::support
