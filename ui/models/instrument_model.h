// The instruments of a job as a table, and a typed cell of it as an edit. Not for calibration rules.
#pragma once

#include <QAbstractTableModel>

#include "ui/workbook_bridge.h"

namespace ww::ui {

class InstrumentModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column {
        Tag,
        Kind,
        Serial,
        Range,
        Accuracy,
        Floor,
        Calibrated,
        Due,
        Certificate,
        Reason,
        ColumnCount
    };

    explicit InstrumentModel(WorkbookBridge& bridge, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// Stores what was typed into a cell. Refused: text that is no value of the column.
    base::Outcome store(const QModelIndex& cell, const QString& text);
    /// A new instrument with a tag of its own.
    base::Outcome add();
    /// Refused where a reading was taken with it.
    base::Outcome remove(int row);

  private:
    WorkbookBridge& m_bridge;
    int m_rowCount = 0;  ///< as last told to the views
};

/// The people of a job: name, role, number of the certificate, firm.
class PeopleModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Name, Role, Certificate, Firm, ColumnCount };

    explicit PeopleModel(WorkbookBridge& bridge, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    base::Outcome store(const QModelIndex& cell, const QString& text);
    base::Outcome add();
    /// Refused where a reading, a round or anything else of the record names the person.
    base::Outcome remove(int row);

  private:
    WorkbookBridge& m_bridge;
    int m_rowCount = 0;  ///< as last told to the views
};

}  // namespace ww::ui
