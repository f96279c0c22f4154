#include "ui/places/system/what_if_bench.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

namespace ww::ui::system {

WhatIfBench::WhatIfBench(QWidget* parent)
    : QWidget(parent),
      m_model(new WhatIfModel(this)),
      m_speed(new EntryField(this)),
      m_reset(new QPushButton(tr("Reset to the Last Round"), this)),
      m_summary(new QLabel(this)),
      m_note(new QLabel(this)),
      m_table(new EntryTable(this)) {
    m_table->setModel(m_model);
    m_table->verticalHeader()->setDefaultSectionSize(26);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->setStore([this](const QModelIndex& cell, const QString& typed) {
        return tellTaken(m_model->setData(cell, typed, Qt::EditRole));
    });
    m_table->setAccessibleName(tr("What if: settings tried and flows predicted"));
    m_summary->setWordWrap(true);
    m_summary->setAccessibleName(tr("Prediction"));
    m_speed->setMaximumWidth(70);
    m_speed->setAccessibleName(tr("Pump speed, percent of rated"));

    auto* label = new QLabel(tr("Pump s&peed, % of rated"), this);
    label->setBuddy(m_speed);
    m_note->setAccessibleName(tr("What is computed from"));
    auto* row = new QHBoxLayout;
    row->addWidget(label);
    row->addWidget(m_speed);
    row->addWidget(m_reset);
    row->addStretch(1);
    row->addWidget(m_note);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 4, 0, 0);
    column->addLayout(row);
    column->addWidget(m_summary);
    column->addWidget(m_table, 1);

    setFocusProxy(m_table);
    m_speed->setStore([this](const QString& typed) { return tellTaken(m_model->setSpeed(typed)); });
    connect(m_reset, &QPushButton::clicked, m_model, &WhatIfModel::reset);
    connect(m_model, &WhatIfModel::predicted, this, &WhatIfBench::refresh);
    refresh();
}

bool WhatIfBench::tellTaken(bool isTaken) {
    if (isTaken) {
        emit taken();
    }
    return isTaken;
}

void WhatIfBench::setJob(const project::Project& project, const balancing::Assessment& assessment) {
    m_model->setJob(project, assessment);
}

void WhatIfBench::setLearned(balancing::Resistances resistances, double pumpCurveFactor) {
    m_model->setLearned(std::move(resistances), pumpCurveFactor);
}

void WhatIfBench::setCurrent(const base::Id& branch) {
    if (const auto row = m_model->rowOf(branch)) {
        m_table->setCurrentIndex(m_model->index(*row, WhatIfModel::SettingTried));
    }
}

void WhatIfBench::refresh() {
    m_speed->renewStored(m_model->speed());
    m_reset->setEnabled(m_model->isTrying());
    m_summary->setText(m_model->summary());
    m_note->setText(m_model->isLearned()
                        ? tr("Computed from the learned loop. Nothing here is stored as a reading.")
                        : tr("Computed from design losses. Nothing here is stored as a reading."));
}

}  // namespace ww::ui::system
