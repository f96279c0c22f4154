// Pages of a report as they look: ink, grey, what shares a page. What they should look like is a decision of
// this project unless a source is named.
#include "ui/report/report_pages.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/ui/report/written_report.h"
#include "ui/report/paper_text.h"

namespace ww::ui::report {
namespace {

using support::DemoOptions;

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

// A unit stands on the line of its number (the SI brochure, 5.4.3: a space between them that does not break
// is common practice).
TEST(ReportPages, aUnitIsNotPartedFromItsNumber) {
    EXPECT_EQ(unbrokenParts(QStringLiteral("spread 59.5 % in round 3")),
              (QStringList{"spread", "59.5 %", "in", "round", "3"}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("10.21 L/s, 106.5 %.")), (QStringList{"10.21 L/s,", "106.5 %."}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("8 inH₂O, 60 °F and 1450 1/min")),
              (QStringList{"8 inH₂O,", "60 °F", "and", "1450 1/min"}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("valve T4")), (QStringList{"valve", "T4"}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("away (section 15).")), (QStringList{"away", "(section 15)."}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("Adds to flow ±")), (QStringList{"Adds", "to", "flow ±"}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("10.49 ± 0.10 of 100 ± 5 %")),
              (QStringList{"10.49 ± 0.10", "of", "100 ± 5 %"}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("10.66 (10.54 – 10.77)")),
              (QStringList{"10.66", "(10.54 – 10.77)"}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("2026-03-02 – 2026-03-04")),
              (QStringList{"2026-03-02", "–", "2026-03-04"}));
    EXPECT_EQ(unbrokenParts(QStringLiteral("400 / 401 / 399 V, 1.96 kW")),
              (QStringList{"400 / 401 / 399 V,", "1.96 kW"}));
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
