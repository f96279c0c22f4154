// What learning a job and advising its settings costs against one forward solve, how it grows and what memory
// it takes: a survey and two further rounds of every valve, in jobs of 12, 120 and 1,000 terminals with
// hidden resistances. --only N takes one size by itself, for its peak memory.
#include <cstdio>
#include <string>

#include "core/balancing/advice/advice.h"
#include "core/balancing/prediction.h"
#include "core/hydraulics/solve.h"
#include "tests/bench/measure.h"
#include "tests/support/hidden_job.h"

namespace {

using namespace ww;
using bench::peakMegabytes;
using bench::processorSecondsOf;
using support::HiddenJob;

balancing::LoopState advised(const project::Project& project, const balancing::Advice& advice) {
    balancing::LoopState state;
    for (const balancing::SettingAdvice& setting : advice.settings) {
        state.settings[project.branches()[setting.branch].id] = setting.setting;
    }
    return state;
}

void report(int risers, int terminalsOfRiser, bool findDoubtful) {
    HiddenJob job(risers, terminalsOfRiser);
    job.hide();
    job.readRound(project::RoundKind::Survey, {});
    balancing::LearnLoopOptions options;
    options.findDoubtful = findDoubtful;
    for (int round = 0; round < 2; ++round) {
        const auto learned = balancing::learn(job.project(), options);
        job.readRound(project::RoundKind::Final,
                      advised(job.project(), balancing::advise(job.project(), learned)));
    }
    const auto built = balancing::hydraulicModel(job.project(), {});
    constexpr int kSolves = 200;
    const double solve_s = processorSecondsOf([&] {
                               for (int i = 0; i < kSolves; ++i) {
                                   hydraulics::solve(built.model->network);
                               }
                           }) /
                           kSolves;
    balancing::LearnedLoop learned;
    balancing::Advice advice;
    const double learn_s = processorSecondsOf([&] { learned = balancing::learn(job.project(), options); });
    const double advise_s = processorSecondsOf([&] { advice = balancing::advise(job.project(), learned); });
    std::printf("%5d  %-7s %9.4f %9.4f %10.0f %8.0f  spread %.2f %%, P(band) %.2f / %.2f\n",
                risers * terminalsOfRiser, findDoubtful ? "yes" : "no", learn_s, advise_s,
                (learn_s + advise_s) / solve_s, peakMegabytes(), 100 * advice.spread.si(),
                advice.indicatedProbability.si(), advice.actualProbability.si());
}

}  // namespace

int main(int count, char** arguments) {
    const bool isOne = count == 3 && std::string(arguments[1]) == "--only";
    const int only = isOne ? std::stoi(arguments[2]) : 0;
    std::printf("terminals x 3 rounds\n    n  doubts    learn s  advise s  of a solve  peak MB\n");
    const int sizes[][2] = {{3, 4}, {10, 12}, {25, 40}};
    for (const auto& size : sizes) {
        if (isOne && size[0] * size[1] != only) {
            continue;
        }
        report(size[0], size[1], false);
        report(size[0], size[1], true);
    }
    return 0;
}
