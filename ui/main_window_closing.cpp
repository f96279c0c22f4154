// What happens to typed text when the main window closes: stored as Enter would, or shown where it is
// refused.
#include <QApplication>
#include <QCloseEvent>
#include <QPointer>
#include <QTabWidget>

#include "ui/main_window.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/note_field.h"

namespace ww::ui {
namespace {

/// Stores what is typed in all fields of a kind; false at the first that refuses and that `show` can show.
template <class Field>
bool storeAll(const QWidget& parent, bool (Field::*store)(), const std::function<bool(QWidget*)>& show) {
    QList<QPointer<Field>> fields;
    for (Field* field : parent.findChildren<Field*>()) {
        fields << field;
    }
    for (const QPointer<Field>& field : fields) {
        // Storing one may take the page of others away.
        if (field && !(field->*store)() && field && show(field)) {
            return false;
        }
    }
    return true;
}

/// Whether a field holds what was typed in an earlier session: it keeps no window open and stays kept.
bool isOffered(const QWidget& field) {
    const auto* table = qobject_cast<const EntryTable*>(&field);
    const auto* line = qobject_cast<const EntryField*>(&field);
    return (table != nullptr && table->isOffered()) || (line != nullptr && line->isOffered());
}

}  // namespace

bool MainWindow::storeTyped() {
    const auto show = [this](QWidget* field) { return !isOffered(*field) && showRefused(field); };
    if (!storeAll(*this, &EntryTable::commitEdit, show) || !storeAll(*this, &EntryField::commit, show) ||
        !storeAll(*this, &NoteField::commit, show)) {
        return false;
    }
    auto* adjust = there<AdjustPlace>(Adjust);
    QWidget* refused = adjust != nullptr ? adjust->storeFields() : nullptr;
    if (refused != nullptr && showRefused(refused)) {
        return false;
    }
    if (QWidget* field = focusWidget()) {
        // Other fields store when they are left.
        field->clearFocus();
    }
    return true;
}

void MainWindow::tellLeftBehind(const QWidget& place) {
    const auto isTold = [](QWidget*) { return true; };
    if (!storeAll(place, &EntryTable::commitEdit, isTold) || !storeAll(place, &EntryField::commit, isTold)) {
        return;
    }
    auto* adjust = there<AdjustPlace>(Adjust);
    if (adjust != nullptr && place.isAncestorOf(adjust)) {
        adjust->tellTyped();
    }
}

bool MainWindow::showRefused(QWidget* field) {
    const QString why = m_notice->message();
    for (int i = 0; i < kPlaces; ++i) {
        if (m_stack->widget(i)->isAncestorOf(field) && place() != i) {
            showPlace(static_cast<Place>(i));
        }
    }
    for (QWidget* at = field; at->parentWidget() != nullptr; at = at->parentWidget()) {
        auto* tabs = qobject_cast<QTabWidget*>(at->parentWidget()->parentWidget());
        if (tabs != nullptr && tabs->indexOf(at) >= 0) {
            tabs->setCurrentWidget(at);
        }
    }
    // A panel that was left keeps no window open: what it refused was told when it was left.
    if (!field->isVisible()) {
        return false;
    }
    if (auto* line = qobject_cast<QLineEdit*>(field)) {
        line->setFocus(Qt::OtherFocusReason);
        line->selectAll();
    } else {
        field->setFocus(Qt::OtherFocusReason);
    }
    m_notice->showMessage(why, true);
    return true;
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!storeTyped()) {
        event->ignore();
        return;
    }
    m_preferences.setWindowGeometry(saveGeometry());
    rememberClosed();
    QMainWindow::closeEvent(event);
}

}  // namespace ww::ui
