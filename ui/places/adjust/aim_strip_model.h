// The table of neighboring settings: what to aim at, where to hold, what to expect. Not for computing them
// (valve_in_hand.h).
#pragma once

#include <QAbstractTableModel>

#include "ui/places/adjust/valve_in_hand.h"

namespace ww::ui {

class AimStripModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Row { SettingRow, AimRow, HoldRow, ExpectRow, RowCount };
    static constexpr int kColumns = 5;

    AimStripModel(const WorkbookBridge& bridge, const ValveInHand& valve, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// Shows what the valve in hand has now.
    void refresh();
    /// The column of the setting in hand; -1 without one.
    int currentColumn() const;

  private:
    QString cell(int row, int column) const;

    const WorkbookBridge& m_bridge;
    const ValveInHand& m_valve;
};

}  // namespace ww::ui
