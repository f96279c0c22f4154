// The place Job: facts, limits, instruments, people, readiness and deficiencies. Not for branches (System).
#pragma once

#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTabWidget>
#include <QVBoxLayout>
#include <QWidget>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/instrument_model.h"
#include "ui/places/job/deficiency_page.h"
#include "ui/places/job/job_fields.h"
#include "ui/places/job/readiness_page.h"
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
    /// Whether Delete takes out the row in hand of a table that has the keys.
    bool canRemoveRow(const QWidget* inHand) const;
    EntryField* field(JobField field) const { return m_fields->field(field); }
    /// Lists a new deficiency at a branch, or at none, and puts the keys there.
    void addDeficiency(std::optional<base::Id> branch);
    /// Shows the people of the job, or its readiness list, and puts the keys there.
    void showPeople();
    void showReadiness();
    /// Shows the row that changed. The keys go to the tabs of the pages, where nothing is typed.
    void showChanged(const project::ChangeSet& changes);
    DeficiencyPage* deficiencies() const { return m_deficiencies; }
    ReadinessPage* readiness() const { return m_readiness; }
    /// The pages beside the facts.
    QTabWidget* pages() const { return m_pages; }

  private:
    void fitColumns();
    void refresh();
    QWidget* buildFacts();
    QWidget* buildTables();
    template <class Model>
    void connectRows(EntryTable* table, Model* model, QPushButton* add, QPushButton* remove);
    void buildChoices(QFormLayout* form);

    WorkbookBridge& m_bridge;
    JobFields* m_fields;
    QuietCombo* m_units;
    QuietCombo* m_fluid;
    InstrumentModel* m_instruments;
    PeopleModel* m_people;
    EntryTable* m_instrumentTable;
    EntryTable* m_peopleTable;
    BranchDelegate* m_delegate;
    QPushButton* m_addInstrument;
    QPushButton* m_addPerson;
    QPushButton* m_removeInstrument;
    QPushButton* m_removePerson;
    QPushButton* m_others;  ///< the columns of instruments that have no room
    QTabWidget* m_pages;
    QLabel* m_empty;
    QWidget* m_parts = nullptr;  ///< all that stands here while a job is open
    ReadinessPage* m_readiness;
    DeficiencyPage* m_deficiencies;
};

}  // namespace ww::ui
