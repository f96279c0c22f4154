#include "app/commands/check_json.h"

#include <nlohmann/json.hpp>

#include "app/commands/json_si.h"
#include "core/balancing/design_changes.h"
#include "core/balancing/share_count.h"
#include "core/project/names.h"

namespace ww::app {

namespace {

using Json = nlohmann::ordered_json;
using balancing::Assessment;

Json branchObject(const project::Project& project, const balancing::BranchResult& result) {
    const project::Branch& branch = project.branches()[result.branch];
    const project::Branch* parent = branch.parent ? project.branches().find(*branch.parent) : nullptr;
    return {{"tag", branch.tag},
            {"parent", parent != nullptr ? Json(parent->tag) : Json(nullptr)},
            {"setting", si(result.setting)},
            {"fully_open", result.isFullyOpen},
            {"dp_Pa", si(result.dp)},
            {"flow_m3s", si(result.flow)},
            {"flow_u_m3s", si(result.flowUncertainty)},
            {"share", si(result.share)},
            {"target_share", result.targetShare.si()},
            {"of_target", si(result.ofTarget)},
            {"of_design", si(result.ofDesign)},
            {"state", std::string(jsonName(result.state))},
            {"design_m3s", result.designFlow.si()},
            {"flow_low_m3s", si(result.flowLow)},
            {"flow_high_m3s", si(result.flowHigh)},
            {"terminal", result.isTerminal},
            {"self_acting", result.isSelfActing},
            {"in_loop", result.isInLoop}};
}

Json groupObject(const project::Project& project, const balancing::GroupResult& group) {
    const auto tag = [&](const std::optional<std::size_t>& index) {
        return index ? Json(project.branches()[*index].tag) : Json(nullptr);
    };
    return {{"parent", tag(group.parent)}, {"reference", tag(group.reference)}, {"spread", si(group.spread)}};
}

Json indexObject(const project::Project& project, const balancing::IndexCircuit& index) {
    Json path = Json::array();
    for (const std::size_t branch : index.path) {
        path.push_back(project.branches()[branch].tag);
    }
    return {{"tag", index.terminal ? Json(project.branches()[*index.terminal].tag) : Json(nullptr)},
            {"path", std::move(path)},
            {"valve_fully_open", index.isValveFullyOpen},
            {"path_fully_open", index.isPathFullyOpen}};
}

}  // namespace

std::string_view jsonName(balancing::Verdict verdict) {
    switch (verdict) {
        case balancing::Verdict::Accepted:
            return "accepted";
        case balancing::Verdict::NotAccepted:
            return "not_accepted";
        case balancing::Verdict::Undecidable:
            return "undecidable";
    }
    base::breach("a verdict without a name", __FILE__, __LINE__);
}

std::string_view jsonName(balancing::State state) {
    switch (state) {
        case balancing::State::NotRead:
            return "not_read";
        case balancing::State::Short:
            return "short";
        case balancing::State::Over:
            return "over";
        case balancing::State::OnShare:
            return "on_share";
        case balancing::State::Drifted:
            return "drifted";
        case balancing::State::AtStop:
            return "at_stop";
        case balancing::State::Doubtful:
            return "doubtful";
    }
    base::breach("a state without a name", __FILE__, __LINE__);
}

std::string_view jsonName(balancing::Severity severity) {
    switch (severity) {
        case balancing::Severity::Note:
            return "note";
        case balancing::Severity::Warning:
            return "warning";
        case balancing::Severity::Error:
            return "error";
        case balancing::Severity::BlocksSignature:
            return "blocks_signature";
    }
    base::breach("a severity without a name", __FILE__, __LINE__);
}

std::string checkJson(const project::Project& project, const Assessment& assessment) {
    Json document;
    document["job"] = project.job().name;
    document["round"] = assessment.round ? Json(assessment.roundNumber) : Json(nullptr);
    document["round_kind"] =
        assessment.round ? Json(std::string(project::name(assessment.kind))) : Json(nullptr);
    document["verdict"] = std::string(jsonName(assessment.verdict));
    document["total_flow_m3s"] = si(assessment.totalFlow);
    document["total_design_m3s"] = assessment.totalDesign.si();
    document["doubtful_in_total"] = balancing::doubtfulInTotal(assessment);
    document["spread"] = si(assessment.spread);
    document["branches"] = Json::array();
    for (const std::size_t index : project.tree().walkingOrder()) {
        document["branches"].push_back(branchObject(project, assessment.branches[index]));
    }
    document["groups"] = Json::array();
    for (const balancing::GroupResult& group : assessment.groups) {
        document["groups"].push_back(groupObject(project, group));
    }
    document["index"] = indexObject(project, assessment.index);
    document["findings"] = Json::array();
    for (const balancing::Finding& finding : assessment.findings) {
        document["findings"].push_back({{"code", std::string(finding.fault.code())},
                                        {"severity", std::string(jsonName(finding.severity))},
                                        {"subject", finding.fault.subject},
                                        {"text", base::english(finding.fault)}});
    }
    document["reasons"] = Json::array();
    for (const base::Fault& reason : assessment.reasons) {
        document["reasons"].push_back({{"code", std::string(reason.code())},
                                       {"subject", reason.subject},
                                       {"text", base::english(reason)}});
    }
    document["changed_since"] = Json::array();
    for (const base::Fault& change : balancing::changesSince(project, assessment.roundNumber)) {
        document["changed_since"].push_back(
            {{"code", std::string(change.code())}, {"text", base::english(change)}});
    }
    return document.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace ww::app
