#include "ui/handbook/handbook_contents.h"

#include <QFile>
#include <QRegularExpression>

namespace ww::ui {
namespace {

QString textOf(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QStringList sectionsOf(const QString& text) {
    static const QRegularExpression kHeading(QStringLiteral("^## +(.+?) *$"),
                                             QRegularExpression::MultilineOption);
    QStringList sections;
    for (auto it = kHeading.globalMatch(text); it.hasNext();) {
        sections << it.next().captured(1);
    }
    return sections;
}

}  // namespace

QString handbookFile(const QString& folder, const QString& language, const QString& file) {
    const QString own = folder + '/' + language + '/' + file;
    return QFile::exists(own) ? own : folder + '/' + file;
}

QList<HandbookChapter> handbookChapters(const QString& folder, const QString& language) {
    static const QRegularExpression kLink(QStringLiteral("^- \\[([^\\]]+)\\]\\(([a-z_]+\\.md)\\)"),
                                          QRegularExpression::MultilineOption);
    const QString index = textOf(handbookFile(folder, language, QStringLiteral("index.md")));
    QList<HandbookChapter> chapters;
    for (auto it = kLink.globalMatch(index); it.hasNext();) {
        const QRegularExpressionMatch link = it.next();
        const QString file = link.captured(2);
        chapters << HandbookChapter{file, link.captured(1),
                                    sectionsOf(textOf(handbookFile(folder, language, file)))};
    }
    return chapters;
}

QString headingAnchor(const QString& heading) {
    static const QRegularExpression kBetween(QStringLiteral("[^\\p{L}\\p{N}]+"));
    QString anchor = heading.toLower().replace(kBetween, QStringLiteral("-"));
    anchor.remove(QRegularExpression(QStringLiteral("^-|-$")));
    return anchor;
}

}  // namespace ww::ui
