// A field for one value: Enter or leaving it stores, Esc or undo restores, a refused text stays selected.
// While nothing is typed, undo and redo are the window's. Knows no workbook.
#pragma once

#include <functional>

#include "ui/widgets/hinted_field.h"

namespace ww::ui {

class EntryField : public HintedField {
    Q_OBJECT

  public:
    /// Stores what was typed. False: refused; the text stays, selected.
    using Store = std::function<bool(const QString& text)>;

    explicit EntryField(QWidget* parent = nullptr);
    void setStore(Store store) { m_store = std::move(store); }
    /// The stored value as text; ends what was being typed.
    void setStored(const QString& text);
    QString stored() const { return m_stored; }
    /// The stored value changed elsewhere: a text that was refused stays here, to be mended.
    void renewStored(const QString& text);
    /// Whether something is typed that is not stored yet.
    bool isTyped() const { return text() != m_stored; }
    /// Whether what is typed was refused, or is offered; it stays until it is mended or given up with Esc.
    bool isRefused() const { return (m_isRefused || m_isOffered) && isTyped(); }
    /// A text that was refused here before stands in the field again.
    void setRefused(const QString& text);
    /// A text that was typed here before and never entered stands in the field again. It waits as a refused
    /// one does, and is stored by Enter alone or once it is typed on.
    void setOffered(const QString& text);
    bool isOffered() const { return m_isOffered && isTyped(); }
    /// Stores what was typed; false where it was refused, or is offered and not taken.
    bool commit();
    /// What is typed is given up as a whole, and does not come back.
    bool undoesItsOwn() const override { return isTyped(); }
    bool redoesItsOwn() const override { return isTyped(); }

  signals:
    /// A text that was refused is given up: what was said of it no longer holds.
    void refusalGivenUp();
    /// An offered text is still neither taken nor given up where the field is left or gets the keys.
    void offerWaits();

  protected:
    /// Enter is pressed: what is offered counts as typed.
    void takeOffered() { m_isOffered = false; }
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void restore();

    Store m_store;
    QString m_stored;
    bool m_isRefused = false;
    bool m_isOffered = false;
    bool m_isCommitting = false;
};

}  // namespace ww::ui
