// The head of a table whose words are wrapped to the width of their column, as high as the most lines need.
#pragma once

#include <QHeaderView>

namespace ww::ui {

class WrappedHead : public QHeaderView {
    Q_OBJECT

  public:
    explicit WrappedHead(QWidget* parent = nullptr);

    QSize sizeHint() const override;
    /// What a style may take of the width of a head beside its words, device-independent pixels.
    static constexpr int kMargins = 14;

  protected:
    void initStyleOptionForIndex(QStyleOptionHeader* option, int logicalIndex) const override;

  private:
    void followWidths();

    int m_height = 0;
};

}  // namespace ww::ui
