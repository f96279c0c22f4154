// A conflict that merging left open, in the language of the screen. Not for what it is in the record
// (core/workbook/conflict_parts.h).
#pragma once

#include <QString>
#include <string>

#include "core/project/project.h"

namespace ww::ui::text {

/// What stands in the dialog: "B-04, Setting, round 3" and both values; a value that is not there is empty.
struct ConflictText {
    QString place;
    QString ours;
    QString theirs;
};

ConflictText conflictText(const project::MergeConflict& conflict);

/// A place alone, as it stands in the label of a choice.
QString conflictPlace(const std::string& place);

/// A reason as its reader says it: what merging wrote is translated, what a person wrote stays.
QString reason(const std::string& stored);

/// Both values as a cell has room for them, the digits alone where they are numbers: "30.5", "cannot be
/// read".
struct ConflictDigits {
    QString ours;
    QString theirs;
};
ConflictDigits conflictDigits(const project::MergeConflict& conflict);

}  // namespace ww::ui::text
