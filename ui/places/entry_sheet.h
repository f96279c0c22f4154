// Tables for typing on the pages of Pump, set up alike. Not for what is typed.
#pragma once

#include <QHeaderView>

#include "ui/models/field_table.h"
#include "ui/models/record_table.h"
#include "ui/theme/theme.h"
#include "ui/widgets/entry_table.h"

namespace ww::ui {

/// Gives a table its model, its delegate, its name and the way its texts are stored.
template <class Model, class Delegate>
void setUpEntry(EntryTable& table, Model& model, Delegate& delegate, WorkbookBridge& bridge,
                const QString& name) {
    table.setModel(&model);
    table.setItemDelegate(&delegate);
    table.setAccessibleName(name);
    table.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table.setStore([&bridge, &model](const QModelIndex& cell, const QString& typed) {
        return bridge.tellOrClear(model.store(cell, typed));
    });
}

/// Row heights of the display that is shown, and room for some rows: a page scrolls before its table is
/// lower.
void setRowHeight(EntryTable& table, const theme::Metrics& metrics);

/// Puts the keys on the table, in its first value where they stood on a title.
void beginAtValues(EntryTable& table);

/// The first column as wide as its words, the others alike, none wider than its values need.
void fitFieldColumns(EntryTable& table, int titleDigits, int valueDigits);

}  // namespace ww::ui
