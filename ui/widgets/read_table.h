// A table whose rows are only read, one in hand at a time; Tab leaves it. Not for typing (EntryTable).
#pragma once

#include <QHeaderView>
#include <QTableView>

namespace ww::ui {

/// Shows a model, which must outlive the table; `name` is spoken.
inline QTableView* makeReadTable(QAbstractItemModel* model, const QString& name, QWidget* parent) {
    auto* table = new QTableView(parent);
    table->setModel(model);
    table->setAccessibleName(name);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setStretchLastSection(true);
    table->horizontalHeader()->setHighlightSections(false);
    return table;
}

}  // namespace ww::ui
