#include "core/project/project.h"

#include <algorithm>
#include <cmath>

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

/// A value entered as a head of the flowing fluid means another pressure when the density changes.
void resolve(std::optional<Measured<PressureDifference>>& entered, quantity::Density density) {
    if (entered && quantity::isHeadUnit(entered->unit)) {
        *entered = quantity::measuredDifference(entered->digits, entered->unit, density);
    }
}

void resolve(std::optional<Measured<GaugePressure>>& entered, quantity::Density density) {
    if (entered && quantity::isHeadUnit(entered->unit)) {
        *entered = quantity::measuredGauge(entered->digits, entered->unit, density);
    }
}

void resolve(Measured<Head>& entered, quantity::Density density) {
    if (!quantity::isHeadUnit(entered.unit)) {
        entered = quantity::measuredHead(entered.digits, entered.unit, density);
    }
}

void resolve(ValveModel& valve, quantity::Density density) {
    resolve(valve.minimumDp, density);
    resolve(valve.maximumDp, density);
}

void resolve(Branch& branch, quantity::Density density) {
    resolve(branch.runLoss, density);
    resolve(branch.circuitLoss, density);
}

void resolve(Pump& pump, quantity::Density density) {
    for (PumpTableRow& row : pump.rows) {
        resolve(row.head, density);
        if (row.npshRequired) {
            resolve(*row.npshRequired, density);
        }
    }
}

void resolve(Instrument& instrument, quantity::Density density) {
    resolve(instrument.range, density);
    resolve(instrument.accuracyFloor, density);
    resolve(instrument.resolution, density);
    resolve(instrument.zeroStart, density);
    resolve(instrument.zeroEnd, density);
}

void resolve(SetPoint& point, quantity::Density density) {
    resolve(point.zero, density);
    resolve(point.dp, density);
    resolve(point.margin, density);
    resolve(point.lowLimit, density);
    resolve(point.highLimit, density);
}

void resolve(Reading& reading, quantity::Density density) {
    resolve(reading.dp, density);
}

void resolve(PumpReading& reading, quantity::Density density) {
    resolve(reading.suction, density);
    resolve(reading.discharge, density);
    resolve(reading.gaugeRise, density);
}

template <class Record>
void resolveAll(RecordTable<Record>& table, quantity::Density density) {
    for (std::size_t i = 0; i < table.size(); ++i) {
        Record record = table[i];
        resolve(record, density);
        table.put(std::move(record));
    }
}

std::optional<curve::PumpCurve> curveOf(const Pump& pump) {
    // Of a family, the curve of the impeller that is in the pump; without one stated, the largest.
    std::optional<double> wanted_m;
    if (pump.impeller) {
        wanted_m = pump.impeller->value.si();
    }
    std::optional<double> chosen_m;
    for (const PumpTableRow& row : pump.rows) {
        if (!row.impeller) {
            continue;
        }
        const double candidate_m = row.impeller->value.si();
        const bool isBetter =
            !chosen_m || (wanted_m ? std::abs(candidate_m - *wanted_m) < std::abs(*chosen_m - *wanted_m)
                                   : candidate_m > *chosen_m);
        if (isBetter) {
            chosen_m = candidate_m;
        }
    }
    std::vector<curve::PumpPoint> points;
    for (const PumpTableRow& row : pump.rows) {
        if (chosen_m && row.impeller && row.impeller->value.si() != *chosen_m) {
            continue;
        }
        points.push_back(pumpPoint(row));
    }
    auto curve = curve::PumpCurve::make(std::move(points));
    return curve ? std::optional(std::move(*curve)) : std::nullopt;
}

}  // namespace

std::vector<curve::ValvePoint> valvePoints(const ValveModel& valve) {
    std::vector<curve::ValvePoint> points;
    points.reserve(valve.rows.size());
    for (const ValveTableRow& row : valve.rows) {
        points.push_back({quantity::Setting::si(row.setting.value()),
                          quantity::FlowCoefficient::from(row.coefficient.value(), valve.coefficientUnit)});
    }
    return points;
}

curve::PumpPoint pumpPoint(const PumpTableRow& row) {
    curve::PumpPoint point;
    point.flow = row.flow.value;
    point.head = row.head.value;
    if (row.efficiency) {
        point.efficiency = row.efficiency->value;
    }
    if (row.power) {
        point.power = row.power->value;
    }
    if (row.npshRequired) {
        point.npshRequired = row.npshRequired->value;
    }
    if (row.impeller) {
        point.impeller = row.impeller->value;
    }
    return point;
}

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
    resolve(m_job.fillPressure, density);
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
    resolve(valve, m_fluid.density());
    auto made = curve::ValveCharacteristic::make(valvePoints(valve));
    m_characteristics.erase(valve.id);
    if (made) {
        m_characteristics.emplace(valve.id, std::move(*made));
    }
    m_valves.put(std::move(valve));
}

void Project::put(Branch branch) {
    resolve(branch, m_fluid.density());
    m_branches.put(std::move(branch));
    m_tree.reset();
    m_shownFlowUnit.reset();
}

void Project::put(Pump pump) {
    resolve(pump, m_fluid.density());
    m_pumpCurves.erase(pump.id);
    if (auto curve = curveOf(pump)) {
        m_pumpCurves.emplace(pump.id, std::move(*curve));
    }
    m_pumps.put(std::move(pump));
}

void Project::put(Instrument instrument) {
    resolve(instrument, m_fluid.density());
    m_instruments.put(std::move(instrument));
}

void Project::put(Person person) {
    m_people.put(std::move(person));
}

void Project::put(Round round) {
    m_rounds.put(std::move(round));
}

void Project::put(Reading reading) {
    resolve(reading, m_fluid.density());
    putInRound(m_readingsByRound, m_readings, std::move(reading));
}

void Project::put(PumpReading reading) {
    resolve(reading, m_fluid.density());
    putInRound(m_pumpReadingsByRound, m_pumpReadings, std::move(reading));
}

void Project::put(SetPoint setPoint) {
    resolve(setPoint, m_fluid.density());
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

const Pump* Project::pumpTagged(std::string_view tag) const {
    const auto found =
        std::find_if(m_pumps.begin(), m_pumps.end(), [&](const Pump& pump) { return pump.tag == tag; });
    return found == m_pumps.end() ? nullptr : &*found;
}

}  // namespace ww::project
