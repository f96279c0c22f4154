// What the cells and heads of a walk say, to the eye and spoken.
#include "ui/models/branch_roles.h"
#include "ui/models/walk_model.h"
#include "ui/text/conflict_text.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// Digits as typed where the unit is that of the column; else what they are in it or, to be edited, with
/// theirs.
template <class Q>
QString enteredText(const quantity::Measured<Q>& typed, quantity::Unit columnUnit, bool isForEditing,
                    const QString& inColumnUnit) {
    if (typed.unit == columnUnit) {
        return QString::fromStdString(typed.digits.text());
    }
    return isForEditing ? QString::fromStdString(typed.text()) : inColumnUnit;
}

/// A dp that gives no flow, as it came with a table of readings.
QString dpWithoutTable(const project::Reading* reading) {
    return reading != nullptr && reading->dp ? QString::fromStdString(reading->dp->text()) : QString();
}

QVariant alignmentOf(int column) {
    const bool isText = column == WalkModel::Tag || column == WalkModel::Serves || column == WalkModel::State;
    return QVariant::fromValue(int(Qt::AlignVCenter) | int(isText ? Qt::AlignLeft : Qt::AlignRight));
}

}  // namespace

QString WalkModel::entryText(int row, bool isForEditing) const {
    const project::Reading* own = reading(row);
    if (own == nullptr) {
        return {};
    }
    if (own->cannotBeRead && !own->dp && !own->flow) {
        return isForEditing ? QStringLiteral("x") : notReadable();
    }
    const bool isByFlow = entryColumn(row) == Flow;
    if (isByFlow ? !own->flow : !own->dp) {
        return {};
    }
    if (const auto both = isForEditing ? std::nullopt : conflictText(row)) {
        return *both;
    }
    const project::Project& project = m_bridge.project();
    if (isByFlow) {
        return enteredText(*own->flow, text::flowUnit(project), isForEditing,
                           text::flow(own->flow->value, project));
    }
    const quantity::Unit unit = text::dpUnit(project, m_bridge.instrument());
    if (!isForEditing && own->isRepeat && result(row).dp) {
        return tr("%1 mean").arg(text::dp(*result(row).dp, unit, project.fluid()));
    }
    return enteredText(*own->dp, unit, isForEditing, text::dp(own->dp->value, unit, project.fluid()));
}

std::optional<QString> WalkModel::conflictText(int row) const {
    const project::Project& project = m_bridge.project();
    const project::Reading* own = reading(row);
    if (own == nullptr || project.mergeConflicts().empty()) {
        return std::nullopt;
    }
    const auto conflict = m_bridge.conflictAt(branchAt(row), own->round);
    if (!conflict) {
        return std::nullopt;
    }
    const text::ConflictDigits digits = text::conflictDigits(*conflict);
    return tr("%1 | %2").arg(digits.ours, digits.theirs);
}

QString WalkModel::numberText(int row, int column) const {
    const balancing::BranchResult& shown = result(row);
    // A share rests on all flows; while some are of an earlier round it is not this round's alone.
    const QString about = m_shown.isComplete ? QString() : QStringLiteral("~");
    if (column == Target) {
        return shown.isInLoop ? text::percent(shown.targetShare) : QString();
    }
    if (!hasOwnReading(row)) {
        // A group without a reading of its own still has the flow of its children.
        const bool isSum = shown.source == balancing::FlowSource::SumOfChildren && !shown.isFromEarlierRound;
        if (!isSum) {
            return {};
        }
    }
    switch (column) {
        case Flow:
            if (shown.source == balancing::FlowSource::Range && shown.flowLow && shown.flowHigh) {
                return text::flow(*shown.flowLow, m_bridge.project()) + QChar(0x2013) +
                       text::flow(*shown.flowHigh, m_bridge.project());
            }
            return shown.flow ? text::flow(*shown.flow, m_bridge.project()) : QString();
        case Share:
            return shown.share ? about + text::percent(*shown.share) : QString();
        case OfTarget:
            return shown.ofTarget ? about + text::ofTarget(*shown.ofTarget, m_bridge.project()) : QString();
        default:
            return {};
    }
}

QString WalkModel::cellText(int row, int column, bool isForEditing) const {
    const project::Project& project = m_bridge.project();
    const project::Branch& branch = project.branches()[m_rows[static_cast<std::size_t>(row)].branch];
    switch (column) {
        case Route:
            return QString::number(row + 1) +
                   (openComment(row) != nullptr ? QStringLiteral(" !") : QString());
        case Tag: {
            const bool isIndex = m_shown.index.terminal == m_rows[static_cast<std::size_t>(row)].branch;
            return QString::fromStdString(branch.tag) + (isIndex ? QStringLiteral(" *") : QString());
        }
        case Serves:
            return QString::fromStdString(branch.serves);
        case Setting: {
            const project::Reading* own = reading(row);
            if (isForEditing && own != nullptr && own->setting) {
                return QString::fromStdString(own->setting->text());
            }
            const auto setting = own != nullptr && own->setting
                                     ? std::optional(quantity::Setting::si(own->setting->value()))
                                     : result(row).setting;
            return setting ? text::setting(*setting, project, branch) : QString();
        }
        case Dp:
            return entryColumn(row) == Dp ? entryText(row, isForEditing) : dpWithoutTable(reading(row));
        case Last: {
            const project::Reading* before = earlier(row);
            if (before == nullptr || !before->dp) {
                return {};
            }
            const quantity::Unit unit = text::dpUnit(project, m_bridge.instrument());
            return enteredText(*before->dp, unit, false, text::dp(before->dp->value, unit, project.fluid()));
        }
        case State: {
            const project::Reading* own = reading(row);
            const bool isExplained = own != nullptr && !own->reason.empty();
            const QString word = stateWord(row);
            return isExplained ? tr("%1, reason").arg(word) : word;
        }
        case Flow:
            return entryColumn(row) == Flow && (isForEditing || reading(row) != nullptr)
                       ? entryText(row, isForEditing)
                       : numberText(row, column);
        default:
            return numberText(row, column);
    }
}

QString WalkModel::stateWord(int row) const {
    if (!result(row).isInLoop) {
        return tr("Added later");
    }
    return result(row).isFromEarlierRound ? text::word(balancing::State::NotRead) : text::word(result(row));
}

QString WalkModel::spoken(int row, int column) const {
    const QString value = cellText(row, column, false);
    QStringList parts{cellText(row, Tag, false),
                      headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().replace('\n', ' ')};
    parts << (value.isEmpty() ? tr("empty") : value);
    if (column == entryColumn(row) && !value.isEmpty()) {
        parts << stateWord(row);
        const QString ofTarget = numberText(row, OfTarget);
        if (!ofTarget.isEmpty()) {
            parts << tr("%1 percent of target").arg(ofTarget);
        }
    }
    if (const project::Comment* comment = openComment(row)) {
        parts << tr("comment: %1").arg(QString::fromStdString(comment->text));
    }
    return parts.join(QStringLiteral(", "));
}

const project::Comment* WalkModel::openComment(int row) const {
    const base::Id& branch = branchAt(row);
    for (const project::Comment& comment : m_bridge.project().comments()) {
        if (comment.round == m_shown.round && comment.branch == branch && !comment.answers &&
            !comment.isResolved) {
            return &comment;
        }
    }
    return nullptr;
}

QVariant WalkModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const int row = index.row();
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole:
            return cellText(row, column, false);
        case Qt::EditRole:
            return cellText(row, column, true);
        case Qt::TextAlignmentRole:
            return alignmentOf(column);
        case Qt::AccessibleTextRole:
            return spoken(row, column);
        case StateRole:
            return static_cast<int>(stateOf(row));
        case IsOverRole:
            return result(row).ofTarget && result(row).ofTarget->si() > 1.0;
        case IsSoftRole:
            return column == Route || column == Serves || column == Last || column == Target ||
                   (!m_shown.isComplete && (column == Share || column == OfTarget));
        case IsStateCellRole:
            return column == State;
        case IsStrongRole:
            return column == entryColumn(row) || column == Tag;
        default:
            return {};
    }
}

QVariant WalkModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return alignmentOf(section);
    }
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) {
        return {};
    }
    const QString dp = text::symbol(text::dpUnit(m_bridge.project(), m_bridge.instrument()));
    const QString flow = text::symbol(text::flowUnit(m_bridge.project()));
    const QString names[ColumnCount] = {tr("Route"),
                                        tr("Tag"),
                                        tr("Serves"),
                                        tr("Setting"),
                                        tr("DP\n%1").arg(dp),
                                        tr("Last DP\n%1").arg(dp),
                                        tr("Flow\n%1").arg(flow),
                                        tr("Share\n%"),
                                        tr("Target\n%"),
                                        tr("Of target\n%"),
                                        tr("State")};
    return names[section];
}

}  // namespace ww::ui
