#include "ui/places/job/job_fields.h"

#include <algorithm>

#include "core/project/edit_label.h"

namespace ww::ui {

JobFields::JobFields(WorkbookBridge& bridge, QWidget* widget)
    : QObject(widget), m_bridge(bridge), m_widget(widget) {
    connect(&bridge, &WorkbookBridge::changed, this, &JobFields::refresh);
}

EntryField* JobFields::add(QFormLayout* form, JobField field, const QString& label) {
    auto* entry = new EntryField(m_widget);
    QString name = label;
    entry->setAccessibleName(name.remove('&'));
    entry->setStore([this, field](const QString& text) { return store(field, text); });
    form->addRow(label, entry);
    m_fields.emplace_back(field, entry);
    entry->setStored(m_bridge.isOpen() ? jobFieldText(m_bridge.project().job(), field) : QString());
    entry->setReadOnly(m_bridge.isReadOnly());
    return entry;
}

EntryField* JobFields::field(JobField field) const {
    for (const auto& [name, entry] : m_fields) {
        if (name == field) {
            return entry;
        }
    }
    return nullptr;
}

void JobFields::refresh(const project::ChangeSet& changes) {
    if (!changes.isEmpty() && !changes.touches(project::RecordKind::Job)) {
        return;
    }
    // Another job ends what was being typed; a change of this one leaves a refused text to be mended.
    const auto show = changes.isEmpty() ? &EntryField::setStored : &EntryField::renewStored;
    for (const auto& [name, entry] : m_fields) {
        (entry->*show)(m_bridge.isOpen() ? jobFieldText(m_bridge.project().job(), name) : QString());
        entry->setReadOnly(m_bridge.isReadOnly());
    }
    fitWidths();
    emit refreshed();
}

void JobFields::fitWidths() {
    constexpr int kMostDigits = 32;
    constexpr int kFrame = 26;
    for (const auto& [name, entry] : m_fields) {
        const QFontMetrics metrics(entry->font());
        const int most = kMostDigits * metrics.horizontalAdvance('0');
        const int words = metrics.horizontalAdvance(entry->stored());
        entry->setMinimumWidth(std::min(words, most) + kFrame);
        entry->setToolTip(words > most ? entry->stored() : QString());
    }
}

bool JobFields::storeJob(const base::Result<project::Job>& job, const std::string& label) {
    const bool isTaken =
        m_bridge.tellOrClear(job ? m_bridge.apply({label, {*job}, {}, true}) : base::Outcome(job.fault()));
    if (!isTaken) {
        emit refreshed();  // The choices show again what is stored.
    }
    return isTaken;
}

bool JobFields::store(JobField name, const QString& text) {
    if (!m_bridge.isOpen()) {
        return true;
    }
    const project::Job& before = m_bridge.project().job();
    const base::Result<project::Job> job = withJobField(before, name, text);
    if (!job) {
        return m_bridge.tellOrClear(job.fault());
    }
    if (*job == before) {
        field(name)->setStored(jobFieldText(before, name));
        return true;
    }
    const std::string label = project::label(project::labels::kJobField, {jobFieldName(name)});
    return m_bridge.tellOrClear(m_bridge.apply({label, {*job}, {}, true}));
}

}  // namespace ww::ui
