// Every dialog of the program, with something in it. Not for Qt's own (files, printers), nor for what a
// dialog does.
#pragma once

#include <QStringList>
#include <QWidget>
#include <array>
#include <functional>

#include "tests/ui/support/desk_window.h"

namespace ww::support {

enum class DialogKind { TellsOfTheRecord, Asks, BringsSomethingIn, ShowsWhatWasFound };
inline constexpr std::array<DialogKind, 4> kDialogKinds{DialogKind::TellsOfTheRecord, DialogKind::Asks,
                                                        DialogKind::BringsSomethingIn,
                                                        DialogKind::ShowsWhatWasFound};

/// A job that the dialogs have something to say of.
const project::Edit& jobForDialogs();

/// Shows one dialog of a kind after the other over a window with jobForDialogs() and calls `see` with it; the
/// import comes once for each of its pages. `language` is that of the handbook. Throws where a dialog cannot
/// be made.
void eachDialog(DeskWindow& desk, DialogKind kind, const QString& language,
                const std::function<void(QWidget&)>& see);

/// The same with the dialogs of all kinds, in English.
void eachDialog(DeskWindow& desk, const std::function<void(QWidget&)>& see);

}  // namespace ww::support
