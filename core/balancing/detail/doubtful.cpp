#include "core/balancing/detail/doubtful.h"

#include <algorithm>
#include <cmath>

#include "core/balancing/detail/branch_flow.h"
#include "core/balancing/detail/doubts.h"
#include "core/balancing/detail/wording.h"
#include "core/balancing/learning/learn_forms.h"
#include "core/balancing/meant_dp.h"
#include "core/balancing/meter_units.h"
#include "core/project/setting_text.h"
#include "core/quantity/measured.h"

namespace ww::balancing::detail {

namespace {

using estimation::GrossErrorVerdict;
using estimation::Observation;
using hydraulics::Element;
using project::Branch;
using project::Project;
using project::Reading;
using quantity::Unit;

/// Collects the hypotheses about one observation.
class Collector {
  public:
    Collector(const Project& project, const LoopLearning& loop, Hypotheses& out)
        : m_project(project), m_loop(loop), m_out(out) {}

    void slips(std::size_t observation, const Reading& reading) {
        for (const MeantDp& other : meantDps(*reading.dp, density())) {
            using Kind = HypothesisMeaning::Kind;
            add({observation, other.dp.value, std::nullopt},
                {other.isPointMoved ? Kind::Point : Kind::Unit,
                 other.isPointMoved ? other.dp.text() : std::string(quantity::symbol(other.dp.unit)),
                 other.dp.value, std::nullopt});
        }
    }

    void flowUnits(std::size_t observation, const Reading& reading) {
        for (const Unit unit : kFlowMeterUnits) {
            if (unit != reading.flow->unit) {
                add({observation, VolumeFlow::from(reading.flow->digits.value(), unit), std::nullopt},
                    {HypothesisMeaning::Kind::Unit, std::string(quantity::symbol(unit)), std::nullopt,
                     std::nullopt});
            }
        }
    }

    void sign(std::size_t observation, const Reading& reading) {
        if (reading.dp->value.si() < 0) {
            add({observation, -reading.dp->value, std::nullopt},
                {HypothesisMeaning::Kind::Sign, "", -reading.dp->value, std::nullopt});
        }
    }

    void settings(std::size_t observation, const Branch& branch, Setting at) {
        const curve::ValveCharacteristic& curve = *m_project.characteristicOf(branch);
        const project::ValveModel& valve = m_project.valves().at(*branch.valve);
        const double turn = valve.scale == project::Scale::Turns ? 1 : 10;
        for (const double off : {-turn, turn}) {
            const Setting other = at + Setting::si(off);
            if (curve.covers(other) && curve.coefficient(other).si() > 0) {
                withCoefficient(observation, curve.coefficient(other),
                                {HypothesisMeaning::Kind::Setting, settingText(m_project, branch, other),
                                 std::nullopt, other});
            }
        }
    }

    void valves(std::size_t observation, const Branch& branch, Setting at) {
        constexpr std::size_t kMost = 20;
        std::size_t count = 0;
        for (const project::ValveModel& other : m_project.valves()) {
            const curve::ValveCharacteristic* curve = m_project.characteristic(other.id);
            if (other.id == *branch.valve || curve == nullptr || !curve->covers(at) ||
                curve->coefficient(at).si() <= 0 || ++count > kMost) {
                continue;
            }
            withCoefficient(observation, curve->coefficient(at),
                            {HypothesisMeaning::Kind::Valve, valveName(other), std::nullopt, std::nullopt});
        }
    }

    static std::string valveName(const project::ValveModel& valve) {
        return valve.size.empty() ? valve.model : valve.model + " " + valve.size;
    }

  private:
    quantity::Density density() const { return m_project.fluid().density(); }

    void add(estimation::Hypothesis made, HypothesisMeaning meaning) {
        m_out.list.push_back(std::move(made));
        m_out.meanings.push_back(std::move(meaning));
    }

    void withCoefficient(std::size_t observation, quantity::FlowCoefficient coefficient,
                         HypothesisMeaning meaning) {
        const Observation& read = m_loop.learning.observations[observation];
        const hydraulics::LinkChange change{read.link, Element::valve(coefficient, density())};
        auto changed = m_loop.learning.cases[read.caseIndex].with(std::span(&change, 1));
        if (changed.network) {
            add({observation, std::nullopt, std::move(*changed.network)}, std::move(meaning));
        }
    }

    const Project& m_project;
    const LoopLearning& m_loop;
    Hypotheses& m_out;
};

/// The setting of a branch when a reading was taken.
std::optional<Setting> settingAt(const Project& project, const History& history, const Id& reading,
                                 const Branch& branch) {
    const auto taken =
        std::find_if(history.readings.begin(), history.readings.end(),
                     [&](const TakenReading& candidate) { return candidate.reading == reading; });
    if (taken == history.readings.end()) {
        return std::nullopt;
    }
    const LoopState state = stateAfter(project, history, taken->movesBefore);
    const auto found = state.settings.find(branch.id);
    return found == state.settings.end() ? std::nullopt : std::optional(found->second);
}

std::string readText(const Project& project, const LoopLearning& loop, std::size_t observation) {
    const ObservationSource& source = loop.sources[observation];
    if (source.branch) {
        const Reading& reading = project.readings().at(source.readings.front());
        if (std::holds_alternative<PressureDifference>(loop.learning.observations[observation].value)) {
            return reading.dp->text();
        }
        return reading.flow->text();
    }
    const auto& value = loop.learning.observations[observation].value;
    return std::holds_alternative<PressureDifference>(value)
               ? headText(project, project.fluid().head(std::get<PressureDifference>(value)))
               : flowText(project, std::get<VolumeFlow>(value));
}

/// What the other readings expect at a branch.
std::string expectedText(const Project& project, const LoopLearning& loop, std::size_t observation,
                         const estimation::LearnedReading& learned) {
    // The fit follows the reading by as much as its residual lacks of the deviation.
    const double factor = std::exp(learned.relativeResidual - learned.relativeDeviation());
    if (std::holds_alternative<VolumeFlow>(learned.fitted)) {
        return flowText(project, std::get<VolumeFlow>(learned.fitted) * factor);
    }
    const Reading& reading = project.readings().at(loop.sources[observation].readings.front());
    return dpIn(reading.dp->unit, std::get<PressureDifference>(learned.fitted) * factor,
                project.fluid().density());
}

const base::MessageForm& formOf(HypothesisMeaning::Kind kind) {
    switch (kind) {
        case HypothesisMeaning::Kind::Unit:
            return kModelWrongUnit;
        case HypothesisMeaning::Kind::Point:
            return kModelWrongPoint;
        case HypothesisMeaning::Kind::Setting:
            return kModelWrongSetting;
        case HypothesisMeaning::Kind::Valve:
            return kModelWrongValve;
        case HypothesisMeaning::Kind::Sign:
            return kModelWrongSign;
    }
    return kModelWrongReading;
}

}  // namespace

Hypotheses hypothesesOf(const Project& project, const History& history, const LoopLearning& loop, LoopStates&,
                        std::size_t place) {
    Hypotheses out;
    Collector collector(project, loop, out);
    for (std::size_t i = 0; i < loop.learning.observations.size(); ++i) {
        const Observation& observation = loop.learning.observations[i];
        const ObservationSource& source = loop.sources[i];
        if (observation.place != place || !source.branch) {
            continue;
        }
        const Branch& branch = project.branches()[*source.branch];
        const Reading& reading = project.readings().at(source.readings.front());
        if (std::holds_alternative<VolumeFlow>(observation.value)) {
            collector.flowUnits(i, reading);
            continue;
        }
        collector.slips(i, reading);
        collector.sign(i, reading);
        const auto at = settingAt(project, history, reading.id, branch);
        if (at && !isSelfActing(branch) && !source.isClosedValve) {
            collector.settings(i, branch, *at);
            collector.valves(i, branch, *at);
        }
    }
    return out;
}

std::vector<DoubtfulReading> doubtfulReadings(const Project& project, const LoopLearning& loop,
                                              const estimation::GrossErrorFinding& finding,
                                              const Hypotheses& hypotheses) {
    std::vector<std::size_t> named;
    const auto& scores = finding.learned.readings;
    const auto strength = [&](std::size_t i) { return std::abs(scores[i].score); };
    switch (finding.verdict) {
        case GrossErrorVerdict::Clean:
            return {};
        case GrossErrorVerdict::ReadAgain:
            named = finding.readAgain;
            break;
        case GrossErrorVerdict::ReadingNamed:
            named = finding.wrong;
            break;
        case GrossErrorVerdict::PlaceNamed: {
            // Of the place's readings the one that stands out most is named; the explanation may name
            // another.
            std::optional<std::size_t> most;
            for (std::size_t i = 0; i < scores.size(); ++i) {
                if (loop.learning.observations[i].place == finding.place &&
                    (!most || strength(i) > strength(*most))) {
                    most = i;
                }
            }
            if (most) {
                named.push_back(*most);
            }
            break;
        }
    }
    std::vector<DoubtfulReading> out;
    for (std::size_t i : named) {
        const HypothesisMeaning* meaning = nullptr;
        if (!finding.explanations.empty() && finding.verdict != GrossErrorVerdict::ReadAgain) {
            const std::size_t best = finding.explanations.front().hypothesis;
            i = hypotheses.list[best].observation;
            meaning = &hypotheses.meanings[best];
        }
        const ObservationSource& source = loop.sources[i];
        if (!source.branch) {
            continue;  // A pump's gauges and its curve share one factor: nothing is said of them here.
        }
        DoubtfulReading made;
        made.branch = *source.branch;
        made.round = source.round;
        made.readings = source.readings;
        made.score = scores[i].score;
        made.isCertain = finding.verdict == GrossErrorVerdict::ReadingNamed;
        std::vector<std::string> arguments{
            readText(project, loop, i), std::to_string(project.rounds()[source.round].number),
            expectedText(project, loop, i, scores[i]), base::Decimal::fromNumber(made.score, 1).text()};
        const base::MessageForm* form =
            made.isCertain
                ? &kModelWrongReading
                : (finding.verdict == GrossErrorVerdict::PlaceNamed ? &kModelDoubtfulPlace : &kModelReread);
        const Branch& branch = project.branches()[made.branch];
        if (meaning != nullptr) {
            form = &formOf(meaning->kind);
            made.explainedDp = meaning->dp;
            made.explainedSetting = meaning->setting;
            arguments.push_back(meaning->text);
            if (meaning->kind == HypothesisMeaning::Kind::Setting) {
                const Reading& reading = project.readings().at(source.readings.front());
                arguments.push_back(reading.setting ? reading.setting->text() : "?");
            } else if (meaning->kind == HypothesisMeaning::Kind::Valve) {
                arguments.push_back(Collector::valveName(project.valves().at(*branch.valve)));
            }
        }
        made.why = base::Fault{form, branch.tag, std::move(arguments)};
        out.push_back(std::move(made));
    }
    std::stable_sort(out.begin(), out.end(), [](const DoubtfulReading& a, const DoubtfulReading& b) {
        return std::abs(a.score) > std::abs(b.score);
    });
    return out;
}

}  // namespace ww::balancing::detail
