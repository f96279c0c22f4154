// The grid of a walk: digits and Enter, from valve to valve along the route. Not for storing (WalkPlace
// does).
#pragma once

#include "ui/delegates/branch_delegate.h"
#include "ui/models/walk_model.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/shown_refresh.h"

namespace ww::ui {

class WalkGrid : public EntryTable {
    Q_OBJECT

  public:
    explicit WalkGrid(WalkModel& model, QWidget* parent = nullptr);

    /// Puts the cursor where a row is read: on its dp, or on its flow where a dp gives none. After a jump the
    /// next Enter goes to the next unread valve.
    void goToRow(int row, bool isJump);
    /// Goes where Enter would go from the row in hand; false at the end of the route.
    bool goOn();
    int currentRow() const { return currentIndex().row(); }
    const WalkModel& rows() const { return m_model; }
    /// Shows for a moment that a row was stored.
    void flash(int row);
    void setTokens(const theme::Tokens& tokens, const theme::Metrics& metrics);
    /// The width in which name, setting, dp (or flow), share of target and state can be read whole, px.
    int leastWidth() const;
    /// The height of the head and some rows, px.
    int leastHeight() const;
    /// What the row in hand says in columns that have no room, each with its head; not what it serves.
    QStringList leftOut() const;

  signals:
    /// Other columns may be shown, or left out.
    void columnsFitted();
    /// A row was stored.
    void stored(int row);

  protected:
    QModelIndex typingCell(const QModelIndex& current) const override;
    QModelIndex cellAfterEnter(const QModelIndex& cell) override;
    QModelIndex cellBeforeEnter(const QModelIndex& cell) override;
    QModelIndex cellAfterTab(const QModelIndex& cell) const override;
    QModelIndex cellBeforeTab(const QModelIndex& cell) const override;
    bool keepsTab() const override { return true; }
    QString rowKey(const QModelIndex& cell) const override;
    int rowWithKey(const QString& key, int row) const override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void keepInMiddleThird(int row);
    void fitColumns();
    void fitColumnsNow();
    /// The widths in which what each column must hold is read in narrower letters, px.
    std::vector<int> leastWidths(int headLetters) const;
    /// Whether a column is never left out for want of room.
    bool isKept(int column) const;

    WalkModel& m_model;
    BranchDelegate* m_delegate;
    ShownRefresh* m_columns;  ///< every row is measured: only where it is seen
    bool m_isAfterJump = false;
};

}  // namespace ww::ui
