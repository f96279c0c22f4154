#include "ui/widgets/wrapped_choice.h"

#include <QStyle>
#include <QStyleOptionButton>
#include <QTextLayout>
#include <algorithm>
#include <utility>

#include "ui/mnemonics.h"

namespace ww::ui {

WrappedChoice::WrappedChoice(QString words, QWidget* parent)
    : QRadioButton(parent), m_words(std::move(words)) {
    setText(withoutLetter(m_words));
}

int WrappedChoice::widthOf(const QString& words) const {
    ensurePolished();
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text = withoutLetter(words);
    const QSize box =
        style()->itemTextRect(fontMetrics(), QRect(), Qt::TextShowMnemonic, true, option.text).size();
    return style()->sizeFromContents(QStyle::CT_RadioButton, &option, box, this).width();
}

int WrappedChoice::wholeWidth() const {
    return widthOf(m_words);
}

int WrappedChoice::leastWidth() const {
    int widest = 0;
    for (const QString& word : m_words.split(' ')) {
        widest = std::max(widest, widthOf(word));
    }
    return widest;
}

void WrappedChoice::breakFor(int width) {
    const int room = width - (widthOf(m_words) - fontMetrics().horizontalAdvance(m_words));
    QTextLayout lines(m_words, font());
    QStringList broken;
    lines.beginLayout();
    for (QTextLine line = lines.createLine(); line.isValid(); line = lines.createLine()) {
        line.setLineWidth(room);
        broken << m_words.mid(line.textStart(), line.textLength()).trimmed();
    }
    lines.endLayout();
    setText(withoutLetter(broken.join('\n')));
}

}  // namespace ww::ui
