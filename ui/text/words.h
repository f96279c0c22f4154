// Messages and enumerations as words on the screen, translated. Not for numbers (format.h).
#pragma once

#include <QString>

#include "core/balancing/aim.h"
#include "core/balancing/assessment.h"
#include "core/base/fault.h"
#include "core/base/term.h"
#include "core/project/names.h"

namespace ww::ui::text {

/// A word of the program (core/base/term.h, the names of enumerations) in the language of the screen; other
/// text comes back as it is.
QString term(std::string_view word);
/// A number with its unit, or a unit alone, in ASCII as core writes it ("11.6 m3/h"), with the signs of print
/// ("11.6 m³/h") and rpm as the language of the screen has it. Any other text stays as it is.
QString withPrettyUnit(QString quantity);
/// term() for texts that core puts together.
base::Wording wording();
/// A line of readiness in the language of the screen where it is a usual one (core/balancing/readiness.h);
/// any other stays as it was typed.
QString readinessLine(std::string_view stored);
/// term() for words with commas between them, also where a tag or a number follows a word: "valve T4".
QString terms(const QString& list);
/// A sentence with its arguments in the language of the screen, without its subject.
QString translated(const base::Fault& fault);
/// "Subject: what is wrong; what to do." in the language of the screen.
QString text(const base::Fault& fault);
/// The same without its subject, beginning with a capital.
QString sentence(const base::Fault& fault);

/// The word of an enumeration as it stands in a sentence and is typed into a table: "sent back", "turns".
template <class Enumeration>
QString nameOf(Enumeration value) {
    return term(project::name(value));
}
/// The same of a round, which has a gender of its own in some languages.
QString nameOf(project::RoundState state);

// The word of an enumeration as a label of its own, with a capital; it may be longer: "Manual valve".

/// "Not read", "Short", "Over", "On share", "Drifted", "At open stop" (with `isOver` "At shut stop"),
/// "Doubtful". A self-acting valve has a range and no share, so it is "In range".
QString word(balancing::State state, bool isSelfActing = false, bool isOver = false);
/// The same of a branch, and in one round.
QString word(balancing::State state, const project::Branch& branch,
             const std::optional<quantity::Ratio>& ofTarget);
QString word(const balancing::BranchResult& result);
/// "OPEN", "CLOSE", "HOLD", "READ AGAIN", "NO FURTHER".
QString word(balancing::AimWord word);
QString word(project::RoundKind kind);
QString word(project::BranchKind kind);
QString word(fluid::FluidKind fluid);

}  // namespace ww::ui::text
