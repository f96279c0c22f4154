#include "ui/key_list.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/places/wrapped_rows.h"

namespace ww::ui {
namespace {

QString plain(QString text) {
    text.remove('&');
    if (text.endsWith(QChar(0x2026))) {
        text.chop(1);
    }
    return text;
}

QString keysOf(const QAction& action) {
    QStringList keys;
    for (const QKeySequence& key : action.shortcuts()) {
        keys << key.toString(QKeySequence::NativeText);
    }
    // Two keys may bear one name: Return and the Enter of the number pad.
    keys.removeDuplicates();
    return keys.join(QStringLiteral(", "));
}

}  // namespace

KeyList::KeyList(const Commands& commands, QWidget* parent) : OrderedDialog(parent) {
    setWindowTitle(tr("Keys"));
    const QList<QPair<QString, QString>> walking{
        {tr("Store the reading and go to the next valve"), tr("digits, Enter")},
        {tr("Walk past a valve"), tr("Enter alone")},
        {tr("Record that a valve cannot be read"), tr("x, Enter")},
        {tr("Change this valve's setting"), tr("Tab")},
        {tr("Go back one valve"), tr("Shift+Enter")},
        {tr("Store and move up or down"), tr("Up, Down")},
        {tr("Take back what is being typed"), tr("Esc")},
        {tr("Type a unit behind the digits"), tr("k kPa, m mbar, p psi, i inH₂O, f ftH₂O")},
        {tr("Leave the grid"), tr("Ctrl+Tab, F6")},
        {tr("In Adjust: log a try at the setting shown"), tr("digits, Enter")},
        {tr("In Adjust: follow the hand by one step, by one turn"), tr("Up, Down; PgUp, PgDn")},
        {tr("In Adjust: take an advised setting from the table"), tr("Enter in the table")},
        {tr("In the diagram of System: follow the pipe, open the valve"), tr("arrows, Enter")},
        {tr("In the diagram of System: larger, smaller, the whole loop"), tr("+, -, 0")},
        {tr("In Instruments and People: remove the row in hand"), tr("Del")},
    };
    auto* table = new QTableWidget(0, 2, this);
    table->setHorizontalHeaderLabels({tr("Command"), tr("Keys")});
    table->setAccessibleName(tr("Commands and their keys"));
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    new WrappedRows(*table, 1);
    const auto add = [&](const QString& command, const QString& keys) {
        const int row = table->rowCount();
        table->insertRow(row);
        table->setItem(row, 0, new QTableWidgetItem(command));
        auto* item = new QTableWidgetItem(keys);
        item->setData(Qt::AccessibleTextRole, command + QStringLiteral(", ") + keys);
        table->setItem(row, 1, item);
    };
    for (const auto& [command, keys] : walking) {
        add(command, keys);
    }
    for (const QAction* action : commands.all()) {
        add(plain(action->text()), keysOf(*action));
    }
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(table);
    layout->addWidget(buttons);
    resizeWithText(640, 560);
}

}  // namespace ww::ui
