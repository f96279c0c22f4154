#include "ui/places/report/verify_dialog.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>

#include "core/seal/signature_answers.h"
#include "core/workbook/report_signing.h"
#include "ui/job_files.h"
#include "ui/places/fact_list.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using ww::report::Mark;

enum Column { kQuestion, kShape, kAnswer, kColumns };
constexpr qint64 kMostPem = 4 * 1024 * 1024;
constexpr qint64 kMostReport = 1024LL * 1024 * 1024;

Mark markOfAnswer(seal::AnswerWeight weight) {
    switch (weight) {
        case seal::AnswerWeight::Good:
            return Mark::Pass;
        case seal::AnswerWeight::Open:
            return Mark::Open;
        case seal::AnswerWeight::Bad:
            return Mark::Fail;
        case seal::AnswerWeight::Plain:
            break;
    }
    return Mark::None;
}

/// A fingerprint in groups of four digits: it can be read aloud, and its line can break between them.
QString withGroups(QString words) {
    constexpr qsizetype kGroup = 4;
    static const QRegularExpression kHex(QStringLiteral("[0-9a-f]{32,}"));
    const QRegularExpressionMatch found = kHex.match(words);
    for (qsizetype at = found.capturedEnd() - kGroup; at > found.capturedStart(); at -= kGroup) {
        words.insert(at, ' ');
    }
    return words;
}

/// What somebody signs for, as a heading: without the stop of a sentence.
QString meaningOf(seal::Role role) {
    return text::sentence({&seal::meaning(role), {}, {}}).chopped(1);
}

}  // namespace

VerifyDialog::VerifyDialog(const WorkbookBridge& bridge, const theme::Tokens& tokens, QWidget* parent)
    : OrderedDialog(parent),
      m_bridge(bridge),
      m_tokens(tokens),
      m_page(new QWidget),
      m_lines(new QGridLayout(m_page)) {
    setWindowTitle(tr("Verify a Report"));
    m_lines->setColumnStretch(kAnswer, 1);
    m_lines->setAlignment(Qt::AlignTop);
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(m_page);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setProperty("ringed", true);
    scroll->setAccessibleName(tr("What was found"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* trustButton = buttons->addButton(tr("Trust a Root Certificate…"), QDialogButtonBox::ActionRole);
    trustButton->setAccessibleDescription(
        tr("The certificate of the signer's firm or issuer, as a PEM file"));
    connect(trustButton, &QPushButton::clicked, this, &VerifyDialog::askTrust);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(scroll, 1);
    layout->addWidget(buttons);
    resizeWithText(640, 520);
}

void VerifyDialog::show(const QString& file) {
    m_file = file;
    judge();
    QDialog::show();
}

void VerifyDialog::trust(const QString& pemFile) {
    const auto pem = bytesOfFile(pemFile, kMostPem);
    const auto anchors =
        pem ? seal::TrustAnchors::fromPem(*pem)
            : base::Result<seal::TrustAnchors>(base::Fault{&kFileUnread, {}, {pemFile.toStdString()}});
    if (anchors) {
        m_anchors = *anchors;
    }
    judge();
    if (!anchors) {
        addFault(anchors.fault());
    }
}

void VerifyDialog::askTrust() {
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Trust a Root Certificate"), QFileInfo(m_file).absolutePath(),
                                     tr("Certificates (*.pem *.crt *.cer)"));
    if (!file.isEmpty()) {
        trust(file);
    }
}

void VerifyDialog::addHeading(const QString& words) {
    auto* label = new QLabel(words, m_page);
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    m_lines->addWidget(label, m_lines->rowCount(), kQuestion, 1, kColumns);
    label->show();
}

void VerifyDialog::addFact(const QString& label, const QString& words, Mark mark) {
    const int row = m_lines->rowCount();
    auto* name = new QLabel(label, m_page);
    auto* shape = new MarkShape(m_page);
    shape->show(mark, m_tokens);
    auto* value = new QLabel(words, m_page);
    value->setWordWrap(true);
    value->setTextFormat(Qt::PlainText);
    value->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_lines->addWidget(name, row, kQuestion, Qt::AlignTop);
    m_lines->addWidget(shape, row, kShape, Qt::AlignTop);
    m_lines->addWidget(value, row, kAnswer);
    for (QWidget* part : std::initializer_list<QWidget*>{name, shape, value}) {
        part->show();
    }
}

void VerifyDialog::addFault(const base::Fault& fault) {
    addFact(QString(), text::text(fault), Mark::Fail);
}

void VerifyDialog::judge() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        if (item->widget() != nullptr) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
    const auto bytes = bytesOfFile(m_file, kMostReport);
    if (!bytes) {
        m_found = {};
        addFault({&kFileUnread, {}, {m_file.toStdString()}});
        return;
    }
    m_found = seal::verifyReport(*bytes, m_anchors);
    addHeading(m_found.isIntact
                   ? tr("%1: unchanged since it was signed").arg(QFileInfo(m_file).fileName())
                   : tr("%1: NOT proved to be as it was signed").arg(QFileInfo(m_file).fileName()));
    for (const base::Fault& fault : m_found.faults) {
        addFault(fault);
    }
    for (const seal::SignatureFinding& signature : m_found.signatures) {
        addHeading(signature.role ? meaningOf(*signature.role) : QString::fromStdString(signature.field));
        for (const seal::SignatureAnswer& answer : seal::answersOf(signature, !m_anchors.isEmpty())) {
            addFact(text::sentence(answer.question).chopped(1), withGroups(text::sentence(answer.answer)),
                    markOfAnswer(answer.weight));
        }
        for (const base::Fault& fault : signature.faults) {
            addFault(fault);
        }
    }
    for (const seal::Role role : m_found.waiting) {
        addHeading(meaningOf(role));
        addFact(QString(), tr("Not signed yet."), Mark::Open);
    }
    if (m_found.binding && m_bridge.isOpen()) {
        const auto state = workbook::stateOf(*m_bridge.workbook(), *m_found.binding);
        addHeading(tr("Beside the open workbook"));
        addFact(QString(), text::sentence({&workbook::meaning(state), {}, {}}),
                state == workbook::ReportState::Current ? Mark::Pass : Mark::Open);
    }
}

}  // namespace ww::ui
