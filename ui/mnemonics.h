// Letters under which controls are reached with Alt: every one of them means one thing at a time, in every
// language. Not for the chords of commands (commands.h).
#pragma once

#include <QMenuBar>
#include <QSet>
#include <QWidget>

namespace ww::ui {

/// The same words with a letter marked that is not taken, and takes it: the one marked already, else the
/// first that is free, else none. Words without a mark stay as they are.
QString withFreeLetter(const QString& words, QSet<QChar>& taken);

/// Words that a person chose, for a control: they mark no letter, and their own "&" shows.
QString withoutLetter(QString words);

/// Gives the menus of a bar, and the commands within each, letters of their own. What the menus took.
QSet<QChar> settleMenus(QMenuBar& bar);

/// Gives labels, buttons and boxes of a place letters that are neither in `taken` nor twice among what can be
/// seen at the same time (the pages of a stack are seen one by one).
void settleLetters(QWidget& place, QSet<QChar> taken);

}  // namespace ww::ui
