// A folder of its own for one test, gone with everything in it when the test ends.
// Not for fixtures that stay: those are in tests/data.
#pragma once

#include <stdlib.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <string_view>

namespace ww::support {

/// Made empty by the constructor below a folder, that of the system for temporary files unless another is
/// given, under a name that nobody else has; removed by the destructor. Throws where the disk refuses: then
/// no test can run.
class TemporaryFolder {
  public:
    explicit TemporaryFolder(const std::filesystem::path& below = std::filesystem::temp_directory_path()) {
        std::string pattern = (below / "waterwright_XXXXXX").string();
        if (::mkdtemp(pattern.data()) == nullptr) {
            throw std::runtime_error("no temporary folder could be made at " + pattern);
        }
        m_path = pattern;
    }
    ~TemporaryFolder() {
        // A test may have taken the right to write away from a folder; give it back before removing.
        std::error_code ignored;
        std::filesystem::permissions(m_path, std::filesystem::perms::owner_all, ignored);
        std::filesystem::remove_all(m_path, ignored);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;

    const std::filesystem::path& path() const { return m_path; }
    /// The path of a name in this folder, whether or not there is such a file.
    std::string file(std::string_view name) const { return (m_path / name).string(); }

    /// Writes these bytes to a name in this folder, making the folders on the way; gives its path.
    std::string write(std::string_view name, std::string_view bytes) const {
        const std::filesystem::path path = m_path / name;
        std::filesystem::create_directories(path.parent_path());
        std::ofstream stream(path, std::ios::binary);
        stream.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        stream.close();
        if (!stream) {
            throw std::runtime_error("cannot write " + path.string());
        }
        return path.string();
    }
    /// The bytes of a name in this folder; throws where it cannot be read.
    std::string read(std::string_view name) const {
        std::ifstream stream(m_path / name, std::ios::binary);
        if (!stream) {
            throw std::runtime_error("cannot read " + file(name));
        }
        return std::string(std::istreambuf_iterator<char>(stream), {});
    }
    bool has(std::string_view name) const { return std::filesystem::exists(m_path / name); }

  private:
    std::filesystem::path m_path;
};

}  // namespace ww::support
