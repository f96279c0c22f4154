#include "core/store/open_file.h"

#include <fstream>

#include "core/base/term.h"
#include "core/store/migration.h"
#include "core/store/schema.h"
#include "core/store/store_messages.h"

namespace ww::store {

namespace {

/// Before SQLite sees the file: it takes an empty file for an empty database.
base::Outcome checkHead(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::exists(file, error)) {
        return base::Fault{&kFileMissing, file.string(), {}};
    }
    if (!std::filesystem::is_regular_file(file, error)) {
        return base::Fault{&kNotAWorkbook, file.string(), {}};
    }
    std::ifstream stream(file, std::ios::binary);
    if (!stream) {
        return base::Fault{&kFileUnreadable, file.string(), {base::term("no right to read it")}};
    }
    constexpr std::string_view kMagic("SQLite format 3\0", 16);
    std::string head(kMagic.size(), '\0');
    stream.read(head.data(), static_cast<std::streamsize>(head.size()));
    if (stream.gcount() == 0) {
        return base::Fault{&kFileEmpty, file.string(), {}};
    }
    if (head != kMagic) {
        return base::Fault{&kNotAWorkbook, file.string(), {}};
    }
    return base::Done{};
}

base::Outcome checkPages(const Database& database) {
    auto findings = pageFindings(database);
    if (!findings) {
        return findings.fault();
    }
    if (!findings->empty()) {
        return base::Fault{&kFileDamaged, database.file().string(), {findings->front()}};
    }
    return base::Done{};
}

base::Result<Database> openMarked(const std::filesystem::path& file, Access access) {
    if (auto head = checkHead(file); !head) {
        return head.fault();
    }
    auto database = Database::open(file, access);
    if (!database) {
        return database;
    }
    auto mark = database->number("PRAGMA application_id");
    if (!mark) {
        return mark.fault();
    }
    if (*mark != kApplicationId) {
        return base::Fault{&kNotAWorkbook, file.string(), {}};
    }
    return database;
}

}  // namespace

base::Result<std::vector<std::string>> pageFindings(const Database& database) {
    auto statement = database.prepare("PRAGMA integrity_check(5)");
    if (!statement) {
        return statement.fault();
    }
    std::vector<std::string> findings;
    Step step = statement->step();
    for (; step == Step::Row; step = statement->step()) {
        if (statement->text(0) != "ok") {
            findings.emplace_back(statement->text(0));
        }
    }
    if (step == Step::Failed) {
        return database.fault();
    }
    return findings;
}

base::Result<Database> openUnchecked(const std::filesystem::path& file) {
    return openMarked(file, Access::Read);
}

base::Result<OpenedFile> openWorkbookFile(const std::filesystem::path& file, Access access) {
    EXPECTS(access != Access::Create);
    auto database = openMarked(file, access);
    if (!database) {
        return database.fault();
    }
    if (auto sound = checkPages(*database); !sound) {
        return sound.fault();
    }
    auto version = schemaVersionOf(*database);
    if (!version) {
        return version.fault();
    }
    if (*version > kSchemaVersion) {
        // Its tables cannot be known here; whether this program can read its records shows when it does.
        return OpenedFile{std::move(*database), true};
    }
    if (*version < kSchemaVersion && access == Access::Read) {
        auto copy = database->copyInMemory();
        if (!copy) {
            return copy.fault();
        }
        database = std::move(copy);
        if (auto done = migrate(*database, kSchemaVersion, migrationSteps()); !done) {
            return done.fault();
        }
    } else if (auto done = migrateFile(*database, kSchemaVersion, migrationSteps()); !done) {
        return done.fault();
    }
    if (auto expected = checkSchema(*database); !expected) {
        return expected.fault();
    }
    return OpenedFile{std::move(*database), false};
}

}  // namespace ww::store
