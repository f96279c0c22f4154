#include "ui/journal_dialog.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QVBoxLayout>
#include <algorithm>

#include "core/balancing/assess.h"
#include "core/balancing/standing_readings.h"
#include "core/exchange/job_folder.h"
#include "ui/job_files.h"
#include "ui/places/wrapped_rows.h"
#include "ui/text/format.h"
#include "ui/text/label.h"
#include "ui/text/words.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {
namespace {

/// What takes the room that is left: what was done, and the words of a state.
constexpr int kWhat = 4;
constexpr int kState = 4;
/// Device-independent pixels; where there is less, the job stands below the actions.
constexpr int kActionsWidth = 520;
constexpr int kStateWidth = 360;
constexpr int kLeastTable = 110;

}  // namespace

JournalDialog::JournalDialog(WorkbookBridge& bridge, QWidget* parent)
    : OrderedDialog(parent),
      m_bridge(bridge),
      m_journal(bridge.workbook()->journal()),
      m_actions(new TextTable(
          {tr("Record"), tr("Stored, newest first"), tr("By"), tr("Computer"), tr("What was done")}, -1,
          this)),
      m_actionTable(makeReadTable(m_actions, kWhat, tr("Stored actions"), this)),
      m_said(new QLabel(this)),
      m_state(new TextTable({tr("Tag"), tr("Setting"), tr("Reading"), tr("Of target, %"), tr("State")}, -1,
                            this)),
      m_stateTable(makeReadTable(m_state, kState, tr("The job as it stood"), this)) {
    setWindowTitle(tr("The Job as It Stood"));
    for (QTableView* table : {m_actionTable, m_stateTable}) {
        table->setMinimumHeight(kLeastTable);
    }
    m_said->setWordWrap(true);
    m_said->setTextFormat(Qt::PlainText);
    std::reverse(m_journal.begin(), m_journal.end());
    std::vector<TextRow> rows;
    for (const workbook::JournalEntry& entry : m_journal) {
        TextRow row;
        row.cells = {QString::number(entry.sequence), text::moment(entry.time),
                     QString::fromStdString(entry.person), QString::fromStdString(entry.machine),
                     text::label(entry)};
        rows.push_back(std::move(row));
    }
    m_actions->setRows(std::move(rows));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* exporting = buttons->addButton(tr("Export Its Tables…"), QDialogButtonBox::ActionRole);
    exporting->setAccessibleDescription(tr("Writes the job as it stood then as tables"));
    connect(exporting, &QPushButton::clicked, this, &JournalDialog::exportTables);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    // Beside another part a table itself would be narrower than its columns.
    auto* done = new QWidget;
    auto* left = new QVBoxLayout(done);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(m_actionTable);
    auto* then = new QWidget;
    auto* right = new QVBoxLayout(then);
    right->setContentsMargins(0, 0, 0, 0);
    right->addWidget(m_said);
    right->addWidget(m_stateTable, 1);
    auto* content = new QVBoxLayout;
    content->addWidget(
        new SideBySide({done, kActionsWidth, 3, kLeastTable}, {then, kStateWidth, 2, kLeastTable}));
    layOut(content, buttons);
    resizeWithText(1100, 520);
    connect(m_actionTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                if (current.isValid()) {
                    showAfter(m_journal[static_cast<std::size_t>(current.row())].sequence);
                }
            });
    m_actionTable->setCurrentIndex(m_actions->index(0, 0));
}

void JournalDialog::showAfter(std::int64_t sequence) {
    auto job = m_bridge.workbook()->asItStoodAfter(sequence);
    if (!job) {
        m_said->setText(text::text(job.fault()));
        m_state->setRows({});
        return;
    }
    m_job = std::move(*job);
    const balancing::Assessment all = balancing::assessLast(m_job);
    const QString round = all.round ? tr("Round %1, %2 of %3 terminals read.")
                                          .arg(all.roundNumber)
                                          .arg(all.readCount)
                                          .arg(all.terminalCount)
                                    : tr("No round was open yet.");
    m_said->setText(tr("After record %1: %2").arg(QString::number(sequence), round));
    std::vector<TextRow> rows;
    for (const std::size_t index : m_job.tree().walkingOrder()) {
        const project::Branch& branch = m_job.branches()[index];
        const balancing::BranchResult& result = all.branches[index];
        const project::Reading* reading = result.reading ? m_job.readings().find(*result.reading) : nullptr;
        const auto setting =
            all.round ? balancing::standingSetting(m_job, *all.round, branch.id) : branch.setting;
        TextRow row;
        row.id = branch.id;
        row.cells = {QString::fromStdString(branch.tag),
                     setting ? QString::fromStdString(setting->text()) : QString(),
                     reading == nullptr ? QString()
                     : reading->dp      ? text::entered(reading->dp)
                                        : text::entered(reading->flow),
                     result.ofTarget ? text::percent(*result.ofTarget) : QString(), text::word(result)};
        rows.push_back(std::move(row));
    }
    m_state->setRows(std::move(rows));
}

void JournalDialog::exportTables() {
    const QString folder =
        askFolder(this, tr("Folder for the Tables"), QFileInfo(m_bridge.file()).absolutePath());
    if (folder.isEmpty()) {
        return;
    }
    const base::Outcome done = exchange::writeJobFolder(m_job, folder.toStdString());
    m_said->setText(done ? tr("Written to %1").arg(folder) : text::text(done.fault()));
}

}  // namespace ww::ui
