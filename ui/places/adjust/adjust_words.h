// What the place Adjust says of the valve in hand, as sentences. Not for computing (valve_in_hand.h).
#pragma once

#include <QString>
#include <QStringList>

#include "ui/places/adjust/valve_in_hand.h"

namespace ww::ui {

/// A dp in the unit of the instrument in hand: "52.3", and the same with its unit.
QString dpNumber(const WorkbookBridge& bridge, quantity::PressureDifference dp);
QString dpWithUnit(const WorkbookBridge& bridge, quantity::PressureDifference dp);

/// What was read there: digits as typed where their unit is that of the instrument and no mean counts.
QString readNumber(const WorkbookBridge& bridge, const ValveReading& read);

/// "Over, 113.0 % of target".
QString shareWords(const WorkbookBridge& bridge, std::size_t branch);
/// "Over, 113.0 % of target in round 3", and where that says otherwise than the word of the valve, why.
QString stateWords(const WorkbookBridge& bridge, const ValveInHand& valve);
/// What the aim rests on and how old that is; where the bases differ by more than the band, what each gives;
/// why the aim is old. One line each.
QStringList basisWords(const WorkbookBridge& bridge, const ValveInHand& valve);
/// "Tries  1: 2.5, 52.7 CLOSE   2: 2.3, 56.0 HOLD": the newest that fit.
QString triesWords(const WorkbookBridge& bridge, const ValveInHand& valve);
/// The one thing to do next, as the word has it, and what dp is to be read then; with HOLD why the valve
/// stays, whatever else is advised. `hasNext`: another valve is left to adjust.
QString proposalWords(const WorkbookBridge& bridge, const ValveInHand& valve, bool hasNext);
/// Two short lines under the reading: unit and setting, age and round.
QStringList readingNotes(const WorkbookBridge& bridge, const ValveInHand& valve);
/// Why the word is what it is, in a few words.
QString wordNote(const WorkbookBridge& bridge, const ValveInHand& valve);
/// All of it as one sentence for a screen reader.
QString spokenWords(const WorkbookBridge& bridge, const ValveInHand& valve);

}  // namespace ww::ui
