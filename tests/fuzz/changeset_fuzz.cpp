// Any bytes as the changes of a journal record: they are read or refused, never followed out of bounds.
#include <cstddef>
#include <cstdint>

#include "core/store/raw_rows.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace ww::store;
    const ByteSpan bytes(data, size);
    (void)changeSetOf(bytes);
    (void)unpacked(bytes);
    (void)inverted(bytes);
    return 0;
}
