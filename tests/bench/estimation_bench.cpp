// What a fit costs against one forward solve, how it grows with the loop, and what memory it takes: three
// rounds of every valve and the pump on made-up loops of 12, 120 and 1,000 terminals.
#include <cmath>
#include <cstdio>
#include <string>
#include <vector>

#include "core/estimation/forecast.h"
#include "core/estimation/learn.h"
#include "tests/bench/measure.h"
#include "tests/support/hidden_loop.h"

namespace {

using namespace ww;
using bench::peakMegabytes;
using bench::processorSecondsOf;

struct Size {
    int branches;
    int terminalsOfBranch;
};

double report(const Size& size, bool hasTableErrors, bool isSparse) {
    support::HiddenLoopOptions loopOptions;
    loopOptions.branches = size.branches;
    loopOptions.terminalsOfBranch = size.terminalsOfBranch;
    support::HiddenLoop loop(loopOptions);
    loop.readRound(loop.addOpenCase());
    loop.readRound(loop.addThrottledCase());
    loop.readRound(loop.addThrottledCase());
    estimation::LearnOptions options;
    options.hasTableErrors = hasTableErrors;
    options.leastSparseReadings = isSparse ? 1 : 1000000;

    const auto network = loop.learning().cases.front();
    constexpr int kSolves = 200;
    const double solve_s = processorSecondsOf([&] {
                               for (int i = 0; i < kSolves; ++i) {
                                   hydraulics::solve(network);
                               }
                           }) /
                           kSolves;
    estimation::LearnResult result;
    const double fit_s = processorSecondsOf([&] { result = estimation::learn(loop.learning(), options); });
    const auto& learned = *result.learned;
    const double shares_s = processorSecondsOf([&] {
        const auto ahead =
            estimation::forecast(loop.learning(), learned.lnFactorOfUnknowns(), 2, loop.circuits());
        learned.posterior.varianceFactorOfEach(estimation::shareFunctionals(ahead.links));
    });
    std::printf("%5zu  %-7s %-7s %3d  %9.4f  %9.4f  %8.0f  %7.0f\n", loop.terminalCount(),
                hasTableErrors ? "unknown" : "trusted", isSparse ? "sparse" : "dense", learned.iterations,
                fit_s, shares_s, fit_s / solve_s, peakMegabytes());
    return fit_s;
}

}  // namespace

int main(int count, char** arguments) {
    // Peak memory only grows: --only N takes one size by itself.
    const bool isOne = count == 3 && std::string(arguments[1]) == "--only";
    const int only = isOne ? std::stoi(arguments[2]) : 0;
    std::printf(
        "terminals x 3 rounds\n    n  tables  algebra steps   fit s    shares s  fit/solve  peak MB\n");
    const std::vector<Size> sizes{{3, 4}, {10, 12}, {20, 25}, {25, 40}};
    for (const bool hasTableErrors : {false, true}) {
        double last_s = 0;
        double lastSize = 0;
        for (const Size& size : sizes) {
            const int terminals = size.branches * size.terminalsOfBranch;
            if (isOne && terminals != only) {
                continue;
            }
            if (terminals <= 200) {
                report(size, hasTableErrors, false);
            }
            const double fit_s = report(size, hasTableErrors, true);
            if (last_s > 0) {
                std::printf("       growth exponent %.2f\n",
                            std::log(fit_s / last_s) / std::log(terminals / lastSize));
            }
            last_s = fit_s;
            lastSize = terminals;
        }
    }
    return 0;
}
