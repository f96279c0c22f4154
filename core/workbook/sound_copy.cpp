#include "core/workbook/sound_copy.h"

#include "core/store/journal.h"
#include "core/store/open_file.h"
#include "core/store/record_reader.h"
#include "core/store/store_messages.h"
#include "core/workbook/workbook_state.h"

namespace ww::workbook {

namespace {

constexpr int kMostFiles = 50;

/// The identity that a file still tells; nothing where that page is lost.
std::optional<std::string> identityOf(const std::filesystem::path& file) {
    const auto database = store::openUnchecked(file);
    if (!database) {
        return std::nullopt;
    }
    const auto id = store::readMeta(*database, kIdKey);
    return id ? *id : std::nullopt;
}

bool isNamedAlike(const std::filesystem::path& copy, const std::filesystem::path& damaged) {
    return copy.stem().string().starts_with(damaged.stem().string());
}

/// A file whose journal and rows are sound.
std::optional<SoundCopy> soundCopyAt(const std::filesystem::path& file) {
    const auto verification = verify(file);
    if (!verification || !verification->isIntact) {
        return std::nullopt;
    }
    const auto database = store::openUnchecked(file);
    const auto newest = database ? database->number("SELECT utc FROM journal ORDER BY sequence DESC LIMIT 1")
                                 : base::Result<std::int64_t>(database.fault());
    if (!newest) {
        return std::nullopt;
    }
    return SoundCopy{file, verification->journalRecords, base::Instant{*newest, std::int16_t{0}}};
}

}  // namespace

std::optional<SoundCopy> newestSoundCopy(const std::filesystem::path& damaged) {
    const auto identity = identityOf(damaged);
    const std::filesystem::path folder = damaged.parent_path().empty() ? "." : damaged.parent_path();
    std::optional<SoundCopy> best;
    int looked = 0;
    std::error_code error;
    for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end;
         at.increment(error)) {
        std::error_code ignored;
        const std::filesystem::path& file = at->path();
        const bool isCandidate = at->is_regular_file(ignored) && file.extension() == damaged.extension() &&
                                 file.filename() != damaged.filename();
        if (!isCandidate || ++looked > kMostFiles) {
            continue;
        }
        const auto other = identityOf(file);
        if (!other || (identity ? *other != *identity : !isNamedAlike(file, damaged))) {
            continue;
        }
        const auto copy = soundCopyAt(file);
        const auto rank = [](const SoundCopy& c) { return std::pair(c.newest.seconds, c.records); };
        if (copy && (!best || rank(*copy) > rank(*best))) {
            best = copy;
        }
    }
    return best;
}

bool isDamage(const base::Fault& fault) {
    for (const base::MessageForm* form :
         {&store::kFileDamaged, &store::kFileEmpty, &store::kSchemaUnexpected, &store::kRowUnreadable,
          &store::kChainBroken, &store::kChangesetUnfit, &store::kRowMissing, &store::kRowForeign,
          &store::kRowChanged}) {
        if (fault.is(*form)) {
            return true;
        }
    }
    return false;
}

base::Fault adviceFor(const std::filesystem::path& damaged) {
    const auto copy = newestSoundCopy(damaged);
    if (!copy) {
        return {&kNoSoundCopyBeside, damaged.string(), {}};
    }
    return {&kSoundCopyBeside, copy->file.string(), {std::to_string(copy->records), copy->newest.text()}};
}

}  // namespace ww::workbook
