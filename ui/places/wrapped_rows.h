// Words of a table wrapped in columns that share its width, so that nothing scrolls sideways. Not for tables
// that are typed into (EntryTable).
#pragma once

#include <QObject>
#include <QTableView>

namespace ww::ui {

/// Keeps a table so, whatever its width and whenever it is filled anew; each row gets the height of its words
/// when it is first seen.
class WrappedRows : public QObject {
    Q_OBJECT

  public:
    /// `table` has its model and becomes the owner. `filling`: the column that takes what is left, which may
    /// hold long texts; the others have room for so many digits, and for their words.
    WrappedRows(QTableView& table, int filling, int digits = 3);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fit();
    void fitSeen();

    QTableView& m_table;
    const int m_filling;
    const int m_digits;
    bool m_isFitting = false;
};

/// Gives the rows in sight the height of their words.
void fitRowsSeen(QTableView& table);

/// A table whose rows are only read, one in hand at a time; Tab leaves it. It shows a model, which must
/// outlive it; `name` is spoken.
QTableView* makeReadTable(QAbstractItemModel* model, int filling, const QString& name, QWidget* parent);

}  // namespace ww::ui
