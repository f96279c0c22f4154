#include "ui/places/system/branch_edit.h"

#include <algorithm>

#include "core/project/edit_label.h"
#include "core/project/names.h"
#include "core/project/setting_text.h"
#include "ui/text/format.h"
#include "ui/text/parse.h"
#include "ui/text/typed_word.h"

namespace ww::ui {
namespace {

using project::Branch;
using project::Project;

constexpr base::MessageForm kEndOfPipe{
    "branch_at_end",
    "no branch of the same pipe is before or after this one; move it to another pipe by \"Fed by\""};
constexpr base::MessageForm kTagEmpty{"tag_empty", "a branch needs a tag; type one, such as B-05"};
constexpr base::MessageForm kTagTaken{"tag_taken", "the tag {1} is taken; type another"};
constexpr base::MessageForm kValveUnknown{"valve_not_in_job",
                                          "this job has no valve \"{1}\"; type one of {2}, or nothing"};
constexpr base::MessageForm kKindUnknown{"kind_not_known", "\"{1}\" is no kind of branch; type one of {2w}"};
constexpr base::MessageForm kParentUnknown{
    "parent_not_in_job", "no branch is called \"{1}\"; type a tag, or nothing for the pump"};
constexpr base::MessageForm kParentCycle{"parent_below_itself",
                                         "{1} is fed by this branch itself; choose a branch nearer the pump"};
constexpr base::MessageForm kSettingOutside{
    "setting_outside_valve", "{1} is outside this valve's scale, {2} to {3}; type what the handle shows"};
constexpr base::MessageForm kLossNegative{"loss_negative", "{1} is below zero; a loss is zero or more"};

using Result = std::optional<base::Fault>;

Result fault(const base::MessageForm& form, std::vector<std::string> arguments = {}) {
    return base::Fault{&form, {}, std::move(arguments)};
}

Result setTag(const Project& project, Branch& branch, const std::string& tag) {
    if (tag.empty()) {
        return fault(kTagEmpty);
    }
    const Branch* other = project.branchTagged(tag);
    if (other != nullptr && other->id != branch.id) {
        return fault(kTagTaken, {tag});
    }
    branch.tag = tag;
    return {};
}

Result setParent(const Project& project, Branch& branch, const std::string& tag) {
    if (tag.empty()) {
        branch.parent.reset();
        return {};
    }
    const Branch* parent = project.branchTagged(tag);
    if (parent == nullptr) {
        return fault(kParentUnknown, {tag});
    }
    for (const Branch* above = parent; above != nullptr;
         above = above->parent ? project.branches().find(*above->parent) : nullptr) {
        if (above->id == branch.id) {
            return fault(kParentCycle, {tag});
        }
    }
    branch.parent = parent->id;
    return {};
}

Result setKind(Branch& branch, const std::string& word) {
    if (!text::takeWord(branch.kind, QString::fromStdString(word))) {
        return fault(kKindUnknown, {word, project::namesOf<project::BranchKind>()});
    }
    return {};
}

Result setValve(const Project& project, Branch& branch, const QString& words) {
    if (words.isEmpty()) {
        branch.valve.reset();
        branch.setting.reset();
        return {};
    }
    QStringList names;
    for (const project::ValveModel& valve : project.valves()) {
        const QString name = QString::fromStdString(valve.model + " " + valve.size).trimmed();
        if (name.compare(words, Qt::CaseInsensitive) == 0) {
            branch.valve = valve.id;
            if (branch.kind == project::BranchKind::None) {
                branch.kind = project::BranchKind::Manual;
            }
            return {};
        }
        names << name;
    }
    return fault(kValveUnknown, {words.toStdString(), names.join(QStringLiteral(", ")).toStdString()});
}

Result setSetting(const Project& project, Branch& branch, const std::string& text) {
    if (text.empty()) {
        branch.setting.reset();
        return {};
    }
    auto setting = base::Decimal::parse(text);
    if (!setting) {
        return setting.fault();
    }
    const curve::ValveCharacteristic* curve = project.characteristicOf(branch);
    if (curve != nullptr && !curve->covers(quantity::Setting::si(setting->value()))) {
        return fault(kSettingOutside,
                     {setting->text(), project::settingText(project, branch, curve->lowest()),
                      project::settingText(project, branch, curve->fullyOpen())});
    }
    branch.setting = std::move(setting).value();
    return {};
}

Result setDesign(const Project& project, Branch& branch, const QString& text) {
    if (text.isEmpty()) {
        branch.designFlow.reset();
        return {};
    }
    const quantity::Unit usual = branch.designFlow ? branch.designFlow->unit : text::flowUnit(project);
    auto flow = text::parseMeasured<quantity::VolumeFlow>(text, usual);
    if (!flow) {
        return flow.fault();
    }
    if (!(flow->value.si() > 0.0)) {
        return fault(text::kMustBePositive, {flow->text()});
    }
    branch.designFlow = std::move(flow).value();
    return {};
}

using Loss = std::optional<quantity::Measured<quantity::PressureDifference>>;

Result setLoss(const Project& project, Loss& loss, const QString& text) {
    if (text.isEmpty()) {
        loss.reset();
        return {};
    }
    const quantity::Unit usual = loss ? loss->unit : text::dpUnit(project);
    auto typed = quantity::parseDifference(text.toStdString(), usual, project.fluid().density());
    if (!typed) {
        return typed.fault();
    }
    if (typed->value.si() < 0.0) {
        return fault(kLossNegative, {typed->text()});
    }
    loss = std::move(typed).value();
    return {};
}

Result setColumn(const Project& project, Branch& branch, SystemModel::Column column, const QString& text) {
    switch (column) {
        case SystemModel::Tag:
            return setTag(project, branch, text.toStdString());
        case SystemModel::Serves:
            branch.serves = text.toStdString();
            return {};
        case SystemModel::Parent:
            return setParent(project, branch, text.toStdString());
        case SystemModel::Kind:
            return setKind(branch, text.toStdString());
        case SystemModel::Valve:
            return setValve(project, branch, text);
        case SystemModel::Setting:
            return setSetting(project, branch, text.toStdString());
        case SystemModel::Design:
            return setDesign(project, branch, text);
        case SystemModel::RunLoss:
            return setLoss(project, branch.runLoss, text);
        case SystemModel::CircuitLoss:
            return setLoss(project, branch.circuitLoss, text);
        default:
            return {};
    }
}

}  // namespace

base::Result<project::Edit> branchEdit(const Project& project, const base::Id& id, SystemModel::Column column,
                                       const QString& text) {
    const Branch& before = project.branches().at(id);
    Branch branch = before;
    if (auto refusal = setColumn(project, branch, column, text.trimmed())) {
        refusal->subject = before.tag;
        return *refusal;
    }
    if (branch == before) {
        return project::Edit{};
    }
    return project::Edit{project::label(project::labels::kBranch, {branch.tag}), {branch}, {}, true};
}

project::Edit newBranch(const Project& project, const std::optional<base::Id>& neighbor, const base::Id& id) {
    Branch branch;
    branch.id = id;
    branch.kind = project::BranchKind::None;
    const Branch* beside = neighbor ? project.branches().find(*neighbor) : nullptr;
    branch.parent = beside != nullptr ? beside->parent : std::nullopt;
    for (const Branch& other : project.branches()) {
        branch.position = std::max(branch.position, other.position + 1);
    }
    for (int number = static_cast<int>(project.branches().size()) + 1; branch.tag.empty(); ++number) {
        const std::string tag = "B-" + std::string(number < 10 ? "0" : "") + std::to_string(number);
        if (project.branchTagged(tag) == nullptr) {
            branch.tag = tag;
        }
    }
    // A terminal must have a design flow; the one beside it is the likeliest to begin with.
    const auto one =
        quantity::measured<quantity::VolumeFlow>(*base::Decimal::parse("1"), text::flowUnit(project));
    branch.designFlow = beside != nullptr && beside->designFlow ? beside->designFlow : std::optional(one);
    return {project::label(project::labels::kNewBranch, {branch.tag}), {branch}, {}, true};
}

base::Result<project::Edit> movedBranch(const Project& project, const base::Id& id, int steps) {
    Branch moved = project.branches().at(id);
    const Branch* neighbor = nullptr;
    for (const Branch& other : project.branches()) {
        const bool isBeyond = steps < 0 ? other.position < moved.position : other.position > moved.position;
        const bool isNearer = neighbor == nullptr || (steps < 0 ? other.position > neighbor->position
                                                                : other.position < neighbor->position);
        if (other.parent == moved.parent && isBeyond && isNearer) {
            neighbor = &other;
        }
    }
    if (neighbor == nullptr) {
        return base::Fault{&kEndOfPipe, moved.tag, {}};
    }
    Branch other = *neighbor;
    std::swap(moved.position, other.position);
    const std::string label = project::label(project::labels::kRoute, {moved.tag});
    return project::Edit{label, {std::move(moved), std::move(other)}, {}, true};
}

}  // namespace ww::ui
