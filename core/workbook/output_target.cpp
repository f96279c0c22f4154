#include "core/workbook/output_target.h"

#include <fstream>
#include <string>
#include <string_view>

namespace ww::workbook {

std::optional<base::Fault> refusalToReplace(const std::filesystem::path& target) {
    // The first bytes of every SQLite 3 file: sqlite.org/fileformat2.html, section 1.3.
    constexpr std::string_view kMagic = "SQLite format 3";
    std::string start(kMagic.size(), '\0');
    std::ifstream stream(target, std::ios::binary);
    stream.read(start.data(), static_cast<std::streamsize>(start.size()));
    if (stream && start == kMagic) {
        return base::Fault{&kTargetIsAWorkbook, target.string(), {}};
    }
    return std::nullopt;
}

}  // namespace ww::workbook
