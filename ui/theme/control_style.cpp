#include "ui/theme/control_style.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QDialog>
#include <QEvent>
#include <QMainWindow>
#include <QPainter>
#include <QScreen>
#include <QStyleOption>
#include <QTableView>
#include <algorithm>

#include "ui/text/written_way.h"

namespace ww::ui::theme {
namespace {

/// The largest square in the middle of what a style has room for.
QRect squareIn(const QRect& room) {
    const int side = std::min(room.width(), room.height());
    QRect square(0, 0, side, side);
    square.moveCenter(room.center());
    return square;
}

bool isBesideMainWindow(const QWidget* widget) {
    return widget != nullptr && qobject_cast<const QMainWindow*>(widget->window()) == nullptr;
}

/// Whether an item is a target of its own in a widget of the program.
bool isTouched(const QWidget* widget) {
    const auto* view = qobject_cast<const QAbstractItemView*>(widget);
    return view != nullptr && view->selectionMode() != QAbstractItemView::NoSelection &&
           isBesideMainWindow(view);
}

}  // namespace

ControlStyle::ControlStyle(const QString& desktopStyle)
    : QProxyStyle(desktopStyle), m_tokens(theme::tokens(Display::Office)) {}

void ControlStyle::setLook(const Tokens& tokens, const Metrics& metrics) {
    m_tokens = tokens;
    m_metrics = metrics;
}

void ControlStyle::polish(QWidget* widget) {
    QProxyStyle::polish(widget);
    if (qobject_cast<QDialog*>(widget) != nullptr) {
        widget->installEventFilter(this);
    }
}

bool ControlStyle::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Show) {
        constexpr int kFrame = 60;
        auto* dialog = static_cast<QWidget*>(watched);
        dialog->resize(dialog->size().boundedTo(dialog->screen()->availableSize() - QSize(kFrame, kFrame)));
    }
    return QProxyStyle::eventFilter(watched, event);
}

void ControlStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                 const QWidget* widget) const {
    switch (element) {
        case PE_IndicatorCheckBox:
        case PE_IndicatorItemViewItemCheck:
            paintBox(*painter, squareIn(option->rect), option->state);
            break;
        case PE_IndicatorRadioButton:
            paintCircle(*painter, squareIn(option->rect), option->state);
            break;
        default:
            QProxyStyle::drawPrimitive(element, option, painter, widget);
            break;
    }
}

void ControlStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    const auto* item = qstyleoption_cast<const QStyleOptionViewItem*>(option);
    if (element != CE_ItemViewItem || item == nullptr) {
        QProxyStyle::drawControl(element, option, painter, widget);
        return;
    }
    QStyleOptionViewItem written = asWritten(*item);
    written.text = text::writtenApart(item->direction, item->text);
    QProxyStyle::drawControl(element, &written, painter, widget);
}

/// A number in a table has the weight of numbers.
QStyleOptionViewItem ControlStyle::asWritten(const QStyleOptionViewItem& item) const {
    QStyleOptionViewItem written(item);
    if (qobject_cast<const QTableView*>(item.widget) != nullptr && item.font.weight() < m_tokens.numerals &&
        text::isNumeral(item.text)) {
        written.font.setWeight(m_tokens.numerals);
        written.fontMetrics = QFontMetrics(written.font);
    }
    return written;
}

QSize ControlStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                                     const QWidget* widget) const {
    const QSize least(0, leastTarget());
    const auto* item = qstyleoption_cast<const QStyleOptionViewItem*>(option);
    if (type == CT_ItemViewItem && item != nullptr) {
        const QStyleOptionViewItem written = asWritten(*item);
        const QSize size = QProxyStyle::sizeFromContents(type, &written, contents, widget);
        return isTouched(widget) ? size.expandedTo(least) : size;
    }
    const QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    const bool isChoice = type == CT_MenuItem && qobject_cast<const QComboBox*>(widget) != nullptr;
    return isChoice ? size.expandedTo(least) : size;
}

int ControlStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                            QStyleHintReturn* returned) const {
    return hint == kNumeralWeight ? int(m_tokens.numerals)
           : hint == kTargetGap   ? m_metrics.targetGap()
                                  : QProxyStyle::styleHint(hint, option, widget, returned);
}

int ControlStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    switch (metric) {
        case PM_LayoutHorizontalSpacing:
        case PM_LayoutVerticalSpacing:
            return isBesideMainWindow(widget) ? std::max(usual, m_metrics.targetGap()) : usual;
        // The branch of a tree opens and closes, the sign in a field clears it.
        case PM_TreeViewIndentation:
        case PM_LineEditIconSize:
            return std::max(usual, leastTarget());
        default:
            return usual;
    }
}

void ControlStyle::drawItemText(QPainter* painter, const QRect& box, int flags, const QPalette& palette,
                                bool isEnabled, const QString& words, QPalette::ColorRole role) const {
    QProxyStyle::drawItemText(painter, box, text::writtenFlags(painter->layoutDirection(), flags, words),
                              palette, isEnabled, words, role);
}

QPen ControlStyle::framePen(State state) const {
    const bool isEnabled = state.testFlag(State_Enabled);
    QPen pen(!isEnabled            ? m_tokens.rule
             : m_tokens.isDaylight ? m_tokens.ink
                                   : m_tokens.soft,
             m_tokens.isDaylight ? 2 : 1);
    if (!isEnabled) {
        // Shorter than those of a frame around a field: some must have room on a side.
        pen.setDashPattern({2.0, 2.0});
    }
    pen.setJoinStyle(Qt::MiterJoin);
    return pen;
}

QColor ControlStyle::fill(State state) const {
    return !state.testFlag(State_Enabled) ? m_tokens.panel
           : state.testFlag(State_Sunken) ? m_tokens.tintCurrent
                                          : m_tokens.paper;
}

void ControlStyle::paintBox(QPainter& painter, const QRect& box, State state) const {
    painter.save();
    // Half a line inside, so that its pixels have the whole color.
    const QPen frame = framePen(state);
    const double half = frame.widthF() / 2;
    painter.setPen(frame);
    painter.setBrush(fill(state));
    painter.drawRect(QRectF(box).adjusted(half, half, -half, -half));
    const auto at = [&box](double x, double y) {
        return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
    };
    QPen mark(state.testFlag(State_Enabled) ? m_tokens.ink : m_tokens.soft, box.width() * 0.15);
    mark.setCapStyle(Qt::FlatCap);
    mark.setJoinStyle(Qt::MiterJoin);
    painter.setPen(mark);
    painter.setBrush(Qt::NoBrush);
    painter.setRenderHint(QPainter::Antialiasing);
    if (state.testFlag(State_On)) {
        painter.drawPolyline(QPolygonF{at(0.20, 0.50), at(0.42, 0.72), at(0.82, 0.24)});
    } else if (state.testFlag(State_NoChange)) {
        painter.drawLine(at(0.24, 0.5), at(0.76, 0.5));
    }
    painter.restore();
}

void ControlStyle::paintCircle(QPainter& painter, const QRect& box, State state) const {
    constexpr double kLeastLine = 1.5;  // a thinner one is smeared below 3:1
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPen frame = framePen(state);
    frame.setWidthF(std::max(frame.widthF(), kLeastLine));
    const double half = frame.widthF() / 2;
    painter.setPen(frame);
    painter.setBrush(fill(state));
    painter.drawEllipse(QRectF(box).adjusted(half, half, -half, -half));
    if (state.testFlag(State_On)) {
        const double inset = box.width() * 0.28;
        painter.setPen(Qt::NoPen);
        painter.setBrush(state.testFlag(State_Enabled) ? m_tokens.ink : m_tokens.soft);
        painter.drawEllipse(QRectF(box).adjusted(inset, inset, -inset, -inset));
    }
    painter.restore();
}

}  // namespace ww::ui::theme
