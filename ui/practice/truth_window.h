// The end of a practice job: truth against what was found. Not for real jobs.
#pragma once

#include <QLabel>
#include <QTableWidget>

#include "core/practice/comparison.h"
#include "ui/widgets/ordered_dialog.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

/// One row of the summary on top.
struct TruthLine {
    QString label;
    QString found;  ///< before anything was turned
    QString now;
    QString classical;  ///< by rule on the same building
};

/// The lines of the summary, and the faults that were planted, as words.
QList<TruthLine> truthLines(const practice::Comparison& comparison);
QStringList plantedFaults(const practice::Comparison& comparison, const project::Project& design);

class TruthWindow : public OrderedDialog {
    Q_OBJECT

  public:
    TruthWindow(const practice::PracticeJob& job, const project::Project& project, QWidget* parent = nullptr);
    QTableWidget* summary() const { return m_summary; }
    QTableWidget* losses() const { return m_losses; }

  private:
    QTableWidget* table(const QString& name, const QStringList& heads);

    QTableWidget* m_summary;
    QTableWidget* m_losses;
};

}  // namespace ww::ui
