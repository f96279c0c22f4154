// The advice beside the valve in hand: how sure it is, what would make it surer, what the pump should do
// then, and the table of all settings. Not for making it (core/balancing/advice).
#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QTableView>
#include <QWidget>

#include "ui/delegates/branch_delegate.h"
#include "ui/places/adjust/advice_model.h"
#include "ui/theme/theme.h"
#include "ui/widgets/whole_label.h"
#include "ui/widgets/words_area.h"

namespace ww::ui {

class AdvicePanel : public QWidget {
    Q_OBJECT

  public:
    AdvicePanel(const WorkbookBridge& bridge, const LoopAdvisor& advisor, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    /// As AdviceModel::setWork; shown from the next refresh() on. `isChanged`: a person changed the order.
    void setWork(std::vector<std::size_t> order, bool isChanged, const std::optional<base::Id>& offered);
    /// Shows what is advised now; `branch` is the valve in hand and `beside` how its word and the advice
    /// stand beside each other.
    void refresh(const std::optional<base::Id>& branch,
                 const std::optional<balancing::AdviceBesideWord>& beside = {});
    /// Whether all that is said is in sight; otherwise it scrolls in the room that is left.
    void setWhole(bool isWhole) { m_area->setWhole(isWhole); }
    /// The height that it needs in any case, px.
    int leastHeight() const { return m_table->minimumHeight(); }
    QTableView* table() const { return m_table; }
    AdviceModel* model() const { return m_model; }
    /// The branch of the row in hand; nothing without one.
    std::optional<base::Id> branchInHand() const;
    /// All that is said beside the table.
    QString words() const;

  signals:
    /// Enter in the table: this valve is to be taken in hand with its advised setting.
    void taken(const ww::base::Id& branch);
    /// Escape in the table.
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fitColumns();
    /// The words stand beside the table where its columns have room there at their least, else above it.
    void placeTable();
    void showWords();
    static void addSome(QStringList& lines, const std::vector<base::Fault>& faults);

    const WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    AdviceModel* m_model;
    bool m_isOrderChanged = false;
    std::optional<base::Fault> m_reason;  ///< why the word in hand stands beside the advice
    BranchDelegate* m_delegate;
    QTableView* m_table;
    WholeLabel* m_status;
    QLabel* m_busy;
    QLabel* m_words;
    WordsArea* m_area;
    QBoxLayout* m_parts;
    int m_tableNeeds = 0;  ///< its columns at their least, px
};

}  // namespace ww::ui
