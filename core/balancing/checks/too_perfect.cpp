#include <algorithm>
#include <cmath>
#include <map>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kManyFraction = 0.30;
constexpr std::size_t kFewestRows = 5;
constexpr double kEqualRatio = 0.001;
// What flows of a loop in balance scatter by at least: handles stop at marks (common practice, no source).
constexpr double kScatterRatio = 0.01;
constexpr double kUnlikelyByChance = 0.01;

Finding about(const base::MessageForm& form, std::vector<std::string> arguments) {
    return {base::Fault{&form, "", std::move(arguments)}, Severity::Warning, std::nullopt, std::nullopt};
}

/// That a reading comes as near to design by chance where the branch is set to its design flow.
double chanceOfDesign(const BranchResult& result) {
    const bool isKnown = result.readingUncertainty && result.designFlow.si() > 0;
    const double u_ratio =
        std::max(kScatterRatio, isKnown ? *result.readingUncertainty / result.designFlow : 0.0);
    return std::erf(kEqualRatio / (std::sqrt(2.0) * u_ratio));
}

/// Of at least so many out of `rows`, each with the same chance (binomial distribution).
double chanceOfAtLeast(std::size_t least, std::size_t rows, double chance) {
    double below = 0;
    for (std::size_t k = 0; k < least; ++k) {
        const auto n = static_cast<double>(rows);
        const auto hits = static_cast<double>(k);
        const double ways = std::lgamma(n + 1) - std::lgamma(hits + 1) - std::lgamma(n - hits + 1);
        below += std::exp(ways + hits * std::log(chance) + (n - hits) * std::log1p(-chance));
    }
    return 1 - below;
}

}  // namespace

/// Rows that are too good to have been read: flows equal to design, more of them than a balanced loop shows
/// by chance, or the same digits again and again.
void tooPerfect(const CheckContext& context, std::vector<Finding>& found) {
    std::size_t rows = 0;
    std::size_t likeDesign = 0;
    double chances = 0;
    std::map<std::string, std::size_t> texts;
    for (const BranchResult& result : context.now.branches) {
        const detail::BranchReadings& readings = context.now.readings[result.branch];
        // A self-acting valve within its range is at its design flow by nature.
        if (!result.isTerminal || result.isSelfActing || !readings.hasValue()) {
            continue;
        }
        ++rows;
        chances += chanceOfDesign(result);
        if (result.ofDesign && std::abs(result.ofDesign->si() - 1) < kEqualRatio) {
            ++likeDesign;
        }
        if (readings.counting->dp) {
            ++texts[readings.counting->dp->text()];
        }
    }
    if (rows < kFewestRows) {
        return;
    }
    const double many = kManyFraction * static_cast<double>(rows);
    const double chance = std::min(chances / static_cast<double>(rows), 1 - 1e-9);
    if (static_cast<double>(likeDesign) > many &&
        chanceOfAtLeast(likeDesign, rows, chance) < kUnlikelyByChance) {
        found.push_back(about(kFlowsLikeDesign, {detail::numberText(likeDesign), detail::numberText(rows)}));
    }
    for (const auto& [text, count] : texts) {
        if (static_cast<double>(count) > many) {
            found.push_back(
                about(kDigitsRepeated, {detail::numberText(count), detail::numberText(rows), text}));
        }
    }
}

}  // namespace ww::balancing::checks
