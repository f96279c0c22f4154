#include "ui/widgets/wrapped_head.h"

#include <QEvent>
#include <QStyleOptionHeader>
#include <QTimer>
#include <algorithm>

namespace ww::ui {

WrappedHead::WrappedHead(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setHighlightSections(false);
    // Many columns change their width at once; the height follows when all have.
    connect(this, &QHeaderView::sectionResized, this, [this] {
        if (!m_isFollowing) {
            m_isFollowing = true;
            QTimer::singleShot(0, this, &WrappedHead::followWidths);
        }
    });
}

int WrappedHead::linesHeight(int column) const {
    const QString words = model()->headerData(column, Qt::Horizontal).toString();
    const int width = sectionSize(column) - kMargins;
    Measured& measured = m_measured[column];
    if (measured.words != words || measured.width != width) {
        constexpr int kMost = 1000;
        const QRect box = fontMetrics().boundingRect(QRect(0, 0, width, kMost), Qt::TextWordWrap, words);
        measured = {words, width, box.height()};
    }
    return measured.height;
}

QSize WrappedHead::sizeHint() const {
    constexpr int kAboveAndBelow = 8;
    int height = fontMetrics().height();
    for (int column = 0; model() != nullptr && column < count(); ++column) {
        height = std::max(height, isSectionHidden(column) ? 0 : linesHeight(column));
    }
    return {length(), height + kAboveAndBelow};
}

void WrappedHead::initStyleOptionForIndex(QStyleOptionHeader* option, int logicalIndex) const {
    QHeaderView::initStyleOptionForIndex(option, logicalIndex);
    option->textAlignment |= Qt::Alignment(int(Qt::TextWordWrap));
}

void WrappedHead::changeEvent(QEvent* event) {
    QHeaderView::changeEvent(event);
    m_measured.clear();
}

void WrappedHead::followWidths() {
    m_isFollowing = false;
    const int height = sizeHint().height();
    if (height != m_height) {
        m_height = height;
        emit geometriesChanged();
    }
}

}  // namespace ww::ui
