// A small good job as CSV tables, to be spoiled one cell at a time.
#pragma once

#include <filesystem>
#include <fstream>
#include <map>
#include <string>

#include "tests/support/temporary_folder.h"

namespace ww::support {

using JobTables = std::map<std::string, std::string>;

/// Two circuits on one pump, two rounds, one instrument; every table of a job folder.
inline JobTables goodJob() {
    return {
        {"job.csv", "key,value\nname,Small loop\nunits,SI\nfluid,water\ntemperature[C],20\n"},
        {"valves.csv",
         "model,size,scale,setting,Kv,minimum_dp[kPa],accuracy[%]\n"
         "V-1,DN20,turns,0,0,1,5\nV-1,DN20,turns,1,1.0,1,5\nV-1,DN20,turns,2,2.2,1,5\nV-1,DN20,turns,4,6.0,1,"
         "5\n"},
        {"branches.csv",
         "tag,parent,serves,kind,design_flow[L/"
         "s],run_loss[kPa],circuit_loss[kPa],valve_model,valve_size,setting\n"
         "R1,,Riser,none,,2.0,1.0,,,\n"
         "B-01,R1,Room 1,manual,0.25,1.0,12.0,V-1,DN20,4\n"
         "B-02,R1,Room 2,manual,0.30,3.0,15.0,V-1,DN20,4\n"},
        {"pumps.csv", "tag,running,speed[rpm],impeller[mm],impeller_min[mm]\nP-1,yes,1450,165,148\n"},
        {"pump_curve.csv", "pump,flow[L/s],head[m]\nP-1,0,6.0\nP-1,0.5,5.2\nP-1,1.0,3.0\n"},
        {"instruments.csv",
         "tag,kind,serial,range[kPa],accuracy[%],accuracy_floor[kPa],calibrated,due\n"
         "M-1,dp meter,S-100,100,1,0.1,2026-01-10,2027-01-10\n"},
        {"readings.csv",
         "round,kind,time,tag,setting,dp[kPa],instrument,person,note\n"
         "1,survey,2026-03-04T09:00,B-01,4,3.10,M-1,I. Moss,\n"
         "1,survey,2026-03-04T09:05,B-02,4,2.60,M-1,I. Moss,\n"
         "2,final,2026-03-05T09:00,B-01,3.2,5.20,M-1,I. Moss,\n"
         "2,final,2026-03-05T09:05,B-02,4,2.90,M-1,I. Moss,\n"},
        {"pump_readings.csv",
         "round,time,pump,suction[kPa],discharge[kPa],speed[rpm]\n1,2026-03-04T09:10,P-1,150,202,1450\n"}};
}

inline void write(const JobTables& tables, const std::filesystem::path& folder) {
    std::filesystem::create_directories(folder);
    for (const auto& [name, text] : tables) {
        std::ofstream(folder / name, std::ios::binary) << text;
    }
}

/// The tables with the first occurrence of `from` in one of them replaced.
inline JobTables spoiled(JobTables tables, const std::string& file, const std::string& from,
                         const std::string& to) {
    std::string& text = tables.at(file);
    const std::size_t at = text.find(from);
    EXPECTS(at != std::string::npos);
    text.replace(at, from.size(), to);
    return tables;
}

}  // namespace ww::support
