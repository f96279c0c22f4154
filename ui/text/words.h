// Messages and enumerations as words on the screen, translated. Not for numbers (format.h).
#pragma once

#include <QString>

#include "core/balancing/aim.h"
#include "core/balancing/assessment.h"
#include "core/base/fault.h"

namespace ww::ui::text {

/// "Subject: what is wrong; what to do." in the language of the screen.
QString text(const base::Fault& fault);
/// The same without its subject, beginning with a capital.
QString sentence(const base::Fault& fault);

/// "Not read", "Short", "Over", "On share", "Drifted", "At stop", "Doubtful".
QString word(balancing::State state);
/// The same of a branch: a self-acting valve has a range and no share.
QString word(balancing::State state, const project::Branch& branch);
QString word(balancing::Verdict verdict);
/// "OPEN", "CLOSE", "HOLD", "READ AGAIN", "At stop".
QString word(balancing::AimWord word);
QString word(project::RoundKind kind);
QString word(project::RoundState state);
QString word(project::BranchKind kind);
QString word(project::UnitSystem units);
QString word(project::Scale scale);
QString word(fluid::FluidKind fluid);

}  // namespace ww::ui::text
