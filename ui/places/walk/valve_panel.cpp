#include "ui/places/walk/valve_panel.h"

#include <QScrollBar>
#include <QVBoxLayout>

#include "core/balancing/standing_readings.h"
#include "core/project/review.h"
#include "ui/places/reading_fix.h"
#include "ui/places/walk/note_panel.h"
#include "ui/text/conflict_text.h"
#include "ui/text/format.h"
#include "ui/text/words.h"
#include "ui/widgets/shown_refresh.h"

namespace ww::ui {

ValvePanel::ValvePanel(WorkbookBridge& bridge, const LoopAdvisor& advisor, AssessedRounds& rounds,
                       QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_advisor(advisor),
      m_rounds(rounds),
      m_tag(new QLabel(this)),
      m_serves(new QLabel(this)),
      m_facts(new QLabel(this)),
      m_byRound(new QLabel(this)),
      m_sparkline(new Sparkline(this)),
      m_reading(new QLabel(this)),
      m_leftOut(new QLabel(this)),
      m_learned(new QLabel(this)),
      m_comments(new QLabel(this)),
      m_notes(new QLabel(this)),
      m_noteButton(new QPushButton(this)) {
    // What is said of the valve scrolls where the window is low: it takes no room from the totals and from
    // closing the round.
    auto* content = new QWidget(this);
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    m_area = new WordsArea(content, tr("About the valve in hand, scrolled"), this);
    // A stop of Tab only while there is something to scroll.
    m_area->setFocusPolicy(Qt::NoFocus);
    connect(m_area->verticalScrollBar(), &QScrollBar::rangeChanged, m_area, [this](int least, int most) {
        m_area->setFocusPolicy(most > least ? Qt::TabFocus : Qt::NoFocus);
    });
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_area);
    auto* roundHead = new QLabel(tr("Of target by round, %"), this);
    roundHead->setObjectName(QStringLiteral("panel_head"));
    auto* readingHead = new QLabel(tr("This reading"), this);
    readingHead->setObjectName(QStringLiteral("panel_head"));
    for (QLabel* label :
         {m_tag, m_serves, m_facts, m_byRound, m_reading, m_leftOut, m_learned, m_comments, m_notes}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    }
    m_tag->setAccessibleName(tr("Valve in hand"));
    m_facts->setAccessibleName(tr("Design and valve"));
    m_byRound->setAccessibleName(tr("Of target by round"));
    m_sparkline->setAccessibleName(tr("Of target by round, drawn"));
    m_reading->setAccessibleName(tr("Reading as entered"));
    m_leftOut->setAccessibleName(tr("What the grid has no room for"));
    m_leftOut->hide();
    m_learned->setAccessibleName(tr("Reading against the learned loop"));
    m_comments->setAccessibleName(tr("Open comments"));
    m_notes->setAccessibleName(tr("Notes of the valve in hand"));
    for (QWidget* widget : std::initializer_list<QWidget*>{m_tag, m_serves, m_facts, roundHead, m_sparkline,
                                                           m_byRound, readingHead, m_reading, m_leftOut,
                                                           m_comments, m_notes, m_noteButton, m_learned}) {
        layout->addWidget(widget);
    }
    layout->addStretch(1);
    connect(m_noteButton, &QPushButton::clicked, this, &ValvePanel::notesWanted);
    // All rounds are judged for it: only where it is seen.
    auto* shown = new ShownRefresh(this, [this] { showBranch(); });
    connect(&bridge, &WorkbookBridge::changed, shown, &ShownRefresh::want);
    connect(&bridge, &WorkbookBridge::branchSelected, shown, &ShownRefresh::want);
    connect(&advisor, &LoopAdvisor::changed, this, &ValvePanel::showLearned);
}

void ValvePanel::setTokens(const theme::Tokens& tokens, const theme::Metrics& metrics) {
    m_sparkline->setTokens(tokens);
    QFont large = font();
    large.setPointSizeF(metrics.textPoints * 1.6);
    large.setBold(true);
    m_tag->setFont(large);
}

void ValvePanel::setLeftOut(const QStringList& values) {
    m_leftOut->setText(values.join(QStringLiteral("   ")));
    m_leftOut->setVisible(!values.isEmpty());
}

QString ValvePanel::valveText(const project::Branch& branch, const balancing::BranchResult& result) const {
    const project::Project& project = m_bridge.project();
    const project::ValveModel* valve = branch.valve ? project.valves().find(*branch.valve) : nullptr;
    if (valve == nullptr) {
        return text::word(branch.kind);
    }
    QString words =
        tr("valve %1 %2").arg(QString::fromStdString(valve->model), QString::fromStdString(valve->size));
    const curve::ValveCharacteristic* curve = project.characteristic(valve->id);
    if (curve != nullptr && result.setting) {
        words +=
            '\n' + tr("setting %1 of %2 %3%4")
                       .arg(text::setting(*result.setting, project, branch),
                            text::setting(curve->fullyOpen(), project, branch), text::nameOf(valve->scale),
                            result.isFullyOpen ? tr(", fully open") : QString());
    }
    if (valve->minimumDp) {
        words += '\n' + tr("readable from %1").arg(text::entered(valve->minimumDp));
    }
    return words;
}

QString ValvePanel::readingText(const project::Reading* reading) const {
    if (reading == nullptr) {
        return tr("not read in this round");
    }
    QStringList parts;
    if (reading->cannotBeRead) {
        parts << tr("cannot be read");
    }
    if (reading->dp) {
        parts << text::entered(reading->dp);
    }
    if (reading->flow) {
        parts << text::entered(reading->flow);
    }
    if (reading->time) {
        parts << text::timeOf(*reading->time, m_bridge.now());
    }
    const project::Instrument* meter =
        reading->instrument ? m_bridge.project().instruments().find(*reading->instrument) : nullptr;
    if (meter != nullptr) {
        parts << QString::fromStdString(meter->tag);
    }
    QString words = parts.join(QStringLiteral("  "));
    if (reading->isDoubtful) {
        words += '\n' + tr("marked doubtful");
    }
    if (!reading->reason.empty()) {
        words += '\n' + tr("reason: %1").arg(text::reason(reading->reason));
    }
    return words;
}

QString ValvePanel::commentText(const base::Id& branch) const {
    QStringList lines;
    for (const project::Comment& comment : m_bridge.project().comments()) {
        if (comment.branch != branch || comment.answers || comment.isResolved) {
            continue;
        }
        lines << tr("Open comment: %1, %2: %3")
                     .arg(QString::fromStdString(
                              balancing::placeText(m_bridge.project(), comment, text::wording())),
                          QString::fromStdString(comment.person), QString::fromStdString(comment.text));
        for (const project::Comment* answer : project::answersTo(m_bridge.project(), comment.id)) {
            lines << QStringLiteral("   %1: %2")
                         .arg(QString::fromStdString(answer->person), QString::fromStdString(answer->text));
        }
    }
    return lines.join('\n');
}

void ValvePanel::showBranch() {
    const project::Project& project = m_bridge.project();
    const auto selected = m_bridge.selectedBranch();
    const project::Branch* branch = selected ? project.branches().find(*selected) : nullptr;
    m_noteButton->setEnabled(branch != nullptr);
    m_noteButton->setText(
        tr("Notes, photos (%1)").arg(branch != nullptr ? noteCount(m_bridge, branch->id) : 0));
    showLearned();
    if (branch == nullptr) {
        m_tag->setText(tr("No valve in hand"));
        for (QLabel* label : {m_serves, m_facts, m_byRound, m_reading, m_comments, m_notes}) {
            label->clear();
        }
        m_sparkline->setRatios({}, 0.05);
        return;
    }
    const std::size_t index = project.branches().indexOf(branch->id);
    const balancing::BranchResult& result = m_bridge.assessment().branches[index];
    m_comments->setText(commentText(branch->id));
    m_comments->setVisible(!m_comments->text().isEmpty());
    m_tag->setText(QString::fromStdString(branch->tag));
    m_serves->setText(QString::fromStdString(branch->serves));
    m_facts->setText(tr("design %1 %2")
                         .arg(text::flow(result.designFlow, project), text::symbol(text::flowUnit(project))) +
                     '\n' + valveText(*branch, result));
    const project::Round* round = project.lastRound();
    const project::Reading* reading =
        round != nullptr ? balancing::countingReading(project, round->id, branch->id) : nullptr;
    m_reading->setText(readingText(reading));
    QStringList notes;
    if (reading != nullptr && !reading->note.empty()) {
        notes << QString::fromStdString(reading->note);
    }
    if (!branch->notes.empty()) {
        notes << QString::fromStdString(branch->notes);
    }
    m_notes->setText(notes.join('\n'));
    m_notes->setVisible(!notes.isEmpty());
    showByRound(index);
}

void ValvePanel::showByRound(std::size_t branch) {
    const project::Project& project = m_bridge.project();
    QStringList words;
    std::vector<std::optional<double>> ratios;
    const project::Round* last = project.lastRound();
    for (const std::size_t i : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[i];
        const bool isLast = last != nullptr && round.id == last->id;
        const balancing::Assessment& judged = isLast ? m_bridge.assessment() : m_rounds.of(round.id);
        const balancing::BranchResult& result = judged.branches[branch];
        const bool isShown = result.ofTarget && !result.isFromEarlierRound;
        ratios.push_back(isShown ? std::optional(result.ofTarget->si()) : std::nullopt);
        const QString share = isShown ? text::ofTarget(*result.ofTarget, m_bridge.project()) : QChar(0x2013);
        words << tr("Rd %1:", "round, short").arg(round.number).replace(' ', QChar(QChar::Nbsp)) +
                     QChar(QChar::Nbsp) + (isShown && !judged.isComplete ? "~" : "") + share;
    }
    m_byRound->setText(words.join(QStringLiteral("   ")));
    m_sparkline->setAccessibleDescription(m_byRound->text());
    m_sparkline->setRatios(std::move(ratios), project.job().matchingBand.value.si());
}

void ValvePanel::showLearned() {
    const auto selected = m_bridge.selectedBranch();
    const balancing::DoubtfulReading* doubtful =
        selected ? doubtfulAt(m_advisor, m_bridge.project(), *selected) : nullptr;
    if (doubtful == nullptr) {
        const project::Round* round = m_bridge.project().lastRound();
        const auto shifts = round != nullptr ? shiftsOf(m_advisor, m_bridge.project(), round->id)
                                             : std::vector<base::Fault>();
        m_learned->setText(shifts.empty() ? QString() : text::sentence(shifts.front()));
        return;
    }
    const bool hasFix = learnedFix(m_bridge.project(), *doubtful).has_value();
    m_learned->setText(
        text::sentence(doubtful->why) + '\n' +
        (hasFix ? tr("Ctrl+U takes what explains it, Ctrl+R reads again.") : tr("Ctrl+R reads again.")));
}

}  // namespace ww::ui
