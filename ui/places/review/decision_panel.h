// What can be done with a round under review: send, accept, send back, withdraw. Not for comments.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>
#include <optional>

#include "ui/workbook_bridge.h"

namespace ww::ui {

class DecisionPanel : public QWidget {
    Q_OBJECT

  public:
    explicit DecisionPanel(WorkbookBridge& bridge, QWidget* parent = nullptr);
    void setRound(std::optional<base::Id> round);
    /// Whether a round waits to be sent, or for the decision of somebody else.
    static bool waitsToBeSent(const project::Round& round);
    static bool waitsForDecision(const project::Round& round);

  public slots:
    void refresh();
    /// What the buttons do: nothing where they are not enabled.
    void send();
    void accept();

  private:
    void take(const base::Result<project::Edit>& edit);

    WorkbookBridge& m_bridge;
    std::optional<base::Id> m_round;
    QLabel* m_state;
    QLineEdit* m_reason;
    QPushButton* m_send;
    QPushButton* m_accept;
    QPushButton* m_sendBack;
    QPushButton* m_withdraw;
    QLabel* m_hint;
};

}  // namespace ww::ui
