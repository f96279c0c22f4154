#include "core/workbook/workbook.h"

#include <gtest/gtest.h>

#include "core/store/store_messages.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/review_job.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/whole_job.h"

namespace ww::workbook {
namespace {

using project::AnyRecord;
using project::Edit;
using project::RecordKind;
using project::RecordRef;
using support::CountingIds;
using support::digits;
using support::recordsOf;
using support::WholeJobIds;

class WorkbookTest : public testing::Test {
  protected:
    Session session(const std::string& person = "A. Fields") { return {m_clock, m_ids, person, "LT-1"}; }
    std::string path() const { return m_folder.file("job.wwj"); }

    std::unique_ptr<Workbook> create() {
        auto made = Workbook::create(path(), support::wholeJob(), session());
        EXPECT_TRUE(made.ok()) << (made ? "" : base::englishWithSubject(made.fault()));
        return made ? std::move(*made) : nullptr;
    }
    std::unique_ptr<Workbook> open(OpenMode mode = OpenMode::ReadWrite) {
        auto opened = Workbook::open(path(), mode, session());
        EXPECT_TRUE(opened.ok()) << (opened ? "" : base::englishWithSubject(opened.fault()));
        return opened ? std::move(*opened) : nullptr;
    }
    void expectIntact(std::int64_t records) {
        const auto verification = verify(path());
        ASSERT_TRUE(verification.ok());
        EXPECT_EQ(verification->journalRecords, records);
        EXPECT_TRUE(verification->isIntact)
            << (verification->findings.empty() ? "" : base::english(verification->findings.front()));
    }
    Edit reading(std::string_view dp, int sequence) {
        const AnyRecord record = support::wholeJobReading(m_ids.next(), sequence, WholeJobIds{}.near, dp);
        return {"DP " + std::string(dp) + " kPa, B-05", {record}, {}, true};
    }

    support::TemporaryFolder m_folder;
    support::FixedClock m_clock;
    CountingIds m_ids{support::kFirstFreeId};
};

TEST_F(WorkbookTest, everyFieldOfEveryRecordComesBackAsEntered) {
    project::Project expected;
    Edit content = support::wholeJob();
    for (AnyRecord& record : content.put) {
        std::visit([&](auto& r) { expected.put(r); }, record);
    }
    create();
    const auto workbook = open();
    EXPECT_EQ(recordsOf(workbook->project()), recordsOf(expected));
    // The head was entered in the job's fluid, 30 % propylene glycol: p = rho g h, by definition.
    const auto& far = workbook->project().readings().at(WholeJobIds{}.second);
    EXPECT_DOUBLE_EQ(far.dp->value.si(), 0.20 * 9.80665 * workbook->project().fluid().density().si());
    EXPECT_EQ(far.dp->text(), "0.20 m");
    expectIntact(1);
}

TEST_F(WorkbookTest, recordsOfReviewComeBackAsEntered) {
    project::Project expected;
    for (AnyRecord& record : support::wholeJob().put) {
        std::visit([&](auto& r) { expected.put(r); }, record);
    }
    auto workbook = create();
    const Edit review = support::reviewOf(workbook->project());
    for (const AnyRecord& record : review.put) {
        std::visit([&](const auto& r) { expected.put(r); }, record);
    }
    const auto applied = workbook->apply(review);
    ASSERT_TRUE(applied.ok()) << base::englishWithSubject(applied.fault());
    EXPECT_EQ(recordsOf(workbook->project()), recordsOf(expected));
    workbook.reset();
    workbook = open();
    EXPECT_EQ(recordsOf(workbook->project()), recordsOf(expected));
    ASSERT_TRUE(workbook->undo().ok());
    EXPECT_TRUE(workbook->project().comments().empty());
    EXPECT_TRUE(workbook->project().rounds().at(WholeJobIds{}.round).sample.empty());
    expectIntact(3);
}

TEST_F(WorkbookTest, momentsKeepTheirZone) {
    create();
    const auto workbook = open();
    EXPECT_EQ(workbook->project().readings().at(WholeJobIds{}.first).time->text(),
              "2026-03-02T09:15:00+01:00");
    EXPECT_EQ(workbook->project().instruments().at(WholeJobIds{}.instrument).due->date(), "2026-11-03");
    EXPECT_FALSE(workbook->project().instruments().at(WholeJobIds{}.instrument).due->zoneMinutes.has_value());
}

TEST_F(WorkbookTest, anActionIsOneRecordThatSaysWhoWhenAndWhat) {
    const auto workbook = create();
    m_clock.set("2026-03-02T10:00:00Z");
    ASSERT_TRUE(workbook->apply(reading("52.7", 3)).ok());
    const auto journal = workbook->journal();
    ASSERT_EQ(journal.size(), 2u);
    EXPECT_EQ(journal[1].sequence, 2);
    EXPECT_EQ(journal[1].time.text(), "2026-03-02T10:00:00Z");
    EXPECT_EQ(journal[1].person, "A. Fields");
    EXPECT_EQ(journal[1].machine, "LT-1");
    EXPECT_EQ(journal[1].label, "DP 52.7 kPa, B-05");
    EXPECT_NE(journal[1].digest, journal[0].digest);
    EXPECT_EQ(workbook->newestEntry().digest, journal[1].digest);
}

TEST_F(WorkbookTest, anEditThatChangesNothingLeavesNoRecord) {
    const auto workbook = create();
    const Edit same{"Nothing", support::wholeJob().put, {}, true};
    const auto changes = workbook->apply(same);
    ASSERT_TRUE(changes.ok()) << base::english(changes.fault());
    EXPECT_TRUE(changes->isEmpty());
    EXPECT_TRUE(workbook->apply(Edit{})->isEmpty());
    EXPECT_EQ(workbook->journal().size(), 1u);
    EXPECT_FALSE(workbook->undoLabel().has_value());
}

TEST_F(WorkbookTest, changesAreReportedByIdAndRowsCountForTheirOwner) {
    const auto workbook = create();
    auto valve = workbook->project().valves().at(WholeJobIds{}.valve);
    valve.rows[1].coefficient = digits("1.25");
    valve.rows.pop_back();
    const auto changes = workbook->apply({"Valve table", {valve}, {}, true});
    ASSERT_TRUE(changes.ok());
    EXPECT_EQ(changes->put, (std::vector<RecordRef>{{RecordKind::ValveModel, WholeJobIds{}.valve}}));
    EXPECT_TRUE(changes->erased.empty());
    EXPECT_EQ(workbook->project().valves().at(valve.id), valve);
    EXPECT_EQ(recordsOf(open(OpenMode::ReadOnly)->project()), recordsOf(workbook->project()));
}

/// One change of every kind of record, and one removal of every kind that can go.
std::vector<Edit> everyKindOfEdit(const project::Project& project) {
    const WholeJobIds ids;
    std::vector<Edit> edits;
    const auto put = [&](AnyRecord record) { edits.push_back({"put", {std::move(record)}, {}, true}); };
    const auto erase = [&](RecordKind kind, const base::Id& id) {
        edits.push_back({"erase", {}, {{kind, id}}, true});
    };
    auto job = project.job();
    job.temperature = quantity::measured<quantity::Temperature>(digits("45"), quantity::Unit::Celsius);
    put(job);
    auto valve = project.valves().at(ids.valve);
    valve.rows.push_back({digits("5.0"), digits("9.9")});
    put(valve);
    auto branch = project.branches().at(ids.near);
    branch.tag = "B-05a";
    branch.parent.reset();
    put(branch);
    auto pump = project.pumps().at(ids.pump);
    pump.isRunning = false;
    pump.rows.pop_back();
    put(pump);
    auto instrument = project.instruments().at(ids.instrument);
    instrument.due.reset();
    put(instrument);
    auto person = project.people().at(ids.person);
    person.name = "B. Fields";
    put(person);
    auto round = project.rounds().at(ids.round);
    round.kind = project::RoundKind::Final;
    put(round);
    auto reading = project.readings().at(ids.first);
    reading.dp = quantity::measured<quantity::PressureDifference>(digits("12.5"), quantity::Unit::Millibar);
    put(reading);
    auto pumpReading = project.pumpReadings().at(ids.pumpReading);
    pumpReading.amps.reset();
    put(pumpReading);
    erase(RecordKind::Reading, ids.first);
    erase(RecordKind::Reading, ids.second);
    erase(RecordKind::PumpReading, ids.pumpReading);
    erase(RecordKind::Round, ids.round);
    erase(RecordKind::Instrument, ids.instrument);
    erase(RecordKind::Person, ids.person);
    erase(RecordKind::Pump, ids.pump);
    edits.push_back(
        {"erase branches",
         {},
         {{RecordKind::Branch, ids.riser}, {RecordKind::Branch, ids.near}, {RecordKind::Branch, ids.far}},
         true});
    erase(RecordKind::ValveModel, ids.valve);
    erase(RecordKind::ValveModel, ids.limiter);
    return edits;
}

TEST_F(WorkbookTest, everyEditUndoneAndRedoneGivesTheSameJob) {
    auto workbook = create();
    std::vector<std::vector<AnyRecord>> states{recordsOf(workbook->project())};
    const auto edits = everyKindOfEdit(workbook->project());
    for (const Edit& edit : edits) {
        const auto changes = workbook->apply(edit);
        ASSERT_TRUE(changes.ok()) << base::englishWithSubject(changes.fault());
        EXPECT_FALSE(changes->isEmpty());
        states.push_back(recordsOf(workbook->project()));
        ASSERT_EQ(recordsOf(open(OpenMode::ReadOnly)->project()), states.back());
    }
    for (std::size_t i = edits.size(); i-- > 0;) {
        const auto changes = workbook->undo();
        ASSERT_TRUE(changes.ok()) << base::englishWithSubject(changes.fault());
        ASSERT_EQ(recordsOf(workbook->project()), states[i]);
    }
    EXPECT_FALSE(workbook->undoLabel().has_value());
    workbook.reset();
    workbook = open();
    EXPECT_EQ(recordsOf(workbook->project()), states.front());
    for (std::size_t i = 0; i < edits.size(); ++i) {
        EXPECT_EQ(workbook->redoLabel(), edits[i].label);
        ASSERT_TRUE(workbook->redo().ok());
        ASSERT_EQ(recordsOf(workbook->project()), states[i + 1]);
    }
    EXPECT_FALSE(workbook->redoLabel().has_value());
    expectIntact(static_cast<std::int64_t>(1 + 3 * edits.size()));
}

TEST_F(WorkbookTest, undoIsARecordThatNamesWhatItUndoes) {
    auto workbook = create();
    ASSERT_TRUE(workbook->apply(reading("50.0", 3)).ok());
    ASSERT_TRUE(workbook->apply(reading("51.0", 4)).ok());
    EXPECT_EQ(workbook->undoLabel(), "DP 51.0 kPa, B-05");
    ASSERT_TRUE(workbook->undo().ok());
    ASSERT_TRUE(workbook->undo().ok());
    EXPECT_EQ(workbook->redoLabel(), "DP 50.0 kPa, B-05");
    // The same after reopening: it follows from the journal.
    workbook.reset();
    workbook = open();
    ASSERT_TRUE(workbook->redo().ok());
    const auto journal = workbook->journal();
    ASSERT_EQ(journal.size(), 6u);
    EXPECT_EQ(journal[3].undoes, 3);
    EXPECT_EQ(journal[4].undoes, 2);
    EXPECT_EQ(journal[5].redoes, 2);
    EXPECT_EQ(workbook->undoLabel(), "DP 50.0 kPa, B-05");
    EXPECT_EQ(workbook->redoLabel(), "DP 51.0 kPa, B-05");
    // A new action leaves nothing to redo.
    ASSERT_TRUE(workbook->apply(reading("52.0", 4)).ok());
    EXPECT_FALSE(workbook->redoLabel().has_value());
    EXPECT_EQ(workbook->redo().fault().code(), kNothingToRedo.code);
}

TEST_F(WorkbookTest, whatCannotBeUndoneIsAWall) {
    auto workbook = create();
    ASSERT_TRUE(workbook->apply(reading("50.0", 3)).ok());
    auto round = workbook->project().rounds().at(WholeJobIds{}.round);
    round.state = project::RoundState::Closed;
    ASSERT_TRUE(workbook->apply({"Close Round 1", {round}, {}, true}).ok());
    EXPECT_EQ(workbook->undoLabel(), "Close Round 1");
    // Sending is never undone, whatever the edit says.
    round.state = project::RoundState::Sent;
    round.sentBy = "A. Fields";
    ASSERT_TRUE(workbook->apply({"Send Round 1", {round}, {}, true}).ok());
    EXPECT_FALSE(workbook->newestEntry().canUndo);
    EXPECT_EQ(workbook->undo().fault().code(), kNothingToUndo.code);
    Edit quiet = {"Site", {workbook->project().job()}, {}, false};
    std::get<project::Job>(quiet.put[0]).site = "elsewhere";
    ASSERT_TRUE(workbook->apply(quiet).ok());
    EXPECT_FALSE(workbook->undoLabel().has_value());
}

TEST_F(WorkbookTest, createFailsWhereTheFileExistsAndLeavesNothingWhereItCannot) {
    create();
    EXPECT_EQ(Workbook::create(path(), support::wholeJob(), session()).fault().code(),
              store::kFileExists.code);
    const std::string nowhere = m_folder.file("no_such_folder/job.wwj");
    EXPECT_FALSE(Workbook::create(nowhere, support::wholeJob(), session()).ok());
    EXPECT_FALSE(std::filesystem::exists(nowhere));
    Edit noJob = support::wholeJob();
    noJob.put.erase(noJob.put.begin());
    EXPECT_EQ(Workbook::create(m_folder.file("other.wwj"), noJob, session()).fault().code(),
              "exactly_one_job");
    std::size_t files = 0;
    for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator(m_folder.path())) {
        ++files;
    }
    EXPECT_EQ(files, 1u) << "only job.wwj may be left";
}

TEST_F(WorkbookTest, theSecondProgramReadsAndIsToldWhoHoldsTheFile) {
    const auto first = create();
    m_clock.set("2026-03-02T09:12:00Z");
    auto second = Workbook::open(path(), OpenMode::ReadWrite, session("B. Other"));
    ASSERT_TRUE(second.ok());
    EXPECT_TRUE((*second)->isReadOnly());
    ASSERT_TRUE((*second)->readOnlyReason().has_value());
    const base::Fault fault = (*second)->readOnlyReason()->fault;
    EXPECT_EQ(fault.code(), store::kHeldElsewhere.code);
    EXPECT_EQ(fault.arguments[0], "A. Fields");
    EXPECT_EQ(fault.arguments[1], "LT-1");
    EXPECT_EQ(fault.arguments[2], "2026-03-02T08:00:00Z");
    EXPECT_EQ((*second)->apply(reading("1", 9)).fault().code(), store::kHeldElsewhere.code);
    EXPECT_EQ((*second)->undo().fault().code(), store::kHeldElsewhere.code);
    // The first goes on writing, and its file is still whole for the second's eyes.
    ASSERT_TRUE(first->apply(reading("50.0", 3)).ok());
    EXPECT_EQ(open(OpenMode::ReadOnly)->journal().size(), 2u);
    EXPECT_FALSE(first->isReadOnly());
}

TEST_F(WorkbookTest, closingLetsGoOfTheFile) {
    create();
    EXPECT_FALSE(m_folder.has("job.wwj-lock"));
    const auto again = open();
    EXPECT_TRUE(m_folder.has("job.wwj-lock"));
    EXPECT_FALSE(again->isReadOnly());
}

TEST_F(WorkbookTest, aLockFileThatNobodyHoldsIsNoHindrance) {
    create();
    m_folder.write("job.wwj-lock", "Somebody\nLT-9\n1\n2026-01-01T00:00:00Z\n");
    EXPECT_FALSE(open()->isReadOnly());
}

TEST_F(WorkbookTest, openedForReadingNothingIsStored) {
    create();
    const auto reader = open(OpenMode::ReadOnly);
    EXPECT_TRUE(reader->isReadOnly());
    EXPECT_FALSE(reader->readOnlyReason().has_value());
    EXPECT_EQ(reader->apply(reading("1", 9)).fault().code(), kOpenedForReading.code);
    EXPECT_FALSE(m_folder.has("job.wwj-lock"));
}

TEST_F(WorkbookTest, aCopyIsWholeAndTheSameWorkbook) {
    const auto workbook = create();
    ASSERT_TRUE(workbook->apply(reading("50.0", 3)).ok());
    const std::string copy = m_folder.file("copy.wwj");
    ASSERT_TRUE(workbook->saveCopy(copy).ok());
    EXPECT_TRUE(verify(copy)->isIntact);
    auto opened = Workbook::open(copy, OpenMode::ReadWrite, session());
    ASSERT_TRUE(opened.ok());
    EXPECT_FALSE((*opened)->isReadOnly());
    EXPECT_EQ((*opened)->workbookId(), workbook->workbookId());
    EXPECT_EQ(recordsOf((*opened)->project()), recordsOf(workbook->project()));
    // A copy that somebody works on is not replaced under their hands; nor is the workbook itself.
    EXPECT_EQ(workbook->saveCopy(copy).fault().code(), store::kHeldElsewhere.code);
    EXPECT_EQ(workbook->saveCopy(path()).fault().code(), kCopyOntoItself.code);
    EXPECT_FALSE(workbook->saveCopy(m_folder.file("no_such_folder/copy.wwj")).ok());
    opened->reset();
    EXPECT_TRUE(open(OpenMode::ReadOnly)->saveCopy(copy).ok())
        << "a reader may copy, and replace an old copy";
}

TEST_F(WorkbookTest, historyTellsEveryVersionOfARecord) {
    const auto workbook = create();
    auto first = workbook->project().readings().at(WholeJobIds{}.first);
    first.dp->digits = digits("33.3");
    ASSERT_TRUE(workbook->apply({"Correct", {first}, {}, true}).ok());
    ASSERT_TRUE(workbook->apply(reading("50.0", 3)).ok());
    ASSERT_TRUE(workbook->undo().ok());
    ASSERT_TRUE(workbook->apply({"Remove", {}, {{RecordKind::Reading, first.id}}, true}).ok());
    const auto all = workbook->historyOfAll(RecordKind::Reading);
    ASSERT_TRUE(all.ok());
    std::vector<RecordVersion> history;
    for (const auto& [ref, version] : *all) {
        EXPECT_EQ(ref.kind, RecordKind::Reading);
        if (ref.id == first.id) {
            history.push_back(version);
        }
    }
    ASSERT_EQ(history.size(), 3u);
    EXPECT_EQ(history[0].sequence, 1);
    EXPECT_EQ(std::get<project::Reading>(*history[0].record).dp->text(), "31.30 kPa");
    EXPECT_EQ(history[1].sequence, 2);
    EXPECT_EQ(std::get<project::Reading>(*history[1].record), first);
    EXPECT_EQ(history[2].sequence, 5);
    EXPECT_FALSE(history[2].record.has_value());
}

TEST_F(WorkbookTest, theJobCanBeSeenAsItStood) {
    const auto workbook = create();
    const auto before = recordsOf(workbook->project());
    for (const Edit& edit : everyKindOfEdit(workbook->project())) {
        ASSERT_TRUE(workbook->apply(edit).ok());
    }
    EXPECT_EQ(recordsOf(*workbook->asItStoodAfter(1)), before);
    EXPECT_EQ(recordsOf(*workbook->asItStoodAfter(workbook->newestEntry().sequence)),
              recordsOf(workbook->project()));
}

}  // namespace
}  // namespace ww::workbook
