// A field for a few lines of plain text: leaving it or Ctrl+Enter stores, Esc restores. Knows no workbook.
#pragma once

#include <QPlainTextEdit>
#include <functional>

namespace ww::ui {

class NoteField : public QPlainTextEdit {
    Q_OBJECT

  public:
    /// Stores what was typed. False: refused; the text stays.
    using Store = std::function<bool(const QString& text)>;

    explicit NoteField(QWidget* parent = nullptr);
    void setStore(Store store) { m_store = std::move(store); }
    /// The stored text; ends what was being typed.
    void setStored(const QString& text);
    /// Whether something is typed that is not stored yet.
    bool isTyped() const { return toPlainText() != m_stored; }
    /// Stores what was typed; false where it was refused.
    bool commit();

  signals:
    /// Ctrl+Enter stored the text, or Esc was pressed on a text that is stored.
    void done();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;
    /// Nothing of an empty clipboard: Qt 6.4 takes the first of its formats without asking whether there is
    /// one.
    void insertFromMimeData(const QMimeData* source) override;

  private:
    Store m_store;
    QString m_stored;
};

}  // namespace ww::ui
