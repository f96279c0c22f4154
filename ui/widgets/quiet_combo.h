// A choice that a turned wheel never changes by accident, and whose words are written narrower where they
// have little room; what is still cut is whole where a pointer rests on it. Knows no workbook.
#pragma once

#include <QComboBox>
#include <QWheelEvent>

namespace ww::ui {

class QuietCombo : public QComboBox {
    Q_OBJECT

  public:
    using QComboBox::QComboBox;

    /// The frame of a style sheet takes more from the words than the hint of Qt's counts.
    QSize sizeHint() const override { return QComboBox::sizeHint() + QSize(kMoreFrame, 0); }
    QSize minimumSizeHint() const override { return QComboBox::minimumSizeHint() + QSize(kMoreFrame, 0); }

    /// What is written in the room there is, and the font of it.
    struct Writing {
        QFont font;
        QString text;
    };
    Writing writing() const;

  protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

  private:
    static constexpr int kMoreFrame = 2;
};

}  // namespace ww::ui
