#include "ui/charts/efficiency_lines.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ww::ui::charts {

namespace {

constexpr int kSteps = 60;
constexpr double kLevel = 0.1;
constexpr double kLeastSpeed = 0.5;

}  // namespace

quantity::VolumeFlow lastFlow(const curve::PumpSet& set) {
    quantity::VolumeFlow last;
    for (const curve::PumpMember& member : set.members()) {
        const quantity::VolumeFlow own = member.curve.lastFlow(member.state);
        last = set.joint() == curve::PumpJoint::Parallel ? last + own : std::max(last, own);
    }
    return last;
}

std::vector<Line> efficiencyLines(const curve::PumpSet& set, quantity::Density density,
                                  quantity::Unit flowUnit, quantity::Unit headUnit) {
    std::vector<Line> lines;
    const quantity::VolumeFlow end = lastFlow(set);
    std::optional<double> before;
    for (int step = 1; step <= kSteps; ++step) {
        const quantity::VolumeFlow flow = end * (static_cast<double>(step) / kSteps);
        const auto efficiency = set.efficiency(flow, density);
        const auto head = set.head(flow);
        if (!efficiency || !head) {
            before.reset();
            continue;
        }
        const double now = efficiency->si();
        // The tenth that lies between the last two points, if one does.
        const double level = before ? kLevel * std::floor(std::max(now, *before) / kLevel) : 0;
        if (before && level > std::min(now, *before)) {
            const double part = (level - *before) / (now - *before);
            const quantity::VolumeFlow at = flow - end * ((1 - part) / kSteps);
            const double headAt = set.head(at).value_or(*head).in(headUnit);
            Line line{LineRole::Limit,
                      QCoreApplication::translate("PumpChart", "%1 %").arg(qRound(100 * level)),
                      {}};
            for (int i = 0; i <= kSteps / 4; ++i) {
                const double speed = 1 - (1 - kLeastSpeed) * i / (kSteps / 4.0);
                line.points.emplace_back(speed * at.in(flowUnit), speed * speed * headAt);
            }
            // Its name stands at the end: at full speed.
            std::reverse(line.points.begin(), line.points.end());
            lines.push_back(std::move(line));
        }
        before = now;
    }
    return lines;
}

}  // namespace ww::ui::charts
