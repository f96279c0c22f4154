// The rounds that the place Review lists, and how their shares came together.
#include <QSignalBlocker>
#include <algorithm>
#include <iterator>

#include "core/balancing/round_facts.h"
#include "core/project/review.h"
#include "ui/charts/convergence_chart_data.h"
#include "ui/places/review/review_place.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// The state of a round and, below it, the day on which its walk began.
QString stateAndDay(const project::Project& project, const project::Round& round) {
    const auto begin = project::beginOf(project, round.id);
    const QString state = text::nameOf(round.state);
    return begin ? state + '\n' + QString::fromStdString(begin->date()) : state;
}

/// How many are on share and, below it while terminals are unread, how many are read.
QString onShareAndRead(const balancing::ShareCount& count) {
    const QString onShare = text::onShare(count);
    return count.isComplete() ? onShare : onShare + '\n' + ReviewPlace::tr("%1 read").arg(count.read);
}

/// How far the shares lie apart; `none` while no terminal was read in the round itself.
QString spreadText(const balancing::Assessment& round, const QString& none) {
    return round.spread && balancing::shareCount(round).read > 0 ? text::percent(*round.spread) : none;
}

QString listed(const std::vector<std::string>& names) {
    QStringList all;
    std::transform(names.begin(), names.end(), std::back_inserter(all), QString::fromStdString);
    return all.join(QStringLiteral(", "));
}

}  // namespace

bool ReviewPlace::isLarge() const {
    // Judging as many terminals takes some 10 ms.
    constexpr std::size_t kAtOnce = 5'000;
    const project::Project& project = m_bridge.project();
    return project.branches().size() * project.rounds().size() > kAtOnce;
}

void ReviewPlace::refreshRounds() {
    const project::Project& project = m_bridge.project();
    std::vector<TextRow> rows;
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        const auto open = project::openComments(project, round.id).size();
        TextRow row;
        row.id = round.id;
        row.cells = {
            QString::number(round.number) + (open > 0 ? QStringLiteral("  !%1").arg(open) : QString()),
            stateAndDay(project, round)};
        if (isLarge() && !m_assessed.isJudged(round.id)) {
            row.cells << QString(QChar(0x2026));
            m_judging.start();
        } else {
            const balancing::Assessment& all = m_assessed.shown(round.id);
            row.cells << onShareAndRead(balancing::shareCount(all)) << spreadText(all, QString());
        }
        rows.push_back(std::move(row));
    }
    const QSignalBlocker blocker(m_roundTable->selectionModel());
    m_rounds->setRows(std::move(rows));
    if (const auto after = chosenRound(m_after)) {
        m_roundTable->setCurrentIndex(m_rounds->index(m_rounds->rowOf(*after), 0));
    }
    if (m_isComparisonWaiting) {
        m_judging.start();
    }
    fitRounds();
    refreshStrip();
}

void ReviewPlace::showRoundFacts() {
    const auto id = chosenRound(m_after);
    if (!id || (isLarge() && !m_assessed.isJudged(*id))) {
        m_roundFacts->setWords({});
        return;
    }
    const balancing::Assessment& round = m_assessed.shown(*id);
    const balancing::RoundFacts facts = balancing::roundFacts(m_bridge.project(), round);
    QStringList parts{tr("Round %1").arg(round.roundNumber)};
    if (!facts.readers.empty()) {
        parts << tr("by %1").arg(listed(facts.readers));
    }
    if (!facts.meters.empty()) {
        parts << tr("meter %1").arg(listed(facts.meters));
    }
    parts << tr("%n doubtful", nullptr, static_cast<int>(facts.doubtful))
          << tr("%n corrected", nullptr, static_cast<int>(facts.corrected));
    m_roundFacts->setWords(parts.join(QStringLiteral(", ")));
}

std::vector<base::Id> ReviewPlace::compared() const {
    std::vector<base::Id> rounds;
    for (const QuietCombo* combo : {m_after, m_before}) {
        if (const auto id = chosenRound(combo)) {
            rounds.push_back(*id);
        }
    }
    return rounds;
}

void ReviewPlace::judgeNext() {
    std::vector<base::Id> rounds = compared();
    if (m_isComparisonWaiting && areJudged(rounds)) {
        refreshComparison();
        m_judging.start();
        return;
    }
    const auto order = m_bridge.project().roundsByNumber();
    std::for_each(order.rbegin(), order.rend(),
                  [&](std::size_t index) { rounds.push_back(m_bridge.project().rounds()[index].id); });
    const auto next = std::find_if(rounds.begin(), rounds.end(),
                                   [this](const base::Id& id) { return !m_assessed.isJudged(id); });
    if (next != rounds.end()) {
        m_assessed.of(*next);
        refreshRounds();
    }
}

std::vector<base::Id> ReviewPlace::ownRounds() const {
    std::vector<base::Id> own;
    for (const std::size_t index : m_bridge.project().roundsByNumber()) {
        const project::Round& round = m_bridge.project().rounds()[index];
        if (round.kind != project::RoundKind::Witness) {
            own.push_back(round.id);
        }
    }
    return own;
}

bool ReviewPlace::areJudged(const std::vector<base::Id>& rounds) const {
    return std::all_of(rounds.begin(), rounds.end(),
                       [this](const base::Id& id) { return m_assessed.isJudged(id); });
}

/// How the shares came together round by round.
void ReviewPlace::refreshStrip() {
    const std::vector<base::Id> rounds = ownRounds();
    if (!areJudged(rounds)) {
        m_spread->setText(tr("Judging the rounds…"));
        return;
    }
    QStringList spreads;
    QStringList counts;
    balancing::ShareCount count;
    for (const base::Id& id : rounds) {
        const balancing::Assessment& round = m_assessed.shown(id);
        count = balancing::shareCount(round);
        const QString number = QString::number(round.roundNumber);
        const QString none(QChar(0x2013));
        spreads << tr("Rd %1: %2").arg(number, spreadText(round, none));
        counts << tr("Rd %1: %2").arg(number, count.onShare ? QString::number(*count.onShare) : none);
    }
    m_spread->setText(rounds.empty()
                          ? QString()
                          : tr("Spread, %: %1.   On share: %2 of %3.")
                                .arg(spreads.join(QStringLiteral("   ")), counts.join(QStringLiteral("   ")),
                                     QString::number(count.all)));
    m_chartShown->want();
}

void ReviewPlace::drawConvergence() {
    const std::vector<base::Id> ids = ownRounds();
    const std::pair drawn(m_assessed.edition(), m_bridge.selectedBranch());
    if (m_drawn == drawn || !areJudged(ids)) {
        return;  // refreshStrip() asks for it again once they are
    }
    std::vector<const balancing::Assessment*> rounds;
    for (const base::Id& id : ids) {
        rounds.push_back(&m_assessed.shown(id));
    }
    m_drawn = drawn;
    m_convergence->setFigure(charts::convergenceChartOver(m_bridge.project(), rounds, drawn.second));
}

}  // namespace ww::ui
