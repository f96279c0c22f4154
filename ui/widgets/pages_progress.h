// How far the writing of a long report is, in a box of its own while the window waits for it, and a button to
// stop it. Short reports are done before it appears. Not for work beside the screen (places/report).
#pragma once

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QProgressDialog>

namespace ww::ui {

class PagesProgress {
    Q_DECLARE_TR_FUNCTIONS(PagesProgress)

  public:
    explicit PagesProgress(QWidget* parent);

    /// Tells how many pages are laid out; false once it was stopped.
    bool layingOut(std::size_t pages);
    /// Tells how many pages are written; false once it was stopped.
    bool writing(std::size_t pages);
    /// Of how many pages writing() tells; 0: of those that were laid out.
    void setCount(std::size_t pages) { m_count = pages; }

  private:
    bool tell(const QString& words, int done, int of);

    QProgressDialog m_box;
    QElapsedTimer m_sinceTold;
    std::size_t m_count = 0;
};

}  // namespace ww::ui
