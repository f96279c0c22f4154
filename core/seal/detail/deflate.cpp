#include "core/seal/detail/deflate.h"

#include <zlib.h>

#include "core/base/expects.h"
#include "core/seal/detail/byte_view.h"

namespace ww::seal::detail {

std::string deflated(std::string_view bytes) {
    uLongf size = compressBound(static_cast<uLong>(bytes.size()));
    std::string out(size, '\0');
    EXPECTS(compress2(reinterpret_cast<Bytef*>(out.data()), &size, bytesOf(bytes).data(),
                      static_cast<uLong>(bytes.size()), Z_BEST_COMPRESSION) == Z_OK);
    out.resize(size);
    return out;
}

}  // namespace ww::seal::detail
