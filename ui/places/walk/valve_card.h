// One valve of the walk in place of the grid, for small windows and large targets: its tag, what was read
// last, its setting, the dp to type, what comes of it. Not for storing (WalkPlace does) nor for the order of
// the walk (WalkGrid, whose row it shows).
#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <map>
#include <optional>
#include <utility>

#include "ui/places/walk/walk_grid.h"
#include "ui/widgets/walk_field.h"

namespace ww::ui {

class ValveCard : public QWidget {
    Q_OBJECT

  public:
    /// `grid` may be hidden; it keeps the row in hand.
    ValveCard(WalkGrid& grid, QWidget* parent = nullptr);

    void setStore(EntryTable::Store store) { m_store = std::move(store); }
    void setTokens(const theme::Tokens& tokens, const theme::Metrics& metrics);
    /// Puts the keys into the dp, with its text selected.
    void takeFocus();
    /// The next dp is typed into an empty field.
    void beginDp();
    /// Two columns, the share beside the word of the state: where a number pad has the other half.
    void setNarrow(bool isNarrow);
    /// Says how many notes and photos the valve in hand has.
    void setNoteCount(int count);
    WalkField* dp() const { return m_dp; }
    WalkField* setting() const { return m_setting; }
    QSize minimumSizeHint() const override { return {kLeastWidth, QWidget::minimumSizeHint().height()}; }
    /// Whether something is typed that is not stored yet.
    bool isTyped() const { return m_dp->isTyped() || m_setting->isTyped(); }

  signals:
    void notesWanted();
    /// Enter was pressed at the last valve.
    void enteredAtEnd();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    static constexpr int kLeastWidth = 240;
    class Sign;
    void refresh();
    void go(WalkField::Way way, WalkModel::Column from);
    /// Keeps what is typed and not stored with the valve that is left, and brings it back with the one shown.
    void exchangeRefused(const std::optional<base::Id>& shown);
    bool store(WalkField* field, WalkModel::Column column);
    QModelIndex cell(WalkModel::Column column) const;
    /// The column that the field of the reading shows: the dp of the valve in hand or, where a dp gives none,
    /// its flow.
    WalkModel::Column entryColumn() const;

    WalkGrid& m_grid;
    EntryTable::Store m_store;
    QLabel* m_route;
    QLabel* m_tag;
    QLabel* m_serves;
    QLabel* m_last;
    QLabel* m_dpHead;
    QLabel* m_targetHead;
    QLabel* m_ofTarget;
    Sign* m_sign;
    WalkField* m_setting;
    WalkField* m_dp;
    QPushButton* m_back;
    QPushButton* m_next;
    QPushButton* m_notes;
    QGridLayout* m_values = nullptr;
    QBoxLayout* m_moves = nullptr;  ///< one under the other where the card is narrow
    theme::Tokens m_tokens;
    theme::Metrics m_metrics;
    std::optional<base::Id> m_branch;  ///< of the valve shown
    /// Texts that are not stored, by valve and column, until their valve is in hand again.
    std::map<std::pair<base::Id, int>, QString> m_refused;
    bool m_isNarrow = false;
};

}  // namespace ww::ui
