// A table into which a person types as fast as keys arrive: every cell is stored before the next key is read.
// Not for what is stored, nor where the cursor goes: the user of the table says both. Knows no workbook.
#pragma once

#include <QLineEdit>
#include <QTableView>
#include <functional>

namespace ww::ui {

/// The stock table commits Enter through a queued call, so fast keys run together; this one has an editor of
/// its own and stores within the key event.
class EntryTable : public QTableView {
    Q_OBJECT

  public:
    /// Stores what was typed into a cell. False: refused; the text stays in the cell, selected.
    using Store = std::function<bool(const QModelIndex& cell, const QString& text)>;

    explicit EntryTable(QWidget* parent = nullptr);

    void setStore(Store store) { m_store = std::move(store); }

    /// Opens the editor on a cell, with its text selected, or with `text` behind which typing goes on.
    void beginEdit(const QModelIndex& cell, const QString* text = nullptr);
    bool isEditing() const { return m_editor->isVisible(); }
    /// Stores and closes the open editor; false where the text was refused (the editor stays open).
    bool commitEdit();
    /// Closes the editor without storing.
    void cancelEdit();
    QLineEdit* editor() const { return m_editor; }

    void keyboardSearch(const QString&) override {}
    void setModel(QAbstractItemModel* model) override;

  signals:
    /// Enter was pressed in the last cell.
    void enteredAtEnd();
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

    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

  private:
    bool handleMovingKey(QKeyEvent* event);
    bool takesTyping(const QModelIndex& cell) const;
    void goTo(const QModelIndex& cell);
    void leave(bool forward);
    void placeEditor();
    void tellContents();

    QLineEdit* m_editor;
    QPersistentModelIndex m_cell;
    QString m_before;  ///< text of the cell when the editor opened
    Store m_store;
    bool m_isCommitting = false;
    bool m_isClosing = false;
    bool m_isTelling = false;
};

}  // namespace ww::ui
