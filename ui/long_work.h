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

/// Whether a workbook of this size, or one that becomes so large, is waited for; smaller ones are opened and
/// written in the time of one key.
bool isWaitedFor(const QString& file);

}  // namespace ww::ui
