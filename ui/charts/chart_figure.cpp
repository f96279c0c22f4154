#include "ui/charts/chart_figure.h"

#include <algorithm>
#include <cmath>

#include "core/base/expects.h"

namespace ww::ui::charts {

bool hasDots(LineRole role) {
    return role == LineRole::OneOfMany || role == LineRole::Summary || role == LineRole::Singled;
}

std::vector<double> Axis::ticks() const {
    std::vector<double> all;
    const int count = static_cast<int>(std::lround((most - least) / step));
    for (int i = 0; i <= count; ++i) {
        all.push_back(least + i * step);
    }
    return all;
}

Axis niceAxis(QString title, double least, double most, int wanted) {
    EXPECTS(most > least && wanted > 0);
    const double rough = (most - least) / wanted;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    const double first = rough / power;
    const double step = power * (first <= 1.0 ? 1.0 : first <= 2.0 ? 2.0 : first <= 5.0 ? 5.0 : 10.0);
    Axis axis;
    axis.title = std::move(title);
    axis.step = step;
    axis.least = std::floor(least / step + 1e-9) * step;
    axis.most = std::ceil(most / step - 1e-9) * step;
    axis.decimals = std::max(0, static_cast<int>(-std::floor(std::log10(step) + 1e-9)));
    return axis;
}

}  // namespace ww::ui::charts
