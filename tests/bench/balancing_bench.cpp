// How long judging a round takes for hierarchical jobs: ten risers, 100 or 1,000 terminals each, ten rounds.
#include <benchmark/benchmark.h>

#include "core/balancing/assess.h"
#include "tests/support/field_job.h"

namespace {

ww::support::FieldJob bigJob(int terminals, int rounds) {
    ww::support::FieldJob job;
    const auto valve = job.valve({{"0", "0"}, {"1", "1"}, {"2", "2"}, {"3", "4"}, {"4", "8"}});
    constexpr int kRisers = 10;
    for (int r = 0; r < kRisers; ++r) {
        job.branch("R" + std::to_string(r), "", "", valve);
    }
    std::vector<std::string> tags;
    for (int i = 0; i < terminals; ++i) {
        tags.push_back("T" + std::to_string(i));
        job.branch(tags.back(), "R" + std::to_string(i % kRisers), "4", valve);
    }
    job.instrument("1", "0.1");
    for (int r = 0; r < rounds; ++r) {
        job.round(ww::project::RoundKind::Adjusting);
        for (int i = 0; i < terminals; ++i) {
            job.dp(tags[static_cast<std::size_t>(i)],
                   ww::base::Decimal::fromNumber(24 + (i * 7 + r) % 3, 1).text(), "4");
        }
    }
    return job;
}

void judge(benchmark::State& state, ww::balancing::AssessOptions options) {
    const auto job = bigJob(static_cast<int>(state.range(0)), 10);
    for (auto _ : state) {
        benchmark::DoNotOptimize(ww::balancing::assess(job.project(), job.newestRound(), options));
    }
}

BENCHMARK_CAPTURE(judge, numbersOnly, ww::balancing::AssessOptions{true, true})
    ->Arg(1000)
    ->Arg(10000)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(judge, everything, ww::balancing::AssessOptions{})
    ->Arg(1000)
    ->Arg(10000)
    ->Unit(benchmark::kMicrosecond);

}  // namespace
