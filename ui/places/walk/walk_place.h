// The place Walk: read every valve in route order with digits and Enter. Not for rules of the trade; the
// bridge and what rests under it hold those.
#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "ui/assessed_rounds.h"
#include "ui/places/reading_notice.h"
#include "ui/places/walk/note_panel.h"
#include "ui/places/walk/round_panels.h"
#include "ui/places/walk/valve_card.h"
#include "ui/places/walk/valve_panel.h"
#include "ui/places/walk/walk_grid.h"
#include "ui/practice/practice_desk.h"
#include "ui/typed_draft.h"
#include "ui/widgets/current_stack.h"
#include "ui/widgets/key_hints.h"

namespace ww::ui {

namespace charts {
class ChartView;
}

class WalkPlace : public QWidget {
    Q_OBJECT

  public:
    WalkPlace(WorkbookBridge& bridge, const LoopAdvisor& advisor, AssessedRounds& rounds,
              QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    /// One valve at a time in place of the grid, for small windows and large targets; in few columns where
    /// the number pad takes the other half of a small window.
    enum class Card { None, Wide, BesidePad };
    void setCard(Card card);
    bool isCard() const { return m_isCard; }
    /// Puts the keys where the next reading is typed.
    void takeFocus();
    /// The keys that act in what the place shows now, while this control has them.
    KeyHints hint(const QWidget* inHand) const;
    /// Whether a reading can be typed at the valve in hand: a round is open, and the valves are shown.
    bool takesReadings() const;
    WalkGrid* grid() const { return m_grid; }
    /// Made when it is first asked for.
    ValveCard* card();
    /// What is typed here and not entered.
    std::vector<TypedDraft> drafts() const;
    /// Puts back into its cell what was typed before and never entered; the keys stay where they are. False
    /// where its valve is gone, another round is the newest, or the cell holds that already.
    bool offer(const TypedDraft& draft);
    /// Says of a text that is offered what it is and what becomes of it.
    void tellOffered();
    WalkModel* model() const { return m_model; }
    /// Whether what is pasted while a control has the keys is a column of readings from the valve in hand on:
    /// in the grid always, in the dp of the card where it has several lines.
    bool takesPaste(const QWidget* inHand) const;

  public slots:
    void findValve();
    void editNote();
    void beginRound();
    void beginClosing();
    /// Lists what keeps the round open, and gives all that nobody turned in it that reason.
    void markNotTurned();
    void readAgain();
    void takeFix();
    void toggleDoubtful();
    void recordNotReadable();
    /// The setting of the valve in hand goes so many readable steps up, no further than its stops.
    void stepSetting(int steps);
    void paste();
    /// The convergence of the rounds in place of the grid, and back.
    void toggleConvergence();
    /// The convergence becomes its table, or comes back.
    void toggleTable();
    /// Stores what the practice building's meter shows at the valve in hand and goes to the next one.
    void takeMeter(PracticeDesk& desk);
    /// Shows a branch: the cursor goes to its dp.
    void showBranch(const ww::base::Id& branch);

  signals:
    void hintChanged();
    /// The valve in hand is to be adjusted.
    void adjustWanted();
    /// A note was written or given up.
    void noteDone();
    /// drafts() is another than before.
    void typedChanged();
    /// A panel was made, which is not settled yet.
    void pageMade();

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void refresh(const project::ChangeSet& changes);
    void refreshTotals();
    void showWhatThereIs();
    void showPanel(QWidget* panel);
    /// The row of the valve in hand, else of the first valve of the route that the open round has not read.
    int rowToBeginAt() const;
    KeyHints panelHint(const QWidget& inHand) const;
    /// `isEntry`: the keys are where readings are typed.
    KeyHints readingHint(bool isEntry) const;
    KeyHints entryHint() const;
    bool isEntryInHand(const QWidget* inHand) const;
    void showConvergence();
    bool isConvergenceShown() const;
    /// Whether the value that a cell holds, typed again, is another reading: a repeated one, or one with
    /// another meter.
    bool isReadAnew(const QModelIndex& cell) const;
    bool store(const QModelIndex& cell, const QString& text);
    void jump();
    void buildLayout();
    NotePanel* notes();
    OpenRoundPanel* opening();
    CloseRoundPanel* closing();
    /// The panel that closes the round; `isOutOfWalk` as in CloseRoundPanel::begin.
    void listOpenItems(bool isOutOfWalk);
    void countNotes();
    charts::ChartView* convergence();
    /// Puts the parts where the grid or the card, and the panel shown, want them.
    void arrange();
    /// Whether the grid has no room for its columns beside the panel.
    void findRoom();
    int panelWidth() const;
    void focusEntry();
    std::optional<base::Id> branchInHand() const;
    /// The branch that a photo dropped there belongs to; nothing where there is none.
    std::optional<base::Id> branchAt(const QPoint& point) const;

    WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    AssessedRounds& m_rounds;
    ReadingNotice m_readingNotice{m_bridge, m_advisor};
    WalkModel* m_model;
    CurrentStack* m_content;
    QWidget* m_gridPage;
    WalkGrid* m_grid;
    QLabel* m_empty;
    QLabel* m_totals;
    QWidget* m_findLine;
    QLabel* m_findLabel = nullptr;
    QLineEdit* m_find;
    CurrentStack* m_side;
    ValvePanel* m_valve;
    ValveCard* m_card = nullptr;                 ///< made when it is first shown
    NotePanel* m_notes = nullptr;                ///< as well
    OpenRoundPanel* m_opening = nullptr;         ///< as well
    CloseRoundPanel* m_closing = nullptr;        ///< as well
    charts::ChartView* m_convergence = nullptr;  ///< as well
    QPushButton* m_roundButton;
    QBoxLayout* m_whole = nullptr;
    QBoxLayout* m_beside = nullptr;
    bool m_isCard = false;
    bool m_isBesidePad = false;
    bool m_isTight = false;
    std::optional<base::Id> m_repeatBranch;  ///< the next dp typed here is a repeated reading
    std::optional<base::Id> m_askedAgain;    ///< the notice says what is typed here next
    std::optional<base::Id> m_lastByMeter;   ///< the valve last read by the practice meter
    theme::Tokens m_tokens;
    theme::Metrics m_metrics;
};

}  // namespace ww::ui
