#include "core/store/merge_history.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/store/store_messages.h"

namespace ww::store {

namespace {

using base::Digest;
using base::Result;

constexpr std::string_view kMergedRecords = "merged_records";

std::optional<Digest> digestIn(const std::optional<Cell>& cell) {
    const Bytes* bytes = cell ? std::get_if<Bytes>(&*cell) : nullptr;
    Digest digest;
    if (bytes == nullptr || bytes->size() != digest.bytes.size()) {
        return std::nullopt;
    }
    std::copy(bytes->begin(), bytes->end(), digest.bytes.begin());
    return digest;
}

/// A record that a merge made names its origin in its own changes.
Digest originOf(const JournalRecord& record, ByteSpan changeset) {
    if (record.isPartOfMerge) {
        ChangesetReader reader(changeset);
        while (reader.next()) {
            if (reader.table() == kMergedRecords && reader.operation() == RowOperation::Inserted) {
                return digestIn(reader.after(0)).value_or(record.digest);
            }
        }
    }
    return record.digest;
}

/// The digests of a journal, in order; a fault where its chain is broken.
Result<std::vector<Digest>> digestsOf(const Database& database) {
    std::vector<Digest> digests;
    auto walk = walkJournal(database, [&](const JournalRecord& record, ByteSpan) {
        digests.push_back(record.digest);
        return true;
    });
    if (!walk) {
        return walk.fault();
    }
    if (walk->firstBroken) {
        return base::Fault{&kChainBroken, database.file().string(), {std::to_string(*walk->firstBroken)}};
    }
    return digests;
}

/// Every action that a copy has: its own records, and those that merges brought and nobody took back.
Result<std::set<std::array<std::uint8_t, 32>>> actionsIn(const Database& database,
                                                         const std::vector<Digest>& own) {
    std::set<std::array<std::uint8_t, 32>> actions;
    for (const Digest& digest : own) {
        actions.insert(digest.bytes);
    }
    auto statement = database.prepare("SELECT digest FROM merged_records");
    if (!statement) {
        return statement.fault();
    }
    while (statement->step() == Step::Row) {
        const ByteSpan bytes = statement->blob(0);
        Digest digest;
        std::copy_n(bytes.begin(), std::min(bytes.size(), digest.bytes.size()), digest.bytes.begin());
        actions.insert(digest.bytes);
    }
    return actions;
}

/// Marks merges of the other copy that were taken back there: from the merge to the record that takes it back
/// nothing is left, since the actions in between must have been taken back before. The same holds from taking
/// a merge back to doing it again.
void leaveOutUndoneMerges(std::vector<IncomingRecord>& incoming) {
    std::map<std::int64_t, std::size_t>
        beginnings;  // of merges, by the sequence of the record that ends them
    std::map<std::int64_t, std::size_t> takenBack;
    const auto leaveOut = [&](std::size_t first, std::size_t last) {
        for (std::size_t i = first; i <= last; ++i) {
            incoming[i].isNew = false;
        }
    };
    std::optional<std::size_t> beginning;
    for (std::size_t i = 0; i < incoming.size(); ++i) {
        const JournalRecord& record = incoming[i].record;
        if (record.isPartOfMerge) {
            beginning = beginning.value_or(i);
            continue;
        }
        if (beginning) {
            beginnings[record.sequence] = *beginning;
            beginning.reset();
        }
        if (record.undoes && beginnings.contains(*record.undoes)) {
            takenBack[*record.undoes] = i;
        }
        if (record.redoes && takenBack.contains(*record.redoes)) {
            leaveOut(takenBack.at(*record.redoes), i);
            takenBack.erase(*record.redoes);
        }
    }
    for (const auto& [sequence, at] : takenBack) {
        leaveOut(beginnings.at(sequence), at);
    }
}

}  // namespace

bool MergeHistory::hasNews() const {
    return std::any_of(incoming.begin(), incoming.end(), [](const auto& record) { return record.isNew; });
}

Result<MergeHistory> mergeHistory(const Database& ours, const Database& theirs) {
    auto own = digestsOf(ours);
    if (!own) {
        return own.fault();
    }
    auto actions = actionsIn(ours, *own);
    if (!actions) {
        return actions.fault();
    }
    MergeHistory history;
    auto walk = walkJournal(theirs, [&](const JournalRecord& record, ByteSpan changeset) {
        const auto index = static_cast<std::size_t>(record.sequence - 1);
        const bool isCommon =
            history.common == record.sequence - 1 && index < own->size() && (*own)[index] == record.digest;
        if (isCommon) {
            history.common = record.sequence;
            return true;
        }
        IncomingRecord incoming{record, Bytes(changeset.begin(), changeset.end()), {}, true};
        incoming.origin = originOf(record, changeset);
        // A record without changes ends a merge that left nothing to settle.
        incoming.isNew = !changeset.empty() && !actions->contains(incoming.origin.bytes);
        history.incoming.push_back(std::move(incoming));
        return true;
    });
    if (!walk) {
        return walk.fault();
    }
    if (walk->firstBroken) {
        return base::Fault{&kChainBroken, theirs.file().string(), {std::to_string(*walk->firstBroken)}};
    }
    leaveOutUndoneMerges(history.incoming);
    return history;
}

base::Outcome putMergedRecord(Database& database, const MergedRecord& record) {
    auto statement = database.prepare(
        "INSERT INTO merged_records(digest,sequence,machine,person,withheld) VALUES(?,?,?,?,?) "
        "ON CONFLICT(digest) DO NOTHING");
    if (!statement) {
        return statement.fault();
    }
    statement->bind(1, ByteSpan(record.origin.bytes));
    statement->bind(2, record.sequence);
    statement->bind(3, std::string_view(record.machine));
    statement->bind(4, std::string_view(record.person));
    record.withheld ? statement->bind(5, ByteSpan(*record.withheld)) : statement->bindNull(5);
    return statement->step() == Step::Done ? base::Outcome(base::Done{}) : base::Outcome(database.fault());
}

Result<std::optional<MergedRecord>> mergedRecord(const Database& database, const Digest& origin) {
    auto statement =
        database.prepare("SELECT sequence,machine,person,withheld FROM merged_records WHERE digest=?");
    if (!statement) {
        return statement.fault();
    }
    statement->bind(1, ByteSpan(origin.bytes));
    if (statement->step() != Step::Row) {
        return std::optional<MergedRecord>();
    }
    MergedRecord record{origin, statement->integer(0), std::string(statement->text(1)),
                        std::string(statement->text(2)), std::nullopt};
    if (!statement->isNull(3)) {
        const ByteSpan bytes = statement->blob(3);
        record.withheld.emplace(bytes.begin(), bytes.end());
    }
    return std::optional(std::move(record));
}

}  // namespace ww::store
