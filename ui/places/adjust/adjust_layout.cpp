// The parts of the place Adjust and where they stand. What they show is in adjust_place.cpp.
#include <QHBoxLayout>
#include <QHeaderView>
#include <QShortcut>
#include <QVBoxLayout>
#include <utility>

#include "ui/places/adjust/adjust_place.h"
#include "ui/text/words.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/laid_out_later.h"

namespace ww::ui {
namespace {

WholeLabel* whole(int lines, const QString& name, QWidget* parent) {
    auto* label = new WholeLabel(lines, parent);
    label->setAccessibleName(name);
    return label;
}

}  // namespace

AdjustPlace::AdjustPlace(WorkbookBridge& bridge, LoopAdvisor& advisor, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_advisor(advisor),
      m_valve(bridge, advisor),
      m_order(bridge, advisor),
      m_title(new QLabel(this)),
      m_state(whole(2, tr("Share of the valve in hand"), this)),
      m_basis(whole(3, tr("What the aim rests on"), this)),
      m_find(new HintedField(tr("tag or number"), this)),
      m_content(new QStackedWidget(this)),
      m_page(new QWidget(this)),
      m_empty(new QLabel(this)),
      m_setting(new BigFigure(tr("Setting"), this)),
      m_aim(new BigFigure(tr("Aim DP"), this)),
      m_reading(new BigFigure(tr("Reading"), this)),
      m_word(new WordSign(this)),
      m_stripModel(new AimStripModel(bridge, m_valve, this)),
      m_stripDelegate(new StripDelegate(this)),
      m_strip(new QTableView(this)),
      m_tries(whole(1, tr("Tries"), this)),
      m_proposal(whole(2, tr("Setting to try next"), this)),
      m_fieldLabel(new QLabel(this)),
      m_field(new TryField(this)),
      m_settingLabel(new QLabel(tr("&Setting"), this)),
      m_settingField(new TryField(this)),
      m_hold(new QPushButton(tr("Hold Here, Next Valve"), this)),
      m_next(whole(1, tr("Next valve"), this)),
      m_ladder(new Ladder(this)),
      m_advice(new AdvicePanel(bridge, advisor, this)) {
    setAccessibleName(tr("Adjust"));
    buildLayout();
    connectAll();
    noteWhereTheRoundEnded();
}

void AdjustPlace::buildLayout() {
    m_title->setAccessibleName(tr("Valve in hand"));
    m_title->setTextFormat(Qt::PlainText);
    for (WholeLabel* label : {m_state, m_next}) {
        label->setAlignment(Qt::AlignVCenter | Qt::AlignLeft);
    }
    m_empty->setObjectName(QStringLiteral("empty_state"));
    m_empty->setAccessibleName(tr("What is missing here"));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_find->setAccessibleName(tr("Find valve to adjust"));
    m_findLabel = new QLabel(tr("&Find valve"), this);
    m_findLabel->setBuddy(m_find);
    m_head = new QHBoxLayout;
    m_head->setSpacing(kHeadGap);
    m_head->addWidget(m_title);
    m_head->addWidget(m_state, 1);
    m_head->addWidget(m_findLabel);
    m_head->addWidget(m_find);

    m_figures = buildFigures();
    m_entryRow = buildEntry();
    m_parts = new QVBoxLayout;
    m_parts->setSpacing(4);
    for (QWidget* part : {m_figures, static_cast<QWidget*>(m_strip), static_cast<QWidget*>(m_tries),
                          static_cast<QWidget*>(m_proposal), m_entryRow}) {
        m_parts->addWidget(part);
    }
    m_parts->addStretch(1);
    auto* upper = new QHBoxLayout;
    upper->setSpacing(kBesideLadder);
    upper->addLayout(m_parts, 1);
    upper->addWidget(m_ladder);
    m_pageParts = new QVBoxLayout(m_page);
    m_pageParts->setContentsMargins(0, 0, 0, 0);
    m_pageParts->setSpacing(6);
    m_pageParts->addWidget(m_basis);
    m_pageParts->addLayout(upper);
    m_pageParts->addWidget(m_advice, 1);
    m_content->addWidget(laidOutLater(m_page));
    m_content->addWidget(m_empty);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(kSideMargin, 4, kSideMargin, 8);
    layout->setSpacing(4);
    layout->addLayout(m_head);
    layout->addWidget(m_content, 1);
}

QWidget* AdjustPlace::buildFigures() {
    QString longest;
    for (const auto word : {balancing::AimWord::Open, balancing::AimWord::Close, balancing::AimWord::Hold,
                            balancing::AimWord::ReadAgain, balancing::AimWord::AtStop}) {
        const QString words = text::word(word);
        longest = words.size() > longest.size() ? words : longest;
    }
    m_word->setLongest(longest);
    auto* figures = new QWidget(m_page);
    m_figuresAndWord = new QHBoxLayout(figures);
    m_figuresAndWord->setContentsMargins(0, 0, 0, 0);
    m_figuresAndWord->setSpacing(12);
    m_figureRow = new QHBoxLayout;
    for (BigFigure* figure : {m_setting, m_aim, m_reading}) {
        m_figureRow->addWidget(figure, kFigureStretch);
    }
    m_wordRow = new QHBoxLayout;
    m_wordRow->addWidget(m_word, kWordStretch);
    for (QBoxLayout* row : {m_figureRow, m_wordRow}) {
        row->setSpacing(m_figuresAndWord->spacing());
    }
    m_figuresAndWord->addLayout(m_figureRow, 3 * kFigureStretch);
    m_figuresAndWord->addLayout(m_wordRow, kWordStretch);

    m_strip->setModel(m_stripModel);
    m_strip->setItemDelegate(m_stripDelegate);
    m_strip->horizontalHeader()->hide();
    m_strip->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_strip->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_strip->verticalHeader()->setHighlightSections(false);
    m_strip->setSelectionMode(QAbstractItemView::NoSelection);
    m_strip->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_strip->setTabKeyNavigation(false);
    m_strip->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_strip->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_strip->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_strip->setAccessibleName(tr("Neighboring settings and their aims"));
    return figures;
}

QWidget* AdjustPlace::buildEntry() {
    m_fieldLabel->setBuddy(m_field);
    m_fieldLabel->setWordWrap(true);
    m_fieldLabel->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_field->setAccessibleName(tr("DP read at this setting"));
    m_field->setFixedWidth(110);
    m_settingLabel->setBuddy(m_settingField);
    m_settingLabel->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_settingField->setAccessibleName(tr("Setting of the handle"));
    m_settingField->setFixedWidth(80);
    auto* entry = new QWidget(m_page);
    m_entry = new QHBoxLayout(entry);
    m_entry->setContentsMargins(0, 0, 0, 0);
    m_fields = new QHBoxLayout;
    m_fields->setSpacing(10);
    m_fields->addWidget(m_fieldLabel);
    m_fields->addWidget(m_field);
    m_handle = new QHBoxLayout;
    m_handle->setSpacing(m_fields->spacing());
    m_handle->setContentsMargins(kBeforeHandle, 0, 0, 0);
    m_handle->addWidget(m_settingLabel);
    m_handle->addWidget(m_settingField);
    m_handle->addStretch(0);
    m_fields->addLayout(m_handle);
    m_fields->addWidget(m_hold);
    m_fields->addStretch(0);
    m_following = new QHBoxLayout;
    m_following->setSpacing(10);
    m_following->addWidget(m_next, 1);
    m_entry->addLayout(m_fields);
    m_entry->addLayout(m_following, 1);
    return entry;
}

void AdjustPlace::connectAll() {
    m_field->setStore([this](const QString& text) { return store(text); });
    m_settingField->setStore([this](const QString& text) {
        const bool wasRefused = m_settingField->isRefused();
        const bool isMoved = moveSetting(text);
        if (isMoved && wasRefused) {
            emit m_bridge.messageCleared();
        }
        return isMoved;
    });
    for (TryField* field : {m_field, m_settingField}) {
        // A setting that is typed is where the handle stands; a dp that is typed is stored by Enter alone.
        connect(field, &TryField::stepped, this, [this, field](int steps) {
            if (field != m_settingField || field->commit()) {
                stepSetting(steps);
            }
        });
        connect(field, &TryField::turned, this, [this, field](int turns) {
            if ((field != m_settingField || field->commit()) && mayMoveHandle()) {
                m_valve.turnBy(turns);
                showValve();
            }
        });
    }
    connect(m_field, &TryField::givenUp, this, [this] { expect(TypedDp::Try); });
    connect(m_settingField, &TryField::givenUp, this, &AdjustPlace::takeFocus);
    connect(m_field, &QLineEdit::textChanged, this, [this](const QString& text) {
        if (std::exchange(m_isFieldBlank, m_field->isBlank()) != m_field->isBlank()) {
            emit hintChanged();
        }
        if (text.isEmpty() && m_isPictureWaiting) {
            takePicture();
        }
    });
    connect(m_hold, &QPushButton::clicked, this, &AdjustPlace::holdAndNext);
    connect(m_find, &QLineEdit::returnPressed, this, &AdjustPlace::jump);
    auto* escape = new QShortcut(QKeySequence(Qt::Key_Escape), m_find, nullptr, nullptr, Qt::WidgetShortcut);
    connect(escape, &QShortcut::activated, this, &AdjustPlace::takeFocus);
    connect(m_advice, &AdvicePanel::taken, this, [this](const base::Id& branch) {
        if (!mayMoveHandle()) {
            return;
        }
        showBranch(branch);
        takeAdvice();
        takeFocus();
    });
    connect(m_advice, &AdvicePanel::left, this, &AdjustPlace::takeFocus);
    connect(&m_bridge, &WorkbookBridge::changed, this, [this](const project::ChangeSet& changes) {
        if (changes.isEmpty()) {
            m_what = TypedDp::Try;
            m_typed.clear();
            m_field->empty();
            m_settingField->empty();
        }
        watchRound(changes);
        refreshWhenShown();
    });
    connect(&m_bridge, &WorkbookBridge::instrumentChanged, this, &AdjustPlace::refreshWhenShown);
    connect(&m_bridge, &WorkbookBridge::branchSelected, this, &AdjustPlace::refreshWhenShown);
    connect(&m_advisor, &LoopAdvisor::changed, this, [this] {
        if (m_field->text().isEmpty()) {
            takePicture();
        } else {
            // The word must not change under a hand that types.
            m_isPictureWaiting = true;
        }
    });
    connect(&m_clock, &QTimer::timeout, this, &AdjustPlace::tick);
}

}  // namespace ww::ui
