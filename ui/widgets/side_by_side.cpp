#include "ui/widgets/side_by_side.h"

#include <QEvent>
#include <algorithm>

namespace ww::ui {

namespace {

constexpr int kBetweenParts = 14;

int widthBeside(const SideBySide::Part& part) {
    return std::max(part.width, part.widget->minimumSizeHint().width());
}

/// Words that are wrapped in that width count.
int heightBelow(const SideBySide::Part& part, int width) {
    if (part.heightBelow == SideBySide::kAsItAsks) {
        return part.widget->sizeHint().height();
    }
    const QLayout* layout = part.widget->layout();
    const int least = layout != nullptr && layout->hasHeightForWidth()
                          ? layout->totalMinimumHeightForWidth(width)
                          : part.widget->minimumSizeHint().height();
    return std::max(part.heightBelow, least);
}

}  // namespace

SideBySide::SideBySide(Part first, Part second, QWidget* parent)
    : QWidget(parent), m_parts{first, second}, m_line(new QBoxLayout(QBoxLayout::LeftToRight, this)) {
    m_line->setContentsMargins(0, 0, 0, 0);
    m_line->setSpacing(kBetweenParts);
    for (const Part& part : m_parts) {
        m_line->addWidget(part.widget, part.stretch);
    }
}

QSize SideBySide::minimumSizeHint() const {
    const int width =
        std::max(m_parts[0].widget->minimumSizeHint().width(), m_parts[1].widget->minimumSizeHint().width());
    return {width, m_line->minimumSize().height()};
}

void SideBySide::setFirstWidth(int width) {
    if (m_parts[0].width != width) {
        m_parts[0].width = width;
        arrange();
    }
}

void SideBySide::arrange() {
    const int wanted = widthBeside(m_parts[0]) + kBetweenParts + widthBeside(m_parts[1]);
    const bool isBelow = width() < wanted;
    m_line->setDirection(isBelow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    for (const Part& part : m_parts) {
        const bool isFixed = !isBelow && part.stretch == 0;
        part.widget->setMaximumWidth(isFixed ? widthBeside(part) : QWIDGETSIZE_MAX);
        part.widget->setMinimumWidth(isFixed ? widthBeside(part) : 0);
        part.widget->setMinimumHeight(isBelow ? heightBelow(part, width()) : 0);
    }
    updateGeometry();
}

void SideBySide::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

/// What was laid out unseen may need another width by now.
void SideBySide::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    arrange();
}

bool SideBySide::event(QEvent* event) {
    const bool isTaken = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) {
        arrange();
    }
    return isTaken;
}

}  // namespace ww::ui
