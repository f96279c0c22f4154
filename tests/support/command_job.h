// Exact loops and small jobs as workbooks for tests of the commands, with what the commands answer.
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "tests/support/command_run.h"
#include "tests/support/temporary_folder.h"

namespace ww::support {

/// One US gallon a minute, m3/s: 231 in3 of 25.4 mm each (NIST SP 811, exact).
inline constexpr double kGpm_m3s = 231 * 0.0254 * 0.0254 * 0.0254 / 60;

/// A workbook made by `new` for one test, and the commands on it.
class CommandJob {
  public:
    explicit CommandJob(const std::string& tables) : m_file(m_folder.file("job.wwj")) {
        const CommandRun made = runCommand({"new", m_file, "--from", tables});
        EXPECT_EQ(made.status, 0) << made.err;
    }
    /// Tables of one of the loops of four circuits.
    static std::string ofLoop(const std::string& name) {
        return (std::filesystem::path(WW_SOURCE_DIR) / "tests" / "data" / name).string();
    }

    const std::string& file() const { return m_file; }
    const TemporaryFolder& folder() const { return m_folder; }
    /// Runs `command FILE argument ...`.
    CommandRun run(const std::string& command, const std::vector<std::string>& arguments = {}) const {
        std::vector<std::string> all{command, m_file};
        all.insert(all.end(), arguments.begin(), arguments.end());
        return runCommand(all);
    }
    /// The same with --json: nothing but one document may be printed.
    nlohmann::json json(const std::string& command, std::vector<std::string> arguments = {}) const {
        arguments.emplace_back("--json");
        const CommandRun ran = run(command, arguments);
        nlohmann::json document = nlohmann::json::parse(ran.out, nullptr, false);
        EXPECT_FALSE(document.is_discarded()) << ran.out << ran.err;
        return document;
    }

  private:
    TemporaryFolder m_folder;
    std::string m_file;
};

}  // namespace ww::support
