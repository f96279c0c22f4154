#include "core/balancing/checks/support.h"

namespace ww::balancing::checks {

namespace {

constexpr double kCopiedFraction = 0.30;
constexpr std::size_t kFewestCompared = 5;

bool hasThreeDigits(const base::Decimal& number) {
    std::size_t digits = 0;
    for (const char c : number.text()) {
        const bool isLeadingZero = c == '0' && digits == 0;
        digits += c >= '0' && c <= '9' && !isLeadingZero ? 1U : 0U;
    }
    return digits >= 3;
}

}  // namespace

/// Dps that repeat those of the round before digit for digit. With three digits and more, hardly any should
/// (common practice, no source).
void copiedDigits(const CheckContext& context, std::vector<Finding>& found) {
    std::size_t rows = 0;
    std::size_t same = 0;
    for (std::size_t i = 0; context.before != nullptr && i < context.now.readings.size(); ++i) {
        const project::Reading* now = context.now.readings[i].counting;
        const project::Reading* then = context.before->readings[i].counting;
        if (now == nullptr || then == nullptr || !now->dp || !then->dp || !hasThreeDigits(now->dp->digits)) {
            continue;
        }
        ++rows;
        same += *now->dp == *then->dp ? 1U : 0U;
    }
    if (rows >= kFewestCompared && static_cast<double>(same) > kCopiedFraction * static_cast<double>(rows)) {
        found.push_back({base::Fault{&kDigitsCopied,
                                     "",
                                     {detail::numberText(same), detail::numberText(rows),
                                      std::to_string(context.before->round->number)}},
                         Severity::Warning, std::nullopt, std::nullopt});
    }
}

}  // namespace ww::balancing::checks
