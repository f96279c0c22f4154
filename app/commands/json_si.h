// Numbers that may be absent, in JSON output. Not for whole objects (check_json.h, pump_json.h, ...).
#pragma once

#include <nlohmann/json.hpp>
#include <optional>

namespace ww::app {

/// The SI value of a quantity; null where there is none.
template <class Quantity>
nlohmann::ordered_json si(const std::optional<Quantity>& value) {
    return value ? nlohmann::ordered_json(value->si()) : nlohmann::ordered_json(nullptr);
}

}  // namespace ww::app
