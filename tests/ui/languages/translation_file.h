// The .ts files of this source folder as lists of messages. Not for what a window shows.
#pragma once

#include <QString>
#include <QStringList>
#include <string>
#include <vector>

namespace ww::ui {

struct TranslatedMessage {
    QString context;
    QString source;
    QStringList forms;  ///< one, or one for each plural form
    bool isPlural = false;
    bool isUnfinished = false;  ///< marked so, or a form is empty
};

/// The messages of a .ts file; throws where it cannot be read.
std::vector<TranslatedMessage> readTranslations(const QString& path);

/// resources/translations/waterwright_CODE.ts
QString translationPath(const QString& code);
/// The translated languages: all but English.
QStringList translatedCodes();

}  // namespace ww::ui
