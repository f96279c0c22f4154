// The table of a chart figure as a model: the same as the drawing says, in words. Not for the drawing
// (chart_painter.h).
#pragma once

#include <QAbstractTableModel>

#include "ui/charts/chart_figure.h"

namespace ww::ui::charts {

class FigureTable : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    /// Shows the heads and the rows of another figure's table.
    void show(const QStringList& heads, const std::vector<QStringList>& rows);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QStringList m_heads;
    std::vector<QStringList> m_rows;
};

}  // namespace ww::ui::charts
