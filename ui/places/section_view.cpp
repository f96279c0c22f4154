#include "ui/places/section_view.h"

#include <QEvent>
#include <QResizeEvent>
#include <QScrollBar>

#include "ui/report/page_builder.h"
#include "ui/text/words.h"

namespace ww::ui {

namespace {

constexpr int kFigureHeight = 300;

}  // namespace

SectionView::SectionView(QWidget* parent)
    : PatientArea(parent),
      m_tokens(theme::tokens(theme::Display::Office)),
      m_page(new QWidget(this)),
      m_column(new QVBoxLayout(m_page)) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_column->setContentsMargins(4, 6, 10, 6);
    m_column->setSpacing(8);
    m_column->addStretch(1);
    setWidget(m_page);
    setProperty("ringed", true);
}

QSize SectionView::sizeHint() const {
    const int width = viewport()->width();
    const int height =
        m_page->hasHeightForWidth() ? m_page->heightForWidth(width) : m_page->sizeHint().height();
    return {PatientArea::sizeHint().width(), height};
}

QSize SectionView::minimumSizeHint() const {
    const int around = 2 * frameWidth() + verticalScrollBar()->sizeHint().width();
    return {m_page->minimumSizeHint().width() + around, PatientArea::minimumSizeHint().height()};
}

void SectionView::resizeEvent(QResizeEvent* event) {
    PatientArea::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) {
        updateGeometry();
    }
}

bool SectionView::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_page && event->type() == QEvent::LayoutRequest) {
        updateGeometry();
    }
    return PatientArea::eventFilter(watched, event);
}

void SectionView::clear() {
    for (QWidget* part : m_parts) {
        m_column->removeWidget(part);
        part->hide();
        part->deleteLater();
    }
    m_parts.clear();
    m_charts.clear();
}

void SectionView::forget() {
    const std::vector<QWidget*> parts = m_parts;
    clear();
    for (QWidget* part : parts) {
        delete part;
    }
}

void SectionView::add(QWidget* part) {
    m_column->insertWidget(static_cast<int>(m_parts.size()), part);
    m_parts.push_back(part);
}

QLabel* SectionView::addLabel(const QString& text, const char* style) {
    auto* label = new QLabel(text, m_page);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    if (style != nullptr) {
        label->setObjectName(QString::fromLatin1(style));
    }
    add(label);
    return label;
}

void SectionView::addStatements(const std::vector<ww::report::Statement>& statements, const QString& name) {
    QStringList sentences;
    sentences.reserve(static_cast<qsizetype>(statements.size()));
    for (const ww::report::Statement& statement : statements) {
        sentences << text::text(statement);
    }
    if (statements.size() <= kMostLabels) {
        for (const QString& sentence : sentences) {
            addLabel(sentence);
        }
        return;
    }
    auto* list = new StatementList(m_page);
    list->setAccessibleName(name);
    list->show(sentences);
    add(list);
}

void SectionView::addFigures(std::vector<charts::ChartFigure> figures) {
    for (charts::ChartFigure& figure : figures) {
        if (figure.isEmpty()) {
            continue;
        }
        auto* chart = new charts::ChartView(m_page);
        chart->setTokens(m_tokens);
        chart->setFigure(std::move(figure));
        chart->setMinimumHeight(kFigureHeight);
        m_charts.push_back(chart);
        add(chart);
    }
}

void SectionView::showMessage(const QString& message) {
    clear();
    addLabel(message);
}

void SectionView::show(ww::report::Section section, std::vector<charts::ChartFigure> figures) {
    const int scrolled = verticalScrollBar()->value();
    clear();
    const QString title = report::words(section.title);
    setAccessibleName(title);
    addLabel(title, "panel_title");
    addStatements(section.opening, tr("%1, statements").arg(title));
    if (!section.facts.empty()) {
        auto* facts = new FactList(m_page);
        facts->show(section.facts, m_tokens);
        add(facts);
    }
    addStatements(section.statements, tr("%1, statements").arg(title));
    addFigures(std::move(figures));
    for (ww::report::Table& table : section.tables) {
        addLabel(report::words(table.title), "panel_title");
        auto* shown = new SectionTable(m_page);
        shown->show(std::move(table));
        add(shown);
    }
    addStatements(section.closing, tr("%1, findings").arg(title));
    verticalScrollBar()->setValue(scrolled);
}

void SectionView::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    for (charts::ChartView* chart : m_charts) {
        chart->setTokens(tokens);
    }
}

bool SectionView::toggleTable() {
    if (m_charts.empty()) {
        return false;
    }
    m_charts.front()->toggleTable();
    return true;
}

std::vector<SectionTable*> SectionView::tables() const {
    std::vector<SectionTable*> found;
    for (QWidget* part : m_parts) {
        if (auto* table = qobject_cast<SectionTable*>(part)) {
            found.push_back(table);
        }
    }
    return found;
}

std::vector<charts::ChartView*> SectionView::charts() const {
    return m_charts;
}

}  // namespace ww::ui
