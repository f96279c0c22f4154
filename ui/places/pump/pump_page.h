// One page of the place Pump. Not for deciding which is shown (pump_place.h).
#pragma once

#include <QLayout>
#include <QWidget>

#include "core/pump_room/pump_picture.h"
#include "ui/theme/theme.h"

namespace ww::ui {

class PumpPage : public QWidget {
    Q_OBJECT

  public:
    using QWidget::QWidget;

    /// What was computed of the job; null while there is nothing, or while it is being computed for the first
    /// time. It may be that of the job before its last change.
    virtual void show(const pump_room::PumpPicture* picture) = 0;
    virtual void setTokens(const theme::Tokens& tokens) = 0;
    virtual void setMetrics(const theme::Metrics&) {}
    virtual void takeFocus() { setFocus(Qt::OtherFocusReason); }
    /// The page's chart becomes its table, or comes back.
    virtual void toggleTable() {}
    /// Whether it shows a chart that becomes its table.
    virtual bool hasChart() const { return false; }
    /// The height that it needs at least in that width, px.
    int leastHeight(int width) const {
        return layout()->hasHeightForWidth() ? layout()->totalMinimumHeightForWidth(width)
                                             : layout()->totalMinimumSize().height();
    }

  protected:
    /// Room for a sheet to type into and across for a section to read, device-independent pixels.
    static constexpr int kSheetWidth = 420;
    static constexpr int kSheetHeight = 220;
    static constexpr int kSectionWidth = 420;
};

}  // namespace ww::ui
