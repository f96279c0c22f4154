// Any bytes as a signed report: they are judged, never followed out of bounds, and no bytes at all are made
// ready for signatures twice. The corpus wants signed and unsigned reports to begin with.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/seal/prepare_report.h"
#include "core/seal/verify_report.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace ww::seal;
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const ReportVerification found = verifyReport(bytes);
    if (found.isIntact && found.signatures.empty()) {
        std::abort();
    }
    const Preparation preparation{
        {}, {{"a.csv", "text/csv", "", "1\n"}}, {std::string(32, 'a'), std::string(64, 'b')}, {}};
    const auto prepared = prepareReport(bytes, preparation);
    if (prepared && prepareReport(*prepared, preparation)) {
        std::abort();
    }
    return 0;
}
