#include "core/balancing/index_proof.h"
#include "core/balancing/share_count.h"
#include "core/project/review.h"
#include "core/pump_room/decision_notes.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

using quantity::Unit;

/// What the readings say by themselves. While the index is not proved nothing is ticked.
Fact verdictFact(const Source& source) {
    if (!source.hasRound()) {
        return {say(kVerdictLabel), say(kNoRound), Mark::Open};
    }
    switch (source.last.verdict) {
        case balancing::Verdict::Accepted:
            return balancing::indexProof(source.project, source.last).isProved()
                       ? Fact{say(kVerdictLabel), say(kAccepted), Mark::Pass}
                       : Fact{say(kVerdictLabel), say(kAcceptedUnproved), Mark::Open};
        case balancing::Verdict::NotAccepted:
            return {say(kVerdictLabel), say(kNotAccepted), Mark::Fail};
        case balancing::Verdict::Undecidable:
            break;
    }
    return {say(kVerdictLabel), say(kUndecidable), Mark::Open};
}

/// Which person accepted the round: the readings' verdict is none.
Fact acceptanceFact(const Source& source) {
    using project::RoundState;
    const project::Round& round = source.project.rounds().at(*source.last.round);
    const bool isIndependent =
        round.state == RoundState::Accepted && !project::isSelfAccepted(source.project, round);
    return {say(kAcceptanceLabel), acceptanceText(source.project, round),
            isIndependent                         ? Mark::Pass
            : round.state == RoundState::SentBack ? Mark::Fail
                                                  : Mark::Open};
}

/// The mark of a part that is not whole: the round may be accepted all the same.
Mark markOf(balancing::Verdict verdict) {
    switch (verdict) {
        case balancing::Verdict::Accepted:
            return Mark::None;
        case balancing::Verdict::NotAccepted:
            return Mark::Fail;
        case balancing::Verdict::Undecidable:
            break;
    }
    return Mark::Open;
}

Fact sharesFact(const Source& source) {
    const Assessment& last = source.last;
    const balancing::ShareCount count = balancing::shareCount(last);
    const std::string all = std::to_string(count.all);
    if (!count.onShare) {
        return {say(kSharesLabel), say(kOnShareUnknown, {std::to_string(count.read), all}),
                markOf(last.verdict)};
    }
    const bool areAll = count.all > 0 && count.onShare == count.all;
    return {
        say(kSharesLabel),
        say(kOnShare, {std::to_string(*count.onShare), all, source.project.job().matchingBand.digits.text()}),
        areAll ? Mark::Pass : markOf(last.verdict)};
}

Fact spreadFact(const Source& source) {
    const Assessment& last = source.last;
    const Assessment& first = source.rounds.front();
    const std::string now = source.display.percent(last.spread);
    if (first.spread && first.roundNumber != last.roundNumber) {
        return {
            say(kSpreadLabel),
            say(kSpreadFrom, {now, source.display.percent(first.spread), std::to_string(first.roundNumber)}),
            Mark::None};
    }
    return {say(kSpreadLabel), say(kSpreadNow, {now}), Mark::None};
}

Fact totalFact(const Source& source) {
    const Assessment& last = source.last;
    const std::string unit = printed(source.display.flowUnit());
    const std::string design = source.display.flow(last.totalDesign);
    if (!last.totalFlow || last.totalDesign.si() <= 0) {
        return {say(kTotalLabel), say(kTotalUnknown, {design, unit}), Mark::Open};
    }
    const double ofDesign = *last.totalFlow / last.totalDesign;
    std::vector<std::string> arguments{source.display.flow(last.totalFlow), Display::fixed(100 * ofDesign, 1),
                                       design, unit};
    const std::size_t doubtful = balancing::doubtfulInTotal(last);
    if (doubtful > 0) {
        arguments.push_back(std::to_string(doubtful));
    }
    return {say(kTotalLabel), say(doubtful > 0 ? kTotalDoubtful : kTotal, std::move(arguments))};
}

/// The way to the index terminal, and where its proof stands.
Fact pathFact(const Source& source) {
    return {say(kIndexTitle), say(kIndexPath, {indexPathText(source), std::to_string(kIndex)})};
}

Fact indexFact(const Source& source) {
    if (!source.last.index.terminal) {
        return {say(kIndexLabel), say(kIndexUnknown), Mark::Open};
    }
    const std::size_t terminal = *source.last.index.terminal;
    const std::string tag = source.branch(terminal).tag;
    const std::string setting = source.setting(terminal);
    const std::string most = source.fullyOpen(terminal);
    if (setting.empty() || most.empty()) {
        return {say(kIndexLabel), say(kIndexWithoutSetting, {tag}), Mark::Open};
    }
    const bool isOpen = source.last.index.isValveFullyOpen;
    return {say(kIndexLabel), say(isOpen ? kIndexOpen : kIndexNotOpen, {tag, setting, most}),
            isOpen ? Mark::Pass : Mark::Fail};
}

/// What to order by first; the speed for the loop with its valves as read stands second.
std::vector<Fact> pumpFacts(const Source& source) {
    if (source.curve.basis == balancing::CurveBasis::Untrusted) {
        return {{say(kPumpLabel), say(kPumpUntrusted, {std::to_string(kPump)}), Mark::Open}};
    }
    if (source.excess && source.excess->isShortUndecided) {
        return {{say(kPumpLabel), say(kPumpShortUndecided, {std::to_string(source.excess->section)}),
                 Mark::Open}};
    }
    std::vector<Fact> facts;
    bool isEarly = false;
    if (auto order = orderOf(source)) {
        const bool isDone = order->is(kOrderNothing) || order->is(kOrderRuns);
        isEarly = source.excess->notYet && *order == *source.excess->notYet;
        auto rotation = orderedRotation(source, *order);
        facts.push_back({say(kPumpLabel), std::move(*order),
                         isDone    ? Mark::Pass
                         : isEarly ? Mark::Open
                                   : Mark::None});
        if (rotation) {
            facts.push_back(std::move(*rotation));
        }
    }
    const auto proposal = balancing::pumpProposal(source.project, source.last, source.curve);
    if (!proposal) {
        if (facts.empty()) {
            facts.push_back({say(kPumpLabel), say(kPumpUnknown), Mark::Open});
        }
        return facts;
    }
    const std::string speed = Display::fixed(100 * proposal->speedFraction, 1);
    const std::string by =
        flowBasis(source, balancing::systemCurve(source.project, source.last, source.curve.headFactor));
    if (proposal->speedFraction > 1.01) {
        const std::string lacking =
            source.display.head(-proposal->excess.head) + " " + printed(source.display.headUnit());
        return {
            {say(kPumpLabel), say(kPumpTooSmall, {speed, std::to_string(kPump), by, lacking}), Mark::Open}};
    }
    // The loop with its valves as read may have head to spare where the one that is decided about has none.
    if (source.excess && !source.excess->isFitting && source.excess->excess.head.si() < 0) {
        const balancing::ExcessHead& counted = source.excess->excess;
        return {
            {say(kPumpLabel),
             say(kPumpShort, {source.display.head(-counted.head) + " " + printed(source.display.headUnit()),
                              balancing::excessWords(counted.basis, counted.speed),
                              std::to_string(source.excess->section)}),
             Mark::Open}};
    }
    if (isEarly) {
        return facts;
    }
    // One percent of speed is about one percent of flow: less than what the readings can tell.
    if (proposal->speedFraction > 0.99) {
        if (facts.empty()) {
            facts.push_back({say(kPumpLabel), say(kPumpKeep, {speed, by}), Mark::Pass});
        }
        return facts;
    }
    const bool isSecond = !facts.empty();
    if (isSecond && !isOtherThanOrder(source, proposal->speedFraction)) {
        return facts;
    }
    facts.push_back(
        {say(isSecond ? kAsReadLabel : kPumpLabel),
         say(isSecond ? kSpeedAsRead : kPumpAction,
             {speed, source.display.flow(source.last.totalDesign), printed(source.display.flowUnit()),
              balancing::excessWords(proposal->excess.basis, proposal->excess.speed), std::to_string(kPump),
              by})});
    return facts;
}

/// The excess that the decision uses, beside the one above the loop with its valves as they stand.
Fact excessFact(const Source& source, const CountedExcess& counted) {
    const std::string section = std::to_string(counted.section);
    std::vector<std::string> arguments{
        source.display.head(counted.excess.head) + " " + printed(source.display.headUnit()),
        balancing::excessWords(counted.excess.basis, counted.excess.speed), curveWords(source.curve),
        section};
    if (!counted.speed || counted.notYet) {
        return {say(kExcessLabel), say(kExcessResult, arguments)};
    }
    arguments.push_back(Display::fixed(100 * counted.speed->si(), 1));
    return {say(kExcessLabel), say(kExcessSlowed, arguments)};
}

/// What is left of it at the speed as read, where a pump that was slowed makes that another number.
std::optional<Fact> excessAsReadFact(const Source& source, const CountedExcess& counted) {
    if (!counted.asRead ||
        source.display.head(counted.asRead->head) == source.display.head(counted.excess.head)) {
        return std::nullopt;
    }
    return Fact{say(kExcessAsReadLabel),
                say(kExcessFound,
                    {source.display.head(counted.asRead->head) + " " + printed(source.display.headUnit()),
                     balancing::excessWords(counted.asRead->basis, counted.asRead->speed),
                     curveWords(source.curve)})};
}

}  // namespace

Section resultSection(const Source& source, std::size_t exceptionCount) {
    Section section;
    section.number = kResult;
    section.title = say(kResultTitle);
    section.facts.push_back(verdictFact(source));
    if (source.hasRound()) {
        section.facts.push_back(acceptanceFact(source));
        // First what an owner asks first: which circuit is the index, and whether its valve stands open.
        if (source.last.index.terminal) {
            section.facts.push_back(pathFact(source));
        }
        section.facts.push_back(indexFact(source));
        if (const auto proof = indexProofFact(source)) {
            section.facts.push_back(*proof);
        }
        section.facts.push_back(sharesFact(source));
        if (source.last.spread) {
            section.facts.push_back(spreadFact(source));
        }
        section.facts.push_back(totalFact(source));
        for (Fact& fact : pumpFacts(source)) {
            section.facts.push_back(std::move(fact));
        }
        for (Fact& fact : powerReached(source)) {
            section.facts.push_back(std::move(fact));
        }
        if (source.excess) {
            section.facts.push_back(excessFact(source, *source.excess));
            if (const auto asRead = excessAsReadFact(source, *source.excess)) {
                section.facts.push_back(*asRead);
            }
        }
        section.facts.push_back({say(kExceptionsLabel),
                                 exceptionCount == 0 ? say(kNoException)
                                                     : say(kExceptionCount, {std::to_string(exceptionCount),
                                                                             std::to_string(kExceptions)})});
        if (const std::size_t standing = standingLines(source).size(); standing > 0) {
            section.facts.push_back({say(kStandingLabel), say(kStandingCount, {std::to_string(standing),
                                                                               std::to_string(kRevisions)})});
        }
    }
    section.statements = source.hasRound() ? source.last.reasons : std::vector<Statement>{};
    if (source.hasRound()) {
        for (Statement& change : changesOf(source, source.last.roundNumber, source.last.roundNumber)) {
            section.statements.push_back(std::move(change));
        }
    }
    section.closing.push_back(say(kDisclaimer, {std::to_string(kMethod)}));
    return section;
}

}  // namespace ww::report::detail
