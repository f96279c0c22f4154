// A table of ready texts for lists that are only read: rows are replaced as a whole. Not for typing
// (EntryTable) nor for large tables.
#pragma once

#include <QAbstractTableModel>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/base/id.h"

namespace ww::ui {

/// One row: its cells, what it is about, and whether it is struck through.
struct TextRow {
    QStringList cells;
    std::optional<base::Id> id;
    std::optional<int> state;  ///< int(balancing::State), painted in the state column
    bool isOver = false;
    bool isStruck = false;
};

class TextTable : public QAbstractTableModel {
    Q_OBJECT

  public:
    /// `stateColumn`: the column that shows the state's shape; -1: none.
    explicit TextTable(QStringList titles, int stateColumn = -1, QObject* parent = nullptr);

    /// Other rows stand here now; each has a cell for every title.
    void setRows(std::vector<TextRow> rows);
    /// The head of a column says something else.
    void setTitle(int column, const QString& title);
    const TextRow& row(int index) const { return m_rows[static_cast<std::size_t>(index)]; }
    /// The row about this; -1 where there is none.
    int rowOf(const base::Id& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QStringList m_titles;
    int m_stateColumn;
    std::vector<TextRow> m_rows;
};

}  // namespace ww::ui
