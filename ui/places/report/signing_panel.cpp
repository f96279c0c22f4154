#include "ui/places/report/signing_panel.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QSaveFile>
#include <algorithm>

#include "core/seal/seal_messages.h"
#include "core/workbook/report_signing.h"
#include "ui/job_files.h"
#include "ui/places/report/certificate_dialog.h"
#include "ui/report/report_file_name.h"
#include "ui/report/report_writer.h"
#include "ui/report/signature_drawing.h"
#include "ui/text/words.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/pages_progress.h"
#include "ui/widgets/quiet_combo.h"

namespace ww::ui {
namespace {

QString keyFilter() {
    return SigningPanel::tr("Keys (*.p12 *.pfx)");
}

/// A key is some kilobytes; anything far larger is another file.
constexpr qint64 kMostKey = 1024 * 1024;

}  // namespace

SigningPanel::SigningPanel(WorkbookBridge& bridge, MakeReport make, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_make(std::move(make)),
      m_key(new HintedField(tr("key file, .p12"), this)),
      m_choose(new QPushButton(tr("Choose…"), this)),
      m_certificate(new QPushButton(tr("Make a Certificate…"), this)),
      m_passphrase(new HintedField(tr("asked each time, never kept"), this)),
      m_meaning(new QuietCombo(this)),
      m_signers(new QuietCombo(this)),
      m_sign(new QPushButton(tr("Sign…"), this)),
      m_why(new QLabel(this)),
      m_told(new QLabel(this)) {
    m_key->setAccessibleName(tr("Key file"));
    m_choose->setAccessibleName(tr("Choose the key file"));
    m_certificate->setAccessibleDescription(
        tr("Makes a key whose certificate vouches for itself; nobody else confirms the name"));
    m_passphrase->setEchoMode(QLineEdit::Password);
    m_passphrase->setAccessibleName(tr("Passphrase of the key"));
    m_meaning->addItems({tr("Readings taken by me"), tr("Reviewed and accepted by me")});
    m_meaning->setAccessibleName(tr("Meaning of my signature"));
    m_signers->addItems({tr("Technician and supervisor"), tr("Technician only")});
    m_signers->setAccessibleName(tr("Who signs this report"));
    m_why->setWordWrap(true);
    m_why->setTextFormat(Qt::PlainText);
    m_why->setAccessibleName(tr("Why nothing can be signed"));
    m_told->setWordWrap(true);
    m_told->setTextFormat(Qt::PlainText);
    m_told->setTextInteractionFlags(Qt::TextSelectableByMouse);
    for (QLineEdit* field : {m_key, m_passphrase}) {
        connect(field, &QLineEdit::textChanged, this, [this] {
            if (m_isRefused) {
                tell({}, true);
            }
        });
    }
    m_told->hide();
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(5);
    const auto label = [&](int row, const QString& words, QWidget* buddy) {
        auto* name = new QLabel(words, this);
        name->setBuddy(buddy);
        grid->addWidget(name, row, 0);
    };
    label(0, tr("Key"), m_key);
    grid->addWidget(m_key, 0, 1);
    grid->addWidget(m_choose, 0, 2);
    grid->addWidget(m_certificate, 1, 1, 1, 2);
    label(2, tr("Passphrase"), m_passphrase);
    grid->addWidget(m_passphrase, 2, 1, 1, 2);
    label(3, tr("Meaning"), m_meaning);
    grid->addWidget(m_meaning, 3, 1, 1, 2);
    label(4, tr("Signers"), m_signers);
    grid->addWidget(m_signers, 4, 1, 1, 2);
    grid->addWidget(m_sign, 5, 1, 1, 2);
    grid->addWidget(m_why, 6, 1, 1, 2);
    grid->addWidget(m_told, 7, 0, 1, 3);
    grid->setColumnStretch(1, 1);
    connect(m_choose, &QPushButton::clicked, this, &SigningPanel::chooseKey);
    connect(m_certificate, &QPushButton::clicked, this, &SigningPanel::askCertificate);
    connect(m_sign, &QPushButton::clicked, this, &SigningPanel::sign);
    connect(m_passphrase, &QLineEdit::returnPressed, this, &SigningPanel::sign);
    connect(m_meaning, &QComboBox::currentIndexChanged, this, &SigningPanel::refresh);
    connect(&m_bridge, &WorkbookBridge::changed, this, &SigningPanel::refresh);
    refresh();
}

seal::Role SigningPanel::role() const {
    return m_meaning->currentIndex() == 0 ? seal::Role::Technician : seal::Role::Supervisor;
}

void SigningPanel::setObstacles(std::size_t count) {
    if (count != m_obstacles) {
        // What was said of the former ones no longer holds.
        tell({}, true);
    }
    m_obstacles = count;
    refresh();
}

void SigningPanel::setWaiting(const QString& why) {
    m_waitsFor = why;
    refresh();
}

void SigningPanel::setKeyFile(const QString& file) {
    m_key->setText(file);
}

void SigningPanel::refresh() {
    // A supervisor's signature needs a place beside the technician's.
    if (role() == seal::Role::Supervisor) {
        m_signers->setCurrentIndex(0);
    }
    m_signers->setEnabled(role() == seal::Role::Technician);
    m_sign->setEnabled(m_bridge.isOpen() && !m_bridge.isReadOnly() && m_obstacles == 0 &&
                       m_waitsFor.isEmpty());
    const QString why = !m_bridge.isOpen()      ? QString()
                        : m_bridge.isReadOnly() ? tr("This workbook can only be read here.")
                        : m_obstacles > 0       ? tr("Still to do before signing: %1").arg(m_obstacles)
                                                : m_waitsFor;
    // In sight, not only where a mouse rests.
    m_why->setText(why);
    m_why->setVisible(!why.isEmpty());
    m_sign->setToolTip(why);
    m_sign->setAccessibleDescription(why);
}

void SigningPanel::tell(const QString& words, bool isGood) {
    QFont font = m_told->font();
    font.setBold(!isGood);
    m_told->setFont(font);
    m_isRefused = !isGood;
    m_told->setText(words);
    m_told->setVisible(!words.isEmpty());
}

void SigningPanel::chooseKey() {
    const QString file = QFileDialog::getOpenFileName(this, tr("Choose the Key File"),
                                                      QFileInfo(m_key->text()).absolutePath(), keyFilter());
    if (!file.isEmpty()) {
        setKeyFile(file);
        m_passphrase->setFocus();
    }
}

/// The newest signed report that still stands for the workbook, else a new name beside it.
QString SigningPanel::proposedFile() const {
    const QString folder = QFileInfo(m_bridge.file()).absolutePath() + '/';
    for (const project::SignedReport& report : m_bridge.project().signedReports()) {
        const QString file = folder + QString::fromStdString(report.fileName);
        if (workbook::stands(*m_bridge.workbook(), report) && report.role != seal::name(role()) &&
            QFileInfo::exists(file)) {
            return file;
        }
    }
    return folder + report::fileNameOf(m_make(ww::report::Signers::Technician));
}

void SigningPanel::sign() {
    if (!m_sign->isEnabled()) {
        tell(!m_waitsFor.isEmpty() ? m_waitsFor
                                   : text::sentence({&kNotReadyToSign, {}, {std::to_string(m_obstacles)}}),
             false);
        return;
    }
    if (!hasKeyAndPassphrase() || tellsOwnPart()) {
        return;
    }
    // A signed report that waits is signed on, nothing is overwritten: no question about that.
    const QString file =
        QFileDialog::getSaveFileName(this, tr("Sign the Report"), proposedFile(), tr("PDF files (*.pdf)"),
                                     nullptr, QFileDialog::DontConfirmOverwrite);
    if (!file.isEmpty()) {
        // The panel itself says what came of it.
        (void)signInto(std::filesystem::path(file.toStdString()));
    }
}

bool SigningPanel::hasKeyAndPassphrase() {
    const bool hasKey = !m_key->text().trimmed().isEmpty();
    if (hasKey && !m_passphrase->text().isEmpty()) {
        return true;
    }
    (hasKey ? m_passphrase : m_key)->setFocus(Qt::OtherFocusReason);
    tell(text::sentence({hasKey ? &kNoPassphrase : &kNoKeyChosen, {}, {}}), false);
    return false;
}

bool SigningPanel::tellsOwnPart() {
    const auto key = bytesOfFile(m_key->text(), kMostKey);
    QByteArray passphrase = m_passphrase->text().toUtf8();
    std::optional<seal::CertificateFacts> signer;
    if (key) {
        const auto identity = seal::Identity::open(
            *key, std::string_view(passphrase.constData(), static_cast<std::size_t>(passphrase.size())));
        signer = identity ? std::optional(identity->facts()) : std::nullopt;
    }
    passphrase.fill('\0');
    const auto own = signer ? workbook::ownPart(*m_bridge.workbook(), role(), *signer) : project::OwnPart();
    if (own.isNone() || m_toldOfOwn == signer->name) {
        return false;
    }
    m_toldOfOwn = signer->name;
    QStringList told;
    if (!own.rounds.empty()) {
        told << text::sentence({&kReviewOfOwn, {}, {signer->name, own.rounds}});
    }
    if (own.hasBothRoles) {
        told << text::sentence({&kSignedBothRoles, {}, {signer->name}});
    }
    tell(told.join('\n'), false);
    return true;
}

QString SigningPanel::nextSigner(const project::SignedReport& signature) const {
    const auto& reports = m_bridge.project().signedReports();
    const bool isAlone = m_signers->currentIndex() != 0;
    const bool isOtherThere =
        std::any_of(reports.begin(), reports.end(), [&](const project::SignedReport& other) {
            return other.revision == signature.revision && other.role != signature.role && !other.isWithdrawn;
        });
    if (isAlone || isOtherThere) {
        return {};
    }
    return role() == seal::Role::Technician
               ? tr("Next the supervisor signs this file: Reviewed and accepted by me.")
               : tr("Next the technician signs this file: Readings taken by me.");
}

base::Outcome SigningPanel::signInto(const std::filesystem::path& file) {
    QByteArray passphrase = m_passphrase->text().toUtf8();
    m_passphrase->clear();
    m_toldOfOwn.clear();
    const auto done = [&]() -> base::Result<project::SignedReport> {
        if (m_obstacles > 0) {
            return base::Fault{&kNotReadyToSign, {}, {std::to_string(m_obstacles)}};
        }
        const auto key = bytesOfFile(m_key->text(), kMostKey);
        if (!key) {
            return base::Fault{&kKeyFileMissing, {}, {m_key->text().toStdString()}};
        }
        const auto identity = seal::Identity::open(
            *key, std::string_view(passphrase.constData(), static_cast<std::size_t>(passphrase.size())));
        if (!identity) {
            return identity.fault();
        }
        const auto signers = m_signers->currentIndex() == 0 ? ww::report::Signers::TechnicianAndSupervisor
                                                            : ww::report::Signers::Technician;
        const auto draw = [&] {
            PagesProgress progress(this);
            report::Waiting waiting;
            waiting.layingOut = [&](std::size_t pages) { return progress.layingOut(pages); };
            waiting.writing = [&](std::size_t pages) { return progress.writing(pages); };
            return report::reportToSign(m_make(signers), m_bridge.project(), waiting);
        };
        return m_bridge.signReport({role(), *identity, file, draw, report::drawBlock});
    }();
    passphrase.fill('\0');
    if (!done) {
        tell(text::text(done.fault()), false);
        if (done.fault().is(seal::kPassphraseWrong)) {
            m_passphrase->setFocus(Qt::OtherFocusReason);
        }
        return done.fault();
    }
    QString words = tr("Signed by %1 as %2: %3")
                        .arg(QString::fromStdString(done->signer), text::term(done->role),
                             QString::fromStdString(file.string()));
    if (done->isSelfMade) {
        words += '\n' + tr("The certificate is self-made: nobody else vouches for the name.");
    }
    if (const QString next = nextSigner(*done); !next.isEmpty()) {
        words += '\n' + next;
    }
    tell(words, true);
    return base::Done{};
}

void SigningPanel::askCertificate() {
    const QString person = QString::fromStdString(m_bridge.reviewContext().person);
    CertificateDialog dialog(person, this);
    if (dialog.exec() != QDialog::Accepted) {
        return;
    }
    const QString proposal = QFileInfo(m_bridge.file()).absolutePath() + '/' +
                             QString::fromStdString(dialog.who().name).simplified().replace('/', '-') +
                             ".p12";
    const QString file = QFileDialog::getSaveFileName(this, tr("Keep the Key"), proposal, keyFilter(),
                                                      nullptr, QFileDialog::DontConfirmOverwrite);
    if (!file.isEmpty()) {
        // The panel itself says what came of it.
        (void)makeCertificate(dialog.who(), dialog.passphrase(), file);
    }
}

base::Outcome SigningPanel::makeCertificate(const seal::SelfMade& who, const QString& passphrase,
                                            const QString& file) {
    const auto done = [&]() -> base::Outcome {
        if (QFileInfo::exists(file)) {
            return base::Fault{&kKeyFileStands, {}, {file.toStdString()}};
        }
        const auto key = seal::makeSelfMade(who, passphrase.toStdString(), m_bridge.now());
        if (!key) {
            return key.fault();
        }
        QSaveFile out(file);
        const auto size = static_cast<qint64>(key->size());
        const bool isWritten = out.open(QIODevice::WriteOnly) &&
                               out.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) &&
                               out.write(key->data(), size) == size && out.commit();
        return isWritten
                   ? base::Outcome(base::Done{})
                   : base::Outcome(base::Fault{
                         &kKeyFileUnwritten, {}, {file.toStdString(), out.errorString().toStdString()}});
    }();
    if (!done) {
        tell(text::text(done.fault()), false);
        return done;
    }
    setKeyFile(file);
    tell(text::sentence({&kCertificateMade, {}, {file.toStdString()}}), true);
    return done;
}

}  // namespace ww::ui
