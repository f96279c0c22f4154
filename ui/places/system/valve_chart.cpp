#include "ui/places/system/valve_chart.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/project/equipment_curves.h"
#include "ui/text/words.h"

namespace ww::ui {

namespace {

constexpr int kLinePoints = 60;

/// The texts of this file.
struct ValveChartText {
    Q_DECLARE_TR_FUNCTIONS(ValveChart)
};

/// In the unit of the table: Kv or Cv.
double coefficientOf(const curve::ValveCharacteristic& curve, double setting_own, quantity::Unit unit) {
    return curve.coefficient(quantity::Setting::si(setting_own)).in(unit);
}

}  // namespace

charts::ChartFigure noValveChart() {
    charts::ChartFigure figure;
    figure.name = ValveChartText::tr("Flow coefficient over setting");
    figure.sentence = ValveChartText::tr("No valve model yet: add one, or paste a table (Ctrl+V).");
    return figure;
}

charts::ChartFigure valveChart(const project::ValveModel& valve) {
    charts::ChartFigure figure;
    const QString unit =
        valve.coefficientUnit == quantity::Unit::Cv ? QStringLiteral("Cv") : QStringLiteral("Kv");
    figure.name = ValveChartText::tr("Flow coefficient over setting");
    figure.tableHeads = {ValveChartText::tr("Setting"), unit};
    double mostSetting = 0;
    double mostCoefficient = 0;
    for (const project::ValveTableRow& row : valve.rows) {
        figure.marks.push_back(
            {charts::MarkKind::Dot, {row.setting.value(), row.coefficient.value()}, 0, 0, QString()});
        figure.tableRows.push_back(
            {QString::fromStdString(row.setting.text()), QString::fromStdString(row.coefficient.text())});
        mostSetting = std::max(mostSetting, row.setting.value());
        mostCoefficient = std::max(mostCoefficient, row.coefficient.value());
    }
    if (valve.rows.empty()) {
        figure.sentence = valve.minimumDp ? ValveChartText::tr(
                                                "A range of dp without a table: for a limiter or a "
                                                "pressure-independent valve.")
                                          : ValveChartText::tr(
                                                "No points yet: type setting and coefficient, or paste two "
                                                "columns from a spreadsheet (Ctrl+V).");
        return figure;
    }
    figure.x = charts::niceAxis(ValveChartText::tr("Setting, %1").arg(text::nameOf(valve.scale)), 0,
                                mostSetting > 0 ? mostSetting : 1, 5);
    figure.y = charts::niceAxis(unit, 0, mostCoefficient > 0 ? mostCoefficient : 1, 4);
    const auto curve = curve::ValveCharacteristic::make(project::valvePoints(valve));
    if (!curve) {
        figure.sentence = text::sentence(curve.fault());
        return figure;
    }
    charts::Line line;
    line.role = charts::LineRole::PumpCurve;
    const double low_own = curve->lowest().si();
    const double high_own = curve->fullyOpen().si();
    for (int i = 0; i <= kLinePoints; ++i) {
        const double setting_own =
            i == kLinePoints ? high_own : low_own + (high_own - low_own) * i / kLinePoints;
        line.points.emplace_back(setting_own, coefficientOf(*curve, setting_own, valve.coefficientUnit));
    }
    figure.lines.push_back(std::move(line));
    figure.sentence = ValveChartText::tr("%1 %2 fully open, at setting %3.")
                          .arg(unit)
                          .arg(curve->coefficientFullyOpen().in(valve.coefficientUnit), 0, 'g', 4)
                          .arg(high_own, 0, 'g', 4);
    return figure;
}

}  // namespace ww::ui
