#include "core/quantity/printed_unit.h"

#include <array>
#include <utility>

namespace ww::quantity {

std::string printed(Unit unit) {
    static constexpr std::array kSigns{std::pair<std::string_view, std::string_view>{"m3", "m³"},
                                       std::pair<std::string_view, std::string_view>{"H2O", "H₂O"}};
    std::string text(symbol(unit));
    for (const auto& [typed, sign] : kSigns) {
        if (const auto at = text.find(typed); at != std::string::npos) {
            text.replace(at, typed.size(), sign);
        }
    }
    const bool hasDegrees = unit == Unit::Celsius || unit == Unit::Fahrenheit;
    return hasDegrees ? "°" + text : text;
}

}  // namespace ww::quantity
