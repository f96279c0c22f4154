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
template <>
struct Words<CodeForm> {
    static constexpr std::array kAll{std::pair{CodeForm::NotStated, ""},
                                     std::pair{CodeForm::PercentOrFloor, "percent or floor"},
                                     std::pair{CodeForm::PercentOnly, "percent only"}};
};
template <>
struct Words<Disturbance> {
    static constexpr std::array kAll{std::pair{Disturbance::Ordinary, ""},
                                     std::pair{Disturbance::Pump, "pump"},
                                     std::pair{Disturbance::TwoElbows, "two elbows"}};
};
template <>
struct Words<BalancingPolicy> {
    static constexpr std::array kAll{
        std::pair{BalancingPolicy::Unstated, ""}, std::pair{BalancingPolicy::Proportional, "proportional"},
        std::pair{BalancingPolicy::VerifyLimiter, "verify limiter"},
        std::pair{BalancingPolicy::VerifyPressureIndependent, "verify pressure-independent valve"},
        std::pair{BalancingPolicy::NotBalanced, "not balanced"}};
};
template <>
struct Words<PumpArrangement> {
    static constexpr std::array kAll{std::pair{PumpArrangement::Parallel, "parallel"},
                                     std::pair{PumpArrangement::Series, "series"}};
};
template <>
struct Words<PersonRole> {
    static constexpr std::array kAll{
        std::pair{PersonRole::Unstated, ""}, std::pair{PersonRole::Technician, "technician"},
        std::pair{PersonRole::Supervisor, "supervisor"}, std::pair{PersonRole::Engineer, "engineer"},
        std::pair{PersonRole::Witness, "witness"}};
};
template <>
struct Words<ReadingPurpose> {
    static constexpr std::array kAll{
        std::pair{ReadingPurpose::Walk, "walk"}, std::pair{ReadingPurpose::Try, "try"},
        std::pair{ReadingPurpose::Hold, "hold"}, std::pair{ReadingPurpose::Reference, "reference"},
        std::pair{ReadingPurpose::ShutValve, "shut valve"}};
};
template <>
struct Words<PumpPoint> {
    static constexpr std::array kAll{std::pair{PumpPoint::Running, "running"},
                                     std::pair{PumpPoint::Static, "static"},
                                     std::pair{PumpPoint::Shutoff, "shutoff"},
                                     std::pair{PumpPoint::FullOpen, "full open"},
                                     std::pair{PumpPoint::ThrottledToDesign, "throttled to design"},
                                     std::pair{PumpPoint::Final, "final"}};
};
template <>
struct Words<ResetLaw> {
    static constexpr std::array kAll{std::pair{ResetLaw::None, "none"}, std::pair{ResetLaw::Square, "square"},
                                     std::pair{ResetLaw::Linear, "linear"}};
};
template <>
struct Words<SetPointMethod> {
    static constexpr std::array kAll{std::pair{SetPointMethod::Unstated, ""},
                                     std::pair{SetPointMethod::IndexAtDesign, "index at design"},
                                     std::pair{SetPointMethod::WorstCoil, "worst coil"},
                                     std::pair{SetPointMethod::Estimated, "estimated"}};
};
template <>
struct Words<RecordKind> {
    static constexpr std::array kAll{std::pair{RecordKind::Job, "job"},
                                     std::pair{RecordKind::ValveModel, "valve"},
                                     std::pair{RecordKind::Branch, "branch"},
                                     std::pair{RecordKind::Pump, "pump"},
                                     std::pair{RecordKind::Instrument, "instrument"},
                                     std::pair{RecordKind::Person, "person"},
                                     std::pair{RecordKind::Round, "round"},
                                     std::pair{RecordKind::Reading, "reading"},
                                     std::pair{RecordKind::PumpReading, "pump reading"},
                                     std::pair{RecordKind::SetPoint, "set-point"},
                                     std::pair{RecordKind::ReadinessLine, "readiness line"},
                                     std::pair{RecordKind::Deficiency, "deficiency"},
                                     std::pair{RecordKind::Comment, "comment"},
                                     std::pair{RecordKind::Attachment, "attachment"},
                                     std::pair{RecordKind::FindingReason, "reason"},
                                     std::pair{RecordKind::SignedReport, "signed report"},
                                     std::pair{RecordKind::MergeConflict, "merge conflict"},
                                     std::pair{RecordKind::ClockOffset, "clock offset"}};
};
template <>
struct Words<ReadinessState> {
    static constexpr std::array kAll{std::pair{ReadinessState::Open, "open"},
                                     std::pair{ReadinessState::Done, "done"},
                                     std::pair{ReadinessState::DoesNotApply, "does not apply"}};
};
template <>
struct Words<DeficiencyStatus> {
    static constexpr std::array kAll{std::pair{DeficiencyStatus::Open, "open"},
                                     std::pair{DeficiencyStatus::Remedied, "remedied"},
                                     std::pair{DeficiencyStatus::Closed, "closed"},
                                     std::pair{DeficiencyStatus::LeftAsItIs, "left as it is"}};
};
template <>
struct Words<ConflictChoice> {
    static constexpr std::array kAll{
        std::pair{ConflictChoice::Open, "open"}, std::pair{ConflictChoice::Ours, "ours"},
        std::pair{ConflictChoice::Theirs, "theirs"}, std::pair{ConflictChoice::Both, "both"}};
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
std::string_view name(CodeForm value) {
    return wordOf(value);
}
std::string_view name(Disturbance value) {
    return wordOf(value);
}
std::string_view name(BalancingPolicy value) {
    return wordOf(value);
}
std::string_view name(PumpArrangement value) {
    return wordOf(value);
}
std::string_view name(PersonRole value) {
    return wordOf(value);
}
std::string_view name(ReadingPurpose value) {
    return wordOf(value);
}
std::string_view name(PumpPoint value) {
    return wordOf(value);
}
std::string_view name(ResetLaw value) {
    return wordOf(value);
}
std::string_view name(SetPointMethod value) {
    return wordOf(value);
}
std::string_view name(RecordKind value) {
    return wordOf(value);
}
std::string_view name(ReadinessState value) {
    return wordOf(value);
}
std::string_view name(DeficiencyStatus value) {
    return wordOf(value);
}
std::string_view name(ConflictChoice value) {
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
WW_NAMED(CodeForm)
WW_NAMED(Disturbance)
WW_NAMED(BalancingPolicy)
WW_NAMED(PumpArrangement)
WW_NAMED(PersonRole)
WW_NAMED(ReadingPurpose)
WW_NAMED(PumpPoint)
WW_NAMED(ResetLaw)
WW_NAMED(SetPointMethod)
WW_NAMED(RecordKind)
WW_NAMED(ReadinessState)
WW_NAMED(DeficiencyStatus)
WW_NAMED(ConflictChoice)
#undef WW_NAMED

}  // namespace ww::project
