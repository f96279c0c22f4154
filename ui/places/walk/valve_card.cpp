#include "ui/places/walk/valve_card.h"

#include <QGridLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/models/branch_roles.h"
#include "ui/text/written_way.h"
#include "ui/theme/state_shape.h"
#include "ui/widgets/place_area.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {

/// Shape and word of the state.
class ValveCard::Sign : public QWidget {
  public:
    explicit Sign(QWidget* parent) : QWidget(parent) {
        setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    }
    /// `share`: stands before the word of the state; may be empty.
    void set(const QModelIndex& cell, const QString& share) {
        m_word = cell.data().toString();
        if (!share.isEmpty()) {
            m_word = ValveCard::tr("%1 % of target  %2", "share, state").arg(share, m_word);
        }
        m_isOver = cell.data(IsOverRole).toBool();
        m_state = static_cast<balancing::State>(cell.data(StateRole).toInt());
        setAccessibleDescription(m_word);
        updateGeometry();
        update();
    }
    void setTokens(const theme::Tokens& tokens) {
        m_tokens = tokens;
        update();
    }
    QSize sizeHint() const override {
        const int height = fontMetrics().height() + 2;
        return {height + 10 + fontMetrics().horizontalAdvance(m_word), height + 4};
    }
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const int size = fontMetrics().height();
        const bool isRight = layoutDirection() == Qt::RightToLeft;
        const QRectF shape(isRight ? width() - size : 0, (height() - size) / 2.0, size, size);
        theme::paintState(painter, shape, m_state, m_isOver, m_tokens);
        painter.setPen(m_tokens.ink);
        painter.setLayoutDirection(Qt::LayoutDirectionAuto);
        painter.drawText(rect().adjusted(isRight ? 0 : size + 8, 0, isRight ? -size - 8 : 0, 0),
                         text::writtenFlags(layoutDirection(), int(Qt::AlignVCenter | Qt::AlignLeft), m_word),
                         m_word);
    }

  private:
    QString m_word;
    balancing::State m_state = balancing::State::NotRead;
    bool m_isOver = false;
    theme::Tokens m_tokens;
};

ValveCard::ValveCard(WalkGrid& grid, QWidget* parent)
    : QWidget(parent),
      m_grid(grid),
      m_route(new QLabel(this)),
      m_tag(new QLabel(this)),
      m_serves(new QLabel(this)),
      m_last(new QLabel(this)),
      m_dpHead(new QLabel(this)),
      m_targetHead(new QLabel(this)),
      m_ofTarget(new QLabel(this)),
      m_done(new QLabel(this)),
      m_sign(new Sign(this)),
      m_setting(new WalkField(this)),
      m_dp(new WalkField(this)),
      m_back(new QPushButton(tr("Go Bac&k"), this)),
      m_next(new QPushButton(tr("Go to Ne&xt"), this)),
      m_adjust(new QPushButton(tr("A&djust"), this)),
      m_notes(new QPushButton(this)) {
    setObjectName(QStringLiteral("valve_card"));
    setAccessibleName(tr("Valve in hand"));
    const struct {
        QLabel* label;
        QString name;
    } kLabels[] = {{m_route, tr("Place on the route")},
                   {m_tag, tr("Tag")},
                   {m_serves, tr("Serves")},
                   {m_last, tr("Last reading")},
                   {m_done, tr("Valve stored last")},
                   {m_ofTarget, tr("Share against target")}};
    for (const auto& [label, name] : kLabels) {
        label->setAccessibleName(name);
        label->setTextFormat(Qt::PlainText);
    }
    for (QLabel* label : {m_serves, m_done}) {
        label->setWordWrap(true);
        label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    }
    m_sign->setAccessibleName(tr("State"));
    m_setting->setAccessibleName(tr("Setting of the valve in hand"));

    auto* head = new QHBoxLayout;
    head->setSpacing(12);
    head->addWidget(m_route);
    head->addWidget(m_tag);
    head->addWidget(m_serves, 1);
    head->addWidget(m_last);
    auto* settingHead = new QLabel(tr("Setting"), this);
    settingHead->setBuddy(m_setting);
    m_dpHead->setBuddy(m_dp);
    m_values = new QGridLayout;
    m_values->setHorizontalSpacing(12);
    m_values->setVerticalSpacing(2);
    m_values->addWidget(settingHead, 0, 0);
    m_values->addWidget(m_dpHead, 0, 1);
    m_values->addWidget(m_targetHead, 0, 2);
    m_values->addWidget(m_setting, 1, 0);
    m_values->addWidget(m_dp, 1, 1);
    m_values->addWidget(m_ofTarget, 1, 2);
    m_values->setColumnStretch(0, 2);
    m_values->setColumnStretch(1, 3);
    m_values->setColumnStretch(2, 2);
    m_targetHead->setWordWrap(true);
    auto* steps = new QHBoxLayout;
    steps->setSpacing(12);
    steps->addWidget(m_back);
    steps->addWidget(m_next);
    steps->addStretch(1);
    m_moves = new QHBoxLayout;
    m_moves->setSpacing(12);
    m_moves->addLayout(steps, 1);
    auto* others = new QHBoxLayout;
    others->setSpacing(12);
    others->addWidget(m_adjust);
    others->addWidget(m_notes);
    others->addStretch(0);
    m_moves->addLayout(others);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 8);
    layout->setSpacing(8);
    layout->addLayout(head);
    layout->addLayout(m_values);
    layout->addWidget(m_sign);
    layout->addLayout(m_moves);
    layout->addWidget(m_done);
    layout->addStretch(1);
    // Whose value it is, also where the window is low.
    for (WalkField* field : {m_setting, m_dp}) {
        seeTogether(*field, *m_tag);
    }
    // The dp is what a walk is for; Tab goes to the setting beside it.
    stopAfter(*m_dp, *m_setting);

    m_dp->setStore([this](const QString&) { return store(m_dp, entryColumn()); });
    m_setting->setStore([this](const QString&) { return store(m_setting, WalkModel::Setting); });
    connect(m_dp, &WalkField::gone, this, [this](WalkField::Way way) { go(way, WalkModel::Dp); });
    connect(m_setting, &WalkField::gone, this, [this](WalkField::Way way) { go(way, WalkModel::Setting); });
    for (const auto& [button, way] :
         {std::pair(m_back, WalkField::Way::Back), std::pair(m_next, WalkField::Way::Next)}) {
        connect(button, &QPushButton::clicked, this, [this, way = way] {
            for (WalkField* field : {m_setting, m_dp}) {
                if (!field->commit()) {
                    field->setFocus(Qt::OtherFocusReason);
                    return;
                }
            }
            go(way, WalkModel::Dp);
        });
    }
    for (WalkField* field : {m_setting, m_dp}) {
        connect(field, &QLineEdit::textChanged, this, &ValveCard::typedChanged);
        connect(field, &EntryField::offerWaits, this, &ValveCard::offerWaits);
    }
    connect(m_notes, &QPushButton::clicked, this, &ValveCard::notesWanted);
    connect(m_adjust, &QPushButton::clicked, this, &ValveCard::adjustWanted);
    m_adjust->setAccessibleDescription(tr("Takes the valve in hand to the place Adjust"));
    connect(&m_grid, &WalkGrid::stored, this, [this](int row) {
        m_stored = m_grid.rows().branchAt(row);
        showDone();
    });
    connect(m_grid.selectionModel(), &QItemSelectionModel::currentChanged, this, &ValveCard::refresh);
    connect(m_grid.model(), &QAbstractItemModel::modelReset, this, &ValveCard::refresh);
    connect(m_grid.model(), &QAbstractItemModel::dataChanged, this, &ValveCard::refresh);
    connect(m_grid.model(), &QAbstractItemModel::headerDataChanged, this, &ValveCard::refresh);
    setNoteCount(0);
    refresh();
}

QModelIndex ValveCard::cell(WalkModel::Column column) const {
    const int row = m_grid.currentRow();
    return row >= 0 ? m_grid.model()->index(row, column) : QModelIndex();
}

WalkModel::Column ValveCard::entryColumn() const {
    const int row = m_grid.currentRow();
    return row >= 0 ? m_grid.rows().entryColumn(row) : WalkModel::Dp;
}

QString ValveCard::headOf(WalkModel::Column column) const {
    return m_grid.model()->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' ');
}

void ValveCard::refresh() {
    const QModelIndex tag = cell(WalkModel::Tag);
    setEnabled(tag.isValid());
    const int row = m_grid.currentRow();
    const auto branch = row >= 0 ? std::optional(m_grid.rows().branchAt(row)) : std::nullopt;
    const bool isOther = m_branch != branch;
    const auto words = [this](WalkModel::Column column) { return cell(column).data().toString(); };
    m_route->setText(words(WalkModel::Route));
    m_tag->setText(words(WalkModel::Tag));
    m_serves->setText(words(WalkModel::Serves));
    const QString last = words(WalkModel::Last);
    m_last->setText(last.isEmpty() ? QString() : headOf(WalkModel::Last) + ' ' + last);
    m_dp->setAccessibleName(entryColumn() == WalkModel::Flow ? tr("Flow of the valve in hand")
                                                             : tr("DP of the valve in hand"));
    m_dpHead->setText(headOf(entryColumn()));
    m_targetHead->setText(headOf(WalkModel::OfTarget));
    const QString ofTarget = words(WalkModel::OfTarget);
    m_ofTarget->setText(ofTarget.isEmpty() ? QString(QChar(0x2013)) : ofTarget);
    m_sign->set(cell(WalkModel::State), m_isNarrow ? ofTarget : QString());
    // What is being typed stays, unless another valve came to hand.
    if (isOther) {
        exchangeRefused(branch);
    }
    for (const auto& [field, column] :
         {std::pair(m_setting, WalkModel::Setting), std::pair(m_dp, entryColumn())}) {
        const bool isTyping = (field->isTyped() && field->hasFocus() && !isOther) || field->isRefused();
        if (!isTyping) {
            field->setStored(cell(column).data(Qt::EditRole).toString());
            field->setAccessibleDescription(cell(column).data(Qt::AccessibleTextRole).toString());
            if (field->hasFocus()) {
                field->selectAll();
            }
        }
    }
    showDone();
    update();
}

bool ValveCard::store(WalkField* field, WalkModel::Column column) {
    const QModelIndex place = cell(column);
    if (!place.isValid() || !m_store) {
        return true;
    }
    const bool isTaken = m_store(place, field->text());
    if (isTaken) {
        field->setStored(place.data(Qt::EditRole).toString());
    }
    return isTaken;
}

void ValveCard::go(WalkField::Way way, WalkModel::Column from) {
    using Way = WalkField::Way;
    switch (way) {
        case Way::Next:
            // After the last valve the hand is done.
            if (!m_grid.goOn()) {
                emit enteredAtEnd();
                return;
            }
            break;
        case Way::Back:
        case Way::Up:
            m_grid.goToRow(m_grid.currentRow() - 1, false);
            break;
        case Way::Down:
            m_grid.goToRow(m_grid.currentRow() + 1, false);
            break;
        case Way::Across:
            if (from == WalkModel::Dp) {
                m_setting->setFocus(Qt::TabFocusReason);
                return;
            }
            m_back->setFocus(Qt::TabFocusReason);
            return;
        case Way::LeaveOn:
            m_back->setFocus(Qt::TabFocusReason);
            return;
        case Way::LeaveBack:
            if (from == WalkModel::Setting) {
                m_dp->setFocus(Qt::BacktabFocusReason);
                return;
            }
            focusNextPrevChild(false);
            return;
    }
    takeFocus();
}

void ValveCard::takeFocus() {
    m_dp->setFocus(Qt::OtherFocusReason);
    m_dp->selectAll();
}

void ValveCard::beginDp() {
    m_dp->setFocus(Qt::OtherFocusReason);
    m_dp->clear();
}

void ValveCard::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    constexpr int kGaps = 76;
    int wanted = kGaps;
    for (const QPushButton* button : {m_back, m_next, m_adjust, m_notes}) {
        wanted += button->sizeHint().width();
    }
    m_moves->setDirection(wanted <= width() ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void ValveCard::setNarrow(bool isNarrow) {
    if (m_isNarrow == isNarrow) {
        return;
    }
    m_isNarrow = isNarrow;
    m_targetHead->setVisible(!isNarrow);
    m_ofTarget->setVisible(!isNarrow);
    m_values->setColumnStretch(2, isNarrow ? 0 : 2);
    const int aboveAndBelow = isNarrow ? 4 : 8;
    layout()->setContentsMargins(12, aboveAndBelow, 12, aboveAndBelow);
    refresh();
}

void ValveCard::setNoteCount(int count) {
    m_notes->setText(tr("Notes, photos (%1)").arg(count));
}

void ValveCard::setTokens(const theme::Tokens& tokens, const theme::Metrics& metrics) {
    m_tokens = tokens;
    m_metrics = metrics;
    m_sign->setTokens(tokens);
    const auto sized = [this](double points, bool isBold) {
        QFont font = this->font();
        font.setPointSizeF(points);
        font.setBold(isBold);
        return font;
    };
    // What is read from the valve is the largest, whatever size the text has.
    const double large = std::max(18.0, metrics.textPoints * 1.2);
    m_tag->setFont(sized(large, true));
    for (QWidget* widget : std::initializer_list<QWidget*>{m_setting, m_dp, m_ofTarget}) {
        // The style sheet sets a height of its own when it first meets the widget.
        widget->ensurePolished();
        widget->setFont(sized(large, true));
        widget->setMinimumHeight(
            std::max(metrics.controlHeight, QFontMetrics(sized(large, true)).height() + 12));
    }
    m_sign->setFont(sized(std::max(12.0, metrics.textPoints), true));
    update();
}

void ValveCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const QModelIndex state = cell(WalkModel::State);
    painter.fillRect(rect(),
                     state.isValid()
                         ? theme::stateTint(static_cast<balancing::State>(state.data(StateRole).toInt()),
                                            state.data(IsOverRole).toBool(), m_tokens)
                         : m_tokens.paper);
    painter.setPen(m_tokens.isDaylight ? m_tokens.ink : m_tokens.rule);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

}  // namespace ww::ui
