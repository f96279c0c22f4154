#include "ui/charts/pump_chart_data.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "core/project/units.h"
#include "core/pump_room/running_pumps.h"
#include "ui/charts/efficiency_lines.h"
#include "ui/text/format.h"

namespace ww::ui::charts {
namespace {

using balancing::Assessment;
using balancing::SystemCurve;
using quantity::Head;
using quantity::VolumeFlow;

constexpr int kCurveSteps = 48;

/// The texts of this file.
struct PumpChartText {
    Q_DECLARE_TR_FUNCTIONS(PumpChart)
};

/// What the chart is drawn from, once.
struct Picture {
    const project::Project& project;
    std::span<const Assessment> rounds;
    balancing::CountedCurve counted;
    std::optional<curve::PumpSet> pumps;      ///< running, at rated speed, by the curve that counts
    std::optional<curve::PumpSet> published;  ///< by the curve as entered, where another counts
    std::vector<std::size_t> members;         ///< indices into Project::pumps()
    double speedFirst = 1.0;
    double speedNow = 1.0;
    std::vector<SystemCurve> duties;
    std::optional<balancing::PumpProposal> proposal;
    VolumeFlow farthest;

    QPointF at(VolumeFlow flow, Head head) const {
        const auto units = project.job().units;
        return {flow.in(text::flowUnit(project)), head.in(text::headUnit(units))};
    }
    const Assessment* last() const { return rounds.empty() ? nullptr : &rounds.back(); }
};

/// Speed of a pump in a round as a fraction of rated; 1 where none was read.
double speedOf(const Assessment& round, std::size_t pump) {
    for (const balancing::PumpDuty& duty : round.pumps) {
        if (duty.pump == pump) {
            return duty.speedFraction;
        }
    }
    return 1.0;
}

Picture pictureOf(const project::Project& project, std::span<const Assessment> rounds,
                  const pump_room::PumpDecision* decision) {
    Picture picture{project, rounds, {}, {}, {}, {}, 1.0, 1.0, {}, {}, {}};
    picture.counted = decision != nullptr ? decision->curve
                      : rounds.empty()    ? balancing::CountedCurve{}
                                          : balancing::countedCurve(project, rounds.back());
    const quantity::Ratio factor = picture.counted.headFactor;
    pump_room::RunningPumps running = pump_room::runningPumps(project, 1.0, {}, factor);
    if (picture.counted.isThroughGauges()) {
        picture.published = pump_room::runningPumps(project).set;
    }
    picture.pumps = std::move(running.set);
    picture.members = std::move(running.pumps);
    if (picture.pumps && !rounds.empty()) {
        picture.speedFirst = speedOf(rounds.front(), picture.members.front());
        picture.speedNow = speedOf(rounds.back(), picture.members.front());
    }
    for (const Assessment& round : rounds) {
        if (const auto duty = balancing::systemCurve(project, round, factor); duty && duty->flow.si() > 0) {
            picture.duties.push_back(*duty);
            picture.farthest = std::max(picture.farthest, duty->flow);
        }
    }
    if (!rounds.empty()) {
        picture.proposal = balancing::pumpProposal(project, rounds.back(), picture.counted);
        picture.farthest = std::max(picture.farthest, rounds.back().totalDesign);
    }
    picture.farthest = picture.farthest * 1.15;
    if (picture.pumps) {
        picture.farthest =
            std::max(picture.farthest,
                     lastFlow(picture.pumps->atSpeed(std::max(picture.speedNow, picture.speedFirst))));
    }
    return picture;
}

Line pumpLine(const Picture& picture, const curve::PumpSet& set, LineRole role, QString name) {
    Line line{role, std::move(name), {}};
    const VolumeFlow end = std::min(lastFlow(set), picture.farthest);
    for (int i = 0; i <= kCurveSteps; ++i) {
        const VolumeFlow flow = end * (static_cast<double>(i) / kCurveSteps);
        const auto head = set.head(flow);
        if (head && head->si() >= 0) {
            line.points.push_back(picture.at(flow, *head));
        }
    }
    return line;
}

Line systemLine(const Picture& picture, const SystemCurve& duty, Head highest, LineRole role, QString name) {
    Line line{role, std::move(name), {}};
    for (int i = 0; i <= kCurveSteps; ++i) {
        const VolumeFlow flow = picture.farthest * (static_cast<double>(i) / kCurveSteps);
        const Head head = duty.at(flow);
        if (head > highest) {
            // The curve ends on the upper edge, not at the step before it.
            line.points.push_back(picture.at(duty.flow * std::sqrt(highest / duty.head), highest));
            break;
        }
        line.points.push_back(picture.at(flow, head));
    }
    return line;
}

Head highestOf(const Picture& picture) {
    Head highest;
    if (picture.pumps) {
        const double proposed = picture.proposal ? picture.proposal->speedFraction * picture.speedNow : 0.0;
        const double speed = std::max({picture.speedFirst, picture.speedNow, proposed});
        highest = picture.pumps->atSpeed(speed).shutoffHead();
        if (picture.published) {
            highest = std::max(highest, picture.published->atSpeed(speed).shutoffHead());
        }
    }
    for (const SystemCurve& duty : picture.duties) {
        highest = std::max(highest, duty.head + duty.headUncertainty.value_or(Head{}));
    }
    return highest * 1.08;
}

/// The pumps as the decision would change them, or slowed as the duty asks.
void addChanged(const Picture& picture, const pump_room::PumpDecision* decision, ChartFigure& figure) {
    if (decision != nullptr && decision->isShortUndecided()) {
        return;
    }
    if (decision != nullptr && !decision->options.empty()) {
        if (decision->isFitting()) {
            return;
        }
        for (const pump_room::DecidedOption& decided : decision->options) {
            const energy::PumpOption& option = decided.option;
            const bool isSlow = option.action == energy::PumpAction::Slow;
            if (option.action == energy::PumpAction::Throttle || !option.set ||
                std::abs(option.ratio.si() - 1.0) < 0.005) {
                continue;
            }
            figure.lines.push_back(
                pumpLine(picture, *option.set, isSlow ? LineRole::Proposed : LineRole::Trimmed,
                         isSlow ? PumpChartText::tr("slowed") : PumpChartText::tr("trimmed")));
        }
        return;
    }
    if (picture.proposal && std::abs(picture.proposal->speedFraction - 1.0) > 0.01) {
        const QString name = PumpChartText::tr("%1 % speed")
                                 .arg(text::percent(quantity::Ratio::si(picture.proposal->speedFraction)));
        figure.lines.push_back(
            pumpLine(picture, picture.pumps->atSpeed(picture.proposal->speedFraction * picture.speedNow),
                     LineRole::Proposed, name));
    }
}

/// Each of several pumps by itself; pumps alike once.
void addMembers(const Picture& picture, ChartFigure& figure) {
    const auto& members = picture.pumps->members();
    for (std::size_t i = 0; members.size() > 1 && i < members.size(); ++i) {
        const project::Pump& pump = picture.project.pumps()[picture.members[i]];
        bool isDrawn = false;
        for (std::size_t j = 0; j < i; ++j) {
            isDrawn = isDrawn || picture.project.pumps()[picture.members[j]].rows == pump.rows;
        }
        if (!isDrawn) {
            const curve::PumpSet alone({members[i]}, curve::PumpJoint::Parallel);
            figure.lines.push_back(
                pumpLine(picture, alone.atSpeed(picture.speedNow), LineRole::FirstPump,
                         PumpChartText::tr("%1 alone").arg(QString::fromStdString(pump.tag))));
        }
    }
}

void addLines(const Picture& picture, Head highest, const pump_room::PumpDecision* decision,
              ChartFigure& figure) {
    if (picture.pumps) {
        const bool isChanged = std::abs(picture.speedNow - picture.speedFirst) > 0.01;
        const curve::PumpSet now = picture.pumps->atSpeed(picture.speedNow);
        if (isChanged) {
            figure.lines.push_back(
                pumpLine(picture, picture.pumps->atSpeed(picture.speedFirst), LineRole::FirstPump,
                         PumpChartText::tr("pump, round %1").arg(picture.rounds.front().roundNumber)));
        }
        const bool isOne = picture.members.size() == 1;
        if (picture.published) {
            figure.lines.push_back(pumpLine(picture, picture.published->atSpeed(picture.speedNow),
                                            LineRole::FirstPump, PumpChartText::tr("curve as published")));
        }
        figure.lines.push_back(
            pumpLine(picture, now, LineRole::PumpCurve,
                     picture.published ? PumpChartText::tr("curve through the gauges")
                     : picture.counted.basis == balancing::CurveBasis::Untrusted
                         ? PumpChartText::tr("curve as published")
                     : isChanged ? PumpChartText::tr("pump, round %1").arg(picture.last()->roundNumber)
                     : isOne     ? PumpChartText::tr("pump as found")
                                 : PumpChartText::tr("%1 pumps as found").arg(picture.members.size())));
        addMembers(picture, figure);
        addChanged(picture, decision, figure);
        const std::vector<Line> efficiencies =
            efficiencyLines(now, picture.project.fluid().density(), text::flowUnit(picture.project),
                            text::headUnit(picture.project.job().units));
        figure.lines.insert(figure.lines.end(), efficiencies.begin(), efficiencies.end());
    }
    if (picture.duties.size() > 1) {
        figure.lines.push_back(
            systemLine(picture, picture.duties.front(), highest, LineRole::FirstSystem,
                       PumpChartText::tr("system, round %1").arg(picture.duties.front().roundNumber)));
    }
    if (!picture.duties.empty()) {
        figure.lines.push_back(
            systemLine(picture, picture.duties.back(), highest, LineRole::LastSystem,
                       PumpChartText::tr("system, round %1").arg(picture.duties.back().roundNumber)));
    }
}

/// Design flow and the head it needs, for what is drawn: the decision's, else the loop's with its valves as
/// read.
std::optional<QPointF> designOf(const Picture& picture, const pump_room::PumpDecision* decision) {
    if (decision != nullptr && decision->counted && !decision->options.empty()) {
        return picture.at(decision->designFlow, decision->required[*decision->counted].head);
    }
    if (picture.proposal && picture.last() != nullptr) {
        return picture.at(picture.last()->totalDesign, picture.proposal->headAtDesign);
    }
    return std::nullopt;
}

void addMarks(const Picture& picture, const pump_room::PumpDecision* decision, ChartFigure& figure) {
    const auto units = picture.project.job().units;
    for (const SystemCurve& duty : picture.duties) {
        PointMark mark{MarkKind::Duty, picture.at(duty.flow, duty.head), 0, 0,
                       QString::number(duty.roundNumber)};
        if (duty.flowUncertainty) {
            mark.errorX = duty.flowUncertainty->in(text::flowUnit(picture.project));
        }
        if (duty.headUncertainty) {
            mark.errorY = duty.headUncertainty->in(text::headUnit(units));
        }
        mark.isAssumed = !duty.headUncertainty;
        figure.marks.push_back(mark);
    }
    if (const auto design = designOf(picture, decision)) {
        figure.marks.push_back({MarkKind::Design, *design, 0, 0, PumpChartText::tr("design")});
    }
}

void addTable(const Picture& picture, ChartFigure& figure) {
    const auto units = picture.project.job().units;
    figure.tableHeads = {PumpChartText::tr("Line or point"),
                         PumpChartText::tr("Flow, %1").arg(text::symbol(text::flowUnit(picture.project))),
                         PumpChartText::tr("Head, %1").arg(text::symbol(text::headUnit(units))),
                         PumpChartText::tr("Uncertainty")};
    const auto add = [&figure](const QString& name, QPointF at, const QString& more) {
        figure.tableRows.push_back(
            {name, QString::number(at.x(), 'f', 2), QString::number(at.y(), 'f', 2), more});
    };
    for (const PointMark& mark : figure.marks) {
        QString more;
        if (!mark.isAssumed && mark.errorY > 0) {
            more = QStringLiteral("± %1, ± %2").arg(mark.errorX, 0, 'f', 2).arg(mark.errorY, 0, 'f', 2);
        } else if (mark.isAssumed) {
            more = PumpChartText::tr("head from the pump's curve, no gauge read");
        }
        add(mark.kind == MarkKind::Duty ? PumpChartText::tr("Duty, round %1").arg(mark.name)
                                        : PumpChartText::tr("Design"),
            mark.at, more);
    }
    for (const Line& line : figure.lines) {
        // Every sixth point tells the shape; where the line ends is told always.
        for (std::size_t i = 0; i < line.points.size(); ++i) {
            if (i % 6 == 0 || i + 1 == line.points.size()) {
                add(line.name, line.points[i], QString());
            }
        }
    }
}

/// How the shaft power changes, to stand behind a sentence; empty where it is less than one percent.
QString powerWords(double ratio) {
    const double change = 100 * (ratio - 1);
    return std::abs(change) < 1 ? QString()
                                : ' ' + PumpChartText::tr("Shaft power about %1 % against the last round.")
                                            .arg(QString::asprintf("%+.0f", change));
}

/// What the lines of the decision show.
QString decisionSentence(const Picture& picture, const pump_room::PumpDecision& decision) {
    const auto* slow = decision.find(energy::PumpAction::Slow);
    const auto* trim = decision.find(energy::PumpAction::Trim);
    if (decision.isFitting()) {
        return PumpChartText::tr("No change of speed or impeller called for.");
    }
    if (decision.runsAsDecided()) {
        return PumpChartText::tr("The pump runs at %1 % of full speed, which the decision counts.")
            .arg(text::percent(decision.duty->speedFraction));
    }
    QString sentence;
    if (slow != nullptr) {
        sentence =
            PumpChartText::tr("Slowed to %1 % of full speed it meets the head that the pump decision uses.")
                .arg(text::percent(slow->option.ratio));
    }
    if (trim != nullptr && trim->option.impeller) {
        const auto units = project::shownUnits(picture.project);
        sentence +=
            (sentence.isEmpty() ? "" : " ") +
            PumpChartText::tr("Trimmed it has %1 of impeller.")
                .arg(QString::fromStdString(energy::diameterDigits(*trim->option.impeller, units.length) +
                                            " " + std::string(quantity::symbol(units.length))));
    }
    const auto* throttle = decision.find(energy::PumpAction::Throttle);
    if (slow != nullptr && throttle != nullptr && slow->option.shaft && throttle->option.shaft) {
        const auto power = [&](quantity::Power value) {
            return QString::fromStdString(project::shownUnits(picture.project).text(value, 3));
        };
        sentence += ' ' + PumpChartText::tr("Shaft power at design flow: %1 throttled, %2 slowed.")
                              .arg(power(*throttle->option.shaft), power(*slow->option.shaft));
    }
    return sentence;
}

/// Duty, design point and what is drawn for it; empty where the duty is not known.
QString sentenceOf(const Picture& picture, const pump_room::PumpDecision* decision) {
    const project::Project& project = picture.project;
    if (picture.duties.empty() || picture.last()->totalDesign.si() <= 0) {
        return {};
    }
    const auto units = project.job().units;
    const QString flowUnit = text::symbol(text::flowUnit(project));
    const SystemCurve& duty = picture.duties.back();
    const VolumeFlow design = picture.last()->totalDesign;
    QString sentence =
        PumpChartText::tr("Duty %1 %2 at %3 %4; %5 % of design.")
            .arg(text::flow(duty.flow, project), flowUnit, text::head(duty.head, units),
                 text::symbol(text::headUnit(units)), text::percent(quantity::Ratio::si(duty.flow / design)));
    if (decision != nullptr && !decision->options.empty()) {
        return sentence + ' ' + decisionSentence(picture, *decision);
    }
    if (picture.proposal) {
        sentence +=
            ' ' + PumpChartText::tr("With these valves %1 % of the speed of the last round gives %2 %3.")
                      .arg(text::percent(quantity::Ratio::si(picture.proposal->speedFraction)),
                           text::flow(design, project), flowUnit);
        if (picture.proposal->powerRatio) {
            sentence += powerWords(picture.proposal->powerRatio->si());
        }
    }
    return sentence;
}

}  // namespace

ChartFigure pumpChart(const project::Project& project, std::span<const Assessment> rounds,
                      const pump_room::PumpDecision* decision) {
    ChartFigure figure;
    figure.name = PumpChartText::tr("Pump and system");
    const Picture picture = pictureOf(project, rounds, decision);
    if (!picture.pumps && picture.duties.empty()) {
        return figure;
    }
    const auto units = project.job().units;
    const Head highest = highestOf(picture);
    const QPointF corner = picture.at(picture.farthest, highest);
    figure.x = niceAxis(PumpChartText::tr("Flow, %1").arg(text::symbol(text::flowUnit(project))), 0,
                        std::max(corner.x(), 1e-6), 6);
    figure.y = niceAxis(PumpChartText::tr("Head, %1").arg(text::symbol(text::headUnit(units))), 0,
                        std::max(corner.y(), 1e-6), 5);
    addLines(picture, highest, decision, figure);
    addMarks(picture, decision, figure);
    addTable(picture, figure);
    figure.sentence = sentenceOf(picture, decision);
    if (std::any_of(picture.duties.begin(), picture.duties.end(),
                    [](const SystemCurve& duty) { return !duty.headUncertainty; })) {
        figure.sentence += (figure.sentence.isEmpty() ? "" : " ") +
                           PumpChartText::tr("Dashed ring: no gauge read, head from the pump's curve.");
    }
    return figure;
}

}  // namespace ww::ui::charts
