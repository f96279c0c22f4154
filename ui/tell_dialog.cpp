#include "ui/tell_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QVBoxLayout>

namespace ww::ui {
namespace {

constexpr int kTellWidth = 460;

}  // namespace

TellDialog::TellDialog(const QString& title, const QString& words, QWidget* parent) : OrderedDialog(parent) {
    setWindowTitle(title);
    auto* said = new QLabel(words, this);
    said->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* content = new QVBoxLayout;
    content->addWidget(said);
    layOut(content, buttons);
    resizeToWords(kTellWidth);
}

}  // namespace ww::ui
