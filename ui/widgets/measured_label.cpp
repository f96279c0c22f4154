#include "ui/widgets/measured_label.h"

namespace ww::ui {

int MeasuredLabel::heightForWidth(int width) const {
    if (m_measured != text()) {
        m_measured = text();
        m_heights.clear();
    }
    const auto found = m_heights.constFind(width);
    return found != m_heights.constEnd() ? *found
                                         : *m_heights.insert(width, QLabel::heightForWidth(width));
}

void MeasuredLabel::changeEvent(QEvent* event) {
    m_heights.clear();
    QLabel::changeEvent(event);
}

}  // namespace ww::ui
