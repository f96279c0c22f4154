#include "ui/places/review/comment_panel.h"

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

#include "core/project/review.h"
#include "ui/delegates/wrapped_item.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui {

CommentPanel::CommentPanel(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_head(new QLabel(this)),
      m_list(new QListWidget(this)),
      m_target(new QLabel(this)),
      m_text(new HintedField(this)),
      m_add(new QPushButton(tr("Comment"), this)),
      m_answer(new QPushButton(tr("Answer"), this)),
      m_resolve(new QPushButton(tr("Resolve"), this)) {
    m_head->setObjectName(QStringLiteral("panel_title"));
    m_list->setAccessibleName(tr("Comments of the round"));
    m_list->setWordWrap(true);
    m_list->installEventFilter(this);
    m_list->setItemDelegate(new WrappedItem(m_list));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_text->setAccessibleName(tr("Text of the comment"));
    m_target->setBuddy(m_text);
    m_target->setWordWrap(true);
    // Two below one leave the panel narrow.
    auto* buttons = new QGridLayout;
    buttons->addWidget(m_add, 0, 0, 1, 2);
    buttons->addWidget(m_answer, 1, 0);
    buttons->addWidget(m_resolve, 1, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_head, m_list, m_target, m_text}) {
        layout->addWidget(widget, widget == m_list ? 1 : 0);
    }
    layout->addLayout(buttons);
    connect(m_add, &QPushButton::clicked, this, [this] {
        m_isAnswering = false;
        take(balancing::addComment(m_bridge.project(), m_place, m_text->text().trimmed().toStdString(),
                                   m_bridge.reviewContext()));
    });
    connect(m_answer, &QPushButton::clicked, this, [this] {
        if (const project::Comment* comment = inHand()) {
            take(balancing::answerComment(m_bridge.project(), comment->id,
                                          m_text->text().trimmed().toStdString(), m_bridge.reviewContext()));
        }
    });
    connect(m_resolve, &QPushButton::clicked, this, [this] {
        if (const project::Comment* comment = inHand()) {
            take(balancing::resolveComment(m_bridge.project(), comment->id, !comment->isResolved,
                                           m_bridge.reviewContext()));
        }
    });
    connect(m_text, &QLineEdit::returnPressed, this, [this] { (m_isAnswering ? m_answer : m_add)->click(); });
    connect(m_text, &QLineEdit::textChanged, this, &CommentPanel::showInHand);
    connect(m_list, &QListWidget::currentItemChanged, this, &CommentPanel::choose);
    connect(m_list, &QListWidget::itemClicked, this, &CommentPanel::choose);
    connect(m_list, &QListWidget::itemActivated, this, [this] {
        const project::Comment* comment = inHand();
        if (comment != nullptr && comment->branch) {
            emit branchWanted(*comment->branch);
        }
        choose();
    });
    refresh();
}

void CommentPanel::setPlace(const balancing::CommentPlace& place) {
    const bool isOtherRound = place.round != m_place.round;
    if (isOtherRound || place.branch != m_place.branch || place.field != m_place.field) {
        m_isAnswering = false;
    }
    m_place = place;
    if (isOtherRound) {
        refresh();
    }
    showInHand();
}

/// Where the first thread is meant no other one becomes the current one: an arrow or the space bar chooses
/// too.
bool CommentPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* pressed = static_cast<QKeyEvent*>(event);
        const int key = pressed->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_Space) {
            choose();
        }
    }
    return QWidget::eventFilter(watched, event);
}

void CommentPanel::choose() {
    m_isAnswering = inHand() != nullptr;
    showInHand();
}

void CommentPanel::write() {
    m_isAnswering = false;
    showInHand();
    m_text->setFocus(Qt::ShortcutFocusReason);
    m_text->selectAll();
}

const project::Comment* CommentPanel::inHand() const {
    const QListWidgetItem* item = m_list->currentItem();
    const auto id = item == nullptr ? std::nullopt
                                    : base::Id::fromText(item->data(Qt::UserRole).toString().toStdString());
    return id ? m_bridge.project().comments().find(*id) : nullptr;
}

QString CommentPanel::threadText(const project::Comment& comment) const {
    const auto said = [](const project::Comment& c) {
        const QString time = c.time ? text::timeOf(*c.time) : QString();
        return QStringLiteral("%1, %2: %3")
            .arg(QString::fromStdString(c.person), time, QString::fromStdString(c.text));
    };
    const QString place =
        QString::fromStdString(balancing::placeText(m_bridge.project(), comment, text::wording()));
    QStringList lines{tr("%1 — %2").arg(place, comment.isResolved ? tr("resolved") : tr("open")),
                      said(comment)};
    for (const project::Comment* answer : project::answersTo(m_bridge.project(), comment.id)) {
        lines << QStringLiteral("   ") + said(*answer);
    }
    return lines.join('\n');
}

void CommentPanel::refresh() {
    // What is listed anew is chosen by nobody.
    const QSignalBlocker quiet(m_list);
    const project::Comment* before = inHand();
    const QString kept = before != nullptr ? QString::fromStdString(before->id.text()) : QString();
    m_list->clear();
    if (!m_place.round || !m_bridge.project().rounds().contains(*m_place.round)) {
        m_head->setText(tr("Comments"));
        showInHand();
        return;
    }
    const auto open = project::openComments(m_bridge.project(), *m_place.round);
    std::vector<const project::Comment*> shown = open;
    for (const project::Comment& comment : m_bridge.project().comments()) {
        if (comment.round == m_place.round && !comment.answers && comment.isResolved) {
            shown.push_back(&comment);
        }
    }
    for (const project::Comment* comment : shown) {
        auto* item = new QListWidgetItem(threadText(*comment), m_list);
        item->setData(Qt::UserRole, QString::fromStdString(comment->id.text()));
        if (item->data(Qt::UserRole).toString() == kept) {
            m_list->setCurrentItem(item);
        }
    }
    if (m_list->currentItem() == nullptr && m_list->count() > 0) {
        m_isAnswering = false;
        m_list->setCurrentRow(0);
    }
    m_head->setText(tr("Comments (%n open)", nullptr, static_cast<int>(open.size())));
    showInHand();
}

void CommentPanel::showInHand() {
    const bool isWritable = !m_bridge.isReadOnly() && m_place.round.has_value();
    const bool hasText = !m_text->text().trimmed().isEmpty();
    const project::Comment* comment = inHand();
    m_isAnswering = m_isAnswering && comment != nullptr;
    project::Comment target;
    target.round = m_place.round;
    target.branch = m_place.branch;
    target.field = m_place.field;
    const QString place = QString::fromStdString(
        balancing::placeText(m_bridge.project(), m_isAnswering ? *comment : target, text::wording()));
    // What Enter writes is said before it is pressed.
    m_target->setText(m_isAnswering
                          ? tr("Answer %1 on %2").arg(QString::fromStdString(comment->person), place)
                          : tr("Comment on %1 (Ctrl+Alt+C)").arg(place));
    m_text->setHint(m_isAnswering ? tr("answer, Enter") : tr("new comment, Enter"));
    m_text->setEnabled(isWritable);
    m_add->setEnabled(isWritable && hasText);
    m_answer->setEnabled(isWritable && hasText && comment != nullptr);
    m_resolve->setEnabled(isWritable && comment != nullptr);
    m_resolve->setText(comment != nullptr && comment->isResolved ? tr("Reopen") : tr("Resolve"));
}

void CommentPanel::take(const project::Edit& edit) {
    // A button that has nothing left to add is disabled and would pass the keys on to whatever comes next.
    const bool isFromHere = isAncestorOf(QApplication::focusWidget());
    const base::Outcome done = m_bridge.apply(edit);
    if (!done) {
        emit m_bridge.messageRaised(done.fault());
        return;
    }
    m_text->clear();
    if (isFromHere && !isAncestorOf(QApplication::focusWidget())) {
        m_list->setFocus(Qt::OtherFocusReason);
    }
    emit m_bridge.messageCleared();
}

}  // namespace ww::ui
