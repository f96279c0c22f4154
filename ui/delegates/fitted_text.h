// A text as it stands in a cell of a certain room: in one line, in two where the row is high enough, in a
// narrower font where neither has room. Not for tables that give each row the height of its words.
#pragma once

#include <QFont>
#include <QModelIndex>
#include <QSize>
#include <QString>
#include <QWidget>

namespace ww::ui {

/// On each side of the words of a cell, device-independent pixels.
inline constexpr int kCellMargin = 6;

struct FittedText {
    QFont font;
    QString text;
    bool isWrapped = false;
    bool isCut = false;  ///< nothing helped: the end of the text is left out
};

/// `room`: of the words alone, device-independent pixels. `widest`: letters no wider than so many percent.
FittedText fitText(const QString& text, const QFont& font, const QSize& room, int widest = 100);

/// The letters in which all cells of a column are written, percent of their width; 100 in a view for which
/// nothing was said.
int columnLetters(const QWidget* view, int column);
/// Says it for each column of a view.
void setColumnLetters(QWidget& view, const QList<int>& percents);

/// The font of the numbers in a view with that font; heavier where the display asks for it.
QFont numeralFont(const QFont& ofView, const QWidget* view);
/// The font of a cell in a view with that font.
QFont cellFont(const QModelIndex& cell, const QFont& ofView, const QWidget* view);

/// What a cell takes beside its words: margins, indentation, the shape of its state; px.
int besideWords(const QModelIndex& cell, const QFont& ofView);

/// The size of the shape of a state beside words in that font, px.
int shapeBesideWords(const QFont& ofView);
/// Between that shape and the words, px.
inline constexpr int kBehindShape = 8;
/// A level of a tree, px.
inline constexpr int kIndent = 16;

/// The height of a row that has room for two lines, px.
int twoLinesHeight(const QFont& font);

}  // namespace ww::ui
