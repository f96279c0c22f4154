#include "ui/places/system/what_if_model.h"

#include <algorithm>

#include "core/base/decimal.h"
#include "core/quantity/measured.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui::system {

namespace {

constexpr base::MessageForm kNoSpeedToTry{"no_speed_to_try",
                                          "\"{1}\" is not a speed; type 0 to 120 % of rated"};
constexpr base::MessageForm kTriedOffScale{"tried_off_scale",
                                           "{1} is off the scale of {2}; type a setting from {3} to {4}"};

QString percent(std::optional<quantity::Ratio> ratio) {
    return ratio ? text::percent(*ratio) : QString();
}

}  // namespace

WhatIfModel::WhatIfModel(QObject* parent) : QAbstractTableModel(parent) {}

void WhatIfModel::setJob(const project::Project& project, const balancing::Assessment& assessment) {
    beginResetModel();
    const bool wasTrying = isTrying();
    const balancing::LoopState tried = m_tried;
    m_project = project;
    m_assessment = assessment;
    m_found = balancing::stateOfLastRound(project);
    m_found.pumpCurveFactor = m_pumpCurveFactor;
    m_tried = m_found;
    if (wasTrying) {
        m_tried.speedFraction = tried.speedFraction;
        for (const auto& [branch, setting] : tried.settings) {
            if (project.branches().contains(branch)) {
                m_tried.settings[branch] = setting;
            }
        }
        std::copy_if(tried.closed.begin(), tried.closed.end(), std::back_inserter(m_tried.closed),
                     [&](const base::Id& branch) { return project.branches().contains(branch); });
    }
    const auto walking = project.tree().walkingOrder();
    m_rows.assign(walking.begin(), walking.end());
    m_result = balancing::predict(m_project, m_tried, m_learned);
    endResetModel();
    emit predicted();
}

void WhatIfModel::setLearned(balancing::Resistances resistances, double pumpCurveFactor) {
    m_learned = std::move(resistances);
    m_pumpCurveFactor = isLearned() ? pumpCurveFactor : 1.0;
    m_found.pumpCurveFactor = m_pumpCurveFactor;
    m_tried.pumpCurveFactor = m_pumpCurveFactor;
    if (!m_rows.empty()) {
        predictAgain();
    }
}

bool WhatIfModel::isTrying() const {
    return m_tried.settings != m_found.settings || !m_tried.closed.empty() ||
           m_tried.speedFraction != m_found.speedFraction;
}

void WhatIfModel::reset() {
    m_tried = m_found;
    predictAgain();
}

bool WhatIfModel::setSpeed(const QString& typed) {
    const auto number = base::Decimal::parse(typed.toStdString());
    if (!number || number->value() < 0 || number->value() > 120) {
        emit refused({&kNoSpeedToTry, {}, {typed.toStdString()}});
        return false;
    }
    m_tried.speedFraction = number->value() / 100;
    predictAgain();
    return true;
}

quantity::Unit WhatIfModel::flowUnit() const {
    return text::flowUnit(m_project);
}

quantity::Unit WhatIfModel::dpUnit() const {
    return text::dpUnit(m_project);
}

QString WhatIfModel::speed() const {
    return QString::fromStdString(quantity::concise(100 * m_tried.speedFraction, 4));
}

void WhatIfModel::predictAgain() {
    m_result = balancing::predict(m_project, m_tried, m_learned);
    if (!m_rows.empty()) {
        emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    }
    emit predicted();
}

QString WhatIfModel::summary() const {
    if (!m_result.prediction) {
        if (m_result.faults.empty()) {
            return {};
        }
        const QString first = text::text(m_result.faults.front());
        return m_result.faults.size() == 1
                   ? tr("No prediction: %1").arg(first)
                   : tr("No prediction: %1 (and %2 more)").arg(first).arg(m_result.faults.size() - 1);
    }
    const balancing::Prediction& prediction = *m_result.prediction;
    double lowest = 1e300;
    double highest = -1e300;
    for (const balancing::BranchPrediction& branch : prediction.branches) {
        if (branch.ofTarget && m_project.tree().isTerminal(branch.branch) && branch.flow.si() > 0) {
            lowest = std::min(lowest, branch.ofTarget->si());
            highest = std::max(highest, branch.ofTarget->si());
        }
    }
    const quantity::Unit headUnit = text::headUnit(m_project.job().units);
    const QString pump =
        tr("Pump %1 %2 at %3 %4, %5 % of full speed")
            .arg(text::flow(prediction.pumpFlow, m_project), text::symbol(flowUnit()),
                 text::head(m_project.fluid().head(prediction.pumpRise), m_project.job().units),
                 text::symbol(headUnit), speed());
    if (highest < lowest) {
        return tr("%1. No water moves.").arg(pump);
    }
    return tr("%1. Shares from %2 to %3 % of target.")
        .arg(pump, QString::number(100 * lowest, 'f', 0), QString::number(100 * highest, 'f', 0));
}

std::optional<int> WhatIfModel::rowOf(const base::Id& branch) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [&](std::size_t row) { return m_project.branches()[row].id == branch; });
    return found == m_rows.end() ? std::nullopt : std::optional(static_cast<int>(found - m_rows.begin()));
}

int WhatIfModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int WhatIfModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

bool WhatIfModel::isClosed(const base::Id& branch) const {
    return std::find(m_tried.closed.begin(), m_tried.closed.end(), branch) != m_tried.closed.end();
}

QString WhatIfModel::settingText(std::size_t branch, const balancing::LoopState& state) const {
    const project::Branch& record = m_project.branches()[branch];
    const auto* characteristic = m_project.characteristicOf(record);
    if (characteristic == nullptr) {
        return {};
    }
    const auto found = state.settings.find(record.id);
    const quantity::Setting setting =
        found == state.settings.end() ? characteristic->fullyOpen() : found->second;
    return text::setting(setting, m_project, record);
}

QString WhatIfModel::shown(std::size_t branch, int column) const {
    const project::Branch& record = m_project.branches()[branch];
    const balancing::BranchResult* measured =
        branch < m_assessment.branches.size() ? &m_assessment.branches[branch] : nullptr;
    const balancing::BranchPrediction* predicted =
        m_result.prediction ? &m_result.prediction->branches[branch] : nullptr;
    switch (column) {
        case Tag:
            return QString::fromStdString(record.tag);
        case SettingNow:
            return settingText(branch, m_found);
        case SettingTried:
            return settingText(branch, m_tried);
        case FlowMeasured:
            return measured != nullptr && measured->flow ? text::flow(*measured->flow, m_project) : QString();
        case FlowPredicted:
            return predicted != nullptr ? text::flow(predicted->flow, m_project) : QString();
        case OfTarget:
            return predicted != nullptr ? percent(predicted->ofTarget) : QString();
        case OfDesign:
            return predicted != nullptr ? percent(predicted->ofDesign) : QString();
        case ValveDp:
            return predicted != nullptr && predicted->valveDrop
                       ? text::dp(*predicted->valveDrop, dpUnit(), m_project.fluid())
                       : QString();
        default:
            return {};
    }
}

QVariant WhatIfModel::data(const QModelIndex& index, int role) const {
    const std::size_t branch = m_rows[static_cast<std::size_t>(index.row())];
    const project::Branch& record = m_project.branches()[branch];
    if (role == Qt::CheckStateRole && index.column() == Closed) {
        return isClosed(record.id) ? Qt::Checked : Qt::Unchecked;
    }
    if (role == Qt::DisplayRole || role == Qt::EditRole) {
        return shown(branch, index.column());
    }
    if (role == Qt::TextAlignmentRole && index.column() != Tag) {
        return int(Qt::AlignRight | Qt::AlignVCenter);
    }
    if (role == Qt::AccessibleTextRole) {
        return QStringLiteral("%1, %2, %3")
            .arg(QString::fromStdString(record.tag),
                 headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                 index.column() == Closed ? (isClosed(record.id) ? tr("closed") : tr("open"))
                                          : shown(branch, index.column()));
    }
    return {};
}

QVariant WhatIfModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) {
        return QAbstractTableModel::headerData(section, orientation, role);
    }
    switch (section) {
        case Tag:
            return tr("Tag");
        case SettingNow:
            return tr("Setting now");
        case SettingTried:
            return tr("What if");
        case Closed:
            return tr("Shut off");
        case FlowMeasured:
            return tr("Measured %1").arg(text::symbol(flowUnit()));
        case FlowPredicted:
            return tr("Predicted %1").arg(text::symbol(flowUnit()));
        case OfTarget:
            return tr("Of target %");
        case OfDesign:
            return tr("Of design %");
        case ValveDp:
            return tr("Valve dp %1").arg(text::symbol(dpUnit()));
        default:
            return {};
    }
}

Qt::ItemFlags WhatIfModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) {
        return Qt::NoItemFlags;
    }
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    const std::size_t branch = m_rows[static_cast<std::size_t>(index.row())];
    if (index.column() == SettingTried &&
        m_project.characteristicOf(m_project.branches()[branch]) != nullptr) {
        flags |= Qt::ItemIsEditable;
    }
    if (index.column() == Closed) {
        flags |= Qt::ItemIsUserCheckable;
    }
    return flags;
}

bool WhatIfModel::trySetting(std::size_t branch, const QString& typed) {
    const project::Branch& record = m_project.branches()[branch];
    const auto* characteristic = m_project.characteristicOf(record);
    const auto number = base::Decimal::parse(typed.toStdString());
    if (characteristic == nullptr || !number) {
        if (!number) {
            emit refused(number.fault());
        }
        return false;
    }
    const quantity::Setting setting = quantity::Setting::si(number->value());
    if (!characteristic->covers(setting)) {
        emit refused({&kTriedOffScale,
                      {},
                      {typed.toStdString(), record.tag,
                       text::setting(characteristic->lowest(), m_project, record).toStdString(),
                       text::setting(characteristic->fullyOpen(), m_project, record).toStdString()}});
        return false;
    }
    m_tried.settings[record.id] = setting;
    predictAgain();
    return true;
}

bool WhatIfModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const std::size_t branch = m_rows[static_cast<std::size_t>(index.row())];
    if (index.column() == Closed && role == Qt::CheckStateRole) {
        const base::Id& id = m_project.branches()[branch].id;
        std::erase(m_tried.closed, id);
        if (value.toInt() == Qt::Checked) {
            m_tried.closed.push_back(id);
        }
        predictAgain();
        return true;
    }
    return index.column() == SettingTried && role == Qt::EditRole && trySetting(branch, value.toString());
}

}  // namespace ww::ui::system
