#include "ui/delegates/fitted_text.h"

#include <QFontMetrics>
#include <QStyle>
#include <algorithm>
#include <optional>

#include "ui/models/branch_roles.h"
#include "ui/text/narrow_letters.h"
#include "ui/text/written_way.h"
#include "ui/theme/control_style.h"

namespace ww::ui {
namespace {

using text::narrowest;
using text::widestThatFits;

constexpr const char* kLetters = "column_letters";

bool fitsInOneLine(const QString& text, const QFont& font, const QSize& room) {
    return QFontMetrics(font).horizontalAdvance(text) <= room.width();
}

/// The text in lines of that width, px, which end between words alone; nothing where a word is wider. Qt
/// would end a line also at a hyphen, and part the tag of a valve.
std::optional<QString> linesOf(const QString& text, const QFontMetrics& metrics, int width) {
    QStringList lines;
    for (const QString& paragraph : text.split('\n')) {
        lines << QString();
        for (const QString& word : paragraph.split(' ')) {
            if (metrics.horizontalAdvance(word) > width) {
                return std::nullopt;
            }
            const QString longer = lines.back().isEmpty() ? word : lines.back() + ' ' + word;
            const bool isRoom = metrics.horizontalAdvance(longer) <= width;
            isRoom ? lines.back() = longer : lines.emplace_back(word);
        }
    }
    return lines.join('\n');
}

bool fitsWrapped(const QString& text, const QFont& font, const QSize& room) {
    constexpr int kMost = 1000;
    const QFontMetrics metrics(font);
    const QRect box = metrics.boundingRect(QRect(0, 0, room.width(), kMost), Qt::TextWordWrap, text);
    return box.height() <= room.height() && box.width() <= room.width();
}

bool hasTwoLines(const QFont& font, const QSize& room) {
    return room.height() >= 2 * QFontMetrics(font).height();
}

/// Letters wider than these, percent, are not worth the loading: all lines together are too short for a text
/// that is so wide, px. A little wider than the quotient, as letters are drawn on whole pixels.
int widestWorthTrying(int wide, const QFont& font, const QSize& room) {
    constexpr int kRounding = 10;
    const int lines = std::max(1, room.height() / QFontMetrics(font).height());
    return 100 * lines * room.width() / std::max(1, wide) + kRounding;
}

}  // namespace

FittedText fitText(const QString& text, const QFont& font, const QSize& room, int widest) {
    const int wide = QFontMetrics(font).horizontalAdvance(text);
    if (widest >= 100 && wide <= room.width()) {
        return {font, text, false, false};
    }
    const bool isHigh = hasTwoLines(font, room);
    const int worthTrying = widestWorthTrying(wide, font, room);
    bool isWrapped = false;
    QString lines;
    const auto fitting = widestThatFits(
        font,
        [&](const QFont& tried) {
            if (text::stretchOf(tried) > worthTrying) {
                return false;
            }
            isWrapped = !fitsInOneLine(text, tried, room);
            const auto broken = isWrapped && isHigh ? linesOf(text, QFontMetrics(tried), room.width())
                                                    : std::optional<QString>();
            lines = broken.value_or(text);
            return !isWrapped || (broken && fitsWrapped(lines, tried, room));
        },
        widest);
    if (fitting) {
        return {*fitting, lines, isWrapped, false};
    }
    constexpr QChar kNoBreak = QChar::Nbsp;
    if (isHigh && text.contains(kNoBreak)) {
        // Better a unit in the second line than a number that is cut.
        return fitText(QString(text).replace(kNoBreak, ' '), font, room, widest);
    }
    const QFont least = narrowest(font);
    const QFontMetrics metrics(least);
    if (isHigh && fitsWrapped(text, least, room)) {
        return {least, text, true, false};
    }
    if (!isHigh) {
        return {least, metrics.elidedText(text, Qt::ElideRight, room.width()), false, true};
    }
    // As much as two lines hold; a word that goes over leaves the end of the first one empty.
    for (int width = 2 * room.width(); width > room.width(); width -= room.width() / 8 + 1) {
        const QString shortened = metrics.elidedText(text, Qt::ElideRight, width);
        if (fitsWrapped(shortened, least, room)) {
            return {least, shortened, true, true};
        }
    }
    return {least, metrics.elidedText(text, Qt::ElideRight, room.width()), false, true};
}

int columnLetters(const QWidget* view, int column) {
    const auto percents = view != nullptr ? view->property(kLetters).value<QList<int>>() : QList<int>();
    return percents.value(column, 100);
}

void setColumnLetters(QWidget& view, const QList<int>& percents) {
    if (view.property(kLetters).value<QList<int>>() != percents) {
        view.setProperty(kLetters, QVariant::fromValue(percents));
    }
}

QFont numeralFont(const QFont& ofView, const QWidget* view) {
    QFont font = ofView;
    const int weight = view != nullptr ? view->style()->styleHint(theme::ControlStyle::kNumeralWeight) : 0;
    font.setWeight(QFont::Weight(std::max<int>(font.weight(), weight)));
    return font;
}

QFont cellFont(const QModelIndex& cell, const QFont& ofView, const QWidget* view) {
    QFont font = ofView;
    if (cell.data(IsStrongRole).toBool()) {
        font.setWeight(QFont::DemiBold);
    } else if (text::isNumeral(cell.data().toString())) {
        font = numeralFont(ofView, view);
    }
    return font;
}

int shapeBesideWords(const QFont& ofView) {
    constexpr int kLeastShape = 16;
    return std::max(kLeastShape, QFontMetrics(ofView).height() - 1);
}

int besideWords(const QModelIndex& cell, const QFont& ofView) {
    const bool hasShape = cell.data(IsStateCellRole).toBool() && cell.data(StateRole).isValid();
    return 2 * kCellMargin + cell.data(DepthRole).toInt() * kIndent +
           (hasShape ? shapeBesideWords(ofView) + kBehindShape : 0);
}

int twoLinesHeight(const QFont& font) {
    constexpr int kAboveAndBelow = 4;
    return 2 * QFontMetrics(font).height() + kAboveAndBelow;
}

}  // namespace ww::ui
