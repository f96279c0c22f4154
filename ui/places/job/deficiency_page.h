// The deficiencies of a job with their photos, on the place Job.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <vector>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/record_table.h"
#include "ui/places/photo_list.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/entry_table.h"

namespace ww::ui {

class DeficiencyPage : public QWidget {
    Q_OBJECT

  public:
    enum Column { Number, Tag, Description, Trade, Status, Raised, Retested, ColumnCount };

    DeficiencyPage(WorkbookBridge& bridge, BranchDelegate* delegate, QWidget* parent = nullptr);
    EntryTable* table() const { return m_table; }
    RecordTableModel* model() const { return m_model; }
    /// Lists a new deficiency at a branch, or at none, and puts the keys on its description.
    void add(std::optional<base::Id> branch);
    /// Keeps a photo with the deficiency in hand.
    bool attach(const QString& file);

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    struct Field {
        std::string project::Deficiency::*member;
        EntryField* entry;
    };

    const project::Deficiency* at(int row) const;
    const project::Deficiency* inHand() const;
    QString text(int row, int column) const;
    base::Outcome store(int row, int column, const QString& text);
    void fitColumns();
    void showInHand();

    WorkbookBridge& m_bridge;
    RecordTableModel* m_model;
    EntryTable* m_table;
    QPushButton* m_add;
    QLabel* m_evidence;
    PhotoList* m_photos;
    std::vector<Field> m_fields;
};

}  // namespace ww::ui
