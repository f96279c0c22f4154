#include "app/commands/pump_json.h"

#include <nlohmann/json.hpp>

#include "app/commands/json_si.h"
#include "core/project/names.h"

namespace ww::app {

namespace {

using Json = nlohmann::ordered_json;
using pump_room::PumpDecision;

/// A head as the pressure of the job's fluid.
Json pascals(const project::Project& project, const std::optional<quantity::Head>& head) {
    return head ? Json(project.fluid().pressure(*head).si()) : Json(nullptr);
}

/// What an excess head is counted above, in words.
Json basisWords(const std::optional<balancing::ExcessHead>& excess) {
    return excess ? Json(balancing::excessWords(excess->basis, excess->speed)) : Json(nullptr);
}

Json wattHours(const std::optional<quantity::Energy>& energy) {
    return energy ? Json(energy->si() / 3600) : Json(nullptr);
}

Json tags(const project::Project& project, const std::vector<std::size_t>& branches) {
    Json list = Json::array();
    for (const std::size_t branch : branches) {
        list.push_back(project.branches()[branch].tag);
    }
    return list;
}

Json findings(const std::vector<base::Fault>& faults) {
    Json list = Json::array();
    for (const base::Fault& fault : faults) {
        list.push_back({{"code", fault.code()}, {"subject", fault.subject}, {"text", base::english(fault)}});
    }
    return list;
}

Json dutyJson(const project::Project& project, const PumpDecision& decision) {
    if (!decision.duty) {
        return nullptr;
    }
    const pump_room::PresentDuty& duty = *decision.duty;
    return {{"flow_m3s", duty.flow.si()},          {"head_Pa", project.fluid().pressure(duty.head).si()},
            {"power_W", si(duty.shaft)},           {"efficiency", si(duty.efficiency)},
            {"round", duty.roundNumber},           {"speed_fraction", duty.speedFraction.si()},
            {"of_best_flow", si(duty.ofBestFlow)}, {"power_measured", duty.isPowerMeasured},
            {"speed_read", duty.isSpeedRead}};
}

Json requiredJson(const project::Project& project, const PumpDecision& decision) {
    Json list = Json::array();
    for (const pump_room::RequiredHead& required : decision.required) {
        list.push_back({{"source", jsonName(required.source)},
                        {"head_Pa", project.fluid().pressure(required.head).si()},
                        {"head_u_Pa", pascals(project, required.uncertainty)},
                        {"index_path", tags(project, required.indexPath)}});
    }
    return list;
}

Json optionJson(const project::Project& project, const pump_room::DecidedOption& decided) {
    const energy::PumpOption& option = decided.option;
    Json json{{"kind", jsonName(option.action)},
              {"head_Pa", project.fluid().pressure(option.head).si()},
              {"power_W", si(option.shaft)},
              {"ratio", option.ratio.si()},
              {"impeller_m", si(option.impeller)},
              {"energy_Wh_per_year", wattHours(option.energy)},
              {"cost_per_year", si(option.cost)},
              {"caution", sentences(option.cautions)},
              {"allowed", option.isAllowed},
              {"efficiency", si(option.efficiency)},
              {"throttled_head_Pa", project.fluid().pressure(option.throttled).si()},
              {"first_cut_m", si(option.firstCut)}};
    json["confirmed"] = nullptr;
    if (decided.confirmed) {
        json["confirmed"] = {{"flow_m3s", decided.confirmed->flow.si()},
                             {"head_Pa", project.fluid().pressure(decided.confirmed->head).si()},
                             {"flow_difference", decided.confirmed->flowDifference.si()},
                             {"head_difference", decided.confirmed->headDifference.si()}};
    }
    return json;
}

Json codeJson(const PumpDecision& decision) {
    const energy::CodeTest& code = decision.code;
    return {{"excess_power_W", si(code.excess)},
            {"limit_W", si(code.limit)},
            {"decision", code.decision ? Json(jsonName(*code.decision)) : Json(nullptr)},
            {"basis", sentences(code.basis)},
            {"met", decision.isCodeMet},
            {"least_throttling_proved", decision.throttling.isProved},
            {"against_least_throttling", findings(decision.throttling.failures)}};
}

Json readAndSetJson(const project::Project& project, const pump_room::ReadAndSet& comparison) {
    Json json{{"wasted_head_Pa", pascals(project, comparison.wasted)},
              {"wasted_power_W", si(comparison.wastedPower)},
              {"energy_Wh_per_year", wattHours(comparison.energy)},
              {"cost_per_year", si(comparison.cost)}};
    json["valves"] = Json::array();
    for (const pump_room::ValveLeft& valve : comparison.valves) {
        json["valves"].push_back({{"tag", project.branches()[valve.branch].tag},
                                  {"index", valve.isIndex},
                                  {"dp_open_Pa", valve.open.si()},
                                  {"dp_proportional_Pa", valve.proportional.si()},
                                  {"dp_read_and_set_Pa", valve.readAndSet.si()}});
    }
    return json;
}

Json pointJson(const project::Project& project, const energy::PumpPointResult& point, int round) {
    Json json{{"point", project::name(point.kind)}, {"round", round}};
    json["head_Pa"] = nullptr;
    if (point.head) {
        const auto part = [&](quantity::Head head) { return project.fluid().pressure(head).si(); };
        json["head_Pa"] = part(point.head->total);
        json["head_parts_Pa"] = {{"pressure", part(point.head->pressure)},
                                 {"gauge_zero", part(point.head->zero)},
                                 {"elevation", part(point.head->elevation)},
                                 {"velocity", part(point.head->velocity)}};
    }
    json["flow_m3s"] = si(point.flow);
    json["flow_curve_m3s"] = point.curveFlow ? Json{{"flow", point.curveFlow->flow.si()},
                                                    {"low", point.curveFlow->low.si()},
                                                    {"high", point.curveFlow->high.si()}}
                                             : Json(nullptr);
    json["shaft_power_W"] = si(point.motor.shaft());
    json["shaft_power_low_W"] = si(point.motor.lowest);
    json["shaft_power_high_W"] = si(point.motor.highest);
    json["efficiency"] = si(point.efficiency);
    json["npsh_margin_m"] = si(point.npshMargin);
    json["findings"] = findings(point.findings);
    return json;
}

Json sheetsJson(const project::Project& project, const std::vector<pump_room::PumpSheet>& sheets) {
    Json list = Json::array();
    for (const pump_room::PumpSheet& sheet : sheets) {
        Json json{
            {"pump", project.pumps()[sheet.pump].tag},
            {"impeller_m", sheet.sheet.impeller ? Json(sheet.sheet.impeller->diameter.si()) : Json(nullptr)},
            {"gauge_zero_Pa", si(sheet.sheet.gaugeZero)}};
        json["points"] = Json::array();
        for (std::size_t i = 0; i < sheet.sheet.points.size(); ++i) {
            json["points"].push_back(pointJson(project, sheet.sheet.points[i], sheet.rounds[i]));
        }
        json["findings"] = findings(sheet.sheet.findings);
        json["before_a_shutoff_test"] = {{"forbidden", sheet.shutoff.isForbidden},
                                         {"cautions", findings(sheet.shutoff.cautions)}};
        list.push_back(std::move(json));
    }
    return list;
}

}  // namespace

std::string_view jsonName(energy::PumpAction action) {
    switch (action) {
        case energy::PumpAction::Throttle:
            return "throttle";
        case energy::PumpAction::Trim:
            return "trim";
        case energy::PumpAction::Slow:
            return "speed";
    }
    return "";
}

std::string_view jsonName(balancing::CurveBasis basis) {
    switch (basis) {
        case balancing::CurveBasis::Published:
            return "published";
        case balancing::CurveBasis::ThroughGauges:
            return "through_gauges";
        case balancing::CurveBasis::Untrusted:
            return "untrusted";
    }
    return "";
}

std::string_view jsonName(energy::CodeDecision decision) {
    switch (decision) {
        case energy::CodeDecision::ExemptSmallMotor:
            return "exempt_small_motor";
        case energy::CodeDecision::ExemptSmallExcess:
            return "exempt_small_excess";
        case energy::CodeDecision::MustReduce:
            return "must_reduce";
    }
    return "";
}

std::string_view jsonName(pump_room::HeadSource source) {
    switch (source) {
        case pump_room::HeadSource::Design:
            return "design";
        case pump_room::HeadSource::Learned:
            return "learned";
        case pump_room::HeadSource::Measured:
            return "measured";
    }
    return "";
}

std::string sentences(const std::vector<base::Fault>& faults) {
    std::string out;
    for (const base::Fault& fault : faults) {
        out += (out.empty() ? "" : ". ") + base::english(fault);
    }
    return out;
}

std::string pumpJson(const project::Project& project, const pump_room::PumpPicture& answer) {
    const PumpDecision& decision = answer.decision;
    Json document;
    document["duty"] = dutyJson(project, decision);
    document["required_head_Pa"] =
        decision.counted ? Json(project.fluid().pressure(decision.required[*decision.counted].head).si())
                         : Json(nullptr);
    document["excess_head_Pa"] = pascals(project, decision.excess);
    document["excess_basis"] = basisWords(decision.decidedExcess());
    document["options"] = Json::array();
    for (const pump_room::DecidedOption& option : decision.options) {
        document["options"].push_back(optionJson(project, option));
    }
    document["code"] = codeJson(decision);
    document["design_flow_m3s"] = decision.designFlow.si();
    document["available_head_Pa"] = pascals(project, decision.headAvailable);
    document["present_excess_head_Pa"] = pascals(project, decision.presentExcess);
    document["present_excess_basis"] = basisWords(decision.excessAsRead());
    document["published_head_Pa"] = pascals(project, decision.headPublished);
    document["curve"] = {{"basis", jsonName(decision.curve.basis)},
                         {"head_factor", decision.curve.headFactor.si()},
                         {"round", decision.curve.roundNumber},
                         {"reasons", findings(decision.curve.reasons)}};
    document["required"] = requiredJson(project, decision);
    document["read_and_set"] = readAndSetJson(project, answer.readAndSet);
    document["tests"] = sheetsJson(project, answer.sheets);
    document["findings"] = findings(decision.findings);
    return document.dump(2) + "\n";
}

}  // namespace ww::app
