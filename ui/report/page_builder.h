// Puts headings, facts, sentences, figures and tables one below the other and begins a new page where one is
// full. Part of report_pages.
#pragma once

#include <QFont>
#include <map>

#include "ui/report/report_pages.h"
#include "ui/theme/theme.h"

namespace ww::ui::report {

/// The words of a fault as they stand, without a full stop added: for labels, headings and facts.
/// What a cell of a table says in the language of the screen, without its state.
QString words(const ww::report::Cell& cell);
QString words(const base::Fault& fault);

/// The typeface of the report: one that is always installed with the program, so that every report looks the
/// same.
QFont paperFont(double points, bool isBold = false);
/// So many typographic points in dots.
double points(double count);

class PageBuilder {
  public:
    /// `isLandscape`: of the first page.
    explicit PageBuilder(bool isLetter, bool isLandscape = false);

    /// Begins a section: its heading, on a new page where less than a quarter of this one is left, or where
    /// the section's page must lie the other way.
    void beginSection(int number, const QString& title, bool isLandscape);
    /// The head of the first page.
    void titleBlock(const QString& kind, const QString& job, const std::vector<QString>& lines,
                    const QString& stamp);
    /// One line in a frame, with its mark: the verdict.
    void verdictBox(const ww::report::Fact& fact);
    void fact(const ww::report::Fact& fact);
    void paragraph(const QString& text, bool isSoft = false);
    void bullet(const QString& text);
    /// A paragraph with a bar at its left that none may miss.
    void caution(const QString& text);
    /// A title, what `paint` draws into the box that it is given, and a sentence; as wide as the page.
    void figure(const QString& title, const QString& sentence, double heightMm,
                std::function<void(QPainter&, const QRectF&)> paint);
    void table(const ww::report::Table& table);
    void gap(double points);
    /// Keeps room for blocks side by side, drawn later; their places on the last page, in dots.
    std::vector<QRectF> spaces(std::size_t count, double heightMm);
    /// Room for a figure on an empty page, beside its title and sentence, in dots.
    QSizeF figureRoom() const;
    std::size_t lastPage() const { return m_pages.size() - 1; }

    /// The pages with a footer on each: the text, then "page x of y".
    std::vector<Page> finish(const QString& text);

  private:
    struct TableLayout;
    struct LaidRow;

    double width() const;
    double left() const;
    double bottom() const;
    void newPage(bool isLandscape);
    void ensure(double height);
    void add(Stroke stroke);
    void addText(QPointF baseline, const QString& text, const QFont& font, const QColor& color);
    void addLine(QPointF from, QPointF to, double points, const QColor& color);
    void addMark(const QRectF& box, ww::report::Mark mark);
    /// Lines of a text that fit into a width.
    QStringList wrapped(const QString& text, const QFont& font, double width) const;
    /// Draws lines from y downward; gives the height used.
    double addLines(const QStringList& lines, double x, double y, const QFont& font, const QColor& color);
    void tableHead(const TableLayout& layout, bool isContinued);
    LaidRow laidRow(const TableLayout& layout, const std::vector<ww::report::Cell>& cells, bool isBold) const;
    void addRow(const TableLayout& layout, const LaidRow& row);
    void addCell(const TableLayout& layout, std::size_t column, const LaidRow& row);

    bool m_isLetter;
    theme::Tokens m_tokens;
    std::vector<Page> m_pages;
    double m_y = 0;
    int m_section = 0;
};

}  // namespace ww::ui::report
