// Moments as PDF writes them (ISO 32000-1, 7.9.4): "D:20260304140207+05'30'".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/base/instant.h"

namespace ww::seal::detail {

std::string pdfDate(const base::Instant& time);
/// Nothing for text that is no full date and time.
std::optional<base::Instant> instantOfPdfDate(std::string_view text);

}  // namespace ww::seal::detail
