#include "core/store/migration.h"

#include <array>
#include <mutex>
#include <optional>
#include <string>

#include "core/store/file_steps.h"
#include "core/store/kept_copies.h"
#include "core/store/schema.h"
#include "core/store/schema_five.h"
#include "core/store/schema_four.h"
#include "core/store/schema_seven.h"
#include "core/store/schema_six.h"
#include "core/store/schema_three.h"
#include "core/store/schema_two.h"

namespace ww::store {

std::span<const MigrationStep> migrationSteps() {
    // Schema 1 is the first; a later schema adds its step here and never changes one that stands.
    static constexpr std::array kSteps{MigrationStep{2, kSchemaTwo},  MigrationStep{3, kSchemaThree},
                                       MigrationStep{4, kSchemaFour}, MigrationStep{5, kSchemaFive},
                                       MigrationStep{6, kSchemaSix},  MigrationStep{7, kSchemaSeven}};
    return kSteps;
}

base::Result<std::int64_t> schemaVersionOf(const Database& database) {
    return database.number("PRAGMA user_version");
}

base::Outcome migrate(Database& database, int target, std::span<const MigrationStep> steps) {
    auto version = schemaVersionOf(database);
    if (!version) {
        return version.fault();
    }
    for (const MigrationStep& step : steps) {
        if (step.to <= *version || step.to > target) {
            continue;
        }
        Transaction transaction(database);
        if (!transaction.begun()) {
            return transaction.begun().fault();
        }
        const std::string sql = std::string(step.sql) + "; PRAGMA user_version=" + std::to_string(step.to);
        if (auto done = database.execute(sql); !done) {
            return done.fault();
        }
        if (auto done = transaction.commit(); !done) {
            return done.fault();
        }
    }
    return base::Done{};
}

base::Outcome migrateFile(Database& database, int target, std::span<const MigrationStep> steps) {
    auto version = schemaVersionOf(database);
    if (!version) {
        return version.fault();
    }
    if (*version >= target) {
        return base::Done{};
    }
    const auto part = nameBeside(database.file());
    if (auto copied = database.copyInto(part); !copied) {
        removeDatabaseFile(part);
        return copied.fault();
    }
    if (auto kept = moveReplacing(part, keptCopyOf(database.file(), *version)); !kept) {
        removeDatabaseFile(part);
        return kept.fault();
    }
    const base::Outcome migrated = migrate(database, target, steps);
    if (migrated) {
        removeOldKeptCopies(database);
    }
    return migrated;
}

base::Outcome createCurrentSchema(Database& database) {
    if (auto made = createSchemaOne(database); !made) {
        return made.fault();
    }
    return migrate(database, kSchemaVersion, migrationSteps());
}

base::Result<Database> emptyInCurrentSchema() {
    static std::mutex mutex;
    static std::optional<Database> made;
    const std::lock_guard lock(mutex);
    if (!made) {
        Database first = Database::inMemory();
        if (auto done = createCurrentSchema(first); !done) {
            return done.fault();
        }
        made.emplace(std::move(first));
    }
    return made->copyInMemory();
}

}  // namespace ww::store
