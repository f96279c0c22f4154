#include "ui/widgets/key_line.h"

#include <QEvent>

namespace ww::ui {

KeyLine::KeyLine(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    // Beside a frame Qt would indent the words by half a letter.
    setIndent(0);
    // It takes the width there is and asks for none.
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void KeyLine::show(const KeyHints& keys) {
    m_keys = keys;
    fit();
}

void KeyLine::fit() {
    setText(m_keys.line(fontMetrics(), contentsRect().width() - 2 * margin()));
}

void KeyLine::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    fit();
}

void KeyLine::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        fit();
    }
}

}  // namespace ww::ui
