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

bool AdjustPlace::isReadingBelow() const {
    return width() - 2 * kSideMargin < 3 * m_aim->sizeOf(true).width() + 2 * m_figuresAndWord->spacing();
}

int AdjustPlace::figuresHeight(bool isSmall) const {
    const int gaps = 3 * m_figures->layout()->spacing();
    const int room = width() - 2 * kSideMargin - ladderWidth() - gaps;
    const QSize figure = m_aim->sizeOf(isSmall);
    if (isReadingBelow()) {
        const int across = width() - 2 * kSideMargin - m_figuresAndWord->spacing();
        const int reading =
            std::max(figure.width(), kFigureStretch * across / (kFigureStretch + kWordStretch));
        const int lower = std::max(figure.height(), m_word->heightAt(across - reading));
        return figure.height() + m_figuresAndWord->spacing() + lower;
    }
    if (isWordBelow()) {
        return figure.height() + m_figuresAndWord->spacing() + m_word->heightAt(width() - 2 * kSideMargin);
    }
    constexpr int kAllStretches = 3 * kFigureStretch + kWordStretch;
    const int word = room - 3 * std::max(figure.width(), kFigureStretch * room / kAllStretches);
    return std::max(figure.height(), m_word->heightAt(word));
}

int AdjustPlace::fieldsHeight() const {
    const int row = std::max(m_field->sizeHint().height(), m_hold->sizeHint().height());
    const int below = (m_following->indexOf(m_hold) >= 0 ? 1 : 0) + (m_entry->indexOf(m_handle) >= 0 ? 1 : 0);
    return row + below * (row + m_entry->spacing());
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
    placeFigures();
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
    fitNeighbors();
    m_strip->setFixedHeight(m_strip->verticalHeader()->defaultSectionSize() * rows + kStripFrame);
    for (BigFigure* figure : {m_setting, m_aim, m_reading}) {
        figure->setSmall(isSmall);
    }
    // Where the place scrolls in any case, no part of it does.
    const int least = heightToEntry(rows, isSmall) + m_pageParts->spacing() + m_advice->leastHeight();
    m_advice->setWhole(least > room);
}

/// Where all neighbors have no room the nearest of the setting in hand stay.
void AdjustPlace::fitNeighbors() {
    constexpr int kNearest = 3;
    const int room = m_strip->viewport()->width() / AimStripModel::kColumns;
    const bool isAll = room >= fontMetrics().horizontalAdvance(QStringLiteral("88.88"));
    const int middle = AimStripModel::kColumns / 2;
    const int inHand = m_stripModel->currentColumn() < 0 ? middle : m_stripModel->currentColumn();
    const int first = std::clamp(inHand - 1, 0, AimStripModel::kColumns - kNearest);
    for (int column = 0; column < AimStripModel::kColumns; ++column) {
        m_strip->setColumnHidden(column, !isAll && (column < first || column >= first + kNearest));
    }
}

void AdjustPlace::placeFigures() {
    m_figuresAndWord->setDirection(isWordBelow() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    if (isReadingBelow() == (m_wordRow->indexOf(m_reading) >= 0)) {
        return;
    }
    if (isReadingBelow()) {
        m_figureRow->removeWidget(m_reading);
        m_wordRow->insertWidget(0, m_reading, kFigureStretch);
    } else {
        m_wordRow->removeWidget(m_reading);
        m_figureRow->addWidget(m_reading, kFigureStretch);
    }
}

void AdjustPlace::placeHandle(int shortest) {
    const int handle = kBeforeHandle + m_settingLabel->minimumSizeHint().width() + m_settingField->width();
    const int others = shortest + m_field->width() + 3 * m_fields->spacing();
    const bool isBelow = width() - 2 * kSideMargin < others + handle;
    m_following->setDirection(isBelow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    if (isBelow == (m_entry->indexOf(m_handle) >= 0)) {
        return;
    }
    // One field stands below the other.
    m_handle->setContentsMargins(isBelow ? 0 : kBeforeHandle, 0, 0, 0);
    if (isBelow) {
        m_fields->removeItem(m_handle);
        m_entry->insertLayout(1, m_handle);
    } else {
        m_entry->removeItem(m_handle);
        m_fields->insertLayout(2, m_handle);
    }
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
    const auto widthOf = [this](const QString& label) { return fontMetrics().horizontalAdvance(label); };
    const QString unit = QStringLiteral("ftH₂O");
    int shortest = widthOf(tr("&DP %1").arg(unit));
    // A layout within another one remembers its sizes until it is laid out anew.
    placeHandle(shortest);
    if (m_entry->indexOf(m_handle) >= 0) {
        shortest = std::max(shortest, m_settingLabel->minimumSizeHint().width());
    }
    m_handle->invalidate();
    m_fields->invalidate();
    const int others = m_fields->minimumSize().width() - m_fieldLabel->minimumWidth() +
                       (m_fields->indexOf(m_hold) >= 0 ? 0 : m_fields->spacing() + hold);
    // As wide as the longest label, so that the field never moves; where that has no room it wraps.
    const int longest = widthOf(tr("&DP %1 at reference %2").arg(unit, QStringLiteral("AHU-00")));
    m_fieldLabel->setFixedWidth(
        std::clamp(width() - ladder - kEntryGaps - others - 1, shortest, std::max(shortest, longest)));
    m_settingLabel->setMinimumWidth(m_entry->indexOf(m_handle) >= 0 ? m_fieldLabel->minimumWidth() : 0);
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
