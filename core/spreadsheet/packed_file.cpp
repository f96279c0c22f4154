#include "core/spreadsheet/packed_file.h"

#include <zip.h>

#include <array>
#include <fstream>

#include "core/spreadsheet/spreadsheet_messages.h"

namespace ww::spreadsheet {

namespace {

constexpr std::size_t kMegabyte = 1'000'000;

base::Fault damaged(const char* reason) {
    return {&kNoSpreadsheet, "", {reason}};
}

/// Compound files: documents with a password and the binary kind before XLSX.
bool isCompoundFile(const std::filesystem::path& file) {
    std::array<char, 8> start{};
    std::ifstream stream(file, std::ios::binary);
    stream.read(start.data(), start.size());
    return std::string_view(start.data(), start.size()) == "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1";
}

}  // namespace

struct PackedFile::Inside {
    zip_t* archive = nullptr;
    std::size_t unpacked_bytes = 0;
    ~Inside() { zip_discard(archive); }
};

PackedFile::PackedFile(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
PackedFile::~PackedFile() = default;

base::Result<std::unique_ptr<PackedFile>> PackedFile::open(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) {
        return base::Fault{&kSpreadsheetMissing, "", {}};
    }
    const std::size_t size = std::filesystem::file_size(file, error);
    if (error || size > kLargestPacked_MB * kMegabyte) {
        return base::Fault{
            &kSpreadsheetTooLarge, "", {std::to_string(size / kMegabyte), std::to_string(kLargestPacked_MB)}};
    }
    if (isCompoundFile(file)) {
        return base::Fault{&kSpreadsheetOldOrLocked, "", {}};
    }
    auto inside = std::make_unique<Inside>();
    int code = 0;
    inside->archive = zip_open(file.c_str(), ZIP_RDONLY, &code);
    if (inside->archive == nullptr) {
        zip_error_t reason;
        zip_error_init_with_code(&reason, code);
        base::Fault fault = damaged(zip_error_strerror(&reason));
        zip_error_fini(&reason);
        return fault;
    }
    const auto parts = zip_get_num_entries(inside->archive, 0);
    if (parts > kMostParts) {
        return damaged("more parts than a spreadsheet has");
    }
    // A name that stands twice reads one way here and another way elsewhere.
    for (zip_int64_t i = 0; i < parts; ++i) {
        const char* name = zip_get_name(inside->archive, static_cast<zip_uint64_t>(i), 0);
        if (name == nullptr || zip_name_locate(inside->archive, name, ZIP_FL_NOCASE) != i) {
            return damaged("two parts have one name");
        }
    }
    return std::unique_ptr<PackedFile>(new PackedFile(std::move(inside)));
}

bool PackedFile::has(const std::string& part) const {
    return zip_name_locate(m_inside->archive, part.c_str(), ZIP_FL_NOCASE) >= 0;
}

base::Outcome PackedFile::read(const std::string& part, const std::function<bool(std::string_view)>& take) {
    const auto index = zip_name_locate(m_inside->archive, part.c_str(), ZIP_FL_NOCASE);
    zip_stat_t stat;
    zip_stat_init(&stat);
    if (index < 0 || zip_stat_index(m_inside->archive, static_cast<zip_uint64_t>(index), 0, &stat) != 0) {
        return base::Fault{&kSpreadsheetPartMissing, "", {part}};
    }
    const std::unique_ptr<zip_file_t, int (*)(zip_file_t*)> file(
        zip_fopen_index(m_inside->archive, static_cast<zip_uint64_t>(index), 0), &zip_fclose);
    if (file == nullptr) {
        return damaged(zip_strerror(m_inside->archive));
    }
    // Sizes that the file states of itself are not believed: bytes are counted as they come.
    std::size_t ofPart_bytes = 0;
    std::vector<char> buffer(1 << 16);
    for (;;) {
        const auto got = zip_fread(file.get(), buffer.data(), buffer.size());
        if (got < 0) {
            return damaged(zip_error_strerror(zip_file_get_error(file.get())));
        }
        if (got == 0) {
            return base::Done{};
        }
        ofPart_bytes += static_cast<std::size_t>(got);
        m_inside->unpacked_bytes += static_cast<std::size_t>(got);
        const bool isBlownUp = ofPart_bytes > kRatioCounts_MB * kMegabyte &&
                               ofPart_bytes / kLargestRatio > static_cast<std::size_t>(stat.comp_size);
        if (isBlownUp || m_inside->unpacked_bytes > kLargestUnpacked_MB * kMegabyte) {
            return base::Fault{&kSpreadsheetUnpacksTooLarge, "", {part}};
        }
        if (!take(std::string_view(buffer.data(), static_cast<std::size_t>(got)))) {
            return base::Done{};
        }
    }
}

}  // namespace ww::spreadsheet
