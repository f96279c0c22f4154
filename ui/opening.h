// A workbook that is read beside the screen while its window is made. Not for what is done with it then.
#pragma once

#include <QString>
#include <future>
#include <memory>

#include "core/workbook/workbook.h"

namespace ww::ui {

struct Desk;

/// A file and what comes of opening it. One that nobody takes is waited for and closed at its end.
struct Opening {
    QString file;
    std::future<base::Result<std::unique_ptr<workbook::Workbook>>> workbook;
};

/// Begins to open a file: at once and beside the screen, or where `policy` is deferred when it is taken. The
/// clock and the ids of the desk must outlive it.
Opening beginOpening(const Desk& desk, const QString& file,
                     workbook::OpenMode mode = workbook::OpenMode::ReadWrite,
                     std::launch policy = std::launch::async);
/// The same beside the screen, but behind `before`, which the window needs first.
Opening beginOpeningAfter(std::shared_future<void> before, const Desk& desk, const QString& file);

}  // namespace ww::ui
