#include "ui/table_faults_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace ww::ui {

TableFaultsDialog::TableFaultsDialog(const QStringList& faults, QWidget* parent) : OrderedDialog(parent) {
    setWindowTitle(QObject::tr("Nothing Was Made"));
    auto* head =
        new QLabel(QObject::tr("%n place(s) in the tables must be mended first. Each line names the file, "
                               "the row and the column.",
                               nullptr, static_cast<int>(faults.size())),
                   this);
    head->setWordWrap(true);
    auto* list = new QPlainTextEdit(faults.join('\n'), this);
    list->setReadOnly(true);
    list->setAccessibleName(QObject::tr("Faults in the tables"));
    list->setTabChangesFocus(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(head);
    layout->addWidget(list, 1);
    layout->addWidget(buttons);
    resizeWithText(860, 420);
}

}  // namespace ww::ui
