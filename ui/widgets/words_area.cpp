#include "ui/widgets/words_area.h"

#include <QEvent>
#include <QResizeEvent>
#include <algorithm>

namespace ww::ui {

WordsArea::WordsArea(QWidget* words, const QString& name, QWidget* parent) : PatientArea(parent) {
    setWidget(words);
    setWidgetResizable(true);
    setFrameShape(NoFrame);
    setProperty("ringed", true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(name);
    setMinimumHeight(0);
}

void WordsArea::setWhole(bool isWhole) {
    if (isWhole != m_isWhole) {
        m_isWhole = isWhole;
        fit();
    }
}

bool WordsArea::event(QEvent* event) {
    const bool isTaken = PatientArea::event(event);
    if (event->type() == QEvent::LayoutRequest) {
        fit();
    }
    return isTaken;
}

void WordsArea::resizeEvent(QResizeEvent* event) {
    PatientArea::resizeEvent(event);
    fit();
}

void WordsArea::fit() {
    const int ring = height() - viewport()->height();
    const int words = std::max(0, widget()->heightForWidth(viewport()->width()));
    setMinimumHeight(m_isWhole ? words + ring : 0);
}

}  // namespace ww::ui
