// The place Report: the pages as they will be printed, what is still missing, signing, exporting, verifying.
// Not for the content of the report (core/report) nor for signatures (core/seal).
#pragma once

#include <QWidget>
#include <filesystem>
#include <memory>

#include "core/report/report.h"
#include "ui/places/report/pages_maker.h"
#include "ui/places/report/ready_list.h"
#include "ui/theme/theme.h"
#include "ui/widgets/shown_refresh.h"
#include "ui/workbook_bridge.h"

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

namespace ww::ui {

class PagePreview;
class PanelArea;
class PumpAdvisor;
class SignedVersions;
class SigningPanel;

class ReportPlace : public QWidget {
    Q_OBJECT

  public:
    explicit ReportPlace(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    /// Puts the keys on the list of pages.
    void takeFocus();
    /// Where what is computed of the pumps comes from; without one the report computes it itself.
    void setPumpAdvisor(PumpAdvisor& advisor);
    bool isWaitingForLearning() const;
    QString proposedFileName() const;
    /// Writes the report of the job as it stands, unsigned; says in the place what came of it.
    base::Outcome exportTo(const std::filesystem::path& file);
    /// The report of the job as it stands, the date and digest of its newest record in it.
    ww::report::Report currentReport(ww::report::Signers signers = ww::report::Signers::None) const;
    ReadyList* ready() const { return m_ready; }
    SigningPanel* signing() const { return m_signing; }

  public slots:
    /// Asks for a file and writes the unsigned report there.
    void exportReport();
    /// Asks for a signed report and shows what is found about it.
    void verifyReport();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void markStale();
    void refresh();
    /// The pages of a large job are made beside the screen.
    bool isLarge() const;
    ww::report::ReportOptions options() const;
    QWidget* buildMakingLine();
    void tell(const QString& words);
    void tellWaiting(const QString& words);
    void makePages();
    void stopOrGoOn();
    void showMaking();
    void take(const std::shared_ptr<const PagesMaker::Made>& made);
    void showPage(int page);
    void showReady(const ww::report::Report& report);
    void beginReadyList();
    QWidget* buildPanel();
    QComboBox* buildRoundChoice();
    void fillRoundChoice();
    /// The round whose report was asked for instead of the newest one's; nothing: the newest.
    std::optional<int> earlierRound() const;

    WorkbookBridge& m_bridge;
    PumpAdvisor* m_pumps = nullptr;
    theme::Tokens m_tokens;
    PagesMaker* m_maker;
    std::shared_ptr<const PagesMaker::Made> m_made;  ///< what is shown; null before the first
    bool m_isBehind = true;                          ///< what is shown is not of the job as it stands
    bool m_isStopped = false;                        ///< making it was given up by hand
    QStackedWidget* m_content = nullptr;
    QLabel* m_empty = nullptr;
    QWidget* m_page = nullptr;
    QComboBox* m_round = nullptr;  ///< the newest round first; seen where there are several
    QListWidget* m_list = nullptr;
    PagePreview* m_preview = nullptr;
    QScrollArea* m_scroll = nullptr;
    QLabel* m_summary = nullptr;
    ReadyList* m_ready = nullptr;
    SigningPanel* m_signing = nullptr;
    SignedVersions* m_versions = nullptr;
    QLabel* m_written = nullptr;
    PanelArea* m_panel = nullptr;  ///< what scrolls above the buttons
    QWidget* m_making = nullptr;
    QLabel* m_progress = nullptr;
    QPushButton* m_stop = nullptr;
    QString m_exportWhenMade;  ///< chosen while the pages were not there yet; empty: none
    ShownRefresh* m_shown = new ShownRefresh(this, [this] { refresh(); });
};

}  // namespace ww::ui
