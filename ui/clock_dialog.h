// Asks for the true date and time here and says what that makes of this laptop's clock. Stores nothing.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <optional>

#include "core/workbook/workbook.h"
#include "ui/widgets/ordered_dialog.h"

namespace ww::ui {

class ClockDialog : public OrderedDialog {
    Q_OBJECT

  public:
    /// Begins with the time of the newest stored action, or with now where that is later. The workbook must
    /// outlive the dialog.
    explicit ClockDialog(const workbook::Workbook& workbook, QWidget* parent = nullptr);

    /// The true time that was typed. Only after the dialog was accepted.
    base::Instant stated() const;

  private:
    std::optional<base::Instant> typed() const;
    void refresh();

    const workbook::Workbook& m_workbook;
    QLineEdit* m_time;
    QLabel* m_result;
    QPushButton* m_set;
};

}  // namespace ww::ui
