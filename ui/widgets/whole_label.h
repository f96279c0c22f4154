// A wrapped label with room for so many lines that becomes higher where its words need more: nothing is cut,
// and words that have room move nothing. Not for rich text (measured_label.h).
#pragma once

#include <QLabel>

namespace ww::ui {

class WholeLabel : public QLabel {
    Q_OBJECT

  public:
    explicit WholeLabel(int lines, QWidget* parent = nullptr);

    /// Lines that have room whatever stands there.
    void setLines(int lines);
    /// Shows words. Once it became higher it stays so until its width, its font or the lines change.
    void setWords(const QString& words);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void grow();
    void fitAnew();

    int m_lines;
};

}  // namespace ww::ui
