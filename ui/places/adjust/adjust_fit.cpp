// The sizes of the parts of the place Adjust in the room there is. Where they stand is in adjust_layout.cpp.
#include <QHeaderView>
#include <algorithm>

#include "ui/places/adjust/adjust_place.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

constexpr int kWideEnough = 760;
/// The word beside the figures with all of its letters.
constexpr int kWordWidth = 320;
/// Above and below the parts.
constexpr int kMargins = 12;
/// Margins and gaps beside the fields.
constexpr int kEntryGaps = 60;
constexpr int kStripFrame = 6;
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

int AdjustPlace::ladderWidth() const {
    return m_ladder->isVisibleTo(this) ? m_ladder->sizeHint().width() + kBesideLadder : 0;
}

bool AdjustPlace::isWordBelow() const {
    const int figures = 3 * (m_aim->sizeOf(true).width() + m_figuresAndWord->spacing());
    return width() - 2 * kSideMargin < figures + WordSign::kLeastWidth;
}

int AdjustPlace::figuresHeight(bool isSmall) const {
    const int gaps = 3 * m_figures->layout()->spacing();
    const int room = width() - 2 * kSideMargin - ladderWidth() - gaps;
    const QSize figure = m_aim->sizeOf(isSmall);
    if (isWordBelow()) {
        return figure.height() + m_figuresAndWord->spacing() + m_word->heightAt(width() - 2 * kSideMargin);
    }
    constexpr int kAllStretches = 3 * kFigureStretch + kWordStretch;
    const int word = room - 3 * std::max(figure.width(), kFigureStretch * room / kAllStretches);
    return std::max(figure.height(), m_word->heightAt(word));
}

int AdjustPlace::fieldsHeight() const {
    const int row = std::max(m_field->sizeHint().height(), m_hold->sizeHint().height());
    const bool isHoldBelow = m_following->indexOf(m_hold) >= 0;
    return isHoldBelow ? 2 * row + m_entry->spacing() : row;
}

int AdjustPlace::heightToEntry(int stripRows, bool isSmall) const {
    const int strip = m_strip->verticalHeader()->defaultSectionSize() * stripRows + kStripFrame;
    const int basis = m_isLow ? std::max(kBasisLines * fontMetrics().height(),
                                         m_basis->heightForWidth(width() - 2 * kSideMargin))
                              : m_basis->minimumHeight();
    const int gaps = layout()->spacing() + m_pageParts->spacing() + 4 * m_parts->spacing();
    return headHeight() + basis + figuresHeight(isSmall) + strip + m_tries->minimumHeight() +
           m_proposal->minimumHeight() + fieldsHeight() + gaps + kMargins;
}

int AdjustPlace::heightToFields(bool isSmall) const {
    const int head = std::max(m_find->sizeHint().height(), m_title->sizeHint().height());
    return head + figuresHeight(isSmall) + fieldsHeight() + layout()->spacing() + m_parts->spacing() +
           kMargins;
}

void AdjustPlace::fit(bool isAnew) {
    const bool isWide = width() >= kWideEnough;
    const auto placeLadder = [&](bool hasRoom) {
        m_ladder->setVisible(isWide && hasRoom);
        fitEntry();
    };
    // The field says itself what it is for.
    m_findLabel->setVisible(isWide);
    m_title->setWordWrap(isWordBelow());
    m_figuresAndWord->setDirection(isWordBelow() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    const int across = width() - 2 * kSideMargin;
    const int figures = 3 * (m_aim->sizeOf(false).width() + m_figures->layout()->spacing()) + kWordWidth;
    const int room = parentWidget() != nullptr ? std::min(height(), parentWidget()->height()) : height();
    placeLadder(across < figures || across >= figures + m_ladder->sizeHint().width() + kBesideLadder);
    const auto fieldsFit = [&] { return heightToFields(false) <= room; };
    if (across >= figures && !fieldsFit()) {
        placeLadder(false);
    }
    // Where it is low the neighbors keep their settings and aims alone, then the fields come before them, and
    // only then the figures become smaller.
    const bool isTight = heightToEntry(AimStripModel::RowCount, false) > room;
    const int rows = isTight ? AimStripModel::HoldRow : AimStripModel::RowCount;
    const bool isUsual = heightToEntry(rows, false) <= room;
    const bool isSmall = across < figures || (!isUsual && !fieldsFit());
    if (isSmall) {
        placeLadder(true);
    }
    // Between two tries the parts do not go back and forth.
    putInOrder((m_isLow && !isAnew) || (isSmall ? heightToEntry(rows, true) > room : !isUsual));
    for (int row = AimStripModel::HoldRow; row < AimStripModel::RowCount; ++row) {
        m_strip->setRowHidden(row, isTight);
        if (!isTight) {
            // A row comes back with the height that it had when it was hidden.
            m_strip->setRowHeight(row, m_strip->verticalHeader()->defaultSectionSize());
        }
    }
    m_strip->setFixedHeight(m_strip->verticalHeader()->defaultSectionSize() * rows + kStripFrame);
    for (BigFigure* figure : {m_setting, m_aim, m_reading}) {
        figure->setSmall(isSmall);
    }
    // Where the place scrolls in any case, no part of it does.
    const int least = heightToEntry(rows, isSmall) + m_pageParts->spacing() + m_advice->leastHeight();
    m_advice->setWhole(least > room);
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
    const int ladder = ladderWidth();
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
