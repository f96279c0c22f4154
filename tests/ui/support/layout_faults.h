// What a person would see to be wrong with where things stand in a window: cut words, parts outside their
// frame, bars that scroll sideways. Not for what the words say.
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

namespace ww::support {

/// Every visible widget that lies outside its parent or is smaller than it must be, every label, button, tab,
/// list item, cell, field, hint and column head whose words are cut, every bar that scrolls sideways. Places
/// may scroll up and down.
QStringList layoutFaults(const QWidget& window);

/// The faults that are left when what is computed beside the screen has come and found its place.
QStringList settledFaults(const QWidget& window);

}  // namespace ww::support
