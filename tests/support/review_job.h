// The records and fields of review, pump tests and merging, every one set: for storing and comparing, on top
// of wholeJob(). Not realistic.
#pragma once

#include "tests/support/whole_job.h"

namespace ww::support {

namespace detail {

inline base::Instant at(std::string_view text) {
    return *base::Instant::fromText(text);
}

/// The records of wholeJob() with the fields set that it leaves alone.
inline std::vector<project::AnyRecord> enrichedRecords(const project::Project& job) {
    using quantity::Unit;
    const WholeJobIds ids;
    const quantity::Density density = job.fluid().density();
    const auto ratio = [](std::string_view text) {
        return quantity::measured<quantity::Ratio>(digits(text), Unit::Percent);
    };
    const auto length = [](std::string_view text) {
        return quantity::measured<quantity::Length>(digits(text), Unit::Millimetre);
    };
    const auto speed = [](std::string_view text) {
        return quantity::measured<quantity::RotationalSpeed>(digits(text), Unit::RevolutionPerMinute);
    };
    const auto amps = [](std::string_view text) {
        return quantity::measured<quantity::Current>(digits(text), Unit::Ampere);
    };
    const auto volts = [](std::string_view text) {
        return quantity::measured<quantity::Voltage>(digits(text), Unit::Volt);
    };

    project::Job head = job.job();
    head.practice = "seed 7, 12 terminals";
    head.altitude = quantity::measured<quantity::Length>(digits("420"), Unit::Metre);
    head.fillPressure = quantity::measuredGauge(digits("12.5"), Unit::Metre, density);
    head.readingAgeLimit = digits("30");
    head.codeForm = project::CodeForm::PercentOrFloor;
    head.codeEdition = "as adopted";
    head.codeClause = "6.7";
    head.codeException = "motor of 7.5 kW";
    head.loadRows = {{digits("1500"), ratio("100")}, {digits("3000"), ratio("62.5")}};

    project::ValveModel valve = job.valves().at(ids.valve);
    valve.accuracyShut = ratio("6.5");

    project::Branch near = job.branches().at(ids.near);
    near.disturbance = project::Disturbance::TwoElbows;
    near.elevation = quantity::measured<quantity::Length>(digits("7.2"), Unit::Metre);
    near.policy = project::BalancingPolicy::NotBalanced;
    near.policyReason = "one of a kind";
    near.notes = "behind the panel";
    near.earlierDesigns = {
        {ids.round, true, quantity::measured<quantity::VolumeFlow>(digits("0.42"), Unit::LitrePerSecond)}};

    project::Pump pump = job.pumps().at(ids.pump);
    pump.arrangement = project::PumpArrangement::Series;
    pump.suctionDiameter = length("80");
    pump.dischargeDiameter = length("65");
    pump.suctionGaugeHeight = length("-120");
    pump.dischargeGaugeHeight = length("310");
    pump.powerFactor = ratio("81");
    pump.noLoadAmps = amps("1.9");
    pump.plateSpeed = speed("1440");
    pump.synchronousSpeed = speed("1500");
    pump.minimumSpeed = ratio("40");
    pump.hasDrive = true;
    pump.isPositiveDisplacement = true;
    pump.guardsSource = true;

    project::Instrument instrument = job.instruments().at(ids.instrument);
    instrument.resolution = quantity::measuredDifference(digits("0.05"), Unit::Kilopascal, density);
    instrument.certificate = "C-118";
    instrument.zeroStart = quantity::measuredDifference(digits("0.0"), Unit::Kilopascal, density);
    instrument.zeroEnd = quantity::measuredDifference(digits("0.1"), Unit::Kilopascal, density);
    instrument.overdueReason = "checked against M-3";

    project::Person person = job.people().at(ids.person);
    person.role = project::PersonRole::Technician;
    person.certificate = "T-22";
    person.firm = "Fields & Co";

    project::Round round = job.rounds().at(ids.round);
    round.sent = at("2026-03-02T16:00:00Z");
    round.decided = at("2026-03-03T08:00:00Z");
    round.sentBy = "A. Fields";
    round.decidedBy = "K. Moor";
    round.reason = "B-05 once more";
    round.readiness = "K. Moor: strainers follow on Monday";
    round.sampleSeed = digits("42");
    round.sample = {{ids.near}, {ids.far}};
    round.toleranceLow = ratio("-8");
    round.toleranceHigh = ratio("12.5");
    round.matchingBand = ratio("4");

    project::Reading reading = job.readings().at(ids.first);
    reading.purpose = project::ReadingPurpose::ShutValve;

    project::PumpReading pumpReading = job.pumpReadings().at(ids.pumpReading);
    pumpReading.point = project::PumpPoint::Shutoff;
    pumpReading.voltsSecond = volts("399");
    pumpReading.voltsThird = volts("402");
    pumpReading.ampsSecond = amps("3.3");
    pumpReading.ampsThird = amps("3.5");
    pumpReading.powerFactor = ratio("78");
    pumpReading.isDoubtful = true;
    pumpReading.note = "needle swings";
    pumpReading.reason = "snubber fitted";
    return {head, valve, near, pump, instrument, person, round, reading, pumpReading};
}

/// One record of each kind that wholeJob() does not hold.
inline std::vector<project::AnyRecord> reviewRecords(quantity::Density density) {
    using quantity::Unit;
    const WholeJobIds ids;
    const auto dp = [&](std::string_view text) {
        return quantity::measuredDifference(digits(text), Unit::Metre, density);
    };

    project::SetPoint point;
    point.id = CountingIds::numbered(20);
    point.pump = ids.pump;
    point.sensor = "DPT-1";
    point.location = "end of the east riser";
    point.method = project::SetPointMethod::IndexAtDesign;
    point.zero = dp("0.0");
    point.dp = dp("4.1");
    point.flow = quantity::measured<quantity::VolumeFlow>(digits("3.1"), Unit::CubicMetrePerHour);
    point.speed = quantity::measured<quantity::RotationalSpeed>(digits("1310"), Unit::RevolutionPerMinute);
    point.margin = dp("0.4");
    point.lowLimit = dp("2.0");
    point.highLimit = dp("5.5");
    point.reset = project::ResetLaw::Square;
    point.setBy = "controls";
    point.time = at("2026-03-04T10:00:00Z");
    point.note = "signed off on site";

    project::ReadinessLine line;
    line.id = CountingIds::numbered(21);
    line.position = 3;
    line.text = "strainers cleaned";
    line.isMandatory = false;
    line.state = project::ReadinessState::Done;
    line.owner = "pipework";
    line.date = at("2026-03-01");
    line.evidence = "photo 4";

    project::Deficiency deficiency;
    deficiency.id = CountingIds::numbered(22);
    deficiency.number = 1;
    deficiency.branch = ids.far;
    deficiency.pump = ids.pump;
    deficiency.location = "level 2";
    deficiency.description = "no access";
    deficiency.consequence = "not read";
    deficiency.trade = "ceilings";
    deficiency.remedy = "hatch";
    deficiency.reading = ids.second;
    deficiency.status = project::DeficiencyStatus::Remedied;
    deficiency.raised = at("2026-03-02T11:00:00Z");
    deficiency.raisedBy = "A. Fields";
    deficiency.retested = at("2026-03-05T11:00:00Z");
    deficiency.retestReading = ids.first;
    deficiency.retestResult = "read";

    project::Comment comment;
    comment.id = CountingIds::numbered(23);
    comment.round = ids.round;
    comment.branch = ids.near;
    comment.field = "dp";
    comment.text = "Meter zeroed?";
    comment.person = "K. Moor";
    comment.time = at("2026-03-03T08:00:00Z");
    comment.isResolved = true;
    comment.resolvedBy = "K. Moor";
    comment.resolved = at("2026-03-03T09:00:00Z");
    project::Comment answer = comment;
    answer.id = CountingIds::numbered(24);
    answer.pump = ids.pump;
    answer.answers = comment.id;

    project::Attachment attachment;
    attachment.id = CountingIds::numbered(25);
    attachment.branch = ids.far;
    attachment.deficiency = deficiency.id;
    attachment.name = "ceiling.jpg";
    attachment.mediaType = "image/jpeg";
    attachment.caption = "no hatch";
    attachment.person = "A. Fields";
    attachment.time = at("2026-03-02T11:01:00Z");
    attachment.content = base::SharedBytes({0xFF, 0xD8, 0x00, 0x27, 0xFF, 0xD9});

    project::FindingReason reason{CountingIds::numbered(26), "calibration", "M-2",
                                  "certificate follows",     "A. Fields",   at("2026-03-05T12:00:00Z")};

    project::SignedReport report;
    report.id = CountingIds::numbered(27);
    report.revision = 2;
    report.role = "technician";
    report.signer = "A. Fields";
    report.certificate = "ab12";
    report.isSelfMade = true;
    report.time = at("2026-03-05T13:00:00Z");
    report.fileName = "north wing.pdf";
    report.fileDigest = "cd34";
    report.journalSequence = digits("31");
    report.journalDigest = "ef56";
    report.isWithdrawn = true;
    report.reason = "wrong round";

    project::MergeConflict conflict;
    conflict.id = CountingIds::numbered(28);
    conflict.recordKind = project::RecordKind::Reading;
    conflict.record = ids.first;
    conflict.field = "dp";
    conflict.place = "B-05, DP, round 1";
    conflict.ours = "31.30 kPa";
    conflict.theirs = "31.80 kPa";
    conflict.ourPerson = "A. Fields";
    conflict.theirPerson = "K. Moor";
    conflict.ourTime = at("2026-03-02T09:15:00Z");
    conflict.theirTime = at("2026-03-02T09:21:00Z");
    conflict.ourInstrument = "M-2";
    conflict.theirInstrument = "M-3";
    conflict.choice = project::ConflictChoice::Theirs;
    conflict.decidedBy = "K. Moor";
    conflict.decided = at("2026-03-03T09:30:00Z");

    project::ClockOffset offset;
    offset.id = CountingIds::numbered(29);
    offset.machine = "LT-2";
    offset.own = at("2026-03-02T12:20:00Z");
    offset.showed = at("2026-03-02T12:20:00Z");
    offset.stated = at("2026-03-02T09:19:00Z");
    offset.uncertainSince = at("2026-03-02T12:05:10Z");
    offset.person = "K. Moor";
    return {point, line, deficiency, comment, answer, attachment, reason, report, conflict, offset};
}

}  // namespace detail

/// What to apply to a job made of wholeJob().
inline project::Edit reviewOf(const project::Project& job) {
    project::Edit edit;
    edit.label = "Review";
    edit.put = detail::enrichedRecords(job);
    for (project::AnyRecord& record : detail::reviewRecords(job.fluid().density())) {
        edit.put.push_back(std::move(record));
    }
    return edit;
}

}  // namespace ww::support
