#include "ui/places/reading_notice.h"

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/doubt_forms.h"
#include "core/balancing/history.h"
#include "core/balancing/verdict_forms.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// The hand rests: longer than between two keys, shorter than the way to the next valve.
constexpr int kRestMilliseconds = 150;

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

/// Whether valves are being turned in the round: it is open and holds tries.
bool isBeingTurned(const project::Project& project, const base::Id& id) {
    const project::Round& round = project.rounds().at(id);
    return round.state == project::RoundState::Open && balancing::isReadValveByValve(project, round);
}

/// What compares the shares of valves, each as it was read.
bool comparesShares(const base::Fault& fault) {
    return fault.is(balancing::kSpreadWide) || fault.is(balancing::kIndexRival) ||
           fault.is(balancing::kIndexRivalUndecided);
}

/// The first doubt about the counting reading; nothing where there is none.
const balancing::Finding* doubtAt(const WorkbookBridge& bridge, const LoopAdvisor& advisor,
                                  const balancing::Assessment& all, const base::Id& branch) {
    const std::size_t index = bridge.project().branches().indexOf(branch);
    const LoopPicture* picture = advisor.picture();
    const auto& counting = all.branches[index].reading;
    const project::Reading* reading = counting ? bridge.project().readings().find(*counting) : nullptr;
    const bool isTry = reading != nullptr && (reading->purpose == project::ReadingPurpose::Try ||
                                              reading->purpose == project::ReadingPurpose::Hold);
    // Shares of valves read one by one while others were turned tell nothing before the round is closed.
    const bool isTurned = all.round && isBeingTurned(bridge.project(), *all.round);
    for (const balancing::Finding& finding : all.findings) {
        const bool isHere =
            finding.branch == branch && (!finding.reading || finding.reading == all.branches[index].reading);
        // The word of a try says what its valve is turned to; else the advice does where there is any.
        const bool asksToOpen = finding.fault.is(balancing::kReferenceThrottled) ||
                                finding.fault.is(balancing::kIndexValveThrottled) ||
                                finding.fault.is(balancing::kGroupWithoutOpenValve);
        const bool isSaidOtherwise =
            asksToOpen && (isTry || (picture != nullptr && balancing::throttles(picture->advice, index)));
        const bool isEarly = isTurned && comparesShares(finding.fault);
        if (isHere && !isSaidOtherwise && !isEarly && finding.severity != balancing::Severity::Note) {
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

ReadingNotice::ReadingNotice(WorkbookBridge& bridge, const LoopAdvisor& advisor, QObject* parent)
    : QObject(parent), m_bridge(bridge), m_advisor(advisor) {
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMilliseconds);
    connect(&m_rest, &QTimer::timeout, this, &ReadingNotice::tellRest);
}

bool ReadingNotice::isSaid(const balancing::Assessment& all, const base::Id& branch, bool hasOpenedRound) {
    const balancing::Finding* doubt = doubtAt(m_bridge, m_advisor, all, branch);
    if (doubt == nullptr) {
        return false;
    }
    base::Fault told = withCure(m_bridge, doubt->fault, branch);
    if (told.is(kReadAgainOffered)) {
        m_offeredAgain = branch;
    }
    if (hasOpenedRound) {
        told = base::Fault{&kRoundOpenedAndDoubt,
                           m_bridge.project().branches().at(branch).tag,
                           {std::to_string(all.roundNumber), text::sentence(told).toStdString()}};
    }
    emit m_bridge.messageRaised(told);
    return true;
}

bool ReadingNotice::tell(const base::Id& branch, bool hasOpenedRound) {
    m_told.reset();
    m_offeredAgain.reset();
    m_rest.stop();
    const balancing::Assessment& all = m_bridge.assessment();
    if (isSaid(all, branch, hasOpenedRound)) {
        return true;
    }
    if (hasOpenedRound) {
        emit m_bridge.messageRaised(base::Fault{&kRoundOpenedByTry, {}, {std::to_string(all.roundNumber)}});
    } else if (m_bridge.isNobodyChosen()) {
        emit m_bridge.messageRaised(base::Fault{&kNobodyChosen, {}, {}});
    } else {
        emit m_bridge.messageCleared();
    }
    if (const auto reading = all.branches[m_bridge.project().branches().indexOf(branch)].reading) {
        m_told = Told{branch, *reading, hasOpenedRound};
        m_rest.start();
    }
    return false;
}

void ReadingNotice::tellRest() {
    const std::optional<std::size_t> index =
        m_told ? m_bridge.project().branches().findIndex(m_told->branch) : std::nullopt;
    // Undone, struck or read again, it has nothing to say any more.
    if (index && m_bridge.assessment().branches[*index].reading == m_told->reading) {
        isSaid(m_bridge.assessmentInFull(), m_told->branch, m_told->hasOpenedRound);
    }
    m_told.reset();
}

}  // namespace ww::ui
