// The sections of the balance report, each built by one function. Not for their order (report.cpp).
#pragma once

#include <span>

#include "core/balancing/ready_to_sign.h"
#include "core/balancing/share_count.h"
#include "core/balancing/system_curve.h"
#include "core/pump_room/pump_picture.h"
#include "core/report/detail/display.h"
#include "core/report/detail/words.h"
#include "core/report/report.h"

namespace ww::report::detail {

using balancing::Assessment;
using balancing::BranchResult;
using project::Project;

/// The excess head that the decision about the pump counts.
struct CountedExcess {
    balancing::ExcessHead excess;
    std::optional<balancing::ExcessHead> asRead;  ///< the same at the speed as read
    std::optional<quantity::Ratio> speed;  ///< of full speed, that takes it away; nothing: no such option
    std::optional<quantity::RotationalSpeed> rotation = {};      ///< the same as a speed
    std::optional<quantity::RotationalSpeed> fullRotation = {};  ///< full speed
    std::optional<quantity::Power> shaftThrottled = {};          ///< at design flow, with a throttle instead
    std::optional<quantity::Power> shaftSlowed = {};
    std::optional<quantity::Length> impeller = {};  ///< after a trim that takes it away
    std::optional<quantity::Length> firstCut = {};
    bool isFitting = false;         ///< nothing is to be done
    bool isShortUndecided = false;  ///< it cannot be told whether the pump is short
    bool runsAsDecided = false;     ///< the pump was slowed already
    /// Why nothing is ordered yet; nothing where the loop is balanced and the speed was read.
    std::optional<base::Fault> notYet = {};
    int section = 0;  ///< number of the section that decides
};

/// What every section is built from.
struct Source {
    const Project& project;
    const std::vector<Assessment>& rounds;  ///< of the report, by number, no witness rounds; may be empty
    const Assessment& last;                 ///< the round reported, or the empty picture
    const std::vector<base::Id>& walked;    ///< the same rounds and the witness rounds among them
    Display display;
    std::optional<CountedExcess> excess = {};           ///< nothing where no decision can be made
    balancing::CountedCurve curve = {};                 ///< of the pump, that all its numbers count
    std::span<const project::RoundStep> steps = {};     ///< of review, of all rounds, oldest first
    std::span<const pump_room::PumpSheet> sheets = {};  ///< of the pumps; empty: none
    std::optional<int> copyOf = {};                     ///< the signed revision that this is a copy of
    /// The job as it stands, where `project` is the job as the reported round is judged; null: the same.
    const Project* today = nullptr;

    bool hasRound() const { return !rounds.empty(); }
    /// Whether the reported round is a final one; else it is only the last one that was read.
    bool isFinalRound() const { return hasRound() && last.kind == project::RoundKind::Final; }
    const project::Branch& branch(std::size_t index) const { return project.branches()[index]; }
    /// The tag of an instrument or the name of a person; empty for nothing.
    std::string instrument(const std::optional<base::Id>& id) const;
    std::string person(const std::optional<base::Id>& id) const;
    /// The setting that stands in the reported round, as typed; empty where none is known.
    std::string setting(std::size_t branch) const;
    /// The valve's highest setting as in its table; empty without a table.
    std::string fullyOpen(std::size_t branch) const;
    /// "2.1 / 4.0".
    std::string settingOfMaximum(std::size_t branch) const;
    /// Readings of the reported rounds, witness rounds too, by round and sequence.
    std::vector<const project::Reading*> readings() const;
    std::vector<const project::PumpReading*> pumpReadings() const;
    /// The number of a round.
    int roundNumber(const base::Id& round) const;
    /// Branches, each parent directly before its children, and how deep each stands.
    std::vector<std::pair<std::size_t, int>> outline() const;
};

/// What was changed in design and limits after the rounds of these numbers were closed, as sentences.
std::vector<base::Fault> changesOf(const Source& source, int first, int last);

/// What would hold up a signature of the reported round and stands with a reason; empty without a round.
std::vector<balancing::SignLine> standingLines(const Source& source);

/// A sentence from a form and its arguments.
base::Fault say(const base::MessageForm& form, std::vector<std::string> arguments = {});
Cell cell(std::string text, bool isStruck = false);
/// Sentences one behind the other.
Cell cell(std::vector<base::Fault> parts, std::string glue);
/// Words of the program (base/term.h), with commas between them.
Cell wordCell(std::string words);
/// The same as a sentence.
base::Fault word(std::string words);
/// A text that stands for itself.
base::Fault plain(std::string text);
/// A reason as the record keeps it: what merging wrote is a sentence of the program, any other stands for
/// itself.
base::Fault reasonPart(const std::string& reason);
/// The state of a branch, drawn as shape and word.
Cell stateCell(const BranchResult& result);
Column column(const base::MessageForm& heading, double widthShare, Alignment alignment = Alignment::Left,
              std::string unit = {});
/// What a report of a practice job says of itself; nothing for a job of a real plant.
std::optional<base::Fault> simulated(const Project& project);
/// To the minute, for people: "2026-03-04 14:02 UTC", of another zone "2026-03-04 14:02 +01:00"; empty for
/// nothing.
std::string timeText(const std::optional<base::Instant>& time);
/// "K. Moor, 2026-03-02 10:00 UTC".
std::string whoWhen(const std::string& who, const std::optional<base::Instant>& time);
/// Which person accepted a round and when, or that nobody has; the readings' own verdict is another matter.
base::Fault acceptanceText(const project::Project& project, const project::Round& round);
/// What a round's readings say by themselves, a severity, in a word.
std::string word(balancing::Verdict verdict);
std::string word(balancing::Severity severity);
/// Whether a reading corrects another one, which it supersedes (balancing::isCorrection).
bool isCorrection(const project::Project& project, const project::Reading& reading);
/// What a reading says, as typed: "52.7 kPa", "2.1 m³/h", or "cannot be read".
std::string valueOf(const project::Reading& reading);
/// The dates on which the readings of a round were taken, "2026-03-02" or "2026-03-02 – 2026-03-04".
std::string datesOf(const Source& source, const std::optional<base::Id>& round);

Section resultSection(const Source& source, std::size_t exceptionCount);
Section methodSection(const Source& source);
Section finalRoundSection(const Source& source);
Section sharesSection(const Source& source);
Section pumpSection(const Source& source);
Section indexSection(const Source& source);
Section exceptionsSection(const Source& source);
Section readingsSection(const Source& source);
Section oneLineSection(const Source& source);
Section readinessSection(const Source& source);
Section deficienciesSection(const Source& source);
Section witnessSection(const Source& source);
Section revisionsSection(const Source& source);

/// What the flow of a duty rests on, as words of the program: "by the sum of the flows".
std::string flowBasis(const Source& source, const std::optional<balancing::SystemCurve>& duty);

/// What to order the pump's change by, as decided, or why nothing is ordered yet; nothing where
/// it counts none.
std::optional<base::Fault> orderOf(const Source& source);

/// The ordered speed as a speed; nothing where none is ordered or full speed is not known.
std::optional<Fact> orderedRotation(const Source& source, const base::Fault& order);

/// What each pump took in the first and in the last round whose readings tell it in the same way, the
/// difference, and a year of it where hours (and a price) are on record; empty where no two rounds do.
std::vector<Fact> powerReached(const Source& source);

/// Whether the speed for the loop with its valves as read is another than the one to order by.
bool isOtherThanOrder(const Source& source, double speedFraction);

/// The tags of the index circuit from the pump outward, "RC → CX → X3"; empty while it is not known.
std::string indexPathText(const Source& source);

/// The number of this report's revision: one more than the highest that was signed, or that of the copy.
int revisionOf(const Source& source);
/// The digest of the record that the report is of: the `newest`, or of a copy the one that was signed, so
/// that both can be held against each other.
std::string dataDigest(const Source& source, const std::string& newest);
/// The revision that this one takes the place of; nothing for the first.
std::optional<int> supersededBy(const Source& source);
/// Which revision this is and what it supersedes, or of which one it is a copy.
Statement revisionStatement(const Source& source);

/// The proof of the index circuit in one line: that it holds, or the first part of it that does not, in the
/// words of its section; nothing while the circuit is not known.
std::optional<Fact> indexProofFact(const Source& source);

}  // namespace ww::report::detail
