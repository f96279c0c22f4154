#include "tests/ui/languages/translation_file.h"

#include <QFile>
#include <QXmlStreamReader>
#include <stdexcept>

#include "ui/language.h"

namespace ww::ui {

std::vector<TranslatedMessage> readTranslations(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        throw std::runtime_error("cannot read " + path.toStdString());
    }
    std::vector<TranslatedMessage> all;
    QString context;
    QXmlStreamReader xml(&file);
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == QStringLiteral("name")) {
            context = xml.readElementText();
        } else if (xml.name() == QStringLiteral("message")) {
            all.push_back(
                {context, {}, {}, xml.attributes().value("numerus") == QStringLiteral("yes"), false});
        } else if (xml.name() == QStringLiteral("source")) {
            all.back().source = xml.readElementText();
        } else if (xml.name() == QStringLiteral("translation")) {
            TranslatedMessage& message = all.back();
            message.isUnfinished = !xml.attributes().value("type").isEmpty();
            if (!message.isPlural) {
                message.forms << xml.readElementText();
            }
        } else if (xml.name() == QStringLiteral("numerusform")) {
            all.back().forms << xml.readElementText();
        }
    }
    if (xml.hasError()) {
        throw std::runtime_error(path.toStdString() + ": " + xml.errorString().toStdString());
    }
    for (TranslatedMessage& message : all) {
        message.isUnfinished =
            message.isUnfinished || message.forms.isEmpty() || message.forms.contains(QString());
    }
    return all;
}

QString translationPath(const QString& code) {
    return QStringLiteral(WW_SOURCE_DIR "/resources/translations/waterwright_%1.ts").arg(code);
}

QStringList translatedCodes() {
    QStringList codes;
    for (const Language& language : languages()) {
        if (language.code != languages().front().code) {
            codes << language.code;
        }
    }
    return codes;
}

}  // namespace ww::ui
