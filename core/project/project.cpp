#include "core/project/project.h"

#include <algorithm>

#include "core/project/equipment_curves.h"
#include "core/project/resolve_heads.h"

namespace ww::project {

namespace {

template <class Record>
void removeIndex(std::unordered_map<Id, std::vector<std::size_t>>& byRound, const RecordTable<Record>& table,
                 const Id& id) {
    if (!table.contains(id)) {
        return;
    }
    const std::size_t index = table.indexOf(id);
    std::erase(byRound[table[index].round], index);
}

/// Every index above a record that has been taken out of its table moves down by one.
void closeGap(std::unordered_map<Id, std::vector<std::size_t>>& byRound, std::size_t gap) {
    for (auto& [round, indices] : byRound) {
        for (std::size_t& index : indices) {
            index -= index > gap ? 1 : 0;
        }
    }
}

template <class Record>
void insertBySequence(std::vector<std::size_t>& indices, std::size_t index,
                      const RecordTable<Record>& table) {
    const auto place =
        std::upper_bound(indices.begin(), indices.end(), index,
                         [&](std::size_t a, std::size_t b) { return table[a].sequence < table[b].sequence; });
    indices.insert(place, index);
}

template <class Record>
void putInRound(std::unordered_map<Id, std::vector<std::size_t>>& byRound, RecordTable<Record>& table,
                Record record) {
    const Record* before = table.find(record.id);
    const bool staysInPlace =
        before != nullptr && before->round == record.round && before->sequence == record.sequence;
    const Id id = record.id;
    const Id round = record.round;
    if (before != nullptr && !staysInPlace) {
        removeIndex(byRound, table, id);
    }
    table.put(std::move(record));
    if (!staysInPlace) {
        insertBySequence(byRound[round], table.indexOf(id), table);
    }
}

template <class Record>
void eraseFromRound(std::unordered_map<Id, std::vector<std::size_t>>& byRound, RecordTable<Record>& table,
                    const Id& id) {
    if (!table.contains(id)) {
        return;
    }
    const std::size_t gap = table.indexOf(id);
    removeIndex(byRound, table, id);
    table.erase(id);
    closeGap(byRound, gap);
}

template <class Record>
void resolveAll(RecordTable<Record>& table, quantity::Density density) {
    for (std::size_t i = 0; i < table.size(); ++i) {
        Record record = table[i];
        resolveHeads(record, density);
        table.put(std::move(record));
    }
}

}  // namespace

std::vector<VolumeFlow> designFlows(const Project& project) {
    const BranchTree& tree = project.tree();
    std::vector<VolumeFlow> flows(project.branches().size());
    const auto order = tree.topDown();
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        const Branch& branch = project.branches()[*at];
        if (branch.designFlow) {
            flows[*at] = branch.designFlow->value;
            continue;
        }
        for (const std::size_t child : tree.children(*at)) {
            flows[*at] += flows[child];
        }
    }
    return flows;
}

void Project::put(Job job) {
    const quantity::Density before = m_fluid.density();
    m_job = std::move(job);
    m_shownFlowUnit.reset();
    auto made = fluid::Fluid::make(m_job.fluid, m_job.concentration.value, m_job.temperature.value);
    m_fluid = made ? *made : fluid::Fluid();
    const quantity::Density density = m_fluid.density();
    resolveHeads(m_job, density);
    if (density == before) {
        return;
    }
    resolveAll(m_valves, density);
    resolveAll(m_branches, density);
    resolveAll(m_instruments, density);
    resolveAll(m_readings, density);
    resolveAll(m_pumpReadings, density);
    resolveAll(m_setPoints, density);
    for (std::size_t i = 0; i < m_pumps.size(); ++i) {
        put(Pump(m_pumps[i]));
    }
}

void Project::put(ValveModel valve) {
    resolveHeads(valve, m_fluid.density());
    auto made = curve::ValveCharacteristic::make(valvePoints(valve));
    m_characteristics.erase(valve.id);
    if (made) {
        m_characteristics.emplace(valve.id, std::move(*made));
    }
    m_valves.put(std::move(valve));
}

void Project::countEarlierDesigns(const Branch* before, const Branch* after) {
    const auto has = [](const Branch* branch) {
        return branch != nullptr && !branch->earlierDesigns.empty();
    };
    m_branchesWithEarlierDesigns += has(after) ? 1U : 0U;
    m_branchesWithEarlierDesigns -= has(before) ? 1U : 0U;
}

void Project::put(Branch branch) {
    resolveHeads(branch, m_fluid.density());
    countEarlierDesigns(m_branches.find(branch.id), &branch);
    m_branches.put(std::move(branch));
    m_tree.reset();
    m_shownFlowUnit.reset();
}

void Project::put(Pump pump) {
    resolveHeads(pump, m_fluid.density());
    m_pumpCurves.erase(pump.id);
    if (auto curve = pumpCurveOf(pump)) {
        m_pumpCurves.emplace(pump.id, std::move(*curve));
    }
    m_pumps.put(std::move(pump));
}

void Project::put(Instrument instrument) {
    resolveHeads(instrument, m_fluid.density());
    m_instruments.put(std::move(instrument));
}

void Project::put(Person person) {
    m_people.put(std::move(person));
}

void Project::put(Round round) {
    m_rounds.put(std::move(round));
}

void Project::put(Reading reading) {
    resolveHeads(reading, m_fluid.density());
    putInRound(m_readingsByRound, m_readings, std::move(reading));
}

void Project::put(PumpReading reading) {
    resolveHeads(reading, m_fluid.density());
    putInRound(m_pumpReadingsByRound, m_pumpReadings, std::move(reading));
}

void Project::put(SetPoint setPoint) {
    resolveHeads(setPoint, m_fluid.density());
    m_setPoints.put(std::move(setPoint));
}

void Project::put(ReadinessLine line) {
    m_readiness.put(std::move(line));
}

void Project::put(Deficiency deficiency) {
    m_deficiencies.put(std::move(deficiency));
}

void Project::put(Comment comment) {
    m_comments.put(std::move(comment));
}

void Project::put(Attachment attachment) {
    m_attachments.put(std::move(attachment));
}

void Project::put(FindingReason reason) {
    m_findingReasons.put(std::move(reason));
}

void Project::put(SignedReport report) {
    m_signedReports.put(std::move(report));
}

void Project::put(MergeConflict conflict) {
    m_mergeConflicts.put(std::move(conflict));
}

void Project::eraseValve(const Id& id) {
    m_characteristics.erase(id);
    m_valves.erase(id);
}

void Project::eraseBranch(const Id& id) {
    countEarlierDesigns(m_branches.find(id), nullptr);
    m_branches.erase(id);
    m_tree.reset();
    m_shownFlowUnit.reset();
}

void Project::erasePump(const Id& id) {
    m_pumpCurves.erase(id);
    m_pumps.erase(id);
}

void Project::eraseInstrument(const Id& id) {
    m_instruments.erase(id);
}

void Project::erasePerson(const Id& id) {
    m_people.erase(id);
}

void Project::eraseRound(const Id& id) {
    m_rounds.erase(id);
}

void Project::eraseReading(const Id& id) {
    eraseFromRound(m_readingsByRound, m_readings, id);
}

void Project::erasePumpReading(const Id& id) {
    eraseFromRound(m_pumpReadingsByRound, m_pumpReadings, id);
}

void Project::eraseSetPoint(const Id& id) {
    m_setPoints.erase(id);
}

void Project::eraseReadinessLine(const Id& id) {
    m_readiness.erase(id);
}

void Project::eraseDeficiency(const Id& id) {
    m_deficiencies.erase(id);
}

void Project::eraseComment(const Id& id) {
    m_comments.erase(id);
}

void Project::eraseAttachment(const Id& id) {
    m_attachments.erase(id);
}

void Project::eraseFindingReason(const Id& id) {
    m_findingReasons.erase(id);
}

void Project::eraseSignedReport(const Id& id) {
    m_signedReports.erase(id);
}

void Project::eraseMergeConflict(const Id& id) {
    m_mergeConflicts.erase(id);
}

const curve::ValveCharacteristic* Project::characteristic(const Id& valve) const {
    const auto found = m_characteristics.find(valve);
    return found == m_characteristics.end() ? nullptr : &found->second;
}

const curve::ValveCharacteristic* Project::characteristicOf(const Branch& branch) const {
    return branch.valve ? characteristic(*branch.valve) : nullptr;
}

const curve::PumpCurve* Project::pumpCurve(const Id& pump) const {
    const auto found = m_pumpCurves.find(pump);
    return found == m_pumpCurves.end() ? nullptr : &found->second;
}

quantity::Unit Project::shownFlowUnit() const {
    using quantity::Unit;
    if (!m_shownFlowUnit) {
        const bool isUs = m_job.units == UnitSystem::US;
        const Unit usual = isUs ? Unit::GallonPerMinute : Unit::LitrePerSecond;
        const Unit other = isUs ? Unit::ImperialGallonPerMinute : Unit::CubicMetrePerHour;
        int balance = 0;
        for (const Branch& branch : m_branches) {
            if (branch.designFlow) {
                balance +=
                    (branch.designFlow->unit == other ? 1 : 0) - (branch.designFlow->unit == usual ? 1 : 0);
            }
        }
        m_shownFlowUnit = balance > 0 ? other : usual;
    }
    return *m_shownFlowUnit;
}

const BranchTree& Project::tree() const {
    if (!m_tree) {
        m_tree = std::make_shared<const BranchTree>(m_branches);
    }
    return *m_tree;
}

const std::vector<std::size_t>& Project::readingsOf(const Id& round) const {
    static const std::vector<std::size_t> kNothing;
    const auto found = m_readingsByRound.find(round);
    return found == m_readingsByRound.end() ? kNothing : found->second;
}

const std::vector<std::size_t>& Project::pumpReadingsOf(const Id& round) const {
    static const std::vector<std::size_t> kNothing;
    const auto found = m_pumpReadingsByRound.find(round);
    return found == m_pumpReadingsByRound.end() ? kNothing : found->second;
}

std::vector<std::size_t> Project::roundsByNumber() const {
    std::vector<std::size_t> order(m_rounds.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        order[i] = i;
    }
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return m_rounds[a].number < m_rounds[b].number; });
    return order;
}

const Round* Project::lastRound() const {
    const auto last = std::max_element(m_rounds.begin(), m_rounds.end(),
                                       [](const Round& a, const Round& b) { return a.number < b.number; });
    return last == m_rounds.end() ? nullptr : &*last;
}

const Round* Project::roundNumbered(int number) const {
    const auto found = std::find_if(m_rounds.begin(), m_rounds.end(),
                                    [&](const Round& round) { return round.number == number; });
    return found == m_rounds.end() ? nullptr : &*found;
}

const Branch* Project::branchTagged(std::string_view tag) const {
    const auto found = std::find_if(m_branches.begin(), m_branches.end(),
                                    [&](const Branch& branch) { return branch.tag == tag; });
    return found == m_branches.end() ? nullptr : &*found;
}

}  // namespace ww::project
