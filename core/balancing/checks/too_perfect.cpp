#include <cmath>
#include <map>

#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kManyFraction = 0.30;
constexpr std::size_t kFewestRows = 5;
constexpr double kEqualRatio = 0.001;

Finding about(const base::MessageForm& form, std::vector<std::string> arguments) {
    return {base::Fault{&form, "", std::move(arguments)}, Severity::Warning, std::nullopt, std::nullopt};
}

}  // namespace

/// Rows that are too good to have been read: flows equal to design, or the same digits again and again.
void tooPerfect(const CheckContext& context, std::vector<Finding>& found) {
    std::size_t rows = 0;
    std::size_t likeDesign = 0;
    std::map<std::string, std::size_t> texts;
    for (const BranchResult& result : context.now.branches) {
        const detail::BranchReadings& readings = context.now.readings[result.branch];
        // A self-acting valve within its range is at its design flow by nature.
        if (!result.isTerminal || result.isSelfActing || !readings.hasValue()) {
            continue;
        }
        ++rows;
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
    if (static_cast<double>(likeDesign) > many) {
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
