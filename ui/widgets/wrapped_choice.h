// A choice whose words take as many lines as its width asks for. Not for what is chosen.
#pragma once

#include <QRadioButton>

namespace ww::ui {

class WrappedChoice : public QRadioButton {
    Q_OBJECT

  public:
    /// `words`: plain text, in which "&" marks no letter.
    explicit WrappedChoice(QString words, QWidget* parent = nullptr);

    /// The width that it has no line to break in, px.
    int wholeWidth() const;
    /// The width of its longest word, px.
    int leastWidth() const;
    /// Breaks its words for a width, px; its size hint has their height then.
    void breakFor(int width);

  private:
    int widthOf(const QString& words) const;

    QString m_words;
};

}  // namespace ww::ui
