// The stops of Tab in windows made by hand, whose order is plain to the eye. The windows of the program are
// in acceptance/access_test.cpp.
#include <gtest/gtest.h>

#include <QButtonGroup>
#include <QFormLayout>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>
#include <QVBoxLayout>

#include "ui/widgets/ordered_dialog.h"
#include "ui/widgets/reading_order.h"

namespace ww::ui {
namespace {

QLineEdit* fieldNamed(const QString& name, QWidget* parent) {
    auto* field = new QLineEdit(parent);
    field->setObjectName(name);
    return field;
}

/// The names of the stops of a page, in their order.
QString namesOfStops(QWidget& page) {
    QStringList names;
    for (const QWidget* stop : stopsInReadingOrder(page)) {
        names << stop->objectName();
    }
    return names.join(' ');
}

TEST(ReadingOrder, followsLayoutsAndNotWhatWasMadeFirst) {
    QWidget page;
    QWidget* d = fieldNamed("d", &page);
    QWidget* c = fieldNamed("c", &page);
    QWidget* b = fieldNamed("b", &page);
    QWidget* a = fieldNamed("a", &page);
    QWidget* f = fieldNamed("f", &page);
    QWidget* e = fieldNamed("e", &page);
    auto* grid = new QGridLayout;
    grid->addWidget(d, 1, 1);
    grid->addWidget(b, 0, 1);
    grid->addWidget(a, 0, 0);
    grid->addWidget(c, 1, 0);
    auto* form = new QFormLayout;
    form->addRow("f", f);
    form->insertRow(0, "e", e);
    auto* column = new QVBoxLayout(&page);
    column->addLayout(form);
    column->insertLayout(0, grid);
    page.show();
    EXPECT_EQ(namesOfStops(page).toStdString(), "a b c d e f");
}

TEST(ReadingOrder, takesColumnsOneAfterTheOtherAndBoxesInTheirDirection) {
    QWidget page;
    auto* row = new QHBoxLayout(&page);
    row->setDirection(QBoxLayout::RightToLeft);
    auto* right = new QVBoxLayout;
    right->addWidget(fieldNamed("c", &page));
    right->addWidget(fieldNamed("d", &page));
    auto* left = new QVBoxLayout;
    left->setDirection(QBoxLayout::BottomToTop);
    left->addWidget(fieldNamed("b", &page));
    left->addWidget(fieldNamed("a", &page));
    row->addLayout(right);
    row->addLayout(left);
    page.show();
    EXPECT_EQ(namesOfStops(page).toStdString(), "a b c d");
    page.setLayoutDirection(Qt::RightToLeft);
    EXPECT_EQ(namesOfStops(page).toStdString(), "a b c d") << "mirrored, and read from the right";
}

TEST(ReadingOrder, goesIntoSplittersTabsAreasAndWhatNoLayoutPlaces) {
    QSplitter page;
    auto* free = new QWidget;
    QWidget* below = fieldNamed("below", free);
    QWidget* above = fieldNamed("above", free);
    below->setGeometry(0, 60, 40, 20);
    above->setGeometry(0, 10, 40, 20);
    auto* tabs = new QTabWidget;
    tabs->tabBar()->setObjectName("bar");
    tabs->addTab(fieldNamed("shown", nullptr), "1");
    tabs->addTab(fieldNamed("hidden", nullptr), "2");
    auto* area = new QScrollArea;
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(fieldNamed("inArea", nullptr));
    page.addWidget(tabs);
    page.addWidget(area);
    page.insertWidget(0, free);
    page.show();
    EXPECT_EQ(namesOfStops(page).toStdString(), "above below bar shown inArea");
    tabs->setCurrentIndex(1);
    EXPECT_EQ(namesOfStops(page).toStdString(), "above below bar hidden inArea");
    above->setEnabled(false);
    EXPECT_EQ(namesOfStops(page).toStdString(), "below bar hidden inArea");
}

TEST(ReadingOrder, takesOneButtonOfThoseThatExcludeOneAnother) {
    QWidget page;
    auto* row = new QHBoxLayout(&page);
    auto* group = new QButtonGroup(&page);
    for (const char* name : {"a", "b", "c"}) {
        auto* button = new QRadioButton(name, &page);
        button->setObjectName(name);
        group->addButton(button);
        row->addWidget(button);
    }
    row->addWidget(fieldNamed("field", &page));
    page.show();
    EXPECT_EQ(namesOfStops(page).toStdString(), "a field") << "none is checked";
    group->buttons().at(1)->setChecked(true);
    EXPECT_EQ(namesOfStops(page).toStdString(), "b field");
}

TEST(ReadingOrder, readsWhatStandsInCellsRowByRow) {
    QTableWidget table(2, 2);
    table.setFocusPolicy(Qt::NoFocus);
    for (const auto& [row, column, name] :
         {std::tuple(1, 1, "d"), std::tuple(1, 0, "c"), std::tuple(0, 1, "b"), std::tuple(0, 0, "a")}) {
        auto* button = new QPushButton(name);
        button->setObjectName(name);
        table.setCellWidget(row, column, button);
    }
    table.resize(400, 200);
    table.show();
    QTest::qWait(0);
    EXPECT_EQ(namesOfStops(table).toStdString(), "a b c d");
}

TEST(ReadingOrder, takesAStopAfterAnotherWhereThatIsSaid) {
    QWidget page;
    auto* row = new QHBoxLayout(&page);
    QWidget* setting = fieldNamed("setting", &page);
    QWidget* dp = fieldNamed("dp", &page);
    QWidget* next = fieldNamed("next", &page);
    for (QWidget* widget : {setting, dp, next}) {
        row->addWidget(widget);
    }
    stopAfter(*dp, *setting);
    page.show();
    EXPECT_EQ(namesOfStops(page).toStdString(), "dp setting next");
}

TEST(ReadingOrder, isThatOfTabInDialogsAroundBothEnds) {
    OrderedDialog dialog;
    QWidget* last = fieldNamed("last", &dialog);
    QWidget* first = fieldNamed("first", &dialog);
    QWidget* middle = fieldNamed("middle", &dialog);
    auto* column = new QVBoxLayout(&dialog);
    column->addWidget(first);
    column->addWidget(middle);
    column->addWidget(last);
    dialog.show();
    dialog.activateWindow();
    QTest::qWait(0);
    first->setFocus();
    for (const QWidget* expected : {middle, last, first}) {
        QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab);
        EXPECT_EQ(dialog.focusWidget(), expected);
    }
    for (const QWidget* expected : {last, middle, first}) {
        QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab, Qt::ShiftModifier);
        EXPECT_EQ(dialog.focusWidget(), expected);
    }
    // What is taken away hands the keys to what follows it.
    middle->setFocus();
    middle->hide();
    EXPECT_EQ(dialog.focusWidget(), last);
}

}  // namespace
}  // namespace ww::ui
