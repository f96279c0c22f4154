#include "ui/places/pump/section_page.h"

#include <QCoreApplication>
#include <QVBoxLayout>

namespace ww::ui {

QString computingMessage() {
    return QCoreApplication::translate("PumpPage", "The pumps are being computed.");
}

SectionPage::SectionPage(Make make, Draw draw, QWidget* parent)
    : PumpPage(parent), m_make(std::move(make)), m_draw(std::move(draw)), m_view(new SectionView(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 4, 4, 4);
    layout->addWidget(m_view);
}

void SectionPage::show(const pump_room::PumpPicture* picture) {
    if (picture == nullptr) {
        m_view->showMessage(computingMessage());
        return;
    }
    m_view->show(m_make(*picture), m_draw ? m_draw(*picture) : std::vector<charts::ChartFigure>{});
}

void SectionPage::setTokens(const theme::Tokens& tokens) {
    m_view->setTokens(tokens);
}

}  // namespace ww::ui
