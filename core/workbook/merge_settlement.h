// What must hold in a job after two copies came together, and what a person has to pick: numbers and names
// that both gave, valves that both read, rounds that one side accepted. Pure functions over values; a
// workbook carries it out (merge.cpp).
#pragma once

#include <string>
#include <vector>

#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::workbook {

// Fields of a conflict that are no column.
inline constexpr std::string_view kRemovedField{};                     ///< removed here, changed there
inline constexpr std::string_view kSameNameField = "same_name";        ///< two records of one name or number
inline constexpr std::string_view kTwoReadingsField = "two_readings";  ///< one place read on both sides
inline constexpr std::string_view kLateReadingsField = "late_readings";  ///< after the round was accepted
inline constexpr std::string_view kSameRevisionField = "same_revision";  ///< one revision signed twice

/// The job on both sides before, and as it is once the changes that fit were taken over.
struct MergeSides {
    const project::Project& ours;
    const project::Project& theirs;
    const project::Project& merged;
    std::string ourMachine;
    std::string theirMachine;
};

/// A conflict with the records that choosing a side needs.
struct KeptConflict {
    project::MergeConflict conflict;
    std::vector<project::AnyRecord> ours;
    std::vector<project::AnyRecord> theirs;
};

struct Settlement {
    std::vector<project::AnyRecord> put;  ///< records that must change for the job to hold together
    std::vector<KeptConflict> conflicts;
    std::size_t readingsAdded = 0;      ///< read on the other side alone
    std::size_t readingsIdentical = 0;  ///< places read on both sides with the same values
};

/// Neither side's values are changed but: sequences of readings follow the time; the incoming one of two
/// equal names or numbers gets another; readings that a sent or accepted round has not seen are struck until
/// a person picks; a ring of branches is opened again; a round that one side closed keeps that side's design.
Settlement settle(const MergeSides& sides);

/// The same on both laptops, whichever merges: from the record, the field and both contents in any order.
base::Id conflictId(project::RecordKind kind, const base::Id& record, std::string_view field,
                    std::string first, std::string second);

/// Whether merging holds back what the other side read in a round of this state.
bool isSealed(project::RoundState state);

}  // namespace ww::workbook
