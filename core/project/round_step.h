// One step of the review of a round. A round itself keeps only the last decision on it; the journal knows all
// of them (workbook/round_steps.h). Not for whether a step is allowed (workbook/review_rules.h).
#pragma once

#include <optional>
#include <string>

#include "core/base/id.h"
#include "core/base/instant.h"

namespace ww::project {

enum class RoundStepKind {
    Sent,
    Accepted,
    SentBack,
    Withdrawn,  ///< what was sent or accepted was taken back
};

struct RoundStep {
    base::Id round;
    RoundStepKind kind{};
    std::string person;
    std::optional<base::Instant> time;
    std::string reason;  ///< why it was withdrawn or sent back, or accepted by one who took part in it

    bool operator==(const RoundStep&) const = default;
};

}  // namespace ww::project
