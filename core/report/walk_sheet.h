// The walk sheet on paper: every valve of the route with what is known of it and empty boxes for what is
// read, and its twin as a table that is filled in and read back. Not for drawing it (ui/report).
#pragma once

#include <string>
#include <vector>

#include "core/report/report.h"

namespace ww::report {

struct WalkSheet {
    std::string jobName;
    std::vector<std::string> titleLines;  ///< site, client
    int roundNumber = 0;                  ///< the open round, else the one that would come next
    project::RoundKind kind = project::RoundKind::Survey;
    std::vector<Statement> blanks;  ///< lines to fill in by hand: who, which meter, its zero
    std::vector<Statement> cautions;
    Table table;  ///< one row a valve, in the order of the route
};

/// The sheet for the round that is open, or that would come next.
WalkSheet walkSheet(const project::Project& project);

/// The same as a CSV table: the columns of readings.csv, round and tag filled in, and for the eye what the
/// sheet shows. Filled in, `record` takes it; rows left blank are passed over.
std::string walkSheetCsv(const project::Project& project);

}  // namespace ww::report
