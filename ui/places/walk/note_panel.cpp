#include "ui/places/walk/note_panel.h"

#include "core/project/edit_label.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include "core/balancing/standing_readings.h"
#include "ui/widgets/place_area.h"

namespace ww::ui {
namespace {

const project::Reading* lastReading(const WorkbookBridge& bridge, const base::Id& branch) {
    const project::Round* round = bridge.project().lastRound();
    return round != nullptr ? balancing::countingReading(bridge.project(), round->id, branch) : nullptr;
}

}  // namespace

int noteCount(const WorkbookBridge& bridge, const base::Id& branch) {
    const project::Branch* record = bridge.project().branches().find(branch);
    if (record == nullptr) {
        return 0;
    }
    const project::Reading* reading = lastReading(bridge, branch);
    return (reading != nullptr && !reading->note.empty() ? 1 : 0) + (record->notes.empty() ? 0 : 1) +
           photoCount(bridge.project(), {branch, {}});
}

NotePanel::NotePanel(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_head(new QLabel(this)),
      m_reading(new EntryField(this)),
      m_notes(new NoteField(this)),
      m_photos(new PhotoList(bridge, tr("Photos of the valve"), this)),
      m_back(new QPushButton(tr("Go Back to Walk"), this)) {
    m_head->setObjectName(QStringLiteral("panel_title"));
    m_head->setTextFormat(Qt::PlainText);
    m_head->setWordWrap(true);
    auto* readingHead = new QLabel(tr("Note to this &reading"), this);
    readingHead->setBuddy(m_reading);
    auto* notesHead = new QLabel(tr("&Notes on the valve"), this);
    notesHead->setBuddy(m_notes);
    auto* photosHead = new QLabel(tr("Photos"), this);
    for (QLabel* head : {readingHead, notesHead, photosHead}) {
        head->setWordWrap(true);
    }
    m_reading->setAccessibleName(tr("Note to this reading"));
    m_notes->setAccessibleName(tr("Notes on the valve"));
    m_notes->setAccessibleDescription(tr("Ctrl+Enter stores and goes back"));
    constexpr int kFewLines = 84;
    m_notes->setMinimumHeight(kFewLines);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    for (QWidget* widget : std::initializer_list<QWidget*>{m_head, readingHead, m_reading, notesHead}) {
        layout->addWidget(widget);
    }
    layout->addWidget(m_notes, 1);
    for (QWidget* widget : std::initializer_list<QWidget*>{photosHead, m_photos, m_back}) {
        layout->addWidget(widget);
    }
    seeTogether(*m_reading, *m_head);
    m_reading->setStore([this](const QString& text) {
        return !m_branch || m_bridge.tellOrClear(m_bridge.setNote(*m_branch, text));
    });
    m_notes->setStore([this](const QString& text) { return storeNotes(text); });
    connect(m_reading, &QLineEdit::returnPressed, this, &NotePanel::done);
    connect(m_notes, &NoteField::done, this, &NotePanel::done);
    connect(m_back, &QPushButton::clicked, this, &NotePanel::done);
    connect(&bridge, &WorkbookBridge::changed, this, &NotePanel::refresh);
    connect(&bridge, &WorkbookBridge::branchSelected, this, &NotePanel::refresh);
}

void NotePanel::begin() {
    refresh();
    m_reading->isEnabled() ? m_reading->setFocus(Qt::ShortcutFocusReason)
                           : m_notes->setFocus(Qt::ShortcutFocusReason);
    m_reading->selectAll();
}

void NotePanel::refresh() {
    // What is being typed belongs to the valve that it was begun at.
    if (m_branch != m_bridge.selectedBranch()) {
        m_notes->commit();
        m_branch = m_bridge.selectedBranch();
        m_notes->setStored(QString());
    }
    const project::Branch* branch = m_branch ? m_bridge.project().branches().find(*m_branch) : nullptr;
    const project::Reading* reading = branch != nullptr ? lastReading(m_bridge, *m_branch) : nullptr;
    m_head->setText(branch != nullptr ? tr("Notes and photos of %1").arg(QString::fromStdString(branch->tag))
                                      : tr("No valve in hand"));
    m_reading->setEnabled(reading != nullptr && m_bridge.roundToCorrectOrNull() != nullptr);
    if (!m_reading->hasFocus()) {
        m_reading->setStored(reading != nullptr ? QString::fromStdString(reading->note) : QString());
    }
    m_notes->setReadOnly(branch == nullptr || m_bridge.isReadOnly());
    if (!m_notes->hasFocus() || !m_notes->isTyped()) {
        m_notes->setStored(branch != nullptr ? QString::fromStdString(branch->notes) : QString());
    }
    m_photos->show(branch != nullptr ? std::optional(PhotoOwner{m_branch, {}}) : std::nullopt);
}

bool NotePanel::storeNotes(const QString& text) {
    const project::Branch* before = m_branch ? m_bridge.project().branches().find(*m_branch) : nullptr;
    if (before == nullptr) {
        return true;
    }
    project::Branch changed = *before;
    changed.notes = text.trimmed().toStdString();
    if (changed == *before) {
        return true;
    }
    const std::string label = project::label(
        changed.notes.empty() ? project::labels::kNoNotes : project::labels::kNotes, {changed.tag});
    return m_bridge.tellOrClear(m_bridge.apply({label, {std::move(changed)}, {}, true}));
}

void NotePanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        emit done();
        return;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace ww::ui
