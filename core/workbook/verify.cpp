#include <limits>

#include "core/store/journal.h"
#include "core/store/open_file.h"
#include "core/store/record_reader.h"
#include "core/store/replay.h"
#include "core/store/schema.h"
#include "core/store/store_messages.h"
#include "core/workbook/workbook.h"

namespace ww::workbook {

namespace {

/// More findings than this tell nothing new.
constexpr std::size_t kMostFindings = 100;

/// Adds what the pages, the tables' definitions and the values themselves show; whether the journal can be
/// looked at.
bool examineForm(const store::Database& database, Verification& verification) {
    auto pages = store::pageFindings(database);
    if (!pages) {
        verification.findings.push_back(pages.fault());
        return false;
    }
    for (const std::string& finding : *pages) {
        verification.findings.push_back({&store::kFileDamaged, database.file().string(), {finding}});
    }
    if (auto expected = store::checkSchema(database); !expected) {
        verification.findings.push_back(expected.fault());
        return false;
    }
    if (auto read = store::readProject(database); !read) {
        verification.findings.push_back(read.fault());
    }
    return true;
}

/// Adds what the chain shows; whether all of it is sound.
bool examineChain(const store::Database& database, Verification& verification) {
    auto count = database.number("SELECT count(*) FROM journal");
    auto walk =
        store::walkJournal(database, [](const store::JournalRecord&, store::ByteSpan) { return true; });
    if (!count || !walk) {
        verification.findings.push_back(count ? walk.fault() : count.fault());
        return false;
    }
    verification.journalRecords = *count;
    const bool isEmpty = *count == 0;
    if (isEmpty || walk->firstBroken) {
        verification.firstBadRecord = walk->firstBroken.value_or(1);
        verification.findings.push_back(
            {&store::kChainBroken, database.file().string(), {std::to_string(*verification.firstBadRecord)}});
        return false;
    }
    return true;
}

/// Adds the rows that do not follow from the journal.
void examineRows(const store::Database& database, Verification& verification) {
    auto expected = store::replayed(database, std::numeric_limits<std::int64_t>::max());
    if (!expected) {
        verification.findings.push_back(expected.fault());
        if (expected.fault().is(store::kChangesetUnfit)) {
            verification.firstBadRecord = std::stoll(expected.fault().arguments.front());
        }
        return;
    }
    auto rows = store::differences(database, *expected, kMostFindings);
    if (!rows) {
        verification.findings.push_back(rows.fault());
        return;
    }
    verification.findings.insert(verification.findings.end(), rows->begin(), rows->end());
}

}  // namespace

base::Result<Verification> verify(const std::filesystem::path& file) {
    auto opened = store::openUnchecked(file);
    if (!opened) {
        // Found out as damaged while opening is an answer; anything else means that there was nothing to look
        // at.
        if (opened.fault().is(store::kFileDamaged)) {
            return Verification{false, 0, std::nullopt, {opened.fault()}};
        }
        return opened.fault();
    }
    auto version = opened->number("PRAGMA user_version");
    if (version && *version > store::kSchemaVersion) {
        auto needs = store::readMeta(*opened, "needs_version");
        return base::Fault{&store::kNewerSchema, file.string(), {needs && *needs ? **needs : "?"}};
    }
    if (version && *version < store::kSchemaVersion) {
        auto current = store::openWorkbookFile(file, store::Access::Read);
        if (!current) {
            return Verification{false, 0, std::nullopt, {current.fault()}};
        }
        opened = std::move(current->database);
    }
    if (auto begun = opened->execute("BEGIN"); !begun) {
        return begun.fault();
    }
    Verification verification;
    if (examineForm(*opened, verification) && examineChain(*opened, verification)) {
        examineRows(*opened, verification);
    }
    verification.isIntact = verification.findings.empty();
    return verification;
}

}  // namespace ww::workbook
