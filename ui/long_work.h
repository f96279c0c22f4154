// Work that a window must wait for without looking dead. Not for work that goes on beside the screen
// (background_work.h).
#pragma once

#include <QWidget>
#include <functional>

namespace ww::ui {

/// Does `work` on another thread and comes back when it is done. Meanwhile the window is painted and takes no
/// input; after a moment a box says in `words` what is waited for. `work` touches nothing of the screen; what
/// it throws is thrown here.
void waitFor(QWidget* window, const QString& words, const std::function<void()>& work);

/// Whether a workbook is so large that a window waits for it; smaller ones are opened, written and merged in
/// the time of one key.
bool isLarge(const QString& workbook);
/// The same of what is written into a new one.
bool isLarge(std::size_t records);
/// The same of a table, or a folder of tables, that is read; a spreadsheet is packed.
bool isLargeTable(const QString& file);

}  // namespace ww::ui
