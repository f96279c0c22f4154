#include "ui/widgets/wrapped_head.h"

#include <QStyleOptionHeader>
#include <algorithm>

namespace ww::ui {

WrappedHead::WrappedHead(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setHighlightSections(false);
    connect(this, &QHeaderView::sectionResized, this, &WrappedHead::followWidths);
}

QSize WrappedHead::sizeHint() const {
    constexpr int kAboveAndBelow = 8;
    constexpr int kMost = 1000;
    QSize size = QHeaderView::sizeHint();
    int height = fontMetrics().height();
    for (int column = 0; model() != nullptr && column < count(); ++column) {
        if (isSectionHidden(column)) {
            continue;
        }
        const QString words = model()->headerData(column, Qt::Horizontal).toString();
        const QRect room(0, 0, sectionSize(column) - kMargins, kMost);
        height = std::max(height, fontMetrics().boundingRect(room, Qt::TextWordWrap, words).height());
    }
    size.setHeight(height + kAboveAndBelow);
    return size;
}

void WrappedHead::initStyleOptionForIndex(QStyleOptionHeader* option, int logicalIndex) const {
    QHeaderView::initStyleOptionForIndex(option, logicalIndex);
    option->textAlignment |= Qt::Alignment(int(Qt::TextWordWrap));
}

void WrappedHead::followWidths() {
    const int height = sizeHint().height();
    if (height != m_height) {
        m_height = height;
        emit geometriesChanged();
    }
}

}  // namespace ww::ui
