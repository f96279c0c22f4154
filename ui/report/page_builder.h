// Puts headings, facts, sentences, figures and tables one below the other and begins a new page where one is
// full. Part of report_pages.
#pragma once

#include <QFont>
#include <memory>
#include <optional>

#include "ui/report/paper_text.h"
#include "ui/report/report_pages.h"
#include "ui/theme/theme.h"

namespace ww::ui::report {

struct MeasuredTable;

class PageBuilder {
  public:
    /// `isLandscape`: of the first page. `watch` is told of the pages; empty: nobody waits for them.
    explicit PageBuilder(bool isLetter, bool isLandscape = false, Watch watch = {});

    /// A large word in a black bar across the head of this page and of all that follow. Call it first.
    void headBar(const QString& word);
    /// Begins a section, on a new page where its page must lie the other way. Its heading is drawn with the
    /// first thing that follows and stands on the page where that has room; it never ends a page.
    void beginSection(int number, const QString& title, bool isLandscape);
    /// A builder that stands where this one does, to find out how many pages something takes.
    PageBuilder trial() const;
    /// Tells who waits; false from then on where that one gave up: what is still added is left out.
    bool goesOn();
    std::size_t pageCount() const { return m_pages.size(); }
    bool isLandscape() const { return m_pages.back().isLandscape; }
    /// Whether a table has room for each of its words on a page as the present one lies.
    bool fits(const ww::report::Table& table) const;
    /// Tables that would turn the page stay on it as it lies, until the next section begins.
    void keepDirection() { m_keepsDirection = true; }
    /// The head of the first page.
    void titleBlock(const QString& kind, const QString& job, const std::vector<QString>& lines,
                    const QString& stamp);
    /// One line in a frame, with its mark: the verdict.
    void verdictBox(const ww::report::Fact& fact);
    /// A sentence in a frame.
    void notice(const QString& text);
    /// Facts that follow one another: none of the words of their labels breaks.
    void beginFacts(const std::vector<ww::report::Fact>& facts);
    void fact(const ww::report::Fact& fact);
    void paragraph(const QString& text, bool isSoft = false);
    void bullet(const QString& text);
    /// A paragraph with a bar at its left that none may miss.
    void caution(const QString& text);
    /// A title, what `paint` draws into the box that it is given, and a sentence; as wide as the page.
    void figure(const QString& title, const QString& sentence, double heightMm,
                std::function<void(QPainter&, const QRectF&)> paint);
    /// Without the columns in which nothing stands. It must stay where it is as long as the builder.
    void table(const ww::report::Table& table);
    void gap(double points);
    /// Keeps room for blocks side by side, drawn later; their places on the last page, in dots.
    std::vector<QRectF> spaces(std::size_t count, double heightMm);
    /// Room for a figure on an empty page, beside its title and sentence, in dots.
    QSizeF figureRoom() const;
    /// The height left for a figure on this page, beside its title and sentence, in dots; below a heading.
    double figureHeightLeft() const;
    std::size_t lastPage() const { return m_pages.size() - 1; }

    /// The pages with a footer on each: the text, then "page x of y".
    std::vector<Page> finish(const QString& text);

  private:
    struct Heading {
        int number = 0;
        QString title;
    };
    struct Shared;
    struct TableLayout;
    struct LaidRow;

    double width() const;
    double left() const;
    /// Where the first thing on a page stands: below its bar, if it has one.
    double top() const;
    double bottom() const;
    void addHeadBar();
    /// A frame as wide as the page from the present place downward.
    void addFrame(double height);
    void newPage(bool isLandscape);
    /// Room for the next block, on this page or a new one; a heading that waits is drawn above it.
    void ensure(double height);
    void drawHeading(const Heading& heading);
    void add(Stroke stroke);
    void addText(QPointF baseline, const QString& text, const QFont& font, const QColor& color);
    void addLine(QPointF from, QPointF to, double points, const QColor& color);
    void addMark(const QRectF& box, ww::report::Mark mark);
    double advance(const QString& text, const QFont& font) const;
    QStringList wrapped(const QString& text, const QFont& font, double width) const;
    /// Draws lines from y downward; gives the height used.
    double addLines(const QStringList& lines, double x, double y, const QFont& font, const QColor& color);
    void tableHead(const TableLayout& layout, bool isContinued);
    double tableHeadHeight(const TableLayout& layout) const;
    double paddingOf(const MeasuredTable& measured) const;
    TableLayout tableLayout(const ww::report::Table& table) const;
    LaidRow laidRow(const TableLayout& layout, const std::vector<ww::report::Cell>& cells, bool isBold) const;
    void addRow(const TableLayout& layout, const LaidRow& row);
    void addCell(const TableLayout& layout, std::size_t column, const LaidRow& row);

    bool m_isLetter;
    bool m_isTrial = false;            ///< counts pages, draws nothing
    std::shared_ptr<Shared> m_shared;  ///< of a builder and its trials
    theme::Tokens m_tokens;
    std::vector<Page> m_pages;
    QString m_headBar;
    double m_y = 0;
    int m_section = 0;
    std::optional<Heading> m_heading;  ///< waits for what stands below it
    bool m_keepsDirection = false;
    double m_labelWidth = 0;  ///< of facts
};

}  // namespace ww::ui::report
