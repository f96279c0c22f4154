// A job as a folder of CSV tables, in and out (RFC 4180). Reading is a dry run: it yields an edit and all
// faults; nothing is applied here. Not for readings added later by hand.
//
// Beyond the tables of the contract, readJobFolder() takes and writeJobFolder() writes: valves.csv
// maximum_dp, accuracy_shut (how much more the table errs towards shut), and for a limiter or picv without a
// table one row with minimum_dp and neither setting nor coefficient; people.csv (name), for those who read
// nothing; rounds.csv (round, kind, state, opened, closed), without which all rounds but the last are closed
// and the rows of a round must stand in order of time; readings.csv status, repeat, cannot_read, doubtful,
// reason; pump_readings.csv status; both corrects: which row of the round (1: the first in this table) a
// reading corrects. Without that column a reading corrects the superseded one before it at the same place. A
// cell that was entered in another unit than its column's carries that unit behind a blank: "1.8 psi". Text
// that begins like a formula (= + - @) has an apostrophe in front, which reading takes off.
//
// readings.csv may have the columns of a walk sheet besides: serves, valve, setting_now, last_dp are for the
// eye and read by nobody; where setting_now stands, rows in which nothing was filled in are passed over.
//
// What else a job holds stands in optional columns of these tables and in optional tables of its own:
// load.csv (hours, flow[%]), witness_sample.csv (round, tag), earlier_designs.csv (round, tag, in_loop,
// design_flow[..]: the design by which a closed round is judged), set_points.csv, readiness.csv,
// deficiencies.csv, comments.csv, attachments.csv (its files in the folder attachments, named by what they
// hold), finding_reasons.csv, signed_reports.csv, merge_conflicts.csv, clock_offsets.csv. record_columns.h
// lists their columns. A cell that names another record holds a tag, a name or a number; a reading is
// "round:row", the row counted within its round; a comment is answered by the number of its row.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::exchange {

/// A fault in a table: where and what. `row` counts lines from 1 (the header); 0: the file as a whole.
struct RowFault {
    std::string file;
    int row = 0;
    std::string column;
    base::Fault fault;
    std::string cell = {};  ///< in a spreadsheet: "readings!F12", or the sheet alone
};
/// "FILE:ROW:COLUMN"; row 1 and column "-" where the file as a whole is meant. In a spreadsheet
/// "FILE:SHEET!CELL".
std::string placeOf(const RowFault& fault);
/// The same with the English message behind it: "FILE:ROW:COLUMN: what is wrong; what to do".
std::string text(const RowFault& fault);

/// What reading a folder would do. With any fault the edit must not be applied.
struct ImportPlan {
    project::Edit edit;
    std::vector<RowFault> faults;  ///< all faults of all tables, in order of file and row
    bool isAcceptable() const { return faults.empty(); }
};

/// A new job from a folder (`new`). Every fault in every table is listed.
ImportPlan readJobFolder(const std::filesystem::path& folder, base::IdSource& ids);
/// Rounds and readings added to an existing job (`record`): readings.csv, pump_readings.csv.
ImportPlan readReadings(const std::filesystem::path& folder, const project::Project& project,
                        base::IdSource& ids);

/// Writes the whole job as CSV tables that readJobFolder() reads back to an equal job, digits as typed.
base::Outcome writeJobFolder(const project::Project& project, const std::filesystem::path& folder);

/// One table as it would be written.
struct JobTable {
    std::string file;  ///< "readings.csv"
    std::string text;
};
/// The tables that writeJobFolder() writes.
std::vector<JobTable> jobTables(const project::Project& project);

/// The whole job as one JSON document (UTF-8), digits as typed beside SI values.
std::string jobJson(const project::Project& project);

}  // namespace ww::exchange
