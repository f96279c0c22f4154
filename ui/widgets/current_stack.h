// Pages of which one is shown, as large as that one asks for: pages that are not seen take no room.
#pragma once

#include <QStackedWidget>

namespace ww::ui {

class CurrentStack : public QStackedWidget {
    Q_OBJECT

  public:
    explicit CurrentStack(QWidget* parent = nullptr) : QStackedWidget(parent) {
        connect(this, &QStackedWidget::currentChanged, this, [this] { updateGeometry(); });
    }
    QSize sizeHint() const override {
        return currentWidget() != nullptr ? currentWidget()->sizeHint() : QStackedWidget::sizeHint();
    }
    QSize minimumSizeHint() const override {
        return currentWidget() != nullptr ? currentWidget()->minimumSizeHint()
                                          : QStackedWidget::minimumSizeHint();
    }
};

}  // namespace ww::ui
