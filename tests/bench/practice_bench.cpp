// How well the program's advice does on simulated buildings whose truth is known, in tables: shares after the
// survey and after a further round, truth of the stated uncertainty, the classical method beside it, gross
// errors, and the next reading. practice_bench [BUILDINGS [TABLE [SIZES]]]; TABLE is a letter a to d or all,
// SIZES of 3, 12, 120 joined by commas.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "core/practice/classical.h"
#include "core/practice/random_numbers.h"
#include "tests/bench/practice_stage.h"
#include "tests/support/guided_practice.h"

namespace {

using namespace ww;
using practice::Building;
using practice::BuildingPlan;
using practice::FaultKind;
using support::GuidedPractice;
using support::median;
using support::percent;
using support::Stage;

struct Scenario {
    const char* name;
    BuildingPlan plan;
};

std::vector<Scenario> scenarios() {
    std::vector<Scenario> all{{"clean", {}},          {"scale of 0.1", {}},     {"exponents 1.85", {}},
                              {"1 in 30 at 3 x", {}}, {"tables 2 % + 4 %", {}}, {"no branch valves", {}}};
    all[1].plan.settingStep = quantity::Setting::si(0.1);
    all[2].plan.coilExponent = 1.85;
    all[2].plan.runExponent = 1.85;
    all[3].plan.obstructedOneIn = 30;
    all[4].plan.tableBias = quantity::Ratio::si(0.02);
    all[4].plan.tableTilt = quantity::Ratio::si(0.04);
    all[5].plan.hasBranchValves = false;
    return all;
}

std::vector<int> shapeOf(int terminals) {
    return terminals == 3    ? std::vector<int>{3}
           : terminals == 12 ? std::vector<int>{3, 4}
                             : std::vector<int>{6, 5, 4};
}

/// What a whole job came to.
struct JobEnd {
    balancing::LearnedLoop learned;
    balancing::Advice advice;
    std::vector<std::size_t> accused;    ///< branches named after the further round
    std::vector<std::size_t> suspected;  ///< branches to be read again after the survey
    int readings = 0;
};

/// The rule for doubtful readings: after a survey up to three are read again; after a further round the most
/// doubtful place is, what was read there before is set aside, and this at most three times.
void settleDoubts(GuidedPractice& technician, balancing::LearnedLoop& learned,
                  std::vector<std::size_t>& named) {
    const bool isSurvey = technician.project().rounds().size() == 1;
    if (isSurvey) {
        const auto doubtful = learned.doubtful;
        std::size_t asked = 0;
        for (const auto& one : doubtful) {
            if (asked++ < 3) {
                named.push_back(one.branch);
                technician.reread(one.branch);
            }
        }
        if (asked > 0) {
            learned = technician.learn();
        }
        return;
    }
    for (int turn = 0; turn < 3 && !learned.doubtful.empty(); ++turn) {
        const std::size_t place = learned.doubtful.front().branch;
        named.push_back(place);
        technician.reread(place);
        learned = technician.learn();
        for (const auto& one : std::vector(learned.doubtful)) {
            const std::size_t last = technician.project().rounds().size() - 1;
            if (one.branch == place && !one.isCertain && one.round != last) {
                technician.markDoubtful(one.readings);
                learned = technician.learn();
                break;
            }
        }
    }
}

JobEnd work(const Building& building, GuidedPractice& technician, Stage* afterSurvey, Stage* afterRound) {
    JobEnd end;
    technician.walk(project::RoundKind::Survey);
    end.learned = technician.learn();
    settleDoubts(technician, end.learned, end.suspected);
    end.advice = technician.advise(end.learned);
    technician.set(end.advice);
    if (afterSurvey != nullptr) {
        afterSurvey->add(building, technician, end.learned, end.advice);
    }
    technician.walk(project::RoundKind::Adjusting);
    end.learned = technician.learn();
    settleDoubts(technician, end.learned, end.accused);
    end.advice = technician.advise(end.learned);
    technician.set(end.advice);
    if (afterRound != nullptr) {
        afterRound->add(building, technician, end.learned, end.advice);
    }
    return end;
}

void printShares(int buildings, const std::vector<int>& sizes) {
    std::printf(
        "\nA. Shares of %d buildings each. worst: median of the largest error of a true share, %%; the rest "
        "in %% of "
        "buildings,\n   scores of the forecast in %% of terminals.\n",
        buildings);
    for (const Scenario& scenario : scenarios()) {
        for (const int size : sizes) {
            Stage survey, round;
            std::size_t alarmed = 0, asked = 0;
            for (int seed = 1; seed <= buildings; ++seed) {
                BuildingPlan plan = scenario.plan;
                plan.shape = shapeOf(size);
                const Building building(plan, static_cast<std::uint64_t>(seed));
                GuidedPractice technician(building);
                const JobEnd end = work(building, technician, &survey, &round);
                alarmed += end.accused.empty() ? 0 : 1;
                asked += end.suspected.size();
            }
            std::printf(
                "%s, %d terminals; re-reads asked of a survey %.2f a job, jobs with a place accused %.0f "
                "%%\n",
                scenario.name, size, static_cast<double>(asked) / buildings,
                percent(alarmed, static_cast<std::size_t>(buildings)));
            std::printf("  %-14s %6s %6s %6s %9s %6s %7s %8s %8s %8s %6s %8s %7s\n", "", "worst", "true5",
                        "true2", "indicat.5", "ind.2", "open", "said i5", "said t5", "in 2 sd", "rms",
                        "true2sd", "misfit");
            survey.print("survey");
            round.print("one more round");
        }
    }
}

void printClassical(int buildings, const std::vector<int>& sizes) {
    std::printf("\nB. The classical method by rule on the clean buildings, and advice. Means a job.\n");
    std::printf("  %-46s %7s %7s %9s %8s %7s %7s %7s\n", "", "passes", "moves", "readings", "spread%",
                "worst%", "true5", "true2");
    for (const int size : sizes) {
        BuildingPlan plan;
        plan.shape = shapeOf(size);
        const auto line = [&](const std::string& name, auto play) {
            double passes = 0, moves = 0, readings = 0;
            std::vector<double> worst, spread;
            std::size_t true5 = 0, true2 = 0;
            for (int seed = 1; seed <= buildings; ++seed) {
                const Building building(plan, static_cast<std::uint64_t>(seed));
                const practice::ClassicalGame game = play(building);
                const practice::ClassicalPass& last = game.passes.back();
                passes += static_cast<double>(game.passes.size() - 1);
                moves += last.moves;
                readings += last.readings;
                worst.push_back(100 * last.outcome.worstTrue.si());
                spread.push_back(100 * last.outcome.spread.si());
                true5 += last.outcome.worstTrue.si() <= 0.05 ? 1 : 0;
                true2 += last.outcome.worstTrue.si() <= 0.02 ? 1 : 0;
            }
            std::printf("  %-46s %7.2f %7.1f %9.1f %8.2f %7.2f %7.0f %7.0f\n", name.c_str(),
                        passes / buildings, moves / buildings, readings / buildings, median(spread),
                        median(worst), percent(true5, static_cast<std::size_t>(buildings)),
                        percent(true2, static_cast<std::size_t>(buildings)));
            std::fflush(stdout);
        };
        const auto classical = [](practice::ClassicalAim aim, bool isByGroups) {
            return [=](const Building& building) {
                practice::ClassicalRules rules;
                rules.aim = aim;
                rules.isByGroups = isByGroups;
                return practice::playClassical(building, rules);
            };
        };
        const std::string of = std::to_string(size);
        line(of + ": reference's ratio, all against one",
             classical(practice::ClassicalAim::ReferenceRatio, false));
        line(of + ": reference's ratio, by groups", classical(practice::ClassicalAim::ReferenceRatio, true));
        line(of + ": sum of branches, by groups", classical(practice::ClassicalAim::SumOfBranches, true));
        line(of + ": total off the pump curve", classical(practice::ClassicalAim::PumpCurveTotal, false));
        line(of + ": advice, survey and one more round", [](const Building& building) {
            GuidedPractice technician(building);
            practice::ClassicalGame game;
            technician.walk(project::RoundKind::Survey);
            int moves = 0;
            for (int round = 0; round < 2; ++round) {
                game.passes.push_back(
                    {moves, static_cast<int>(technician.project().readings().size()), technician.outcome()});
                moves += technician.set(technician.advise(technician.learn()));
                if (round == 0) {
                    technician.walk(project::RoundKind::Adjusting);
                }
            }
            int taken = 0;
            for (const project::Reading& reading : technician.project().readings()) {
                taken += reading.dp ? 1 : 0;
            }
            game.passes.push_back({moves, taken + 2, technician.outcome()});
            return game;
        });
    }
}

void printGrossErrors(int buildings, const std::vector<int>& sizes) {
    std::printf(
        "\nC. One gross error in a survey and one more round. In %% of jobs; named: the right place, in the "
        "survey "
        "or after the round.\n");
    std::printf("  %-34s %7s %7s %8s %8s %8s %8s\n", "", "survey", "round", "named", "others", "true5",
                "worst%");
    struct Kind {
        const char* name;
        std::vector<FaultKind> faults;
        bool isDesignBad;
    };
    const std::vector<Kind> kinds{{"none", {}, false},
                                  {"none, design far off", {}, true},
                                  {"dp x 0.5", {FaultKind::DpHalved}, false},
                                  {"dp x 2", {FaultKind::DpDoubled}, false},
                                  {"wrong unit", {FaultKind::WrongUnit}, false},
                                  {"setting off by a turn", {FaultKind::SettingMisread}, false}};
    for (const int size : sizes) {
        for (const Kind& kind : kinds) {
            std::size_t inSurvey = 0, inRound = 0, named = 0, others = 0;
            Stage survey, round;
            for (int seed = 1; seed <= buildings; ++seed) {
                BuildingPlan plan;
                plan.shape = shapeOf(size);
                plan.faults = kind.faults;
                if (kind.isDesignBad) {
                    plan.designErrors.circuitFactor = 0.7;
                    plan.designErrors.runFactor = 0.7;
                }
                const Building building(plan, static_cast<std::uint64_t>(seed));
                GuidedPractice technician(building);
                const JobEnd end = work(building, technician, &survey, &round);
                const auto isRight = [&](std::size_t branch) {
                    return !kind.faults.empty() && branch == building.truth().faults.front().branch;
                };
                const bool bySurvey = std::any_of(end.suspected.begin(), end.suspected.end(), isRight);
                const bool byRound = std::any_of(end.accused.begin(), end.accused.end(), isRight);
                inSurvey += bySurvey ? 1 : 0;
                inRound += byRound ? 1 : 0;
                named += bySurvey || byRound ? 1 : 0;
                others += std::any_of(end.accused.begin(), end.accused.end(),
                                      [&](std::size_t b) { return !isRight(b); })
                              ? 1
                              : 0;
            }
            const auto count = static_cast<std::size_t>(buildings);
            std::printf("  %3d: %-29s %7.0f %7.0f %8.0f %8.0f %8.0f %8.2f\n", size, kind.name,
                        percent(inSurvey, count), percent(inRound, count), percent(named, count),
                        percent(others, count), percent(round.true5, count), median(round.worstTrue));
            std::fflush(stdout);
        }
    }
}

double largestUncertainty(const balancing::Advice& advice) {
    double largest = 0;
    for (const auto& one : advice.settings) {
        largest = std::max(largest, one.actual.uncertainty.si());
    }
    return largest;
}

void printNextReading(int buildings, const std::vector<int>& sizes) {
    std::printf(
        "\nD. The next reading after a survey: buildings in which the one proposed brings the largest "
        "true-share "
        "uncertainty down by at\n   least as much as 9 of 10 others drawn (closed-valve dp or a repeat "
        "anywhere); mean factor left.\n");
    for (const int size : sizes) {
        std::size_t good = 0, asked = 0;
        double left = 0, leftOthers = 0;
        for (int seed = 1; seed <= buildings; ++seed) {
            BuildingPlan plan;
            plan.shape = shapeOf(size);
            const Building building(plan, static_cast<std::uint64_t>(seed));
            GuidedPractice start(building);
            start.walk(project::RoundKind::Survey);
            balancing::LearnLoopOptions plain;
            plain.findDoubtful = false;
            const auto advice = start.advise(start.learn(plain), true);
            if (!advice.helpful) {
                continue;
            }
            ++asked;
            const double before = largestUncertainty(advice);
            const auto after = [&](std::size_t branch, bool isClosed) {
                GuidedPractice trial = start;
                isClosed ? trial.readClosed(branch) : trial.repeat(branch);
                return largestUncertainty(trial.advise(trial.learn(plain))) / before;
            };
            const double best =
                after(advice.helpful->branch, advice.helpful->kind == balancing::ReadingKind::ClosedValveDp);
            practice::RandomNumbers random{static_cast<std::uint64_t>(seed), 9};
            int beaten = 0;
            double sum = 0;
            for (int i = 0; i < 10; ++i) {
                const bool isClosed = random.below(2) == 0;
                const auto terminals = building.design().tree().terminals();
                const double other = isClosed
                                         ? after(terminals[random.below(terminals.size())], true)
                                         : after(random.below(building.design().branches().size()), false);
                beaten += best <= other + 1e-9 ? 1 : 0;
                sum += other / 10;
            }
            good += beaten >= 9 ? 1 : 0;
            left += best;
            leftOthers += sum;
        }
        std::printf("  %3d terminals: %.0f %% of %zu; proposed leaves %.3f, others %.3f\n", size,
                    percent(good, asked), asked, left / static_cast<double>(std::max<std::size_t>(1, asked)),
                    leftOthers / static_cast<double>(std::max<std::size_t>(1, asked)));
        std::fflush(stdout);
    }
}

std::vector<int> sizesFrom(const std::string& text) {
    std::vector<int> sizes;
    for (const int size : {3, 12, 120}) {
        if (("," + text + ",").find("," + std::to_string(size) + ",") != std::string::npos) {
            sizes.push_back(size);
        }
    }
    return sizes;
}

}  // namespace

int main(int count, char** arguments) {
    const int buildings = count > 1 ? std::max(1, std::atoi(arguments[1])) : 100;
    const std::string table = count > 2 ? arguments[2] : "all";
    const std::vector<int> sizes = sizesFrom(count > 3 ? arguments[3] : "3,12,120");
    const auto isWanted = [&](const char* letter) { return table == "all" || table == letter; };
    if (isWanted("a")) {
        printShares(buildings, sizes);
    }
    if (isWanted("b")) {
        printClassical(buildings, sizes);
    }
    if (isWanted("c")) {
        printGrossErrors(buildings, sizes);
    }
    if (isWanted("d")) {
        printNextReading(buildings, sizes);
    }
    return 0;
}
