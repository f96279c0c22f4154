// Two copies of one workbook in the hands of two people, for tests of merging. Not for programs.
#pragma once

#include <gtest/gtest.h>

#include <memory>
#include <string>

#include "core/workbook/merge_files.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/walk_job.h"

namespace ww::support {

/// One laptop: its clock, its ids, and the workbook open on it.
class Laptop {
  public:
    Laptop(std::string person, std::string machine, std::uint64_t firstId)
        : m_ids(firstId), m_person(std::move(person)), m_machine(std::move(machine)) {}

    workbook::Session session() { return {clock, m_ids, m_person, m_machine}; }
    void open(const std::string& file) {
        job.reset();
        auto opened = workbook::Workbook::open(file, workbook::OpenMode::ReadWrite, session());
        ASSERT_TRUE(opened.ok()) << base::english(opened.fault());
        ASSERT_FALSE((*opened)->isReadOnly());
        job = std::move(*opened);
    }
    const project::Project& project() const { return job->project(); }
    const project::Branch& branch(std::string_view tag) const { return *project().branchTagged(tag); }
    base::Id nextId() { return m_ids.next(); }

    /// Carries an edit out; a refusal fails the test.
    void apply(std::string label, std::vector<project::AnyRecord> put,
               std::vector<project::RecordRef> erase = {}) {
        clock.advance(std::chrono::seconds(60));
        const auto done = job->apply({std::move(label), std::move(put), std::move(erase), true});
        EXPECT_TRUE(done.ok()) << base::englishWithSubject(done.ok() ? base::Fault{} : done.fault());
    }
    /// Changes a record that is there: change(record) on a copy that is put.
    template <class Record, class Change>
    void change(const Record& record, Change change) {
        Record copy = record;
        change(copy);
        apply("change", {copy});
    }
    /// A reading in the last round, now.
    base::Id read(std::string_view tag, std::string_view dp, std::string_view setting = "4") {
        project::Reading reading;
        reading.id = nextId();
        reading.round = project().lastRound()->id;
        reading.branch = branch(tag).id;
        reading.sequence = 1;
        for (const std::size_t index : project().readingsOf(reading.round)) {
            reading.sequence = std::max(reading.sequence, project().readings()[index].sequence + 1);
        }
        clock.advance(std::chrono::seconds(60));
        reading.time = clock.now();
        reading.setting = *base::Decimal::parse(setting);
        reading.dp = quantity::measured<quantity::PressureDifference>(*base::Decimal::parse(dp),
                                                                      quantity::Unit::Kilopascal);
        reading.instrument = project().instruments()[0].id;
        reading.person = project().people()[0].id;
        apply("DP " + std::string(dp) + " kPa, " + std::string(tag), {reading});
        return reading.id;
    }
    base::Id openRound(project::RoundKind kind = project::RoundKind::Adjusting) {
        project::Round round;
        round.id = nextId();
        round.number = project().lastRound() == nullptr ? 1 : project().lastRound()->number + 1;
        round.kind = kind;
        round.opened = clock.now();
        apply("round", {round});
        return round.id;
    }
    void moveRound(const base::Id& round, project::RoundState state) {
        change(project().rounds().at(round), [&](project::Round& record) {
            record.state = state;
            record.sentBy = state == project::RoundState::Sent ? "A. Fields" : record.sentBy;
            record.decidedBy = state == project::RoundState::Accepted ? "S. Olsen" : record.decidedBy;
        });
    }

    FixedClock clock;
    std::unique_ptr<workbook::Workbook> job;

  private:
    CountingIds m_ids;
    std::string m_person;
    std::string m_machine;
};

/// The walk job with round 2 open, copied to two laptops.
class TwoLaptops {
  public:
    explicit TwoLaptops(int terminals = 24) {
        Laptop office("Office", "PC", 1'000'000);
        project::Edit content = walkJob({.terminals = terminals});
        project::Round round;
        round.id = office.nextId();
        round.number = 2;
        round.kind = project::RoundKind::Adjusting;
        content.put.emplace_back(round);
        project::Person supervisor;
        supervisor.id = office.nextId();
        supervisor.name = "S. Olsen";
        supervisor.role = project::PersonRole::Supervisor;
        content.put.emplace_back(supervisor);
        EXPECT_TRUE(workbook::Workbook::create(fileOf("base"), content, office.session()).ok());
        for (const char* name : {"a", "b", "c"}) {
            std::filesystem::copy_file(fileOf("base"), fileOf(name));
        }
        a.open(fileOf("a"));
        b.open(fileOf("b"));
    }

    std::string fileOf(const std::string& name) const { return folder.file(name + ".wwj"); }
    /// The third laptop, for chains of merges.
    Laptop& third() {
        if (!c.job) {
            c.open(fileOf("c"));
        }
        return c;
    }

    TemporaryFolder folder;
    Laptop a{"A. Fields", "LT-1", 2'000'000};
    Laptop b{"K. Meyer", "LT-2", 3'000'000};
    Laptop c{"S. Olsen", "LT-3", 4'000'000};
};

}  // namespace ww::support
