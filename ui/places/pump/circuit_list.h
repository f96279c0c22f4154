// The circuits of a job as the entries of a choice. Knows no workbook.
#pragma once

#include <QAbstractListModel>
#include <QString>
#include <vector>

namespace ww::ui {

/// One circuit to choose: what it is called, and the index of its terminal's branch; below zero: the index
/// circuit, whichever that is.
struct CircuitEntry {
    QString name;
    int branch = 0;
};

class CircuitList : public QAbstractListModel {
    Q_OBJECT

  public:
    using QAbstractListModel::QAbstractListModel;

    void show(std::vector<CircuitEntry> entries);
    /// The row of a branch; -1 where there is none.
    int rowOf(int branch) const;
    /// Letters of the longest name.
    int longestName() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    /// The name, and as Qt::UserRole the branch.
    QVariant data(const QModelIndex& index, int role) const override;

  private:
    std::vector<CircuitEntry> m_entries;
};

}  // namespace ww::ui
