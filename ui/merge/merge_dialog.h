// Both values of every conflict that merging left open, side by side, for a person to pick. Nothing is picked
// beforehand. Not for merging (workbook_bridge).
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <map>
#include <vector>

#include "core/workbook/workbook.h"
#include "ui/widgets/ordered_dialog.h"

namespace ww::ui {

class WrappedChoice;

class MergeDialog : public OrderedDialog {
    Q_OBJECT

  public:
    using Choices = std::map<base::Id, project::ConflictChoice>;

    /// Before merging: what would be added, and what is left to pick.
    MergeDialog(const workbook::MergeReport& preview, const QString& copyName, QWidget* parent = nullptr);
    /// Later: what is still open.
    explicit MergeDialog(const std::vector<project::MergeConflict>& open, QWidget* parent = nullptr);

    /// What was picked; conflicts that stay open are not in it.
    Choices choices() const;
    QTableWidget* table() const { return m_table; }
    /// What stands above the table, line by line.
    QString summary() const { return m_summary->text(); }

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    /// Shares the width of the table out to its columns and breaks the words in them.
    void fit();
    /// Null where a cell has none.
    WrappedChoice* choiceAt(int row, int column) const;
    std::vector<WrappedChoice*> choicesIn(int column) const;
    void build(const std::vector<project::MergeConflict>& conflicts, const QString& accept);
    void addConflict(const project::MergeConflict& conflict);

    QLabel* m_summary;
    QTableWidget* m_table;
    std::vector<base::Id> m_ids;
};

}  // namespace ww::ui
