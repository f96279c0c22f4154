// A window in whose job a round waits for its review. Not for a desk where rounds are walked (desk_window.h).
#pragma once

#include <gtest/gtest.h>

#include <QListWidget>
#include <QPushButton>

#include "core/balancing/review_steps.h"
#include "tests/ui/support/desk_window.h"
#include "ui/places/review/review_place.h"

namespace ww::support {

/// A desk whose second round was read, closed and sent, and a supervisor in the job.
class ReviewDesk : public DeskWindow {
  public:
    explicit ReviewDesk(bool isSent = true) : DeskWindow({.terminals = 6}) {
        project::Person boss;
        boss.id = bridge().newId();
        boss.name = "K. Moor";
        boss.role = project::PersonRole::Supervisor;
        EXPECT_TRUE(bridge().apply({"supervisor", {boss}, {}, true}).ok());
        m_boss = boss.id;
        int index = 0;
        for (const project::Reading& reading :
             std::vector<project::Reading>(project().readings().begin(), project().readings().end())) {
            // Two valves read otherwise than in the survey, the rest digit for digit the same.
            const bool isChanged = index == 1 || index == 4;
            const double dp = reading.dp->digits.value() * (isChanged ? 1.1 : 1.0);
            const std::string digits =
                isChanged ? base::Decimal::fromNumber(dp, 1).text() : reading.dp->digits.text();
            EXPECT_TRUE(bridge().storeDp(reading.branch, QString::fromStdString(digits)).ok());
            ++index;
        }
        EXPECT_TRUE(bridge().closeRound().ok());
        if (isSent) {
            send();
        }
    }
    void send() {
        actAs(false);
        const auto edit =
            balancing::sendRound(project(), project().lastRound()->id, bridge().reviewContext());
        ASSERT_TRUE(edit.ok());
        ASSERT_TRUE(bridge().apply(*edit).ok());
    }
    void actAs(bool isSupervisor) {
        bridge().setPerson(isSupervisor ? std::optional(m_boss) : std::optional(project().people()[0].id));
    }
    ui::ReviewPlace& review() {
        window.showPlace(ui::MainWindow::Review);
        QCoreApplication::processEvents();
        return *window.findChild<ui::ReviewPlace*>();
    }
    QPushButton* button(const QString& text) {
        for (QPushButton* found : window.findChildren<QPushButton*>()) {
            if (found->text() == text && found->isVisible()) {
                return found;
            }
        }
        ADD_FAILURE() << "no button " << text.toStdString();
        return nullptr;
    }
    project::RoundState state() { return project().lastRound()->state; }
    base::Id branch(const std::string& tag) { return project().branchTagged(tag)->id; }
    void comment(const std::string& tag, const QString& text) {
        ui::ReviewPlace& place = review();
        place.showBranch(branch(tag));
        key(Qt::Key_C, Qt::ControlModifier | Qt::AltModifier);
        type(text);
        key(Qt::Key_Return);
    }

  private:
    base::Id m_boss;
};

}  // namespace ww::support
