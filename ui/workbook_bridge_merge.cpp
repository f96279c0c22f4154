// The part of the bridge that brings two copies of a workbook together.
#include <QFileInfo>

#include "core/base/expects.h"
#include "core/workbook/merge_files.h"
#include "core/workbook/merge_settlement.h"
#include "ui/long_work.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

workbook::WorkRunner WorkbookBridge::runnerOfMerge(const QString& other) const {
    return [this, other](const std::function<void()>& work) {
        doWaitedFor(isLarge(other) || isLarge(file()),
                    tr("Comparing with %1").arg(QFileInfo(other).fileName()), work);
    };
}

base::Result<workbook::MergeReport> WorkbookBridge::previewMerge(const QString& other) {
    if (!m_workbook) {
        return base::Fault{&kNoWorkbookOpen, {}, {}};
    }
    try {
        return m_workbook->previewMerge(other.toStdString(), runnerOfMerge(other));
    } catch (const base::ContractBreach& breach) {
        return base::Fault{&kInternalDefect, {}, {breach.what()}};
    }
}

base::Result<workbook::MergeReport> WorkbookBridge::merge(const QString& other) {
    if (!m_workbook) {
        return base::Fault{&kNoWorkbookOpen, {}, {}};
    }
    std::optional<workbook::MergeReport> report;
    const base::Outcome done = guarded([&]() -> base::Outcome {
        auto merged = m_workbook->merge(other.toStdString(), runnerOfMerge(other));
        if (!merged) {
            return took(merged.fault(), false);
        }
        report = std::move(*merged);
        return took(report->changes, false);
    });
    if (!done) {
        return done.fault();
    }
    return std::move(*report);
}

base::Outcome WorkbookBridge::choose(const base::Id& conflict, project::ConflictChoice choice) {
    if (!m_workbook) {
        return base::Fault{&kNoWorkbookOpen, {}, {}};
    }
    return guarded([&] { return took(m_workbook->choose(conflict, choice), false); });
}

std::vector<project::MergeConflict> WorkbookBridge::openConflicts() const {
    return workbook::openConflicts(project());
}

std::optional<project::MergeConflict> WorkbookBridge::conflictAt(const base::Id& branch,
                                                                 const base::Id& round) const {
    for (const project::MergeConflict& conflict : project().mergeConflicts()) {
        const project::Reading* reading = project().readings().find(conflict.record);
        if (conflict.choice == project::ConflictChoice::Open && reading != nullptr &&
            reading->branch == branch && reading->round == round) {
            return conflict;
        }
    }
    return std::nullopt;
}

}  // namespace ww::ui
