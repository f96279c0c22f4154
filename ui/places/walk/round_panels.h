// Opening and closing a round, beside the grid: choices before the first reading, reasons after the last.
// Not for the rules of either (balancing/walk.h).
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>
#include <string>

#include "ui/loop_advisor.h"
#include "ui/places/walk/speed_fields.h"
#include "ui/widgets/quiet_combo.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

/// Kind, meter and person of the next round and the speeds of its pumps; Enter opens it with what stands
/// there.
class OpenRoundPanel : public QWidget {
    Q_OBJECT

  public:
    explicit OpenRoundPanel(WorkbookBridge& bridge, QWidget* parent = nullptr);
    /// Fills the choices from the job and puts the keys on the button. Of a round that was begun already, and
    /// neither opened nor given up, the kind that was chosen and the speeds stay.
    void begin();

  signals:
    void opened();
    void givenUp();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void open();
    void showReadiness();

    WorkbookBridge& m_bridge;
    QLabel* m_head;
    std::string m_begun;  ///< workbook and number of the round; empty: none
    QuietCombo* m_kind;
    QuietCombo* m_meter;
    QuietCombo* m_person;
    SpeedFields* m_speeds;
    QLabel* m_readiness;
    QLineEdit* m_override;
    QPushButton* m_open;
};

/// What keeps the round from being closed, and what is looked at before it is, each with a field for its
/// reason. Of a round that is closed or was sent back: what keeps it from being sent.
class CloseRoundPanel : public QWidget {
    Q_OBJECT

  public:
    CloseRoundPanel(WorkbookBridge& bridge, const LoopAdvisor& advisor, QWidget* parent = nullptr);
    /// Lists the open items and, below them, the readings that do not fit the others; puts the keys on the
    /// first item. Where nothing is open they are on what closes the round, and with `isOutOfWalk`, after the
    /// Enters of a walk, on the way back: one Enter too many must not close it.
    void begin(bool isOutOfWalk);
    /// Whether nothing keeps the round from being closed.
    bool isReady() const { return m_close->isEnabled(); }
    /// Whether it offers one reason for all that nobody turned in an adjusting round.
    bool offersNotTurned() const { return !m_notTurned->isHidden(); }

  signals:
    /// The open items were listed anew.
    void listed();
    void closed();
    void givenUp();
    /// A valve of the list is to be read after all.
    void valveWanted(const ww::base::Id& branch);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void list();
    void listLater();
    /// What is listed as doubtful without keeping the round open (doubtsOf).
    std::vector<balancing::Finding> doubts(const project::Round& round) const;
    void addItem(const balancing::Finding& item, QWidget* page, QVBoxLayout* rows);
    bool giveReason(const balancing::Finding& item, const QString& reason);

    WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    QLabel* m_head;
    QScrollArea* m_area;
    QPushButton* m_close;
    QPushButton* m_back;
    QPushButton* m_notTurned;
};

}  // namespace ww::ui
