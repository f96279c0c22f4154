// Words for the enumerations of records, as written in tables and JSON: "survey", "manual", "propylene
// glycol". Not for the words on the screen (ui/text).
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/project/records.h"
#include "core/project/review_records.h"

namespace ww::project {

/// The word of a value. The words of one enumeration differ and never change: files keep them.
std::string_view name(UnitSystem value);
std::string_view name(fluid::FluidKind value);
std::string_view name(Scale value);
std::string_view name(BranchKind value);
std::string_view name(Side value);  ///< empty for Unknown
std::string_view name(ReturnKind value);
std::string_view name(RoundKind value);
std::string_view name(RoundState value);
std::string_view name(ReadingStatus value);
std::string_view name(CodeForm value);
std::string_view name(Disturbance value);
std::string_view name(BalancingPolicy value);
std::string_view name(PumpArrangement value);
std::string_view name(PersonRole value);
std::string_view name(ReadingPurpose value);
std::string_view name(PumpPoint value);
std::string_view name(ResetLaw value);
std::string_view name(SetPointMethod value);
std::string_view name(RecordKind value);
std::string_view name(ReadinessState value);
std::string_view name(DeficiencyStatus value);
std::string_view name(ConflictChoice value);

/// The value written as `text` (case does not matter); nothing where there is none.
template <class Enumeration>
std::optional<Enumeration> fromName(std::string_view text);

/// All names of an enumeration, "turns, degrees, percent", for messages.
template <class Enumeration>
std::string namesOf();

}  // namespace ww::project
