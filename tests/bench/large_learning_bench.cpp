// What learning and advising takes of time and memory in jobs too large for dense algebra. One job a run, as
// peak memory only grows: large_learning_bench RISERS TERMINALS_OF_RISER ROUNDS [each | slowed]. With `each`
// every round after the survey is read valve by valve, else all valves were set before it; with `slowed` the
// last round reads as if the pump had run slower than was noted. Where dense algebra runs too, it prints how
// far its answers are apart.
#include <cstdio>
#include <cstdlib>
#include <string>

#include "core/balancing/aim.h"
#include "core/balancing/detail/loop_fits.h"
#include "tests/bench/measure.h"
#include "tests/support/dense_way.h"
#include "tests/support/hidden_job.h"

namespace {

using namespace ww;

/// A little off where they stand, as after a first guess: settings for a round to be read at.
balancing::LoopState settingsOf(const project::Project& project, int round) {
    balancing::LoopState state;
    std::size_t number = 0;
    for (const project::Branch& branch : project.branches()) {
        const double turns =
            1.5 + 0.1 * static_cast<double>((number++ * 7 + static_cast<std::size_t>(round) * 3) % 21);
        state.settings[branch.id] = quantity::Setting::si(turns);
    }
    return state;
}

void compareWithDense(const project::Project& project, const balancing::LearnedLoop& learned) {
    constexpr std::size_t kMostDense = 300;
    const auto terminals = project.tree().terminals();
    if (terminals.size() > kMostDense || learned.fits == nullptr) {
        return;
    }
    std::vector<hydraulics::LinkIndex> circuits;
    for (const std::size_t terminal : terminals) {
        circuits.push_back(learned.fits->loop.model->circuitLink[terminal]);
    }
    const support::WaysApart apart = support::waysApart(learned.fits->loop.learning, circuits);
    std::printf(
        "  dense algebra differs at most by: unknowns %.1e of their sd, sds %.1e, scores %.1e, sds of "
        "shares %.1e\n",
        apart.unknown, apart.sd, apart.score, apart.shareSd);
}

/// Each dp of the last round is a part of what it was, which no speed that was noted explains.
project::Project withSlowedRound(project::Project project) {
    constexpr double kPart = 0.6;
    const base::Id last = project.lastRound()->id;
    std::vector<project::Reading> slowed;
    for (const project::Reading& reading : project.readings()) {
        if (reading.round == last && reading.dp) {
            slowed.push_back(reading);
            slowed.back().dp = quantity::measured<quantity::PressureDifference>(
                base::Decimal::fromNumber(kPart * reading.dp->value.si() / 1000, 2),
                quantity::Unit::Kilopascal);
        }
    }
    for (project::Reading& reading : slowed) {
        project.put(std::move(reading));
    }
    return project;
}

void run(int risers, int terminalsOfRiser, int rounds, const std::string& how) {
    const bool isEach = how == "each";
    support::HiddenJob job(risers, terminalsOfRiser);
    job.hide();
    job.readRound(project::RoundKind::Survey, {});
    for (int round = 1; round < rounds; ++round) {
        const balancing::LoopState state = settingsOf(job.project(), round);
        if (isEach) {
            job.adjustRound(state);
        } else {
            job.readRound(project::RoundKind::Final, state);
        }
    }
    const project::Project project = how == "slowed" ? withSlowedRound(job.project()) : job.project();
    std::printf("%d terminals x %d rounds, %s: the job itself %.0f MB\n", risers * terminalsOfRiser, rounds,
                isEach ? "valve by valve" : "set before", bench::peakMegabytes());
    std::fflush(stdout);
    balancing::LearnedLoop learned;
    const double learn_s = bench::processorSecondsOf([&] { learned = balancing::learn(project); });
    std::printf("  learn  %8.1f s, peak %5.0f MB, outcome %d, %zu doubtful, %zu shifted, misfit %d\n",
                learn_s, bench::peakMegabytes(), static_cast<int>(learned.outcome), learned.doubtful.size(),
                learned.shifted.size(), learned.isMisfit ? 1 : 0);
    for (const base::Fault& fault : learned.faults) {
        std::printf("    %s\n", base::english(fault).c_str());
    }
    compareWithDense(project, learned);
    std::fflush(stdout);
    balancing::Advice advice;
    const double advise_s = bench::processorSecondsOf([&] { advice = balancing::advise(project, learned); });
    std::printf("  advise %8.1f s, peak %5.0f MB, spread %.2f %%, P(band) %.2f / %.2f\n", advise_s,
                bench::peakMegabytes(), 100 * advice.spread.si(), advice.indicatedProbability.si(),
                advice.actualProbability.si());
    for (const base::Fault& fault : advice.whyNot) {
        std::printf("    %s: %s\n", fault.subject.c_str(), base::english(fault).c_str());
    }
    const std::size_t terminal = project.tree().terminals().back();
    const double aim_s =
        bench::processorSecondsOf([&] { balancing::aim(project, terminal, &learned, &advice); });
    std::printf("  the aim of one valve %.0f ms\n", 1000 * aim_s);
    if (advice.helpful) {
        std::printf("    most helpful: %s: %s\n", advice.helpful->why.subject.c_str(),
                    base::english(advice.helpful->why).c_str());
    }
}

}  // namespace

int main(int count, char** arguments) {
    const int risers = count > 1 ? std::atoi(arguments[1]) : 25;
    const int terminalsOfRiser = count > 2 ? std::atoi(arguments[2]) : 40;
    const int rounds = count > 3 ? std::atoi(arguments[3]) : 10;
    run(risers, terminalsOfRiser, rounds, count > 4 ? arguments[4] : "");
    return 0;
}
