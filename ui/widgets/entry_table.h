// A table into which a person types as fast as keys arrive: every cell is stored before the next key is read.
// Not for what is stored, nor where the cursor goes: the user of the table says both. Knows no workbook.
#pragma once

#include <QLineEdit>
#include <QTableView>
#include <functional>
#include <optional>

#include "ui/widgets/blind_typing.h"

namespace ww::ui {

/// The stock table commits Enter through a queued call, so fast keys run together; this one has an editor of
/// its own and stores within the key event. What is typed on without looking after a text was refused does
/// not replace that text (BlindTyping).
class EntryTable : public QTableView {
    Q_OBJECT

  public:
    /// Stores what was typed into a cell. False: refused; the text stays in the cell, selected.
    using Store = std::function<bool(const QModelIndex& cell, const QString& text)>;

    explicit EntryTable(QWidget* parent = nullptr);

    void setStore(Store store) { m_store = std::move(store); }
    /// Cells for which this says true are stored also where the text that was typed is the one they hold: the
    /// same value may be read anew. Without it such a text is nothing new.
    void setStoresSameText(std::function<bool(const QModelIndex& cell)> storesSameText) {
        m_storesSameText = std::move(storesSameText);
    }

    /// Enter goes through the cells of a row before it goes to the next one, for rows that are typed whole;
    /// without it Enter goes down.
    void setEntersByRow(bool entersByRow) { m_entersByRow = entersByRow; }
    bool entersByRow() const { return m_entersByRow; }

    /// Opens the editor on a cell, with its text selected, or with `text` behind which typing goes on.
    void beginEdit(const QModelIndex& cell, const QString* text = nullptr);
    /// Whether an editor is open, also while the table is not seen.
    bool isEditing() const { return !m_editor->isHidden(); }
    /// Whether the text in the open editor was refused, or is offered, and waits to be mended or given up.
    bool isRefused() const { return isEditing() && (m_isRefused || m_isOffered); }
    /// Whether the open editor holds another text than its cell.
    bool isTyped() const { return isEditing() && m_editor->text() != m_before; }
    /// Whether typing changes something where the table stands.
    bool canType() const { return typingCell(currentIndex()).isValid(); }
    /// Stores and closes the open editor; false where the text was refused, or is offered and not taken: the
    /// editor stays open at its cell however the table is left, and has the keys again when the table gets
    /// them.
    bool commitEdit();
    /// commitEdit(), after which a text that was refused has the keys again: for who is about to add a row.
    bool settleEdit();
    /// Opens the editor on a cell with a text that was typed there before and never entered. It waits as a
    /// refused one does, and is stored by Enter alone or once it is typed on. The keys stay where they are.
    void offerEdit(const QModelIndex& cell, const QString& text);
    /// Whether the text in the open editor is offered and neither taken nor typed on.
    bool isOffered() const { return isEditing() && m_isOffered; }
    /// The cell of the open editor; invalid while none is open.
    QModelIndex editedCell() const { return isEditing() ? QModelIndex(m_cell) : QModelIndex(); }
    /// Closes the editor without storing.
    void cancelEdit();
    QLineEdit* editor() const { return m_editor; }

    void keyboardSearch(const QString&) override {}
    void setModel(QAbstractItemModel* model) override;

  signals:
    /// Enter was pressed in the last cell.
    void enteredAtEnd();
    /// A key was typed at a cell that takes no typing.
    void typingRefused(const QModelIndex& cell);
    /// A text that was refused is given up: what was said of it no longer holds.
    void refusalGivenUp();
    /// isRefused() is another than before.
    void refusalChanged();
    /// The editor was opened or closed, or holds another text than before.
    void editChanged();
    /// An offered text is still neither taken nor given up where the table is left or gets the keys.
    void offerWaits();
    /// The room for columns, or what they must hold, changed.
    void resized();

  protected:
    /// The cell that typing changes while `current` is in hand; invalid where nothing can be typed.
    virtual QModelIndex typingCell(const QModelIndex& current) const;
    /// Where Enter goes from a cell; invalid at the end.
    virtual QModelIndex cellAfterEnter(const QModelIndex& cell);
    virtual QModelIndex cellBeforeEnter(const QModelIndex& cell);
    /// Where Tab goes while editing; the cell found is opened for editing if it takes typing.
    virtual QModelIndex cellAfterTab(const QModelIndex& cell) const;
    virtual QModelIndex cellBeforeTab(const QModelIndex& cell) const;
    /// Whether Tab belongs to the table also while nothing is typed; otherwise it leaves the table.
    virtual bool keepsTab() const { return false; }
    /// What the row of a cell is about, by which it is found again when the model was filled anew.
    virtual QString rowKey(const QModelIndex& cell) const;
    /// The row with that key, -1 where there is none; `row` is where it was.
    virtual int rowWithKey(const QString& key, int row) const;

    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void focusInEvent(QFocusEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

  private:
    void openEditor(const QModelIndex& cell, const QString& text);
    bool handleMovingKey(QKeyEvent* event);
    /// commitEdit() at a key.
    bool commitAt(const QKeyEvent& key);
    bool takesTyping(const QModelIndex& cell) const;
    bool isTicked(const QModelIndex& cell, const QString& text) const;
    void goTo(const QModelIndex& cell);
    void leave(bool forward);
    void placeEditor();
    void tellContents();
    /// An open editor goes over to the same cell of a model that is filled anew.
    void keepEdit();
    void findEdit();
    /// The cell whose text was refused is in hand again, and says why.
    void goBackToEdit();
    /// Whether the text in the open editor is what the cell holds, and nothing to store.
    bool isNothingNew(const QString& text) const;

    QLineEdit* m_editor;
    QPersistentModelIndex m_cell;
    QString m_key;     ///< of the row of the open cell
    QString m_before;  ///< text of the cell when the editor opened
    /// The open cell while the model is filled anew.
    struct KeptCell {
        int row;
        int column;
    };
    std::optional<KeptCell> m_kept;
    Store m_store;
    std::function<bool(const QModelIndex& cell)> m_storesSameText;
    bool m_entersByRow = false;
    bool m_isBegunByTyping = false;
    bool m_isRefused = false;
    bool m_isOffered = false;
    bool m_isCommitting = false;
    bool m_isClosing = false;
    bool m_isTelling = false;
    BlindTyping m_blind;
};

}  // namespace ww::ui
