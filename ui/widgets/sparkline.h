// A small line of ratios by round with the band around one behind it. Knows no workbook.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "ui/theme/theme.h"

namespace ww::ui {

class Sparkline : public QWidget {
    Q_OBJECT

  public:
    explicit Sparkline(QWidget* parent = nullptr);
    /// One ratio a round, oldest first; a missing one leaves a gap. `bandFraction` is half the band's width.
    void setRatios(std::vector<std::optional<double>> ratios, double bandFraction);
    void setTokens(const theme::Tokens& tokens);
    QSize sizeHint() const override { return {180, 64}; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::vector<std::optional<double>> m_ratios;
    double m_bandFraction = 0.05;
    theme::Tokens m_tokens;
};

}  // namespace ww::ui
