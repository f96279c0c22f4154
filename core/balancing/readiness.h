// The usual list of what must hold before a loop is surveyed. Not for the gate itself (workbook/).
#pragma once

#include <string_view>

#include "core/base/term.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::balancing {

/// Puts the usual lines behind those that are there; a line whose words are there already is left out.
/// What a system must be before it is balanced, after general commissioning practice (common practice, no
/// source): complete and clean, filled and vented, pumps and motors safe to run, everything open that must
/// be open. The record keeps them in English; `wording` gives the words in which they may stand there as
/// well.
project::Edit addUsualReadiness(const project::Project& project, base::IdSource& ids,
                                const base::Wording& wording = {});

/// Whether a line stands as addUsualReadiness() wrote it, so that the screen may say it in its language.
bool isUsualReadiness(std::string_view text);

/// Adds an empty line, or changes one (the same id): `line.position` 0 takes the next place.
project::Edit putReadinessLine(const project::Project& project, project::ReadinessLine line);

}  // namespace ww::balancing
