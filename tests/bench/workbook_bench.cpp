// What a large hierarchical job costs: opening against reading the same rows with plain SQL, storing one
// reading against the disk's syncing, and growth from 1,000 to 10,000 terminals. Prints figures; judges
// nothing.
//
//   workbook_bench [TERMINALS ...]      1000 and 10000 unless said otherwise

#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <random>
#include <string>
#include <vector>

#include "core/balancing/assess.h"
#include "core/store/database.h"
#include "core/store/schema.h"
#include "core/workbook/workbook.h"
#include "tests/support/counting_ids.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temporary_folder.h"

namespace ww::bench {
namespace {

using project::AnyRecord;
using project::Edit;
using quantity::Unit;

constexpr int kRounds = 10;
constexpr int kTerminalsPerBranch = 10;
constexpr int kBranchesPerRiser = 20;
constexpr int kRepeats = 7;

[[noreturn]] void stop(const base::Fault& fault) {
    std::fprintf(stderr, "%s\n", base::englishWithSubject(fault).c_str());
    std::exit(1);
}

base::Decimal decimal(double dimensionless, int places) {
    return base::Decimal::fromNumber(dimensionless, places);
}

double milliseconds(const std::function<void()>& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

/// The best of some runs: the machine is shared.
double bestOf(int runs, const std::function<void()>& work) {
    double best = milliseconds(work);
    for (int i = 1; i < runs; ++i) {
        best = std::min(best, milliseconds(work));
    }
    return best;
}

/// Risers, branches and terminals, each terminal with a valve, and rounds of readings that close in on the
/// design.
class LargeJob {
  public:
    LargeJob(int terminals, base::IdSource& ids) : m_terminals(terminals), m_ids(ids) {}

    Edit head() {
        Edit edit{"New Job", {}, {}, true};
        project::Job job;
        job.id = m_ids.next();
        job.name = "Large job";
        job.concentration = percent(0);
        job.temperature = quantity::measured<quantity::Temperature>(decimal(60, 0), Unit::Celsius);
        job.toleranceLow = percent(-10);
        job.toleranceHigh = percent(10);
        job.matchingBand = percent(5);
        edit.put.emplace_back(job);
        edit.put.emplace_back(valve());
        edit.put.emplace_back(meter());
        edit.put.emplace_back(person());
        edit.put.emplace_back(pump());
        addBranches(edit);
        return edit;
    }

    /// One round, and a reading of every terminal, each an action of its own as on a walk; at last the round
    /// is closed, the last one excepted.
    std::vector<Edit> round(int number) {
        project::Round round;
        round.id = m_round = m_ids.next();
        round.number = number;
        round.kind = number == 1 ? project::RoundKind::Survey : project::RoundKind::Adjusting;
        std::vector<Edit> walk{{"Open Round " + std::to_string(number), {round}, {}, true}};
        for (int i = 0; i < m_terminals; ++i) {
            walk.push_back({"DP, T-" + std::to_string(i), {reading(i, number, i + 1)}, {}, true});
        }
        if (number < kRounds) {
            round.state = project::RoundState::Closed;
            walk.push_back({"Close Round " + std::to_string(number), {round}, {}, true});
        }
        return walk;
    }

    /// One more reading of the round that was made last.
    Edit oneMore(int sequence) {
        return {"DP, T-1", {reading(sequence % m_terminals, kRounds, m_terminals + sequence)}, {}, true};
    }

  private:
    static quantity::Measured<quantity::Ratio> percent(int number) {
        return quantity::measured<quantity::Ratio>(decimal(number, 0), Unit::Percent);
    }
    project::ValveModel valve() {
        project::ValveModel valve;
        valve.id = m_valve = m_ids.next();
        valve.model = "V";
        valve.size = "20";
        valve.coefficientUnit = Unit::Kv;
        for (int half = 1; half <= 8; ++half) {
            valve.rows.push_back({decimal(half * 0.5, 1), decimal(0.35 * half * (1 + 0.1 * half), 2)});
        }
        return valve;
    }
    project::Instrument meter() {
        project::Instrument meter;
        meter.id = m_meter = m_ids.next();
        meter.tag = "M-1";
        meter.accuracy = percent(1);
        return meter;
    }
    project::Person person() {
        project::Person person{m_ids.next(), "A. Fields"};
        m_person = person.id;
        return person;
    }
    project::Pump pump() {
        project::Pump pump;
        pump.id = m_ids.next();
        pump.tag = "P-1";
        const fluid::Fluid water = *fluid::Fluid::make(fluid::FluidKind::Water, quantity::Ratio::si(0),
                                                       quantity::Temperature::from(60, Unit::Celsius));
        for (int i = 0; i <= 5; ++i) {
            project::PumpTableRow row;
            row.flow = quantity::measured<quantity::VolumeFlow>(decimal(0.05 * m_terminals * i, 2),
                                                                Unit::LitrePerSecond);
            row.head = quantity::measuredHead(decimal(30 - 0.8 * i * i, 1), Unit::Metre, water.density());
            pump.rows.push_back(row);
        }
        return pump;
    }
    project::Branch branch(const std::string& tag, const std::optional<base::Id>& parent, int position) {
        project::Branch branch;
        branch.id = m_ids.next();
        branch.parent = parent;
        branch.position = position;
        branch.tag = tag;
        branch.kind = project::BranchKind::None;
        branch.runLoss = quantity::measured<quantity::PressureDifference>(decimal(0.4, 2), Unit::Kilopascal);
        return branch;
    }
    void addBranches(Edit& edit) {
        std::optional<base::Id> riser;
        std::optional<base::Id> floor;
        int position = 0;
        for (int i = 0; i < m_terminals; ++i) {
            if (i % (kTerminalsPerBranch * kBranchesPerRiser) == 0) {
                edit.put.emplace_back(branch("R-" + std::to_string(i), std::nullopt, ++position));
                riser = project::idOf(edit.put.back());
            }
            if (i % kTerminalsPerBranch == 0) {
                edit.put.emplace_back(branch("F-" + std::to_string(i), riser, ++position));
                floor = project::idOf(edit.put.back());
            }
            project::Branch terminal = branch("T-" + std::to_string(i), floor, ++position);
            terminal.kind = project::BranchKind::Manual;
            terminal.valve = m_valve;
            terminal.designFlow =
                quantity::measured<quantity::VolumeFlow>(decimal(0.20, 3), Unit::LitrePerSecond);
            terminal.circuitLoss =
                quantity::measured<quantity::PressureDifference>(decimal(15, 1), Unit::Kilopascal);
            m_branches.push_back(terminal.id);
            edit.put.emplace_back(terminal);
        }
    }
    project::Reading reading(int terminal, int round, int sequence) {
        std::normal_distribution<double> scatter(1.0, 0.3 / round);
        project::Reading reading;
        reading.id = m_ids.next();
        reading.round = m_round;
        reading.branch = m_branches[static_cast<std::size_t>(terminal)];
        reading.sequence = sequence;
        reading.time = base::Instant{1'772'438'400 + sequence * 40, std::int16_t{0}};
        reading.setting = decimal(0.5 * (2 + (terminal + round) % 6), 1);
        const double ratio = std::max(0.1, scatter(m_random));
        reading.dp =
            quantity::measured<quantity::PressureDifference>(decimal(6.0 * ratio, 2), Unit::Kilopascal);
        reading.instrument = m_meter;
        reading.person = m_person;
        return reading;
    }

    int m_terminals;
    base::IdSource& m_ids;
    base::Id m_valve;
    base::Id m_meter;
    base::Id m_person;
    base::Id m_round;
    std::vector<base::Id> m_branches;
    std::mt19937 m_random{20260302};
};

/// Steps over every row of a table and looks at every column; the number of bytes seen.
std::size_t readTable(const store::Database& database, const std::string& table) {
    auto statement = database.prepare("SELECT * FROM " + table);
    if (!statement) {
        stop(statement.fault());
    }
    std::size_t seen = 0;
    const int columns = statement->columnCount();
    while (statement->step() == store::Step::Row) {
        for (int column = 0; column < columns; ++column) {
            switch (statement->type(column)) {
                case store::CellType::Integer:
                    seen += static_cast<std::size_t>(statement->integer(column) & 1);
                    break;
                case store::CellType::Blob:
                    seen += statement->blob(column).size();
                    break;
                default:
                    seen += statement->text(column).size();
            }
        }
    }
    return seen;
}

/// Opens the file with plain SQLite and reads all rows, with or without the journal's.
void readPlainly(const std::string& file, bool withJournal) {
    auto database = store::Database::open(file, store::Access::Read);
    if (!database) {
        stop(database.fault());
    }
    std::size_t seen = 0;
    for (const store::RecordedTable& table : store::recordedTables()) {
        seen += readTable(*database, std::string(table.name));
    }
    seen += withJournal ? readTable(*database, "journal") : 0;
    if (seen == 0) {
        std::exit(1);
    }
}

/// Where syncing costs nothing: what remains of a commit there is computing.
std::filesystem::path memoryFolder() {
    return "/dev/shm";
}

struct Figures {
    double plainRecords_ms = 0;
    double plainAll_ms = 0;
    double open_ms = 0;
    double check_ms = 0;
    double assess_ms = 0;
    double assessNumbers_ms = 0;
    double storeOnDisk_ms = 0;
    double storeInMemory_ms = 0;
};

class Measurement {
  public:
    explicit Measurement(int terminals) : m_terminals(terminals) {}

    Figures run() {
        make();
        Figures figures;
        figures.plainRecords_ms = bestOf(kRepeats, [&] { readPlainly(m_file, false); });
        figures.plainAll_ms = bestOf(kRepeats, [&] { readPlainly(m_file, true); });
        figures.open_ms = bestOf(kRepeats, [&] { open(m_file, workbook::OpenMode::ReadOnly); });
        const auto job = open(m_file, workbook::OpenMode::ReadOnly);
        const base::Id round = job->project().lastRound()->id;
        figures.assess_ms = bestOf(kRepeats, [&] { balancing::assess(job->project(), round); });
        figures.assessNumbers_ms = bestOf(kRepeats, [&] {
            balancing::assess(job->project(), round, {true, true});
        });
        figures.check_ms = bestOf(kRepeats, [&] {
            const auto opened = open(m_file, workbook::OpenMode::ReadOnly);
            balancing::assess(opened->project(), round);
        });
        figures.storeOnDisk_ms = medianOfStoring(m_file);
        if (std::filesystem::exists(memoryFolder())) {
            const auto copy = memoryFolder() / ("workbook_bench_" + std::to_string(::getpid()) + ".wwj");
            std::filesystem::copy_file(m_file, copy, std::filesystem::copy_options::overwrite_existing);
            figures.storeInMemory_ms = medianOfStoring(copy);
            std::filesystem::remove(copy);
        }
        return figures;
    }

    std::uintmax_t fileBytes() const { return std::filesystem::file_size(m_file); }

  private:
    workbook::Session session() { return {m_clock, m_ids, "A. Fields", "LT-1"}; }
    std::unique_ptr<workbook::Workbook> open(const std::filesystem::path& file, workbook::OpenMode mode) {
        auto opened = workbook::Workbook::open(file, mode, session());
        if (!opened) {
            stop(opened.fault());
        }
        return std::move(*opened);
    }
    /// Walks all rounds, one action a reading, where syncing is free if there is such a place.
    void make() {
        const auto place = std::filesystem::exists(memoryFolder()) ? memoryFolder() : m_folder.path();
        const auto file = place / ("workbook_bench_" + std::to_string(::getpid()) + ".wwj");
        auto made = workbook::Workbook::create(file, m_job.head(), session());
        if (!made) {
            stop(made.fault());
        }
        for (int number = 1; number <= kRounds; ++number) {
            for (const Edit& edit : m_job.round(number)) {
                if (auto stored = (*made)->apply(edit); !stored) {
                    stop(stored.fault());
                }
            }
        }
        made->reset();
        std::filesystem::copy_file(file, m_file);
        std::filesystem::remove(file);
    }
    double medianOfStoring(const std::filesystem::path& file) {
        const auto job = open(file, workbook::OpenMode::ReadWrite);
        std::vector<double> times;
        for (int i = 0; i < 101; ++i) {
            const Edit edit = m_job.oneMore(++m_more);
            times.push_back(milliseconds([&] {
                if (auto stored = job->apply(edit); !stored) {
                    stop(stored.fault());
                }
            }));
        }
        std::nth_element(times.begin(), times.begin() + 50, times.end());
        return times[50];
    }

    int m_terminals;
    support::TemporaryFolder m_folder;
    support::FixedClock m_clock;
    support::CountingIds m_ids;
    LargeJob m_job{m_terminals, m_ids};
    std::string m_file = m_folder.file("large.wwj");
    int m_more = 0;
};

void print(int terminals, const Figures& f, std::uintmax_t bytes) {
    std::printf("%d terminals x %d rounds, every reading an action of its own, file of %.1f MB\n", terminals,
                kRounds, static_cast<double>(bytes) / 1e6);
    std::printf("  plain SQL, rows of records          %9.2f ms\n", f.plainRecords_ms);
    std::printf("  plain SQL, journal too              %9.2f ms\n", f.plainAll_ms);
    std::printf("  open: pages, chain, records         %9.2f ms   %.2f x the same rows\n", f.open_ms,
                f.open_ms / f.plainAll_ms);
    std::printf(
        "  open and assess (check)             %9.2f ms   %.2f x the same rows, %.2f x the records alone\n",
        f.check_ms, f.check_ms / f.plainAll_ms, f.check_ms / f.plainRecords_ms);
    std::printf("  assess                              %9.2f ms   numbers only %.2f ms\n", f.assess_ms,
                f.assessNumbers_ms);
    std::printf("  one reading stored, on disk         %9.2f ms\n", f.storeOnDisk_ms);
    std::printf("  the same where syncing is free      %9.2f ms   so syncing takes %.2f ms\n",
                f.storeInMemory_ms, f.storeOnDisk_ms - f.storeInMemory_ms);
    std::printf("  computing for it, with assess       %9.2f ms   %.2f x the syncing\n",
                f.storeInMemory_ms + f.assessNumbers_ms,
                (f.storeInMemory_ms + f.assessNumbers_ms) / (f.storeOnDisk_ms - f.storeInMemory_ms));
}

}  // namespace
}  // namespace ww::bench

int main(int argc, char** argv) {
    std::vector<int> sizes;
    for (int i = 1; i < argc; ++i) {
        sizes.push_back(std::max(1, std::atoi(argv[i])));
    }
    if (sizes.empty()) {
        sizes = {1000, 10000};
    }
    std::vector<ww::bench::Figures> figures;
    for (const int terminals : sizes) {
        ww::bench::Measurement measurement(terminals);
        figures.push_back(measurement.run());
        ww::bench::print(terminals, figures.back(), measurement.fileBytes());
    }
    if (figures.size() > 1) {
        std::printf("growth from %d to %d terminals: check %.1f x, storing %.1f x\n", sizes.front(),
                    sizes.back(), figures.back().check_ms / figures.front().check_ms,
                    figures.back().storeInMemory_ms / figures.front().storeInMemory_ms);
    }
    return 0;
}
