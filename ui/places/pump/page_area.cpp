#include "ui/places/pump/page_area.h"

#include <QResizeEvent>
#include <QScrollBar>
#include <QVBoxLayout>

namespace ww::ui {
namespace {

constexpr int kLeastAreaHeight = 80;

}  // namespace

/// What scrolls: the page in the height that it needs in its width.
class PageArea::Holder : public QWidget {
  public:
    explicit Holder(QWidget* parent) : QWidget(parent) {
        auto* layout = new QVBoxLayout(this);
        layout->setContentsMargins(0, 0, 0, 0);
    }
    void setPage(PumpPage* page) {
        m_page = page;
        updateGeometry();
    }
    QSize minimumSizeHint() const override {
        return m_page != nullptr ? QSize(m_page->minimumSizeHint().width(), m_page->leastHeight(width()))
                                 : QSize(0, 0);
    }

  protected:
    /// Words that are wrapped need another height in another width.
    void resizeEvent(QResizeEvent* event) override {
        QWidget::resizeEvent(event);
        if (event->size().width() != event->oldSize().width()) {
            updateGeometry();
        }
    }

  private:
    PumpPage* m_page = nullptr;
};

PageArea::PageArea(QWidget* parent)
    : PatientArea(parent), m_holder(new Holder(this)), m_shelf(new FilledStack(m_holder)) {
    m_holder->layout()->addWidget(m_shelf);
    setWidget(m_holder);
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void PageArea::take(PumpPage* page) {
    m_shelf->addWidget(page);
    m_holder->setPage(page);
    updateGeometry();
}

QSize PageArea::minimumSizeHint() const {
    return {m_holder->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(), kLeastAreaHeight};
}

}  // namespace ww::ui
