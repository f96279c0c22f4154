// Records of a job as a table into which a person types, described by its columns. Not for large tables.
#pragma once

#include <functional>

#include "ui/models/counted_rows.h"

namespace ww::ui {

/// What a table of records shows and takes. Rows are told anew whenever a record of `kind` changes.
struct RecordTableContent {
    QStringList titles;
    project::RecordKind kind{};
    std::function<int()> rowCount;
    std::function<QString(int row, int column)> text;
    std::function<bool(int column)> isTyped;  ///< whether a person types into the column
    std::function<base::Outcome(int row, int column, const QString& text)> store;
};

class RecordTableModel : public CountedRows {
    Q_OBJECT

  public:
    RecordTableModel(WorkbookBridge& bridge, RecordTableContent content, QObject* parent = nullptr);

    /// A text that has no room can be read in the tool tip.
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// Stores what was typed into a cell; refused with the fault of the column.
    base::Outcome store(const QModelIndex& cell, const QString& text);

  protected:
    QStringList titles() const override { return m_content.titles; }
    QString cellText(int row, int column) const override { return m_content.text(row, column); }

  private:
    RecordTableContent m_content;
};

}  // namespace ww::ui
