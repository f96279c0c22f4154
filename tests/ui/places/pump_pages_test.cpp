// The pages of the place Pump: what is typed is stored and undone, and what is shown is what core computed.

#include <gtest/gtest.h>

#include <QApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QTest>

#include "core/balancing/pump_doubts.h"
#include "core/project/names.h"
#include "core/report/pump_sections.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/pump_pages.h"
#include "ui/job_files.h"
#include "ui/places/pump/code_page.h"
#include "ui/places/pump/curves_page.h"
#include "ui/places/pump/data_page.h"
#include "ui/places/pump/decision_page.h"
#include "ui/places/pump/device_page.h"
#include "ui/places/pump/pressure_page.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/pump/results_page.h"
#include "ui/places/pump/section_page.h"
#include "ui/places/pump/set_point_page.h"
#include "ui/places/pump/test_page.h"
#include "ui/places/pump/zone_page.h"

namespace ww::ui {
namespace {

using project::PumpPoint;
using support::PumpPages;
using support::textsOf;

enum TestRow { Suction, Discharge, Rise, Speed, Throttle, Flow, Volts, VoltsSecond, VoltsThird, Amps };
enum TestColumn { Off = 1, Shutoff, FullOpen, Throttled, Final };

TEST_F(PumpPages, testSheetStoresWhatIsTyped) {
    auto& test = page<TestPage>(PumpPlace::Test);
    const auto type = [&](int row, int column, const char* text) {
        return test.model()->store(test.model()->index(row, column), text).ok();
    };
    ASSERT_TRUE(type(Suction, FullOpen, "21 psi"));
    ASSERT_TRUE(type(Discharge, FullOpen, "2.5 bar"));
    ASSERT_TRUE(type(Speed, FullOpen, "1450"));
    ASSERT_TRUE(type(Volts, FullOpen, "400"));
    ASSERT_TRUE(type(VoltsSecond, FullOpen, "402"));
    ASSERT_TRUE(type(VoltsThird, FullOpen, "398"));
    ASSERT_TRUE(type(Amps, FullOpen, "1,4"));
    const project::PumpReading* stored = reading(PumpPoint::FullOpen);
    ASSERT_NE(stored, nullptr);
    EXPECT_EQ(stored->suction->text(), "21 psi");
    EXPECT_EQ(stored->discharge->text(), "2.5 bar");
    EXPECT_EQ(stored->voltsThird->text(), "398 V");
    EXPECT_EQ(stored->amps->text(), "1.4 A");
    EXPECT_EQ(test.model()->index(Suction, FullOpen).data().toString(), QString("21\u00A0psi"));
    // A value that is added completes the reading; one that is changed supersedes it.
    const std::size_t before = job().pumpReadings().size();
    ASSERT_TRUE(type(Speed, FullOpen, "1455"));
    EXPECT_EQ(job().pumpReadings().size(), before + 1);
    EXPECT_TRUE(reading(PumpPoint::FullOpen)->supersedes.has_value());
    ASSERT_TRUE(m_rig.bridge.undo().ok());
    EXPECT_EQ(job().pumpReadings().size(), before);
    EXPECT_EQ(reading(PumpPoint::FullOpen)->speed->text(), "1450 rpm");
}

// Typed at the table, as a hand does it.
TEST_F(PumpPages, anOddReadingOfTheTestIsStoredAndSaid) {
    auto& test = page<TestPage>(PumpPlace::Test);
    std::vector<base::Fault> said;
    QObject::connect(&m_rig.bridge, &WorkbookBridge::messageRaised, &test,
                     [&](const base::Fault& fault) { said.push_back(fault); });
    const auto type = [&](int row, int column, const char* text) {
        test.table()->beginEdit(test.model()->index(row, column));
        auto* editor = test.table()->findChild<QLineEdit*>();
        ASSERT_NE(editor, nullptr);
        editor->selectAll();
        QTest::keyClicks(editor, text);
        EXPECT_TRUE(test.table()->commitEdit());
    };
    type(Amps, FullOpen, "1.5");
    EXPECT_TRUE(said.empty());
    type(Amps, Final, "14");
    ASSERT_NE(reading(PumpPoint::Final), nullptr);
    EXPECT_EQ(reading(PumpPoint::Final)->amps->text(), "14 A") << "stored as typed";
    ASSERT_EQ(said.size(), 1U);
    EXPECT_TRUE(said[0].is(balancing::kPumpPointMoved)) << base::english(said[0]);
    EXPECT_NE(base::english(said[0]).find("it would be 1.4 A"), std::string::npos);
}

TEST_F(PumpPages, inANewRoundTheKeysStandInItsFirstEmptyCell) {
    auto& test = page<TestPage>(PumpPlace::Test);
    test.table()->setCurrentIndex(test.model()->index(Amps, Final));
    project::Round last = *job().lastRound();
    last.state = project::RoundState::Closed;
    ASSERT_TRUE(m_rig.bridge.apply({"round", {last}, {}, true}).ok());
    ASSERT_TRUE(m_rig.bridge.openRound(project::RoundKind::Adjusting, {}, {}).ok());
    QApplication::processEvents();
    test.show(nullptr);
    EXPECT_EQ(test.table()->currentIndex(), test.model()->index(Suction, Off));
}

TEST_F(PumpPages, testSheetRefusesWhatIsNoNumber) {
    auto& test = page<TestPage>(PumpPlace::Test);
    const auto refused = test.model()->store(test.model()->index(Suction, Final), "about 20");
    EXPECT_FALSE(refused.ok());
    EXPECT_EQ(reading(PumpPoint::Final), nullptr);
}

TEST_F(PumpPages, cautionsOfAShutoffTestStandBeforeAnythingIsTyped) {
    auto& test = page<TestPage>(PumpPlace::Test);
    EXPECT_TRUE(textsOf(test).contains("never the suction valve")) << textsOf(test).toStdString();
    project::Pump pump = job().pumps()[0];
    pump.isPositiveDisplacement = true;
    ASSERT_TRUE(m_rig.bridge.apply({"pump", {pump}, {}, true}).ok());
    EXPECT_TRUE(textsOf(test).contains("must not be made on this pump")) << textsOf(test).toStdString();
}

TEST_F(PumpPages, aShutoffReadingIsNoDuty) {
    auto& test = page<TestPage>(PumpPlace::Test);
    ASSERT_TRUE(test.model()->store(test.model()->index(Rise, Shutoff), "117").ok());
    const balancing::Assessment now = balancing::assess(job(), job().lastRound()->id);
    for (const balancing::PumpDuty& duty : now.pumps) {
        EXPECT_FALSE(duty.head.has_value());
    }
}

TEST_F(PumpPages, plateCurveAndLoadAreTyped) {
    auto& data = page<DataPage>(PumpPlace::PumpData);
    const auto fieldNamed = [&](const QString& title) {
        for (int row = 0; row < data.plateModel()->rowCount(); ++row) {
            if (data.plateModel()->index(row, 0).data().toString() == title) {
                return row;
            }
        }
        ADD_FAILURE() << title.toStdString();
        return 0;
    };
    const auto type = [&](const QString& title, const char* text) {
        return data.plateModel()->store(data.plateModel()->index(fieldNamed(title), 1), text).ok();
    };
    EXPECT_TRUE(type("Motor efficiency", "82"));
    EXPECT_TRUE(type("Suction bore", "65"));
    EXPECT_TRUE(type("Has a drive", "y"));
    EXPECT_TRUE(type("Alone guards a boiler or chiller", "yes"));
    EXPECT_FALSE(type("Motor power", "-3"));
    const project::Pump& pump = job().pumps()[0];
    EXPECT_EQ(pump.motorEfficiency->text(), "82 %");
    EXPECT_EQ(pump.suctionDiameter->text(), "65 mm");
    EXPECT_TRUE(pump.hasDrive && pump.guardsSource);

    // A point of the curve is stored when flow and head both stand.
    const std::size_t points = pump.rows.size();
    RecordTableModel& curve = *data.curve()->model();
    const int last = curve.rowCount() - 1;
    ASSERT_TRUE(curve.store(curve.index(last, 1), "18").ok());
    EXPECT_EQ(job().pumps()[0].rows.size(), points);
    ASSERT_TRUE(curve.store(curve.index(last, 2), "4.2").ok());
    ASSERT_EQ(job().pumps()[0].rows.size(), points + 1);
    EXPECT_EQ(job().pumps()[0].rows.back().head.text(), "4.2 m");
    EXPECT_FALSE(curve.store(curve.index(0, 1), "").ok());

    RecordTableModel& load = *data.load()->model();
    ASSERT_TRUE(load.store(load.index(0, 0), "1200").ok());
    ASSERT_TRUE(load.store(load.index(0, 1), "60").ok());
    ASSERT_EQ(job().job().loadRows.size(), 1U);
    EXPECT_EQ(job().job().loadRows[0].hours.text(), "1200");
    EXPECT_EQ(job().job().loadRows[0].flowFraction.text(), "60 %");
    ASSERT_TRUE(m_rig.bridge.undo().ok());
    EXPECT_TRUE(job().job().loadRows.empty());
    EXPECT_TRUE(data.addPump());
    EXPECT_EQ(job().pumps().size(), 2U);
}

TEST(PumpData, withoutAPumpNoCurveCanBeTyped) {
    support::CountingIds ids(5'000'000);
    support::DeskWindow desk(emptyJob(ids.next(), "New"), false);
    PumpPlace& pump = *desk.window.pump();
    desk.window.showPlace(MainWindow::Pump);
    pump.showPage(PumpPlace::PumpData);
    const auto* data = pump.findChild<DataPage*>();
    ASSERT_NE(data, nullptr);
    EXPECT_EQ(data->curve()->model()->rowCount(), 0);
    EXPECT_EQ(data->load()->model()->rowCount(), 1);
}

TEST_F(PumpPages, codeIsTypedAndBothFormsAreShown) {
    auto& code = page<CodePage>(PumpPlace::EnergyCode);
    code.field(JobField::CodeEdition)->setText("State Energy Code 2024");
    ASSERT_TRUE(code.field(JobField::CodeEdition)->commit());
    code.field(JobField::CodeClause)->setText("4.7.2");
    ASSERT_TRUE(code.field(JobField::CodeClause)->commit());
    EXPECT_EQ(job().job().codeEdition, "State Energy Code 2024");
    ASSERT_TRUE(m_rig.waitForPumps());
    const QString texts = textsOf(code);
    EXPECT_TRUE(texts.contains("State Energy Code 2024, 4.7.2")) << texts.toStdString();
    const auto* table = code.findChild<SectionTable*>();
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->model()->rowCount(), 3);
}

TEST_F(PumpPages, shownNumbersAreThoseOfCore) {
    auto& decision = page<DecisionPage>(PumpPlace::Decision);
    const pump_room::PumpDecision& core = m_rig.pumps.picture()->decision;
    ASSERT_EQ(core.options.size(), 3U);
    const SectionTable* options = decision.view()->tables().front();
    ASSERT_EQ(options->model()->rowCount(), 3);
    for (int row = 0; row < 3; ++row) {
        const auto& option = core.options[static_cast<std::size_t>(row)].option;
        EXPECT_NEAR(options->model()->index(row, 1).data().toString().toDouble(), option.head.si(), 0.005);
        EXPECT_NEAR(options->model()->index(row, 3).data().toString().toDouble(), option.shaft->si() / 1000,
                    0.0005);
    }
    auto& wasted = page<SectionPage>(PumpPlace::ReadAndSet);
    const auto& valves = m_rig.pumps.picture()->readAndSet.valves;
    const SectionTable* table = wasted.view()->tables().front();
    ASSERT_EQ(table->model()->rowCount(), static_cast<int>(valves.size()));
    for (std::size_t i = 0; i < valves.size(); ++i) {
        EXPECT_NEAR(table->model()->index(static_cast<int>(i), 4).data().toDouble(),
                    valves[i].readAndSet.si() / 1000, 0.05);
    }
    ASSERT_EQ(wasted.view()->charts().size(), 1U);
    const charts::ChartFigure& figure = wasted.view()->charts().front()->figure();
    EXPECT_EQ(figure.tableRows.size(), valves.size());
    for (const pump_room::ValveLeft& valve : valves) {
        const std::string left = quantity::significant(valve.readAndSet.in(quantity::Unit::Kilopascal), 3);
        EXPECT_TRUE(!valve.isIndex || figure.sentence.contains(QString::fromStdString(left + " kPa")))
            << "as the report says it: " << figure.sentence.toStdString();
    }
    m_place.toggleTable();
    EXPECT_TRUE(wasted.view()->charts().front()->isTableShown());
}

TEST_F(PumpPages, anyCircuitsPressureIsShown) {
    auto& pressure = page<PressurePage>(PumpPlace::Pressure);
    ASSERT_EQ(pressure.view()->charts().size(), 1U);
    ASSERT_GE(pressure.circuit()->count(), 7);
    pressure.circuit()->setCurrentIndex(pressure.circuit()->findText("T1"));
    emit pressure.circuit()->activated(pressure.circuit()->currentIndex());
    const charts::ChartFigure& figure = pressure.view()->charts().front()->figure();
    EXPECT_TRUE(figure.sentence.contains("T1")) << figure.sentence.toStdString();
    const auto core = pump_room::circuitOf(job(), job().branches().indexOf(job().branchTagged("T1")->id),
                                           m_rig.pumps.picture()->learned);
    const pump_room::CircuitProfile* profile = ww::report::asBuilt(job(), core);
    ASSERT_NE(profile, nullptr);
    // In steps, with a gap where the unit stands: the supply ends before it, the return begins behind it.
    ASSERT_GE(figure.lines.size(), 2U);
    const std::vector<QPointF>& supply = figure.lines[figure.lines.size() - 2].points;
    const std::vector<QPointF>& back = figure.lines.back().points;
    ASSERT_EQ(supply.size() + back.size(), 2 * profile->elements.size() + 1);
    EXPECT_EQ(supply.back().x(), back.front().x());
    EXPECT_NEAR(back.front().y(), profile->unitRunning.si() / 1000, 1e-6);
    EXPECT_GT(supply.back().y(), back.front().y());
    EXPECT_NEAR(back.back().y(), profile->elements.back().after.si() / 1000, 1e-6);
    EXPECT_TRUE(figure.sentence.contains("The valve T1 ended ")) << figure.sentence.toStdString();
}

TEST_F(PumpPages, withoutAFillPressureNoGaugePressureIsShown) {
    ASSERT_FALSE(job().job().fillPressure.has_value());
    auto& pressure = page<PressurePage>(PumpPlace::Pressure);
    const QString texts = textsOf(pressure);
    EXPECT_TRUE(texts.contains("The fill pressure is not entered")) << texts.toStdString();
    EXPECT_TRUE(texts.contains("against the fill pressure")) << texts.toStdString();
    const charts::ChartFigure& figure = pressure.view()->charts().front()->figure();
    EXPECT_TRUE(figure.sentence.contains("which is not known")) << figure.sentence.toStdString();
    EXPECT_TRUE(figure.y.title.startsWith("Pressure against fill")) << figure.y.title.toStdString();
}

// The same statement stands above the numbers of both pages, and no speed contradicts it.
TEST_F(PumpPages, whereGaugesContradictTheCurveBothPagesCountTheGauges) {
    project::Pump pump = job().pumps()[0];
    for (project::PumpTableRow& row : pump.rows) {
        row.head = quantity::measured<quantity::Head>(base::Decimal::fromNumber(1.1 * row.head.value.si(), 4),
                                                      quantity::Unit::Metre);
    }
    ASSERT_TRUE(m_rig.bridge.apply({"pump", {pump}, {}, true}).ok());
    ASSERT_TRUE(m_rig.waitForPumps());
    const auto& core = m_rig.pumps.picture()->decision;
    ASSERT_TRUE(core.curve.isThroughGauges());
    const QString stated = "The numbers here rest on the gauges of round 3";
    const QString decision = textsOf(page<DecisionPage>(PumpPlace::Decision));
    EXPECT_TRUE(decision.contains(stated)) << decision.toStdString();
    EXPECT_LT(decision.indexOf(stated), decision.indexOf("above the index circuit")) << "above the numbers";
    EXPECT_TRUE(decision.contains("from the pump's curve through the gauges of round 3"));
    const QString curves = textsOf(page<CurvesPage>(PumpPlace::Curves));
    EXPECT_TRUE(curves.contains(stated)) << curves.toStdString();
}

TEST_F(PumpPages, devicesAreTyped) {
    auto& devices = page<DevicePage>(PumpPlace::Devices);
    const QString tag = devices.model()->index(1, 0).data().toString();
    ASSERT_TRUE(devices.model()->store(devices.model()->index(1, 1), "return").ok());
    ASSERT_TRUE(devices.model()->store(devices.model()->index(1, 3), "3.5").ok());
    ASSERT_TRUE(devices.model()->store(devices.model()->index(1, 5), "12 m").ok());
    const project::Branch& branch = *job().branchTagged(tag.toStdString());
    EXPECT_EQ(branch.side, project::Side::Return);
    EXPECT_EQ(branch.upstreamDiameters->text(), "3.5");
    EXPECT_EQ(branch.elevation->text(), "12 m");
    EXPECT_FALSE(devices.model()->store(devices.model()->index(1, 3), "-1").ok());
}

TEST_F(PumpPages, setPointIsTyped) {
    auto& setPoints = page<SetPointPage>(PumpPlace::SetPoint);
    ASSERT_TRUE(setPoints.add());
    setPoints.table()->cancelEdit();
    FieldTableModel& model = *setPoints.model();
    ASSERT_EQ(model.columnCount(), 2);
    ASSERT_TRUE(model.store(model.index(5, 1), "42 kPa").ok());
    ASSERT_TRUE(model.store(model.index(6, 1), "9.6 m3/h").ok());
    ASSERT_TRUE(model.store(model.index(8, 1), "square").ok());
    EXPECT_EQ(job().setPoints()[0].dp->text(), "42 kPa");
    EXPECT_EQ(job().setPoints()[0].reset, project::ResetLaw::Square);
    ASSERT_TRUE(m_rig.waitForPumps());
    const auto* table = setPoints.findChild<SectionTable*>();
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->model()->rowCount(), 6);
    EXPECT_TRUE(textsOf(setPoints).contains("when far circuits close")) << textsOf(setPoints).toStdString();
}

TEST_F(PumpPages, aZoneIsTriedOnACopyAndKept) {
    auto& zones = page<ZonePage>(PumpPlace::Zones);
    const auto field = [&](const char* name) {
        for (QLineEdit* one : zones.findChildren<QLineEdit*>()) {
            if (one->accessibleName() == name) {
                return one;
            }
        }
        throw std::runtime_error(name);
    };
    const auto before = job().branchTagged("T1")->designFlow->text();
    field("Tag")->setText("T1");
    field("Design flow")->setText("2.4 m3/h");
    zones.changeFlow();
    ASSERT_TRUE(QTest::qWaitFor([&] { return zones.result() != nullptr; }, 20000));
    EXPECT_EQ(job().branchTagged("T1")->designFlow->text(), before);
    const QString texts = textsOf(zones);
    EXPECT_TRUE(texts.contains("any report signed on it no longer hold")) << texts.toStdString();
    const auto* table = zones.findChild<SectionTable*>();
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->model()->rowCount(), 8) << "six terminals, and the valves of two risers";
    const std::filesystem::path study = m_rig.folder.file("study.pdf");
    ASSERT_TRUE(zones.writeStudy(study).ok());
    EXPECT_GT(std::filesystem::file_size(study), 10000U);
    zones.keep();
    EXPECT_EQ(job().branchTagged("T1")->designFlow->text(), "2.4 m3/h");
    EXPECT_TRUE(zones.changes().empty());
    ASSERT_TRUE(m_rig.bridge.undo().ok());
    EXPECT_EQ(job().branchTagged("T1")->designFlow->text(), before);

    field("Tag")->setText("T9");
    field("Design flow")->setText("1 m3/h");
    field("Fed by")->setText("R2");
    field("Circuit loss")->setText("18 kPa");
    zones.addZone();
    ASSERT_TRUE(QTest::qWaitFor([&] { return zones.result() != nullptr; }, 20000));
    EXPECT_EQ(zones.result()->project.branches().size(), job().branches().size() + 1);
}

TEST_F(PumpPages, theRiserAboveANewZoneFollowsInTheSameStepAndTheNextStepIsSaid) {
    auto& zones = page<ZonePage>(PumpPlace::Zones);
    project::Branch riser = *job().branchTagged("R2");
    riser.designFlow = quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("4.2"),
                                                                quantity::Unit::CubicMetrePerHour);
    ASSERT_TRUE(m_rig.bridge.apply({"riser", {riser}, {}, true}).ok());
    const std::size_t journal = m_rig.bridge.workbook()->journal().size();
    const auto type = [&](const char* name, const char* text) {
        for (QLineEdit* one : zones.findChildren<QLineEdit*>()) {
            if (one->accessibleName() == name) {
                one->setText(text);
            }
        }
    };
    type("Tag", "T9");
    type("Design flow", "1 m3/h");
    type("Fed by", "R2");
    type("Circuit loss", "18 kPa");
    zones.addZone();
    ASSERT_TRUE(QTest::qWaitFor([&] { return zones.result() != nullptr; }, 20000));
    EXPECT_FALSE(zones.follow()->isHidden());
    EXPECT_TRUE(zones.follow()->isChecked());
    const QString texts = textsOf(zones);
    EXPECT_TRUE(QString(texts).replace(QChar(0xA0), QChar(0x20)).contains("R2 4.2 m³/h → 5.2 m³/h"))
        << texts.toStdString();
    EXPECT_EQ(zones.result()->project.branchTagged("R2")->designFlow->text(), "5.2 m3/h");
    zones.follow()->setChecked(false);
    ASSERT_TRUE(QTest::qWaitFor([&] { return zones.result() != nullptr; }, 20000));
    EXPECT_EQ(zones.result()->project.branchTagged("R2")->designFlow->text(), "4.2 m3/h");
    zones.follow()->setChecked(true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return zones.result() != nullptr; }, 20000));
    zones.keep();
    EXPECT_EQ(job().branchTagged("R2")->designFlow->text(), "5.2 m3/h");
    EXPECT_EQ(m_rig.bridge.workbook()->journal().size(), journal + 1) << "one step for undo";
    EXPECT_TRUE(zones.follow()->isHidden());
    const QString next = textsOf(zones);
    EXPECT_TRUE(next.contains("Kept as one step: add T9")) << next.toStdString();
    EXPECT_TRUE(next.contains("Next: ")) << next.toStdString();
    EXPECT_TRUE(next.contains("open a round (Ctrl+Shift+N)") || next.contains("which is open"))
        << next.toStdString();
    ASSERT_TRUE(m_rig.bridge.undo().ok());
    EXPECT_EQ(job().branchTagged("T9"), nullptr);
    EXPECT_EQ(job().branchTagged("R2")->designFlow->text(), "4.2 m3/h");
    EXPECT_FALSE(textsOf(zones).contains("Kept as one step"));
}

}  // namespace
}  // namespace ww::ui
