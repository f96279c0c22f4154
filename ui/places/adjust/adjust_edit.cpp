#include "ui/places/adjust/adjust_edit.h"

#include "ui/text/format.h"

namespace ww::ui {
namespace {

using Made = base::Result<project::Edit>;

base::Outcome carriedOut(WorkbookBridge& bridge, const Made& made) {
    if (!made) {
        return made.fault();
    }
    return bridge.apply(*made);
}

}  // namespace

base::Outcome storeTyped(WorkbookBridge& bridge, const base::Id& branch, const QString& text, TypedDp what,
                         const base::Decimal& setting, bool isHold) {
    const project::Project& project = bridge.project();
    auto dp = quantity::parseDifference(text.toStdString(), text::dpUnit(project, bridge.instrument()),
                                        project.fluid().density());
    if (!dp) {
        return dp.fault();
    }
    switch (what) {
        case TypedDp::Reference:
            return carriedOut(
                bridge, balancing::storeReference(project, branch, std::move(dp).value(), bridge.context()));
        case TypedDp::ShutValve:
            return carriedOut(
                bridge, balancing::storeShutValve(project, branch, std::move(dp).value(), bridge.context()));
        case TypedDp::Try:
        case TypedDp::RepeatedTry:
            break;
    }
    balancing::TryEntry entry{std::move(dp).value(), setting, isHold, what == TypedDp::RepeatedTry};
    return carriedOut(bridge, balancing::storeTry(project, branch, std::move(entry), bridge.context()));
}

base::Outcome holdTyped(WorkbookBridge& bridge, const base::Id& branch, const base::Decimal& setting) {
    return carriedOut(bridge, balancing::holdHere(bridge.project(), branch, setting));
}

}  // namespace ww::ui
