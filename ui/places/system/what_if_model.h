// The table of the what-if bench: settings and closures tried in the mind, and what every branch would take.
// Nothing of it is stored.
#pragma once

#include <QAbstractTableModel>
#include <optional>
#include <vector>

#include "core/balancing/prediction.h"

namespace ww::ui::system {

class WhatIfModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column {
        Tag,
        SettingNow,
        SettingTried,
        Closed,
        FlowMeasured,
        FlowPredicted,
        OfTarget,
        OfDesign,
        ValveDp,
        ColumnCount
    };

    explicit WhatIfModel(QObject* parent = nullptr);

    /// Takes the job as it stands; what was tried stays for branches that are still there.
    void setJob(const project::Project& project, const balancing::Assessment& assessment);
    /// What the readings taught: resistances, and the factor on the pump's curve that goes with them. Empty:
    /// the design losses hold.
    void setLearned(balancing::Resistances resistances, double pumpCurveFactor);
    /// Whether the prediction rests on the learned loop.
    bool isLearned() const { return !m_learned.empty(); }
    /// Percent of rated speed for all running pumps, 0 to 120; false for any other text, and nothing changes.
    bool setSpeed(const QString& percent);
    QString speed() const;
    /// Back to the loop as the last round left it.
    void reset();
    /// True while the state differs from the one the last round left.
    bool isTrying() const;

    /// One sentence: what the pump would do, and how far apart the shares would be; or why there is no
    /// answer.
    QString summary() const;
    /// The row of a branch; nothing where it is not in the table.
    std::optional<int> rowOf(const base::Id& branch) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  signals:
    /// A prediction was made again; summary() has changed.
    void predicted();
    /// What was typed cannot be used; the old value stays.
    void refused(const ww::base::Fault& why);

  private:
    void predictAgain();
    quantity::Unit flowUnit() const;
    quantity::Unit dpUnit() const;
    QString shown(std::size_t branch, int column) const;
    QString settingText(std::size_t branch, const balancing::LoopState& state) const;
    bool isClosed(const base::Id& branch) const;
    bool trySetting(std::size_t branch, const QString& typed);

    project::Project m_project;
    balancing::Assessment m_assessment;
    balancing::Resistances m_learned;
    double m_pumpCurveFactor = 1.0;
    balancing::LoopState m_found;
    balancing::LoopState m_tried;
    balancing::PredictionResult m_result;
    std::vector<std::size_t> m_rows;  ///< branch of each row
};

}  // namespace ww::ui::system
