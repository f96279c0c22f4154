// One job in memory: all its records, and what follows directly from them (fluid, valve and pump curves, the
// branch tree, readings by round). Not for storage (store/) and not for judgment (balancing/).
#pragma once

#include <memory>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/curve/pump_curve.h"
#include "core/curve/valve_characteristic.h"
#include "core/project/branch_tree.h"
#include "core/project/record_table.h"
#include "core/project/records.h"
#include "core/project/review_records.h"

namespace ww::project {

class Project;

/// The design flow of every branch, by index into Project::branches(): its own, else the sum of its
/// children's; 0 for a terminal that gives none.
std::vector<VolumeFlow> designFlows(const Project& project);

/// A copyable value. Records change only through put() and erase(), so that what follows from them stays
/// true. Values entered as heads of the flowing fluid are resolved again when the fluid changes.
class Project {
  public:
    const Job& job() const { return m_job; }
    const RecordTable<ValveModel>& valves() const { return m_valves; }
    const RecordTable<Branch>& branches() const { return m_branches; }
    const RecordTable<Pump>& pumps() const { return m_pumps; }
    const RecordTable<Instrument>& instruments() const { return m_instruments; }
    const RecordTable<Person>& people() const { return m_people; }
    const RecordTable<Round>& rounds() const { return m_rounds; }
    const RecordTable<Reading>& readings() const { return m_readings; }
    const RecordTable<PumpReading>& pumpReadings() const { return m_pumpReadings; }
    const RecordTable<SetPoint>& setPoints() const { return m_setPoints; }
    const RecordTable<ReadinessLine>& readiness() const { return m_readiness; }
    const RecordTable<Deficiency>& deficiencies() const { return m_deficiencies; }
    const RecordTable<Comment>& comments() const { return m_comments; }
    const RecordTable<Attachment>& attachments() const { return m_attachments; }
    const RecordTable<FindingReason>& findingReasons() const { return m_findingReasons; }
    const RecordTable<SignedReport>& signedReports() const { return m_signedReports; }
    const RecordTable<MergeConflict>& mergeConflicts() const { return m_mergeConflicts; }
    const RecordTable<ClockOffset>& clockOffsets() const { return m_clockOffsets; }

    void put(Job job);
    void put(ValveModel valve);
    void put(Branch branch);
    void put(Pump pump);
    void put(Instrument instrument);
    void put(Person person);
    void put(Round round);
    void put(Reading reading);
    void put(PumpReading reading);
    void put(SetPoint setPoint);
    void put(ReadinessLine line);
    void put(Deficiency deficiency);
    void put(Comment comment);
    void put(Attachment attachment);
    void put(FindingReason reason);
    void put(SignedReport report);
    void put(MergeConflict conflict);
    void put(ClockOffset offset) { m_clockOffsets.put(std::move(offset)); }

    void eraseValve(const Id& id);
    void eraseBranch(const Id& id);
    void erasePump(const Id& id);
    void eraseInstrument(const Id& id);
    void erasePerson(const Id& id);
    void eraseRound(const Id& id);
    void eraseReading(const Id& id);
    void erasePumpReading(const Id& id);
    void eraseSetPoint(const Id& id);
    void eraseReadinessLine(const Id& id);
    void eraseDeficiency(const Id& id);
    void eraseComment(const Id& id);
    void eraseAttachment(const Id& id);
    void eraseFindingReason(const Id& id);
    void eraseSignedReport(const Id& id);
    void eraseMergeConflict(const Id& id);
    void eraseClockOffset(const Id& id) { m_clockOffsets.erase(id); }

    /// The fluid of the job; water at 20 C while the job's fluid is unusable.
    const fluid::Fluid& fluid() const { return m_fluid; }
    /// The curve of a valve model; null where its table is unusable.
    const curve::ValveCharacteristic* characteristic(const Id& valve) const;
    /// The curve of the valve of a branch; null where it has none.
    const curve::ValveCharacteristic* characteristicOf(const Branch& branch) const;
    /// The curve of a pump for the impeller that is in it (or for its only impeller); null where unusable.
    const curve::PumpCurve* pumpCurve(const Id& pump) const;

    /// The flow unit of screens, findings and report: the one in which most design flows were entered, as
    /// long as it belongs to the job's system of units; else gpm or L/s. What was entered keeps its own unit,
    /// always.
    quantity::Unit shownFlowUnit() const;

    /// Whether a closed round may be judged by another design than today's (asJudged).
    bool hasEarlierDesigns() const { return m_branchesWithEarlierDesigns > 0; }

    /// The branch tree: built on first use after a change of branches.
    const BranchTree& tree() const;

    /// Readings of a round in order of sequence, all statuses. Indices into readings().
    const std::vector<std::size_t>& readingsOf(const Id& round) const;
    const std::vector<std::size_t>& pumpReadingsOf(const Id& round) const;
    /// Rounds in order of number. Indices into rounds().
    std::vector<std::size_t> roundsByNumber() const;
    /// The round with the highest number, null where there is none.
    const Round* lastRound() const;
    const Round* roundNumbered(int number) const;
    const Branch* branchTagged(std::string_view tag) const;

  private:
    void countEarlierDesigns(const Branch* before, const Branch* after);

    Job m_job;
    RecordTable<ValveModel> m_valves;
    RecordTable<Branch> m_branches;
    RecordTable<Pump> m_pumps;
    RecordTable<Instrument> m_instruments;
    RecordTable<Person> m_people;
    RecordTable<Round> m_rounds;
    RecordTable<Reading> m_readings;
    RecordTable<PumpReading> m_pumpReadings;
    RecordTable<SetPoint> m_setPoints;
    RecordTable<ReadinessLine> m_readiness;
    RecordTable<Deficiency> m_deficiencies;
    RecordTable<Comment> m_comments;
    RecordTable<Attachment> m_attachments;
    RecordTable<FindingReason> m_findingReasons;
    RecordTable<SignedReport> m_signedReports;
    RecordTable<MergeConflict> m_mergeConflicts;
    RecordTable<ClockOffset> m_clockOffsets;

    std::size_t m_branchesWithEarlierDesigns = 0;
    fluid::Fluid m_fluid;
    std::unordered_map<Id, curve::ValveCharacteristic> m_characteristics;
    std::unordered_map<Id, curve::PumpCurve> m_pumpCurves;
    std::unordered_map<Id, std::vector<std::size_t>> m_readingsByRound;
    std::unordered_map<Id, std::vector<std::size_t>> m_pumpReadingsByRound;
    mutable std::shared_ptr<const BranchTree> m_tree;
    mutable std::optional<quantity::Unit> m_shownFlowUnit;
};

}  // namespace ww::project
