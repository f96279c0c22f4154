// The chapters of the handbook and where each part of the program is told of. Not for showing them.
#pragma once

#include <QList>
#include <QString>

namespace ww::ui {

/// One file of the handbook's folder.
struct HandbookChapter {
    QString file;          ///< name within the folder, such as walk.md
    QString title;         ///< as its link in the contents says
    QStringList sections;  ///< headings of the second level, in order
};

/// The chapters that index.md lists, one a line "- [title](file.md)", in its order; empty where the folder
/// cannot be read.
QList<HandbookChapter> handbookChapters(const QString& folder);

/// The name of a heading in links: small letters, digits, and one hyphen for whatever stands between them, so
/// that walk.md#close-the-round leads to "Close the round".
QString headingAnchor(const QString& heading);

}  // namespace ww::ui
