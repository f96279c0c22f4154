#include "ui/places/reading_notice.h"

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/doubt_forms.h"
#include "core/balancing/verdict_forms.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kFixOffered{"fix_offered", "{1}. {2}; press Ctrl+U to store {3}"};
constexpr base::MessageForm kFixOfDoubt{"fix_of_doubt", "{1}; press Ctrl+U to store {2}"};
constexpr base::MessageForm kReadAgainOffered{"read_again_offered", "{1}; press Ctrl+R to read it again"};
constexpr base::MessageForm kRoundOpenedAndDoubt{"round_opened_and_doubt",
                                                 "round {1} opened; look at this first: {2}"};

/// As a sentence without its full stop, to stand before another.
std::string bare(const base::Fault& fault) {
    QString words = text::sentence(fault);
    words.chop(words.endsWith('.') ? 1 : 0);
    return words.toStdString();
}

/// The first doubt about the counting reading; nothing where there is none.
const balancing::Finding* doubtAt(const WorkbookBridge& bridge, const LoopAdvisor& advisor,
                                  const base::Id& branch) {
    const balancing::Assessment& all = bridge.assessment();
    const std::size_t index = bridge.project().branches().indexOf(branch);
    const LoopPicture* picture = advisor.picture();
    const auto& counting = all.branches[index].reading;
    const project::Reading* reading = counting ? bridge.project().readings().find(*counting) : nullptr;
    const bool isTry = reading != nullptr && (reading->purpose == project::ReadingPurpose::Try ||
                                              reading->purpose == project::ReadingPurpose::Hold);
    for (const balancing::Finding& finding : all.findings) {
        const bool isHere =
            finding.branch == branch && (!finding.reading || finding.reading == all.branches[index].reading);
        // A meter that is overdue is named in the strip all the time; here it would hide what is wrong with a
        // reading.
        const bool isInStrip = finding.fault.is(balancing::kInstrumentOverdue);
        // The word of a try says what its valve is turned to; else the advice does where there is any.
        const bool asksToOpen = finding.fault.is(balancing::kReferenceThrottled) ||
                                finding.fault.is(balancing::kIndexValveThrottled) ||
                                finding.fault.is(balancing::kGroupWithoutOpenValve);
        const bool isSaidOtherwise =
            asksToOpen && (isTry || (picture != nullptr && balancing::throttles(picture->advice, index)));
        if (isHere && !isInStrip && !isSaidOtherwise && finding.severity != balancing::Severity::Note) {
            return &finding;
        }
    }
    return nullptr;
}

base::Fault withCure(WorkbookBridge& bridge, const base::Fault& doubt, const base::Id& branch) {
    const std::string& tag = bridge.project().branches().at(branch).tag;
    if (const auto fix = bridge.offeredFix(branch)) {
        // The reason of the fix is not said twice.
        return fix->why.is(*doubt.form)
                   ? base::Fault{&kFixOfDoubt, tag, {bare(doubt), fix->dp.text()}}
                   : base::Fault{&kFixOffered, tag, {bare(doubt), bare(fix->why), fix->dp.text()}};
    }
    if (doubt.is(balancing::kAboveInstrumentRange)) {
        return {&kReadAgainOffered, tag, {bare(doubt)}};
    }
    return doubt;
}

}  // namespace

bool tellDoubt(WorkbookBridge& bridge, const LoopAdvisor& advisor, const base::Id& branch,
               bool hasOpenedRound) {
    const balancing::Finding* doubt = doubtAt(bridge, advisor, branch);
    const project::Round* round = bridge.project().lastRound();
    const std::string number = round != nullptr ? std::to_string(round->number) : std::string();
    if (doubt == nullptr) {
        if (hasOpenedRound) {
            emit bridge.messageRaised(base::Fault{&kRoundOpenedByTry, {}, {number}});
        } else if (bridge.isNobodyChosen()) {
            emit bridge.messageRaised(base::Fault{&kNobodyChosen, {}, {}});
        } else {
            emit bridge.messageCleared();
        }
        return false;
    }
    base::Fault told = withCure(bridge, doubt->fault, branch);
    if (hasOpenedRound) {
        told = base::Fault{&kRoundOpenedAndDoubt,
                           bridge.project().branches().at(branch).tag,
                           {number, text::sentence(told).toStdString()}};
    }
    emit bridge.messageRaised(told);
    return true;
}

}  // namespace ww::ui
