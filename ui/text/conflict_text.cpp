#include "ui/text/conflict_text.h"

#include <QStringList>

#include "core/project/merge_reason.h"
#include "core/workbook/conflict_parts.h"
#include "ui/text/column_words.h"
#include "ui/text/words.h"

namespace ww::ui::text {
namespace {

QString partText(const workbook::ConflictPart& part) {
    if (part.said) {
        return translated(*part.said);
    }
    const QString value = withPrettyUnit(readinessLine(part.text));
    if (part.column.empty()) {
        return value;
    }
    const QString title = columnWords(part.column);
    // Before a value with its unit the title does without one: "Voltage, V" 400 V.
    return value.isEmpty() ? title : title.section(QChar(','), 0, 0) + QChar(' ') + value;
}

QString partsText(const std::vector<workbook::ConflictPart>& parts) {
    QStringList texts;
    for (const workbook::ConflictPart& part : parts) {
        texts << partText(part);
    }
    return texts.join(QStringLiteral(", "));
}

QString digitsText(const std::vector<workbook::ConflictPart>& parts) {
    if (parts.empty()) {
        return {};
    }
    const QString first = partText(parts.front());
    return parts.front().said || !parts.front().column.empty() ? first : first.section(QChar(' '), 0, 0);
}

}  // namespace

ConflictText conflictText(const project::MergeConflict& conflict) {
    const workbook::ConflictParts parts = workbook::partsOf(conflict);
    return {partsText(parts.place), partsText(parts.ours), partsText(parts.theirs)};
}

QString conflictPlace(const std::string& place) {
    return partsText(workbook::partsOfPlace(place));
}

QString reason(const std::string& stored) {
    auto said = project::readMergeReason(stored);
    if (!said) {
        return QString::fromStdString(stored);
    }
    if (said->is(project::merge_reasons::kNotChosen)) {
        std::string& chosen = said->arguments.front();
        chosen = partsText(workbook::partsOfReading(chosen)).toStdString();
    }
    return translated(*said);
}

ConflictDigits conflictDigits(const project::MergeConflict& conflict) {
    const workbook::ConflictParts parts = workbook::partsOf(conflict);
    return {digitsText(parts.ours), digitsText(parts.theirs)};
}

}  // namespace ww::ui::text
