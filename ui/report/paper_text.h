// The words of a report as they stand on paper: typeface, widths, lines. Not for where they stand
// (page_builder.h).
#pragma once

#include <QFont>
#include <QHash>
#include <QString>
#include <QStringList>

#include "core/report/report.h"

namespace ww::ui::report {

/// What a cell of a table says in the language of the screen, without its state.
QString words(const ww::report::Cell& cell);
/// What a cell of a table says, or the word of its state.
QString cellWords(const ww::report::Cell& cell);
/// The words of a fault as they stand, without a full stop added: for labels, headings and facts.
QString words(const base::Fault& fault);

/// The parts of a text that a line is not broken in: its words, a number with the unit behind it.
QStringList unbrokenParts(const QString& text);

/// The typeface of the report: one that is always installed with the program, so that every report looks the
/// same.
QFont paperFont(double points, bool isBold = false);
/// So many typographic points in dots.
double points(double count);
/// From one line of a running text to the next, in dots.
double lineHeight(const QFont& font);

/// Measures texts and remembers what it measured: the words of a report come back many times.
class TextMeasure {
  public:
    /// Width in dots.
    double advance(const QString& text, const QFont& font);
    /// Lines of a text that fit into a width; a word that is wider is broken at a soft place.
    QStringList wrapped(const QString& text, const QFont& font, double width);

  private:
    QHash<std::pair<int, bool>, QHash<QString, double>> m_advances;  ///< by size and weight of the font
};

}  // namespace ww::ui::report
