// The sections of the report about the pumps, each from what pump_room computed; the place Pump shows the
// same. Not for their order (report.cpp).
#pragma once

#include "core/pump_room/pump_picture.h"
#include "core/pump_room/what_if.h"
#include "core/report/report.h"

namespace ww::report {

/// Numbers of the sections are left 0: whoever puts them together counts.

/// The test sheet of one pump (index into Project::pumps()): head with its corrections, flow by every way,
/// motor power by every method, suction; the shutoff cautions stand before all.
Section pumpTestSection(const project::Project& project, const pump_room::PumpPicture& picture,
                        std::size_t pump);
/// Required head side by side, excess head, and throttle, trim or slow with what each costs.
Section pumpDecisionSection(const project::Project& project, const pump_room::PumpPicture& picture);
/// The energy code's test in both forms, and the proof that the least throttling came first.
Section energyCodeSection(const project::Project& project, const pump_room::PumpPicture& picture);
/// What read-and-set would leave across the valves against a proportional balance.
Section readAndSetSection(const project::Project& project, const pump_room::PumpPicture& picture);
/// Gauge pressure along one circuit and the air that the unit's water holds.
Section pressureSection(const project::Project& project, const pump_room::CircuitComparison& circuit);
/// Circuits that should have a balancing device, their policy, side and straight pipe.
Section deviceSection(const project::Project& project, const pump_room::PumpPicture& picture);
/// The worksheet of every dp set-point.
Section setPointSection(const project::Project& project, const pump_room::PumpPicture& picture);

/// What a changed zone does to the balance and the pump.
Section zoneSection(const pump_room::WhatIf& whatIf);

/// What an element of a circuit is called: "valve T4", "supply run to T2".
std::string nameOf(const project::Project& project, const pump_room::ProfileElement& element);
/// The profile with the valve on the side where it stands; the return where that is not recorded. Null where
/// the circuit could not be computed.
const pump_room::CircuitProfile* asBuilt(const project::Project& project,
                                         const pump_room::CircuitComparison& circuit);

/// Whether the balancing valve of a circuit ended fully open in the last round, and what it takes. Nothing
/// without a round, a valve or its profile.
std::optional<base::Fault> valveSentence(const project::Project& project,
                                         const pump_room::CircuitComparison& circuit);

/// All of them that have something to say, pump tests of every pump that was read.
std::vector<Section> pumpSections(const project::Project& project, const pump_room::PumpPicture& picture);

}  // namespace ww::report
