#include "ui/history_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QVBoxLayout>
#include <algorithm>

#include "core/project/names.h"
#include "ui/text/format.h"
#include "ui/text/label.h"
#include "ui/text/typed_word.h"
#include "ui/text/words.h"

namespace ww::ui {

HistoryDialog::HistoryDialog(WorkbookBridge& bridge, const base::Id& branch, QWidget* parent)
    : OrderedDialog(parent),
      m_bridge(bridge),
      m_branch(branch),
      m_values(new TextTable({tr("Round"), tr("Setting"), tr("Value"), tr("Status"),
                              tr("Stored, newest first"), tr("By"), tr("What was done"), tr("Reason, note")},
                             -1, this)),
      m_table(new QTableView(this)),
      m_use(new QPushButton(tr("Use This Value"), this)) {
    const project::Project& project = bridge.project();
    setWindowTitle(tr("History of %1").arg(QString::fromStdString(project.branches().at(branch).tag)));
    m_table->setModel(m_values);
    m_table->setAccessibleName(windowTitle());
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setStretchLastSection(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    buttons->addButton(m_use, QDialogButtonBox::ActionRole);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_use, &QPushButton::clicked, this, &HistoryDialog::use);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_table);
    layout->addWidget(buttons);
    resize(880, 420);

    auto history =
        bridge.workbook() != nullptr
            ? workbook::cellHistory(*bridge.workbook(), branch)
            : base::Result<std::vector<workbook::CellValue>>(base::Fault{&kNoWorkbookOpen, {}, {}});
    if (!history) {
        emit bridge.messageRaised(history.fault());
    } else {
        m_history = std::move(history).value();
        std::reverse(m_history.begin(), m_history.end());
    }
    std::vector<TextRow> rows;
    for (const workbook::CellValue& value : m_history) {
        const project::Reading& reading = value.reading;
        TextRow row;
        row.id = reading.id;
        const bool isUndone = value.isUndone || value.isGone;
        row.isStruck = isUndone || reading.status != project::ReadingStatus::Standing;
        const std::string words = reading.reason.empty() ? reading.note : reading.reason;
        row.cells = {value.round > 0 ? QString::number(value.round) : tr("undone"),
                     reading.setting ? QString::fromStdString(reading.setting->text()) : QString(),
                     reading.cannotBeRead ? tr("cannot be read")
                     : reading.dp         ? text::entered(reading.dp)
                                          : text::entered(reading.flow),
                     isUndone ? tr("undone") : text::nameOf(reading.status),
                     QString::fromStdString(value.stored.text()).left(19).replace('T', ' '),
                     QString::fromStdString(value.person),
                     text::label(value.label),
                     QString::fromStdString(words)};
        rows.push_back(std::move(row));
    }
    m_values->setRows(std::move(rows));
    m_table->resizeColumnsToContents();
    m_use->setEnabled(!m_history.empty() && bridge.openRoundOrNull() != nullptr);
    if (!m_history.empty()) {
        m_table->setCurrentIndex(m_values->index(0, 0));
    }
}

void HistoryDialog::use() {
    const QModelIndex row = m_table->currentIndex();
    if (!row.isValid()) {
        return;
    }
    const auto& dp = m_history[static_cast<std::size_t>(row.row())].reading.dp;
    if (!dp) {
        return;
    }
    const base::Outcome done = m_bridge.storeDp(m_branch, QString::fromStdString(dp->text()));
    if (!done) {
        emit m_bridge.messageRaised(done.fault());
    }
    accept();
}

}  // namespace ww::ui
