// The place Pump: its pages, from what is known of the pumps over test and decision to a zone that may come.
// Not for what a page shows.
#pragma once

#include <QLabel>
#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>
#include <functional>
#include <vector>

#include "ui/assessed_rounds.h"
#include "ui/places/pump/page_area.h"
#include "ui/places/pump/pump_page.h"
#include "ui/pump_advisor.h"
#include "ui/widgets/quiet_combo.h"
#include "ui/widgets/shown_refresh.h"

namespace ww::ui {

class PumpPlace : public QWidget {
    Q_OBJECT

  public:
    /// The pages in the order of their tabs and of their keys.
    enum Page {
        Curves,
        Test,
        Results,
        Decision,
        ReadAndSet,
        Pressure,
        EnergyCode,
        Devices,
        SetPoint,
        PumpData,
        Zones,
        PageCount
    };

    PumpPlace(WorkbookBridge& bridge, PumpAdvisor& advisor, AssessedRounds& rounds,
              QWidget* parent = nullptr);

    /// Before a new look: gives up what pages that are not seen show of the pumps, which is made anew when
    /// they are shown. Nothing while that is being computed.
    void forgetUnseen();
    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    /// Puts the keys on the page that is shown.
    void takeFocus();
    /// As wide as the page in hand needs; what is too high scrolls below tabs and chooser.
    QSize minimumSizeHint() const override;
    /// Pages are chosen from a list in place of tabs, for want of room.
    void setNarrow(bool isNarrow);
    /// The width that the tabs need.
    int wantedWidth() const { return m_tabs->tabBar()->sizeHint().width() + kTabMargin; }
    void showPage(Page page);
    /// Shown in place of the tabs where these have no room.
    QuietCombo* chooser() const { return m_chooser; }
    Page shownPage() const { return static_cast<Page>(m_tabs->currentIndex()); }
    /// A page, which is made when it is first wanted.
    PumpPage* page(Page which);

  signals:
    /// A page was made: what the window does for all that a place holds is to be done for it.
    void pageMade();

  public slots:
    /// The chart in hand becomes its table, or comes back (Ctrl+T).
    void toggleTable();
    /// Whether the page shown has a chart that becomes its table.
    bool hasChart() const;

  protected:
    void hideEvent(QHideEvent* event) override;

  private:
    static constexpr int kTabMargin = 24;
    struct Entry {
        std::function<PumpPage*(QWidget*)> make;
        PageArea* area;  ///< of the page, in its tab
        PumpPage* page = nullptr;
        bool isBehind = true;      ///< has not shown the newest picture
        bool isForgotten = false;  ///< gave up what it showed
    };
    template <class Page>
    void addPage(const QString& title);
    void addPage(const QString& title, std::function<PumpPage*(QWidget*)> make);
    void markBehind();
    void refresh();

    WorkbookBridge& m_bridge;
    PumpAdvisor& m_advisor;
    QStackedWidget* m_content;
    QLabel* m_empty;
    QuietCombo* m_chooser;
    QTabWidget* m_tabs;
    std::vector<Entry> m_pages;
    theme::Tokens m_tokens = theme::tokens(theme::Display::Office);
    theme::Metrics m_metrics = theme::metrics(10, false);
    ShownRefresh* m_shown = new ShownRefresh(this, [this] { refresh(); });
};

}  // namespace ww::ui
