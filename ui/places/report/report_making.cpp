// The pages of the place Report in the making: at once for a small job, beside the screen for a large one.
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <algorithm>
#include <utility>

#include "ui/places/report/report_place.h"
#include "ui/places/report/signed_versions.h"
#include "ui/places/report/signing_panel.h"
#include "ui/pump_advisor.h"

namespace ww::ui {
namespace {

/// The pages of so many readings are laid out in the time of one key.
constexpr std::size_t kLaidOutAtOnce = 400;

}  // namespace

QWidget* ReportPlace::buildMakingLine() {
    m_making = new QWidget(this);
    auto* line = new QHBoxLayout(m_making);
    line->setContentsMargins(12, 8, 12, 0);
    m_progress = new QLabel(m_making);
    m_progress->setWordWrap(true);
    m_stop = new QPushButton(m_making);
    connect(m_stop, &QPushButton::clicked, this, &ReportPlace::stopOrGoOn);
    line->addWidget(m_progress, 1);
    line->addWidget(m_stop);
    m_making->hide();
    return m_making;
}

bool ReportPlace::isLarge() const {
    return m_bridge.isOpen() && m_bridge.project().readings().size() > kLaidOutAtOnce;
}

void ReportPlace::makePages() {
    if (m_isStopped || !m_isBehind) {
        return;
    }
    PagesMaker::Wanted wanted{m_bridge.project(), options(), {}};
    if (m_pumps != nullptr) {
        wanted.options.pumps = m_pumps->isCurrent() ? m_pumps->picture() : nullptr;
        wanted.learned = m_pumps->learned();
    }
    m_maker->make(std::move(wanted));
}

void ReportPlace::stopOrGoOn() {
    m_isStopped = !m_isStopped;
    if (m_isStopped) {
        m_maker->giveUp();
        if (!std::exchange(m_exportWhenMade, {}).isEmpty()) {
            tell(tr("Stopped; no file was written."));
        }
    } else {
        makePages();
    }
    showMaking();
}

/// How far the pages are, where they are waited for.
void ReportPlace::showMaking() {
    const bool isWaited = isLarge() && m_isBehind && (m_maker->isMaking() || m_isStopped);
    m_making->setVisible(isWaited);
    if (!isWaited) {
        return;
    }
    m_stop->setText(m_isStopped ? tr("&Lay Out the Pages") : tr("Stop &Laying Out"));
    const std::size_t pages = m_maker->pagesSoFar();
    m_progress->setText(m_isStopped  ? tr("Laying out the pages was stopped.")
                        : pages == 0 ? tr("The report is being computed; the pages follow.")
                                     : tr("The pages are being laid out; so far: %1").arg(pages));
    m_signing->setWaiting(m_isStopped ? tr("Let the pages be laid out, then sign.")
                                      : tr("The pages are being laid out; sign when that is done."));
    if (m_made == nullptr) {
        m_empty->setText(m_isStopped ? tr("No page is laid out yet.") : tr("The pages follow."));
        m_content->setCurrentWidget(m_empty);
    }
}

void ReportPlace::take(const std::shared_ptr<const PagesMaker::Made>& made) {
    const int before = std::max(0, m_list->currentRow());
    m_made = made;
    m_isBehind = false;
    {
        const QSignalBlocker blocker(m_list);
        m_list->clear();
        for (std::size_t page = 0; page < m_made->pages->pages.size(); ++page) {
            m_list->addItem(tr("Page %1").arg(page + 1) + '\n' + m_made->pages->names[page]);
        }
        m_list->setCurrentRow(std::min(before, m_list->count() - 1));
    }
    showPage(m_list->currentRow());
    showReady(m_made->report);
    m_signing->setWaiting({});
    m_versions->refresh();
    m_content->setCurrentWidget(m_page);
    showMaking();
    if (const QString file = std::exchange(m_exportWhenMade, {}); !file.isEmpty()) {
        (void)exportTo(std::filesystem::path(file.toStdString()));
    }
}

}  // namespace ww::ui
