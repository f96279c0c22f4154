#include "ui/text/parse.h"

namespace ww::ui::text {

DigitsAndUnit split(const QString& text) {
    const QString all = text.trimmed();
    qsizetype end = 0;
    while (end < all.size() && !all[end].isLetter() && all[end] != '%') {
        ++end;
    }
    QString unit = all.mid(end).trimmed();
    unit.replace(QChar(0xB3), QStringLiteral("3"));
    unit.replace(QChar(0x2082), QStringLiteral("2"));
    QString digits = all.left(end);
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
