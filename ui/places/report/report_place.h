// The place Report: the pages as they will be printed, what is still missing, and the export.
// Not for signing, nor for the content of the report (core/report).
#pragma once

#include <QWidget>
#include <filesystem>
#include <memory>

#include "core/report/report.h"
#include "ui/theme/theme.h"
#include "ui/widgets/shown_refresh.h"
#include "ui/workbook_bridge.h"

class QLabel;
class QListWidget;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace ww::ui {

class PagePreview;
class PumpAdvisor;
namespace report {
struct ReportPages;
}

class ReportPlace : public QWidget {
    Q_OBJECT

  public:
    /// Where a line of the checklist leads.
    enum class Target { Job, System, Walk, Pump };

    explicit ReportPlace(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    /// Puts the keys on the list of pages.
    void takeFocus();
    /// Where what is computed of the pumps comes from; without one the report computes it itself.
    void setPumpAdvisor(PumpAdvisor& advisor);
    /// Writes the report of the job as it stands; says in the place what came of it.
    base::Outcome exportTo(const std::filesystem::path& file);
    /// The report of the job as it stands, the date and digest of its newest record in it.
    ww::report::Report currentReport() const;
    bool isWaitingForLearning() const;

  public slots:
    /// Asks for a file and writes the report there.
    void exportReport();

  signals:
    void placeWanted(ww::ui::ReportPlace::Target target);
    /// A finding about a branch was chosen.
    void branchWanted(const ww::base::Id& branch);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void markStale();
    void refresh();
    void showPage(int page);
    void fillChecklist(const ww::report::Report& report);
    void addCheck(ww::report::Mark mark, const QString& words, std::optional<Target> target);
    void addFindings(const balancing::Assessment& last);
    void addShowButton(const base::Id& branch, const QString& words);
    QWidget* buildPanel();

    WorkbookBridge& m_bridge;
    PumpAdvisor* m_pumps = nullptr;
    theme::Tokens m_tokens;
    std::shared_ptr<const report::ReportPages> m_pages;
    QStackedWidget* m_content = nullptr;
    QLabel* m_empty = nullptr;
    QWidget* m_page = nullptr;
    QListWidget* m_list = nullptr;
    PagePreview* m_preview = nullptr;
    QScrollArea* m_scroll = nullptr;
    QVBoxLayout* m_checks = nullptr;
    QPushButton* m_export = nullptr;
    QLabel* m_written = nullptr;
    ShownRefresh* m_shown = new ShownRefresh(this, [this] { refresh(); });
};

}  // namespace ww::ui
