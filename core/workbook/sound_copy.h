// When a workbook is damaged: the best that lies beside it. Not for mending a file.
#pragma once

#include <filesystem>
#include <optional>

#include "core/base/fault.h"
#include "core/base/instant.h"

namespace ww::workbook {

inline constexpr base::MessageForm kSoundCopyBeside{
    "sound_copy_beside",
    "a sound copy of this job lies beside it, with {1} records, the newest of {2}; open that one"};
inline constexpr base::MessageForm kNoSoundCopyBeside{
    "no_sound_copy_beside",
    "no sound copy of this job lies beside it; look on the other laptop and on sticks"};

/// A copy whose pages, journal and rows are sound.
struct SoundCopy {
    std::filesystem::path file;
    std::int64_t records = 0;  ///< of its journal
    base::Instant newest;      ///< time of the newest record, UTC
};

/// Looks through the files of the same folder for copies of a workbook that cannot be opened: by its identity
/// where that can still be read, else by the beginning of its name. The one with the newest record; nothing
/// where there is none. Looks at no more than 50 files.
std::optional<SoundCopy> newestSoundCopy(const std::filesystem::path& damaged);

/// Whether a fault says that a file is damaged, so that a copy is wanted.
bool isDamage(const base::Fault& fault);

/// What to say about copies after such a fault: kSoundCopyBeside about the copy, or kNoSoundCopyBeside.
base::Fault adviceFor(const std::filesystem::path& damaged);

}  // namespace ww::workbook
