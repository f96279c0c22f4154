// A text that is typed in the walk and not entered: kept at the desk, so that a dead battery does not take
// it. It is no reading and is never part of a job.
#pragma once

#include <QString>

#include "core/base/id.h"

namespace ww::ui {

struct TypedDraft {
    enum class Field { Reading, Setting };

    base::Id round;  ///< the newest one when it was typed
    base::Id branch;
    Field field = Field::Reading;
    QString text;

    bool operator==(const TypedDraft&) const = default;
};

}  // namespace ww::ui
