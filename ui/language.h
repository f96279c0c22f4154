// The languages of the screen and what loads their texts. Not for numbers: these are typed and shown alike in
// every language.
#pragma once

#include <QCoreApplication>
#include <QLocale>
#include <QString>
#include <vector>

namespace ww::ui {

struct Language {
    QString code;  ///< ISO 639-1
    QString name;  ///< in the language itself
};

/// All languages, English first.
const std::vector<Language>& languages();

/// The code of the first language that a system asks for and that is there; "en" where none is.
QString languageOf(const QLocale& system);

/// Loads the texts of a language, those of Qt's own dialogs too, in place of the texts loaded before. Windows
/// that stand keep their words. An unknown code loads English. The texts live as long as the application.
void useLanguage(const QString& code, QCoreApplication& application);

}  // namespace ww::ui
