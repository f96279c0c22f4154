// The text of one chapter, its pictures no wider than the window. Not for finding chapters.
#pragma once

#include <QTextBrowser>

namespace ww::ui {

class HandbookText : public QTextBrowser {
    Q_OBJECT

  public:
    explicit HandbookText(QWidget* parent = nullptr);

    /// Puts a heading at the top: the first block that is one and has this anchor. Stays where there is none.
    void scrollToHeading(const QString& anchor);

  protected:
    QVariant loadResource(int type, const QUrl& name) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    QUrl pictureOf(const QUrl& name) const;
    int pictureWidth() const;
    void fitPictures();
    void ruleTables();

    int m_fittedWidth = 0;
};

}  // namespace ww::ui
