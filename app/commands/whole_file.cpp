#include "app/commands/whole_file.h"

#include <filesystem>
#include <fstream>

namespace ww::app {

base::Result<std::string> wholeFile(const std::string& file) {
    constexpr std::uintmax_t kLargest = 1U << 30U;
    std::error_code error;
    const auto size = std::filesystem::file_size(file, error);
    std::ifstream stream(file, std::ios::binary);
    std::string bytes(error || size > kLargest ? 0 : static_cast<std::size_t>(size), '\0');
    stream.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (error || size > kLargest || !stream) {
        return base::Fault{&kFileUnreadable, file, {}};
    }
    return bytes;
}

}  // namespace ww::app
