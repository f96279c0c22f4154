#include "core/project/merge_reason.h"

#include <array>

namespace ww::project {

std::optional<base::Fault> readMergeReason(std::string_view reason) {
    constexpr std::array kForms{&merge_reasons::kNotChosen, &merge_reasons::kNotSeen,
                                &merge_reasons::kLateReadings, &merge_reasons::kSameRevision,
                                &merge_reasons::kNotTurned};
    for (const base::MessageForm* form : kForms) {
        if (auto arguments = base::argumentsIn(form->text, reason)) {
            return base::Fault{form, {}, std::move(*arguments)};
        }
    }
    return std::nullopt;
}

}  // namespace ww::project
