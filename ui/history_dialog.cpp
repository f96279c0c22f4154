#include "ui/history_dialog.h"

#include <QDialogButtonBox>
#include <QVBoxLayout>
#include <algorithm>
#include <iterator>

#include "core/balancing/round_comparison.h"
#include "core/project/names.h"
#include "ui/places/wrapped_rows.h"
#include "ui/text/conflict_text.h"
#include "ui/text/format.h"
#include "ui/text/label.h"
#include "ui/text/typed_word.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// The column of reasons and notes.
constexpr int kReason = 7;

}  // namespace

HistoryDialog::HistoryDialog(WorkbookBridge& bridge, const base::Id& branch, QWidget* parent)
    : OrderedDialog(parent),
      m_bridge(bridge),
      m_branch(branch),
      m_values(new TextTable({tr("Round"), tr("Setting"), tr("Value"), tr("Status"),
                              tr("Stored, newest first"), tr("By"), tr("What was done"), tr("Reason, note")},
                             -1, this)),
      m_use(new QPushButton(tr("Use This Value"), this)) {
    const std::string& tag = bridge.project().branches().at(branch).tag;
    setWindowTitle(tr("History of %1").arg(QString::fromStdString(tag)));
    m_table = makeReadTable(m_values, kReason, windowTitle(), this);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    buttons->addButton(m_use, QDialogButtonBox::ActionRole);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_use, &QPushButton::clicked, this, &HistoryDialog::use);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_table);
    layout->addWidget(buttons);
    resizeWithText(880, 420);
    readHistory();
    std::vector<TextRow> rows;
    std::transform(m_history.begin(), m_history.end(), std::back_inserter(rows), rowOf);
    m_values->setRows(std::move(rows));
    m_use->setEnabled(!m_history.empty() && bridge.roundToCorrectOrNull() != nullptr);
    if (!m_history.empty()) {
        m_table->setCurrentIndex(m_values->index(0, 0));
    }
}

void HistoryDialog::readHistory() {
    if (m_bridge.workbook() == nullptr) {
        emit m_bridge.messageRaised(base::Fault{&kNoWorkbookOpen, {}, {}});
        return;
    }
    auto history = workbook::cellHistory(*m_bridge.workbook(), m_branch);
    if (!history) {
        emit m_bridge.messageRaised(history.fault());
        return;
    }
    m_history = std::move(history).value();
    // A setting that was entered before its reading was completed by it, not taken back.
    std::erase_if(m_history, [&](const workbook::CellValue& value) {
        return value.reading.status == project::ReadingStatus::Superseded && value.reading.reason.empty() &&
               std::any_of(m_history.begin(), m_history.end(), [&](const workbook::CellValue& later) {
                   return later.reading.supersedes == value.reading.id &&
                          !balancing::isCorrection(value.reading, later.reading);
               });
    });
    std::reverse(m_history.begin(), m_history.end());
}

TextRow HistoryDialog::rowOf(const workbook::CellValue& value) {
    const project::Reading& reading = value.reading;
    TextRow row;
    row.id = reading.id;
    const bool isUndone = value.isUndone || value.isGone;
    row.isStruck = isUndone || reading.status != project::ReadingStatus::Standing;
    row.cells = {
        value.round > 0 ? QString::number(value.round) : tr("undone"),
        reading.setting ? QString::fromStdString(reading.setting->text()) : QString(),
        reading.cannotBeRead ? tr("cannot be read")
        : reading.dp         ? text::entered(reading.dp)
                             : text::entered(reading.flow),
        isUndone ? tr("undone") : text::nameOf(reading.status),
        text::moment(value.stored),
        QString::fromStdString(value.person),
        text::label(value.label),
        reading.reason.empty() ? QString::fromStdString(reading.note) : text::reason(reading.reason)};
    return row;
}

void HistoryDialog::use() {
    const QModelIndex row = m_table->currentIndex();
    if (!row.isValid()) {
        return;
    }
    const project::Reading& reading = m_history[static_cast<std::size_t>(row.row())].reading;
    if (!reading.dp && !reading.flow) {
        return;
    }
    const base::Outcome done =
        reading.dp ? m_bridge.storeDp(m_branch, QString::fromStdString(reading.dp->text()))
                   : m_bridge.storeFlow(m_branch, QString::fromStdString(reading.flow->text()));
    if (!done) {
        emit m_bridge.messageRaised(done.fault());
    }
    accept();
}

}  // namespace ww::ui
