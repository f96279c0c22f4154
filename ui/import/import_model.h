// The rows of an import before it is done: what would be taken, what is wrong with it, cells to mend, rows to
// leave out. Nothing of it is in the job. Not for matching columns (table_mapping.h).
#pragma once

#include <QAbstractTableModel>
#include <map>
#include <set>

#include "core/exchange/table_mapping.h"

namespace ww::ui {

class ImportModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    /// Before the matched columns: what is wrong stands where it is seen without scrolling.
    enum LeadingColumn { Taken, Row, Fault, LeadingCount };

    /// The project must outlive the model.
    explicit ImportModel(const project::Project& project, QObject* parent = nullptr);

    /// Other rows: those below the mapping's headings. Rows left out before are taken again.
    void show(exchange::SourceTable table, exchange::TableMapping mapping, const QString& name);
    /// What would be done, with what is wrong.
    const exchange::ImportPlan& plan() const { return m_plan; }
    /// Faults that belong to no row that is shown.
    QStringList generalFaults() const { return m_generalFaults; }
    int faultyRowCount() const { return static_cast<int>(m_faults.size()); }
    /// Rows of which something comes into the job, if they are sound.
    int takenRowCount() const;
    /// A row of a walk sheet in which nothing was filled in: it is passed over.
    bool isLeftBlank(int row) const;
    /// What is wrong with a row; empty where nothing is.
    QString faultOf(int row) const;
    void setLeftOut(int row, bool isLeftOut);
    bool isLeftOut(int row) const;
    /// Leaves out every row with a fault.
    void leaveOutFaulty();
    /// The next row with a fault behind `row`, from the top again; -1 where there is none.
    int nextFaulty(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

  signals:
    /// The plan was made anew.
    void planned();

  private:
    int lineOf(int row) const;
    QString titleOf(std::size_t own) const;
    void makePlan();
    bool isFaultyCell(int row, int column) const;

    const project::Project& m_project;
    exchange::SourceTable m_table;  ///< theirs, with what was mended
    exchange::TableMapping m_mapping;
    std::string m_name;
    exchange::SourceTable m_shown;        ///< all rows under our headings
    std::vector<std::size_t> m_matched;   ///< our columns, by index into columnsOfTable()
    std::vector<std::string> m_titles;    ///< of the matched columns
    std::set<int> m_leftOut;              ///< by their row numbers
    std::map<int, QStringList> m_faults;  ///< by their row numbers
    std::set<std::pair<int, std::string>> m_faultyCells;
    QStringList m_generalFaults;
    exchange::ImportPlan m_plan;
};

}  // namespace ww::ui
