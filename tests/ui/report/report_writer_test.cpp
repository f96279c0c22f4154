#include "ui/report/report_writer.h"

#include <gtest/gtest.h>

#include <regex>
#include <sstream>

#include "core/report/zone_study.h"
#include "tests/ui/report/written_report.h"
#include "tests/ui/support/spoken.h"

namespace ww::ui::report {
namespace {

using support::DemoOptions;
// The parts of a report are common practice.
TEST(ReportWriter, textHoldsEverySectionAndEveryTag) {
    const project::Project project = demoProject();
    const std::string text = Written(project).text();
    for (const char* title :
         {"Result", "Method, tolerances and instruments", "One-line diagram", "Final round",
          "Shares by round", "Pump and system", "Index circuit", "Exceptions", "Every reading as typed"}) {
        EXPECT_NE(text.find(title), std::string::npos) << title;
    }
    for (const project::Branch& branch : project.branches()) {
        EXPECT_NE(text.find(branch.tag), std::string::npos) << branch.tag;
    }
    EXPECT_NE(text.find("Index valve T6 at 4.0 of 4.0: fully open"), std::string::npos) << text;
    // Letters and signs of every weight come out as they went in.
    EXPECT_NE(text.find("Round 3 (final), 2026-03-04"), std::string::npos);
    EXPECT_NE(text.find("Air handler 1, level 1"), std::string::npos);
    EXPECT_NE(text.find("West riser"), std::string::npos);
    EXPECT_NE(text.find("Of target"), std::string::npos);
    EXPECT_NE(text.find("data 3f9c 01ab 77e2"), std::string::npos);
    EXPECT_NE(text.find("DRAFT, NOT SIGNED"), std::string::npos);
}

TEST(ReportWriter, aDateNeverBreaks) {
    project::Project project = demoProject();
    project::ReadinessLine line;
    line.id = support::CountingIds::numbered(777);
    line.position = 1;
    line.text = "The loop is filled and vented at its high points; the pressure with the pumps off is noted";
    line.date = base::Instant::fromText("2031-12-27T08:00:00Z");
    project.put(line);
    EXPECT_NE(Written(project).text().find("2031-12-27"), std::string::npos);
}

TEST(ReportWriter, everyPageSaysWhichOfHowMany) {
    const project::Project project = demoProject();
    const Written written(project);
    const std::string text = written.text();
    const std::size_t count = layOut(built(project), project).pages.size();
    for (std::size_t page = 1; page <= count; ++page) {
        const std::string footer = "page " + std::to_string(page) + " of " + std::to_string(count);
        EXPECT_NE(text.find(footer), std::string::npos) << footer;
    }
    const std::string properties = output("pdfinfo", {QString::fromStdString(written.file)});
    EXPECT_NE(properties.find("Pages:           " + std::to_string(count)), std::string::npos) << properties;
}

TEST(ReportWriter, fontsAreEmbedded) {
    const std::string fonts = output("pdffonts", {QString::fromStdString(Written(demoProject()).file)});
    std::size_t lines = 0;
    std::istringstream stream(fonts);
    for (std::string line; std::getline(stream, line); ++lines) {
        if (lines >= 2) {
            EXPECT_NE(line.find("DejaVuSans"), std::string::npos) << line;
            // Embedded, subset or not, with a table from glyphs to letters.
            EXPECT_TRUE(std::regex_search(line, std::regex(" yes +(yes|no) +yes "))) << line;
        }
    }
    EXPECT_GE(lines, 4u) << fonts;
}

TEST(ReportWriter, equalInputGivesEqualBytes) {
    const project::Project project = demoProject();
    const QByteArray first = pdf(built(project), project);
    const QByteArray second = pdf(built(demoProject()), demoProject());
    EXPECT_EQ(first, second);
    EXPECT_TRUE(first.contains("/CreationDate (D:20260304100000"));
    EXPECT_FALSE(std::regex_search(first.toStdString(), std::regex("/SMask [0-9]|/ca 0"))) << "transparency";
}

TEST(ReportWriter, theTimeZoneOfTheMachineDoesNotMatter) {
    const project::Project project = demoProject();
    const QByteArray here = pdf(built(project), project);
    const QByteArray before = qgetenv("TZ");
    qputenv("TZ", "America/New_York");
    const QByteArray there = pdf(built(project), project);
    EXPECT_EQ(qgetenv("TZ"), "America/New_York");
    qputenv("TZ", before);
    EXPECT_EQ(here, there);
}

TEST(ReportWriter, pdfIsWellFormed) {
    const Written written(demoProject());
    EXPECT_EQ(output("pdfinfo", {QString::fromStdString(written.file)}).find("Error"), std::string::npos);
}

// A page of paper is of one of two kinds: ISO 216 A4, or Letter where gallons are used (common practice).
TEST(ReportWriter, paperFollowsTheUnits) {
    const std::string metric = output("pdfinfo", {QString::fromStdString(Written(demoProject()).file)});
    EXPECT_NE(metric.find("A4"), std::string::npos) << metric;
    DemoOptions options;
    options.units = project::UnitSystem::US;
    const std::string us = output("pdfinfo", {QString::fromStdString(Written(demoProject(options)).file)});
    EXPECT_NE(us.find("letter"), std::string::npos) << us;
}

TEST(ReportWriter, longTablesRepeatTheirHead) {
    DemoOptions options;
    options.fillerTerminals = 60;
    const project::Project project = demoProject(options);
    const std::string text = Written(project).text();
    EXPECT_NE(text.find("Round 3 (final), 2026-03-04 (continued)"), std::string::npos);
    EXPECT_NE(text.find("Readings at branches (continued)"), std::string::npos);
    EXPECT_NE(text.find("F60"), std::string::npos);
}

TEST(ReportWriter, reportsOfAnEmptyJobCanBeWritten) {
    DemoOptions options;
    options.hasRounds = false;
    options.hasPump = false;
    EXPECT_NE(Written(demoProject(options)).text().find("No round of readings"), std::string::npos);
    EXPECT_NE(Written(project::Project()).text().find("Balance report"), std::string::npos);
}

TEST(ReportWriter, refusesAFolderThatIsNotThereAndLeavesNothing) {
    const project::Project project = demoProject();
    const support::TemporaryFolder folder;
    const base::Outcome outcome = writePdf(built(project), project, folder.path() / "no" / "report.pdf");
    ASSERT_FALSE(outcome.ok());
    EXPECT_TRUE(outcome.fault().is(kReportNotWritten));
    EXPECT_FALSE(folder.has("no"));
}

TEST(ReportWriter, everyPageOfASimulatedJobSaysSo) {
    const project::Project project = simulatedProject();
    const Written written(project);
    const std::size_t count = layOut(built(project), project).pages.size();
    for (std::size_t page = 1; page <= count; ++page) {
        const std::string text = pageText(written, page);
        const std::size_t word = text.find("SIMULATED");
        ASSERT_NE(word, std::string::npos) << "page " << page;
        EXPECT_EQ(text.substr(0, word).find_first_not_of(" \n"), std::string::npos)
            << "page " << page << ": it is the first word of the page";
    }
    EXPECT_NE(pageText(written, 1).find("The building of this report is simulated"), std::string::npos);
    EXPECT_EQ(Written(demoProject()).text().find("SIMULATED"), std::string::npos) << "of a real plant";
}

constexpr base::MessageForm kTestText{"test_text", "{1}"};

ww::report::Column testColumn(const char* head) {
    ww::report::Column made;
    made.heading = {&kTestText, "", {head}};
    return made;
}

ww::report::Cell testCell(std::string text) {
    ww::report::Cell made;
    made.text = std::move(text);
    return made;
}

/// A report of one section with one table.
ww::report::Report reportOf(ww::report::Table table) {
    table.title = {&kTestText, "", {"Some table"}};
    ww::report::Section section;
    section.number = ww::report::kReadings;
    section.title = {&kTestText, "", {"Some section"}};
    section.tables.push_back(std::move(table));
    ww::report::Report report;
    report.sections.push_back(std::move(section));
    return report;
}

TEST(ReportWriter, aColumnInWhichNothingStandsIsLeftOut) {
    ww::report::Table table;
    table.columns = {testColumn("Tag"), testColumn("Nowhere"), testColumn("Somewhere"), testColumn("Below")};
    table.rows = {{testCell("T1"), testCell(""), testCell(""), testCell("")},
                  {testCell("T2"), testCell(""), testCell("here"), testCell("")}};
    table.totals = {testCell("Sum"), testCell(""), testCell(""), testCell("all")};
    const support::TemporaryFolder folder;
    const std::string file = folder.file("report.pdf");
    ASSERT_TRUE(writePdf(reportOf(table), demoProject(), file).ok());
    const std::string text = output("pdftotext", {"-layout", QString::fromStdString(file), "-"});
    EXPECT_EQ(text.find("Nowhere"), std::string::npos) << text;
    for (const char* kept : {"Tag", "Somewhere", "Below", "T1", "here", "all"}) {
        EXPECT_NE(text.find(kept), std::string::npos) << kept << '\n' << text;
    }
}

TEST(ReportWriter, noPageHasTheLastRowOfATableAlone) {
    bool isOnTwoPages = false;
    for (std::size_t count = 40; count < 75; ++count) {
        ww::report::Table table;
        table.columns = {testColumn("Tag")};
        for (std::size_t row = 1; row <= count; ++row) {
            table.rows.push_back({testCell("row-" + std::to_string(row) + ".")});
        }
        const support::TemporaryFolder folder;
        const std::string file = folder.file("report.pdf");
        const ww::report::Report report = reportOf(table);
        ASSERT_TRUE(writePdf(report, demoProject(), file).ok());
        const std::size_t pages = layOut(report, demoProject()).pages.size();
        isOnTwoPages = isOnTwoPages || pages == 2;
        const QString last = QString::number(pages);
        const std::string text =
            output("pdftotext", {"-f", last, "-l", last, QString::fromStdString(file), "-"});
        for (const std::size_t row : {count - 1, count}) {
            EXPECT_NE(text.find("row-" + std::to_string(row) + "."), std::string::npos)
                << count << " rows: " << text;
        }
    }
    EXPECT_TRUE(isOnTwoPages);
}

// A heading stands with what follows it: it is never the last line above the footer.
TEST(ReportWriter, noHeadingEndsAPage) {
    const project::Project project = demoProject();
    const Written written(project);
    const ww::report::Report report = built(project);
    const std::size_t count = layOut(report, project).pages.size();
    for (std::size_t page = 1; page <= count; ++page) {
        const QString number = QString::number(page);
        const std::string text = output(
            "pdftotext", {"-layout", "-f", number, "-l", number, QString::fromStdString(written.file), "-"});
        std::istringstream stream(text);
        std::string before;
        for (std::string line; std::getline(stream, line);) {
            if (line.find("page " + number.toStdString() + " of ") != std::string::npos) {
                break;
            }
            before = line.find_first_not_of(" \f\r") == std::string::npos ? before : line;
        }
        for (const ww::report::Section& section : report.sections) {
            const std::regex heading("^\\s*" + std::to_string(section.number) + "\\s+" +
                                     base::english(section.title) + "\\s*$");
            EXPECT_FALSE(std::regex_match(before, heading)) << "page " << page << ": " << before;
        }
    }
}

// Long words of other languages stay whole where there is room, in labels and in narrow columns.
TEST(ReportWriter, germanWordsStayWhole) {
    const support::Spoken spoken(QStringLiteral("de"));
    const std::string text = Written(demoProject()).text();
    for (const char* word : {"Gesamtdurchfluss", "Schlechtpunktventil", "Umdrehungen"}) {
        EXPECT_NE(text.find(word), std::string::npos) << word;
    }
    EXPECT_EQ(text.find("rpm"), std::string::npos);
}

/// Where a word stands on the first page that has it, in points from its upper left corner.
QRectF boxOf(const std::string& boxes, const std::string& word) {
    const std::regex line(R"re(<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">)re" +
                          word + "</word>");
    std::smatch found;
    if (!std::regex_search(boxes, found, line)) {
        return {};
    }
    return {QPointF(std::stod(found[1]), std::stod(found[2])),
            QPointF(std::stod(found[3]), std::stod(found[4]))};
}

// The title of a study is long in some languages, and so is the stamp beside it.
TEST(ReportWriter, theStampOfAStudyLeavesItsTitleFree) {
    const project::Project project = demoProject();
    const pump_room::WhatIf whatIf =
        pump_room::whatIf(project, {pump_room::RemoveBranch{project.branchTagged("T1")->id}});
    const struct {
        const char* language;
        const char* endOfTitle;
        const char* stamp;
    } kStudies[] = {{"en", "zone", "FORECAST,"},
                    {"de", "Zone", "VORHERSAGE,"},
                    {"fr", "modifiée", "PRÉVISION,"},
                    {"es", "cambiada", "PRONÓSTICO,"}};
    for (const auto& study : kStudies) {
        const support::Spoken spoken(QString::fromLatin1(study.language));
        const support::TemporaryFolder folder;
        const std::string file = folder.file("study.pdf");
        ASSERT_TRUE(writePdf(ww::report::zoneStudy(project, whatIf, {}), whatIf.project, file).ok());
        const std::string boxes = output("pdftotext", {"-bbox", QString::fromStdString(file), "-"});
        const QRectF title = boxOf(boxes, study.endOfTitle);
        const QRectF stamp = boxOf(boxes, study.stamp);
        ASSERT_FALSE(title.isEmpty() || stamp.isEmpty()) << study.language;
        EXPECT_TRUE(title.right() + 6 < stamp.left() || title.top() > stamp.bottom()) << study.language;
    }
}

}  // namespace
}  // namespace ww::ui::report
