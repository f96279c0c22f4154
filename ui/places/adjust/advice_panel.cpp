#include "ui/places/adjust/advice_panel.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <numeric>

#include "core/balancing/advice/advice_forms.h"
#include "core/pump_room/speed_not_read.h"
#include "ui/places/column_fit.h"
#include "ui/text/format.h"
#include "ui/text/words.h"
#include "ui/widgets/wrapped_head.h"

namespace ww::ui {
namespace {

constexpr int kWordsStretch = 2;
constexpr int kTableStretch = 3;

QString wholePercent(quantity::Ratio ratio) {
    return QString::number(ratio.in(quantity::Unit::Percent), 'f', 0);
}

/// "96 %"; never a certainty that nobody has. `isBound`: it is at least that.
QString chanceWords(quantity::Ratio chance, bool isBound) {
    constexpr double kMost = 0.99;
    if (chance.si() > kMost) {
        return AdvicePanel::tr("over 99 %");
    }
    if (chance.si() < 1 - kMost && !isBound) {
        return AdvicePanel::tr("under 1 %");
    }
    return isBound ? AdvicePanel::tr("at least %1 %").arg(wholePercent(chance))
                   : AdvicePanel::tr("%1 %").arg(wholePercent(chance));
}

/// Whether the drives of the running pumps have room for the speed that design flow needs.
bool canBeSpedUp(const balancing::PumpAdvice& pump, const project::Project& project) {
    const bool isBelowFull = pump.speedFraction && pump.speedFraction->si() <= 1;
    return isBelowFull &&
           std::all_of(project.pumps().begin(), project.pumps().end(),
                       [](const project::Pump& one) { return !one.isRunning || one.hasDrive; });
}

/// What the pump is found to be once the valves are set. The figures are the decision's alone: a second head
/// or speed from the loop's readings would seem to contradict it.
QString pumpWords(const balancing::PumpAdvice& pump, const project::Project& project) {
    if (pump.isShort()) {
        if (canBeSpedUp(pump, project)) {
            return AdvicePanel::
                tr("The pump makes too little at design flow at its present speed: raise it to about %1 % "
                   "of full speed, by a licensed person and within the limits of the maker. Where that "
                   "does not help, see that the index path is open and that strainers and filters are "
                   "clean. Its figures: Pump, Decision.")
                    .arg(text::percent(*pump.speedFraction));
        }
        return AdvicePanel::tr(
            "The pump makes too little at design flow: see that the index path is open and that strainers "
            "and filters are clean, check speed and impeller. How much it lacks: Pump, Decision.");
    }
    if (pump.excess.si() < 0) {
        return AdvicePanel::tr(
            "Whether the pump is short cannot be told: read its gauges and every terminal again once all "
            "valves are set. Its figures: Pump, Decision.");
    }
    return AdvicePanel::tr(
        "The pump makes enough at design flow. How much too much, and by which speed or impeller to take it "
        "away: Pump, Decision. Change it after the valves are set, by a licensed person and within the "
        "limits of the maker and the local code.");
}

}  // namespace

AdvicePanel::AdvicePanel(const WorkbookBridge& bridge, const LoopAdvisor& advisor, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_advisor(advisor),
      m_model(new AdviceModel(bridge, advisor, this)),
      m_delegate(new BranchDelegate(this)),
      m_table(new QTableView(this)),
      m_status(new WholeLabel(1, this)),
      m_busy(new QLabel(this)),
      m_words(new QLabel(this)),
      m_area(new WordsArea(m_words, tr("About the advice, scrolled"), this)) {
    m_table->setModel(m_model);
    m_table->setItemDelegate(m_delegate);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(false);
    m_table->verticalHeader()->hide();
    m_table->setHorizontalHeader(new WrappedHead(m_table));
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->setAccessibleName(tr("Advised settings in the working order"));
    m_table->setAccessibleDescription(tr("Enter takes the valve in hand at its advised setting"));
    m_table->installEventFilter(this);
    m_table->viewport()->installEventFilter(this);
    m_status->setObjectName(QStringLiteral("panel_title"));
    m_status->setAccessibleName(tr("State of the advice"));
    m_busy->setObjectName(QStringLiteral("panel_head"));
    m_busy->setAccessibleName(tr("Computing"));
    m_busy->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    connect(&m_advisor, &LoopAdvisor::progressed, this, [this](int percent) {
        // Of work that was given up since nothing is said.
        if (m_advisor.isComputing()) {
            m_busy->setText(QString::number(percent) + QChar(0xA0) + '%');
        }
    });
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_words->setAccessibleName(tr("About the advice"));

    auto* head = new QHBoxLayout;
    // Both keep their widths whatever they say.
    for (QLabel* label : std::initializer_list<QLabel*>{m_status, m_busy}) {
        label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    }
    head->addWidget(m_status, 3);
    head->addWidget(m_busy, 1);
    auto* left = new QVBoxLayout;
    left->setSpacing(2);
    left->addLayout(head);
    // A long text scrolls: it must not move what stands above.
    // Both take what is left below the valve in hand, which they must not scroll out of sight.
    m_area->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    m_table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    left->addWidget(m_area, 1);
    m_parts = new QHBoxLayout(this);
    m_parts->setContentsMargins(0, 0, 0, 0);
    m_parts->setSpacing(16);
    m_parts->addLayout(left, kWordsStretch);
    m_parts->addWidget(m_table, kTableStretch);
    connect(m_table, &QTableView::doubleClicked, this,
            [this](const QModelIndex& index) { emit taken(m_model->branchAt(index.row())); });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &AdvicePanel::showWords);
}

void AdvicePanel::setTokens(const theme::Tokens& tokens) {
    m_delegate->setTokens(tokens);
    m_table->viewport()->update();
}

void AdvicePanel::setMetrics(const theme::Metrics& metrics) {
    m_table->verticalHeader()->setMinimumSectionSize(20);
    m_table->verticalHeader()->setDefaultSectionSize(metrics.rowHeight - 2);
    constexpr int kLeastRows = 2;
    constexpr int kHeadLines = 2;
    m_table->setMinimumHeight(kHeadLines * fontMetrics().height() + kLeastRows * metrics.rowHeight);
    fitColumns();
}

void AdvicePanel::fitColumns() {
    constexpr int kDigits[AdviceModel::ColumnCount] = {3, 7, 5, 6, 6, 8, 8, 12};
    // What gives way first; the remark of the row in hand is also said in full beside the table.
    constexpr int kYielding[] = {AdviceModel::Order, AdviceModel::InTruth, AdviceModel::Note,
                                 AdviceModel::AsRead};
    const int room = m_table->viewport()->width();
    std::array<int, AdviceModel::ColumnCount> leastOf{};
    for (int column = 0; column < AdviceModel::ColumnCount; ++column) {
        m_table->setColumnHidden(column, false);
        leastOf[column] = leastColumnWidth(*m_table, column);
    }
    int needed = std::accumulate(leastOf.begin(), leastOf.end(), 0);
    m_tableNeeds = needed;
    for (const int column : kYielding) {
        // The words go above the table before the share that will be read goes.
        m_tableNeeds -= column == AdviceModel::AsRead ? 0 : leastOf[column];
        if (needed > room) {
            m_table->setColumnHidden(column, true);
            needed -= leastOf[column];
        }
    }
    placeTable();
    std::vector<int> shown;
    std::vector<int> least;
    std::vector<double> wanted;
    for (int column = 0; column < AdviceModel::ColumnCount; ++column) {
        if (!m_table->isColumnHidden(column)) {
            shown.push_back(column);
            least.push_back(leastOf[column]);
            wanted.push_back(std::max({leastOf[column], columnWidthFor(*m_table, column, kDigits[column]),
                                       wordsColumnWidth(*m_table, column)}));
        }
    }
    const std::vector<int> widths = sharedOut(least, wanted, room, shown.size() - 1);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        m_table->setColumnWidth(shown[i], widths[i]);
    }
    heightenWhereCut(*m_table);
}

void AdvicePanel::placeTable() {
    const int room = (width() - m_parts->spacing()) * kTableStretch / (kTableStretch + kWordsStretch);
    const int beside = 2 * m_table->frameWidth() + m_table->verticalScrollBar()->sizeHint().width();
    m_parts->setDirection(m_tableNeeds + beside > room ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void AdvicePanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    placeTable();
}

std::optional<base::Id> AdvicePanel::branchInHand() const {
    const QModelIndex current = m_table->currentIndex();
    return current.isValid() && current.row() < m_model->rowCount()
               ? std::optional(m_model->branchAt(current.row()))
               : std::nullopt;
}

QString AdvicePanel::words() const {
    return m_status->text() + QStringLiteral(". ") + m_words->text();
}

void AdvicePanel::setWork(std::vector<std::size_t> order, bool isChanged,
                          const std::optional<base::Id>& offered) {
    m_isOrderChanged = isChanged;
    m_model->setWork(std::move(order), offered);
}

void AdvicePanel::refresh(const std::optional<base::Id>& branch,
                          const std::optional<balancing::AdviceBesideWord>& beside) {
    m_reason = beside ? beside->reason : std::nullopt;
    m_model->setInHand(branch, beside ? std::optional(beside->stand) : std::nullopt);
    const auto chosen = m_table->hasFocus() ? branchInHand() : branch;
    const auto* before = m_model->shown();
    m_model->refresh();
    if (m_model->shown() != before) {
        fitColumns();
    }
    if (chosen) {
        const int row = m_model->rowOf(*chosen);
        if (row >= 0) {
            m_table->setCurrentIndex(m_model->index(row, AdviceModel::Tag));
        } else {
            m_table->clearSelection();
            m_table->setCurrentIndex({});
        }
    }
    m_busy->setText(m_advisor.isComputing() ? tr("computing…") : QString());
    showWords();
}

/// In a large job thousands may say alike, one a terminal.
void AdvicePanel::addSome(QStringList& lines, const std::vector<base::Fault>& faults) {
    constexpr std::size_t kMost = 8;
    const std::size_t shown = faults.size() > kMost ? kMost - 1 : faults.size();
    for (std::size_t i = 0; i < shown; ++i) {
        lines << text::text(faults[i]);
    }
    if (shown < faults.size()) {
        lines << tr("and %n more", nullptr, static_cast<int>(faults.size() - shown));
    }
}

void AdvicePanel::showWords() {
    const LoopPicture* picture = m_model->shown();
    if (picture == nullptr) {
        m_status->setWords(tr("No advice yet"));
        m_words->setText(m_advisor.isComputing()
                             ? QString()
                             : tr("Read the survey first: the advice is made from its readings."));
        return;
    }
    const balancing::Advice& advice = picture->advice;
    QStringList lines;
    switch (advice.status) {
        case balancing::AdviceStatus::NotReady:
            m_status->setWords(tr("Advice not ready"));
            break;
        case balancing::AdviceStatus::Unverified:
            m_status->setWords(tr("Advice, unverified"));
            break;
        case balancing::AdviceStatus::Verified:
            m_status->setWords(tr("Shares confirmed by a round"));
            break;
    }
    // Until the newest reading is learned from, the settings are those of the readings before it.
    if (m_advisor.isComputing()) {
        m_status->setWords(tr("Advice of earlier readings"));
    }
    if (m_reason) {
        lines << text::text(*m_reason);
    }
    addSome(lines, advice.whyNot);
    // Of readings that the loop does not explain no chance can be told: a note below says so.
    for (const balancing::IndexStep& step : advice.indexSteps) {
        if (m_reason != step.why) {
            lines << text::text(step.why);
        }
    }
    if (advice.status == balancing::AdviceStatus::Verified && !advice.indexSteps.empty()) {
        lines << text::sentence(base::Fault{&balancing::kAdviceSharesVerified, {}, {}});
    } else if (advice.status == balancing::AdviceStatus::Verified) {
        lines << text::sentence(base::Fault{&balancing::kAdviceVerified, {}, {}});
    } else if (advice.isReady() && !advice.settings.empty() && !picture->learned.isMisfit) {
        const QString band = QString::fromStdString(m_bridge.project().job().matchingBand.digits.text());
        lines << tr("Once all are set as advised: chance that every share reads within ±%1 % of target: %2; "
                    "that it truly is, with the errors of the valve tables: %3.")
                     .arg(band, chanceWords(advice.indicatedProbability, advice.isProbabilityBound),
                          chanceWords(advice.actualProbability, advice.isProbabilityBound));
    }
    if (advice.helpful) {
        lines << tr("Helps most: %1").arg(text::text(advice.helpful->why));
    }
    if (const auto branch = branchInHand(); branch && advice.isReady()) {
        for (const base::Fault& note : m_model->at(m_model->rowOf(*branch)).notes) {
            lines << text::text(note);
        }
    }
    if (advice.pump) {
        lines << pumpWords(*advice.pump, m_bridge.project());
        if (const auto speed = pump_room::speedNotRead(m_bridge.project(), m_bridge.assessment())) {
            lines << text::text(*speed);
        }
    }
    if (picture->learned.fits != nullptr) {
        addSome(lines, picture->learned.faults);
    }
    addSome(lines, advice.notes);
    if (!advice.settings.empty()) {
        lines
            << (m_isOrderChanged
                    ? tr("Working order: changed here by hand; Ctrl+Alt+B goes back to the advised one.")
                    : tr("Working order: the riser farthest over its target first, in it the valve farthest "
                         "over, its own valve last."));
    }
    m_words->setText(lines.join('\n'));
    m_words->setToolTip(m_words->text());
}

bool AdvicePanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_table && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
            if (const auto branch = branchInHand();
                branch && !key->modifiers().testFlag(Qt::ControlModifier)) {
                emit taken(*branch);
                return true;
            }
        }
        if (key->key() == Qt::Key_Escape || key->key() == Qt::Key_F6) {
            emit left();
            return true;
        }
    }
    if (watched == m_table && event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_F6) {
        event->accept();
        return true;
    }
    if (watched == m_table->viewport() && event->type() == QEvent::Resize) {
        fitColumns();
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace ww::ui
