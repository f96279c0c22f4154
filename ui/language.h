// The languages of the screen and what loads their texts. Not for numbers: these are typed and shown alike in
// every language.
#pragma once

#include <QCoreApplication>
#include <QProcessEnvironment>
#include <QString>
#include <vector>

namespace ww::ui {

struct Language {
    QString code;  ///< ISO 639-1
    QString name;  ///< in the language itself
};

/// All languages, English first.
const std::vector<Language>& languages();

/// The code of the first language that an environment asks for and that is there: of LANGUAGE, then of the
/// first of LC_ALL, LC_MESSAGES and LANG that is set (gettext's order). "en" where none is there, and where
/// that locale is C, POSIX or none at all.
QString languageOf(const QProcessEnvironment& environment);

/// Loads the texts of a language, those of Qt's own dialogs too, in place of the texts loaded before. Windows
/// that stand keep their words. An unknown code loads English. The texts live as long as the application.
void useLanguage(const QString& code, QCoreApplication& application);

/// The code of the language whose texts were loaded last; English before any were.
QString usedLanguage(const QCoreApplication& application);

}  // namespace ww::ui
