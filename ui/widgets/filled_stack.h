// Pages of which one is shown, in the room there is, however high its words would like to be in that width.
#pragma once

#include <QStackedWidget>

namespace ww::ui {

class FilledStack : public QStackedWidget {
    Q_OBJECT

  public:
    using QStackedWidget::QStackedWidget;
    bool hasHeightForWidth() const override { return false; }
};

}  // namespace ww::ui
