#include "ui/language.h"

#include <QLibraryInfo>
#include <QTranslator>
#include <algorithm>

namespace ww::ui {
namespace {

const QString kTranslatorName = QStringLiteral("waterwright_language");

bool isOffered(const QString& code) {
    return std::any_of(languages().begin(), languages().end(),
                       [&](const Language& language) { return language.code == code; });
}

void install(QCoreApplication& application, const QString& file, const QString& folder) {
    auto* translator = new QTranslator(&application);
    translator->setObjectName(kTranslatorName);
    if (translator->load(file, folder)) {
        QCoreApplication::installTranslator(translator);
    } else {
        // Without Qt's own texts the buttons of standard dialogs stay English.
        delete translator;
    }
}

}  // namespace

const std::vector<Language>& languages() {
    static const std::vector<Language> kAll{{QStringLiteral("en"), QStringLiteral("English")},
                                            {QStringLiteral("es"), QStringLiteral("Español")},
                                            {QStringLiteral("de"), QStringLiteral("Deutsch")},
                                            {QStringLiteral("fr"), QStringLiteral("Français")}};
    return kAll;
}

QString languageOf(const QLocale& system) {
    for (const QString& wanted : system.uiLanguages()) {
        const QString code = wanted.section(QChar('-'), 0, 0);
        if (isOffered(code)) {
            return code;
        }
    }
    return languages().front().code;
}

void useLanguage(const QString& code, QCoreApplication& application) {
    for (QTranslator* former :
         application.findChildren<QTranslator*>(kTranslatorName, Qt::FindDirectChildrenOnly)) {
        QCoreApplication::removeTranslator(former);
        delete former;
    }
    const QString used = isOffered(code) ? code : languages().front().code;
    if (used != languages().front().code) {
        install(application, QStringLiteral("qtbase_") + used,
                QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    }
    install(application, QStringLiteral("waterwright_") + used, QStringLiteral(":/translations"));
}

}  // namespace ww::ui
