// Widths of a table's columns by what they must hold. Not for tables that hide columns where room is short.
#pragma once

#include <QTableView>
#include <span>
#include <vector>

namespace ww::ui {

/// The width of the widest word of a text, px; 0 where there is none.
int widestWord(const QFontMetrics& metrics, const QString& text);

/// Widths of columns that together fill `room`, px. Each gets its least width and, where all that is wanted
/// has no room, its part of what it wants beyond that; what is left over goes to column `filling`. Never less
/// than the least widths, also where these are wider than the room. Every wanted width is at least the least
/// one.
std::vector<int> sharedOut(std::span<const int> least, std::span<const double> wanted, int room,
                           std::size_t filling);

/// How wide the letters of a column are, percent of their width.
struct ColumnLetters {
    int head = 100;
    int digits = 100;
};

/// The width of a column whose head shows whole and that has room for so many digits.
int columnWidthFor(const QTableView& table, int column, int digits, ColumnLetters letters = {});

/// The width of a column that has room for each word of its head and for a few digits; in a table that wraps
/// words for each word of its cells too, and elsewhere for each in the narrowest letters.
int leastColumnWidth(const QTableView& table, int column, ColumnLetters letters);
/// The same in the letters that the table is written in.
int leastColumnWidth(const QTableView& table, int column);

/// The width that shows the longest cell of a column whole, up to that of a sentence, in letters of that
/// width, percent.
int wordsColumnWidth(const QTableView& table, int column, int letters = 100);

/// The width in which every cell of a column is whole in two lines of the narrowest letters, up to that of a
/// sentence.
int twoLinesColumnWidth(const QTableView& table, int column, int headLetters = 100);

/// Writes the head of a table in that font, as far as it says more than that of the program.
void setHeadFont(QTableView& table, const QFont& font);

/// Gives a table that wraps its words the widest letters in which its columns have room at their least. What
/// these need in the narrowest letters, px.
int fitLetters(QTableView& table);

/// Rows in which a cell would be cut in one line become two lines high, all others as high as the table's
/// rows are; all cells of a column are written in the letters that the longest of them needs. For tables that
/// do not wrap their words themselves.
void heightenWhereCut(QTableView& table);

/// Asks that the view be as wide as its columns at their least, px in all.
void leaveRoomFor(QTableView& table, int columns);

/// Gives each column room for so many digits and for its words, and what is left of the view's width to
/// column `filling`, which may hold long texts. Where the view is too narrow, each gives up its part of what
/// is above its least width.
void fitColumns(QTableView& table, std::span<const int> digits, int filling);

/// The same where all columns have room at their least. Where they have not, the last ones are hidden until
/// the others have; with `isOthers` the first column and those that were hidden are shown instead. Whether
/// some are hidden.
bool fitColumnsOrHide(QTableView& table, std::span<const int> digits, int filling, bool isOthers);

/// The same where not all columns have room as they are wanted: the first always shows, then as many of the
/// next as there is room for; with `isOthers` those that had none. Column `filling` takes what is left,
/// and where its words need it room that the others only keep for what may yet be typed. Whether some are
/// hidden.
bool fitColumnsInTurn(QTableView& table, std::span<const int> digits, int filling, bool isOthers);

}  // namespace ww::ui
