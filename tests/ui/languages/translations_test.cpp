// The .ts files: whole, with the places of their sources, and with the terms of the glossary. What is checked
// is form; the words themselves are common practice of the trade, no source.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <set>

#include "tests/ui/languages/translation_file.h"

namespace ww::ui {
namespace {

std::set<QString> placesOf(const QString& text) {
    static const QRegularExpression kPlace(QStringLiteral("%[n0-9]|\\{[0-9]w?\\}|<b>|</b>"));
    std::set<QString> places;
    for (auto match = kPlace.globalMatch(text); match.hasNext();) {
        places.insert(match.next().captured());
    }
    return places;
}

int acceleratorsOf(const QString& text) {
    static const QRegularExpression kMark(QStringLiteral("&\\w"),
                                          QRegularExpression::UseUnicodePropertiesOption);
    return static_cast<int>(QString(text).remove(QStringLiteral("&&")).count(kMark));
}

TEST(Translations, areFinished) {
    for (const QString& code : translatedCodes() + QStringList{QStringLiteral("en")}) {
        SCOPED_TRACE(code.toStdString());
        const auto messages = readTranslations(translationPath(code));
        EXPECT_GT(messages.size(), code == QStringLiteral("en") ? 10u : 2000u);
        for (const TranslatedMessage& message : messages) {
            EXPECT_FALSE(message.isUnfinished)
                << message.context.toStdString() << ": " << message.source.toStdString();
        }
    }
}

TEST(Translations, holdTheSamePlaces) {
    for (const QString& code : translatedCodes()) {
        for (const TranslatedMessage& message : readTranslations(translationPath(code))) {
            for (const QString& form : message.forms) {
                SCOPED_TRACE(code.toStdString() + ": " + message.source.toStdString());
                EXPECT_EQ(placesOf(form), placesOf(message.source)) << form.toStdString();
                EXPECT_EQ(acceleratorsOf(form), acceleratorsOf(message.source)) << form.toStdString();
                EXPECT_EQ(form.count('\n'), message.source.count('\n')) << form.toStdString();
                EXPECT_EQ(form.endsWith(' '), message.source.endsWith(' ')) << form.toStdString();
            }
        }
    }
}

// A message says what is wrong and, behind the semicolon, what to do.
TEST(Translations, keepTheCureBehindASemicolon) {
    for (const QString& code : translatedCodes()) {
        for (const TranslatedMessage& message : readTranslations(translationPath(code))) {
            if (message.context == QStringLiteral("Message") &&
                message.source.contains(QStringLiteral("; "))) {
                EXPECT_TRUE(message.forms.front().contains(QStringLiteral("; ")))
                    << code.toStdString() << ": " << message.forms.front().toStdString();
            }
        }
    }
}

// In French a sign of two parts stands behind a space at which no line breaks (Lexique des règles
// typographiques en usage à l'Imprimerie nationale, from memory).
TEST(Translations, keepFrenchSignsBesideTheirWords) {
    static const QRegularExpression kLoose(QStringLiteral(" ([:;?!»]|%(?![0-9n]))|« "));
    qsizetype kept = 0;
    for (const TranslatedMessage& message : readTranslations(translationPath(QStringLiteral("fr")))) {
        for (const QString& form : message.forms) {
            kept += form.count(QChar(QChar::Nbsp));
            EXPECT_FALSE(form.contains(kLoose)) << form.toStdString();
        }
    }
    EXPECT_GT(kept, 500);
}

// Whoever adds a text runs the target update_translations and translates it.
TEST(Translations, areThoseOfTheSources) {
    const QTemporaryDir folder;
    const QString texts = folder.filePath(QStringLiteral("message_texts.cpp"));
    const QString fresh = folder.filePath(QStringLiteral("waterwright_de.ts"));
    const QString root = QStringLiteral(WW_SOURCE_DIR);
    ASSERT_EQ(QProcess::execute(QStringLiteral(WW_COLLECT_MESSAGES), {root, texts}), 0);
    ASSERT_EQ(QProcess::execute(QStringLiteral(WW_LUPDATE), {"-silent", "-I", root, "-locations", "none",
                                                             root + "/ui", texts, "-ts", fresh}),
              0);
    const auto keysOf = [](const QString& path) {
        std::set<std::string> keys;
        for (const TranslatedMessage& message : readTranslations(path)) {
            keys.insert(message.context.toStdString() + ": " + message.source.toStdString());
        }
        return keys;
    };
    const std::set<std::string> wanted = keysOf(fresh);
    for (const QString& code : translatedCodes()) {
        const std::set<std::string> there = keysOf(translationPath(code));
        for (const std::string& key : wanted) {
            EXPECT_TRUE(there.contains(key)) << code.toStdString() << " lacks " << key;
        }
        for (const std::string& key : there) {
            EXPECT_TRUE(wanted.contains(key)) << code.toStdString() << " has, but no source, " << key;
        }
    }
}

struct GlossaryRow {
    QString term;
    QMap<QString, QString> words;  ///< by code
};

std::vector<GlossaryRow> glossary() {
    QFile file(QStringLiteral(WW_SOURCE_DIR "/resources/translations/glossary.csv"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    const QStringList lines = QString::fromUtf8(file.readAll()).split('\n', Qt::SkipEmptyParts);
    const QStringList head = lines.front().split(',');
    std::vector<GlossaryRow> rows;
    for (const QString& line : lines.mid(1)) {
        // The note, which comes last, may hold commas.
        const QStringList cells = line.split(',');
        GlossaryRow row{cells[0], {}};
        for (const QString& code : translatedCodes()) {
            row.words[code] = cells[head.indexOf(code)];
        }
        rows.push_back(row);
    }
    return rows;
}

/// The rows whose term stands in a text, without those that are part of a longer one of them.
std::vector<const GlossaryRow*> termsIn(const QString& text, const std::vector<GlossaryRow>& rows) {
    std::vector<const GlossaryRow*> found;
    for (const GlossaryRow& row : rows) {
        const QRegularExpression term(
            QStringLiteral("(?<![\\w-])%1(s|es)?(?![\\w-])").arg(QRegularExpression::escape(row.term)),
            QRegularExpression::CaseInsensitiveOption);
        if (text.contains(term)) {
            found.push_back(&row);
        }
    }
    std::vector<const GlossaryRow*> longest;
    for (const GlossaryRow* row : found) {
        if (std::none_of(found.begin(), found.end(), [&](const GlossaryRow* other) {
                return other != row && other->term.contains(row->term);
            })) {
            longest.push_back(row);
        }
    }
    return longest;
}

// Labels of up to four words use the terms of the glossary; every word of a term stands in them, maybe
// inflected.
TEST(Translations, useTheTermsOfTheGlossary) {
    const std::vector<GlossaryRow> rows = glossary();
    ASSERT_GT(rows.size(), 40u);
    static const QRegularExpression kWord(QStringLiteral("[^\\W\\d_]{2,}"),
                                          QRegularExpression::UseUnicodePropertiesOption);
    for (const QString& code : translatedCodes()) {
        for (const TranslatedMessage& message : readTranslations(translationPath(code))) {
            const QString source = QString(message.source).remove('&');
            if (source.count(kWord) > 4 || source.contains(QStringLiteral("<b>"))) {
                continue;
            }
            const QString translation = QString(message.forms.front()).remove('&');
            for (const GlossaryRow* row : termsIn(source, rows)) {
                for (const QString& word : row->words[code].split(' ')) {
                    EXPECT_TRUE(translation.contains(word, Qt::CaseInsensitive))
                        << code.toStdString() << ": \"" << source.toStdString() << "\" is \""
                        << translation.toStdString() << "\", the glossary has "
                        << row->words[code].toStdString();
                }
            }
        }
    }
}

}  // namespace
}  // namespace ww::ui
