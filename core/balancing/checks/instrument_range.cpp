#include "core/balancing/checks/support.h"
#include "core/balancing/detail/doubts.h"

namespace ww::balancing::checks {

namespace {

constexpr double kLowestFraction = 0.10;
constexpr double kHighestFraction = 0.95;

}  // namespace

/// Readings near the ends of their instrument's range; one above it is doubted by itself (detail/doubts.h).
void instrumentRange(const CheckContext& context, std::vector<Finding>& found) {
    for (const BranchResult& result : context.now.branches) {
        const project::Reading* reading = context.now.readings[result.branch].counting;
        if (reading == nullptr || !reading->dp || !reading->instrument) {
            continue;
        }
        const project::Instrument* instrument = context.project.instruments().find(*reading->instrument);
        if (instrument == nullptr || !instrument->range || instrument->range->value.si() <= 0) {
            continue;
        }
        const double fraction = reading->dp->value / instrument->range->value;
        const bool isAbove = detail::isAboveRange(instrument, reading->dp->value);
        if (fraction < kLowestFraction || (fraction > kHighestFraction && !isAbove)) {
            found.push_back(aboutBranch(context, result.branch, kOutsideInstrumentRange,
                                        {reading->dp->text(), detail::percentText(Ratio::si(fraction)),
                                         instrument->range->text(), instrument->tag},
                                        Severity::Warning, true));
        }
    }
}

}  // namespace ww::balancing::checks
