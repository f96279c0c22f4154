// The bench where settings, closures and pump speed are tried without touching the loop or the record.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QWidget>

#include "ui/places/system/what_if_model.h"

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

  private:
    void takeSpeed();
    void refresh();

    WhatIfModel* m_model;
    QLineEdit* m_speed;
    QPushButton* m_reset;
    QLabel* m_summary;
    QLabel* m_note;  ///< what is computed from
    QTableView* m_table;
};

}  // namespace ww::ui::system
