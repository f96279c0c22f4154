#include "ui/language.h"

#include <QLibraryInfo>
#include <QRegularExpression>
#include <QTranslator>
#include <QVariant>
#include <algorithm>

namespace ww::ui {
namespace {

/// Keys that a menu shows as messages write them, whatever Qt's own texts call them.
[[maybe_unused]] constexpr const char* kKeyNames[] = {
    QT_TRANSLATE_NOOP("QShortcut", "Ctrl"),   QT_TRANSLATE_NOOP("QShortcut", "Shift"),
    QT_TRANSLATE_NOOP("QShortcut", "Return"), QT_TRANSLATE_NOOP("QShortcut", "Enter"),
    QT_TRANSLATE_NOOP("QShortcut", "Tab"),    QT_TRANSLATE_NOOP("QShortcut", "Up"),
    QT_TRANSLATE_NOOP("QShortcut", "Down")};

const QString kTranslatorName = QStringLiteral("waterwright_language");
constexpr const char* kUsed = "waterwright_used_language";  ///< property of the application

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

QString languageOf(const QProcessEnvironment& environment) {
    QString locale;
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"}) {
        locale = locale.isEmpty() ? environment.value(QLatin1String(name)) : locale;
    }
    // "de_AT.UTF-8@euro" is of the language "de".
    static const QRegularExpression kBehindLanguage(QStringLiteral("[_.@-].*$"));
    const auto language = [](QString name) { return name.remove(kBehindLanguage); };
    const QString own = language(locale);
    if (own.isEmpty() || own == QStringLiteral("C") || own == QStringLiteral("POSIX")) {
        return languages().front().code;
    }
    QStringList wanted = environment.value(QStringLiteral("LANGUAGE")).split(':', Qt::SkipEmptyParts);
    wanted << own;
    for (const QString& name : wanted) {
        if (isOffered(language(name))) {
            return language(name);
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
    application.setProperty(kUsed, used);
}

QString usedLanguage(const QCoreApplication& application) {
    const QVariant used = application.property(kUsed);
    return used.isValid() ? used.toString() : languages().front().code;
}

}  // namespace ww::ui
