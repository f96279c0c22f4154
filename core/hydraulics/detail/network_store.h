// What a network holds, in flat arrays.
#pragma once

#include <cstdint>
#include <memory>
#include <mutex>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/hydraulics/detail/law.h"
#include "core/hydraulics/detail/plan.h"
#include "core/hydraulics/element.h"

namespace ww::hydraulics::detail {

/// Finds a text without making a string of it.
struct TextHash {
    using is_transparent = void;
    std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
};
using IndexOfText = std::unordered_map<std::string, std::uint32_t, TextHash, std::equal_to<>>;

/// What never changes between states of one loop.
struct Shape {
    std::vector<std::string> nodeIds;
    std::vector<std::string> linkIds;
    IndexOfText nodeOf;
    IndexOfText linkOf;
    std::vector<std::uint32_t> from;
    std::vector<std::uint32_t> to;
    std::vector<std::uint32_t> references;  ///< one node of each loop
    std::vector<double> referencePressures_Pa;
};

/// The laws and states of the links.
struct LinkStates {
    static constexpr std::uint32_t kSquare = 0xFFFFFFFFU;

    std::vector<double> resistances;   ///< of the square law; 0 for other laws
    std::vector<std::uint32_t> lawOf;  ///< position in laws, or kSquare
    std::vector<Law> laws;
    std::vector<std::uint8_t> isClosed;

    DropAndSlope evaluateLink(std::uint32_t link, double flow_m3s) const {
        if (lawOf[link] == kSquare) {
            const double perFlow = resistances[link] * std::abs(flow_m3s);
            return {perFlow * flow_m3s, 2 * perFlow};
        }
        return evaluate(laws[lawOf[link]], flow_m3s);
    }
    Law law(std::uint32_t link) const {
        return lawOf[link] == kSquare ? Law(SquareLaw{resistances[link]}) : laws[lawOf[link]];
    }
    void set(std::uint32_t link, const Element& element, bool closed);
};

/// Made when first asked for; the folded one with the network.
class Plans {
  public:
    Plans(std::shared_ptr<const Shape> shape, const LinkStates& states);
    const Plan& folded() const { return m_folded; }
    const Plan& unfolded() const;
    /// The same with these links closed as well.
    Plan without(std::span<const std::uint32_t> links, bool folds) const;
    /// Whether these plans serve another state of the same loop.
    bool serve(const LinkStates& states) const;

  private:
    PlanInput input() const;

    std::shared_ptr<const Shape> m_shape;
    std::vector<std::uint8_t> m_isClosed;
    std::vector<std::uint8_t> m_isSquare;
    std::vector<std::uint8_t> m_isDriver;
    Plan m_folded;
    mutable std::once_flag m_once;
    mutable Plan m_unfolded;
};

struct NetworkStore {
    std::shared_ptr<const Shape> shape;
    LinkStates states;
    std::shared_ptr<const Plans> plans;
};

}  // namespace ww::hydraulics::detail
