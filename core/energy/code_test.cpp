#include "core/energy/code_test.h"

#include <algorithm>

#include "core/base/term.h"
#include "core/quantity/measured.h"
#include "core/quantity/shown_units.h"

namespace ww::energy {

namespace {

using quantity::Unit;

/// Limits and plates come from rounded units: what differs in the tenth digit is equal.
constexpr double kEqual = 1 + 1e-9;

std::string orYourCode(const std::string& typed, const char* otherwise) {
    return typed.empty() ? otherwise : typed;
}

base::Fault formula(const CodeTestInput& in, const CodeThresholds& thresholds) {
    std::vector<std::string> arguments{
        in.units.text(in.flow),
        in.units.text(in.headThrottled),
        in.units.text(in.headNeeded),
        quantity::percentDigits(in.efficiency->si(), 4),
        quantity::percentDigits(in.efficiencyReduced.value_or(*in.efficiency).si(), 4),
        quantity::percentDigits(thresholds.plateShare.si(), 4)};
    if (!thresholds.floor) {
        return {&kCodeFormulaPlate, "", std::move(arguments)};
    }
    arguments.push_back(in.units.text(*thresholds.floor));
    return {&kCodeFormula, "", std::move(arguments)};
}

}  // namespace

CodeThresholds percentOrFloorThresholds(bool isPlateMetric) {
    CodeThresholds out;
    out.smallMotor = isPlateMetric ? Power::si(7500) : Power::from(10, Unit::Horsepower);
    out.floor = isPlateMetric ? Power::si(2200) : Power::from(3, Unit::Horsepower);
    return out;
}

CodeThresholds percentOnlyThresholds(bool isPlateMetric) {
    CodeThresholds out;
    out.smallMotor = isPlateMetric ? Power::si(3700) : Power::from(5, Unit::Horsepower);
    return out;
}

CodeTest codeTest(const CodeTestInput& in, const CodeThresholds& thresholds) {
    CodeTest out;
    if (in.edition.empty() || in.clause.empty()) {
        out.findings.push_back({&kCodeNotNamed, "", {}});
    }
    if (in.efficiency && in.flow.si() > 0) {
        const Ratio reduced = in.efficiencyReduced.value_or(*in.efficiency);
        out.excess = shaftPower(in.flow, in.headThrottled, in.density, *in.efficiency) -
                     shaftPower(in.flow, in.headNeeded, in.density, reduced);
    }
    if (!in.plate) {
        out.findings.push_back({&kCodePlateUnknown, "", {}});
        return out;
    }
    out.limit = std::max(*in.plate * thresholds.plateShare.si(), thresholds.floor.value_or(Power()));
    if (*in.plate <= thresholds.smallMotor * kEqual) {
        out.decision = CodeDecision::ExemptSmallMotor;
        out.basis.push_back(
            {&kCodeSmallMotor, "", {in.units.text(*in.plate), in.units.text(thresholds.smallMotor)}});
    } else if (!out.excess) {
        out.findings.push_back({&kCodeEfficiencyUnknown, "", {}});
        return out;
    } else {
        const bool isSmall = *out.excess <= *out.limit * kEqual;
        out.decision = isSmall ? CodeDecision::ExemptSmallExcess : CodeDecision::MustReduce;
        out.basis.push_back({isSmall ? &kCodeSmallExcess : &kCodeMustReduce,
                             "",
                             {in.units.text(*out.excess), in.units.text(*out.limit)}});
        out.basis.push_back(formula(in, thresholds));
    }
    if (!in.edition.empty() || !in.clause.empty()) {
        out.basis.push_back({&kCodeReference,
                             "",
                             {orYourCode(in.edition, base::term("the adopted energy code")),
                              orYourCode(in.clause, base::term("its clause on hydronic balancing"))}});
    }
    if (!in.exceptionClaimed.empty()) {
        out.basis.push_back({&kCodeClaimed, "", {in.exceptionClaimed}});
    }
    return out;
}

}  // namespace ww::energy
