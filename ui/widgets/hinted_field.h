// A line to type into that says, while it is empty, what belongs there; where it is short the hint is written
// narrower, and where it is too short not at all: never cut. Undo and redo are the window's while the line
// has nothing of its own to take back. Knows no workbook.
#pragma once

#include <QLineEdit>

namespace ww::ui {

class HintedField : public QLineEdit {
    Q_OBJECT

  public:
    explicit HintedField(QWidget* parent = nullptr) : QLineEdit(parent) {}
    HintedField(const QString& hint, QWidget* parent) : QLineEdit(parent) { setHint(hint); }

    /// Also what the field is described by where it has no other description.
    void setHint(const QString& hint);
    /// The whole hint, written or not.
    QString hint() const { return m_hint; }
    /// The hint where it is written: in an empty field with room for it in narrow letters.
    QString shownHint() const;
    /// The font in which the hint is written in the room there is.
    QFont hintFont() const;
    /// Where the hint stands, in the field's own coordinates.
    QRect hintRect() const;
    /// Whether undo takes back what was typed here.
    virtual bool undoesItsOwn() const { return isUndoAvailable(); }
    /// Whether redo types again what was taken back here.
    virtual bool redoesItsOwn() const { return isRedoAvailable(); }

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    /// Between text and paper, with the contrast of a text (WCAG 2.2, 1.4.6).
    QColor hintColor() const;

    QString m_hint;
};

}  // namespace ww::ui
