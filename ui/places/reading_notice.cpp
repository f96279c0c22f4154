#include "ui/places/reading_notice.h"

#include "core/balancing/doubt_forms.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kFixOffered{"fix_offered", "{1}. {2}; press Ctrl+U to store {3}"};

}  // namespace

void tellDoubt(WorkbookBridge& bridge, const base::Id& branch) {
    const balancing::Assessment& all = bridge.assessment();
    const std::size_t index = bridge.project().branches().indexOf(branch);
    const balancing::BranchResult& result = all.branches[index];
    for (const balancing::Finding& finding : all.findings) {
        const bool isHere =
            finding.branch == branch && (!finding.reading || finding.reading == result.reading);
        // A meter that is overdue is named in the strip all the time; here it would hide what is wrong with a
        // reading.
        const bool isInStrip = finding.fault.is(balancing::kInstrumentOverdue);
        if (!isHere || isInStrip || finding.severity == balancing::Severity::Note) {
            continue;
        }
        const auto fix = bridge.offeredFix(branch);
        if (fix) {
            const auto bare = [](const base::Fault& fault) {
                QString words = text::sentence(fault);
                words.chop(words.endsWith('.') ? 1 : 0);
                return words.toStdString();
            };
            emit bridge.messageRaised(base::Fault{&kFixOffered,
                                                  bridge.project().branches()[index].tag,
                                                  {bare(finding.fault), bare(fix->why), fix->dp.text()}});
        } else {
            emit bridge.messageRaised(finding.fault);
        }
        return;
    }
    if (bridge.isNobodyChosen()) {
        emit bridge.messageRaised(base::Fault{&kNobodyChosen, {}, {}});
    } else {
        emit bridge.messageCleared();
    }
}

}  // namespace ww::ui
