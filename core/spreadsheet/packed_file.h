// The parts of a packed file, read within limits and never unpacked to disk. Not for what they hold.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace ww::spreadsheet {

inline constexpr std::size_t kLargestPacked_MB = 64;
inline constexpr std::size_t kLargestUnpacked_MB = 512;  ///< all parts together, counted as they come
/// A part larger than kRatioCounts_MB that unpacks to more than this many times its packed size is no sheet.
inline constexpr std::size_t kLargestRatio = 200;
inline constexpr std::size_t kRatioCounts_MB = 16;
inline constexpr int kMostParts = 10'000;

class PackedFile {
  public:
    /// Opens a ZIP file for reading. Faults: it is missing, none, or beyond the limits.
    static base::Result<std::unique_ptr<PackedFile>> open(const std::filesystem::path& file);
    ~PackedFile();
    PackedFile(const PackedFile&) = delete;
    PackedFile& operator=(const PackedFile&) = delete;

    /// Whether it holds a part of this name.
    bool has(const std::string& part) const;
    /// Hands the part's bytes on piece by piece until `take` gives false. Faults: it is missing, damaged, or
    /// beyond the limits.
    base::Outcome read(const std::string& part, const std::function<bool(std::string_view)>& take);

  private:
    struct Inside;
    explicit PackedFile(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

}  // namespace ww::spreadsheet
