#include "ui/delegates/wrapped_item.h"

#include <QListView>
#include <QPainter>
#include <QStyle>
#include <QTreeView>
#include <algorithm>
#include <utility>

#include "ui/text/narrow_letters.h"
#include "ui/text/written_way.h"

namespace ww::ui {
namespace {

constexpr int kBesideName = 4;
constexpr int kAboveName = 1;
constexpr int kAnyHeight = 10000;

/// How a name is written.
struct NameWriting {
    QFont font;
    int wrap = Qt::TextWordWrap;
};

QRect wrappedBox(const QString& words, const NameWriting& writing, int width) {
    return QFontMetrics(writing.font).boundingRect(QRect(0, 0, width, kAnyHeight), writing.wrap, words);
}

/// In the widest letters in which no word is wider than the room; a word that fits in none is broken.
NameWriting writingFor(const QString& words, const QFont& font, int width) {
    const auto fitting = text::widestThatFits(
        font, [&](const QFont& tried) { return wrappedBox(words, {tried}, width).width() <= width; });
    return fitting ? NameWriting{*fitting} : NameWriting{text::narrowest(font), Qt::TextWrapAnywhere};
}

QPalette::ColorGroup groupOf(QStyle::State state) {
    return !state.testFlag(QStyle::State_Enabled) ? QPalette::Disabled
           : state.testFlag(QStyle::State_Active) ? QPalette::Active
                                                  : QPalette::Inactive;
}

/// What a view keeps beside an item: the space between them, or the branch that leads to it.
int besideItem(const QAbstractItemView& view, QModelIndex index) {
    if (const auto* list = qobject_cast<const QListView*>(&view)) {
        return 2 * list->spacing();
    }
    const auto* tree = qobject_cast<const QTreeView*>(&view);
    int beside = 0;
    for (; tree != nullptr && index.isValid(); index = index.parent()) {
        beside += tree->indentation();
    }
    return beside;
}

}  // namespace

void WrappedItem::paint(QPainter* painter, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const {
    QStyleOptionViewItem item(option);
    initStyleOption(&item, index);
    const QString words = std::exchange(item.text, QString());
    const QStyle* style = item.widget != nullptr ? item.widget->style() : nullptr;
    if (style == nullptr) {
        QStyledItemDelegate::paint(painter, option, index);
        return;
    }
    style->drawControl(QStyle::CE_ItemViewItem, &item, painter, item.widget);
    const QRect box = item.rect.adjusted(kBesideName, kAboveName, -kBesideName, -kAboveName);
    const bool isSelected = item.state.testFlag(QStyle::State_Selected);
    painter->save();
    const NameWriting writing = writingFor(words, item.font, box.width());
    painter->setFont(writing.font);
    painter->setPen(
        item.palette.color(groupOf(item.state), isSelected ? QPalette::HighlightedText : QPalette::Text));
    const int flags = int(Qt::AlignLeft | Qt::AlignVCenter) | writing.wrap;
    painter->drawText(box, text::writtenFlags(item.direction, flags, words), words);
    painter->restore();
}

QSize WrappedItem::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* list = qobject_cast<const QAbstractItemView*>(option.widget);
    if (list == nullptr) {
        return QStyledItemDelegate::sizeHint(option, index);
    }
    QStyleOptionViewItem item(option);
    initStyleOption(&item, index);
    const QString words = std::exchange(item.text, QString());
    // What a style asks for every item, as large targets do.
    const int least = list->style()->sizeFromContents(QStyle::CT_ItemViewItem, &item, QSize(), list).height();
    const int width = std::max(2 * kBesideName + 1, list->viewport()->width() - besideItem(*list, index));
    const int room = width - 2 * kBesideName;
    const int height = wrappedBox(words, writingFor(words, item.font, room), room).height();
    return {width, std::max(least, height + 2 * kAboveName)};
}

}  // namespace ww::ui
