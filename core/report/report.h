// A balance report as data: sections with statements, tables and figures. Not for drawing (ui/report).
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/balancing/assessment.h"
#include "core/project/project.h"
#include "core/project/round_step.h"

namespace ww::pump_room {
struct PumpPicture;
}

namespace ww::report {

/// A sentence of the report: text with its arguments, translated where it is drawn.
using Statement = base::Fault;

enum class Alignment { Left, Right, Center };
struct Column {
    base::Fault heading;  ///< words and, below them, the unit
    std::string unit;
    Alignment alignment = Alignment::Left;
    double widthShare = 1.0;  ///< share of the page width
};
struct Cell {
    std::string text;
    std::optional<balancing::State> state;  ///< drawn as shape and word
    bool isStruck = false;
    bool isOver = false;  ///< the direction of the state's shape: more than the target share
    /// What `text` says in English, sentence by sentence, for drawing it in another language; empty: the text
    /// is a name, a number or what a person wrote.
    std::vector<Statement> parts = {};
    std::string glue = {};  ///< between the parts
    /// Of a state: that of a self-acting valve, which keeps to a range and has no share to meet.
    bool isSelfActing = false;
};
struct Table {
    base::Fault title;
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
    std::vector<Cell> totals;  ///< empty: no last line
    bool isLandscape = false;
    bool isForm = false;  ///< its cells are written into by hand: rows that are high enough, columns ruled
    std::vector<Statement> notes;  ///< below the table: what its marks mean
};
/// Whether a fact speaks for acceptance; drawn as a shape, so that it can be told without colour.
enum class Mark { None, Pass, Fail, Open };
/// A line "label: what is known", such as "Index valve: T4 at 4.0 of 4.0: fully open".
struct Fact {
    base::Fault label;
    base::Fault value;
    Mark mark = Mark::None;
};
/// What a figure shows; the numbers are taken from the report's project, assessments and pump picture.
enum class FigureKind { PumpAndSystem, Convergence, ReadAndSet, PressureProfile, OneLine, Photo };
struct Figure {
    FigureKind kind{};
    base::Fault title;
    base::Fault reading;                      ///< one sentence that says what it shows
    std::optional<base::Id> attachment = {};  ///< of a photo: project::Attachment
};
/// Numbers of the sections, in their order.
enum SectionNumber : int {
    kResult = 1,
    kMethod,
    kOneLine,
    kFinal,
    kShares,
    kPump,
    kIndex,
    kExceptions,
    kReadings,
    kReadiness,
    kDeficiencies,
    kWitness,
    kRevisions,
    kFirstOfPumps,  ///< what the pump room computed follows (pump_sections.h)
};
struct Section {
    int number = 0;
    base::Fault title;
    std::vector<Statement> opening;  ///< above all else: what makes every number here doubtful
    std::vector<Statement> statements;
    std::vector<Figure> figures;
    std::vector<Table> tables;
    std::vector<Fact> facts;         ///< above the statements
    std::vector<Statement> closing;  ///< below the tables: cautions, what the report does not say
};

/// Who is to sign the report; blocks for them stand below its result.
enum class Signers { None, Technician, TechnicianAndSupervisor };

struct ReportOptions {
    std::optional<int> round;   ///< the final round is the last one up to here; nothing: of all rounds
    std::string journalDigest;  ///< of the workbook's newest record, hexadecimal
    std::string workbookId;
    /// Written into the file as its date. Give the time of the newest journal record, so that the same job
    /// gives the same file.
    base::Instant printed;
    Signers signers = Signers::None;  ///< none: a draft or a copy, marked as such on every page
    /// The signed revision that still stands for the job as it is (workbook::standingRevision): without
    /// signers this is a copy of it. Nothing: a draft of the next.
    std::optional<int> standing;
    /// Every step of review of every round, oldest first (workbook::roundSteps): the project knows the last
    /// ones alone. Steps of rounds that the report is not about are left out.
    std::vector<project::RoundStep> roundSteps;
    /// What was computed of the pumps, where that was done already; it must be of the same project. Nothing,
    /// or a reported round that is judged by another design than today's: build() computes it.
    std::shared_ptr<const pump_room::PumpPicture> pumps;
};

/// A balance report tells what was read; a study what a change would do.
enum class ReportKind { Balance, Study };

struct Report {
    ReportKind kind = ReportKind::Balance;
    std::string jobName;
    std::vector<std::string> titleLines;  ///< system, site, client, dates, people
    std::optional<Statement> revisionLine;
    /// Of a practice job: that nothing of it was measured; every page is marked then. Nothing: a real plant.
    std::optional<Statement> simulated;
    bool isDraft = true;        ///< without signatures, a copy too
    std::optional<int> copyOf;  ///< the signed revision that this is a copy of
    std::vector<Section> sections;
    std::string digest;         ///< first 12 digits of the journal digest, for the footer
    std::string journalDigest;  ///< the whole of it
    Signers signers = Signers::None;
    int roundNumber = 0;
    base::Instant printed;
    std::string workbookId;
    int revision = 1;               ///< one more than the highest that was signed, or that of the copy
    std::optional<int> supersedes;  ///< the revision that this one takes the place of
    std::vector<balancing::Assessment> rounds;            ///< up to the reported one, no witness rounds
    std::shared_ptr<const pump_room::PumpPicture> pumps;  ///< for the figures; not null after build()
};

/// Builds the report, by the design and the limits by which its last round is judged. The final round is the
/// last one that is no witness round; a witness round is compared with it in a section of its own. Pure;
/// equal input gives an equal report.
Report build(const project::Project& today, const ReportOptions& given);

/// Of the same report the rounds and the sections of the pump and the index circuit alone, in a fraction of
/// the time: what a screen shows of it.
Report buildOfPump(const project::Project& project, const ReportOptions& options);

/// The same of rounds that were judged already, by number, no witness rounds: their numbers are enough.
/// `options.round` is not looked at.
Report buildOfPump(const project::Project& project, const ReportOptions& options,
                   std::vector<balancing::Assessment> rounds);

/// The section of a number; it must be one that the report has.
const Section& sectionOf(const Report& report, SectionNumber number);

/// The findings of the reported round that block signing; empty where the report may be signed.
std::vector<base::Fault> obstaclesToSigning(const Report& report);

}  // namespace ww::report
