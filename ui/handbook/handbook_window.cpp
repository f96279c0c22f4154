#include "ui/handbook/handbook_window.h"

#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScreen>
#include <QShortcut>
#include <QSplitter>
#include <QTextDocument>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/delegates/wrapped_item.h"
#include "ui/widgets/reading_order.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui {
namespace {

constexpr int kAddress = Qt::UserRole;  ///< in the contents: file, with #anchor for a section

}  // namespace

HandbookWindow::HandbookWindow(const QString& folder, const QString& language, const QString& releaseNotes,
                               QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_folder(folder),
      m_language(language),
      m_releaseNotes(releaseNotes),
      m_chapters(handbookChapters(folder, language)),
      m_contents(new QTreeWidget(this)),
      m_text(new HandbookText(this)),
      m_find(new QLineEdit(this)),
      m_back(new QPushButton(tr("Go &Back"), this)),
      m_forward(new QPushButton(tr("Go For&ward"), this)),
      m_next(new QPushButton(tr("Find &Next"), this)),
      m_said(new QLabel(this)) {
    setWindowTitle(tr("Handbook"));
    m_text->setAccessibleName(tr("Chapter"));
    m_find->setAccessibleName(tr("Find in the handbook"));
    m_find->setClearButtonEnabled(true);
    m_said->setAccessibleName(tr("Result of the search"));
    fillContents();
    layOut();
    connect(m_text, &QTextBrowser::anchorClicked, this, &HandbookWindow::goTo);
    connect(m_text, &QTextBrowser::sourceChanged, this, &HandbookWindow::markChapter);
    connect(m_text, &QTextBrowser::backwardAvailable, m_back, &QPushButton::setEnabled);
    connect(m_text, &QTextBrowser::forwardAvailable, m_forward, &QPushButton::setEnabled);
    connect(m_back, &QPushButton::clicked, m_text, &QTextBrowser::backward);
    connect(m_forward, &QPushButton::clicked, m_text, &QTextBrowser::forward);
    connect(m_find, &QLineEdit::returnPressed, this, &HandbookWindow::findNext);
    connect(m_find, &QLineEdit::textChanged, m_said, &QLabel::clear);
    connect(m_next, &QPushButton::clicked, this, &HandbookWindow::findNext);
    const auto goToItem = [this](QTreeWidgetItem* item) { goTo(QUrl(item->data(0, kAddress).toString())); };
    connect(m_contents, &QTreeWidget::itemClicked, this, goToItem);
    connect(m_contents, &QTreeWidget::itemActivated, this, goToItem);
    const auto onKey = [this](const QKeySequence& key, auto action) {
        connect(new QShortcut(key, this), &QShortcut::activated, this, action);
    };
    onKey(QKeySequence::fromString("Ctrl+F"), [this] {
        m_find->setFocus();
        m_find->selectAll();
    });
    onKey(QKeySequence::fromString("Ctrl+G"), [this] { findNext(); });
    onKey(QKeySequence::fromString("Alt+Left"), [this] { m_text->backward(); });
    onKey(QKeySequence::fromString("Alt+Right"), [this] { m_text->forward(); });
    onKey(QKeySequence::fromString("Esc"), [this] { close(); });
    m_back->setEnabled(false);
    m_forward->setEnabled(false);
    constexpr QSize kUsual(1060, 680);
    constexpr QSize kFrame(60, 60);
    resize((kUsual * textScale(font())).boundedTo(screen()->availableSize() - kFrame));
    m_text->setFocus();
}

bool HandbookWindow::focusNextPrevChild(bool isForward) {
    return goToNextStop(*this, isForward) || QWidget::focusNextPrevChild(isForward);
}

bool HandbookWindow::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_contents->viewport() && event->type() == QEvent::Resize) {
        // Their titles take other lines then.
        QTimer::singleShot(0, m_contents, [this] { m_contents->doItemsLayout(); });
    }
    return QWidget::eventFilter(watched, event);
}

void HandbookWindow::fillContents() {
    m_contents->setAccessibleName(tr("Contents"));
    m_contents->setColumnCount(1);
    m_contents->header()->hide();
    m_contents->setItemDelegate(new WrappedItem(m_contents));
    m_contents->viewport()->installEventFilter(this);
    const auto entry = [](const QString& title, const QString& address) {
        auto* item = new QTreeWidgetItem({title});
        item->setData(0, kAddress, address);
        return item;
    };
    m_contents->addTopLevelItem(entry(tr("Contents"), QStringLiteral("index.md")));
    for (const HandbookChapter& chapter : m_chapters) {
        QTreeWidgetItem* item = entry(chapter.title, chapter.file);
        for (const QString& section : chapter.sections) {
            item->addChild(entry(section, chapter.file + '#' + headingAnchor(section)));
        }
        m_contents->addTopLevelItem(item);
    }
    if (!m_releaseNotes.isEmpty()) {
        m_contents->addTopLevelItem(
            entry(tr("Release notes"), QUrl::fromLocalFile(m_releaseNotes).toString()));
    }
}

void HandbookWindow::layOut() {
    auto* findLabel = new QLabel(tr("&Find"), this);
    findLabel->setBuddy(m_find);
    auto* top = new QHBoxLayout;
    top->addWidget(m_back);
    top->addWidget(m_forward);
    top->addSpacing(12);
    top->addWidget(findLabel);
    top->addWidget(m_find, 1);
    top->addWidget(m_next);
    auto* middle = new QSplitter(this);
    middle->addWidget(m_contents);
    middle->addWidget(m_text);
    middle->setStretchFactor(1, 1);
    middle->setSizes({260, 800});
    middle->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(middle, 1);
    layout->addWidget(m_said);
}

void HandbookWindow::showChapter(const QString& file) {
    goTo(QUrl(file));
}

void HandbookWindow::showReleaseNotes() {
    if (!m_releaseNotes.isEmpty()) {
        goTo(QUrl::fromLocalFile(m_releaseNotes));
    }
}

void HandbookWindow::goTo(const QUrl& target) {
    QUrl file = target;
    file.setFragment(QString());
    if (file.isRelative()) {
        const QString name = file.path();
        file =
            name.isEmpty() ? m_text->source() : QUrl::fromLocalFile(handbookFile(m_folder, m_language, name));
    }
    const QString path = QDir::cleanPath(file.toLocalFile());
    const bool isOurs =
        path == QDir::cleanPath(m_releaseNotes) || path.startsWith(QDir::cleanPath(m_folder) + '/');
    if (!isOurs || !QFile::exists(path)) {
        m_said->setText(tr("%1 is no page of the handbook").arg(target.toString()));
        return;
    }
    if (file != m_text->source()) {
        m_text->setSource(file, QTextDocument::MarkdownResource);
    }
    if (target.hasFragment()) {
        m_text->scrollToHeading(target.fragment());
    } else {
        m_text->moveCursor(QTextCursor::Start);
    }
}

void HandbookWindow::markChapter(const QUrl& shown) {
    const QString path = shown.toLocalFile();
    for (int i = 0; i < m_contents->topLevelItemCount(); ++i) {
        QTreeWidgetItem* item = m_contents->topLevelItem(i);
        const QString address = item->data(0, kAddress).toString();
        const bool isShown = path.endsWith('/' + address) || QUrl(address).toLocalFile() == path;
        item->setExpanded(isShown);
        if (isShown) {
            m_contents->setCurrentItem(item);
            setWindowTitle(tr("Handbook: %1").arg(item->text(0)));
        }
    }
}

void HandbookWindow::findNext() {
    const QString words = m_find->text().trimmed();
    if (words.isEmpty()) {
        return;
    }
    m_said->clear();
    if (m_text->find(words)) {
        return;
    }
    // On to the chapters that follow, then round to the first; last this one from its beginning.
    const QString shown = QFileInfo(m_text->source().toLocalFile()).fileName();
    qsizetype at = -1;
    for (qsizetype i = 0; i < m_chapters.size(); ++i) {
        at = m_chapters[i].file == shown ? i : at;
    }
    for (qsizetype step = 1; step <= m_chapters.size(); ++step) {
        const QString file =
            handbookFile(m_folder, m_language, m_chapters[(at + step) % m_chapters.size()].file);
        QFile chapter(file);
        QTextDocument text;
        if (chapter.open(QIODevice::ReadOnly)) {
            text.setMarkdown(QString::fromUtf8(chapter.readAll()));
        }
        if (!text.find(words).isNull()) {
            goTo(QUrl::fromLocalFile(file));
            m_text->moveCursor(QTextCursor::Start);
            m_text->find(words);
            return;
        }
    }
    m_said->setText(tr("“%1” does not occur in the handbook; try one word of it").arg(words));
}

}  // namespace ww::ui
