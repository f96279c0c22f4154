// What a benchmark of core measures of itself. Not for times on a clock, which other work on the machine
// moves.
#pragma once

#include <sys/resource.h>

#include <ctime>

namespace ww::bench {

/// The most memory that the program has held so far.
inline double peakMegabytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024;
}

/// Processor time of some work, so that a busy machine does not count.
template <class Work>
double processorSecondsOf(Work work) {
    const std::clock_t start = std::clock();
    work();
    return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

}  // namespace ww::bench
