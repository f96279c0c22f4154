#include "ui/widgets/whole_label.h"

#include <QResizeEvent>
#include <algorithm>

namespace ww::ui {

namespace {

constexpr int kBelowLines = 2;

}  // namespace

WholeLabel::WholeLabel(int lines, QWidget* parent) : QLabel(parent), m_lines(lines) {
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setAlignment(Qt::AlignTop | Qt::AlignLeft);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    fitAnew();
}

void WholeLabel::setLines(int lines) {
    if (lines != m_lines) {
        m_lines = lines;
        fitAnew();
    }
}

void WholeLabel::setWords(const QString& words) {
    if (words != text()) {
        setText(words);
        grow();
    }
}

void WholeLabel::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        fitAnew();
    }
}

void WholeLabel::showEvent(QShowEvent* event) {
    QLabel::showEvent(event);
    fitAnew();
}

void WholeLabel::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        fitAnew();
    }
}

void WholeLabel::grow() {
    // Until it is laid out its width says nothing; then it is fitted anew.
    const int needed = isVisible() ? heightForWidth(width()) : 0;
    if (needed > minimumHeight()) {
        setFixedHeight(needed);
    }
}

void WholeLabel::fitAnew() {
    const int reserved = m_lines * fontMetrics().height() + kBelowLines;
    // A label never says less than the height it was held at.
    setMinimumHeight(0);
    const int needed = isVisible() && !text().isEmpty() ? heightForWidth(width()) : 0;
    setFixedHeight(std::max(reserved, needed));
}

}  // namespace ww::ui
