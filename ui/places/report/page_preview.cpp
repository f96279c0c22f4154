#include "ui/places/report/page_preview.h"

#include <QPainter>
#include <QResizeEvent>

namespace ww::ui {
namespace {

constexpr int kBorder = 8;

}  // namespace

PagePreview::PagePreview(QWidget* parent)
    : QWidget(parent), m_tokens(theme::tokens(theme::Display::Office)) {}

void PagePreview::show(std::shared_ptr<const report::ReportPages> pages, std::size_t page) {
    m_pages = std::move(pages);
    m_page = page;
    m_drawn = QPixmap();
    setAccessibleName(m_pages != nullptr ? tr("Page %1: %2").arg(page + 1).arg(m_pages->names[page])
                                         : QString());
    setFixedHeight(heightForWidth(width()));
    update();
}

void PagePreview::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    setFixedHeight(heightForWidth(width()));
}

void PagePreview::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    update();
}

int PagePreview::heightForWidth(int width) const {
    if (m_pages == nullptr) {
        return width;
    }
    const QSizeF size = m_pages->size(m_page);
    return static_cast<int>((width - 2 * kBorder) * size.height() / size.width()) + 2 * kBorder;
}

void PagePreview::paintEvent(QPaintEvent*) {
    if (m_pages == nullptr) {
        return;
    }
    const QRect target = rect().adjusted(kBorder, kBorder, -kBorder, -kBorder);
    const QSize wanted = target.size() * devicePixelRatioF();
    if (m_drawn.size() != wanted && !wanted.isEmpty()) {
        m_drawn = QPixmap(wanted);
        m_drawn.fill(Qt::white);
        QPainter painter(&m_drawn);
        report::renderPage(painter, *m_pages, m_page, QRectF(QPointF(0, 0), QSizeF(wanted)));
        painter.end();
        m_drawn.setDevicePixelRatio(devicePixelRatioF());
    }
    QPainter painter(this);
    painter.drawPixmap(target.topLeft(), m_drawn);
    painter.setPen(QPen(m_tokens.rule, 1));
    painter.drawRect(target);
}

}  // namespace ww::ui
