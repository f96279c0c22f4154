// A table whose rows are fields and whose columns are records side by side, as on a paper sheet. Not for long
// lists of records (record_table.h).
#pragma once

#include <QAbstractTableModel>
#include <functional>
#include <vector>

#include "ui/workbook_bridge.h"

namespace ww::ui {

/// What stands in the table. Column 0 of the model shows the titles of the fields; `column` counts records
/// from 0.
struct FieldTableContent {
    std::function<QStringList()> fieldTitles;
    std::function<QStringList()> recordTitles;
    std::function<QString(int field, int record)> text;
    std::function<base::Outcome(int field, int record, const QString& typed)> store;
    std::vector<project::RecordKind> kinds;  ///< whose changes change the table
    /// Whether a value may be typed in a record's column now; empty: always, where the workbook can be
    /// changed.
    std::function<bool(int record)> takes = {};
};

class FieldTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    /// The bridge, and what `content` asks, must outlive the model.
    FieldTableModel(WorkbookBridge& bridge, FieldTableContent content, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// Stores what was typed into a cell; refused with the fault of the field.
    base::Outcome store(const QModelIndex& cell, const QString& typed);
    /// Says that other records stand in the columns now.
    void renew();

  private:
    WorkbookBridge& m_bridge;
    FieldTableContent m_content;
    QStringList m_fields;   ///< as last told to the views
    QStringList m_records;  ///< likewise
};

}  // namespace ww::ui
