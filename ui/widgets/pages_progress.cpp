#include "ui/widgets/pages_progress.h"

#include <algorithm>

namespace ww::ui {
namespace {

constexpr int kAppearsMilliseconds = 500;
constexpr qint64 kTellingMilliseconds = 60;

}  // namespace

PagesProgress::PagesProgress(QWidget* parent) : m_box(parent) {
    m_box.setWindowTitle(tr("Balance report"));
    m_box.setAccessibleName(tr("Progress of the report"));
    m_box.setCancelButtonText(tr("&Stop"));
    m_box.setLabelText(tr("The report is being made."));
    m_box.setWindowModality(Qt::WindowModal);
    m_box.setMinimumDuration(kAppearsMilliseconds);
    m_box.setAutoClose(false);
    m_box.setAutoReset(false);
    m_box.setRange(0, 0);
    m_box.setValue(0);
    m_sinceTold.start();
}

bool PagesProgress::layingOut(std::size_t pages) {
    m_count = std::max(m_count, pages);
    return tell(tr("Pages laid out: %1").arg(pages), 0, 0);
}

bool PagesProgress::writing(std::size_t pages) {
    const std::size_t all = std::max(m_count, pages + 1);
    return tell(tr("Pages written: %1 of %2").arg(pages).arg(all), static_cast<int>(pages),
                static_cast<int>(all));
}

/// Tells now and then only: each telling lets the window breathe.
bool PagesProgress::tell(const QString& words, int done, int of) {
    if (m_sinceTold.elapsed() >= kTellingMilliseconds) {
        m_box.setLabelText(words);
        m_box.setRange(0, of);
        m_box.setValue(done);
        m_sinceTold.restart();
    }
    return !m_box.wasCanceled();
}

}  // namespace ww::ui
