// Any bytes as a spreadsheet: they are read or refused, and what was read goes through the readers of tables.
#include <cstdint>
#include <fstream>

#include "core/exchange/table_source.h"
#include "tests/support/counting_ids.h"
#include "tests/support/temporary_folder.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const ww::support::TemporaryFolder folder;
    const std::string file =
        folder.write("fuzz.xlsx", std::string_view(reinterpret_cast<const char*>(data), size));
    std::vector<ww::exchange::RowFault> faults;
    if (const auto source = ww::exchange::openTables(file, faults)) {
        ww::support::CountingIds ids;
        static_cast<void>(ww::exchange::readJob(*source, ids));
    }
    return 0;
}
