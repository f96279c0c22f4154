// What is kept with the valve in hand beside its numbers: a note to the reading, notes on the valve, photos.
// Plain text as it was typed. Not for deficiencies (job/deficiency_page.h).
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "ui/places/photo_list.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/note_field.h"

namespace ww::ui {

/// How many notes and photos a branch has: the note of its counting reading in the last round, its own
/// notes, its photos.
int noteCount(const WorkbookBridge& bridge, const base::Id& branch);

class NotePanel : public QWidget {
    Q_OBJECT

  public:
    explicit NotePanel(WorkbookBridge& bridge, QWidget* parent = nullptr);
    /// Shows the valve in hand and puts the keys where its next note is typed.
    void begin();
    bool attach(const QString& file) { return m_photos->attach(file); }

  signals:
    void done();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void refresh();
    bool storeNotes(const QString& text);

    WorkbookBridge& m_bridge;
    std::optional<base::Id> m_branch;
    QLabel* m_head;
    EntryField* m_reading;
    NoteField* m_notes;
    PhotoList* m_photos;
    QPushButton* m_back;
};

}  // namespace ww::ui
