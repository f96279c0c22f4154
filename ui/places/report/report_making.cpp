// The pages of the place Report in the making: at once for a small job, beside the screen for a large one.
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <algorithm>
#include <utility>

#include "core/project/review.h"
#include "ui/places/report/report_place.h"
#include "ui/places/report/signed_versions.h"
#include "ui/places/report/signing_panel.h"
#include "ui/pump_advisor.h"
#include "ui/text/words.h"
#include "ui/widgets/quiet_combo.h"

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

QComboBox* ReportPlace::buildRoundChoice() {
    auto* choice = new QuietCombo(this);
    choice->setAccessibleName(tr("Round of the report"));
    choice->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    choice->hide();
    connect(choice, &QComboBox::activated, this, &ReportPlace::markStale);
    return choice;
}

/// Every round that was walked, the newest first: the report of a finished one stays in reach while another
/// is open. The choice stays with its round; on the newest it goes with the newest.
void ReportPlace::fillRoundChoice() {
    const bool isSameJob =
        m_made != nullptr && m_made->report.workbookId == m_bridge.workbook()->workbookId().text();
    const std::optional<int> chosen = isSameJob ? earlierRound() : std::nullopt;
    m_round->clear();
    const project::Project& project = m_bridge.project();
    for (const project::Round* round = project::lastOwnRound(project); round != nullptr;
         round = project::lastOwnRound(project, round->number - 1)) {
        m_round->addItem(round->state == project::RoundState::Open
                             ? tr("Round %1: draft").arg(round->number)
                             : tr("Round %1: %2").arg(round->number).arg(text::nameOf(round->state)),
                         round->number);
    }
    m_round->setCurrentIndex(chosen ? std::max(0, m_round->findData(*chosen)) : 0);
    m_round->setVisible(m_round->count() > 1);
}

std::optional<int> ReportPlace::earlierRound() const {
    return m_round->currentIndex() > 0 ? std::optional(m_round->currentData().toInt()) : std::nullopt;
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
        wanted.options.pumps = m_pumps->isCurrent() && !wanted.options.round ? m_pumps->picture() : nullptr;
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
    m_signing->setWaiting(earlierRound() ? tr("Choose the newest round above the pages to sign its report.")
                                         : QString());
    m_versions->refresh();
    m_content->setCurrentWidget(m_page);
    showMaking();
    if (const QString file = std::exchange(m_exportWhenMade, {}); !file.isEmpty()) {
        (void)exportTo(std::filesystem::path(file.toStdString()));
    }
}

}  // namespace ww::ui
