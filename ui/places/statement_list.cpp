#include "ui/places/statement_list.h"

#include <QEvent>
#include <cmath>

namespace ww::ui {

namespace {

/// More is scrolled through inside the list.
constexpr int kLinesShown = 20;

}  // namespace

StatementList::StatementList(QWidget* parent) : QPlainTextEdit(parent) {
    setReadOnly(true);
    setUndoRedoEnabled(false);
    setTabChangesFocus(true);
    setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWordWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    fitHeight();
}

void StatementList::show(const QStringList& sentences) {
    setPlainText(sentences.join(QStringLiteral("\n\n")));
}

void StatementList::changeEvent(QEvent* event) {
    QPlainTextEdit::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        fitHeight();
    }
}

void StatementList::fitHeight() {
    const int around = 2 * (frameWidth() + static_cast<int>(std::ceil(document()->documentMargin())));
    setFixedHeight(kLinesShown * fontMetrics().lineSpacing() + around);
}

}  // namespace ww::ui
