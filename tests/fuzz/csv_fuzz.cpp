// Any bytes as one table of a job folder: they are read or refused, and what was read comes back from its own
// text.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

#include "core/exchange/csv_text.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace ww::exchange;
    const CsvResult read = parseCsv({reinterpret_cast<const char*>(data), size});
    if (!read.failures.empty() || read.text.separator != ',' || read.text.rows.empty()) {
        return 0;
    }
    std::string text;
    for (const CsvRow& row : read.text.rows) {
        text += csvRecord(row.cells);
    }
    if (!parseCsv(text).failures.empty()) {
        std::abort();
    }
    return 0;
}
