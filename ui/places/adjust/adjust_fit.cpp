// The sizes of the parts of the place Adjust in the room there is. Where they stand is in adjust_layout.cpp.
#include <QHeaderView>
#include <algorithm>

#include "ui/places/adjust/adjust_place.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// Below this height the table of advice gives way.
constexpr int kRoomForAdvice = 430;
constexpr int kRoomForLarge = 330;
constexpr int kWideEnough = 760;
constexpr int kWideForLarge = 1060;
/// Margins and gaps beside the fields.
constexpr int kEntryGaps = 60;
constexpr int kStripFrame = 6;
/// Margins and gaps between the parts from the top of the place to the end of its fields.
constexpr int kGapsToEntry = 40;
/// Lines that have room in any case.
constexpr int kStateLines = 2;
constexpr int kBasisLines = 3;

}  // namespace

int AdjustPlace::headHeight() const {
    if (!m_isLow) {
        return std::max(m_find->sizeHint().height(), m_state->minimumHeight());
    }
    const int find = m_findLabel->isVisibleTo(this) ? m_findLabel->sizeHint().width() + kHeadGap : 0;
    const int beside = m_title->sizeHint().width() + find + m_find->width() + 2 * kHeadGap;
    const int words = m_state->heightForWidth(std::max(1, width() - 2 * kSideMargin - beside));
    return std::max({m_find->sizeHint().height(), kStateLines * fontMetrics().height(), words});
}

int AdjustPlace::heightToEntry(int stripRows, bool isSmall) const {
    const int figures = std::max(m_aim->heightOf(isSmall), m_word->sizeHint().height());
    const int strip = m_strip->verticalHeader()->defaultSectionSize() * stripRows + kStripFrame;
    const int fields = std::max(m_field->sizeHint().height(), m_hold->sizeHint().height());
    const bool isHoldBelow = m_following->indexOf(m_hold) >= 0;
    const int basis = m_isLow ? std::max(kBasisLines * fontMetrics().height(),
                                         m_basis->heightForWidth(width() - 2 * kSideMargin))
                              : m_basis->minimumHeight();
    return headHeight() + basis + figures + strip + m_tries->minimumHeight() + m_proposal->minimumHeight() +
           (isHoldBelow ? 2 : 1) * fields + kGapsToEntry;
}

void AdjustPlace::fit(bool isAnew) {
    m_ladder->setVisible(width() >= kWideEnough);
    // The field says itself what it is for.
    m_findLabel->setVisible(width() >= kWideEnough);
    fitEntry();
    const int room = parentWidget() != nullptr ? std::min(height(), parentWidget()->height()) : height();
    // Where it is low the neighbors keep their settings and aims alone, then the figures become smaller.
    const bool isTight = heightToEntry(AimStripModel::RowCount, false) > room;
    // Between two tries the parts do not go back and forth.
    putInOrder((m_isLow && !isAnew) || heightToEntry(AimStripModel::HoldRow, true) > room);
    const int rows = isTight ? AimStripModel::HoldRow : AimStripModel::RowCount;
    for (int row = AimStripModel::HoldRow; row < AimStripModel::RowCount; ++row) {
        m_strip->setRowHidden(row, isTight);
    }
    m_strip->setFixedHeight(m_strip->verticalHeader()->defaultSectionSize() * rows + kStripFrame);
    const bool isSmall =
        m_isLow || height() < kRoomForLarge || width() < kWideForLarge || heightToEntry(rows, false) > room;
    for (BigFigure* figure : {m_setting, m_aim, m_reading}) {
        figure->setSmall(isSmall);
    }
    m_advice->setVisible(height() >= kRoomForAdvice);
}

void AdjustPlace::putInOrder(bool isLow) {
    if (isLow == m_isLow) {
        return;
    }
    m_isLow = isLow;
    m_parts->removeWidget(m_entryRow);
    (isLow ? m_head : m_parts)->removeWidget(m_state);
    (isLow ? m_pageParts : m_parts)->removeWidget(m_basis);
    m_head->setStretchFactor(m_title, isLow ? 1 : 0);
    if (isLow) {
        const int figures = m_parts->indexOf(m_figures);
        m_parts->insertWidget(figures + 1, m_entryRow);
        m_parts->insertWidget(figures + 2, m_state);
        m_parts->insertWidget(m_parts->indexOf(m_proposal) + 1, m_basis);
    } else {
        m_parts->insertWidget(m_parts->indexOf(m_proposal) + 1, m_entryRow);
        m_head->insertWidget(1, m_state, 1);
        m_pageParts->insertWidget(0, m_basis);
    }
}

void AdjustPlace::fitEntry() {
    const int ladder = m_ladder->isVisibleTo(this) ? m_ladder->sizeHint().width() : 0;
    const int hold = std::max(m_hold->minimumWidth(), m_hold->sizeHint().width());
    // A layout within another one remembers its sizes until it is laid out anew.
    m_fields->invalidate();
    const int others = m_fields->minimumSize().width() - m_fieldLabel->minimumWidth() +
                       (m_fields->indexOf(m_hold) >= 0 ? 0 : m_fields->spacing() + hold);
    // As wide as the longest label, so that the field never moves; where that has no room it wraps.
    const auto widthOf = [this](const QString& label) { return fontMetrics().horizontalAdvance(label); };
    const QString unit = QStringLiteral("ftH₂O");
    const int shortest = widthOf(tr("&DP %1").arg(unit));
    const int longest = widthOf(tr("&DP %1 at reference %2").arg(unit, QStringLiteral("AHU-00")));
    m_fieldLabel->setFixedWidth(
        std::clamp(width() - ladder - kEntryGaps - others - 1, shortest, std::max(shortest, longest)));
    const int fields = others + m_fieldLabel->minimumWidth();
    // Holding stands beside the fields where it has room there, else before what comes next.
    const bool isBeside = fields + ladder + kEntryGaps < width();
    QBoxLayout* now = m_fields->indexOf(m_hold) >= 0 ? m_fields : m_following;
    if (isBeside != (now == m_fields)) {
        now->removeWidget(m_hold);
        isBeside ? m_fields->insertWidget(m_fields->count() - 1, m_hold)
                 : m_following->insertWidget(0, m_hold);
    }
    // What comes next only where its longest name has room, so that no try moves them.
    const int next = fontMetrics().horizontalAdvance(
        tr("next: %1, %2")
            .arg(QStringLiteral("AHU-00"),
                 tr("%1, %2 % of target").arg(text::word(balancing::State::Doubtful), "~100.0")));
    m_entry->setDirection(fields + next + ladder + kEntryGaps < width() ? QBoxLayout::LeftToRight
                                                                        : QBoxLayout::TopToBottom);
}

}  // namespace ww::ui
