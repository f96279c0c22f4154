#include "ui/widgets/ordered_dialog.h"

#include <QScreen>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/mnemonics.h"
#include "ui/widgets/dialog_area.h"
#include "ui/widgets/reading_order.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui {
namespace {

/// No more than the screen has beside the frame of a window.
QSize onScreen(const QWidget& dialog, QSize wanted) {
    constexpr int kFrame = 60;
    return wanted.boundedTo(dialog.screen()->availableSize() - QSize(kFrame, kFrame));
}

}  // namespace

void OrderedDialog::layOut(QLayout* content, QWidget* buttons) {
    m_content = new QWidget;
    m_buttons = buttons;
    content->setContentsMargins(0, 0, 0, 0);
    m_content->setLayout(content);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(new DialogArea(m_content, this), 1);
    layout->addWidget(buttons);
}

void OrderedDialog::resizeWithText(int width, int height) {
    resize(onScreen(*this, QSize(width, height) * textScale(font())));
}

void OrderedDialog::resizeToWords(int width) {
    // A sheet of style makes controls higher, which they know when they have it.
    for (QWidget* control : findChildren<QWidget*>()) {
        control->ensurePolished();
    }
    const QMargins margins = layout()->contentsMargins();
    const QSize frame(
        margins.left() + margins.right(),
        margins.top() + layout()->spacing() + m_buttons->sizeHint().height() + margins.bottom());
    const int across = std::max(static_cast<int>(width * textScale(font())), minimumSizeHint().width());
    QLayout& content = *m_content->layout();
    content.activate();
    const int down = content.hasHeightForWidth() ? content.totalHeightForWidth(across - frame.width())
                                                 : content.totalSizeHint().height();
    resize(onScreen(*this, {across, down + frame.height()}));
}

void OrderedDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    settleLetters(*this, {});
    const QWidget* keys = focusWidget();
    if (m_content == nullptr || (keys != nullptr && m_content->isAncestorOf(keys))) {
        return;
    }
    if (const auto stops = stopsInReadingOrder(*m_content); !stops.empty()) {
        stops.front()->setFocus(Qt::OtherFocusReason);
    }
}

bool OrderedDialog::focusNextPrevChild(bool isForward) {
    return goToNextStop(*this, isForward) || QDialog::focusNextPrevChild(isForward);
}

}  // namespace ww::ui
