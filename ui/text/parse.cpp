#include "ui/text/parse.h"

#include <QRegularExpression>

namespace ww::ui::text {

namespace {

/// Revolutions per minute as they are shown in some language: "1450 1/min", "1450 U/min", "1450 tr/min"; the
/// digits are left without what belongs to the unit. A "1" that no space parts from the digits is one of
/// them.
bool isRevolutions(QString& digits, const QString& unit) {
    static const QRegularExpression kOnePer(QStringLiteral("(\\s1)?/\\s*$"));
    const QString word = unit.toLower();
    if (word == QStringLiteral("u/min") || word == QStringLiteral("tr/min") ||
        word == QStringLiteral("r/min")) {
        return true;
    }
    if (word != QStringLiteral("min") || !digits.contains(kOnePer)) {
        return false;
    }
    digits.remove(kOnePer);
    return true;
}

}  // namespace

DigitsAndUnit split(const QString& text) {
    const QString all = text.trimmed();
    qsizetype end = 0;
    while (end < all.size() && !all[end].isLetter() && all[end] != '%') {
        ++end;
    }
    QString unit = all.mid(end).trimmed();
    QString digits = all.left(end);
    if (isRevolutions(digits, unit)) {
        unit = QStringLiteral("rpm");
    }
    unit.replace(QChar(0xB3), QStringLiteral("3"));
    unit.replace(QChar(0x2082), QStringLiteral("2"));
    digits.remove(QChar(0xB0));  // the degree sign belongs to the unit
    return {digits.trimmed().toStdString(), unit.toStdString()};
}

base::Result<base::Instant> parseDate(const QString& text) {
    const auto date = base::Instant::fromText(text.trimmed().toStdString());
    if (!date) {
        return base::Fault{&kNotADate, {}, {text.trimmed().toStdString()}};
    }
    return *date;
}

}  // namespace ww::ui::text
