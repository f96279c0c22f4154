#include "core/seal/detail/pdf_date.h"

namespace ww::seal::detail {

std::string pdfDate(const base::Instant& time) {
    // 2026-03-04T14:02:07+05:30
    const std::string iso = time.text();
    std::string out = "D:" + iso.substr(0, 4) + iso.substr(5, 2) + iso.substr(8, 2) + iso.substr(11, 2) +
                      iso.substr(14, 2) + iso.substr(17, 2);
    const std::string zone = iso.substr(19);
    return out + (zone.size() == 6 ? zone.substr(0, 3) + "'" + zone.substr(4) + "'" : zone);
}

std::optional<base::Instant> instantOfPdfDate(std::string_view text) {
    constexpr std::size_t kWithoutZone = 16;
    if (!text.starts_with("D:") || text.size() < kWithoutZone) {
        return std::nullopt;
    }
    const auto part = [text](std::size_t at, std::size_t size) { return std::string(text.substr(at, size)); };
    std::string iso = part(2, 4) + "-" + part(6, 2) + "-" + part(8, 2) + "T" + part(10, 2) + ":" +
                      part(12, 2) + ":" + part(14, 2);
    const std::string_view zone = text.substr(kWithoutZone);
    if (zone == "Z" || zone.empty()) {
        iso += zone;
    } else if (zone.size() >= 6 && zone[3] == '\'') {
        iso += std::string(zone.substr(0, 3)) + ":" + std::string(zone.substr(4, 2));
    } else {
        return std::nullopt;
    }
    return base::Instant::fromText(iso);
}

}  // namespace ww::seal::detail
