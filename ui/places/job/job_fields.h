// Facts of the job as fields of a form, stored when they are typed and refreshed when the job changes. Not
// for what a text means (job_edit.h).
#pragma once

#include <QFormLayout>
#include <QObject>
#include <utility>
#include <vector>

#include "ui/places/job/job_edit.h"
#include "ui/widgets/entry_field.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class JobFields : public QObject {
    Q_OBJECT

  public:
    /// The fields are children of `widget`, which owns this too.
    JobFields(WorkbookBridge& bridge, QWidget* widget);

    EntryField* add(QFormLayout* form, JobField field, const QString& label);
    EntryField* field(JobField field) const;
    /// Each field becomes as wide as its text, up to that of a long name; what is longer is whole in its
    /// tooltip.
    void fitWidths();
    EntryField* first() const { return m_fields.front().second; }
    /// Carries out a change of the job; a refusal is told and the fields show what stands.
    bool storeJob(const base::Result<project::Job>& job, const std::string& label);

  signals:
    /// The job's facts are others now; also once after the fields are made.
    void refreshed();

  private:
    void refresh(const project::ChangeSet& changes);
    bool store(JobField field, const QString& text);

    WorkbookBridge& m_bridge;
    QWidget* m_widget;
    std::vector<std::pair<JobField, EntryField*>> m_fields;
};

}  // namespace ww::ui
