// The part of the place Report where a person signs: key file, passphrase, meaning, who else will sign. The
// passphrase is asked for each time and never kept. Not for the signature itself
// (core/workbook/report_signing.h).
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <filesystem>
#include <functional>

#include "core/report/report.h"
#include "core/seal/identity.h"
#include "core/seal/role.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

inline constexpr base::MessageForm kKeyFileMissing{
    "key_file_missing", "no key file could be read at {1}; choose one, or make a certificate"};
inline constexpr base::MessageForm kNoKeyChosen{"no_key_chosen",
                                                "no key file is chosen; choose one, or make a certificate"};
inline constexpr base::MessageForm kNoPassphrase{"no_passphrase",
                                                 "the passphrase of the key is missing; type it here"};
inline constexpr base::MessageForm kNotReadyToSign{
    "not_ready_to_sign", "lines of the list still stand in the way: {1}; settle them, or give the reason"};
inline constexpr base::MessageForm kCertificateMade{
    "certificate_made",
    "a key with a self-made certificate is in {1}; keep its passphrase, nobody can find it"};
inline constexpr base::MessageForm kKeyFileStands{
    "key_file_stands", "a file stands at {1} and is not overwritten; give the key another name"};
inline constexpr base::MessageForm kKeyFileUnwritten{
    "key_file_unwritten", "the key could not be written to {1} ({2}); choose a folder that can be written"};

inline constexpr base::MessageForm kReviewOfOwn{"review_of_own",
                                                "{1} read or sent rounds {2}, and the report tells it beside "
                                                "the signature; let somebody else review them, or "
                                                "sign once more"};

inline constexpr base::MessageForm kSignedBothRoles{
    "signed_both_roles",
    "{1} signed this revision in the other role too, and the report tells it beside the signature; let "
    "somebody else sign, or sign once more"};

class SigningPanel : public QWidget {
    Q_OBJECT

  public:
    /// Makes the report that these are to sign.
    using MakeReport = std::function<ww::report::Report(ww::report::Signers)>;

    SigningPanel(WorkbookBridge& bridge, MakeReport make, QWidget* parent = nullptr);

    /// How many lines stand in the way; 0 allows signing.
    void setObstacles(std::size_t count);
    /// While the loop is being learned or the pages are being made nothing is signed: the window would have
    /// to wait for it. `why`: a sentence; empty: nothing is waited for.
    void setWaiting(const QString& why);
    /// Signs into a file, new or a signed report that waits for this role; tells in the panel what came of
    /// it. The passphrase is forgotten whatever comes of it.
    base::Outcome signInto(const std::filesystem::path& file);
    /// Makes a key with a self-made certificate; the file must not be there yet.
    base::Outcome makeCertificate(const seal::SelfMade& who, const QString& passphrase, const QString& file);
    void setKeyFile(const QString& file);

  public slots:
    /// Asks for the file, then signs.
    void sign();
    /// Asks for a name and a passphrase, then makes a certificate.
    void askCertificate();

  private:
    void chooseKey();
    void refresh();
    void tell(const QString& words, bool isGood);
    seal::Role role() const;
    QString proposedFile() const;
    /// Puts the keys where something is missing for signing and says what; whether nothing is.
    bool hasKeyAndPassphrase();
    /// Tells who signs, once, what he did himself besides; whether it was told now.
    bool tellsOwnPart();
    /// Who must sign this revision next; empty where nobody must.
    QString nextSigner(const project::SignedReport& signature) const;

    WorkbookBridge& m_bridge;
    MakeReport m_make;
    QLineEdit* m_key;
    QPushButton* m_choose;
    QPushButton* m_certificate;
    QLineEdit* m_passphrase;
    QComboBox* m_meaning;
    QComboBox* m_signers;
    QPushButton* m_sign;
    QLabel* m_why;  ///< below it while it cannot be pressed
    QLabel* m_told;
    bool m_isRefused = false;  ///< what was told is why nothing was signed
    std::string m_toldOfOwn;   ///< the signer who was told; empty: nobody
    std::size_t m_obstacles = 0;
    QString m_waitsFor;
};

}  // namespace ww::ui
