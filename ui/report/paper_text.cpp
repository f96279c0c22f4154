#include "ui/report/paper_text.h"

#include <QFontMetricsF>
#include <QRegularExpression>

#include "core/quantity/printed_unit.h"
#include "ui/report/report_pages.h"
#include "ui/text/joined.h"
#include "ui/text/words.h"

namespace ww::ui::report {
namespace {

/// Where a word may be parted so that both parts begin as a reader speaks them: before a consonant that a
/// vowel follows, at least three letters from either end. Good for the languages of the program, not exact.
bool isSyllable(const QString& word, qsizetype at) {
    static const QString kVowels = QStringLiteral("aeiouyäöüáéíóúàèùâêîôûëï");
    static const QStringList kPairs{QStringLiteral("ch"), QStringLiteral("ck"), QStringLiteral("ph"),
                                    QStringLiteral("th"), QStringLiteral("sh"), QStringLiteral("qu"),
                                    QStringLiteral("ll"), QStringLiteral("rr"), QStringLiteral("gn")};
    if (at < 3 || word.size() - at < 3 || !word[at - 1].isLetter() || !word[at].isLetter()) {
        return false;
    }
    const QString lower = word.toLower();
    return !kVowels.contains(lower[at]) && kVowels.contains(lower[at + 1]) &&
           !kPairs.contains(lower.mid(at - 1, 2));
}

/// Takes from a word that is wider than the line what fits: up to a mark inside it, else up to a syllable
/// with a hyphen, else as many letters as there is room for.
QString headOfWord(QString& word, const QFontMetricsF& metrics, double width) {
    static const QString kSoft = QStringLiteral("-/–_.,+");
    qsizetype count = word.size();
    while (count > 1 && metrics.horizontalAdvance(word.left(count)) > width) {
        --count;
    }
    QString head;
    for (qsizetype at = count; at > 1 && head.isEmpty(); --at) {
        head = kSoft.contains(word[at - 1]) ? word.left(at) : QString();
    }
    qsizetype taken = head.size();
    for (qsizetype at = count; at > 1 && head.isEmpty(); --at) {
        const QString syllables = word.left(at) + '-';
        if (isSyllable(word, at) && metrics.horizontalAdvance(syllables) <= width) {
            head = syllables;
            taken = at;
        }
    }
    if (head.isEmpty()) {
        head = word.left(count);
        taken = count;
    }
    word.remove(0, taken);
    return head;
}

/// A unit as a number of a report can have it, with the marks of the sentence behind it.
QString unitPattern() {
    QStringList units{QStringLiteral("1/min"), QStringLiteral("tr/min"), QStringLiteral("h"),
                      QStringLiteral("s"), QStringLiteral("kg/m³")};
    for (const quantity::UnitRow& row : quantity::unitTable()) {
        if (row.dimension != quantity::Dimension::Scale && row.unit != quantity::Unit::One) {
            units << QRegularExpression::escape(QString::fromStdString(quantity::printed(row.unit)));
        }
    }
    return QStringLiteral("^(") + units.join('|') + QStringLiteral(")[.,;:)]*$");
}

}  // namespace

QString words(const base::Fault& fault) {
    return text::translated(fault);
}

QString words(const ww::report::Cell& cell) {
    if (cell.parts.empty()) {
        return text::withPrettyUnit(QString::fromStdString(cell.text));
    }
    QStringList parts;
    for (const base::Fault& part : cell.parts) {
        parts << text::translated(part);
    }
    if (cell.glue == "; ") {
        return text::listed(parts);
    }
    const bool isLabelled = cell.glue == ": " && parts.size() == 2;
    return isLabelled ? text::labelled(parts[0], parts[1]) : parts.join(QString::fromStdString(cell.glue));
}

QString cellWords(const ww::report::Cell& cell) {
    return cell.state ? text::word(*cell.state, cell.isSelfActing, cell.isOver) : words(cell);
}

QStringList unbrokenParts(const QString& text) {
    static const QRegularExpression kUnit(unitPattern());
    // "(section 15)" is one reference, a sign at the end of a heading no line of its own.
    static const QRegularExpression kNumberInBrackets(QStringLiteral("^\\d+\\)[.,;:]*$"));
    // So are "10.49 ± 0.10", "10.54 – 10.77" and "2.1 / 4.0"; two dates with a dash between them are not.
    static const QRegularExpression kNumberBefore(QStringLiteral("(^|[ (])\\d+(\\.\\d+)?$"));
    static const QRegularExpression kOpenBefore(QStringLiteral("(^|[ (])\\d+(\\.\\d+)? [±–/]$"));
    static const QRegularExpression kNumberBehind(QStringLiteral("^\\d+(\\.\\d+)?\\)?[.,;:]*$"));
    static const QStringList kBetween{QStringLiteral("–"), QStringLiteral("/")};
    QStringList parts;
    for (const QString& word : text.split(' ')) {
        const QString before = parts.isEmpty() ? QString() : parts.back();
        const bool isUnit = !before.isEmpty() && before.back().isDigit() && kUnit.match(word).hasMatch();
        const bool isReference = before.startsWith('(') && kNumberInBrackets.match(word).hasMatch();
        const bool isLastSign = !before.isEmpty() && word == QStringLiteral("±");
        const bool isPair = kBetween.contains(word) ? kNumberBefore.match(before).hasMatch()
                                                    : kOpenBefore.match(before).hasMatch() &&
                                                          kNumberBehind.match(word).hasMatch();
        if (isUnit || isReference || isLastSign || isPair) {
            parts.back() += ' ' + word;
        } else {
            parts << word;
        }
    }
    return parts;
}

double points(double count) {
    return count * kDotsPerPoint;
}

double lineHeight(const QFont& font) {
    return QFontMetricsF(font).height() * 1.06;
}

QFont paperFont(double size, bool isBold) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(static_cast<int>(points(size) + 0.5));
    font.setBold(isBold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(false);
    // Any spacing, however small, keeps "fi" two letters: a reader's search finds "final" then.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

double TextMeasure::advance(const QString& text, const QFont& font) {
    QHash<QString, double>& known = m_advances[{font.pixelSize(), font.bold()}];
    const auto found = known.constFind(text);
    if (found != known.constEnd()) {
        return *found;
    }
    const double width = QFontMetricsF(font).horizontalAdvance(text);
    known.insert(text, width);
    return width;
}

QStringList TextMeasure::wrapped(const QString& text, const QFont& font, double width) {
    if (advance(text, font) <= width) {
        return {text};
    }
    QStringList lines;
    QString line;
    for (QString word : unbrokenParts(text)) {
        const QString longer = line.isEmpty() ? word : line + ' ' + word;
        if (advance(longer, font) <= width) {
            line = longer;
            continue;
        }
        if (!line.isEmpty()) {
            lines << line;
        }
        while (advance(word, font) > width && word.size() > 1) {
            lines << headOfWord(word, QFontMetricsF(font), width);
        }
        line = word;
    }
    lines << line;
    return lines;
}

}  // namespace ww::ui::report
