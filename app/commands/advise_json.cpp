#include "app/commands/advise_json.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "app/commands/json_si.h"
#include "core/balancing/excess_head.h"

namespace ww::app {

namespace {

using Json = nlohmann::ordered_json;
using balancing::Advice;
using balancing::SettingAdvice;

Json faultList(const std::vector<base::Fault>& faults) {
    Json list = Json::array();
    for (const base::Fault& fault : faults) {
        list.push_back({{"code", std::string(fault.code())},
                        {"subject", fault.subject},
                        {"text", base::english(fault)}});
    }
    return list;
}

/// All reasons as one text.
Json joined(const std::vector<base::Fault>& faults) {
    if (faults.empty()) {
        return nullptr;
    }
    std::string text;
    for (const base::Fault& fault : faults) {
        text += (text.empty() ? "" : " | ") + base::englishWithSubject(fault);
    }
    return text;
}

const char* statusName(balancing::AdviceStatus status) {
    switch (status) {
        case balancing::AdviceStatus::NotReady:
            return "not_ready";
        case balancing::AdviceStatus::Unverified:
            return "unverified";
        case balancing::AdviceStatus::Verified:
            return "verified";
    }
    base::breach("a status without a name", __FILE__, __LINE__);
}

const char* kindName(balancing::ReadingKind kind) {
    switch (kind) {
        case balancing::ReadingKind::ClosedValveDp:
            return "closed_valve_dp";
        case balancing::ReadingKind::UnreadValveDp:
            return "unread_valve_dp";
        case balancing::ReadingKind::RepeatedDp:
            return "repeat";
    }
    base::breach("a kind of reading without a name", __FILE__, __LINE__);
}

Json settingObject(const project::Project& project, const SettingAdvice& setting) {
    return {{"tag", project.branches()[setting.branch].tag},
            {"setting", setting.setting.si()},
            {"cv", setting.coefficient.in(quantity::Unit::Cv)},
            {"fully_open", setting.isFullyOpen},
            {"dp_Pa_at_target", setting.dp.si()},
            {"setting_u", setting.settingUncertainty.si()},
            {"expected_of_target", setting.indicated.ofTarget.si()},
            {"expected_of_target_u", setting.indicated.uncertainty.si()},
            {"actual_of_target", setting.actual.ofTarget.si()},
            {"actual_of_target_u", setting.actual.uncertainty.si()},
            {"exact_setting", setting.exact.si()},
            {"step", setting.step.si()},
            {"reference", setting.isReference},
            {"present_setting", si(setting.present)},
            {"is_set", setting.isSet},
            {"flow_m3s", setting.flow.si()},
            {"notes", faultList(setting.notes)}};
}

Json helpfulObject(const project::Project& project, const std::optional<balancing::HelpfulReading>& helpful) {
    if (!helpful) {
        return nullptr;
    }
    return {{"tag", project.branches()[helpful->branch].tag},
            {"kind", kindName(helpful->kind)},
            {"setting", si(helpful->setting)},
            {"expected_dp_Pa", helpful->expectedDp.si()},
            {"largest_u_factor", helpful->largestUncertaintyFactor.si()},
            {"text", base::english(helpful->why)}};
}

Json pumpObject(const std::optional<balancing::PumpAdvice>& pump) {
    if (!pump) {
        return nullptr;
    }
    return {{"required_head_Pa", pump->needed.si()},
            {"available_head_Pa", pump->available.si()},
            {"excess_head_Pa", pump->excess.si()},
            {"excess_basis",
             balancing::excessWords(balancing::ExcessBasis::IndexByLearned, balancing::ExcessSpeed::AsRead)},
            {"speed_fraction", si(pump->speedFraction)},
            {"speed_ratio", si(pump->speedRatio)},
            {"impeller_m", si(pump->impeller)},
            {"notes", faultList(pump->notes)}};
}

/// As the command pump tells them.
Json decisionObject(const project::Project& project, const pump_room::PumpDecision& decision) {
    const auto excess = decision.decidedExcess();
    const auto pascals = [&](const std::optional<quantity::Head>& head) {
        return head ? Json(project.fluid().pressure(*head).si()) : Json();
    };
    const auto look = std::find_if(decision.findings.begin(), decision.findings.end(),
                                   [](const base::Fault& one) { return one.is(pump_room::kFirstLook); });
    return {
        {"required_head_Pa",
         pascals(decision.counted ? std::optional(decision.required[*decision.counted].head) : std::nullopt)},
        {"available_head_Pa", pascals(decision.headAvailable)},
        {"excess_head_Pa", pascals(decision.excess)},
        {"excess_basis", excess ? Json(balancing::excessWords(excess->basis, excess->speed)) : Json()},
        {"first_look", look != decision.findings.end() ? Json(base::english(*look)) : Json()}};
}

}  // namespace

std::string adviseJson(const project::Project& project, const balancing::LearnedLoop& learned,
                       const Advice& advice, const pump_room::PumpDecision& decision) {
    Json document;
    document["ready"] = advice.isReady();
    document["why_not"] = joined(advice.whyNot);
    document["settings"] = Json::array();
    for (const SettingAdvice& setting : advice.settings) {
        document["settings"].push_back(settingObject(project, setting));
    }
    document["next"] = nullptr;
    if (advice.next) {
        document["next"] = {{"tag", project.branches()[advice.next->branch].tag},
                            {"setting", advice.next->setting.si()},
                            {"dp_Pa", advice.next->dp.si()},
                            {"reason", base::english(advice.next->reason)}};
    }
    document["doubtful"] = Json::array();
    for (const balancing::DoubtfulReading& doubtful : learned.doubtful) {
        document["doubtful"].push_back({{"tag", project.branches()[doubtful.branch].tag},
                                        {"round", project.rounds()[doubtful.round].number},
                                        {"z", doubtful.score},
                                        {"why", base::english(doubtful.why)},
                                        {"certain", doubtful.isCertain}});
    }
    document["after"] = nullptr;
    if (!advice.settings.empty()) {
        document["after"] = {{"spread", advice.spread.si()},
                             {"total_flow_m3s", advice.totalFlow.si()},
                             {"head_Pa", advice.pumpRise.si()}};
    }
    document["status"] = statusName(advice.status);
    document["why_not_list"] = faultList(advice.whyNot);
    document["probability_all_within_band"] = {{"indicated", advice.indicatedProbability.si()},
                                               {"actual", advice.actualProbability.si()},
                                               {"lower_bound", advice.isProbabilityBound}};
    document["helpful_reading"] = helpfulObject(project, advice.helpful);
    document["index_path"] = Json::array();
    for (const std::size_t branch : advice.indexPath) {
        document["index_path"].push_back(project.branches()[branch].tag);
    }
    document["pump"] = pumpObject(advice.pump);
    document["pump_decision"] = decisionObject(project, decision);
    document["notes"] = faultList(advice.notes);
    return document.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace ww::app
