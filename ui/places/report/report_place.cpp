#include "ui/places/report/report_place.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QShowEvent>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/places/fact_list.h"
#include "ui/places/report/page_preview.h"
#include "ui/pump_advisor.h"
#include "ui/report/page_builder.h"
#include "ui/report/report_writer.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using ww::report::Mark;

constexpr int kListWidth = 190;
constexpr int kPanelWidth = 344;
constexpr std::size_t kIndexSection = 5;
/// Below this width there is no room for a page that could be read.
constexpr int kWithPreview = 780;

/// Loops of so many terminals are learned in the time of one key; larger ones are waited for.
constexpr std::size_t kLearnedAtOnce = 60;

void clear(QLayout* layout) {
    while (QLayoutItem* item = layout->takeAt(0)) {
        if (item->widget() != nullptr) {
            item->widget()->deleteLater();
            item->widget()->hide();
        }
        delete item;
    }
}

bool isIndexProved(const ww::report::Report& report) {
    const ww::report::Section& index = report.sections[kIndexSection];
    if (index.facts.empty()) {
        return false;
    }
    for (const ww::report::Fact& fact : index.facts) {
        if (fact.mark == Mark::Fail || fact.mark == Mark::Open) {
            return false;
        }
    }
    return true;
}

/// A file name from a job's name: what some file systems refuse becomes a line.
QString fileNameOf(const ww::report::Report& report) {
    QString name = QString::fromStdString(report.jobName).trimmed();
    for (const QChar refused : QStringLiteral("/\\:*?\"<>|")) {
        name.replace(refused, '-');
    }
    return QObject::tr("%1, balance report, round %2.pdf")
        .arg(name.isEmpty() ? QObject::tr("Job") : name)
        .arg(report.roundNumber);
}

}  // namespace

ReportPlace::ReportPlace(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_tokens(theme::tokens(theme::Display::Office)),
      m_content(new QStackedWidget(this)),
      m_empty(new QLabel(this)),
      m_page(new QWidget(this)),
      m_list(new QListWidget(this)),
      m_preview(new PagePreview(this)),
      m_scroll(new QScrollArea(this)) {
    m_empty->setAlignment(Qt::AlignCenter);
    m_list->setFixedWidth(kListWidth);
    m_list->setWordWrap(true);
    m_list->setSpacing(3);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // Names are wrapped to the width beside the bar, whether it comes or not.
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_list->setAccessibleName(tr("Pages of the report"));
    m_scroll->setWidget(m_preview);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setAccessibleName(tr("Page as printed"));
    auto* row = new QHBoxLayout(m_page);
    row->setContentsMargins(12, 10, 12, 10);
    row->setSpacing(12);
    row->addWidget(m_list);
    row->addWidget(m_scroll, 1);
    row->addWidget(buildPanel());
    m_content->addWidget(m_page);
    m_content->addWidget(m_empty);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_content);
    connect(m_list, &QListWidget::currentRowChanged, this, &ReportPlace::showPage);
    connect(&m_bridge, &WorkbookBridge::changed, this, &ReportPlace::markStale);
}

QWidget* ReportPlace::buildPanel() {
    auto* panel = new QWidget;
    panel->setFixedWidth(kPanelWidth);
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    auto* title = new QLabel(tr("Ready?"), panel);
    QFont bold = title->font();
    bold.setBold(true);
    bold.setPointSizeF(bold.pointSizeF() * 1.2);
    title->setFont(bold);
    auto* list = new QWidget;
    m_checks = new QVBoxLayout(list);
    m_checks->setContentsMargins(0, 0, 6, 0);
    m_checks->setSpacing(8);
    auto* scroll = new QScrollArea;
    scroll->setWidget(list);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(tr("What is missing"));
    m_written = new QLabel(panel);
    m_written->setWordWrap(true);
    m_written->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_export = new QPushButton(tr("&Export Report…"), panel);
    m_export->setAccessibleDescription(tr("Writes these pages as a PDF file"));
    connect(m_export, &QPushButton::clicked, this, &ReportPlace::exportReport);
    auto* draft = new QLabel(tr("The report is a draft until it is signed; every page says so."), panel);
    draft->setWordWrap(true);
    column->addWidget(title);
    column->addWidget(scroll, 1);
    column->addWidget(m_written);
    column->addWidget(draft);
    column->addWidget(m_export);
    return panel;
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
    m_scroll->setVisible(width() >= kWithPreview);
}

void ReportPlace::markStale() {
    m_written->clear();
    m_shown->want();
}

ww::report::Report ReportPlace::currentReport() const {
    ww::report::ReportOptions options;
    if (m_bridge.isOpen()) {
        const workbook::JournalEntry& newest = m_bridge.workbook()->newestEntry();
        options.journalDigest = newest.digest.text();
        options.printed = newest.time;
        options.workbookId = m_bridge.workbook()->workbookId().text();
    }
    options.pumps = m_pumps != nullptr ? m_pumps->pictureOfNow() : nullptr;
    return ww::report::build(m_bridge.project(), options);
}

bool ReportPlace::isWaitingForLearning() const {
    return m_pumps != nullptr && m_pumps->isLearning() &&
           m_bridge.project().tree().terminals().size() > kLearnedAtOnce;
}

void ReportPlace::refresh() {
    if (!m_bridge.isOpen()) {
        m_pages.reset();
        m_preview->show(nullptr, 0);
        m_empty->setText(tr("No job is open. Open one, or make a new job, in the menu File."));
        m_content->setCurrentWidget(m_empty);
        return;
    }
    if (isWaitingForLearning()) {
        // Pages of the job before its last change stay until the loop is learned.
        if (m_pages == nullptr) {
            m_empty->setText(tr("The loop is being learned; the pages follow."));
            m_content->setCurrentWidget(m_empty);
        }
        return;
    }
    const ww::report::Report report = currentReport();
    const int before = std::max(0, m_list->currentRow());
    m_pages = std::make_shared<const report::ReportPages>(report::layOut(report, m_bridge.project()));
    {
        const QSignalBlocker blocker(m_list);
        m_list->clear();
        for (std::size_t page = 0; page < m_pages->pages.size(); ++page) {
            m_list->addItem(tr("Page %1").arg(page + 1) + '\n' + m_pages->names[page]);
        }
        m_list->setCurrentRow(std::min(before, m_list->count() - 1));
    }
    showPage(m_list->currentRow());
    fillChecklist(report);
    m_content->setCurrentWidget(m_page);
}

void ReportPlace::showPage(int page) {
    if (m_pages != nullptr && page >= 0) {
        m_preview->show(m_pages, static_cast<std::size_t>(page));
        m_scroll->ensureVisible(0, 0);
    }
}

void ReportPlace::addCheck(Mark mark, const QString& words, std::optional<Target> target) {
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    auto* shape = new MarkShape(line);
    shape->show(mark, m_tokens);
    auto* label = new QLabel(words, line);
    label->setWordWrap(true);
    row->addWidget(shape, 0, Qt::AlignTop);
    row->addWidget(label, 1);
    if (target) {
        const QString names[] = {tr("To Job"), tr("To System"), tr("To Walk"), tr("To Pump")};
        auto* button = new QPushButton(names[static_cast<int>(*target)], line);
        button->setAccessibleDescription(words);
        connect(button, &QPushButton::clicked, this, [this, target] { emit placeWanted(*target); });
        row->addWidget(button, 0, Qt::AlignTop);
    }
    m_checks->addWidget(line);
}

void ReportPlace::fillChecklist(const ww::report::Report& report) {
    clear(m_checks);
    const project::Project& project = m_bridge.project();
    if (project.branches().empty()) {
        addCheck(Mark::Open, tr("No branch is on record."), Target::System);
    }
    if (report.rounds.empty()) {
        addCheck(Mark::Open, tr("No round has been walked."), Target::Walk);
        m_checks->addStretch(1);
        return;
    }
    const balancing::Assessment& last = report.rounds.back();
    const bool isClosed = project.lastRound()->state != project::RoundState::Open;
    addCheck(last.isComplete ? Mark::Pass : Mark::Fail,
             tr("%1 of %2 terminals read in round %3.")
                 .arg(last.readCount)
                 .arg(last.terminalCount)
                 .arg(last.roundNumber),
             last.isComplete ? std::optional<Target>() : Target::Walk);
    addCheck(isClosed ? Mark::Pass : Mark::Open,
             isClosed ? tr("Round %1 is closed.").arg(last.roundNumber)
                      : tr("Round %1 is still open.").arg(last.roundNumber),
             isClosed ? std::optional<Target>() : Target::Walk);
    const bool isAccepted = last.verdict == balancing::Verdict::Accepted;
    addCheck(isAccepted                                        ? Mark::Pass
             : last.verdict == balancing::Verdict::Undecidable ? Mark::Open
                                                               : Mark::Fail,
             tr("Verdict: %1.").arg(text::word(last.verdict)), std::nullopt);
    const bool isProved = isIndexProved(report);
    addCheck(isProved ? Mark::Pass : Mark::Fail,
             isProved ? tr("Index-circuit check passed.") : tr("Index-circuit check not passed."),
             isProved ? std::optional<Target>() : Target::Pump);
    addFindings(last);
    m_checks->addStretch(1);
}

void ReportPlace::addFindings(const balancing::Assessment& last) {
    // One line a kind: the first of it in words, how many more there are in a number.
    std::vector<std::pair<const balancing::Finding*, int>> kinds;
    for (const balancing::Finding& finding : last.findings) {
        if (finding.severity == balancing::Severity::Note) {
            continue;
        }
        const auto same = std::find_if(kinds.begin(), kinds.end(), [&finding](const auto& kind) {
            return kind.first->fault.code() == finding.fault.code() &&
                   kind.first->severity == finding.severity;
        });
        if (same != kinds.end()) {
            ++same->second;
        } else {
            kinds.emplace_back(&finding, 0);
        }
    }
    for (const auto& [finding, more] : kinds) {
        QString words = text::text(finding->fault);
        if (more > 0) {
            words += ' ' + (more == 1 ? tr("One more like this.") : tr("%1 more like this.").arg(more));
        }
        addCheck(finding->severity == balancing::Severity::Warning ? Mark::Open : Mark::Fail, words,
                 std::nullopt);
        if (finding->branch) {
            addShowButton(*finding->branch, words);
        }
    }
}

/// A button in the last line of the checklist that leads to a branch.
void ReportPlace::addShowButton(const base::Id& id, const QString& words) {
    const project::Branch* branch = m_bridge.project().branches().find(id);
    auto* button = new QPushButton(tr("Show"));
    button->setAccessibleName(
        tr("Show %1").arg(branch != nullptr ? QString::fromStdString(branch->tag) : QString()));
    button->setAccessibleDescription(words);
    connect(button, &QPushButton::clicked, this, [this, id] { emit branchWanted(id); });
    auto* row = static_cast<QHBoxLayout*>(m_checks->itemAt(m_checks->count() - 1)->widget()->layout());
    row->addWidget(button, 0, Qt::AlignTop);
}

base::Outcome ReportPlace::exportTo(const std::filesystem::path& file) {
    base::Outcome outcome = report::writePdf(currentReport(), m_bridge.project(), file);
    m_written->setText(outcome.ok() ? tr("Written: %1").arg(QString::fromStdString(file.string()))
                                    : text::text(outcome.fault()));
    return outcome;
}

void ReportPlace::exportReport() {
    if (!m_bridge.isOpen()) {
        return;
    }
    const QString folder = QFileInfo(m_bridge.file()).absolutePath();
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Export Report"), folder + '/' + fileNameOf(currentReport()), tr("PDF files (*.pdf)"));
    if (!file.isEmpty()) {
        // The place itself says what came of it.
        (void)exportTo(std::filesystem::path(file.toStdString()));
    }
}

}  // namespace ww::ui
