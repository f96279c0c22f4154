// A section of the report on the screen: facts, sentences, figures and tables one below the other, scrolled.
// Knows no workbook.
#pragma once

#include <QLabel>
#include <QVBoxLayout>
#include <vector>

#include "core/report/report.h"
#include "ui/charts/chart_view.h"
#include "ui/places/fact_list.h"
#include "ui/places/section_table.h"
#include "ui/places/statement_list.h"
#include "ui/widgets/patient_area.h"

namespace ww::ui {

class SectionView : public PatientArea {
    Q_OBJECT

  public:
    /// So many sentences that follow one another stand on the page itself.
    static constexpr std::size_t kMostLabels = 30;

    explicit SectionView(QWidget* parent = nullptr);

    /// Fills the view anew; `figures` stand above the tables, more than kMostLabels sentences in a list of
    /// their own. The place that was scrolled to stays.
    void show(ww::report::Section section, std::vector<charts::ChartFigure> figures = {});
    /// One sentence in the place of a section.
    void showMessage(const QString& message);
    /// Empties the view at once. Not from within what it holds.
    void forget();
    void setTokens(const theme::Tokens& tokens);
    /// The first chart becomes its table, or comes back; false where there is none.
    bool toggleTable();
    /// The tables shown, in their order.
    std::vector<SectionTable*> tables() const;
    std::vector<charts::ChartView*> charts() const;
    /// As high as all that it holds in its width: with so much room nothing is scrolled.
    QSize sizeHint() const override;
    /// As wide as what it shows needs.
    QSize minimumSizeHint() const override;

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void clear();
    void add(QWidget* part);
    void addStatements(const std::vector<ww::report::Statement>& statements, const QString& name);
    void addFigures(std::vector<charts::ChartFigure> figures);
    QLabel* addLabel(const QString& text, const char* style = nullptr);

    theme::Tokens m_tokens;
    QWidget* m_page;
    QVBoxLayout* m_column;
    std::vector<QWidget*> m_parts;
    std::vector<charts::ChartView*> m_charts;
};

}  // namespace ww::ui
