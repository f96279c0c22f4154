// Rows that stand for the records of one kind, in their order: what every such table does alike. Not for what
// stands in a cell.
#pragma once

#include <QAbstractTableModel>
#include <functional>

#include "ui/workbook_bridge.h"

namespace ww::ui {

class CountedRows : public QAbstractTableModel {
    Q_OBJECT

  public:
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    /// The text of the cell, where numbers stand to the right; spoken: the row's first cell, the title, the
    /// text. The first column is strong.
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// Every cell may be typed into unless the job is read only.
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Says that other rows stand here now.
    void renew();

  protected:
    /// `count` tells how many records of the kind a job has. The bridge must outlive the rows.
    CountedRows(WorkbookBridge& bridge, project::RecordKind kind,
                std::function<std::size_t(const project::Project&)> count, QObject* parent);

    /// The heads of the columns; as many as there are columns.
    virtual QStringList titles() const = 0;
    /// What stands in a cell, with the record at `row` as the job has it now.
    virtual QString cellText(int row, int column) const = 0;
    /// Whether a column holds numbers, which stand to the right.
    virtual bool isNumber(int) const { return false; }

    WorkbookBridge& m_bridge;

  private:
    void follow(const project::ChangeSet& changes);
    QVariant alignment(int column) const;

    project::RecordKind m_kind;
    std::function<std::size_t(const project::Project&)> m_count;
    int m_rowCount = 0;  ///< as last told to the views
};

}  // namespace ww::ui
