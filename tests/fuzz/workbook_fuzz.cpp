// Any bytes as a workbook file: they are opened or refused, and what opens is intact. The corpus wants whole
// workbooks to begin with (tests/data/schema_1.wwj).
#include <unistd.h>

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <string>

#include "core/workbook/workbook.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace ww;
    static const std::string file = "/tmp/workbook_fuzz." + std::to_string(::getpid()) + ".wwj";
    {
        std::ofstream stream(file, std::ios::binary | std::ios::trunc);
        stream.write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    }
    support::FixedClock clock;
    support::CountingIds ids;
    const bool isOpened =
        workbook::Workbook::open(file, workbook::OpenMode::ReadOnly, {clock, ids, "A", "LT-1"}).ok();
    const auto verification = workbook::verify(file);
    if (isOpened && verification && !verification->isIntact) {
        std::abort();
    }
    return 0;
}
