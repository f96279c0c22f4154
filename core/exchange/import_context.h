// What the readers of the single tables share while tables are read: ids, names already known, the edit so
// far.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/exchange/table_source.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::exchange {

/// Names are compared without regard to case; the value is the record as read.
struct ImportContext {
    ImportContext(const TableSource& from, base::IdSource& idSource, std::vector<RowFault>& found)
        : source(from), ids(idSource), faults(found) {}

    const TableSource& source;
    base::IdSource& ids;
    std::vector<RowFault>& faults;

    project::Job job;
    quantity::Density density;
    std::vector<project::ValveModel> valves;
    std::map<std::string, std::size_t> valveByName;  ///< by valveKey()
    std::vector<project::Branch> branches;           ///< in order of rows
    std::map<std::string, std::size_t> branchByTag;  ///< lower case; index into branches
    std::set<base::Id> branchesOfUnknownValve;       ///< reported in branches.csv or valves.csv
    std::vector<project::Pump> pumps;
    std::map<std::string, std::size_t> pumpByTag;
    std::vector<project::Instrument> instruments;
    std::map<std::string, std::size_t> instrumentByTag;
    std::vector<project::Person> people;
    std::map<std::string, std::size_t> personByName;  ///< as written
    std::map<int, project::Round> rounds;             ///< by number
    bool hasRoundTable = false;                       ///< rounds.csv says when rounds were walked
    bool isAdding = false;                            ///< what there is so far stands in a workbook
    std::vector<project::Reading> readings;
    std::vector<project::PumpReading> pumpReadings;
    std::map<project::RecordKind, std::map<int, base::Id>> idsByRow;  ///< of the tables of review
    std::map<int, base::Id> deficiencyByNumber;
    std::vector<project::AnyRecord> reviewRecords;  ///< in order of tables and rows

    /// The id of the record in a row, counted from 1, of a table of review; made on first use.
    base::Id idOfRow(project::RecordKind kind, int row);
    /// The id of a person by name; a new one is made on first use.
    base::Id personNamed(const std::string& name);
};

inline constexpr base::MessageForm kInJobAlready{
    "in_job_already", "\"{1}\" is in the job already; leave the row out, or give it another name"};

/// The order in which people work: tables of a folder, then rows.
void sortFaults(std::vector<RowFault>& faults);

/// Tags of records, for suggestions.
template <class Records>
std::vector<std::string> tagsOf(const Records& records) {
    std::vector<std::string> tags;
    for (const auto& record : records) {
        tags.push_back(record.tag);
    }
    return tags;
}

/// How a valve is found: by model and size.
std::string valveKey(const std::string& model, const std::string& size);

/// Lower case of ASCII letters, for comparing tags.
std::string folded(std::string_view text);

void readJob(ImportContext& context);
void readValves(ImportContext& context);
void readBranches(ImportContext& context);
void readPumps(ImportContext& context);
void readPumpCurves(ImportContext& context);
void readInstruments(ImportContext& context);
void readPeople(ImportContext& context);
void readRounds(ImportContext& context);
void readReadingTable(ImportContext& context, bool isRequired);
void readPumpReadings(ImportContext& context);
void readReviewTables(ImportContext& context);

}  // namespace ww::exchange
