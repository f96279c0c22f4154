// The instruments of a job as a table, and a typed cell of it as an edit. Not for calibration rules.
#pragma once

#include "ui/models/counted_rows.h"

namespace ww::ui {

class InstrumentModel : public CountedRows {
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

    /// Stores what was typed into a cell. Refused: text that is no value of the column.
    base::Outcome store(const QModelIndex& cell, const QString& text);
    /// A new instrument with a tag of its own.
    base::Outcome add();
    /// Refused where a reading was taken with it.
    base::Outcome remove(int row);

  protected:
    QStringList titles() const override;
    QString cellText(int row, int column) const override;
    bool isNumber(int column) const override { return column >= Range && column <= Floor; }
};

/// The people of a job: name, role, number of the certificate, firm.
class PeopleModel : public CountedRows {
    Q_OBJECT

  public:
    enum Column { Name, Role, Certificate, Firm, ColumnCount };

    explicit PeopleModel(WorkbookBridge& bridge, QObject* parent = nullptr);

    /// Stores what was typed into a cell. Refused: an empty name, or a word that is no role.
    base::Outcome store(const QModelIndex& cell, const QString& text);
    /// A new person without a role.
    base::Outcome add();
    /// Refused where a reading, a round or anything else of the record names the person.
    base::Outcome remove(int row);

  protected:
    QStringList titles() const override;
    QString cellText(int row, int column) const override;
};

}  // namespace ww::ui
