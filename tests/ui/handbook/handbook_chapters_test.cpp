// The texts of the handbook in each of its languages: whole, with every command and every key of the program
// in them, and no link that leads nowhere.
#include <gtest/gtest.h>

#include <QDir>
#include <QMap>
#include <QRegularExpression>
#include <QTableWidget>

#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/spoken.h"
#include "ui/handbook/handbook_contents.h"
#include "ui/key_list.h"

namespace ww::ui {
namespace {

const QString kBook = QStringLiteral(WW_SOURCE_DIR "/resources/handbook");
const QString kEnglish = QStringLiteral("en");

/// What the keys of chords are called in the texts of a language (resources/translations), with their English
/// names; keys without an entry are called alike.
const QMap<QString, QMap<QString, QString>> kKeyWords{{"de",
                                                       {{"Strg", "Ctrl"},
                                                        {"Umschalt", "Shift"},
                                                        {"Auf", "Up"},
                                                        {"Ab", "Down"},
                                                        {"Links", "Left"},
                                                        {"Rechts", "Right"}}},
                                                      {"fr",
                                                       {{"Maj", "Shift"},
                                                        {"Haut", "Up"},
                                                        {"Bas", "Down"},
                                                        {"Gauche", "Left"},
                                                        {"Droite", "Right"},
                                                        {"Entrée", "Enter"}}},
                                                      {"es",
                                                       {{"Mayús", "Shift"},
                                                        {"Arriba", "Up"},
                                                        {"Abajo", "Down"},
                                                        {"Izquierda", "Left"},
                                                        {"Derecha", "Right"},
                                                        {"Intro", "Enter"}}}};

/// English, and every language that has a folder.
QStringList bookLanguages() {
    QStringList all{kEnglish};
    for (const QString& folder : QDir(kBook).entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        if (folder != "pictures") {
            all << folder;
        }
    }
    return all;
}

QString folderOf(const QString& language) {
    return language == kEnglish ? kBook : kBook + '/' + language;
}

QStringList chapterFiles(const QString& language) {
    return QDir(folderOf(language)).entryList({"*.md"}, QDir::Files);
}

QString textOfChapter(const QString& language, const QString& file) {
    QFile chapter(handbookFile(kBook, language, file));
    EXPECT_TRUE(chapter.open(QIODevice::ReadOnly)) << file.toStdString();
    return QString::fromUtf8(chapter.readAll());
}

/// All chapters as a reader sees them: no marks, no breaks of lines.
QString wholeBook(const QString& language) {
    QString all;
    for (const QString& file : chapterFiles(language)) {
        all += textOfChapter(language, file) + '\n';
    }
    return all.remove('*').replace(QRegularExpression("\\s+"), " ");
}

/// Every chord that a text of a language names, with the English names of its keys, so that
/// "Strg+Umschalt+Ab" is Ctrl+Shift+Down.
QStringList chordsIn(const QString& text, const QString& language) {
    const QMap<QString, QString> words = kKeyWords.value(language);
    QStringList modifiers{"Ctrl", "Alt", "Shift"};
    for (auto word = words.begin(); word != words.end(); ++word) {
        if (modifiers.contains(word.value())) {
            modifiers << word.key();
        }
    }
    const QRegularExpression chord(
        QStringLiteral("\\b((?:%1)\\+)+([\\p{L}\\d]+|[+,=-])").arg(modifiers.join('|')),
        QRegularExpression::UseUnicodePropertiesOption);
    QStringList chords;
    for (auto it = chord.globalMatch(text); it.hasNext();) {
        const QString whole = it.next().captured(0);
        QStringList keys = whole.split('+', Qt::SkipEmptyParts);
        for (QString& key : keys) {
            key = words.value(key, key);
        }
        const bool isUnderlined =
            keys.size() == 2 && keys[0] == "Alt" && keys[1].size() == 1 && keys[1][0].isLetter();
        chords << (isUnderlined ? "Alt+letter" : keys.join('+') + (whole.endsWith('+') ? "++" : ""));
    }
    chords.removeDuplicates();
    chords.sort();
    return chords;
}

qsizetype countOf(const QString& text, const char* pattern) {
    return text.count(QRegularExpression(QLatin1String(pattern), QRegularExpression::MultilineOption));
}

/// Of the chapters of one language.
class HandbookChapters : public testing::TestWithParam<QString> {};

TEST_P(HandbookChapters, contentsNameEveryChapterOnce) {
    const QString language = GetParam();
    QStringList listed{"index.md"};
    for (const HandbookChapter& chapter : handbookChapters(kBook, language)) {
        EXPECT_FALSE(listed.contains(chapter.file)) << chapter.file.toStdString();
        listed << chapter.file;
        EXPECT_TRUE(textOfChapter(language, chapter.file).startsWith("# ")) << chapter.file.toStdString();
    }
    listed.sort();
    EXPECT_EQ(listed, chapterFiles(language));
}

TEST_P(HandbookChapters, areBuiltLikeTheEnglishOnes) {
    const QString language = GetParam();
    EXPECT_EQ(chapterFiles(language), chapterFiles(kEnglish));
    EXPECT_TRUE(language == kEnglish || kKeyWords.contains(language)) << "its words of keys";
    for (const QString& file : chapterFiles(language)) {
        const QString english = textOfChapter(kEnglish, file);
        const QString text = textOfChapter(language, file);
        EXPECT_EQ(chordsIn(text, language).join(' ').toStdString(),
                  chordsIn(english, kEnglish).join(' ').toStdString())
            << file.toStdString();
        // Headings of each level, steps, points, rows of tables, pictures, links.
        for (const char* part : {"^# ", "^## ", "^\\d+\\. ", "^- ", "^\\|", "!\\[", "\\]\\([^)]*\\.md"}) {
            EXPECT_EQ(countOf(text, part), countOf(english, part)) << file.toStdString() << " " << part;
        }
    }
}

TEST_P(HandbookChapters, everyLinkAndPictureIsThere) {
    static const QRegularExpression kLink(QStringLiteral("(!?)\\[([^\\]]*)\\]\\(([^)]+)\\)"));
    const QString language = GetParam();
    QStringList pictures;
    for (const QString& file : chapterFiles(language)) {
        const QString text = textOfChapter(language, file);
        for (auto it = kLink.globalMatch(text); it.hasNext();) {
            const QRegularExpressionMatch link = it.next();
            const QStringList target = link.captured(3).split('#');
            EXPECT_TRUE(QFile::exists(handbookFile(kBook, language, target[0])))
                << file.toStdString() << " " << link.captured(3).toStdString();
            EXPECT_FALSE(link.captured(2).isEmpty()) << "a picture needs words for those who cannot see it";
            if (target.size() > 1) {
                QStringList anchors;
                for (const QString& line : textOfChapter(language, target[0]).split('\n')) {
                    anchors << (line.startsWith('#') ? headingAnchor(line) : QString());
                }
                EXPECT_TRUE(anchors.contains(target[1])) << link.captured(3).toStdString();
            }
            if (!link.captured(1).isEmpty()) {
                pictures << QFileInfo(target[0]).fileName();
                EXPECT_TRUE(QFile::exists(folderOf(language) + '/' + target[0]))
                    << target[0].toStdString() << " shows the window in another language";
            }
        }
    }
    qint64 size = 0;
    for (const QFileInfo& picture :
         QDir(folderOf(language) + "/pictures").entryInfoList({"*.png"}, QDir::Files)) {
        EXPECT_TRUE(pictures.contains(picture.fileName()))
            << picture.fileName().toStdString() << " is shown nowhere";
        size += picture.size();
    }
    EXPECT_GT(pictures.size(), 10);
    EXPECT_LT(size, 2'000'000);
}

TEST_P(HandbookChapters, everyCommandAndEveryKeyIsTold) {
    const QString language = GetParam();
    const support::Spoken spoken(language);
    const QString book = wholeBook(language);
    const QStringList chords = chordsIn(book, language);
    support::DeskWindow desk;
    for (const QAction* action : desk.window.commands().all()) {
        QString command = action->text().remove('&');
        command.remove(QChar(0x2026));
        // The label of undo goes on with what would be undone.
        if (action == desk.window.commands().undo || action == desk.window.commands().redo) {
            command = command.section(QRegularExpression("[ :]"), 0, 0);
        }
        EXPECT_TRUE(book.contains(command)) << command.toStdString();
        for (const QKeySequence& key : action->shortcuts()) {
            // The Enter of the number pad and Return bear one name.
            const QString name = key.toString().replace(QStringLiteral("Return"), QStringLiteral("Enter"));
            EXPECT_TRUE(name.contains('+') ? chords.contains(name) : book.contains(name))
                << command.toStdString() << ": " << name.toStdString();
        }
    }
    KeyList list(desk.window.commands(), nullptr);
    const QTableWidget* table = list.findChild<QTableWidget*>();
    static const QRegularExpression kBetween(QStringLiteral("[ \u00a0]*[,;] *"));
    // The rows behind are the commands, whose keys the system names.
    const auto walking = table->rowCount() - desk.window.commands().all().size();
    for (int row = 0; row < walking; ++row) {
        for (const QString& key : table->item(row, 1)->text().split(kBetween, Qt::SkipEmptyParts)) {
            EXPECT_TRUE(book.contains(key)) << key.toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(EachLanguage, HandbookChapters, testing::ValuesIn(bookLanguages()),
                         [](const auto& language) { return language.param.toStdString(); });

}  // namespace
}  // namespace ww::ui
