// The head of a table whose words are wrapped to the width of their column, as high as the most lines need.
#pragma once

#include <QHash>
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
    void changeEvent(QEvent* event) override;

  private:
    /// What was last measured of a column.
    struct Measured {
        QString words;
        int width = 0;
        int height = 0;
    };
    int linesHeight(int column) const;
    void followWidths();

    mutable QHash<int, Measured> m_measured;
    int m_height = 0;
    bool m_isFollowing = false;
};

}  // namespace ww::ui
