// What stands in a field is what a person typed, on every page and in every dialog: no turned wheel changes
// it, no field takes a digit away.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPointer>
#include <QRadioButton>
#include <QTabBar>
#include <QTableView>
#include <QWheelEvent>
#include <vector>

#include "tests/support/whole_job.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_dialog.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/spoken_name.h"
#include "ui/widgets/entry_field.h"

namespace ww::ui {
namespace {

using support::DeskWindow;

/// What a control stands at; invalid where it has no value.
QVariant valueOf(const QWidget& widget) {
    if (const auto* combo = qobject_cast<const QComboBox*>(&widget)) {
        return combo->currentText();
    }
    if (const auto* field = qobject_cast<const QLineEdit*>(&widget)) {
        return field->text();
    }
    if (const auto* text = qobject_cast<const QPlainTextEdit*>(&widget)) {
        return text->toPlainText();
    }
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget)) {
        return view->currentIndex().isValid() ? view->currentIndex().row() : -1;
    }
    const bool isTicked = widget.inherits("QCheckBox") || widget.inherits("QRadioButton");
    return isTicked ? QVariant(static_cast<const QAbstractButton&>(widget).isChecked()) : QVariant();
}

void turnWheel(QWidget& widget, int by) {
    QWheelEvent wheel({5, 5}, widget.mapToGlobal(QPointF(5, 5)), {}, {0, by}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&widget, &wheel);
}

/// How many values there are in a window, none of which a wheel may change.
int turnWheelOverAll(QWidget& window) {
    int values = 0;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        const QVariant shown = valueOf(*widget);
        if (!shown.isValid() || !widget->isVisible() || widget->window() != &window) {
            continue;
        }
        ++values;
        for (const bool hasFocus : {false, true}) {
            if (hasFocus) {
                widget->setFocus();
            }
            const QVariant before = valueOf(*widget);
            for (const int by : {120, -120, -120}) {
                turnWheel(*widget, by);
                EXPECT_EQ(valueOf(*widget), before) << support::spokenName(*widget).toStdString();
            }
        }
    }
    return values;
}

TEST(TypedValue, staysUnderAWheelOnEveryPage) {
    DeskWindow desk;
    desk.enter("20.0");
    const auto before = support::recordsOf(desk.project());
    support::eachPage(desk.window, [&](const QString& page) {
        QTest::qWait(20);
        SCOPED_TRACE(page.toStdString());
        EXPECT_GE(turnWheelOverAll(desk.window), 1);
    });
    EXPECT_EQ(support::recordsOf(desk.project()), before);
}

TEST(TypedValue, staysUnderAWheelInEveryDialog) {
    DeskWindow desk(support::jobForDialogs(), false);
    const auto before = support::recordsOf(desk.project());
    int values = 0;
    support::eachDialog(desk, [&](QWidget& dialog) {
        QTest::qWait(20);
        SCOPED_TRACE(dialog.windowTitle().toStdString());
        values += turnWheelOverAll(dialog);
    });
    EXPECT_GE(values, 40);
    EXPECT_EQ(support::recordsOf(desk.project()), before);
}

/// The fields of a window that take typing. What is left of one may make others anew.
std::vector<QPointer<QLineEdit>> fieldsOf(const QWidget& window) {
    std::vector<QPointer<QLineEdit>> fields;
    for (QLineEdit* field : window.findChildren<QLineEdit*>()) {
        if (field->isVisible() && field->isEnabled() && !field->isReadOnly() && field->window() == &window) {
            fields.emplace_back(field);
        }
    }
    return fields;
}

void typeOver(QLineEdit& field, const QString& text) {
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, text);
    EXPECT_EQ(field.text(), text) << support::spokenName(field).toStdString();
}

TEST(TypedValue, aNumberStaysAsItIsTypedInEveryField) {
    DeskWindow desk;
    support::eachPage(desk.window, [&](const QString& page) {
        QTest::qWait(20);
        SCOPED_TRACE(page.toStdString());
        for (const QPointer<QLineEdit>& field : fieldsOf(desk.window)) {
            if (field && field->isVisible() && field->isEnabled() && !field->isReadOnly()) {
                typeOver(*field, "250");
                desk.key(Qt::Key_Escape);
            }
        }
    });
}

bool isSaid(const QWidget& window, const QString& words) {
    const auto labels = window.findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(), [&](const QLabel* label) {
        return label->isVisible() && label->text().contains(words);
    });
}

/// A field that stores what it holds refuses it with a message, or has it afterwards.
TEST(TypedValue, aNumberStaysAsItIsTypedInEveryFieldOfADialog) {
    DeskWindow desk(support::jobForDialogs(), false);
    int count = 0;
    support::eachDialog(desk, [&](QWidget& dialog) {
        QTest::qWait(20);
        SCOPED_TRACE(dialog.windowTitle().toStdString());
        for (const QPointer<QLineEdit>& field : fieldsOf(dialog)) {
            ASSERT_TRUE(field && field->isVisible());
            ++count;
            typeOver(*field, "250");
            if (const auto* entry = qobject_cast<EntryField*>(field.data())) {
                QTest::keyClick(field, Qt::Key_Return);
                EXPECT_TRUE(entry->stored() == "250" || isSaid(dialog, "\"250\""))
                    << "neither stored nor refused";
            }
            QTest::keyClick(field, Qt::Key_Tab);
            EXPECT_TRUE(field && field->text() == "250") << support::spokenName(*field).toStdString();
        }
    });
    EXPECT_GE(count, 9);
}

TEST(TypedValue, aNumberStaysAsItIsTypedInEveryCellOfADialog) {
    DeskWindow desk(support::jobForDialogs(), false);
    int count = 0;
    support::eachDialog(desk, [&](QWidget& dialog) {
        QTest::qWait(20);
        for (QTableView* table : dialog.findChildren<QTableView*>()) {
            if (table->editTriggers() == QAbstractItemView::NoEditTriggers) {
                continue;
            }
            const QAbstractItemModel& model = *table->model();
            for (int column = 0; column < model.columnCount(); ++column) {
                const QModelIndex cell = model.index(0, column);
                if (!table->isVisible() || !(cell.flags() & Qt::ItemIsEditable)) {
                    continue;
                }
                ++count;
                table->setFocus();
                table->setCurrentIndex(cell);
                table->edit(cell);
                auto* editor = qobject_cast<QLineEdit*>(QApplication::focusWidget());
                ASSERT_NE(editor, nullptr);
                typeOver(*editor, "250");
                QTest::keyClick(editor, Qt::Key_Return);
                QTest::qWait(0);
                EXPECT_TRUE(cell.data().toString().endsWith("250")) << cell.data().toString().toStdString();
            }
        }
    });
    EXPECT_GE(count, 4);
}

}  // namespace
}  // namespace ww::ui
