// The style of the program: that of the desktop, with boxes and circles to tick that are seen in every
// display and with numbers that keep their order in a layout from right to left. Not for colors and sizes
// that a style sheet can say (theme.h).
#pragma once

#include <QProxyStyle>
#include <QStyleOptionViewItem>

#include "ui/theme/theme.h"

namespace ww::ui::theme {

class ControlStyle : public QProxyStyle {
    Q_OBJECT

  public:
    /// `desktopStyle`: the name of the style that paints everything else.
    explicit ControlStyle(const QString& desktopStyle);

    void setLook(const Tokens& tokens, const Metrics& metrics);

    /// A dialog, also one of Qt's own, is shown no larger than the screen has room for.
    void polish(QWidget* widget) override;
    using QProxyStyle::polish;
    /// A hint of this style alone: the weight of the numbers in cells; any other style says 0.
    static constexpr StyleHint kNumeralWeight = static_cast<StyleHint>(SH_CustomBase + 0x7a1);
    /// A hint of this style alone: what large targets are kept apart by, device-independent pixels; 0 where
    /// there are none.
    static constexpr StyleHint kTargetGap = static_cast<StyleHint>(SH_CustomBase + 0x7a2);
    int styleHint(StyleHint hint, const QStyleOption* option = nullptr, const QWidget* widget = nullptr,
                  QStyleHintReturn* returned = nullptr) const override;
    /// Large targets stand apart in every window but the main one, whose places have gaps of their own
    /// (keepApart).
    int pixelMetric(PixelMetric metric, const QStyleOption* option = nullptr,
                    const QWidget* widget = nullptr) const override;

    /// Boxes to tick (also those in cells) and circles to choose: a frame with a contrast of at least 3:1
    /// against paper, panel and the row in hand (WCAG 2.2, 1.4.11), a tick, a bar for "partly" or a dot in
    /// ink; dashed where disabled.
    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget = nullptr) const override;
    /// Cells and items. Those of lists to choose from are large targets, and in every window but the main one
    /// also rows that can be chosen.
    void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget = nullptr) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                           const QWidget* widget = nullptr) const override;
    /// Buttons, heads, tabs and choices.
    void drawItemText(QPainter* painter, const QRect& box, int flags, const QPalette& palette, bool isEnabled,
                      const QString& words, QPalette::ColorRole role = QPalette::NoRole) const override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void paintBox(QPainter& painter, const QRect& box, State state) const;
    void paintCircle(QPainter& painter, const QRect& box, State state) const;
    QStyleOptionViewItem asWritten(const QStyleOptionViewItem& item) const;
    QPen framePen(State state) const;
    QColor fill(State state) const;

    /// The least side of a large target, device-independent pixels (common practice for touch); 0 where there
    /// are none.
    int leastTarget() const { return m_metrics.hasLargeTargets ? 48 : 0; }

    Tokens m_tokens;
    Metrics m_metrics;
};

}  // namespace ww::ui::theme
