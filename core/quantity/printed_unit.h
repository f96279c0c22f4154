// How a unit is written for people's eyes. Not for files and commands, which keep its symbol (unit.h).
#pragma once

#include <string>

#include "core/quantity/unit.h"

namespace ww::quantity {

/// The symbol of a unit with the signs of print: "m³/h", "inH₂O", "°C"; most are their symbol itself.
std::string printed(Unit unit);

}  // namespace ww::quantity
