#include "ui/text/written_way.h"

#include <QStyle>
#include <algorithm>

namespace ww::ui::text {
namespace {

bool runsOtherwise(Qt::LayoutDirection layout, const QString& text) {
    return layout == Qt::RightToLeft && !text.isRightToLeft();
}

}  // namespace

int writtenFlags(Qt::LayoutDirection layout, int flags, const QString& text) {
    constexpr int kForced = Qt::TextForceLeftToRight | Qt::TextForceRightToLeft;
    if (!runsOtherwise(layout, text) || (flags & kForced) != 0) {
        return flags;
    }
    const int across = flags & int(Qt::AlignHorizontal_Mask);
    const int side = int(QStyle::visualAlignment(layout, Qt::Alignment(across)));
    return (flags & ~int(Qt::AlignHorizontal_Mask)) | side | int(Qt::TextForceLeftToRight);
}

QString writtenApart(Qt::LayoutDirection paragraph, const QString& text) {
    constexpr QChar kIsolate(0x2066);
    constexpr QChar kEnd(0x2069);
    return text.isEmpty() || !runsOtherwise(paragraph, text) ? text : kIsolate + text + kEnd;
}

bool isNumeral(const QString& text) {
    static const QString kBefore = QStringLiteral(" ~+-\u2212\u00b1<>\u2264\u2265\u2248(");
    const auto first = std::find_if(text.begin(), text.end(), [](QChar c) { return !kBefore.contains(c); });
    return first != text.end() && first->isDigit();
}

}  // namespace ww::ui::text
