#include "ui/places/report/signed_versions.h"

#include <QGridLayout>
#include <algorithm>

#include "core/seal/signature_block.h"
#include "core/workbook/report_signing.h"
#include "ui/delegates/wrapped_item.h"
#include "ui/text/conflict_text.h"
#include "ui/text/words.h"
#include "ui/widgets/hinted_field.h"

namespace ww::ui {
namespace {

constexpr int kListHeight = 84;

QString signatureState(const workbook::Workbook& workbook, const project::SignedReport& report) {
    if (report.isWithdrawn) {
        return SignedVersions::tr("withdrawn: %1").arg(text::reason(report.reason));
    }
    return workbook::stateOf(workbook, report) == workbook::ReportState::Current
               ? SignedVersions::tr("stands")
               : SignedVersions::tr("superseded, the workbook was changed since");
}

}  // namespace

SignedVersions::SignedVersions(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_none(new QLabel(tr("Signed versions: none"), this)),
      m_list(new QListWidget(this)),
      m_reason(new HintedField(tr("reason, to withdraw"), this)),
      m_withdraw(new QPushButton(tr("Withdraw Report"), this)) {
    m_list->setWordWrap(true);
    m_list->setItemDelegate(new WrappedItem(m_list));
    m_list->setFixedHeight(kListHeight);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setAccessibleName(tr("Signed versions"));
    m_reason->setAccessibleName(tr("Reason for withdrawing the report"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(5);
    grid->addWidget(m_none, 0, 0, 1, 2);
    grid->addWidget(m_list, 1, 0, 1, 2);
    grid->addWidget(m_reason, 2, 0);
    grid->addWidget(m_withdraw, 2, 1);
    connect(m_reason, &QLineEdit::textChanged, this, &SignedVersions::refreshButton);
    connect(m_list, &QListWidget::currentRowChanged, this, &SignedVersions::refreshButton);
    connect(m_withdraw, &QPushButton::clicked, this, &SignedVersions::withdraw);
    refresh();
}

void SignedVersions::refresh() {
    std::vector<const project::SignedReport*> all;
    for (const project::SignedReport& report : m_bridge.project().signedReports()) {
        all.push_back(&report);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto* a, const auto* b) { return a->revision > b->revision; });
    const QSignalBlocker blocker(m_list);
    m_list->clear();
    m_shown.clear();
    for (const project::SignedReport* report : all) {
        m_list->addItem(
            tr("Revision %1, %2: %3, %4\n%5 — %6")
                .arg(QString::number(report->revision), text::term(report->role),
                     QString::fromStdString(report->signer) +
                         (report->isSelfMade ? tr(" (self-made certificate)") : QString()),
                     report->time ? QString::fromStdString(seal::shownTime(*report->time)) : QString(),
                     QString::fromStdString(report->fileName),
                     signatureState(*m_bridge.workbook(), *report)));
        m_shown.push_back(report->id);
    }
    m_none->setText(all.empty() ? tr("Signed versions: none") : tr("Signed versions"));
    for (QWidget* widget : {static_cast<QWidget*>(m_list), static_cast<QWidget*>(m_reason),
                            static_cast<QWidget*>(m_withdraw)}) {
        widget->setVisible(!all.empty());
    }
    if (!all.empty()) {
        m_list->setCurrentRow(0);
    }
    refreshButton();
}

QString SignedVersions::standing() const {
    int newest = 0;
    for (const project::SignedReport& report : m_bridge.project().signedReports()) {
        newest = std::max(newest, report.revision);
    }
    QStringList signers;
    for (const project::SignedReport& report : m_bridge.project().signedReports()) {
        if (report.revision != newest) {
            continue;
        }
        if (!workbook::stands(*m_bridge.workbook(), report)) {
            return {};
        }
        signers << QString::fromStdString(report.signer);
    }
    return signers.isEmpty() ? QString()
                             : tr("Revision %1 is signed by %2; nothing was changed since")
                                   .arg(QString::number(newest), signers.join(QStringLiteral(", ")));
}

void SignedVersions::refreshButton() {
    const auto row = static_cast<std::size_t>(m_list->currentRow());
    const project::SignedReport* chosen =
        row < m_shown.size() ? m_bridge.project().signedReports().find(m_shown[row]) : nullptr;
    const bool canWithdraw = chosen != nullptr && !chosen->isWithdrawn && !m_bridge.isReadOnly();
    m_reason->setEnabled(canWithdraw);
    m_withdraw->setEnabled(canWithdraw && !m_reason->text().trimmed().isEmpty());
    m_withdraw->setAccessibleDescription(canWithdraw ? tr("Withdrawing needs a reason.") : QString());
}

void SignedVersions::withdraw() {
    const auto row = static_cast<std::size_t>(m_list->currentRow());
    if (row >= m_shown.size()) {
        return;
    }
    const bool isStored = m_bridge.tellOrClear(m_bridge.apply(balancing::withdrawReport(
        m_bridge.project(), m_shown[row], m_reason->text().trimmed().toStdString())));
    if (isStored) {
        m_reason->clear();
    }
}

}  // namespace ww::ui
