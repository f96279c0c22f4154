// The parts of the place Walk and where they stand. What they show is in walk_place.cpp.
#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/charts/chart_view.h"
#include "ui/places/walk/walk_place.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/laid_out_later.h"
#include "ui/widgets/measured_label.h"

namespace ww::ui {
namespace {

/// Between the grid and what stands beside it, px.
constexpr int kBesideGrid = 16;

}  // namespace

WalkPlace::WalkPlace(WorkbookBridge& bridge, const LoopAdvisor& advisor, AssessedRounds& rounds,
                     QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_advisor(advisor),
      m_rounds(rounds),
      m_model(new WalkModel(bridge, this)),
      // Each made where it stands: a widget that moves into another is given its look again.
      m_content(new CurrentStack(this)),
      m_gridPage(new QWidget(m_content)),
      m_grid(new WalkGrid(*m_model, m_gridPage)),
      m_empty(new QLabel(m_content)),
      m_totals(new MeasuredLabel(m_gridPage)),
      m_findLine(new QWidget(this)),
      m_find(new HintedField(tr("tag or number"), m_findLine)),
      m_side(new CurrentStack(this)),
      m_valve(new ValvePanel(bridge, advisor, rounds, m_side)),
      m_roundButton(new QPushButton(this)) {
    setAccessibleName(tr("Walk"));
    setAcceptDrops(true);
    buildLayout();
    m_grid->setStore([this](const QModelIndex& cell, const QString& text) { return store(cell, text); });
    m_grid->setStoresSameText([this](const QModelIndex& cell) { return isReadAnew(cell); });
    connect(m_grid, &EntryTable::enteredAtEnd, this,
            [this] { m_roundButton->setFocus(Qt::OtherFocusReason); });
    connect(m_grid->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current, const QModelIndex& previous) {
                if (current.isValid() && current.row() != previous.row()) {
                    m_bridge.selectBranch(m_model->branchAt(current.row()));
                    emit hintChanged();
                }
                if (m_askedAgain && m_askedAgain != m_bridge.selectedBranch()) {
                    m_repeatBranch.reset();
                    m_askedAgain.reset();
                    emit m_bridge.messageCleared();
                }
            });
    connect(m_model, &QAbstractItemModel::modelReset, this, &WalkPlace::findRoom);
    const auto tellLeftOut = [this] { m_valve->setLeftOut(m_grid->leftOut()); };
    connect(m_grid, &WalkGrid::columnsFitted, m_valve, tellLeftOut);
    connect(m_grid->selectionModel(), &QItemSelectionModel::currentRowChanged, m_valve, tellLeftOut);
    connect(m_model, &QAbstractItemModel::dataChanged, m_valve, tellLeftOut);
    connect(&bridge, &WorkbookBridge::changed, this, &WalkPlace::refresh);
    connect(&bridge, &WorkbookBridge::branchSelected, this, [this] {
        const auto branch = m_bridge.selectedBranch();
        if (branch &&
            (!m_grid->currentIndex().isValid() || m_model->branchAt(m_grid->currentRow()) != *branch)) {
            showBranch(*branch);
        }
    });
    connect(&advisor, &LoopAdvisor::changed, this, &WalkPlace::refreshTotals);
    connect(m_find, &QLineEdit::returnPressed, this, &WalkPlace::jump);
    connect(m_valve, &ValvePanel::notesWanted, this, &WalkPlace::editNote);
    connect(&bridge, &WorkbookBridge::changed, this, &WalkPlace::countNotes);
    connect(&bridge, &WorkbookBridge::branchSelected, this, &WalkPlace::countNotes);
    connect(m_roundButton, &QPushButton::clicked, this,
            [this] { m_bridge.openRoundOrNull() != nullptr ? listOpenItems(true) : beginRound(); });
    connect(m_grid, &EntryTable::refusalChanged, this, &WalkPlace::hintChanged);
    connect(m_grid, &EntryTable::editChanged, this, &WalkPlace::typedChanged);
    connect(m_grid, &EntryTable::offerWaits, this, &WalkPlace::tellOffered);
    refresh({});
}

ValveCard* WalkPlace::card() {
    if (m_card == nullptr) {
        m_card = new ValveCard(*m_grid, m_gridPage);
        m_card->hide();
        m_card->setTokens(m_tokens, m_metrics);
        m_card->setStore([this](const QModelIndex& cell, const QString& text) { return store(cell, text); });
        auto* page = static_cast<QVBoxLayout*>(m_gridPage->layout());
        page->insertWidget(page->indexOf(m_totals), m_card, 1);
        connect(m_card, &ValveCard::enteredAtEnd, this,
                [this] { m_roundButton->setFocus(Qt::OtherFocusReason); });
        connect(m_card, &ValveCard::notesWanted, this, &WalkPlace::editNote);
        connect(m_card, &ValveCard::adjustWanted, this, &WalkPlace::adjustWanted);
        connect(m_card, &ValveCard::typedChanged, this, &WalkPlace::typedChanged);
        connect(m_card, &ValveCard::offerWaits, this, &WalkPlace::tellOffered);
        countNotes();
        emit pageMade();
    }
    return m_card;
}

void WalkPlace::countNotes() {
    const auto branch = m_bridge.selectedBranch();
    if (m_card != nullptr) {
        m_card->setNoteCount(branch ? noteCount(m_bridge, *branch) : 0);
    }
}

CloseRoundPanel* WalkPlace::closing() {
    if (m_closing == nullptr) {
        m_closing = new CloseRoundPanel(m_bridge, m_advisor, m_side);
        m_side->addWidget(m_closing);
        for (auto signal : {&CloseRoundPanel::closed, &CloseRoundPanel::givenUp}) {
            connect(m_closing, signal, this, [this] {
                showPanel(m_valve);
                takeFocus();
            });
        }
        connect(m_closing, &CloseRoundPanel::listed, this, &WalkPlace::hintChanged);
        connect(m_closing, &CloseRoundPanel::valveWanted, this, [this](const base::Id& branch) {
            showPanel(m_valve);
            showBranch(branch);
            focusEntry();
        });
        emit pageMade();
    }
    return m_closing;
}

NotePanel* WalkPlace::notes() {
    if (m_notes == nullptr) {
        m_notes = new NotePanel(m_bridge, m_side);
        m_side->addWidget(m_notes);
        connect(m_notes, &NotePanel::done, this, [this] {
            showPanel(m_valve);
            takeFocus();
            emit noteDone();
        });
        emit pageMade();
    }
    return m_notes;
}

OpenRoundPanel* WalkPlace::opening() {
    if (m_opening == nullptr) {
        m_opening = new OpenRoundPanel(m_bridge, m_side);
        m_side->addWidget(m_opening);
        for (auto signal : {&OpenRoundPanel::opened, &OpenRoundPanel::givenUp}) {
            connect(m_opening, signal, this, [this] {
                showPanel(m_valve);
                showWhatThereIs();
                takeFocus();
            });
        }
        // A walk begins with the first valve of the route.
        connect(m_opening, &OpenRoundPanel::opened, this, [this] { m_grid->goToRow(0, false); });
        emit pageMade();
    }
    return m_opening;
}

charts::ChartView* WalkPlace::convergence() {
    if (m_convergence == nullptr) {
        m_convergence = new charts::ChartView(m_content);
        m_convergence->setTokens(m_tokens);
        m_content->addWidget(m_convergence);
        auto* back = new QShortcut(QKeySequence(Qt::Key_Escape), m_convergence, nullptr, nullptr,
                                   Qt::WidgetWithChildrenShortcut);
        connect(back, &QShortcut::activated, this, &WalkPlace::toggleConvergence);
        emit pageMade();
    }
    return m_convergence;
}

void WalkPlace::buildLayout() {
    auto* gridLayout = new QVBoxLayout(m_gridPage);
    gridLayout->setContentsMargins(0, 0, 0, 0);
    gridLayout->setSpacing(4);
    gridLayout->addWidget(m_grid, 1);
    gridLayout->addWidget(m_totals);
    m_totals->setTextFormat(Qt::RichText);
    m_totals->setWordWrap(true);
    m_totals->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
    m_totals->setAccessibleName(tr("Totals of the round"));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setObjectName(QStringLiteral("empty_state"));
    m_empty->setAccessibleName(tr("What is missing here"));
    m_content->addWidget(laidOutLater(m_gridPage));
    m_content->addWidget(m_empty);

    m_findLabel = new QLabel(tr("&Find valve"), m_findLine);
    m_findLabel->setBuddy(m_find);
    m_find->setAccessibleName(tr("Find valve"));
    auto* findLine = new QHBoxLayout(m_findLine);
    findLine->setContentsMargins(0, 0, 0, 0);
    findLine->addWidget(m_findLabel);
    findLine->addWidget(m_find, 1);
    m_side->addWidget(m_valve);
    m_beside = new QVBoxLayout;
    m_beside->setSpacing(10);
    m_beside->addWidget(m_findLine);
    m_beside->addWidget(m_side, 1);
    m_beside->addWidget(m_roundButton);

    m_whole = new QHBoxLayout(this);
    m_whole->setContentsMargins(8, 4, 12, 8);
    m_whole->setSpacing(kBesideGrid);
    m_whole->addWidget(m_content, 1);
    m_whole->addLayout(m_beside);
    arrange();
    // A field that is left with Escape hands the keys back to the grid.
    auto* escape = new QShortcut(QKeySequence(Qt::Key_Escape), m_find, nullptr, nullptr, Qt::WidgetShortcut);
    connect(escape, &QShortcut::activated, this, &WalkPlace::takeFocus);
}

void WalkPlace::setMetrics(const theme::Metrics& metrics) {
    m_metrics = metrics;
    m_totals->setMinimumHeight(metrics.totalsHeight);
    m_grid->setTokens(m_tokens, metrics);
    if (m_card != nullptr) {
        m_card->setTokens(m_tokens, metrics);
    }
    m_valve->setTokens(m_tokens, metrics);
    findRoom();
    arrange();
}

void WalkPlace::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    findRoom();
}

int WalkPlace::panelWidth() const {
    return static_cast<int>(248.0 * std::min(1.6, m_metrics.textPoints / 10.0));
}

void WalkPlace::findRoom() {
    const QMargins margins = m_whole->contentsMargins();
    const int beside = width() - margins.left() - margins.right() - kBesideGrid - panelWidth();
    if (const bool isTight = beside < m_grid->leastWidth(); isTight != m_isTight) {
        m_isTight = isTight;
        arrange();
    }
}

void WalkPlace::setCard(Card card) {
    const bool isCard = card != Card::None;
    const bool isBesidePad = card == Card::BesidePad;
    if (m_isCard == isCard && m_isBesidePad == isBesidePad) {
        return;
    }
    m_isBesidePad = isBesidePad;
    this->card()->setNarrow(isBesidePad);
    const bool hadKeys = m_grid->hasFocus() || m_grid->isEditing() || m_card->isAncestorOf(focusWidget());
    m_isCard = isCard;
    m_grid->setVisible(!isCard);
    m_card->setVisible(isCard);
    arrange();
    if (hadKeys) {
        takeFocus();
    }
}

void WalkPlace::arrange() {
    // Beside the grid there is room for the valve; the card says what it says, so there a panel comes alone.
    // In large text the valve stands below the grid, and closing the round beside the field that finds it.
    const bool isPanel = m_side->currentWidget() != m_valve;
    const bool isBelow = m_isTight && !m_isCard;
    const bool isStacked = m_isCard || isBelow;
    m_whole->setDirection(isStacked ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_whole->setSpacing(isStacked ? std::max(8, m_metrics.gap) : kBesideGrid);
    m_beside->setDirection(m_isCard && !isPanel && !m_isBesidePad ? QBoxLayout::LeftToRight
                                                                  : QBoxLayout::TopToBottom);
    (isBelow ? static_cast<QBoxLayout*>(m_findLine->layout()) : m_beside)->addWidget(m_roundButton);
    m_content->setVisible(!isStacked || !isPanel);
    m_side->setVisible(!m_isCard || isPanel);
    m_findLine->setVisible(!isStacked || !isPanel);
    const int width = panelWidth();
    m_side->setMinimumWidth(isStacked ? 0 : width);
    m_side->setMaximumWidth(isStacked ? QWIDGETSIZE_MAX : width);
    m_valve->setWhole(isBelow);
    m_grid->setMinimumHeight(isBelow ? m_grid->leastHeight() : 0);
    m_findLine->setSizePolicy(m_isCard ? QSizePolicy::Maximum : QSizePolicy::Preferred, QSizePolicy::Fixed);
    // The field says itself what it is for.
    m_findLabel->setVisible(!m_isCard);
    m_find->setFixedWidth(width * 2 / 3 - 8);
}

}  // namespace ww::ui
