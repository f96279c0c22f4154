// A small sound job as CSV tables for tests of reading: a riser with two terminals, one pump, two rounds.
// Tests spoil it one cell at a time. Invented; the readings hang together only roughly.
#pragma once

#include <map>
#include <stdexcept>
#include <string>
#include <string_view>

#include "tests/support/temporary_folder.h"

namespace ww::support {

/// The texts of the tables by file name.
class JobTables {
  public:
    JobTables() {
        m_files["job.csv"] =
            "key,value\nname,Weir House\nunits,US\nfluid,water\ntemperature[F],60\ntolerance_low[%],-10\n"
            "tolerance_high[%],10\nmatching_band[%],5\nhours[h/yr],4000\n";
        m_files["valves.csv"] =
            "model,size,scale,setting,Cv,minimum_dp[psi],accuracy[%]\nV,1,turns,1,3,0.3,5\n"
            "V,1,turns,2.5,7,0.3,5\nV,1,turns,4,12,0.3,5\n";
        m_files["branches.csv"] =
            "tag,parent,serves,kind,design_flow[gpm],run_loss[ft],circuit_loss[ft],valve_model,valve_size,"
            "setting\nR1,,riser,none,30,,,,,\nT1,R1,office,manual,12,2,8,V,1,4\nT2,R1,hall,manual,18,1,9,V,1,"
            "4\n";
        m_files["pumps.csv"] =
            "tag,running,speed[rpm],impeller[in],impeller_min[in],motor_power[hp]\nP-1,yes,1750,6.5,5.5,1\n";
        m_files["pump_curve.csv"] = "pump,flow[gpm],head[ft]\nP-1,0,40\nP-1,20,38\nP-1,40,32\n";
        m_files["instruments.csv"] =
            "tag,kind,serial,range[psi],accuracy[%],accuracy_floor[psi],calibrated,due\n"
            "M-1,dp meter,77,30,1,0.02,2025-06-01,2026-06-01\n";
        m_files["readings.csv"] =
            "round,kind,time,tag,setting,dp[psi],instrument,person,note\n"
            "1,survey,2026-03-02T09:00,T1,4,1.10,M-1,A. Fields,\n"
            "1,survey,2026-03-02T09:05,T2,4,2.90,M-1,A. Fields,\n"
            "2,final,2026-03-03T09:00,T1,3.0,1.20,M-1,A. Fields,\n"
            "2,final,2026-03-03T09:05,T2,4,2.85,M-1,A. Fields,\n";
        m_files["pump_readings.csv"] =
            "round,time,pump,suction[psi],discharge[psi],speed[rpm],instrument\n"
            "1,2026-03-02T09:10,P-1,10.1,26.2,1750,M-1\n";
    }

    /// A table with other bytes altogether.
    void put(const std::string& file, std::string bytes) { m_files[file] = std::move(bytes); }
    void remove(const std::string& file) { m_files.erase(file); }
    /// Puts `to` in place of the first `from`; throws where there is none, so that no case tests nothing.
    void replace(const std::string& file, std::string_view from, std::string_view to) {
        std::string& text = m_files.at(file);
        const std::size_t at = text.find(from);
        if (at == std::string::npos) {
            throw std::runtime_error("no \"" + std::string(from) + "\" in " + file);
        }
        text.replace(at, from.size(), to);
    }
    void append(const std::string& file, std::string_view bytes) { m_files[file] += bytes; }
    const std::string& at(const std::string& file) const { return m_files.at(file); }
    const std::map<std::string, std::string>& files() const { return m_files; }

    /// Writes all tables below `folder`; gives the path of the folder they stand in.
    std::string writeTo(const TemporaryFolder& folder, const std::string& name = "tables") const {
        std::filesystem::create_directories(folder.path() / name);
        for (const auto& [file, bytes] : m_files) {
            folder.write(name + "/" + file, bytes);
        }
        return folder.file(name);
    }

  private:
    std::map<std::string, std::string> m_files;
};

}  // namespace ww::support
