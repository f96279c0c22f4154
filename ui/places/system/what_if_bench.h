// The bench where settings, closures and pump speed are tried without touching the loop or the record.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "ui/places/system/what_if_model.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/entry_table.h"

namespace ww::ui::system {

class WhatIfBench : public QWidget {
    Q_OBJECT

  public:
    explicit WhatIfBench(QWidget* parent = nullptr);

    void setJob(const project::Project& project, const balancing::Assessment& assessment);
    /// Computes with what the readings taught (WhatIfModel::setLearned), and says so.
    void setLearned(balancing::Resistances resistances, double pumpCurveFactor);
    /// Brings the row of a branch into view and makes it current.
    void setCurrent(const base::Id& branch);
    WhatIfModel& model() { return *m_model; }
    EntryTable* table() const { return m_table; }
    EntryField* speed() const { return m_speed; }

  signals:
    /// What was typed is taken: what was said of a text before no longer holds.
    void taken();

  private:
    void refresh();
    bool tellTaken(bool isTaken);

    WhatIfModel* m_model;
    EntryField* m_speed;
    QPushButton* m_reset;
    QLabel* m_summary;
    QLabel* m_note;  ///< what is computed from
    EntryTable* m_table;
};

}  // namespace ww::ui::system
