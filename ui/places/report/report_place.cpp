#include "ui/places/report/report_place.h"

#include <QApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QShowEvent>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "core/balancing/assess.h"
#include "core/project/review.h"
#include "core/workbook/report_signing.h"
#include "core/workbook/round_steps.h"
#include "ui/delegates/wrapped_item.h"
#include "ui/places/report/page_preview.h"
#include "ui/places/report/signed_versions.h"
#include "ui/places/report/signing_panel.h"
#include "ui/places/report/verify_dialog.h"
#include "ui/pump_advisor.h"
#include "ui/report/report_file_name.h"
#include "ui/report/report_pages.h"
#include "ui/report/report_writer.h"
#include "ui/text/words.h"
#include "ui/widgets/laid_out_later.h"
#include "ui/widgets/pages_progress.h"
#include "ui/widgets/panel_area.h"
#include "ui/widgets/patient_area.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {
namespace {

using ww::report::Mark;

constexpr int kListWidth = 190;
/// Of the list of pages above the panel, in a window that is too narrow for both.
constexpr int kPagesHeight = 150;
constexpr int kSigningWidth = 372;
/// Below this width there is no room for a page that could be read.
constexpr int kWithPreview = 780;
/// Loops of so many terminals are learned in the time of one key; larger ones are waited for.
constexpr std::size_t kLearnedAtOnce = 60;

}  // namespace

ReportPlace::ReportPlace(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_tokens(theme::tokens(theme::Display::Office)),
      m_maker(new PagesMaker(this)),
      m_content(new QStackedWidget(this)),
      m_empty(new QLabel(this)),
      m_page(new QWidget(this)),
      m_round(buildRoundChoice()),
      m_list(new QListWidget(this)),
      m_preview(new PagePreview(this)),
      m_scroll(new PatientArea(this)) {
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setObjectName(QStringLiteral("empty_state"));
    m_empty->setAccessibleName(tr("What is missing here"));
    m_list->setMinimumWidth(kListWidth);
    m_list->setWordWrap(true);
    m_list->setItemDelegate(new WrappedItem(m_list));
    m_list->setSpacing(3);
    m_list->setResizeMode(QListView::Adjust);
    // A long report has thousands.
    m_list->setLayoutMode(QListView::Batched);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // Names are wrapped to the width beside the bar, whether it comes or not.
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_list->setAccessibleName(tr("Pages of the report"));
    m_scroll->setWidget(m_preview);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setProperty("ringed", true);
    m_scroll->setAccessibleName(tr("Page as printed"));
    auto* pages = new QWidget(m_page);
    auto* row = new QHBoxLayout(pages);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    auto* listed = new QVBoxLayout;
    listed->setSpacing(6);
    listed->addWidget(m_round);
    listed->addWidget(m_list, 1);
    row->addLayout(listed);
    row->addWidget(m_scroll, 1);
    auto* whole = new QVBoxLayout(m_page);
    whole->setContentsMargins(12, 10, 12, 10);
    whole->addWidget(new SideBySide({pages, kListWidth, 1, kPagesHeight},
                                    {buildPanel(), kSigningWidth, 0, SideBySide::kAsItAsks}, m_page));
    m_content->addWidget(laidOutLater(m_page));
    m_content->addWidget(m_empty);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(buildMakingLine());
    layout->addWidget(m_content, 1);
    connect(m_maker, &PagesMaker::made, this, &ReportPlace::take);
    connect(m_maker, &PagesMaker::progressed, this, &ReportPlace::showMaking);
    connect(m_list, &QListWidget::currentRowChanged, this, &ReportPlace::showPage);
    connect(&m_bridge, &WorkbookBridge::changed, this, &ReportPlace::markStale);
}

QWidget* ReportPlace::buildPanel() {
    auto* panel = new QWidget;
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(0, 0, 6, 0);
    column->setSpacing(8);
    m_summary = new QLabel(tr("Ready to sign?"), panel);
    m_summary->setWordWrap(true);
    m_summary->setObjectName(QStringLiteral("place_title"));
    m_ready = new ReadyList(m_bridge, panel);
    m_signing = new SigningPanel(
        m_bridge, [this](ww::report::Signers signers) { return currentReport(signers); }, panel);
    m_versions = new SignedVersions(m_bridge, panel);
    m_written = new QLabel(panel);
    m_written->setWordWrap(true);
    m_written->setTextFormat(Qt::PlainText);
    m_written->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_written->hide();
    auto* exporting = new QPushButton(tr("&Export Unsigned Draft…"));
    exporting->setAccessibleDescription(
        tr("Writes these pages as a PDF file; every page says that it is not signed"));
    auto* verifying = new QPushButton(tr("Verif&y a Report…"));
    connect(exporting, &QPushButton::clicked, this, &ReportPlace::exportReport);
    connect(verifying, &QPushButton::clicked, this, &ReportPlace::verifyReport);
    auto* buttons = new SideBySide({exporting, 0, 1, 0}, {verifying, 0, 1, 0});
    column->addWidget(m_summary);
    column->addWidget(m_ready);
    column->addWidget(m_signing);
    column->addWidget(m_versions);
    column->addWidget(m_written);
    column->addStretch(1);
    // On a low screen what is above the buttons scrolls.
    m_panel = new PanelArea(panel, kSigningWidth);
    m_panel->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
    m_panel->setAccessibleName(tr("Readiness and signing"));
    auto* side = new QWidget;
    auto* whole = new QVBoxLayout(side);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_panel, 1);
    whole->addWidget(buttons);
    return side;
}

/// What came of a file, in sight.
void ReportPlace::tell(const QString& words) {
    m_written->setText(words);
    m_written->setVisible(!words.isEmpty());
    if (!words.isEmpty()) {
        // Words of more lines are laid out first.
        QTimer::singleShot(0, this, [this] { m_panel->ensureWidgetVisible(m_written); });
    }
}

void ReportPlace::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    m_preview->setTokens(tokens);
    markStale();
}

void ReportPlace::setPumpAdvisor(PumpAdvisor& advisor) {
    m_pumps = &advisor;
    connect(&advisor, &PumpAdvisor::learningEnded, m_shown, &ShownRefresh::want);
}

void ReportPlace::takeFocus() {
    m_list->setFocus(Qt::OtherFocusReason);
}

void ReportPlace::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool hasPreview = width() >= kWithPreview;
    m_scroll->setVisible(hasPreview);
    m_list->setMaximumWidth(hasPreview ? kListWidth : QWIDGETSIZE_MAX);
}

void ReportPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_panel->verticalScrollBar()->setValue(0);
    beginReadyList();
}

/// The list begins at the first line that stands in the way, once its lines are laid out.
void ReportPlace::beginReadyList() {
    QTimer::singleShot(0, this, [this] {
        m_ready->layout()->activate();
        m_panel->widget()->layout()->activate();
        const QWidget* first = m_ready->firstOpen();
        // Where it is the first of all, the head of the list is seen with it.
        const bool isBelow = first != nullptr && first->y() > 0;
        m_panel->verticalScrollBar()->setValue(isBelow ? m_ready->y() + first->y() : 0);
        if (QWidget* held = QApplication::focusWidget(); m_ready->isAncestorOf(held)) {
            m_panel->ensureWidgetVisible(held);
        }
    });
}

void ReportPlace::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        // Lines that wrap find their height when they are made with the new font.
        QTimer::singleShot(0, this, [this] { m_shown->want(); });
    }
}

void ReportPlace::markStale() {
    m_isBehind = true;
    m_isStopped = false;
    m_maker->giveUp();
    tell({});
    m_shown->want();
}

ww::report::ReportOptions ReportPlace::options() const {
    ww::report::ReportOptions options;
    if (m_bridge.isOpen()) {
        const workbook::JournalEntry& newest = m_bridge.workbook()->newestEntry();
        options.journalDigest = newest.digest.text();
        options.printed = newest.time;
        options.workbookId = m_bridge.workbook()->workbookId().text();
        options.round = earlierRound();
        options.standing = options.round ? std::nullopt : workbook::standingRevision(*m_bridge.workbook());
        if (auto steps = workbook::roundSteps(*m_bridge.workbook())) {
            options.roundSteps = std::move(*steps);
        } else {
            emit m_bridge.messageRaised(steps.fault());
        }
    }
    return options;
}

ww::report::Report ReportPlace::currentReport(ww::report::Signers signers) const {
    ww::report::ReportOptions wanted = options();
    wanted.signers = signers;
    // The picture of now knows rounds that an earlier one's report does not.
    wanted.pumps = m_pumps != nullptr && !wanted.round ? m_pumps->pictureOfNow() : nullptr;
    return ww::report::build(m_bridge.project(), wanted);
}

bool ReportPlace::isWaitingForLearning() const {
    return m_pumps != nullptr && m_pumps->isLearning() &&
           m_bridge.project().tree().terminals().size() > kLearnedAtOnce;
}

void ReportPlace::refresh() {
    if (!m_bridge.isOpen()) {
        m_exportWhenMade.clear();
        m_made.reset();
        m_preview->show(nullptr, 0);
        m_empty->setText(tr("No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N)."));
        m_content->setCurrentWidget(m_empty);
        showMaking();
        return;
    }
    fillRoundChoice();
    if (isWaitingForLearning()) {
        m_signing->setWaiting(tr("The loop is being learned; sign when that is done."));
        // Pages of the job before its last change stay until the loop is learned.
        if (m_made == nullptr) {
            m_empty->setText(tr("The loop is being learned; the pages follow."));
            m_content->setCurrentWidget(m_empty);
        }
        return;
    }
    if (isLarge()) {
        makePages();
        return;
    }
    auto made = std::make_shared<PagesMaker::Made>();
    made->report = currentReport();
    made->pages =
        std::make_shared<const report::ReportPages>(report::layOut(made->report, m_bridge.project()));
    take(made);
}

void ReportPlace::showPage(int page) {
    if (m_made != nullptr && page >= 0) {
        m_preview->show(m_made->pages, static_cast<std::size_t>(page));
        m_scroll->ensureVisible(0, 0);
    }
}

void ReportPlace::showReady(const ww::report::Report& report) {
    const project::Project& project = m_bridge.project();
    // Signed is the report of the newest round, whichever is looked at.
    const project::Round* newest = project::lastOwnRound(project);
    const auto lines = balancing::readyToSign(
        project, newest == nullptr || report.rounds.empty() ? balancing::assessLast(project)
                 : newest->number == report.roundNumber     ? report.rounds.back()
                                                            : balancing::assess(project, newest->id));
    const auto open = std::count_if(lines.begin(), lines.end(), [](const balancing::SignLine& line) {
        return line.state == balancing::SignState::NeedsReason || line.state == balancing::SignState::Blocks;
    });
    m_ready->show(lines, m_tokens);
    beginReadyList();
    m_signing->setObstacles(static_cast<std::size_t>(open));
    const QString standing = m_versions->standing();
    m_summary->setText(!standing.isEmpty() ? standing
                       : open == 0         ? tr("Ready to sign")
                                           : tr("Not ready to sign yet"));
    // What is signed and stands comes before what a further signature would need.
    auto* column = static_cast<QVBoxLayout*>(m_panel->widget()->layout());
    column->removeWidget(m_versions);
    column->insertWidget(
        column->indexOf(standing.isEmpty() ? static_cast<QWidget*>(m_signing) : m_summary) + 1, m_versions);
}

base::Outcome ReportPlace::exportTo(const std::filesystem::path& file) {
    const bool isMade = isLarge() && !m_isBehind;
    PagesProgress progress(this);
    report::Waiting waiting;
    waiting.pages = isMade ? m_made->pages : nullptr;
    waiting.layingOut = [&](std::size_t pages) { return progress.layingOut(pages); };
    waiting.writing = [&](std::size_t pages) { return progress.writing(pages); };
    progress.setCount(isMade ? m_made->pages->pages.size() : 0);
    const base::Outcome outcome =
        report::writePdf(isMade ? m_made->report : currentReport(), m_bridge.project(), file, waiting);
    tell(outcome.ok() ? tr("Written: %1").arg(QString::fromStdString(file.string()))
                      : text::text(outcome.fault()));
    return outcome;
}

/// Of the pages shown; a report that is waited for is not built for its name alone.
QString ReportPlace::proposedFileName() const {
    if (isLarge() && !m_isBehind) {
        return report::fileNameOf(m_made->report);
    }
    return isWaitingForLearning() || isLarge() ? tr("Balance report") + QStringLiteral(".pdf")
                                               : report::fileNameOf(currentReport());
}

void ReportPlace::exportReport() {
    if (!m_bridge.isOpen()) {
        return;
    }
    const QString folder = QFileInfo(m_bridge.file()).absolutePath();
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Export Unsigned Draft"), folder + '/' + proposedFileName(), tr("PDF files (*.pdf)"));
    if (file.isEmpty()) {
        return;
    }
    if (isWaitingForLearning()) {
        m_exportWhenMade = file;
        tellWaiting(tr("The loop is being learned; the file is written when that is done."));
        return;
    }
    if (isLarge() && m_isBehind) {
        m_exportWhenMade = file;
        m_isStopped = false;
        makePages();
        tellWaiting(tr("The pages are being laid out; the file is written when that is done."));
        return;
    }
    // The place itself says what came of it.
    (void)exportTo(std::filesystem::path(file.toStdString()));
}

/// Says what a file waits for where it is seen: beside the pages, or in their place while there are none.
void ReportPlace::tellWaiting(const QString& words) {
    tell(words);
    if (m_made == nullptr) {
        m_empty->setText(words);
    }
}

void ReportPlace::verifyReport() {
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Verify a Report"), QFileInfo(m_bridge.file()).absolutePath(), tr("PDF files (*.pdf)"));
    if (!file.isEmpty()) {
        auto* dialog = new VerifyDialog(m_bridge, m_tokens, this);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->show(file);
    }
}

}  // namespace ww::ui
