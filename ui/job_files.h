// Files of the desktop: asking for their names, making a job from tables, writing copies and tables. Not for
// menus.
#pragma once

#include <QString>
#include <QWidget>

#include "ui/workbook_bridge.h"

namespace ww::ui {

/// The folder of a file; where there is none, the person's own.
QString folderOf(const QString& file);

/// Asks for a workbook's name with the desktop's own dialog; empty where it was given up.
QString askWorkbookToOpen(QWidget* parent, const QString& folder);
QString askWorkbookToWrite(QWidget* parent, const QString& title, const QString& proposal);
QString askFolder(QWidget* parent, const QString& title, const QString& folder);

/// The bytes of a file of at most so many; nothing where it cannot be read or is larger.
std::optional<std::string> bytesOfFile(const QString& file, qint64 most);

/// A job with nothing in it but usual limits and water at 20 °C, SI units: enough to start typing.
project::Edit emptyJob(const base::Id& id, const QString& name);

/// Makes `file` from a folder of tables and opens it. All faults of all tables are listed in a window of
/// their own and nothing is written.
bool createFromTables(QWidget* parent, WorkbookBridge& bridge, const QString& folder, const QString& file);

}  // namespace ww::ui
