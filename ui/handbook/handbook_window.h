// The window that shows the handbook: contents at the side, one chapter, find and back. It opens nothing
// outside the handbook's folder and needs no network.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeWidget>
#include <QWidget>

#include "ui/handbook/handbook_contents.h"
#include "ui/handbook/handbook_text.h"

namespace ww::ui {

class HandbookWindow : public QWidget {
    Q_OBJECT

  public:
    /// `folder` holds the handbook, which is shown in `language` as far as it is there (handbookFile());
    /// `releaseNotes` is a file of its own. A window beside `parent`, closed with it.
    HandbookWindow(const QString& folder, const QString& language, const QString& releaseNotes,
                   QWidget* parent = nullptr);

    /// Shows a chapter by the name of its file, from its beginning.
    void showChapter(const QString& file);
    void showReleaseNotes();

    HandbookText* text() const { return m_text; }
    QTreeWidget* contents() const { return m_contents; }
    QLineEdit* find() const { return m_find; }
    QString said() const { return m_said->text(); }

    /// Looks for the words of the field from the cursor on, in this chapter and those that follow, then from
    /// the first.
    void findNext();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool focusNextPrevChild(bool isForward) override;

  private:
    void fillContents();
    void layOut();
    void goTo(const QUrl& target);
    void markChapter(const QUrl& shown);

    QString m_folder;
    QString m_language;
    QString m_releaseNotes;
    QList<HandbookChapter> m_chapters;
    QTreeWidget* m_contents;
    HandbookText* m_text;
    QLineEdit* m_find;
    QPushButton* m_back;
    QPushButton* m_forward;
    QPushButton* m_next;
    QLabel* m_said;
};

}  // namespace ww::ui
