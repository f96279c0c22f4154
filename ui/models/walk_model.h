// The rows of a walk: every valve in walking order with its setting, dp, flow, share and state. Not for
// storing: it only shows what the bridge has.
#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/balancing/assessment.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class WalkModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Route, Tag, Serves, Setting, Dp, Last, Flow, Share, Target, OfTarget, State, ColumnCount };

    explicit WalkModel(WorkbookBridge& bridge, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// What stands in place of a reading that could not be made.
    static QString notReadable() { return tr("not readable"); }
    /// The branch of a row.
    const base::Id& branchAt(int row) const { return m_rows[static_cast<std::size_t>(row)].id; }
    /// The column in which the row is read: its dp or, where a dp gives no flow, its flow.
    Column entryColumn(int row) const;
    /// The cell of that column; invalid where there is no such row.
    QModelIndex entryCell(int row) const;
    /// Whether any row is read by its flow.
    bool hasFlowEntry() const { return m_hasFlowEntry; }
    /// The row of a branch; -1 where it has none.
    int rowOf(const base::Id& branch) const;
    /// The row whose tag is `text`, or ends in the same number, or holds it; -1 where there is none.
    int rowFound(const QString& text) const;
    /// Whether the branch of the row has neither a reading in the round nor the mark that it cannot be read.
    bool isUnread(int row) const;
    /// The next unread row after `row`, from the top again after the last; -1 where all are read.
    int unreadAfter(int row) const;

  private:
    struct Row {
        std::size_t branch;  ///< index into Project::branches()
        base::Id id;
        bool isReadByFlow;
    };

    void refresh(const project::ChangeSet& changes);
    void reset();
    void repaintRows(const std::vector<bool>& isChanged);
    const balancing::BranchResult& result(int row) const;
    const project::Reading* reading(int row) const;
    const project::Reading* earlier(int row) const;
    QString cellText(int row, int column, bool isForEditing) const;
    /// What was read in the row's entry column: as typed, or in the unit of the column.
    QString entryText(int row, bool isForEditing) const;
    /// Both values while merging left the reading to decide; nothing otherwise.
    std::optional<QString> conflictText(int row) const;
    QString numberText(int row, int column) const;
    QString spoken(int row, int column) const;
    balancing::State stateOf(int row) const;
    QString stateWord(int row) const;
    bool hasOwnReading(int row) const;
    /// The first open comment of the round on the row; null where there is none.
    const project::Comment* openComment(int row) const;

    WorkbookBridge& m_bridge;
    std::vector<Row> m_rows;
    bool m_hasFlowEntry = false;
    std::unordered_map<base::Id, int> m_rowOf;
    balancing::Assessment m_shown;
    mutable std::unordered_map<base::Id, base::Id> m_earlier;  ///< null id: looked up, none
};

}  // namespace ww::ui
