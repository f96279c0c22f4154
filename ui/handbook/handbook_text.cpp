#include "ui/handbook/handbook_text.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextTable>
#include <QTimer>

#include "ui/handbook/handbook_contents.h"

namespace ww::ui {
namespace {

/// A line that fills its width may be measured a pixel wider than it is laid out.
constexpr int kSpare = 2;

}  // namespace

HandbookText::HandbookText(QWidget* parent) : QTextBrowser(parent) {
    setOpenLinks(false);
    setTabChangesFocus(true);
    document()->setDocumentMargin(18);
    // Room for the bar is kept, so that pictures fit before and after it is needed.
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    setLineWrapMode(FixedPixelWidth);
    connect(this, &QTextBrowser::sourceChanged, this, &HandbookText::ruleTables);
}

void HandbookText::ruleTables() {
    for (QTextFrame* frame : document()->rootFrame()->childFrames()) {
        if (auto* table = qobject_cast<QTextTable*>(frame)) {
            QTextTableFormat format = table->format();
            format.setBorderCollapse(true);
            format.setCellPadding(4);
            table->setFormat(format);
        }
    }
}

int HandbookText::pictureWidth() const {
    return static_cast<int>(viewport()->width() - 2 * document()->documentMargin() - kSpare);
}

QUrl HandbookText::pictureOf(const QUrl& name) const {
    // The document knows its folder while it is laid out, source() only afterwards.
    const QUrl folder = document()->baseUrl();
    const QString wanted = folder.resolved(name).toLocalFile();
    if (QFile::exists(wanted)) {
        return name;
    }
    // One that the chapter's language does not have is the English one, which stands a folder above.
    const QDir chapters(folder.toLocalFile());
    return QUrl::fromLocalFile(QDir::cleanPath(chapters.filePath("../" + chapters.relativeFilePath(wanted))));
}

QVariant HandbookText::loadResource(int type, const QUrl& name) {
    if (type != QTextDocument::ImageResource) {
        return QTextBrowser::loadResource(type, name);
    }
    QImage picture = QImage::fromData(QTextBrowser::loadResource(type, pictureOf(name)).toByteArray());
    m_fittedWidth = pictureWidth();
    if (picture.width() > m_fittedWidth && m_fittedWidth > 0) {
        picture = picture.scaledToWidth(static_cast<int>(m_fittedWidth * devicePixelRatioF()),
                                        Qt::SmoothTransformation);
        picture.setDevicePixelRatio(devicePixelRatioF());
    }
    return picture;
}

void HandbookText::resizeEvent(QResizeEvent* event) {
    setLineWrapColumnOrWidth(viewport()->width() - kSpare);
    QTextBrowser::resizeEvent(event);
    if (m_fittedWidth != 0 && m_fittedWidth != pictureWidth()) {
        // Once the hand has let go of the edge.
        constexpr int kSettledMilliseconds = 150;
        QTimer::singleShot(kSettledMilliseconds, this, &HandbookText::fitPictures);
    }
}

void HandbookText::fitPictures() {
    if (m_fittedWidth != pictureWidth()) {
        m_fittedWidth = pictureWidth();
        const int at = verticalScrollBar()->value();
        reload();
        ruleTables();
        verticalScrollBar()->setValue(at);
    }
}

void HandbookText::scrollToHeading(const QString& anchor) {
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0 && headingAnchor(block.text()) == anchor) {
            // From the end upwards, so that the heading comes to stand at the top.
            moveCursor(QTextCursor::End);
            setTextCursor(QTextCursor(block));
            return;
        }
    }
}

}  // namespace ww::ui
