// The place Report of a job whose rounds are accepted, with hands on its readiness and its signing.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <string>
#include <vector>

#include "core/project/review.h"
#include "tests/support/counting_ids.h"
#include "tests/support/demo_project.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "ui/places/report/report_place.h"
#include "ui/places/report/signing_panel.h"

namespace ww::support {

/// The demo job with every round accepted, in a workbook of its own, on the place Report.
struct SigningRig {
    TemporaryFolder folder;
    FixedClock clock{"2026-03-05T09:00:00Z"};
    CountingIds ids{100000};
    ui::WorkbookBridge bridge{ui::Desk{clock, ids, "A. Fields", "LT-1"}};
    ui::ReportPlace place{bridge};

    explicit SigningRig(DemoOptions options = {}) {
        project::Project project = demoProject(options);
        std::vector<project::Round> rounds(project.rounds().begin(), project.rounds().end());
        for (project::Round& round : rounds) {
            round.state = project::RoundState::Accepted;
            project.put(round);
        }
        const base::Outcome made =
            bridge.create(QString::fromStdString(folder.file("job.wwj")), contentOf(project));
        EXPECT_TRUE(made.ok()) << base::english(made.fault());
        place.resize(1254, 606);
        place.show();
        QApplication::processEvents();
    }
    std::vector<balancing::SignLine> lines() const {
        return balancing::readyToSign(bridge.project(), balancing::assessLast(bridge.project()));
    }
    /// Lists a deficiency for every terminal off design and gives every reason that is asked for.
    void settle() {
        for (const balancing::SignLine& line : lines()) {
            if (line.state == balancing::SignState::Blocks && line.branch) {
                project::Edit edit;
                edit.label = "deficiency";
                edit.put.emplace_back(
                    balancing::newDeficiency(bridge.project(), *line.branch, bridge.reviewContext()));
                ASSERT_TRUE(bridge.apply(edit).ok());
            } else if (line.state == balancing::SignState::NeedsReason) {
                ASSERT_TRUE(place.ready()->giveReason(line.text, "agreed with the engineer"));
            }
        }
        QApplication::processEvents();
    }
    void makeKey(const char* name) {
        const QString file = QString::fromStdString(folder.file(std::string(name) + ".p12"));
        ASSERT_TRUE(place.signing()->makeCertificate({name, "", 5}, "valve and pump", file).ok());
    }
    QLineEdit* passphrase() const { return field("Passphrase of the key"); }
    QLineEdit* field(const char* name) const {
        for (QLineEdit* edit : place.findChildren<QLineEdit*>()) {
            if (edit->accessibleName() == name) {
                return edit;
            }
        }
        return nullptr;
    }
    QPushButton* button(const char* words) const {
        for (QPushButton* button : place.findChildren<QPushButton*>()) {
            if (button->text().remove('&') == words) {
                return button;
            }
        }
        return nullptr;
    }
    void choose(const char* combo, int index) {
        for (QComboBox* box : place.findChildren<QComboBox*>()) {
            if (box->accessibleName() == combo) {
                box->setCurrentIndex(index);
            }
        }
    }
    QComboBox* combo(const char* name) const {
        for (QComboBox* box : place.findChildren<QComboBox*>()) {
            if (box->accessibleName() == name) {
                return box;
            }
        }
        return nullptr;
    }
    base::Outcome signAs(int meaning, const std::string& file, const char* words = "valve and pump") {
        choose("Meaning of my signature", meaning);
        passphrase()->setText(words);
        return place.signing()->signInto(folder.file(file));
    }
};

}  // namespace ww::support
