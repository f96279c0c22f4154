// What the readers of the single tables share while a folder is read: ids, names already known, the edit so
// far.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "core/exchange/job_folder.h"
#include "core/project/project.h"

namespace ww::exchange {

/// Names are compared without regard to case; the value is the record as read.
struct ImportContext {
    std::filesystem::path folder;
    base::IdSource& ids;
    std::vector<RowFault>& faults;

    project::Job job;
    quantity::Density density;
    std::map<std::string, project::ValveModel> valves;  ///< by "model\nsize", lower case
    std::vector<project::Branch> branches;              ///< in order of rows
    std::map<std::string, std::size_t> branchByTag;     ///< lower case; index into branches
    std::vector<project::Pump> pumps;
    std::map<std::string, std::size_t> pumpByTag;
    std::map<std::string, project::Instrument> instruments;  ///< by tag, lower case
    std::map<std::string, project::Person> people;           ///< by name, as written
    std::map<int, project::Round> rounds;                    ///< by number
    std::vector<project::Reading> readings;
    std::vector<project::PumpReading> pumpReadings;

    /// The id of a person by name; a new one is made on first use.
    base::Id personNamed(const std::string& name);
};

/// Lower case of ASCII letters, for comparing tags.
std::string folded(std::string_view text);

void readJob(ImportContext& context);
void readValves(ImportContext& context);
void readBranches(ImportContext& context);
void readPumps(ImportContext& context);
void readPumpCurves(ImportContext& context);
void readInstruments(ImportContext& context);
void readRounds(ImportContext& context);
void readReadingTable(ImportContext& context, bool isRequired);
void readPumpReadings(ImportContext& context);

}  // namespace ww::exchange
