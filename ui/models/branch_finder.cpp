#include "ui/models/branch_finder.h"

#include <QRegularExpression>

namespace ww::ui {

std::optional<std::size_t> placeFound(const project::Project& project, std::span<const std::size_t> order,
                                      const QString& text) {
    const QString wanted = text.trimmed();
    if (wanted.isEmpty()) {
        return std::nullopt;
    }
    static const QRegularExpression kDigits(QStringLiteral("(\\d+)$"));
    bool isNumber = false;
    const int number = wanted.toInt(&isNumber);
    std::optional<std::size_t> holding;
    std::optional<std::size_t> numbered;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const QString tag = QString::fromStdString(project.branches()[order[i]].tag);
        if (tag.compare(wanted, Qt::CaseInsensitive) == 0) {
            return i;
        }
        if (isNumber && !numbered) {
            const QRegularExpressionMatch match = kDigits.match(tag);
            if (match.hasMatch() && match.captured(1).toInt() == number) {
                numbered = i;
            }
        }
        if (!holding && tag.contains(wanted, Qt::CaseInsensitive)) {
            holding = i;
        }
    }
    return numbered ? numbered : holding;
}

}  // namespace ww::ui
