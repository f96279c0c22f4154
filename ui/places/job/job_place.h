// The place Job: facts, limits, instruments and people. Not for branches (System).
#pragma once

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>
#include <utility>
#include <vector>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/instrument_model.h"
#include "ui/places/job/job_edit.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/quiet_combo.h"

namespace ww::ui {

class JobPlace : public QWidget {
    Q_OBJECT

  public:
    explicit JobPlace(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    void takeFocus();
    EntryField* field(JobField field) const;

  private:
    void fitColumns();
    void refresh(const project::ChangeSet& changes);
    void addField(QFormLayout* form, JobField field, const QString& label);
    QWidget* buildFacts();
    QWidget* buildTables();
    void buildChoices(QFormLayout* form);
    bool store(JobField field, const QString& text);
    bool storeJob(const base::Result<project::Job>& job, const std::string& label);
    bool took(const base::Outcome& outcome);

    WorkbookBridge& m_bridge;
    std::vector<std::pair<JobField, EntryField*>> m_fields;
    QuietCombo* m_units;
    QuietCombo* m_fluid;
    InstrumentModel* m_instruments;
    PeopleModel* m_people;
    EntryTable* m_instrumentTable;
    EntryTable* m_peopleTable;
    BranchDelegate* m_delegate;
    QPushButton* m_addInstrument;
    QPushButton* m_addPerson;
};

}  // namespace ww::ui
