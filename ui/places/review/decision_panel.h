// What can be done with a round under review: send, accept, send back, withdraw. Not for comments.
#pragma once

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>
#include <array>
#include <optional>
#include <string>
#include <utility>

#include "ui/workbook_bridge.h"

namespace ww::ui {

class DecisionPanel : public QWidget {
    Q_OBJECT

  public:
    explicit DecisionPanel(WorkbookBridge& bridge, QWidget* parent = nullptr);
    void setRound(std::optional<base::Id> round);

  signals:
    /// A step was taken and stored: the keys leave the buttons, so that a second press takes no other step.
    void decided();
    /// Nobody of the job may decide: its people are wanted.
    void peopleWanted();

  public slots:
    void refresh();
    /// What the buttons do. Where the step waits for something, the notice says for what.
    void send();
    void accept();

  protected:
    bool event(QEvent* event) override;

  private:
    /// The buttons that take a step, in the order of a round's way.
    std::array<QPushButton*, 4> steps() const;
    void placeSteps(int columns);
    /// Whether a round waits to be sent, or for the decision of somebody else.
    static bool waitsToBeSent(const project::Round& round);
    static bool waitsForDecision(const project::Round& round);
    /// Nothing where it takes no step.
    const project::Round* roundInHand() const;
    /// A round withdrawn or sent back: by whom and when, as the journal tells.
    struct StepBack {
        bool isWithdrawal = false;
        std::string person;
        base::Instant time;
    };
    /// The newest such step of a round that nobody has decided on since; nothing where the journal has none.
    std::optional<StepBack> stepTakenBack(const project::Round& round);
    void showState();
    /// Offers what mends a refusal of a person: to change the one at this desk, else to go to the people of
    /// the job.
    void offerPersons(const project::Round* round, const std::optional<base::Fault>& refusal);
    std::string reason() const { return m_reason->text().trimmed().toStdString(); }
    void take(const base::Result<project::Edit>& edit);
    /// Lets a step be taken where it `isNext` and nothing refuses it; else the button says why not.
    static void offer(QPushButton& button, bool isNext, const std::optional<base::Fault>& refusal);

    WorkbookBridge& m_bridge;
    std::optional<base::Id> m_round;
    std::optional<std::pair<base::Id, std::int64_t>> m_lookedFor;  ///< in the journal as far as its record
    std::optional<StepBack> m_stepBack;
    QLabel* m_state;
    QLineEdit* m_reason;
    QPushButton* m_send;
    QPushButton* m_accept;
    QPushButton* m_person;  ///< offers those who may decide, where the one at the desk may not
    QPushButton* m_people;  ///< leads to the people of the job, where none of them may decide
    QPushButton* m_sendBack;
    QPushButton* m_withdraw;
    QLabel* m_hint;
    QGridLayout* m_steps;
    int m_columns = 0;
};

}  // namespace ww::ui
