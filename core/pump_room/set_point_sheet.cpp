#include "core/pump_room/set_point_sheet.h"

#include "core/project/units.h"
#include "core/quantity/measured.h"

namespace ww::pump_room {

namespace {

using project::Project;

/// A dp sensor whose accuracy nobody states (common practice, no source).
constexpr PressureDifference kUsualSensorAccuracy = PressureDifference::si(1000);

std::optional<energy::DpResetLaw> lawOf(const project::SetPoint& record, std::vector<base::Fault>& findings) {
    if (!record.dp) {
        findings.push_back({&kSetPointDpMissing, record.sensor, {}});
        return std::nullopt;
    }
    energy::DpResetLaw law;
    law.form = record.reset;
    law.dpAtReference = record.dp->value;
    if (record.reset != project::ResetLaw::None) {
        if (!record.flow || record.flow->value.si() <= 0) {
            findings.push_back({&kSetPointFlowMissing, record.sensor, {}});
            return std::nullopt;
        }
        law.reference = record.flow->value;
        law.margin = quantity::valueOf(record.margin).value_or(PressureDifference());
    }
    law.low = quantity::valueOf(record.lowLimit);
    law.high = quantity::valueOf(record.highLimit);
    return law;
}

void checkSetPoint(const Project& project, const project::SetPoint& record, SetPointSheet& sheet) {
    energy::SetPointCheckInput input;
    input.setPoint = record.dp->value;
    input.zero = quantity::valueOf(record.zero);
    input.accuracy = kUsualSensorAccuracy;
    input.indexOfDesign = sheet.indexOfDesign;
    if (sheet.indexOfDesign && sheet.indexOfDesign->si() > 0) {
        // By the square law: the dp there while the index takes just its design flow.
        const double share = sheet.indexOfDesign->si();
        input.need = record.dp->value / (share * share);
    }
    input.toleranceLow = project.job().toleranceLow.value;
    input.toleranceHigh = project.job().toleranceHigh.value;
    input.low = quantity::valueOf(record.lowLimit);
    input.high = quantity::valueOf(record.highLimit);
    input.units = project::shownUnits(project);
    if (!quantity::isHeadUnit(record.dp->unit)) {
        input.units.pressure = record.dp->unit;
    }
    for (base::Fault& finding : energy::setPointFindings(input)) {
        finding.subject = record.sensor;
        sheet.findings.push_back(std::move(finding));
    }
}

void checkIndexValve(const Project& project, const balancing::Assessment& assessment, SetPointSheet& sheet) {
    if (!assessment.index.terminal || !assessment.branches[*assessment.index.terminal].isSelfActing) {
        return;
    }
    const project::Branch& branch = project.branches()[*assessment.index.terminal];
    const project::ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
    if (valve != nullptr && valve->minimumDp) {
        sheet.findings.push_back(
            {&kSetPointSelfActing, branch.tag, {project::shownUnits(project).text(valve->minimumDp->value)}});
    }
}

}  // namespace

std::vector<SetPointSheet> setPointSheets(const Project& project, const balancing::Assessment& assessment) {
    std::vector<SetPointSheet> sheets;
    for (const project::SetPoint& record : project.setPoints()) {
        SetPointSheet sheet;
        sheet.setPoint = record.id;
        if (assessment.index.terminal) {
            sheet.indexOfDesign = assessment.branches[*assessment.index.terminal].ofDesign;
        }
        sheet.law = lawOf(record, sheet.findings);
        if (sheet.law) {
            constexpr int kSteps = 6;
            for (int step = 1; step <= kSteps && assessment.totalDesign.si() > 0; ++step) {
                const VolumeFlow flow = assessment.totalDesign * (0.2 * step);
                const energy::DpAtFlow at = energy::dpAtFlow(*sheet.law, flow);
                sheet.points.push_back({flow, at.computed, at.setPoint});
            }
        }
        if (record.dp) {
            checkSetPoint(project, record, sheet);
        }
        checkIndexValve(project, assessment, sheet);
        for (const std::size_t branch : project.tree().walkingOrder()) {
            sheet.policies.emplace_back(branch, policyOf(project, branch));
        }
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

}  // namespace ww::pump_room
