// A table brought into the job in two steps: match its columns, then look at its rows with what is wrong.
// Nothing is stored before every row that is taken is sound. Not for reading files (import_source.h).
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>

#include "ui/import/import_model.h"
#include "ui/import/import_source.h"
#include "ui/import/match_panel.h"
#include "ui/preferences.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/ordered_dialog.h"
#include "ui/widgets/whole_label.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class ImportDialog : public OrderedDialog {
    Q_OBJECT

  public:
    /// `file`: the table that is meant ("branches.csv"); empty: the one that fits best. Bridge and
    /// preferences must outlive the dialog.
    ImportDialog(WorkbookBridge& bridge, Preferences& preferences, ImportSource source, const QString& file,
                 QWidget* parent = nullptr);

    QComboBox* sheetChoice() const { return m_sheet; }
    QComboBox* tableChoice() const { return m_table; }
    EntryField* headRow() const { return m_headRow; }
    MatchPanel* match() const { return m_match; }
    ImportModel* model() const { return m_model; }
    QPushButton* nextButton() const { return m_next; }
    QPushButton* backButton() const { return m_back; }
    QString status() const { return m_status->text(); }
    bool isPreviewShown() const { return m_pages->currentIndex() == 1; }

  public slots:
    /// From the columns to the rows; from the rows into the job.
    void goOn();
    void goBack();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* columnPage();
    QWidget* rowPage();
    void fitColumns();
    bool takeHeadRow(const QString& text);
    void renewMapping(bool isHeadRowGiven);
    void refresh();
    void showNextFault();
    const ImportSheet& sheet() const;
    std::map<std::string, std::string> constants() const;

    WorkbookBridge& m_bridge;
    Preferences& m_preferences;
    ImportSource m_source;
    QStackedWidget* m_pages;
    QComboBox* m_sheet;
    QComboBox* m_table;
    EntryField* m_headRow;
    QLabel* m_headRowWhy;  ///< below it while what is typed there is refused
    MatchPanel* m_match;
    ImportModel* m_model;
    QTableView* m_rows;
    WholeLabel* m_fault;
    QLabel* m_status;
    QPushButton* m_leaveOut;
    QPushButton* m_nextFault;
    QPushButton* m_back;
    QPushButton* m_next;
    bool m_isChanging = false;
};

}  // namespace ww::ui
