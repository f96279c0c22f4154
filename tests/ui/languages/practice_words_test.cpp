// What the program itself writes into a workbook is in the language of the desk, and nothing asks for those
// words again.
#include <gtest/gtest.h>

#include <QRegularExpression>

#include "core/practice/practice_job.h"
#include "core/report/report.h"
#include "tests/ui/languages/translation_file.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/spoken.h"
#include "ui/models/instrument_model.h"
#include "ui/practice/practice_desk.h"
#include "ui/report/paper_text.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// Every text of the records that a person would read.
QStringList textsOf(const project::Project& project) {
    std::vector<std::string> texts{project.job().name, project.job().site, project.job().client};
    for (const project::Person& person : project.people()) {
        texts.insert(texts.end(), {person.name, person.certificate, person.firm});
    }
    for (const project::Instrument& instrument : project.instruments()) {
        texts.insert(texts.end(), {instrument.tag, instrument.kind, instrument.serial});
    }
    for (const project::ValveModel& valve : project.valves()) {
        texts.insert(texts.end(), {valve.model, valve.size});
    }
    for (const project::Branch& branch : project.branches()) {
        texts.insert(texts.end(), {branch.tag, branch.serves});
    }
    for (const project::Pump& pump : project.pumps()) {
        texts.push_back(pump.tag);
    }
    QStringList read;
    for (const std::string& text : texts) {
        read << QString::fromStdString(text);
    }
    return read;
}

project::Project practiceJob(const base::Wording& wording) {
    project::Project project;
    const auto content = practice::practiceContent({practice::Difficulty::LargeFaulty, 17}, "", wording);
    for (const project::AnyRecord& record : content.put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    return project;
}

TEST(PracticeWords, areThoseOfTheDeskThatMakesTheJob) {
    const QStringList english = textsOf(practiceJob({}));
    // Codes are alike everywhere.
    static const QRegularExpression kCode(QStringLiteral("^(DN \\d+|[A-Z]{1,2}-?\\d+(-[BT]\\d+)*|)$"));
    for (const QString& code : translatedCodes()) {
        const support::Spoken spoken(code);
        const QStringList shown = textsOf(practiceJob(text::wording()));
        ASSERT_EQ(shown.size(), english.size());
        for (qsizetype i = 0; i < shown.size(); ++i) {
            EXPECT_EQ(shown[i] == english[i], kCode.match(english[i]).hasMatch())
                << code.toStdString() << ": " << shown[i].toStdString();
        }
    }
}

TEST(PracticeWords, leaveNoEnglishOnTheFirstPageOfTheReport) {
    static const QRegularExpression kEnglish(
        QStringLiteral("\\b(the|of|and|is|with|building|practice|simulated|trainee|round|coil|valve)\\b"),
        QRegularExpression::CaseInsensitiveOption);
    for (const QString& code : translatedCodes()) {
        const support::Spoken spoken(code);
        const ww::report::Report report = ww::report::build(practiceJob(text::wording()), {});
        QStringList read{QString::fromStdString(report.jobName), report::words(*report.simulated)};
        for (const std::string& line : report.titleLines) {
            read << QString::fromStdString(line);
        }
        const ww::report::Section& first = report.sections.front();
        read << report::words(first.title);
        for (const ww::report::Fact& fact : first.facts) {
            read << report::words(fact.label) << report::words(fact.value);
        }
        for (const auto& statements : {first.opening, first.statements, first.closing}) {
            for (const ww::report::Statement& statement : statements) {
                read << report::words(statement);
            }
        }
        for (const QString& words : read) {
            EXPECT_FALSE(words.contains(kEnglish)) << code.toStdString() << ": " << words.toStdString();
        }
    }
}

TEST(PracticeWords, doNotDecideWhatTheGaugesAre) {
    const support::Spoken spoken(QStringLiteral("fr"));
    support::DeskWindow desk(
        practice::practiceContent({practice::Difficulty::Steady, 17}, "", text::wording()), false);
    ASSERT_TRUE(desk.bridge().openRound(project::RoundKind::Survey).ok());
    PracticeDesk practice(desk.bridge());
    ASSERT_TRUE(practice.takeGauges().ok());
    const project::PumpReading& reading = desk.project().pumpReadings()[0];
    ASSERT_TRUE(reading.instrument.has_value());
    EXPECT_EQ(desk.project().instruments().at(*reading.instrument).tag, "G-1");
    EXPECT_TRUE(reading.gaugeRise && reading.speed) << "the building shows both";
    // Taken once more, it takes the place of what it was, and a speed that was typed stays.
    project::PumpReading typed = reading;
    typed.speed = quantity::measured<quantity::RotationalSpeed>(*base::Decimal::parse("1300"),
                                                                quantity::Unit::RevolutionPerMinute);
    ASSERT_TRUE(desk.bridge().apply({"speed", {typed}, {}, true}).ok());
    ASSERT_TRUE(practice.takeGauges().ok());
    const auto& all = desk.project().pumpReadings();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].status, project::ReadingStatus::Superseded);
    EXPECT_EQ(all[1].speed->text(), "1300 rpm");
}

TEST(PracticeWords, standInWhatIsAddedByAKey) {
    const support::Spoken spoken(QStringLiteral("de"));
    support::DeskWindow desk;
    InstrumentModel instruments(desk.bridge());
    PeopleModel people(desk.bridge());
    ASSERT_TRUE(instruments.add().ok());
    ASSERT_TRUE(people.add().ok());
    const auto& project = desk.project();
    EXPECT_EQ(project.instruments()[project.instruments().size() - 1].kind, "Δp-Messgerät");
    EXPECT_TRUE(project.people()[project.people().size() - 1].name.starts_with("Person "));
}

}  // namespace
}  // namespace ww::ui
