// Builds a report and lays it out beside the screen: on a copy of the job, off the screen's thread; what is
// no longer wanted is given up. Not for writing it to a file (ui/report).
#pragma once

#include <QObject>
#include <QTimer>
#include <atomic>
#include <memory>
#include <optional>
#include <thread>

#include "core/balancing/hydraulic_model.h"
#include "core/report/report.h"
#include "ui/report/report_pages.h"

namespace ww::ui {

class PagesMaker : public QObject {
    Q_OBJECT

  public:
    /// What the report is made of.
    struct Wanted {
        project::Project project;
        ww::report::ReportOptions options;
        balancing::Resistances learned;  ///< for the picture of the pumps, where the options have none
    };
    struct Made {
        ww::report::Report report;
        std::shared_ptr<const report::ReportPages> pages;
    };

    explicit PagesMaker(QObject* parent = nullptr);
    /// Gives up what is being made and waits for its end.
    ~PagesMaker() override;

    /// Makes this; what is being made for an earlier wish is given up.
    void make(Wanted wanted);
    void giveUp();
    bool isMaking() const { return m_running != nullptr; }
    /// Pages laid out so far; 0 while the report is still computed.
    std::size_t pagesSoFar() const;

  signals:
    void made(const std::shared_ptr<const ww::ui::PagesMaker::Made>& made);
    /// pagesSoFar() or isMaking() changed.
    void progressed();

  private:
    struct Work;

    void start();
    void finish();

    std::shared_ptr<Wanted> m_next;  ///< waits for the end of what runs
    std::shared_ptr<Work> m_running;
    std::jthread m_thread;
    QTimer m_telling;
};

}  // namespace ww::ui
