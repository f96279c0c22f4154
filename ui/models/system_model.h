// The branches of the system as a table in the order of the tree. Not for storing; only shows what the bridge
// has.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "ui/workbook_bridge.h"

namespace ww::ui {

class SystemModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column {
        Tag,
        Serves,
        Parent,
        Kind,
        Valve,
        Setting,
        FullyOpen,
        Design,
        TargetShare,
        RunLoss,
        CircuitLoss,
        MinimumDp,
        ColumnCount
    };

    explicit SystemModel(WorkbookBridge& bridge, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// The branch of a row.
    const base::Id& branchAt(int row) const { return m_rows[static_cast<std::size_t>(row)].id; }
    /// The row of a branch; -1 where it has none.
    int rowOf(const base::Id& branch) const;

  private:
    struct Row {
        std::size_t branch;
        base::Id id;
        int depth;
        quantity::VolumeFlow design;  ///< as designed today, whatever the last round is judged by
        quantity::Ratio targetShare;  ///< likewise
    };

    void refresh(const project::ChangeSet& changes);
    void reset();
    std::vector<Row> rowsNow() const;
    QString cellText(const Row& row, int column) const;

    WorkbookBridge& m_bridge;
    std::vector<Row> m_rows;
};

}  // namespace ww::ui
