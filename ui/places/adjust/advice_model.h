// The advice as a table: every valve in the working order with its setting and what it will bring. Not for
// making it (core/balancing/advice).
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "core/balancing/advice_beside_word.h"
#include "ui/loop_advisor.h"

namespace ww::ui {

class AdviceModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Order, Tag, Now, SetTo, AimDp, AsRead, InTruth, Note, ColumnCount };

    AdviceModel(const WorkbookBridge& bridge, const LoopAdvisor& advisor, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// The valve in hand and how its word stands beside the advice: its row says what is done now. Shown from
    /// the next refresh() on.
    void setInHand(const std::optional<base::Id>& branch, std::optional<balancing::AdviceStand> stand);
    /// The order in which the valves are taken (indices into Project::branches()), and the valve whose
    /// advised setting is proposed: its setting is bold. What is not in the order stands below it. Shown from
    /// the next refresh() on.
    void setWork(std::vector<std::size_t> order, const std::optional<base::Id>& offered);
    /// Shows what is advised now. What is gone is taken off at once, without being asked.
    void refresh();
    /// What is shown; null where there is nothing.
    const LoopPicture* shown() const { return m_shown.get(); }
    const balancing::SettingAdvice& at(int row) const;
    /// Whether valves may be turned by what is shown. Else no setting and nothing that follows from it is
    /// shown.
    bool isReady() const { return m_shown != nullptr && m_shown->advice.isReady(); }
    /// Whether a round confirmed the shares with the valve of the row where it stands, beside its advised
    /// setting: it is left there.
    bool isLeftAsItIs(int row) const { return isLeft(at(row)); }
    /// The setting that the row asks for: the advised one, the one at which the index is proved, or where the
    /// valve is left.
    quantity::Setting askedAt(int row) const { return askedFor(at(row)); }
    /// The row of a branch; -1 where nothing is advised for it.
    int rowOf(const base::Id& branch) const;
    /// The branch of a row.
    const base::Id& branchAt(int row) const;

  private:
    void putInOrder();
    QString cell(const balancing::SettingAdvice& advised, int row, int column) const;
    /// What is done at this valve now, where that is not the advised setting; else empty.
    QString doneNow(const balancing::SettingAdvice& advised) const;
    bool isLeft(const balancing::SettingAdvice& advised) const;
    quantity::Setting askedFor(const balancing::SettingAdvice& advised) const;
    QString settingOf(const balancing::SettingAdvice& advised, quantity::Setting setting) const;

    const WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    std::shared_ptr<const LoopPicture> m_shown;
    std::vector<std::size_t> m_order;
    std::vector<std::size_t> m_rows;  ///< by row: index into Advice::settings
    std::size_t m_ordered = 0;        ///< rows that stand in the working order
    std::optional<base::Id> m_offered;
    std::optional<base::Id> m_inHand;
    std::optional<balancing::AdviceStand> m_stand;
};

}  // namespace ww::ui
