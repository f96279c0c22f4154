// The place Review: rounds with their states, any two of them side by side, comments, and the decision.
// Not for reading valves (Walk).
#pragma once

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QStackedWidget>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QWidget>
#include <array>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/balancing/round_comparison.h"
#include "ui/assessed_rounds.h"
#include "ui/charts/chart_view.h"
#include "ui/delegates/branch_delegate.h"
#include "ui/models/text_table.h"
#include "ui/places/review/comment_panel.h"
#include "ui/places/review/decision_panel.h"
#include "ui/widgets/quiet_combo.h"
#include "ui/widgets/shown_refresh.h"
#include "ui/widgets/whole_label.h"

namespace ww::ui {

class ReviewPlace : public QWidget {
    Q_OBJECT

  public:
    enum Column { Tag, Setting, Dp, OfTarget, State, Why, Who, ColumnCount };

    ReviewPlace(WorkbookBridge& bridge, AssessedRounds& rounds, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    void takeFocus();
    QSize minimumSizeHint() const override;
    /// Brings the comparison to the front and shows a branch in it, all rows if need be.
    void showBranch(const base::Id& branch);
    /// The round that is decided on: the later of the two compared; nothing before any is read.
    std::optional<base::Id> round() const { return chosenRound(m_after); }
    /// Compares a round with the one before it.
    void showRound(base::Id round);
    DecisionPanel* decision() const { return m_decision; }
    QTableView* table() const { return m_table; }
    TextTable* comparison() const { return m_comparison; }
    CommentPanel* comments() const { return m_comments; }

  signals:
    /// The round that is decided on is another one, or stands otherwise.
    void roundShown();
    /// A person chose the rounds that are shown: what was said of another one is over.
    void roundChosen();

  public slots:
    /// Puts the keys into a comment on the cell in hand.
    void comment();
    /// Brings the chart of the rounds to the front and changes it into its table or back.
    void toggleTable();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void layOut();
    QWidget* comparisonPage();
    QWidget* convergencePage();
    /// Rounds, comparison and comments under one another, for want of room.
    void setNarrow(bool isNarrow);
    /// Whether the comparison is in front, not how the shares came together.
    bool isComparing() const { return m_views->currentIndex() == 0; }
    /// The width that all three need side by side.
    int wantedWidth() const;
    /// What a side needs beside the comparison, in whatever text and language.
    int roundsHeight() const;
    int sideWidth(const QWidget& side) const;
    void refresh();
    void refreshRounds();
    /// Who read the round in hand, with what, and what became of its readings.
    void showRoundFacts();
    /// Judges one round, those that are compared first: in a large job that is done between the events of the
    /// screen.
    void judgeNext();
    bool isLarge() const;
    /// The two rounds that are compared.
    std::vector<base::Id> compared() const;
    /// The rounds that the balancers walked; a witness round reads a sample and is left out.
    std::vector<base::Id> ownRounds() const;
    bool areJudged(const std::vector<base::Id>& rounds) const;
    void refreshStrip();
    void drawConvergence();
    void refreshComparison();
    void fillChoices();
    void showInHand();
    /// The columns of the comparison, to the width that it has; nothing to do where they are.
    void fitComparison();
    /// The same for other texts or letters than before.
    void fitAnew() {
        m_fittedTo.reset();
        fitComparison();
    }
    void fitRounds();
    /// Widens a column of the comparison to `least`, px, as far as the wider of `other` and Why can spare it.
    void takeFor(Column column, int least, Column other);
    /// Widens a column of the comparison to `wanted`, px, as far as `giver` has more than `least`.
    void give(Column column, int wanted, Column giver, int least);
    /// What shows the longest cell of a column of the comparison in one line, px.
    int wholeWidth(Column column) const;
    /// What keeps each of the two words of a state on one line, px.
    int stateWidth() const;
    /// What keeps every tag of the comparison on one line, px.
    int tagWidth() const;
    /// The texts of a column that can be the widest: of many rows those with the most letters.
    QStringList longestCells(Column column) const;
    /// The order that is chosen for the comparison.
    balancing::ComparisonOrder order() const;
    /// What its columns need at their least in the usual letters, px.
    static int fitWrapped(QTableView& table, std::span<const int> digits, int filling);
    std::optional<base::Id> chosenRound(const QuietCombo* combo) const;

    WorkbookBridge& m_bridge;
    AssessedRounds& m_assessed;
    QStackedWidget* m_content;
    QWidget* m_page;
    QHBoxLayout* m_whole;
    std::array<QBoxLayout*, 2> m_choices{};  ///< above the comparison, each broken where it has no room
    QWidget* m_roundsSide;
    QLabel* m_empty;
    TextTable* m_rounds;
    QTableView* m_roundTable;
    WholeLabel* m_roundFacts;  ///< of the round in hand
    QTabWidget* m_views;
    QuietCombo* m_before;
    QuietCombo* m_after;
    QCheckBox* m_changedOnly;
    QuietCombo* m_order;
    QLabel* m_count;
    TextTable* m_comparison;
    QTableView* m_table;
    BranchDelegate* m_delegate;
    QLabel* m_spread;
    charts::ChartView* m_convergence;
    CommentPanel* m_comments;
    DecisionPanel* m_decision;
    /// What the chart was drawn of; nothing before the first.
    std::optional<std::pair<int, std::optional<base::Id>>> m_drawn;
    std::optional<int> m_fittedTo;  ///< px of the viewport
    int m_comparisonNeeds = 0;      ///< px, its columns at their least in the usual letters
    int m_roundsNeed = 0;           ///< the same of the rounds
    QTimer m_judging;
    bool m_isComparisonWaiting = false;  ///< for its rounds to be judged
    ShownRefresh* m_chartShown = new ShownRefresh(m_convergence, [this] { drawConvergence(); });
    ShownRefresh* m_shown = new ShownRefresh(this, [this] { refresh(); });
};

}  // namespace ww::ui
