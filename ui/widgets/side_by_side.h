// Two parts beside one another where both have room, the second below the first where they have not.
#pragma once

#include <QBoxLayout>
#include <QWidget>

namespace ww::ui {

class SideBySide : public QWidget {
    Q_OBJECT

  public:
    /// A height: that of all it holds.
    static constexpr int kAsItAsks = -1;
    struct Part {
        QWidget* widget;
        int width;        ///< what it is to have at least beside the other, device-independent pixels
        int stretch;      ///< its part of what is left; 0: none
        int heightBelow;  ///< what it is to have at least where one stands below the other; or kAsItAsks
    };
    /// Takes both widgets over; `first` stands on the side where reading begins.
    SideBySide(Part first, Part second, QWidget* parent = nullptr);

    QSize minimumSizeHint() const override;
    /// What the first part is to have at least beside the other from now on, device-independent pixels.
    void setFirstWidth(int width);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    bool event(QEvent* event) override;

  private:
    void arrange();

    Part m_parts[2];
    QBoxLayout* m_line;
};

}  // namespace ww::ui
