// Values that were entered as heads of the flowing fluid, resolved again for another density.
// Not for the factors of units (quantity/).
#pragma once

#include "core/project/records.h"

namespace ww::project {

/// Gives every value of the record that was entered as a length of the flowing fluid (ft, m) the pressure it
/// means at this density, and every head that was entered as a pressure its length. Digits and unit stay.
void resolveHeads(Job& job, quantity::Density density);
void resolveHeads(ValveModel& valve, quantity::Density density);
void resolveHeads(Branch& branch, quantity::Density density);
void resolveHeads(Pump& pump, quantity::Density density);
void resolveHeads(Instrument& instrument, quantity::Density density);
void resolveHeads(SetPoint& point, quantity::Density density);
void resolveHeads(Reading& reading, quantity::Density density);
void resolveHeads(PumpReading& reading, quantity::Density density);

}  // namespace ww::project
