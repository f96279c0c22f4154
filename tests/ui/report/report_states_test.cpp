// The states of valves on paper: each has its word, and a shape that a grey copy keeps.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <regex>

#include "core/balancing/assess.h"
#include "tests/support/walk_job.h"
#include "tests/ui/report/written_report.h"
#include "ui/text/words.h"

namespace ww::ui::report {
namespace {

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

}  // namespace
}  // namespace ww::ui::report
