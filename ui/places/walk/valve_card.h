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
#include <vector>

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
    /// A text that is not stored, at a valve and in a column: its setting, or its dp for what is read there.
    struct Typed {
        base::Id branch;
        WalkModel::Column column;
        QString text;
    };
    /// What is typed and not stored, also at other valves than the one shown.
    std::vector<Typed> typed() const;
    /// A text that was typed before and never entered stands in its field, as soon as its valve is shown.
    void offer(const Typed& typed);
    /// What is typed as the dp of the valve shown gives way to what comes in its place.
    void dropTypedDp();
    /// Forgets what is kept for valves that are not shown: they are those of another job.
    void forgetTyped() { m_refused.clear(); }

  signals:
    void notesWanted();
    /// The valve in hand is to be adjusted.
    void adjustWanted();
    /// Enter was pressed at the last valve.
    void enteredAtEnd();
    /// typed() is another than before.
    void typedChanged();
    /// An offered text is still neither taken nor given up where its field is left or gets the keys.
    void offerWaits();

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
    /// What came of the valve stored last, while another one is in hand.
    void showDone();
    QModelIndex cell(WalkModel::Column column) const;
    /// The column that the field of the reading shows: the dp of the valve in hand or, where a dp gives none,
    /// its flow.
    WalkModel::Column entryColumn() const;
    /// The head of a column of the grid, in one line.
    QString headOf(WalkModel::Column column) const;

    WalkGrid& m_grid;
    EntryTable::Store m_store;
    QLabel* m_route;
    QLabel* m_tag;
    QLabel* m_serves;
    QLabel* m_last;
    QLabel* m_dpHead;
    QLabel* m_targetHead;
    QLabel* m_ofTarget;
    QLabel* m_done;
    Sign* m_sign;
    WalkField* m_setting;
    WalkField* m_dp;
    QPushButton* m_back;
    QPushButton* m_next;
    QPushButton* m_adjust;
    QPushButton* m_notes;
    QGridLayout* m_values = nullptr;
    QBoxLayout* m_moves = nullptr;  ///< one under the other where the card is narrow
    theme::Tokens m_tokens;
    theme::Metrics m_metrics;
    std::optional<base::Id> m_branch;  ///< of the valve shown
    std::optional<base::Id> m_stored;  ///< of the valve stored last
    struct KeptText {
        QString text;
        bool isOffered = false;
    };
    /// Texts that are not stored, by valve and column, until their valve is in hand again.
    std::map<std::pair<base::Id, WalkModel::Column>, KeptText> m_refused;
    bool m_isNarrow = false;
};

}  // namespace ww::ui
