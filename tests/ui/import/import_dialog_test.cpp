// A table brought in by hand: columns matched, faults marked and mended, nothing stored before that, one step
// back. This program's own rules.
#include "ui/import/import_dialog.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QTest>
#include <QWheelEvent>
#include <algorithm>

#include "core/project/names.h"
#include "core/spreadsheet/write_spreadsheet.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/spoken.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

class ImportDialogs : public testing::Test {
  protected:
    std::unique_ptr<ImportDialog> dialog(const QString& text, const QString& file = {}) {
        auto source = pastedSource(text);
        EXPECT_TRUE(source.ok());
        auto made = std::make_unique<ImportDialog>(m_desk.bridge(), m_desk.preferences,
                                                   std::move(source).value(), file, &m_desk.window);
        made->show();
        QTest::qWait(0);
        return made;
    }
    std::string tagOf(int row) {
        return m_desk.project()
            .branches()[m_desk.project().tree().terminals()[static_cast<std::size_t>(row)]]
            .tag;
    }

    support::DeskWindow m_desk;
};

// The kind of round that readings without one are given is said as everywhere, in the list and in the rows.
TEST_F(ImportDialogs, theKindOfRoundIsSaidInTheLanguageOfTheScreen) {
    const support::Spoken spoken(QStringLiteral("de"));
    auto import = dialog("Tag\tdp [kPa]\n" + QString::fromStdString(tagOf(0)) + "\t12.5\n", "readings.csv");
    const project::Round* open = m_desk.bridge().openRoundOrNull();
    ASSERT_NE(open, nullptr);
    const QString kind = text::term(project::name(open->kind));
    ASSERT_NE(kind, QString::fromStdString(std::string(project::name(open->kind))));
    EXPECT_EQ(import->match()->sourceOf("kind")->itemText(0), kind);
    import->goOn();
    ASSERT_TRUE(import->isPreviewShown());
    const ImportModel& model = *import->model();
    int said = 0;
    for (int i = ImportModel::LeadingCount; i < model.columnCount(); ++i) {
        said += model.index(0, i).data().toString() == kind ? 1 : 0;
    }
    EXPECT_EQ(said, 1);
}

// A number that cannot be meant stays as it was typed, and says why.
TEST_F(ImportDialogs, theRowOfTheHeadingsIsTypedAsItIs) {
    auto import = dialog("Valve\tdp (kPa)\n" + QString::fromStdString(tagOf(0)) + "\t12.5\n", "readings.csv");
    EntryField& field = *import->headRow();
    EXPECT_EQ(field.text(), "1");
    field.setText("400");
    EXPECT_FALSE(field.commit());
    EXPECT_EQ(field.text(), "400");
    const auto isTold = [&] {
        const auto labels = import->findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
            return !label->isHidden() && label->text().contains("\"400\"");
        });
    };
    EXPECT_TRUE(isTold());
    field.setText("2");
    EXPECT_TRUE(field.commit());
    EXPECT_FALSE(isTold());
}

// The list of columns is scrolled with the wheel: what is matched must not change under it.
TEST_F(ImportDialogs, aWheelChangesNoChoice) {
    auto import = dialog("Valve\tdp (kPa)\n" + QString::fromStdString(tagOf(0)) + "\t12.5\n", "readings.csv");
    const auto chosen = [&] {
        QStringList all{import->headRow()->text()};
        for (const QComboBox* box : import->findChildren<QComboBox*>()) {
            all << QString::number(box->currentIndex());
        }
        return all;
    };
    const QStringList before = chosen();
    ASSERT_GT(before.size(), 3);
    QList<QWidget*> fields{import->headRow()};
    for (QComboBox* box : import->findChildren<QComboBox*>()) {
        fields << box;
    }
    for (const int turn : {120, -120}) {
        for (QWidget* field : fields) {
            QWheelEvent wheel({5, 5}, field->mapToGlobal(QPointF(5, 5)), {}, {0, turn}, Qt::NoButton,
                              Qt::NoModifier, Qt::NoScrollPhase, false);
            QApplication::sendEvent(field, &wheel);
            EXPECT_EQ(chosen(), before) << field->accessibleName().toStdString();
        }
    }
}

TEST_F(ImportDialogs, nothingIsStoredBeforeEveryRowIsSound) {
    const auto one = QString::fromStdString(tagOf(0));
    const auto two = QString::fromStdString(tagOf(1));
    const std::size_t before = m_desk.project().readings().size();
    auto import = dialog("Valve\tdp (kPa)\n" + one + "\t12.5\nNONE\t9\n" + two + "\tx1\n", "readings.csv");
    const QAbstractItemModelTester tester(import->model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_TRUE(import->nextButton()->isEnabled()) << import->status().toStdString();
    import->goOn();
    ASSERT_TRUE(import->isPreviewShown());
    ImportModel& model = *import->model();
    EXPECT_EQ(model.rowCount(), 3);
    EXPECT_EQ(model.faultyRowCount(), 2);
    EXPECT_TRUE(model.faultOf(1).contains("NONE")) << model.faultOf(1).toStdString();
    EXPECT_FALSE(import->nextButton()->isEnabled());
    import->goOn();
    EXPECT_EQ(m_desk.project().readings().size(), before);

    model.setLeftOut(1, true);
    EXPECT_EQ(model.faultyRowCount(), 1);
    int column = -1;
    for (int i = ImportModel::LeadingCount; i < model.columnCount(); ++i) {
        column = model.headerData(i, Qt::Horizontal, Qt::DisplayRole).toString() == "DP [kPa]" ? i : column;
    }
    ASSERT_TRUE(model.setData(model.index(2, column), "7.25", Qt::EditRole));
    EXPECT_EQ(model.faultyRowCount(), 0);
    ASSERT_TRUE(import->nextButton()->isEnabled()) << import->status().toStdString();
    import->goOn();
    EXPECT_EQ(import->result(), QDialog::Accepted);
    EXPECT_EQ(m_desk.project().readings().size(), before + 2);
    EXPECT_EQ(m_desk.stored(one.toStdString()), "12.5 kPa");
    EXPECT_EQ(m_desk.stored(two.toStdString()), "7.25 kPa");
    ASSERT_TRUE(m_desk.bridge().undo().ok());
    EXPECT_EQ(m_desk.project().readings().size(), before);
}

TEST_F(ImportDialogs, asksForAUnitAndRemembersTheColumnsOfAJob) {
    const QString text = "where\tp\n" + QString::fromStdString(tagOf(0)) + "\t12.5\n";
    auto first = dialog(text, "readings.csv");
    EXPECT_FALSE(first->nextButton()->isEnabled());
    EXPECT_TRUE(first->status().contains("Tag")) << first->status().toStdString();
    first->match()->sourceOf("tag")->setCurrentIndex(1);
    first->match()->sourceOf("dp")->setCurrentIndex(2);
    EXPECT_FALSE(first->nextButton()->isEnabled());
    QComboBox* unit = first->match()->unitOf("dp");
    unit->setCurrentIndex(unit->findData(static_cast<int>(quantity::Unit::Kilopascal)));
    EXPECT_TRUE(first->nextButton()->isEnabled());
    first->goOn();
    first->reject();

    const auto second = dialog(text, "readings.csv");
    EXPECT_TRUE(second->nextButton()->isEnabled()) << second->status().toStdString();
    EXPECT_EQ(second->match()->sourceOf("dp")->currentText(), "p");
    EXPECT_EQ(second->match()->unitOf("dp")->currentText(), "kPa");
}

TEST_F(ImportDialogs, saysWhatIsWrongFirstAndInTheWordsOfTheDesk) {
    const auto import = dialog("tag\tparent\tdesign_flow[L/s]\nN1\tN9\t0.5\n");
    import->goOn();
    const ImportModel& model = *import->model();
    QStringList heads;
    for (int column = 0; column < model.columnCount(); ++column) {
        heads << model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        EXPECT_FALSE(heads.back().contains('_')) << heads.back().toStdString();
    }
    EXPECT_EQ(heads.indexOf("What is wrong; what to do"), int(ImportModel::Fault));
    EXPECT_TRUE(heads.contains("Design flow [L/s]")) << heads.join(", ").toStdString();
    EXPECT_TRUE(heads.contains("Fed by")) << heads.join(", ").toStdString();
    EXPECT_TRUE(model.faultOf(0).startsWith("Fed by: ")) << model.faultOf(0).toStdString();
}

TEST_F(ImportDialogs, countsNoRowsOfAWalkSheetThatWereLeftBlank) {
    const auto one = QString::fromStdString(tagOf(0));
    const auto two = QString::fromStdString(tagOf(1));
    const auto import =
        dialog("tag\tsetting_now\tdp[kPa]\n" + one + "\t4\t12.5\n" + two + "\t4\t\n", "readings.csv");
    import->goOn();
    EXPECT_EQ(import->model()->rowCount(), 2);
    EXPECT_EQ(import->model()->takenRowCount(), 1);
    EXPECT_TRUE(import->model()->isLeftBlank(1));
    EXPECT_TRUE(import->nextButton()->text().contains('1')) << import->nextButton()->text().toStdString();
    const std::size_t before = m_desk.project().readings().size();
    import->goOn();
    EXPECT_EQ(m_desk.project().readings().size(), before + 1);
}

TEST_F(ImportDialogs, guessesWhatTheRowsAreAndLeavesOutTheFaulty) {
    const auto import = dialog("tag\tparent\tdesign_flow[L/s]\nN1\t\t0.5\nN2\tN9\t0.5\nN3\tN2\t0.5\n");
    EXPECT_EQ(import->tableChoice()->currentData().toString(), "branches.csv");
    import->goOn();
    EXPECT_EQ(import->model()->faultyRowCount(), 1);
    import->model()->leaveOutFaulty();
    EXPECT_EQ(import->model()->takenRowCount(), 1);
    const std::size_t before = m_desk.project().branches().size();
    import->goOn();
    EXPECT_EQ(m_desk.project().branches().size(), before + 1);
}

TEST_F(ImportDialogs, fitsSmallScreensAndKeysReachEverything) {
    const auto import = dialog("tag\tparent\tdesign_flow[L/s]\nN1\t\t0.5\n");
    EXPECT_LE(import->minimumSizeHint().width(), 1200);
    EXPECT_LE(import->minimumSizeHint().height(), 620);
    import->goOn();
    EXPECT_LE(import->minimumSizeHint().height(), 620);
    EXPECT_FALSE(import->backButton()->isHidden());
    import->goBack();
    EXPECT_FALSE(import->isPreviewShown());
    for (const QWidget* widget : import->findChildren<QWidget*>()) {
        if (qobject_cast<const QComboBox*>(widget) != nullptr ||
            qobject_cast<const QPushButton*>(widget) != nullptr) {
            EXPECT_NE(widget->focusPolicy(), Qt::NoFocus) << widget->metaObject()->className();
        }
    }
}

TEST_F(ImportDialogs, readsEverySheetOfASpreadsheet) {
    spreadsheet::WrittenSheet notes;
    notes.name = "Notes";
    notes.rows = {{std::string("tag"), std::string("of nothing")}};
    spreadsheet::WrittenSheet walk;
    walk.name = "Walk";
    walk.rows = {{std::string("tag"), std::string("dp[kPa]")}, {tagOf(0), *base::Decimal::parse("3.50")}};
    const std::string file = m_desk.folder.file("walk.xlsx");
    ASSERT_TRUE(spreadsheet::writeSpreadsheet({notes, walk}, file));
    auto source = readImportSource(QString::fromStdString(file));
    ASSERT_TRUE(source.ok());
    ASSERT_EQ(source->sheets.size(), 2U);
    ImportDialog import(m_desk.bridge(), m_desk.preferences, std::move(source).value(), {}, &m_desk.window);
    import.sheetChoice()->setCurrentIndex(1);
    EXPECT_EQ(import.tableChoice()->currentData().toString(), "readings.csv");
    import.goOn();
    import.goOn();
    EXPECT_EQ(m_desk.stored(tagOf(0)), "3.50 kPa");
    EXPECT_FALSE(readImportSource(QString::fromStdString(m_desk.folder.file("none.xlsx"))).ok());
    const auto pasted = pastedSource("  \n");
    ASSERT_FALSE(pasted.ok());
    EXPECT_EQ(text::text(pasted.fault()),
              "Nothing was pasted: there is no row to paste; copy rows with their headings in the "
              "spreadsheet first.");
}

}  // namespace
}  // namespace ww::ui
