// The chapters of the handbook and where each part of the program is told of. Not for showing them.
#pragma once

#include <QList>
#include <QString>

namespace ww::ui {

/// One chapter of the handbook.
struct HandbookChapter {
    QString file;          ///< its name, the same in every language, such as walk.md
    QString title;         ///< as its link in the contents says
    QStringList sections;  ///< headings of the second level, in order
};

/// The path of a file of the handbook in a language. English stands in `folder` itself, every other language
/// in a folder of its code (ui/language.h) below; what a language does not have is English.
QString handbookFile(const QString& folder, const QString& language, const QString& file);

/// The chapters that index.md lists, one a line "- [title](file.md)", in its order; empty where the folder
/// cannot be read.
QList<HandbookChapter> handbookChapters(const QString& folder, const QString& language);

/// The name of a heading in links: small letters, digits, and one hyphen for whatever stands between them, so
/// that walk.md#close-the-round leads to "Close the round".
QString headingAnchor(const QString& heading);

}  // namespace ww::ui
