// Asks whose certificate is to be made, and for its passphrase. Not for making it (seal/identity.h).
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/seal/identity.h"
#include "ui/widgets/ordered_dialog.h"

namespace ww::ui {

class CertificateDialog : public OrderedDialog {
    Q_OBJECT

  public:
    explicit CertificateDialog(const QString& person, QWidget* parent = nullptr);

    seal::SelfMade who() const;
    QString passphrase() const { return m_passphrase->text(); }

  private:
    void refresh();

    QLineEdit* m_name;
    QLineEdit* m_firm;
    QLineEdit* m_passphrase;
    QLineEdit* m_again;
    QLabel* m_missing;
    QPushButton* m_make;
};

}  // namespace ww::ui
