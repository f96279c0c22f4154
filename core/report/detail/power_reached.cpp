#include <algorithm>
#include <cmath>

#include "core/balancing/detail/pump_duty.h"
#include "core/base/term.h"
#include "core/energy/money.h"
#include "core/report/detail/pump_numbers.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

using quantity::Power;

/// What the motor of one pump took in the duty of one round.
struct MotorOfRound {
    int round = 0;
    energy::MotorPower motor;
};

std::vector<MotorOfRound> motorsOf(const Source& source, const pump_room::PumpSheet& sheet) {
    std::vector<MotorOfRound> all;
    const base::Id pump = source.project.pumps()[sheet.pump].id;
    for (const Assessment& round : source.rounds) {
        const auto* reading = balancing::detail::countingPumpReading(source.project, *round.round, pump);
        const auto at = reading == nullptr
                            ? sheet.readings.end()
                            : std::find(sheet.readings.begin(), sheet.readings.end(), reading->id);
        if (at != sheet.readings.end()) {
            const auto point = static_cast<std::size_t>(at - sheet.readings.begin());
            all.push_back({round.roundNumber, sheet.sheet.points[point].motor});
        }
    }
    return all;
}

/// What two rounds can be compared by: a way to the shaft power, or nothing for the power from the mains.
using Way = std::optional<energy::PowerMethod>;

std::optional<Power> powerBy(const energy::MotorPower& motor, Way way) {
    if (!way) {
        return motor.input;
    }
    return motor.chosen && motor.estimates[*motor.chosen].method == *way ? motor.shaft() : std::nullopt;
}

/// The power with the range of all ways to it, where there are several.
std::string powerWords(const PumpNumbers& numbers, const energy::MotorPower& motor, Way way) {
    const std::string text = numbers.power(powerBy(motor, way)) + " " + numbers.powerUnit();
    return way && motor.estimates.size() > 1
               ? text + " (" + numbers.power(motor.lowest) + " – " + numbers.power(motor.highest) + ")"
               : text;
}

/// A year of this difference, where the loop runs at one flow for so many hours.
std::optional<Fact> yearOf(const Source& source, Power saved) {
    const project::Job& job = source.project.job();
    const auto load = pump_room::loadOf(job);
    const bool isOneFlow = load.size() == 1 && std::abs(load.front().flowFraction.si() - 1) < 1e-9;
    if (!isOneFlow) {
        return std::nullopt;
    }
    const auto energy = quantity::Energy::si(std::abs(saved.si()) * load.front().time.si());
    const char* direction = saved.si() > 0 ? base::term("less") : base::term("more");
    constexpr double kSecondsPerHour = 3600;
    std::vector<std::string> arguments{Display::fixed(load.front().time.si() / kSecondsPerHour, 0),
                                       PumpNumbers::kilowattHours(energy), direction};
    if (!job.powerPrice) {
        return Fact{plain(""), say(kEnergyReached, std::move(arguments))};
    }
    arguments.push_back(
        PumpNumbers::money(energy::cost(energy, energy::pricePerKilowattHour(*job.powerPrice))));
    arguments.push_back(job.currency);
    return Fact{plain(""), say(kEnergyCostReached, std::move(arguments))};
}

/// The first and the last round that can be compared in this way; nothing where there are no two, or one took
/// what the other did.
std::vector<Fact> reachedBy(const Source& source, const pump_room::PumpSheet& sheet,
                            const std::vector<MotorOfRound>& all, Way way) {
    const auto isRead = [&](const MotorOfRound& one) {
        return powerBy(one.motor, way).value_or(Power()).si() > 0;
    };
    const auto first = std::find_if(all.begin(), all.end(), isRead);
    const auto last = std::find_if(all.rbegin(), all.rend(), isRead);
    if (first == all.end() || first->round == last->round) {
        return {};
    }
    const PumpNumbers numbers(source.project);
    const Power before = *powerBy(first->motor, way);
    const Power saved = before - *powerBy(last->motor, way);
    const auto size = Power::si(std::abs(saved.si()));
    if (numbers.power(before) == numbers.power(before - saved)) {
        return {};
    }
    std::vector<Fact> facts{
        {say(way ? kPowerLabel : kInputPowerLabel),
         say(kPowerReached, {source.project.pumps()[sheet.pump].tag, powerWords(numbers, first->motor, way),
                             std::to_string(first->round), powerWords(numbers, last->motor, way),
                             std::to_string(last->round), numbers.power(size) + " " + numbers.powerUnit(),
                             saved.si() < 0 ? base::term("more") : base::term("less"),
                             Display::fixed(100 * size.si() / before.si(), 1)})}};
    // Between shaft and bill there is the motor, whose efficiency changes with its load.
    if (!way) {
        facts.push_back({plain(""), say(kPowerUncertain)});
        if (auto year = yearOf(source, saved)) {
            facts.push_back(std::move(*year));
        }
    }
    return facts;
}

}  // namespace

std::vector<Fact> powerReached(const Source& source) {
    std::vector<Fact> facts;
    for (const pump_room::PumpSheet& sheet : source.sheets) {
        const std::vector<MotorOfRound> all = motorsOf(source, sheet);
        std::vector<Fact> found = reachedBy(source, sheet, all, {});
        for (auto one = all.begin(); found.empty() && one != all.end(); ++one) {
            if (one->motor.chosen) {
                found = reachedBy(source, sheet, all, one->motor.estimates[*one->motor.chosen].method);
            }
        }
        facts.insert(facts.end(), found.begin(), found.end());
    }
    return facts;
}

}  // namespace ww::report::detail
