// A small job that holds every kind of record, with every field set somewhere, as one edit.
// Not realistic: it is for storing and comparing.
#pragma once

#include <algorithm>
#include <vector>

#include "core/project/edit.h"
#include "core/project/project.h"
#include "tests/support/counting_ids.h"

namespace ww::support {

inline base::Decimal digits(std::string_view text) {
    return *base::Decimal::parse(text);
}

/// Ids of the records of WholeJob.
struct WholeJobIds {
    base::Id job = CountingIds::numbered(1);
    base::Id valve = CountingIds::numbered(2);
    base::Id limiter = CountingIds::numbered(3);
    base::Id instrument = CountingIds::numbered(4);
    base::Id person = CountingIds::numbered(5);
    base::Id riser = CountingIds::numbered(6);
    base::Id near = CountingIds::numbered(7);
    base::Id far = CountingIds::numbered(8);
    base::Id pump = CountingIds::numbered(9);
    base::Id round = CountingIds::numbered(10);
    base::Id first = CountingIds::numbered(11);
    base::Id second = CountingIds::numbered(12);
    base::Id pumpReading = CountingIds::numbered(13);
};

/// Ids used above are below this number: a CountingIds(kFirstFreeId) meets none of them.
inline constexpr std::uint64_t kFirstFreeId = 1000;

inline project::Job wholeJobHead() {
    using quantity::Unit;
    project::Job job;
    job.id = WholeJobIds{}.job;
    job.name = "North wing";
    job.site = "12 Mill Lane, \"The Works\"";
    job.client = "Müller & Søn";
    job.units = project::UnitSystem::SI;
    job.fluid = fluid::FluidKind::PropyleneGlycol;
    job.concentration = quantity::measured<quantity::Ratio>(digits("30.0"), Unit::Percent);
    job.temperature = quantity::measured<quantity::Temperature>(digits("50"), Unit::Celsius);
    job.toleranceLow = quantity::measured<quantity::Ratio>(digits("-10"), Unit::Percent);
    job.toleranceHigh = quantity::measured<quantity::Ratio>(digits("10"), Unit::Percent);
    job.matchingBand = quantity::measured<quantity::Ratio>(digits("5"), Unit::Percent);
    job.powerPrice = digits("0.21");
    job.currency = "EUR";
    job.hoursPerYear = digits("4500");
    return job;
}

inline project::Reading wholeJobReading(const base::Id& id, int sequence, const base::Id& branch,
                                        std::string_view dp) {
    const WholeJobIds ids;
    project::Reading reading;
    reading.id = id;
    reading.round = ids.round;
    reading.branch = branch;
    reading.sequence = sequence;
    reading.time = *base::Instant::fromText("2026-03-02T09:15:00+01:00");
    reading.setting = digits("2.50");
    reading.dp = quantity::measured<quantity::PressureDifference>(digits(dp), quantity::Unit::Kilopascal);
    reading.instrument = ids.instrument;
    reading.person = ids.person;
    return reading;
}

/// The content of a new workbook.
inline project::Edit wholeJob() {
    using quantity::Unit;
    const WholeJobIds ids;
    const fluid::Fluid fluid =
        *fluid::Fluid::make(fluid::FluidKind::PropyleneGlycol, quantity::Ratio::from(30, Unit::Percent),
                            quantity::Temperature::from(50, Unit::Celsius));
    const quantity::Density density = fluid.density();

    project::ValveModel valve;
    valve.id = ids.valve;
    valve.model = "V";
    valve.size = "25";
    valve.scale = project::Scale::Turns;
    valve.coefficientUnit = Unit::Kv;
    for (const auto& [setting, coefficient] : {std::pair{"0.5", "0.60"}, std::pair{"1.0", "1.15"},
                                               std::pair{"2.0", "4.10"}, std::pair{"4.0", "8.70"}}) {
        valve.rows.push_back({digits(setting), digits(coefficient)});
    }
    valve.minimumDp = quantity::measuredDifference(digits("3"), Unit::Kilopascal, density);
    valve.accuracy = quantity::measured<quantity::Ratio>(digits("4.5"), Unit::Percent);

    project::ValveModel limiter = valve;
    limiter.id = ids.limiter;
    limiter.model = "L";
    limiter.scale = project::Scale::Percent;
    limiter.maximumDp = quantity::measuredDifference(digits("40"), Unit::Foot, density);

    project::Instrument instrument;
    instrument.id = ids.instrument;
    instrument.tag = "M-2";
    instrument.kind = "dp meter";
    instrument.serial = "0007";
    instrument.range = quantity::measuredDifference(digits("200"), Unit::Kilopascal, density);
    instrument.accuracy = quantity::measured<quantity::Ratio>(digits("1.0"), Unit::Percent);
    instrument.accuracyFloor = quantity::measuredDifference(digits("0.15"), Unit::Kilopascal, density);
    instrument.calibrated = *base::Instant::fromText("2025-11-03");
    instrument.due = *base::Instant::fromText("2026-11-03");

    project::Person person;
    person.id = ids.person;
    person.name = "A. Fields";

    project::Branch riser;
    riser.id = ids.riser;
    riser.tag = "R-1";
    riser.serves = "east";
    riser.kind = project::BranchKind::None;
    riser.returns = project::ReturnKind::Reverse;
    project::Branch near;
    near.id = ids.near;
    near.parent = ids.riser;
    near.position = 1;
    near.tag = "B-05";
    near.designFlow = quantity::measured<quantity::VolumeFlow>(digits("0.320"), Unit::LitrePerSecond);
    near.runLoss = quantity::measuredDifference(digits("1.2"), Unit::Metre, density);
    near.circuitLoss = quantity::measuredDifference(digits("18"), Unit::Kilopascal, density);
    near.valve = ids.valve;
    near.setting = digits("4.0");
    near.side = project::Side::Return;
    near.upstreamDiameters = digits("5");
    near.downstreamDiameters = digits("2");
    project::Branch far = near;
    far.id = ids.far;
    far.position = 2;
    far.tag = "B-06";
    far.kind = project::BranchKind::Limiter;
    far.valve = ids.limiter;
    far.setting.reset();
    far.side = project::Side::Unknown;

    project::Pump pump;
    pump.id = ids.pump;
    pump.tag = "P-1";
    pump.speed = quantity::measured<quantity::RotationalSpeed>(digits("1450"), Unit::RevolutionPerMinute);
    pump.impeller = quantity::measured<quantity::Length>(digits("174"), Unit::Millimetre);
    pump.impellerMinimum = quantity::measured<quantity::Length>(digits("150"), Unit::Millimetre);
    pump.motorPower = quantity::measured<quantity::Power>(digits("1.5"), Unit::Kilowatt);
    pump.motorEfficiency = quantity::measured<quantity::Ratio>(digits("84"), Unit::Percent);
    pump.volts = quantity::measured<quantity::Voltage>(digits("400"), Unit::Volt);
    pump.amps = quantity::measured<quantity::Current>(digits("3.4"), Unit::Ampere);
    pump.serviceFactor = digits("1.15");
    pump.throttleTag = "TV-1";
    for (const auto& [flow, head] :
         {std::pair{"0", "14.0"}, std::pair{"2.0", "12.5"}, std::pair{"4.0", "8.0"}}) {
        project::PumpTableRow row;
        row.impeller = pump.impeller;
        row.flow = quantity::measured<quantity::VolumeFlow>(digits(flow), Unit::CubicMetrePerHour);
        row.head = quantity::measuredHead(digits(head), Unit::Metre, density);
        row.efficiency = quantity::measured<quantity::Ratio>(digits("55"), Unit::Percent);
        row.power = quantity::measured<quantity::Power>(digits("0.9"), Unit::Kilowatt);
        row.npshRequired = quantity::measuredHead(digits("15"), Unit::Kilopascal, density);
        pump.rows.push_back(row);
    }

    project::Round round;
    round.id = ids.round;
    round.number = 1;
    round.opened = *base::Instant::fromText("2026-03-02T08:00:00Z");

    project::Reading second = wholeJobReading(ids.second, 2, ids.far, "1.9");
    second.dp = quantity::measuredDifference(digits("0.20"), Unit::Metre, density);
    second.flow = quantity::measured<quantity::VolumeFlow>(digits("1.10"), Unit::CubicMetrePerHour);
    second.note = "needle swings";
    second.isRepeat = true;
    second.isDoubtful = true;
    second.cannotBeRead = true;
    second.reason = "air";

    project::PumpReading pumpReading;
    pumpReading.id = ids.pumpReading;
    pumpReading.round = ids.round;
    pumpReading.pump = ids.pump;
    pumpReading.sequence = 1;
    pumpReading.time = *base::Instant::fromText("2026-03-02T08:05:00Z");
    pumpReading.suction = quantity::measuredGauge(digits("1.21"), Unit::Bar, density);
    pumpReading.discharge = quantity::measuredGauge(digits("25.1"), Unit::Metre, density);
    pumpReading.gaugeRise = quantity::measuredDifference(digits("118"), Unit::Kilopascal, density);
    pumpReading.speed = pump.speed;
    pumpReading.throttle = digits("100");
    pumpReading.flow = quantity::measured<quantity::VolumeFlow>(digits("2.1"), Unit::CubicMetrePerHour);
    pumpReading.volts = pump.volts;
    pumpReading.amps = pump.amps;
    pumpReading.power = pump.motorPower;
    pumpReading.instrument = ids.instrument;
    pumpReading.person = ids.person;

    project::Edit edit;
    edit.label = "New Job";
    edit.put = {wholeJobHead(),
                valve,
                limiter,
                instrument,
                person,
                riser,
                near,
                far,
                pump,
                round,
                wholeJobReading(ids.first, 1, ids.near, "31.30"),
                second,
                pumpReading};
    return edit;
}

/// All records of a job in order of kind and id: two jobs are equal when these are.
inline std::vector<project::AnyRecord> recordsOf(const project::Project& project) {
    std::vector<project::AnyRecord> records{project.job()};
    const auto add = [&](const auto& table) { records.insert(records.end(), table.begin(), table.end()); };
    add(project.valves());
    add(project.branches());
    add(project.pumps());
    add(project.instruments());
    add(project.people());
    add(project.rounds());
    add(project.readings());
    add(project.pumpReadings());
    add(project.setPoints());
    add(project.readiness());
    add(project.deficiencies());
    add(project.comments());
    add(project.attachments());
    add(project.findingReasons());
    add(project.signedReports());
    add(project.mergeConflicts());
    add(project.clockOffsets());
    std::sort(records.begin(), records.end(), [](const auto& a, const auto& b) {
        return std::pair(a.index(), project::idOf(a)) < std::pair(b.index(), project::idOf(b));
    });
    return records;
}

}  // namespace ww::support
