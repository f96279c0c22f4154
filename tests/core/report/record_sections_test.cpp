// The report's sections about the record: readiness, deficiencies, witness, review and revisions; and which
// round is the final one. What belongs into them is common practice, no source.
#include <gtest/gtest.h>

#include "core/balancing/assess.h"
#include "core/balancing/ready_to_sign.h"
#include "core/project/merge_reason.h"
#include "core/project/review.h"
#include "core/report/report.h"
#include "tests/support/demo_project.h"
#include "tests/support/review_job.h"
#include "tests/support/section_text.h"

namespace ww::report {
namespace {

using support::CountingIds;
using support::demoProject;
using support::textOf;

Report builtFrom(const project::Project& project, std::optional<int> round = {}) {
    ReportOptions options;
    options.round = round;
    options.journalDigest = std::string(64, 'b');
    return build(project, options);
}

std::string sectionText(const project::Project& project, SectionNumber number) {
    return textOf(sectionOf(builtFrom(project), number));
}

/// The demo job with a witness round 4 that reads T1 and T6 again, T1 far off.
project::Project witnessed() {
    project::Project project = demoProject();
    CountingIds ids(700);
    project::Round round;
    round.id = ids.next();
    round.number = 4;
    round.kind = project::RoundKind::Witness;
    round.state = project::RoundState::Closed;
    round.sampleSeed = *base::Decimal::parse("7");
    for (const char* tag : {"T1", "T6"}) {
        round.sample.push_back({project.branchTagged(tag)->id});
    }
    project.put(round);
    int sequence = 0;
    for (const char* tag : {"T1", "T6"}) {
        const base::Id branch = project.branchTagged(tag)->id;
        for (const std::size_t index : project.readingsOf(project.roundNumbered(3)->id)) {
            project::Reading again = project.readings()[index];
            if (again.branch != branch || again.status != project::ReadingStatus::Standing) {
                continue;
            }
            again.id = ids.next();
            again.round = round.id;
            again.sequence = ++sequence;
            again.supersedes.reset();
            if (std::string_view(tag) == "T1") {
                again.dp = quantity::measured<quantity::PressureDifference>(*base::Decimal::parse("90.0"),
                                                                            quantity::Unit::Kilopascal);
            }
            project.put(again);
        }
    }
    return project;
}

TEST(RecordSections, theFinalRoundIsTheLastThatIsNoWitnessRound) {
    const project::Project project = witnessed();
    EXPECT_EQ(project.lastRound()->number, 4);
    EXPECT_EQ(project::lastOwnRound(project)->number, 3);
    EXPECT_EQ(project::lastOwnRound(project, 2)->number, 2);
    EXPECT_EQ(balancing::assessLast(project).roundNumber, 3);
    const Report report = builtFrom(project);
    EXPECT_EQ(report.roundNumber, 3);
    EXPECT_EQ(report.rounds.size(), 3U);
    EXPECT_EQ(builtFrom(project, 4).roundNumber, 3);
    EXPECT_EQ(textOf(sectionOf(report, kFinal)), textOf(sectionOf(builtFrom(demoProject()), kFinal)));
}

TEST(RecordSections, theWitnessIsComparedWithTheFinalRoundAndItsReadingsAreListed) {
    const std::string text = sectionText(witnessed(), kWitness);
    EXPECT_NE(text.find("Round 4: Not confirmed: 1 of 2"), std::string::npos) << text;
    EXPECT_NE(text.find("seed 7"), std::string::npos) << text;
    EXPECT_NE(text.find("|NO|"), std::string::npos) << text;
    EXPECT_NE(text.find("|100.0|yes|"), std::string::npos) << text;
    EXPECT_NE(sectionText(witnessed(), kReadings).find("4|"), std::string::npos);
    EXPECT_NE(sectionText(witnessed(), kReadings).find("90.0 kPa"), std::string::npos);
    EXPECT_EQ(builtFrom(witnessed(), 2).rounds.size(), 2U);
    EXPECT_EQ(textOf(sectionOf(builtFrom(witnessed(), 2), kWitness)).find("Round 4"), std::string::npos)
        << "a witness of a later round is not of this one";
    EXPECT_NE(sectionText(demoProject(), kWitness).find("No witness round"), std::string::npos);
}

/// A job with every record of a review.
project::Project reviewed() {
    project::Project project;
    for (const project::AnyRecord& record : support::wholeJob().put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    for (const project::AnyRecord& record : support::reviewOf(project).put) {
        std::visit([&](const auto& value) { project.put(value); }, record);
    }
    return project;
}

TEST(RecordSections, everyLineOfReadinessAndEveryDeficiencyIsThere) {
    const project::Project project = reviewed();
    const std::string readiness = sectionText(project, kReadiness);
    for (const project::ReadinessLine& line : project.readiness()) {
        EXPECT_NE(readiness.find(line.text + "|"), std::string::npos) << readiness;
        EXPECT_NE(readiness.find(line.evidence), std::string::npos) << readiness;
    }
    const std::string deficiencies = sectionText(project, kDeficiencies);
    for (const project::Deficiency& deficiency : project.deficiencies()) {
        for (const std::string& part : {deficiency.description, deficiency.consequence, deficiency.trade,
                                        deficiency.remedy, deficiency.retestResult, deficiency.raisedBy}) {
            EXPECT_NE(deficiencies.find(part), std::string::npos) << part << " in " << deficiencies;
        }
    }
}

TEST(RecordSections, aPhotoIsAFigureOfItsDeficiency) {
    project::Project project = reviewed();
    ASSERT_FALSE(project.attachments().empty());
    ASSERT_FALSE(project.deficiencies().empty());
    project::Attachment photo = project.attachments()[0];
    photo.deficiency = project.deficiencies()[0].id;
    photo.mediaType = "image/jpeg";
    project.put(photo);
    const Section section = sectionOf(builtFrom(project), kDeficiencies);
    ASSERT_EQ(section.figures.size(), 1U);
    EXPECT_EQ(section.figures[0].kind, FigureKind::Photo);
    EXPECT_EQ(section.figures[0].attachment, photo.id);
    EXPECT_NE(base::english(section.figures[0].title)
                  .find("Deficiency " + std::to_string(project.deficiencies()[0].number)),
              std::string::npos);
}

TEST(RecordSections, signaturesSoFarAndWhatIsSuperseded) {
    project::Project project = reviewed();
    const Report later = builtFrom(project);
    const int highest = project.signedReports()[0].revision;
    EXPECT_EQ(later.revision, highest + 1);
    EXPECT_EQ(later.supersedes, highest);
    const std::string text = textOf(sectionOf(later, kRevisions));
    EXPECT_NE(text.find("supersedes revision " + std::to_string(highest)), std::string::npos) << text;
    EXPECT_NE(text.find("withdrawn: wrong round"), std::string::npos) << text;
    EXPECT_EQ(builtFrom(demoProject()).revision, 1);
    EXPECT_EQ(builtFrom(demoProject()).supersedes, std::nullopt);
}

TEST(RecordSections, everyStepOfReviewIsListedInOrder) {
    const project::Project project = demoProject();
    const base::Id second = project.roundNumbered(2)->id;
    const auto at = [](const char* time) { return base::Instant::fromText(time); };
    using enum project::RoundStepKind;
    ReportOptions options;
    options.roundSteps = {{project.roundNumbered(3)->id, Sent, "A. Fields", {}, ""},
                          {second, Sent, "A. Fields", at("2026-03-02T15:00:00Z"), ""},
                          {second, SentBack, "K. Moor", at("2026-03-02T16:00:00Z"), "B-05 again"},
                          {second, Sent, "A. Fields", at("2026-03-03T08:00:00Z"), ""},
                          {second, Accepted, "K. Moor", at("2026-03-03T09:00:00Z"), ""},
                          {second, Withdrawn, "S. Olsen", at("2026-03-03T10:00:00Z"), "wrong meter"}};
    const auto stepsOf = [&] {
        const Report report = build(project, options);
        std::string all;
        for (const Table& table : sectionOf(report, kRevisions).tables) {
            if (table.title.code() == "report_steps_table") {
                Section alone;
                alone.tables = {table};
                all = textOf(alone);
            }
        }
        return all;
    };
    const std::string ofSecond =
        "2|sent|2026-03-02 15:00 UTC|A. Fields||\n2|sent back|2026-03-02 16:00 UTC|K. Moor|B-05 again|\n"
        "2|sent|2026-03-03 08:00 UTC|A. Fields||\n2|accepted|2026-03-03 09:00 UTC|K. Moor||\n"
        "2|withdrawn|2026-03-03 10:00 UTC|S. Olsen|wrong meter|\n";
    EXPECT_EQ(stepsOf(), ofSecond + "3|sent||A. Fields||\n");
    options.round = 2;
    EXPECT_EQ(stepsOf(), ofSecond) << "without a round that this report is not about";
    options.roundSteps.clear();
    EXPECT_EQ(stepsOf(), "") << "no step, no table";
}

TEST(RecordSections, aReasonGivenOnTheWayToTheSignatureIsPrinted) {
    project::Project project = demoProject();
    const auto standing = [&] {
        const Report report = builtFrom(project);
        std::string all;
        for (const Table& table : sectionOf(report, kRevisions).tables) {
            if (table.title.code() == "report_standing_table") {
                Section alone;
                alone.tables = {table};
                all = textOf(alone);
            }
        }
        return all;
    };
    const std::string page = "stand with a reason: 1, listed in section 13";
    EXPECT_EQ(standing(), "");
    EXPECT_EQ(sectionText(project, kResult).find(page), std::string::npos);
    project::FindingReason given;
    given.id = CountingIds(90'000).next();
    given.code = balancing::kSignReadinessMissing.code;
    given.reason = "flushed and vented, letter of 2 March";
    given.person = "K. Moor";
    given.time = base::Instant::fromText("2026-03-03T10:00:00Z");
    project.put(given);
    EXPECT_NE(standing().find("|flushed and vented, letter of 2 March|K. Moor|2026-03-03 10:00 UTC|"),
              std::string::npos)
        << standing();
    EXPECT_NE(sectionText(project, kResult).find(page), std::string::npos) << sectionText(project, kResult);
}

TEST(RecordSections, commentsAreAmongTheExceptions) {
    const project::Project project = reviewed();
    const std::string text = sectionText(project, kExceptions);
    for (const project::Comment& comment : project.comments()) {
        EXPECT_NE(text.find(comment.text), std::string::npos) << text;
    }
}

TEST(RecordSections, onlyAValueThatIsReplacedByAnotherOfItsKindIsACorrection) {
    project::Project project = demoProject();
    project::Reading read;
    for (const std::size_t index : project.readingsOf(project.roundNumbered(3)->id)) {
        const project::Reading& reading = project.readings()[index];
        if (reading.status == project::ReadingStatus::Standing && reading.dp && !reading.supersedes) {
            read = reading;
        }
    }
    ASSERT_TRUE(read.dp.has_value());
    project::Reading alone = read;
    CountingIds ids(800);
    alone.id = ids.next();
    alone.dp.reset();
    alone.status = project::ReadingStatus::Superseded;
    read.supersedes = alone.id;
    const auto exceptions = [&](const char* before, const char* after) {
        alone.setting = *base::Decimal::parse(before);
        read.setting = *base::Decimal::parse(after);
        project.put(alone);
        project.put(read);
        return sectionText(project, kExceptions);
    };
    const std::string completed = exceptions("2.8", "2.8");
    EXPECT_EQ(completed.find("setting 2.8 corrected"), std::string::npos) << completed;
    const std::string other = exceptions("2.8", "2.9");
    EXPECT_NE(other.find("|corrected|setting 2.8 corrected to setting 2.9 at "), std::string::npos) << other;
}

TEST(RecordSections, aRoundTakenBackSaysWhatItsReasonIsOfAndTimesAreToTheMinute) {
    project::Project project = demoProject();
    project::Round round = *project.roundNumbered(3);
    round.state = project::RoundState::Sent;
    round.sentBy = "P. Vos";
    round.sent = base::Instant::fromText("2026-03-02T10:00:07Z");
    round.decidedBy.clear();
    round.decided.reset();
    round.reason = "wrong meter";
    project.put(round);
    const std::string text = sectionText(project, kRevisions);
    EXPECT_NE(text.find("|P. Vos, 2026-03-02 10:00 UTC||withdrawn or sent back: wrong meter"),
              std::string::npos)
        << text;
    round.state = project::RoundState::SentBack;
    round.decidedBy = "K. Moor";
    round.decided = base::Instant::fromText("2026-03-02T11:00:07+01:00");
    project.put(round);
    const std::string sentBack = sectionText(project, kRevisions);
    EXPECT_NE(sentBack.find("|K. Moor, 2026-03-02 11:00 +01:00|wrong meter"), std::string::npos) << sentBack;
}

TEST(RecordSections, whoSetAClockAndWhatItHadTimedAreAmongTheExceptions) {
    project::Project project = reviewed();
    const std::string text = sectionText(project, kExceptions);
    EXPECT_NE(
        text.find("LT-2||clock|K. Moor set this laptop's clock right: it showed 2026-03-02T12:20:00Z when "
                  "it was 2026-03-02T09:19:00Z; from then on -3 h 1 min are added"),
        std::string::npos)
        << text;
    EXPECT_EQ(text.find("time uncertain"), std::string::npos) << text;
    project::Reading reading = project.readings()[0];
    reading.time = *base::Instant::fromText("2026-03-02T12:10:00Z");
    project.put(reading);
    const std::string later = sectionText(project, kExceptions);
    EXPECT_NE(
        later.find("|time uncertain|written between 2026-03-02T12:05:10Z and 2026-03-02T12:20:00Z by the "
                   "clock of LT-2"),
        std::string::npos)
        << later;
}

TEST(RecordSections, aValueTypedInAnotherUnitIsPrintedAsTyped) {
    project::Project project = demoProject();
    project::Reading reading = project.readings()[0];
    reading.dp =
        quantity::measured<quantity::PressureDifference>(*base::Decimal::parse("1.8"), quantity::Unit::Psi);
    project.put(reading);
    EXPECT_NE(sectionText(project, kReadings).find("|1.8 psi|"), std::string::npos);
}

TEST(RecordSections, aReasonThatMergingWroteIsASentenceThatCanBeTranslated) {
    project::Project project = demoProject();
    project::Reading reading = project.readings()[0];
    reading.status = project::ReadingStatus::Struck;
    reading.reason = "not chosen when merging; 47.1 kPa was";
    project.put(reading);
    const auto isSaid = [&](SectionNumber number) {
        const Report report = builtFrom(project);
        for (const Table& table : sectionOf(report, number).tables) {
            for (const auto& row : table.rows) {
                for (const Cell& cell : row) {
                    for (const base::Fault& part : cell.parts) {
                        if (part.is(project::merge_reasons::kNotChosen)) {
                            return part.arguments == std::vector<std::string>{"47.1 kPa"};
                        }
                    }
                }
            }
        }
        return false;
    };
    EXPECT_TRUE(isSaid(kReadings));
    EXPECT_TRUE(isSaid(kExceptions));
    EXPECT_NE(sectionText(project, kExceptions).find(" struck: not chosen when merging; 47.1 kPa was"),
              std::string::npos);
}

TEST(RecordSections, aFlowMeasuredOtherwiseSaysByWhichMethod) {
    project::Project project = demoProject();
    project::Reading reading = project.readings()[0];
    reading.dp.reset();
    reading.flow = quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("3.90"),
                                                            quantity::Unit::CubicMetrePerHour);
    reading.instrument.reset();
    project.put(reading);
    const auto holds = [&](std::string_view words) {
        return sectionText(project, kReadings).find(words) != std::string::npos;
    };
    EXPECT_TRUE(holds("|3.90 m³/h|") || holds("|3.90 m3/h|")) << sectionText(project, kReadings);
    EXPECT_TRUE(holds("flow measured otherwise, method not noted"));
    reading.note = "by ultrasound, 20 diameters behind the elbow";
    project.put(reading);
    EXPECT_TRUE(holds("flow measured otherwise; by ultrasound, 20 diameters behind the elbow"));
    project::Instrument meter;
    meter.id = CountingIds(900).next();
    meter.tag = "U-1";
    meter.kind = "ultrasonic flow meter";
    project.put(meter);
    reading.instrument = meter.id;
    project.put(reading);
    EXPECT_TRUE(holds("|U-1|"));
    EXPECT_TRUE(holds("flow measured otherwise, with ultrasonic flow meter"));
}

TEST(RecordSections, aRoundAtTheHeadOfAColumnIsNoTagOfABranch) {
    const Report report = build(demoProject(), {});
    std::vector<std::string> heads;
    for (const Table& table : sectionOf(report, kShares).tables) {
        for (const Column& column : table.columns) {
            heads.push_back(base::english(column.heading));
        }
    }
    EXPECT_EQ(std::count(heads.begin(), heads.end(), "R1"), 0);
    EXPECT_EQ(std::count(heads.begin(), heads.end(), "Round 1"), 1);
}

TEST(RecordSections, aSettingAloneIsNoReadingOfAMeter) {
    project::Project project = demoProject();
    const std::string before = sectionText(project, kMethod);
    project::Reading setting = project.readings()[project.readingsOf(project.roundNumbered(3)->id).front()];
    ASSERT_TRUE(setting.instrument && setting.dp);
    setting.id = CountingIds::numbered(994);
    setting.status = project::ReadingStatus::Superseded;
    setting.dp.reset();
    setting.flow.reset();
    setting.supersedes.reset();
    project.put(setting);
    EXPECT_EQ(sectionText(project, kMethod), before);
}

}  // namespace
}  // namespace ww::report
