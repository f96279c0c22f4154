// The texts of the handbook: whole, with every command and every key of the program in them, and no link that
// leads nowhere.
#include <gtest/gtest.h>

#include <QDir>
#include <QRegularExpression>
#include <QTableWidget>

#include "tests/ui/support/desk_window.h"
#include "ui/handbook/handbook_contents.h"
#include "ui/key_list.h"

namespace ww::ui {
namespace {

const QString kBook = QStringLiteral(WW_SOURCE_DIR "/resources/handbook");

QString textOfChapter(const QString& file) {
    QFile chapter(kBook + '/' + file);
    EXPECT_TRUE(chapter.open(QIODevice::ReadOnly)) << file.toStdString();
    return QString::fromUtf8(chapter.readAll());
}

QStringList chapterFiles() {
    return QDir(kBook).entryList({"*.md"}, QDir::Files);
}

/// All chapters as a reader sees them: no marks, no breaks of lines.
QString wholeBook() {
    QString all;
    for (const QString& file : chapterFiles()) {
        all += textOfChapter(file) + '\n';
    }
    return all.remove('*').replace(QRegularExpression("\\s+"), " ");
}

TEST(HandbookChapters, theContentsNameEveryChapterOnce) {
    QStringList listed{"index.md"};
    for (const HandbookChapter& chapter : handbookChapters(kBook)) {
        EXPECT_FALSE(listed.contains(chapter.file)) << chapter.file.toStdString();
        listed << chapter.file;
        EXPECT_TRUE(textOfChapter(chapter.file).startsWith("# ")) << chapter.file.toStdString();
    }
    listed.sort();
    EXPECT_EQ(listed, chapterFiles());
}

TEST(HandbookChapters, everyLinkAndPictureIsThere) {
    static const QRegularExpression kLink(QStringLiteral("(!?)\\[([^\\]]*)\\]\\(([^)]+)\\)"));
    QStringList pictures;
    for (const QString& file : chapterFiles()) {
        const QString text = textOfChapter(file);
        for (auto it = kLink.globalMatch(text); it.hasNext();) {
            const QRegularExpressionMatch link = it.next();
            const QStringList target = link.captured(3).split('#');
            EXPECT_TRUE(QFile::exists(kBook + '/' + target[0]))
                << file.toStdString() << " " << link.captured(3).toStdString();
            EXPECT_FALSE(link.captured(2).isEmpty()) << "a picture needs words for those who cannot see it";
            if (target.size() > 1) {
                QStringList anchors;
                for (const QString& line : textOfChapter(target[0]).split('\n')) {
                    anchors << (line.startsWith('#') ? headingAnchor(line) : QString());
                }
                EXPECT_TRUE(anchors.contains(target[1])) << link.captured(3).toStdString();
            }
            if (!link.captured(1).isEmpty()) {
                pictures << target[0];
            }
        }
    }
    qint64 size = 0;
    for (const QFileInfo& picture : QDir(kBook + "/pictures").entryInfoList({"*.png"}, QDir::Files)) {
        EXPECT_TRUE(pictures.contains("pictures/" + picture.fileName()))
            << picture.fileName().toStdString() << " is shown nowhere";
        size += picture.size();
    }
    EXPECT_GT(pictures.size(), 10);
    EXPECT_LT(size, 2'000'000);
}

TEST(HandbookChapters, everyCommandAndEveryKeyIsTold) {
    const QString book = wholeBook();
    support::DeskWindow desk;
    for (const QAction* action : desk.window.commands().all()) {
        QString command = action->text().remove('&');
        command.remove(QChar(0x2026));
        // The label of undo goes on with what would be undone.
        if (action == desk.window.commands().undo || action == desk.window.commands().redo) {
            command = command.section(' ', 0, 0);
        }
        EXPECT_TRUE(book.contains(command)) << command.toStdString();
        for (const QKeySequence& key : action->shortcuts()) {
            EXPECT_TRUE(book.contains(key.toString()))
                << command.toStdString() << ": " << key.toString().toStdString();
        }
    }
    KeyList list(desk.window.commands(), nullptr);
    const QTableWidget* table = list.findChild<QTableWidget*>();
    static const QRegularExpression kBetween(QStringLiteral("[,;] *"));
    for (int row = 0; row < table->rowCount(); ++row) {
        for (const QString& key : table->item(row, 1)->text().split(kBetween, Qt::SkipEmptyParts)) {
            EXPECT_TRUE(book.contains(key)) << key.toStdString();
        }
    }
}

}  // namespace
}  // namespace ww::ui
