// The part of the bridge that signs reports.
#include "core/base/expects.h"
#include "core/workbook/report_signing.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

base::Result<project::SignedReport> WorkbookBridge::signReport(const workbook::SigningRequest& request) {
    if (!m_workbook) {
        return base::Fault{&kNoWorkbookOpen, {}, {}};
    }
    std::optional<project::SignedReport> made;
    const base::Outcome done = guarded([&]() -> base::Outcome {
        auto noted = workbook::signReport(*m_workbook, request);
        if (!noted) {
            return noted.fault();
        }
        made = std::move(*noted);
        project::ChangeSet changes;
        changes.put.push_back({project::RecordKind::SignedReport, made->id});
        return took(changes, false);
    });
    if (!done) {
        return done.fault();
    }
    return std::move(*made);
}

}  // namespace ww::ui
