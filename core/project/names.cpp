#include "core/project/names.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/base/expects.h"

namespace ww::project {

namespace {

template <class Enumeration>
struct Words;

template <>
struct Words<UnitSystem> {
    static constexpr std::array kAll{std::pair{UnitSystem::US, "US"}, std::pair{UnitSystem::SI, "SI"}};
};
template <>
struct Words<fluid::FluidKind> {
    static constexpr std::array kAll{std::pair{fluid::FluidKind::Water, "water"},
                                     std::pair{fluid::FluidKind::EthyleneGlycol, "ethylene glycol"},
                                     std::pair{fluid::FluidKind::PropyleneGlycol, "propylene glycol"}};
};
template <>
struct Words<Scale> {
    static constexpr std::array kAll{std::pair{Scale::Turns, "turns"}, std::pair{Scale::Degrees, "degrees"},
                                     std::pair{Scale::Percent, "percent"}};
};
template <>
struct Words<BranchKind> {
    static constexpr std::array kAll{
        std::pair{BranchKind::Manual, "manual"}, std::pair{BranchKind::Orifice, "orifice"},
        std::pair{BranchKind::Limiter, "limiter"}, std::pair{BranchKind::Picv, "picv"},
        std::pair{BranchKind::None, "none"}};
};
template <>
struct Words<Side> {
    static constexpr std::array kAll{std::pair{Side::Unknown, ""}, std::pair{Side::Supply, "supply"},
                                     std::pair{Side::Return, "return"}};
};
template <>
struct Words<ReturnKind> {
    static constexpr std::array kAll{std::pair{ReturnKind::Direct, "direct"},
                                     std::pair{ReturnKind::Reverse, "reverse"}};
};
template <>
struct Words<RoundKind> {
    static constexpr std::array kAll{
        std::pair{RoundKind::Survey, "survey"}, std::pair{RoundKind::Adjusting, "adjusting"},
        std::pair{RoundKind::Final, "final"}, std::pair{RoundKind::Witness, "witness"}};
};
template <>
struct Words<RoundState> {
    static constexpr std::array kAll{
        std::pair{RoundState::Open, "open"}, std::pair{RoundState::Closed, "closed"},
        std::pair{RoundState::Sent, "sent"}, std::pair{RoundState::Accepted, "accepted"},
        std::pair{RoundState::SentBack, "sent back"}};
};
template <>
struct Words<ReadingStatus> {
    static constexpr std::array kAll{std::pair{ReadingStatus::Standing, "standing"},
                                     std::pair{ReadingStatus::Superseded, "superseded"},
                                     std::pair{ReadingStatus::Struck, "struck"}};
};

template <class Enumeration>
std::string_view wordOf(Enumeration value) {
    for (const auto& [candidate, word] : Words<Enumeration>::kAll) {
        if (candidate == value) {
            return word;
        }
    }
    base::breach("an enumeration without a word", __FILE__, __LINE__);
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

}  // namespace

std::string_view name(UnitSystem value) {
    return wordOf(value);
}
std::string_view name(fluid::FluidKind value) {
    return wordOf(value);
}
std::string_view name(Scale value) {
    return wordOf(value);
}
std::string_view name(BranchKind value) {
    return wordOf(value);
}
std::string_view name(Side value) {
    return wordOf(value);
}
std::string_view name(ReturnKind value) {
    return wordOf(value);
}
std::string_view name(RoundKind value) {
    return wordOf(value);
}
std::string_view name(RoundState value) {
    return wordOf(value);
}
std::string_view name(ReadingStatus value) {
    return wordOf(value);
}

template <class Enumeration>
std::optional<Enumeration> fromName(std::string_view text) {
    for (const auto& [candidate, word] : Words<Enumeration>::kAll) {
        const std::string_view known = word;
        if (std::equal(known.begin(), known.end(), text.begin(), text.end(),
                       [](char a, char b) { return lower(a) == lower(b); })) {
            return candidate;
        }
    }
    return std::nullopt;
}

template <class Enumeration>
std::string namesOf() {
    std::string out;
    for (const auto& [candidate, word] : Words<Enumeration>::kAll) {
        if (*word != '\0') {
            out += (out.empty() ? "" : ", ") + std::string(word);
        }
    }
    return out;
}

#define WW_NAMED(Enumeration)                                                    \
    template std::optional<Enumeration> fromName<Enumeration>(std::string_view); \
    template std::string namesOf<Enumeration>();
WW_NAMED(UnitSystem)
WW_NAMED(fluid::FluidKind)
WW_NAMED(Scale)
WW_NAMED(BranchKind)
WW_NAMED(Side)
WW_NAMED(ReturnKind)
WW_NAMED(RoundKind)
WW_NAMED(RoundState)
WW_NAMED(ReadingStatus)
#undef WW_NAMED

}  // namespace ww::project
