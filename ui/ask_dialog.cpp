#include "ui/ask_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ww::ui {
namespace {

constexpr int kAskWidth = 460;

}  // namespace

AskDialog::AskDialog(const QString& title, const QString& words, const QString& name, QWidget* field,
                     const QString& verb, QWidget* parent)
    : OrderedDialog(parent) {
    setWindowTitle(title);
    auto* said = new QLabel(words, this);
    said->setWordWrap(true);
    field->setAccessibleName(QString(name).remove('&'));
    auto* form = new QFormLayout;
    form->addRow(name, field);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    buttons->addButton(verb, QDialogButtonBox::AcceptRole)->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* content = new QVBoxLayout;
    content->addWidget(said);
    content->addLayout(form);
    layOut(content, buttons);
    resizeToWords(kAskWidth);
}

}  // namespace ww::ui
