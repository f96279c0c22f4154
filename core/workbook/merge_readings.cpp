#include "core/workbook/merge_readings.h"

#include <algorithm>
#include <map>

#include "core/project/merge_reason.h"
#include "core/project/names.h"
#include "core/workbook/conflict_parts.h"

namespace ww::workbook {

namespace {

using project::Id;
using project::Project;
using project::PumpReading;
using project::Reading;
using project::ReadingStatus;
using project::RecordTable;
using project::Round;
using project::RoundState;

template <class R>
const RecordTable<R>& readingsIn(const Project& project) {
    if constexpr (std::is_same_v<R, Reading>) {
        return project.readings();
    } else {
        return project.pumpReadings();
    }
}

/// The readings of a round in order of sequence; none where the job has no such round.
template <class R>
std::vector<R> readingsOf(const Project& project, const Id& round) {
    std::vector<R> readings;
    if constexpr (std::is_same_v<R, Reading>) {
        for (const std::size_t index : project.readingsOf(round)) {
            readings.push_back(project.readings()[index]);
        }
    } else {
        for (const std::size_t index : project.pumpReadingsOf(round)) {
            readings.push_back(project.pumpReadings()[index]);
        }
    }
    return readings;
}

/// What is read in a round that the other side knows nothing of.
template <class R>
std::vector<R> readOnlyOn(const Project& side, const Project& other, const Id& round) {
    std::vector<R> readings = readingsOf<R>(side, round);
    std::erase_if(readings, [&](const R& reading) { return readingsIn<R>(other).contains(reading.id); });
    return readings;
}

using Place = std::pair<Id, int>;
Place placeOf(const Reading& reading) {
    return {reading.branch, 0};
}
Place placeOf(const PumpReading& reading) {
    return {reading.pump, static_cast<int>(reading.point)};
}

bool isRepeat(const Reading& reading) {
    return reading.isRepeat;
}
bool isRepeat(const PumpReading&) {
    return false;
}

/// A valve shut for a moment tells the head there, not the valve's own reading.
bool canCount(const Reading& reading) {
    return reading.status == ReadingStatus::Standing && reading.purpose != project::ReadingPurpose::ShutValve;
}
bool canCount(const PumpReading& reading) {
    return reading.status == ReadingStatus::Standing;
}

std::string tagOf(const Project& project, const Reading& reading) {
    const project::Branch* branch = project.branches().find(reading.branch);
    return branch == nullptr ? "?" : branch->tag;
}
std::string tagOf(const Project& project, const PumpReading& reading) {
    const project::Pump* pump = project.pumps().find(reading.pump);
    return pump == nullptr ? "?" : pump->tag;
}

/// The values of a reading as "name value", in the order of the sheet.
std::vector<std::pair<std::string, std::string>> valuesOf(const Reading& reading) {
    std::vector<std::pair<std::string, std::string>> values;
    if (reading.cannotBeRead) {
        values.emplace_back("", conflictText(conflict_forms::kCannotBeRead));
    }
    if (reading.dp) {
        values.emplace_back("DP", reading.dp->text());
    }
    if (reading.flow) {
        values.emplace_back("flow", reading.flow->text());
    }
    if (reading.setting) {
        values.emplace_back("setting", reading.setting->text());
    }
    return values;
}
std::vector<std::pair<std::string, std::string>> valuesOf(const PumpReading& reading) {
    std::vector<std::pair<std::string, std::string>> values;
    const auto add = [&](const char* name, const auto& value) {
        if (value) {
            values.emplace_back(name, value->text());
        }
    };
    add("suction", reading.suction);
    add("discharge", reading.discharge);
    add("gauge rise", reading.gaugeRise);
    add("speed", reading.speed);
    add("throttle", reading.throttle);
    add("flow", reading.flow);
    add("volts", reading.volts);
    add("amps", reading.amps);
    add("power", reading.power);
    return values;
}

template <class R>
std::string describe(const R& reading) {
    std::string out;
    for (const auto& [name, value] : valuesOf(reading)) {
        const bool isPlain = name.empty() || name == "DP";
        out += (out.empty() ? "" : ", ") + (isPlain ? value : name + " " + value);
    }
    return out;
}

/// Names of the values that are not the same in both.
template <class R>
std::string differing(const R& a, const R& b) {
    std::map<std::string, std::string> left;
    for (auto& [name, value] : valuesOf(a)) {
        left[name] = value;
    }
    std::string out;
    const auto name = [&](const std::string& what) {
        out += what.empty() ? "" : (out.empty() ? "" : ", ") + what;
    };
    for (auto& [what, value] : valuesOf(b)) {
        const auto same = left.find(what);
        if (same == left.end() || same->second != value) {
            name(what);
        }
        if (same != left.end()) {
            left.erase(same);
        }
    }
    for (const auto& [what, value] : left) {
        name(what);
    }
    return out.empty() ? "reading" : out;
}

/// A reading in the order that both sides' readings take together.
struct Ordered {
    Id id;
    std::int64_t time = 0;  ///< never before that of an earlier reading of the side
    bool isSecondSide = false;
    std::size_t first = 0;  ///< of the readings that it repeats, among the side's
    std::size_t at = 0;
};

/// By time; within a side the order of entry holds, but a repeat stays with the reading that it repeats, so
/// that no mean is taken over readings of both sides.
template <class R>
void addOrdered(std::vector<Ordered>& all, const std::vector<R>& side, bool isSecondSide) {
    std::map<Place, std::size_t> firsts;
    std::vector<Ordered> ordered;
    std::int64_t latest = 0;
    for (std::size_t i = 0; i < side.size(); ++i) {
        const Place place = placeOf(side[i]);
        const bool continues = isRepeat(side[i]) && firsts.contains(place);
        const std::size_t first = continues ? firsts.at(place) : i;
        firsts[place] = first;
        latest = side[i].time ? std::max(latest, side[i].time->seconds) : latest;
        ordered.push_back({side[i].id, continues ? ordered[first].time : latest, isSecondSide, first, i});
    }
    all.insert(all.end(), ordered.begin(), ordered.end());
}

}  // namespace

void ReadingSettlement::put(project::AnyRecord record) {
    std::visit([&](const auto& value) { m_after.put(value); }, record);
    m_settlement.put.push_back(std::move(record));
}

void ReadingSettlement::run() {
    settleKind<Reading>();
    settleKind<PumpReading>();
}

template <class R>
void ReadingSettlement::settleKind() {
    for (const R& reading : readingsIn<R>(m_sides.theirs)) {
        const bool isNew = !readingsIn<R>(m_sides.ours).contains(reading.id);
        m_settlement.readingsAdded += isNew && readingsIn<R>(m_sides.merged).contains(reading.id) ? 1 : 0;
    }
    for (const Round& round : m_sides.merged.rounds()) {
        if (isSealed(round.state)) {
            sealRound<R>(round);
        } else {
            comparePlaces<R>(round);
        }
        orderRound<R>(round);
    }
}

/// A sent or accepted round keeps what its side had read; the rest is struck until a person picks.
template <class R>
void ReadingSettlement::sealRound(const Round& round) {
    const Round* here = m_sides.ours.rounds().find(round.id);
    const bool isSealedHere = here != nullptr && isSealed(here->state);
    const Project& sealing = isSealedHere ? m_sides.ours : m_sides.theirs;
    const Project& other = isSealedHere ? m_sides.theirs : m_sides.ours;
    const std::string machine = isSealedHere ? m_sides.ourMachine : m_sides.theirMachine;
    const std::string number = std::to_string(round.number);
    const std::string state(project::name(round.state));
    std::vector<project::AnyRecord> sealed;
    std::vector<project::AnyRecord> late;
    std::string ids;
    for (const R& merged : readingsOf<R>(m_sides.merged, round.id)) {
        const R* kept = readingsIn<R>(sealing).find(merged.id);
        const R* changed = readingsIn<R>(other).find(merged.id);
        if (changed == nullptr || (kept != nullptr && *kept == merged)) {
            continue;
        }
        late.emplace_back(*changed);
        ids += merged.id.text();
        if (kept != nullptr) {
            sealed.emplace_back(*kept);
            put(*kept);
        } else if (merged.status == ReadingStatus::Standing) {
            R struck = merged;
            struck.status = ReadingStatus::Struck;
            struck.reason = base::filledIn(project::merge_reasons::kNotSeen.text, {number, state, machine});
            put(struck);
        }
    }
    if (late.empty()) {
        return;
    }
    KeptConflict kept;
    kept.conflict.recordKind = project::RecordKind::Round;
    kept.conflict.record = round.id;
    kept.conflict.field = kLateReadingsField;
    kept.conflict.place =
        conflictText(conflict_forms::kRound, {number}) + ", " +
        conflictText(std::is_same_v<R, Reading> ? conflict_forms::kReadings : conflict_forms::kPumpReadings);
    kept.conflict.id = conflictId(kept.conflict.recordKind, round.id, kLateReadingsField, ids, "");
    const std::string without = conflictText(conflict_forms::kWithoutThem, {state});
    const std::string with = late.size() == 1
                                 ? conflictText(conflict_forms::kOneReading)
                                 : conflictText(conflict_forms::kMoreReadings, {std::to_string(late.size())});
    kept.conflict.ours = isSealedHere ? without : with;
    kept.conflict.theirs = isSealedHere ? with : without;
    kept.ours = isSealedHere ? sealed : late;
    kept.theirs = isSealedHere ? late : sealed;
    m_settlement.conflicts.push_back(std::move(kept));
}

template <class R>
void ReadingSettlement::orderRound(const Round& round) {
    const auto ours = readOnlyOn<R>(m_sides.ours, m_sides.theirs, round.id);
    const auto theirs = readOnlyOn<R>(m_sides.theirs, m_sides.ours, round.id);
    if (ours.empty() || theirs.empty()) {
        return;
    }
    int highest = 0;
    for (const R& reading : readingsOf<R>(m_after, round.id)) {
        const bool isKnown = readingsIn<R>(m_sides.ours).contains(reading.id) &&
                             readingsIn<R>(m_sides.theirs).contains(reading.id);
        highest = isKnown ? std::max(highest, reading.sequence) : highest;
    }
    std::vector<Ordered> all;
    const Round* here = m_sides.ours.rounds().find(round.id);
    const bool isOursFirst = isSealed(round.state) ? here != nullptr && isSealed(here->state)
                                                   : ours.front().id < theirs.front().id;
    addOrdered(all, ours, !isOursFirst);
    addOrdered(all, theirs, isOursFirst);
    std::sort(all.begin(), all.end(), [&](const Ordered& a, const Ordered& b) {
        const auto key = [&](const Ordered& o) {
            // What a sealed round has not seen comes behind what it has.
            return std::tuple(isSealed(round.state) && o.isSecondSide, o.time, o.isSecondSide, o.first, o.at);
        };
        return key(a) < key(b);
    });
    for (const Ordered& ordered : all) {
        const R* reading = readingsIn<R>(m_after).find(ordered.id);
        ++highest;
        if (reading != nullptr && reading->sequence != highest) {
            R numbered = *reading;
            numbered.sequence = highest;
            put(numbered);
        }
    }
}

/// Places that both sides read in the same round.
template <class R>
void ReadingSettlement::comparePlaces(const Round& round) {
    std::map<Place, std::pair<std::vector<R>, std::vector<R>>> places;
    const auto add = [&](const std::vector<R>& readings, auto side) {
        for (const R& reading : readings) {
            const R* now = readingsIn<R>(m_after).find(reading.id);
            if (now != nullptr && canCount(*now)) {
                (places[placeOf(*now)].*side).push_back(*now);
            }
        }
    };
    using Both = std::pair<std::vector<R>, std::vector<R>>;
    add(readOnlyOn<R>(m_sides.ours, m_sides.theirs, round.id), &Both::first);
    add(readOnlyOn<R>(m_sides.theirs, m_sides.ours, round.id), &Both::second);
    for (const auto& [place, both] : places) {
        const auto& [ours, theirs] = both;
        if (ours.empty() || theirs.empty()) {
            continue;
        }
        const R& here = ours.back();
        const R& there = theirs.back();
        if (!isRepeat(here) && !isRepeat(there) && valuesOf(here) == valuesOf(there)) {
            ++m_settlement.readingsIdentical;
            continue;
        }
        KeptConflict kept;
        project::MergeConflict& conflict = kept.conflict;
        conflict.recordKind = project::kindOf(here);
        conflict.record = here.id;
        conflict.field = kTwoReadingsField;
        conflict.place = tagOf(m_after, here) + ", " + differing(here, there) + ", " +
                         conflictText(conflict_forms::kRound, {std::to_string(round.number)});
        conflict.id =
            conflictId(conflict.recordKind, round.id, kTwoReadingsField, here.id.text(), there.id.text());
        const auto fill = [&](const R& reading, std::string& text, std::string& person,
                              std::optional<base::Instant>& time, std::string& instrument) {
            text = describe(reading);
            const auto* who = reading.person ? m_after.people().find(*reading.person) : nullptr;
            const auto* meter =
                reading.instrument ? m_after.instruments().find(*reading.instrument) : nullptr;
            person = who == nullptr ? "" : who->name;
            instrument = meter == nullptr ? "" : meter->tag;
            time = reading.time;
        };
        fill(here, conflict.ours, conflict.ourPerson, conflict.ourTime, conflict.ourInstrument);
        fill(there, conflict.theirs, conflict.theirPerson, conflict.theirTime, conflict.theirInstrument);
        kept.ours.assign(ours.begin(), ours.end());
        kept.theirs.assign(theirs.begin(), theirs.end());
        m_settlement.conflicts.push_back(std::move(kept));
    }
}

}  // namespace ww::workbook
