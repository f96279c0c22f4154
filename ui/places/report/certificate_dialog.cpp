#include "ui/places/report/certificate_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QVBoxLayout>

namespace ww::ui {
namespace {

constexpr int kWidth = 460;

}  // namespace

CertificateDialog::CertificateDialog(const QString& person, QWidget* parent)
    : OrderedDialog(parent),
      m_name(new QLineEdit(person, this)),
      m_firm(new QLineEdit(this)),
      m_passphrase(new QLineEdit(this)),
      m_again(new QLineEdit(this)),
      m_missing(new QLabel(this)),
      m_make(new QPushButton(tr("Make Certificate"), this)) {
    setWindowTitle(tr("Make a Certificate"));
    auto* said = new QLabel(
        tr("A self-made certificate shows that reports come from the same hand. Nobody else vouches for the "
           "name, so verifying never calls it trusted: tell its fingerprint to whoever must rely on it, or "
           "use a key that an issuer of certificates gave you."),
        this);
    said->setWordWrap(true);
    for (QLineEdit* field : {m_passphrase, m_again}) {
        field->setEchoMode(QLineEdit::Password);
    }
    m_missing->setWordWrap(true);
    auto* form = new QFormLayout;
    form->addRow(tr("Name of the person"), m_name);
    form->addRow(tr("Firm"), m_firm);
    form->addRow(tr("Passphrase"), m_passphrase);
    form->addRow(tr("The same again"), m_again);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    buttons->addButton(m_make, QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* content = new QVBoxLayout;
    content->addWidget(said);
    content->addLayout(form);
    content->addWidget(m_missing);
    layOut(content, buttons);
    m_name->setAccessibleName(tr("Name of the person"));
    m_firm->setAccessibleName(tr("Firm"));
    m_passphrase->setAccessibleName(tr("New passphrase"));
    m_again->setAccessibleName(tr("The same passphrase again"));
    for (QLineEdit* field : {m_name, m_firm, m_passphrase, m_again}) {
        connect(field, &QLineEdit::textChanged, this, &CertificateDialog::refresh);
    }
    refresh();
    resizeToWords(kWidth);
}

seal::SelfMade CertificateDialog::who() const {
    seal::SelfMade who;
    who.name = m_name->text().trimmed().toStdString();
    who.organization = m_firm->text().trimmed().toStdString();
    return who;
}

void CertificateDialog::refresh() {
    const QString missing =
        m_name->text().trimmed().isEmpty() ? tr("Type the name of the person.")
        : m_passphrase->text().toUtf8().size() < seal::kShortestPassphrase
            ? tr("The passphrase needs %1 characters or more.").arg(seal::kShortestPassphrase)
        : m_passphrase->text() != m_again->text() ? tr("The two passphrases are not the same.")
                                                  : QString();
    m_missing->setText(missing);
    m_make->setEnabled(missing.isEmpty());
}

}  // namespace ww::ui
