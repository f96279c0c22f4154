#include "ui/widgets/control_keys.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>

#include "ui/widgets/entry_field.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/note_field.h"
#include "ui/widgets/try_field.h"

namespace ww::ui {
namespace {

struct ControlKeys {
    Q_DECLARE_TR_FUNCTIONS(ww::ui::ControlKeys)

  public:
    static KeyHints ofTable(const EntryTable& table) {
        const QModelIndex cell = table.currentIndex();
        if (table.isEditing()) {
            return KeyHints()
                .add(tr("Enter stores"))
                .add(tr("Esc restores"))
                .add(tr("Tab right"), !table.isRefused());
        }
        return KeyHints()
            .add(tr("type to change a cell"), table.canType())
            .add(table.entersByRow() ? tr("Enter next cell") : tr("Enter down"), hasCellAfter(table, cell))
            .add(tr("Space changes the tick"), cell.flags().testFlag(Qt::ItemIsUserCheckable))
            .add(tr("F6 leaves the table"));
    }

    static bool hasCellAfter(const EntryTable& table, const QModelIndex& cell) {
        const bool isInLastColumn = cell.column() + 1 == table.model()->columnCount();
        return cell.isValid() &&
               ((table.entersByRow() && !isInLastColumn) || cell.row() + 1 < table.model()->rowCount());
    }

    static KeyHints ofField(const EntryField& field) {
        if (field.isTyped()) {
            return KeyHints().add(tr("Enter stores")).add(tr("Esc restores")).add(tr("Tab next field"));
        }
        return KeyHints().add(tr("type to change it"), !field.isReadOnly()).add(tr("Tab next field"));
    }

    static KeyHints ofText(const QPlainTextEdit& text) {
        const auto* note = qobject_cast<const NoteField*>(&text);
        const bool isTyped = note != nullptr && note->isTyped();
        return KeyHints()
            .add(tr("Ctrl+Enter stores"), isTyped)
            .add(tr("Esc restores"), isTyped)
            .add(tr("type to change it"), !text.isReadOnly() && !isTyped)
            .add(tr("Tab next field"), text.tabChangesFocus());
    }

    static KeyHints ofButton(const QAbstractButton& button) {
        const auto* push = qobject_cast<const QPushButton*>(&button);
        if (qobject_cast<const QCheckBox*>(&button) != nullptr) {
            return KeyHints().add(tr("Space changes the tick"));
        }
        if (qobject_cast<const QRadioButton*>(&button) != nullptr) {
            return KeyHints().add(tr("Up, Down choose"));
        }
        const bool takesEnter = push != nullptr && (push->autoDefault() || push->isDefault());
        return KeyHints().add(takesEnter ? tr("Enter presses the button") : tr("Space presses the button"));
    }

    static KeyHints ofRows(const QAbstractItemView& view) {
        const QAbstractItemModel* model = view.model();
        const QModelIndex cell = view.currentIndex();
        const bool isTyped = view.editTriggers().testFlag(QAbstractItemView::AnyKeyPressed) &&
                             cell.flags().testFlag(Qt::ItemIsEditable);
        return KeyHints()
            .add(tr("type to change a cell"), isTyped)
            .add(tr("Up, Down rows"), view.selectionMode() != QAbstractItemView::NoSelection &&
                                          model != nullptr && model->rowCount(view.rootIndex()) > 1);
    }

    static KeyHints ofPages(const QTabBar& tabs) {
        return KeyHints().add(tr("Left, Right pages"), tabs.count() > 1);
    }

    static KeyHints ofChoice(const QComboBox& choice) {
        return KeyHints().add(tr("Up, Down choose"), choice.count() > 1).add(tr("Tab next field"));
    }

    static KeyHints ofArea(const QScrollArea& area) {
        return KeyHints().add(tr("Up, Down scroll"), area.verticalScrollBar()->maximum() > 0);
    }
};

const EntryTable* tableOf(const QWidget& control) {
    const auto* table = qobject_cast<const EntryTable*>(&control);
    const QWidget* port = control.parentWidget();
    return table != nullptr || port == nullptr ? table
                                               : qobject_cast<const EntryTable*>(port->parentWidget());
}

}  // namespace

KeyHints controlKeys(const QWidget& control) {
    if (const EntryTable* table = tableOf(control)) {
        return ControlKeys::ofTable(*table);
    }
    if (const auto* field = qobject_cast<const EntryField*>(&control)) {
        return ControlKeys::ofField(*field);
    }
    if (const auto* text = qobject_cast<const QPlainTextEdit*>(&control)) {
        return ControlKeys::ofText(*text);
    }
    if (const auto* button = qobject_cast<const QAbstractButton*>(&control)) {
        return ControlKeys::ofButton(*button);
    }
    if (const auto* tabs = qobject_cast<const QTabBar*>(&control)) {
        return ControlKeys::ofPages(*tabs);
    }
    if (const auto* choice = qobject_cast<const QComboBox*>(&control)) {
        return ControlKeys::ofChoice(*choice);
    }
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&control)) {
        return ControlKeys::ofRows(*view);
    }
    if (const auto* area = qobject_cast<const QScrollArea*>(&control)) {
        return ControlKeys::ofArea(*area);
    }
    return {};
}

bool undoesItsOwn(const QWidget& control) {
    if (const auto* field = qobject_cast<const HintedField*>(&control)) {
        return field->undoesItsOwn();
    }
    if (const auto* field = qobject_cast<const TryField*>(&control)) {
        return !field->text().isEmpty();
    }
    const auto* text = qobject_cast<const QPlainTextEdit*>(&control);
    return qobject_cast<const QLineEdit*>(&control) != nullptr || (text != nullptr && !text->isReadOnly());
}

}  // namespace ww::ui
