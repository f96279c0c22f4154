#include "ui/places/fact_list.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <algorithm>

#include "ui/report/page_builder.h"
#include "ui/text/joined.h"
#include "ui/theme/mark_shape.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui {

MarkShape::MarkShape(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize MarkShape::sizeHint() const {
    constexpr int kSide = 18;
    return QSize(kSide, kSide) * textScale(font());
}

void MarkShape::show(ww::report::Mark mark, const theme::Tokens& tokens) {
    m_mark = mark;
    m_tokens = tokens;
    switch (mark) {
        case ww::report::Mark::None:
            setAccessibleName(QString());
            break;
        case ww::report::Mark::Pass:
            setAccessibleName(tr("passed"));
            break;
        case ww::report::Mark::Fail:
            setAccessibleName(tr("failed"));
            break;
        case ww::report::Mark::Open:
            setAccessibleName(tr("open"));
            break;
    }
    update();
}

void MarkShape::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const double margin = width() / 9.0;
    theme::paintMark(painter, QRectF(rect()).adjusted(margin, margin, -margin, -margin), m_mark, m_tokens);
}

FactList::FactList(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(8);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(2, 1);
}

void FactList::show(const std::vector<ww::report::Fact>& facts, const theme::Tokens& tokens) {
    while (QLayoutItem* item = m_grid->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_lines.clear();
    for (const ww::report::Fact& fact : facts) {
        auto* label = new QLabel(report::words(fact.label), this);
        QFont bold = font();
        bold.setBold(true);
        label->setFont(bold);
        // A fact that goes on from the one above takes no line for its label.
        label->setVisible(!label->text().isEmpty());
        auto* mark = new MarkShape(this);
        mark->show(fact.mark, tokens);
        auto* value = new QLabel(report::words(fact.value), this);
        value->setWordWrap(true);
        value->setTextInteractionFlags(Qt::TextSelectableByMouse);
        value->setAccessibleName(text::labelled(label->text(), value->text()));
        m_lines.push_back({label, mark, value});
    }
    arrange();
}

bool FactList::isNarrow() const {
    constexpr double kLeastValue = 190;
    int widest = 0;
    int beside = 2 * m_grid->horizontalSpacing();
    for (const Line& line : m_lines) {
        widest = std::max(widest, line.label->sizeHint().width());
        beside = 2 * m_grid->horizontalSpacing() + line.mark->sizeHint().width();
    }
    return width() < widest + beside + static_cast<int>(kLeastValue * textScale(font()));
}

void FactList::arrange() {
    m_isBelow = isNarrow();
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const Line& line = m_lines[i];
        const int row = static_cast<int>(2 * i);
        const int below = m_isBelow ? row + 1 : row;
        m_grid->addWidget(line.label, row, 0, 1, m_isBelow ? 3 : 1, Qt::AlignTop);
        m_grid->addWidget(line.mark, below, 1, Qt::AlignTop);
        m_grid->addWidget(line.value, below, 2, Qt::AlignTop);
    }
}

void FactList::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (isNarrow() != m_isBelow) {
        while (QLayoutItem* item = m_grid->takeAt(0)) {
            delete item;
        }
        arrange();
    }
}

}  // namespace ww::ui
