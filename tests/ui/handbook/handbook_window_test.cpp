// The handbook's window: the chapter of the place in front, links, find, back.
#include "ui/handbook/handbook_window.h"

#include <gtest/gtest.h>

#include <QFileInfo>
#include <QImage>
#include <QTextBlock>

#include "core/base/version.h"
#include "tests/support/temporary_folder.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/spoken.h"
#include "ui/installed_files.h"
#include "ui/language.h"

namespace ww::ui {
namespace {

class HandbookWindowTest : public testing::Test {
  protected:
    HandbookWindowTest() {
        m_folder.write("book/index.md", "# Handbook\n\n- [One](one.md)\n- [Two](two.md)\n");
        m_folder.write("book/one.md",
                       "# One\n\nA wheel.\n\n## Open it\n\nSee [Two](two.md#shut-it-again).\n");
        m_folder.write("book/two.md",
                       "# Two\n\nA handle.\n\n## Shut it, again\n\nA ÖLSTAND of [it](/etc/passwd).\n");
        m_folder.write("notes.md", "# Release notes\n\n## 9.9 (2026-01-01)\n");
        showIn("en");
    }
    void showIn(const char* language) {
        m_window = std::make_unique<HandbookWindow>(path("book"), language, path("notes.md"));
        m_window->show();
    }
    QString path(const char* name) const { return QString::fromStdString(m_folder.file(name)); }
    QString shown() const { return QFileInfo(m_window->text()->source().toLocalFile()).fileName(); }
    QString block() const { return m_window->text()->textCursor().block().text(); }

    support::TemporaryFolder m_folder;
    std::unique_ptr<HandbookWindow> m_window;
};

TEST_F(HandbookWindowTest, contentsListChaptersAndTheirSections) {
    const QTreeWidget& contents = *m_window->contents();
    ASSERT_EQ(contents.topLevelItemCount(), 4);
    EXPECT_EQ(contents.topLevelItem(1)->text(0), "One");
    EXPECT_EQ(contents.topLevelItem(2)->child(0)->text(0), "Shut it, again");
    EXPECT_EQ(contents.topLevelItem(3)->text(0), "Release notes");
}

TEST_F(HandbookWindowTest, linksLeadToSectionsAndBackLeadsBack) {
    m_window->showChapter("one.md");
    EXPECT_EQ(shown(), "one.md");
    emit m_window->text()->anchorClicked(QUrl("two.md#shut-it-again"));
    EXPECT_EQ(shown(), "two.md");
    EXPECT_EQ(block(), "Shut it, again");
    EXPECT_EQ(m_window->contents()->currentItem()->text(0), "Two");
    m_window->text()->backward();
    EXPECT_EQ(shown(), "one.md");
    EXPECT_EQ(m_window->contents()->currentItem()->text(0), "One");
    m_window->showReleaseNotes();
    EXPECT_EQ(shown(), "notes.md");
}

TEST_F(HandbookWindowTest, nothingOutsideTheHandbookIsOpened) {
    m_window->showChapter("one.md");
    for (const char* target :
         {"/etc/passwd", "file:///etc/passwd", "https://example.org/", "../notes.txt", "three.md"}) {
        emit m_window->text()->anchorClicked(QUrl(target));
        EXPECT_EQ(shown(), "one.md") << target;
        EXPECT_NE(m_window->said(), "") << target;
    }
}

TEST_F(HandbookWindowTest, findGoesOnThroughTheChaptersAndRound) {
    m_window->showChapter("one.md");
    m_window->find()->setText("ölstand");
    m_window->findNext();
    EXPECT_EQ(shown(), "two.md");
    EXPECT_EQ(m_window->text()->textCursor().selectedText(), QString::fromUtf8("ÖLSTAND"));
    m_window->find()->setText("wheel");
    m_window->findNext();
    EXPECT_EQ(shown(), "one.md");
    m_window->find()->setText("no such word");
    m_window->findNext();
    EXPECT_EQ(shown(), "one.md");
    EXPECT_NE(m_window->said().indexOf("no such word"), -1);
}

// What a language does not have is English: a chapter, and the pictures of those that it has.
TEST_F(HandbookWindowTest, theLanguageIsShownAsFarAsItIsThere) {
    QImage(2, 2, QImage::Format_RGB32).save(path("book/shared.png"));
    m_folder.write("book/de/index.md", "# Handbuch\n\n- [Eins](one.md)\n- [Zwei](two.md)\n");
    m_folder.write("book/de/two.md", "# Zwei\n\n## Zu\n\n[Eins](one.md) ![Bild](shared.png)\n");
    showIn("de");
    EXPECT_EQ(m_window->contents()->topLevelItem(1)->text(0), "Eins");
    EXPECT_EQ(m_window->contents()->topLevelItem(2)->child(0)->text(0), "Zu");
    m_window->showChapter("two.md");
    EXPECT_TRUE(m_window->text()->toPlainText().startsWith("Zwei"));
    EXPECT_EQ(m_window->contents()->currentItem()->text(0), "Zwei");
    const QVariant picture =
        m_window->text()->document()->resource(QTextDocument::ImageResource, QUrl("shared.png"));
    EXPECT_EQ(picture.value<QImage>().size(), QSize(2, 2));
    emit m_window->text()->anchorClicked(QUrl("one.md"));
    EXPECT_EQ(m_window->text()->source().toLocalFile(), path("book/one.md"));
    EXPECT_EQ(m_window->contents()->currentItem()->text(0), "Eins");
    m_window->find()->setText("Zu");
    m_window->findNext();
    EXPECT_EQ(m_window->text()->source().toLocalFile(), path("book/de/two.md"));
}

TEST(HandbookInTheDesk, isInTheLanguageOfTheScreen) {
    for (const Language& language : languages()) {
        const support::Spoken spoken(language.code);
        support::DeskWindow desk;
        desk.window.commands().handbook->trigger();
        const QString folder = installedFile(QStringLiteral("handbook"));
        EXPECT_EQ(desk.window.findChild<HandbookWindow*>()->text()->source().toLocalFile(),
                  handbookFile(folder, language.code, QStringLiteral("walk.md")));
    }
}

TEST(HandbookInTheDesk, theKeyShowsTheChapterOfThePlaceInFront) {
    support::DeskWindow desk;
    const std::pair<MainWindow::Place, const char*> kChapters[] = {
        {MainWindow::Job, "job.md"},      {MainWindow::System, "system.md"},
        {MainWindow::Walk, "walk.md"},    {MainWindow::Adjust, "adjust.md"},
        {MainWindow::Pump, "pump.md"},    {MainWindow::Review, "review.md"},
        {MainWindow::Report, "report.md"}};
    for (const auto& [place, file] : kChapters) {
        desk.window.showPlace(place);
        desk.window.commands().handbook->trigger();
        const auto windows = desk.window.findChildren<HandbookWindow*>();
        ASSERT_EQ(windows.size(), 1) << "one window, whatever the place";
        EXPECT_TRUE(windows.front()->isVisible());
        EXPECT_FALSE(windows.front()->isModal());
        EXPECT_EQ(QFileInfo(windows.front()->text()->source().toLocalFile()).fileName().toStdString(), file);
    }
    desk.window.commands().releaseNotes->trigger();
    const QString notes = desk.window.findChild<HandbookWindow*>()->text()->toPlainText();
    EXPECT_NE(notes.indexOf(QString::fromStdString(std::string(base::version()))), -1);
}

// Each language tells of the same releases in as many points.
TEST(InstalledFiles, releaseNotesAreInEveryLanguage) {
    const auto linesOf = [](const QString& file, const QString& beginning) {
        QFile notes(file);
        EXPECT_TRUE(notes.open(QIODevice::ReadOnly)) << file.toStdString();
        QStringList found = QString::fromUtf8(notes.readAll()).split('\n').filter(beginning);
        found.removeIf([&](const QString& line) { return !line.startsWith(beginning); });
        return found;
    };
    const QString english = releaseNotesFile("en");
    EXPECT_EQ(QFileInfo(english).fileName(), "release_notes.md");
    for (const Language& language : languages()) {
        const QString own = releaseNotesFile(language.code);
        EXPECT_EQ(own == english, language.code == "en") << language.code.toStdString();
        EXPECT_EQ(linesOf(own, "## "), linesOf(english, "## "));
        EXPECT_EQ(linesOf(own, "- ").size(), linesOf(english, "- ").size()) << language.code.toStdString();
    }
}

TEST(InstalledFiles, samplesAreFoundWithTheirNames) {
    QStringList names;
    for (const SampleJob& sample : sampleJobs()) {
        names << sample.name;
    }
    EXPECT_EQ(names, (QStringList{"Clinic cooling", "Library heating"}));
    EXPECT_EQ(installedFile(QStringLiteral("nothing of that name")), "");
}

}  // namespace
}  // namespace ww::ui
