#include "ui/widgets/entry_table.h"

#include <QHeaderView>
#include <QMouseEvent>
#include <QTimer>
#include <utility>

#include "ui/widgets/wrapped_head.h"

namespace ww::ui {

EntryTable::EntryTable(QWidget* parent) : QTableView(parent), m_editor(new QLineEdit(viewport())) {
    setEditTriggers(NoEditTriggers);
    setTabKeyNavigation(false);
    setSelectionMode(SingleSelection);
    setSelectionBehavior(SelectItems);
    setCornerButtonEnabled(false);
    setWordWrap(false);
    setAlternatingRowColors(false);
    setHorizontalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    setHorizontalHeader(new WrappedHead(this));
    m_editor->hide();
    m_editor->installEventFilter(this);
    m_editor->setObjectName(QStringLiteral("cell_editor"));
    m_editor->setAttribute(Qt::WA_InputMethodEnabled);
    connect(m_editor, &QLineEdit::textChanged, this, &EntryTable::editChanged);
    // Who types on has taken what was offered.
    connect(m_editor, &QLineEdit::textEdited, this, [this] { m_isOffered = false; });
}

void EntryTable::setModel(QAbstractItemModel* model) {
    QTableView::setModel(model);
    if (model != nullptr) {
        connect(model, &QAbstractItemModel::modelAboutToBeReset, this, &EntryTable::keepEdit);
        connect(model, &QAbstractItemModel::modelReset, this, &EntryTable::findEdit);
        connect(model, &QAbstractItemModel::modelReset, this, &EntryTable::tellContents);
        connect(model, &QAbstractItemModel::rowsInserted, this, &EntryTable::tellContents);
        connect(model, &QAbstractItemModel::dataChanged, this, &EntryTable::tellContents);
    }
}

/// Once for all changes of one step.
void EntryTable::tellContents() {
    if (m_isTelling) {
        return;
    }
    m_isTelling = true;
    QTimer::singleShot(0, this, [this] {
        m_isTelling = false;
        if (isVisible()) {
            emit resized();
        }
    });
}

QModelIndex EntryTable::typingCell(const QModelIndex& current) const {
    return current.isValid() && current.flags().testFlag(Qt::ItemIsEditable) ? current : QModelIndex();
}

QString EntryTable::rowKey(const QModelIndex& cell) const {
    return cell.siblingAtColumn(0).data().toString();
}

int EntryTable::rowWithKey(const QString& key, int row) const {
    const QModelIndex same = model()->index(row, 0);
    return same.isValid() && rowKey(same) == key ? row : -1;
}

void EntryTable::keepEdit() {
    // The model may hold less than it shows already, so it is asked for nothing here.
    m_kept.reset();
    if (isEditing() && m_cell.isValid()) {
        m_kept = KeptCell{m_cell.row(), m_cell.column()};
    }
}

void EntryTable::findEdit() {
    const auto kept = std::exchange(m_kept, std::nullopt);
    // While a text is being stored its own change may fill the model anew.
    if (!kept || !isEditing() || m_isCommitting) {
        return;
    }
    const int row = rowWithKey(m_key, kept->row);
    if (row < 0) {
        cancelEdit();
        return;
    }
    m_cell = model()->index(row, kept->column);
    placeEditor();
    if (m_editor->hasFocus()) {
        setCurrentIndex(m_cell);
    }
}

void EntryTable::goBackToEdit() {
    if (m_cell.isValid() && currentIndex() != m_cell) {
        setCurrentIndex(m_cell);
    }
    scrollTo(m_cell);
    m_editor->setFocus(Qt::OtherFocusReason);
    m_editor->selectAll();
}

void EntryTable::beginEdit(const QModelIndex& cell, const QString* text) {
    if (!cell.isValid()) {
        return;
    }
    if (isEditing() && cell != m_cell && !commitEdit()) {
        goBackToEdit();
        if (text != nullptr) {
            m_editor->end(false);  // The rest of what is typed blindly must not replace what waits here.
        }
        return;
    }
    if (currentIndex() != cell) {
        setCurrentIndex(cell);
    }
    openEditor(cell, text != nullptr ? *text : cell.data(Qt::EditRole).toString());
    m_isBegunByTyping = text != nullptr && !text->isEmpty();
    m_editor->setFocus(Qt::OtherFocusReason);
    if (text == nullptr) {
        m_editor->selectAll();
    } else {
        m_editor->end(false);
    }
}

void EntryTable::openEditor(const QModelIndex& cell, const QString& text) {
    m_cell = cell;
    m_isRefused = false;
    m_isOffered = false;
    m_isBegunByTyping = false;
    m_key = rowKey(cell);
    m_before = cell.data(Qt::EditRole).toString();
    m_editor->setText(text);
    m_editor->setAlignment(Qt::Alignment(cell.data(Qt::TextAlignmentRole).toInt()));
    m_editor->setAccessibleName(cell.data(Qt::AccessibleTextRole).toString());
    placeEditor();
    m_editor->show();
    emit editChanged();
}

void EntryTable::offerEdit(const QModelIndex& cell, const QString& text) {
    if (!cell.isValid() || isEditing() || text == cell.data(Qt::EditRole).toString()) {
        return;
    }
    setCurrentIndex(cell);
    openEditor(cell, text);
    m_editor->selectAll();
    m_isOffered = true;
    // Who has the table in hand has the text in hand.
    if (hasFocus()) {
        m_editor->setFocus(Qt::OtherFocusReason);
    }
    emit refusalChanged();
}

bool EntryTable::isNothingNew(const QString& text) const {
    const bool isTypedAnew = m_isBegunByTyping || m_editor->isModified();
    return text == m_before && !(isTypedAnew && m_storesSameText && m_storesSameText(m_cell));
}

bool EntryTable::commitEdit() {
    if (!isEditing() || m_isCommitting) {
        return true;
    }
    if (m_isOffered) {
        emit offerWaits();
        return false;
    }
    m_isCommitting = true;
    const QString text = m_editor->text();
    const QModelIndex cell = m_cell;
    const bool isTaken = !cell.isValid() || isNothingNew(text) || !m_store || m_store(cell, text);
    if (isTaken) {
        cancelEdit();
    } else {
        m_editor->selectAll();
    }
    const bool wasRefused = std::exchange(m_isRefused, !isTaken);
    m_isCommitting = false;
    if (wasRefused != m_isRefused) {
        emit refusalChanged();
    }
    return isTaken;
}

bool EntryTable::settleEdit() {
    const bool isSettled = commitEdit();
    if (!isSettled) {
        goBackToEdit();
    }
    return isSettled;
}

void EntryTable::cancelEdit() {
    if (!isEditing()) {
        return;
    }
    // Focus first: hiding a focused widget would hand the focus to whatever comes next in the tab order. The
    // editor must not take this loss of focus for a wish to store.
    m_isClosing = true;
    if (m_editor->hasFocus()) {
        setFocus(Qt::OtherFocusReason);
    }
    m_editor->hide();
    m_cell = QModelIndex();
    m_isOffered = false;
    m_isClosing = false;
    m_blind.end();
    emit editChanged();
}

void EntryTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    // A text that is refused stays at its cell; who types there has its cell in hand.
    if (isEditing() && current != m_cell && !m_isCommitting && !m_kept && !commitEdit() &&
        m_editor->hasFocus()) {
        QTimer::singleShot(0, this, [this] {
            if (isEditing() && m_editor->hasFocus()) {
                goBackToEdit();
            }
        });
    }
    viewport()->update();
}

void EntryTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (isEditing() && !m_isClosing && !m_isCommitting && !commitEdit()) {
        goBackToEdit();
    }
}

void EntryTable::mousePressEvent(QMouseEvent* event) {
    if (isEditing() && !commitEdit()) {
        goBackToEdit();
        event->accept();
        return;
    }
    QTableView::mousePressEvent(event);
}

void EntryTable::mouseDoubleClickEvent(QMouseEvent* event) {
    QTableView::mouseDoubleClickEvent(event);
    const QModelIndex cell = indexAt(event->pos());
    beginEdit(typingCell(cell));
}

void EntryTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    placeEditor();
    emit resized();
}

/// What changed while the table was not seen is measured now.
void EntryTable::showEvent(QShowEvent* event) {
    QTableView::showEvent(event);
    emit resized();
}

void EntryTable::scrollContentsBy(int dx, int dy) {
    QTableView::scrollContentsBy(dx, dy);
    placeEditor();
}

void EntryTable::placeEditor() {
    if (m_cell.isValid()) {
        m_editor->setGeometry(visualRect(m_cell));
    }
}

}  // namespace ww::ui
