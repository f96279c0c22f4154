// What a decision says of itself. Not for making it (pump_decision.cpp).
#include <algorithm>

#include "core/pump_room/pump_decision.h"

namespace ww::pump_room {

namespace {

balancing::ExcessBasis basisOf(HeadSource source) {
    switch (source) {
        case HeadSource::Design:
            return balancing::ExcessBasis::IndexByDesign;
        case HeadSource::Learned:
            return balancing::ExcessBasis::IndexByLearned;
        case HeadSource::Measured:
            break;
    }
    return balancing::ExcessBasis::IndexByMeasured;
}

std::optional<balancing::ExcessHead> excessOver(const PumpDecision& decision, const std::optional<Head>& head,
                                                balancing::ExcessSpeed speed) {
    if (!head || !decision.counted) {
        return std::nullopt;
    }
    return balancing::ExcessHead{*head, basisOf(decision.required[*decision.counted].source), speed};
}

}  // namespace

bool PumpDecision::isFitting() const {
    return std::any_of(findings.begin(), findings.end(),
                       [](const base::Fault& finding) { return finding.is(kPumpFits); });
}

bool PumpDecision::isShortUndecided() const {
    return std::any_of(findings.begin(), findings.end(),
                       [](const base::Fault& finding) { return finding.is(kShortUndecided); });
}

bool PumpDecision::runsAsDecided() const {
    return duty && duty->isSpeedRead && presentExcess && counted &&
           !canBeTold(*presentExcess, required[*counted]);
}

const base::Fault* PumpDecision::notYet() const {
    const auto first = [this](auto is) {
        const auto found = std::find_if(findings.begin(), findings.end(), is);
        return found != findings.end() ? &*found : nullptr;
    };
    const base::Fault* look = first([](const base::Fault& one) { return one.is(kFirstLook); });
    return look != nullptr
               ? look
               : first([](const base::Fault& one) { return one.is(kSpeedNotRead) || one.is(kSpeedCarried); });
}

const DecidedOption* PumpDecision::find(energy::PumpAction action) const {
    const auto found = std::find_if(options.begin(), options.end(), [action](const DecidedOption& decided) {
        return decided.option.action == action;
    });
    return found != options.end() ? &*found : nullptr;
}

std::optional<balancing::ExcessHead> PumpDecision::decidedExcess() const {
    return excessOver(*this, excess, balancing::ExcessSpeed::Full);
}

std::optional<balancing::ExcessHead> PumpDecision::excessAsRead() const {
    return excessOver(*this, presentExcess, balancing::ExcessSpeed::AsRead);
}

}  // namespace ww::pump_room
