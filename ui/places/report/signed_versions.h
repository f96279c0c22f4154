// The signatures that the workbook noted, newest first, each with how the workbook stands to it now; one can
// be withdrawn with a reason, never taken out. Not for signing (signing_panel.h).
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

#include "ui/workbook_bridge.h"

namespace ww::ui {

class SignedVersions : public QWidget {
    Q_OBJECT

  public:
    explicit SignedVersions(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void refresh();
    /// That the newest revision is signed, by whom, and that nothing was changed since; empty where that is
    /// not so.
    QString standing() const;

  private:
    void withdraw();
    void refreshButton();

    WorkbookBridge& m_bridge;
    QLabel* m_none;
    QListWidget* m_list;
    QLineEdit* m_reason;
    QPushButton* m_withdraw;
    std::vector<base::Id> m_shown;
};

}  // namespace ww::ui
