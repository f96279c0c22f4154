// Any bytes as the texts of a job: the job's JSON is JSON (RFC 8259) whatever they are.
// The program reads no JSON; what it writes must be safe to read for others.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <string>

#include "core/exchange/job_folder.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace ww;
    const std::string text(reinterpret_cast<const char*>(data), size);
    project::Job job;
    job.id.bytes.fill(1);
    job.name = text;
    job.site = text.substr(0, text.size() / 2);
    project::Branch branch;
    branch.id.bytes.fill(2);
    branch.tag = "B-1";
    branch.serves = text;
    branch.notes = text;
    project::Project project;
    project.put(job);
    project.put(branch);
    const auto read = nlohmann::json::parse(exchange::jobJson(project), nullptr, false);
    if (read.is_discarded() || read.dump().find("B-1") == std::string::npos) {
        std::abort();
    }
    return 0;
}
