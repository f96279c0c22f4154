#include "ui/report/report_writer.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QProcess>
#include <algorithm>
#include <cmath>
#include <map>
#include <regex>
#include <sstream>

#include "core/balancing/assess.h"
#include "tests/support/demo_project.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/walk_job.h"
#include "tests/ui/support/spoken.h"
#include "ui/report/page_builder.h"
#include "ui/report/report_pages.h"
#include "ui/text/words.h"

namespace ww::ui::report {
namespace {

using support::DemoOptions;
using support::demoProject;

ww::report::Report built(const project::Project& project) {
    ww::report::ReportOptions options;
    options.journalDigest = "3f9c01ab77e2d4f00112";
    options.workbookId = "0123";
    options.printed = *base::Instant::fromText("2026-03-04T10:00:00Z");
    return ww::report::build(project, options);
}

std::string output(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished()) << program.toStdString() << " of poppler-utils is needed";
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput().toStdString();
}

/// A report on disk in a folder of its own.
struct Written {
    support::TemporaryFolder folder;
    std::string file;

    explicit Written(const project::Project& project) : file(folder.file("report.pdf")) {
        EXPECT_TRUE(writePdf(built(project), project, file).ok());
    }
    std::string text() const { return output("pdftotext", {"-layout", QString::fromStdString(file), "-"}); }
};

// The tools of poppler stand for any reader; the parts of a report are common practice.
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

/// The demo job as if a practice building answered it.
project::Project simulatedProject() {
    project::Project project = demoProject();
    project::Job job = project.job();
    job.practice = "difficulty=steady;seed=17";
    project.put(job);
    return project;
}

/// What stands on one page of a file.
std::string pageText(const Written& written, std::size_t page) {
    const QString number = QString::number(page);
    return output("pdftotext",
                  {"-layout", "-f", number, "-l", number, QString::fromStdString(written.file), "-"});
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

/// The darkest and lightest greys of a page.
QImage greyPage(const ReportPages& pages, std::size_t page) {
    const QSizeF size = pages.size(page) / kDotsPerInch * 96;
    QImage image(size.toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    renderPage(painter, pages, page, QRectF(QPointF(0, 0), size));
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
}

TEST(ReportPages, previewShowsInkOnEveryPageAlsoInGrey) {
    const project::Project project = demoProject();
    const ReportPages pages = layOut(built(project), project);
    ASSERT_EQ(pages.names.size(), pages.pages.size());
    for (std::size_t page = 0; page < pages.pages.size(); ++page) {
        const QImage grey = greyPage(pages, page);
        int dark = 0;
        for (int y = 0; y < grey.height(); ++y) {
            for (int x = 0; x < grey.width(); ++x) {
                dark += qGray(grey.pixel(x, y)) < 100 ? 1 : 0;
            }
        }
        EXPECT_GT(dark, 1000) << page;
        EXPECT_FALSE(pages.names[page].isEmpty());
    }
}

// The bar is as wide as what is printed, black with a white word: no copier takes it away.
TEST(ReportPages, theBarOfASimulatedJobIsBlackAcrossTheHeadAlsoInGrey) {
    const project::Project project = simulatedProject();
    const ReportPages pages = layOut(built(project), project);
    constexpr double kDotsPerMm = 96 / 25.4;
    for (std::size_t page = 0; page < pages.pages.size(); ++page) {
        const QImage grey = greyPage(pages, page);
        const int y = static_cast<int>(16.5 * kDotsPerMm);  // between the upper edge of the bar and the word
        int dark = 0;
        for (int x = 0; x < grey.width(); ++x) {
            dark += qGray(grey.pixel(x, y)) < 60 ? 1 : 0;
        }
        EXPECT_GT(dark, 0.95 * (grey.width() - 30 * kDotsPerMm)) << "page " << page + 1;
        int light = 0;
        for (int x = 0; x < grey.width(); ++x) {
            const int middle = static_cast<int>(20.6 * kDotsPerMm);
            const bool isInBar = x > 16 * kDotsPerMm && x < grey.width() - 16 * kDotsPerMm;
            light += isInBar && qGray(grey.pixel(x, middle)) > 200 ? 1 : 0;
        }
        EXPECT_GT(light, 20) << "page " << page + 1 << ": the word in it";
    }
}

/// The walk job with a second round in which every state of a share stands but "Not read".
project::Project jobOfManyStates() {
    project::Project job;
    for (const project::AnyRecord& record : support::walkJob().put) {
        std::visit([&](const auto& one) { job.put(one); }, record);
    }
    project::Round round = job.rounds()[0];
    const base::Id survey = round.id;
    round.id = support::CountingIds::numbered(900'000);
    round.number = 2;
    round.kind = project::RoundKind::Final;
    job.put(round);
    const balancing::Assessment before = balancing::assess(job, survey);
    bool isDrifted = false;
    bool isDoubtful = false;
    bool isThrottled = false;
    std::uint64_t id = 900'001;
    for (const std::size_t index : job.readingsOf(survey)) {
        project::Reading reading = job.readings()[index];
        const auto state = before.branches[job.branches().indexOf(reading.branch)].state;
        reading.id = support::CountingIds::numbered(id++);
        reading.round = round.id;
        if (!isDrifted && state == balancing::State::OnShare) {
            // Nobody turned it, and it is over its share.
            reading.dp = quantity::measured<quantity::PressureDifference>(
                base::Decimal::fromNumber(reading.dp->digits.value() * 1.6, 1), quantity::Unit::Kilopascal);
            isDrifted = true;
        } else if (!isDoubtful && state == balancing::State::Over) {
            isDoubtful = reading.isDoubtful = true;
        } else if (!isThrottled && state == balancing::State::AtStop) {
            // Short and not fully open any more.
            reading.setting = *base::Decimal::parse("3");
            isThrottled = true;
        }
        job.put(reading);
    }
    return job;
}

/// A word of a page and where it begins, in points from the upper left corner.
struct PlacedWord {
    std::string word;
    double left = 0;
    double top = 0;
    double bottom = 0;
};

std::vector<PlacedWord> wordsOf(const std::string& file, int page) {
    const std::string boxes = output("pdftotext", {"-f", QString::number(page), "-l", QString::number(page),
                                                   "-bbox", QString::fromStdString(file), "-"});
    const std::regex form(
        "<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"[0-9.]+\" yMax=\"([0-9.]+)\">([^<]*)</word>");
    std::vector<PlacedWord> words;
    for (std::sregex_iterator at(boxes.begin(), boxes.end(), form), end; at != end; ++at) {
        words.push_back({(*at)[4], std::stod((*at)[1]), std::stod((*at)[2]), std::stod((*at)[3])});
    }
    return words;
}

/// The page that section 4 begins on; 0 where no page has its heading.
int pageOfFinalRound(const std::string& file) {
    constexpr int kMostPages = 12;
    const std::string pages = output("pdfinfo", {QString::fromStdString(file)});
    std::smatch count;
    const int last =
        std::regex_search(pages, count, std::regex("Pages: +([0-9]+)")) ? std::stoi(count[1]) : 0;
    for (int page = 1; page <= std::min(last, kMostPages); ++page) {
        const std::vector<PlacedWord> words = wordsOf(file, page);
        for (std::size_t i = 0; i + 2 < words.size(); ++i) {
            if (words[i].word == "4" && words[i + 1].word == "Final" && words[i + 2].word == "round") {
                return page;
            }
        }
    }
    return 0;
}

/// The square in front of a word, in which its state's shape is drawn, cut out of a page of `scale` dots a
/// point.
QImage shapeBefore(const QImage& page, const PlacedWord& word, double scale) {
    constexpr double kRoom_pt = 11;
    constexpr double kSide_pt = 8;
    const double middle = (word.top + word.bottom) / 2;
    return page.copy(QRectF((word.left - kRoom_pt) * scale, (middle - kSide_pt / 2) * scale, kSide_pt * scale,
                            kSide_pt * scale)
                         .toRect());
}

/// The part of the pixels in which two greys are told apart.
double difference(const QImage& left, const QImage& right) {
    int differing = 0;
    for (int y = 0; y < left.height(); ++y) {
        for (int x = 0; x < left.width(); ++x) {
            differing += std::abs(qGray(left.pixel(x, y)) - qGray(right.pixel(x, y))) > 64 ? 1 : 0;
        }
    }
    return differing / static_cast<double>(left.width() * left.height());
}

// The limit of 18 % is our own; WCAG 2.2, 1.4.1 asks that colour is never the only means.
TEST(ReportWriter, theFinalRoundKeepsWordsAndShapesInGrey) {
    const project::Project job = jobOfManyStates();
    const Written written(job);
    const int number = pageOfFinalRound(written.file);
    ASSERT_GT(number, 0);
    const std::string grey = written.folder.file("grey");
    constexpr int kDots = 288;
    output("pdftoppm", {"-gray", "-r", QString::number(kDots), "-f", QString::number(number), "-l",
                        QString::number(number), "-singlefile", "-png", QString::fromStdString(written.file),
                        QString::fromStdString(grey)});
    const QImage page(QString::fromStdString(grey + ".png"));
    ASSERT_FALSE(page.isNull());
    const std::vector<PlacedWord> words = wordsOf(written.file, number);
    const balancing::Assessment final = balancing::assess(job, job.rounds()[1].id);
    std::map<std::string, QImage> shapes;
    for (std::size_t i = 0; i < job.branches().size(); ++i) {
        const balancing::BranchResult& result = final.branches[i];
        if (!result.isTerminal) {
            continue;
        }
        const std::string& tag = job.branches()[i].tag;
        const std::string state = text::word(result).toStdString();
        // A word of two parts is known by its first.
        const std::string first = state.substr(0, state.find(' '));
        const auto said = std::find_if(words.begin(), words.end(), [&](const PlacedWord& word) {
            return word.word == first && std::any_of(words.begin(), words.end(), [&](const PlacedWord& row) {
                       return row.word == tag && std::abs(word.top - row.top) < 3;
                   });
        });
        ASSERT_NE(said, words.end()) << tag << " does not say " << state;
        const bool hasDirections =
            result.state == balancing::State::AtStop || result.state == balancing::State::Drifted;
        const bool isOver = hasDirections && result.ofTarget && result.ofTarget->si() > 1;
        shapes.emplace(state + (isOver ? ", over" : ""), shapeBefore(page, *said, kDots / 72.0));
    }
    for (const char* state : {"Short", "Over", "On share", "Drifted, over", "At open stop", "Doubtful"}) {
        EXPECT_TRUE(shapes.contains(state)) << state << " is not among the cases";
    }
    for (const auto& [one, shape] : shapes) {
        QImage blank(shape.size(), QImage::Format_Grayscale8);
        blank.fill(Qt::white);
        EXPECT_GE(difference(shape, blank), 0.1) << one << " has no shape";
        for (const auto& [other, otherShape] : shapes) {
            if (one < other) {
                EXPECT_GE(difference(shape, otherShape), 0.18) << one << " and " << other;
            }
        }
    }
}

TEST(ReportPages, aSmallDiagramStandsUprightBehindTheMethod) {
    const project::Project project = demoProject();
    const ReportPages pages = layOut(built(project), project);
    for (const Page& page : pages.pages) {
        const auto& sections = page.sections;
        if (std::find(sections.begin(), sections.end(), ww::report::kOneLine) != sections.end()) {
            EXPECT_FALSE(page.isLandscape);
        }
    }
}

/// How far down a page its ink reaches above the footer, as a part of its height.
double filledPart(const ReportPages& pages, std::size_t page) {
    const QImage grey = greyPage(pages, page);
    const int footer = grey.height() - static_cast<int>(26 / 25.4 * 96);
    for (int y = footer; y > 0; --y) {
        for (int x = 0; x < grey.width(); ++x) {
            if (qGray(grey.pixel(x, y)) < 200) {
                return static_cast<double>(y) / grey.height();
            }
        }
    }
    return 0;
}

// A page is left before it is full only where the next lies the other way, or for a figure that has no room
// on it: at most 107 mm of the 171 that a page on its side has.
TEST(ReportPages, noPageIsLeftHalfEmpty) {
    DemoOptions options;
    options.fillerTerminals = 20;
    for (const project::Project& project : {demoProject(), demoProject(options)}) {
        const ReportPages pages = layOut(built(project), project);
        for (std::size_t page = 0; page + 1 < pages.pages.size(); ++page) {
            if (pages.pages[page].isLandscape == pages.pages[page + 1].isLandscape) {
                EXPECT_GT(filledPart(pages, page), 0.3) << "page " << page + 1;
            }
        }
    }
}

// The short sections about the record, where nothing is on record, take no page of their own.
TEST(ReportPages, shortSectionsShareAPage) {
    const project::Project project = demoProject();
    const ReportPages pages = layOut(built(project), project);
    bool isShared = false;
    for (const Page& page : pages.pages) {
        const auto has = [&](int number) {
            return std::find(page.sections.begin(), page.sections.end(), number) != page.sections.end();
        };
        isShared = isShared || (has(ww::report::kReadiness) && has(ww::report::kDeficiencies));
    }
    EXPECT_TRUE(isShared);
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

// A unit stands on the line of its number (the SI brochure, 5.4.3: a space between them that does not break
// is common practice).
TEST(ReportPages, aUnitIsNotPartedFromItsNumber) {
    EXPECT_EQ(unbrokenParts(QStringLiteral("spread 59.5 % in round 3")),
              (QStringList{"spread", "59.5 %", "in", "round", "3"}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("10.21 L/s, 106.5 %.")), (QStringList{"10.21 L/s,", "106.5 %."}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("valve T4")), (QStringList{"valve", "T4"}));
}

// Nothing is painted outside the margins of the paper; 10 mm is what common printers need.
TEST(ReportPages, nothingReachesTheEdge) {
    DemoOptions options;
    options.fillerTerminals = 60;
    const project::Project project = demoProject(options);
    const ReportPages pages = layOut(built(project), project);
    for (std::size_t page = 0; page < pages.pages.size(); ++page) {
        const QImage grey = greyPage(pages, page);
        const int edge = static_cast<int>(10 / 25.4 * 96);
        for (int y = 0; y < grey.height(); ++y) {
            for (int x = 0; x < grey.width(); ++x) {
                const bool isEdge =
                    x < edge || y < edge || x >= grey.width() - edge || y >= grey.height() - edge;
                if (isEdge && qGray(grey.pixel(x, y)) < 250) {
                    FAIL() << "page " << page + 1 << " at " << x << ", " << y;
                }
            }
        }
    }
}

}  // namespace
}  // namespace ww::ui::report
