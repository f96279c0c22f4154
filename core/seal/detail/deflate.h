// Compresses streams for PDF (FlateDecode: RFC 1950).
#pragma once

#include <string>
#include <string_view>

namespace ww::seal::detail {

std::string deflated(std::string_view bytes);

}  // namespace ww::seal::detail
