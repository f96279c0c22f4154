#include "ui/widgets/word_sign.h"

#include <QPainter>
#include <QResizeEvent>
#include <algorithm>

#include "ui/theme/aim_shape.h"

namespace ww::ui {
namespace {

constexpr int kShape = 48;
constexpr int kGap = 14;
constexpr int kWordPixels = 40;

}  // namespace

WordSign::WordSign(QWidget* parent) : QWidget(parent), m_tokens(theme::tokens(theme::Display::Daylight)) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("What to do at the valve"));
}

void WordSign::show(std::optional<balancing::AimWord> word, const QString& words, const QString& note) {
    if (word == m_word && words == m_words && note == m_note) {
        return;
    }
    m_word = word;
    m_words = words;
    m_note = note;
    setAccessibleDescription(note.isEmpty() ? words : words + QStringLiteral(", ") + note);
    fitNote(false);
    update();
}

int WordSign::noteHeight(int width) const {
    constexpr int kMost = 1000;
    // In a window too narrow for the place it may get less than it asks for.
    const QRect room(0, 0, std::max(width, kLeastWidth / 2), kMost);
    const auto heightOf = [&](const QString& note) {
        return fontMetrics()
            .boundingRect(room, int(Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap), note)
            .height();
    };
    // Two lines are kept free, so that nothing moves when a note comes.
    return std::max(heightOf(QStringLiteral("1\n2")), heightOf(m_note));
}

void WordSign::fitNote(bool isAnew) {
    const int wanted = isAnew ? noteHeight(width()) : std::max(m_noteHeight, noteHeight(width()));
    if (wanted != m_noteHeight) {
        m_noteHeight = wanted;
        updateGeometry();
    }
}

void WordSign::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        fitNote(true);
    }
}

void WordSign::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        fitNote(true);
    }
}

void WordSign::setLongest(const QString& words) {
    m_longest = words;
    updateGeometry();
}

void WordSign::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    update();
}

QFont WordSign::wordFont() const {
    QFont made = font();
    made.setBold(true);
    made.setPixelSize(kWordPixels);
    return made;
}

int WordSign::heightAt(int width) const {
    const int note = width == this->width() ? m_noteHeight : noteHeight(width);
    return kShape + note + 12;
}

QSize WordSign::sizeHint() const {
    return {kShape + kGap + QFontMetrics(wordFont()).horizontalAdvance(m_longest), heightAt(width())};
}

void WordSign::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    // The words stand beside their shape in every layout, each running as its letters do.
    painter.setLayoutDirection(Qt::LayoutDirectionAuto);
    const QRect shape(0, 0, kShape, kShape);
    if (m_word) {
        theme::paintAimWord(painter, shape, *m_word, m_tokens);
    }
    QFont font = wordFont();
    const int room = width() - kShape - kGap;
    const int wide = QFontMetrics(font).horizontalAdvance(m_longest);
    if (wide > room && wide > 0) {
        font.setPixelSize(std::max(16, kWordPixels * room / wide));
    }
    painter.setFont(font);
    painter.setPen(m_tokens.ink);
    painter.drawText(QRect(kShape + kGap, 0, room, kShape), int(Qt::AlignLeft | Qt::AlignVCenter), m_words);
    painter.setFont(this->font());
    painter.setPen(m_tokens.soft);
    painter.drawText(QRect(0, kShape + 8, width(), height() - kShape - 8),
                     int(Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap), m_note);
}

}  // namespace ww::ui
