#include "ui/schematic/schematic_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/theme/state_shape.h"

namespace ww::ui::schematic {

namespace {

constexpr double kMinimumZoom = 0.1;
constexpr double kMaximumZoom = 4.0;
/// Small loops are not blown up beyond this.
constexpr double kFittedZoom = 1.25;
/// Below this zoom texts are smaller than can be read and are left out.
constexpr double kTextsFromZoom = 0.55;

QString percent(std::optional<quantity::Ratio> ratio) {
    return ratio ? QString::number(100.0 * ratio->si(), 'f', 0) + QStringLiteral(" %") : QString();
}

}  // namespace

SchematicView::SchematicView(QWidget* parent) : QGraphicsView(parent) {
    setScene(new QGraphicsScene(this));
    setRenderHint(QPainter::Antialiasing);
    setFrameShape(QFrame::NoFrame);
    setDragMode(QGraphicsView::ScrollHandDrag);
    setFocusPolicy(Qt::StrongFocus);
    setTransformationAnchor(QGraphicsView::AnchorUnderMouse);
    setAccessibleName(tr("One-line diagram"));
    m_tokens = theme::tokens(theme::Display::Office);
}

void SchematicView::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    viewport()->update();
}

void SchematicView::show(const project::Project& project, const balancing::Assessment& assessment) {
    const std::size_t before = m_pictures.size();
    m_tree.emplace(project.branches());
    m_layout = layOut(*m_tree);
    m_pictures.assign(project.branches().size(), {});
    const bool isJudged = assessment.branches.size() == project.branches().size();
    for (std::size_t i = 0; i < m_pictures.size(); ++i) {
        const project::Branch& branch = project.branches()[i];
        BranchPicture& picture = m_pictures[i];
        picture.id = branch.id;
        picture.tag = QString::fromStdString(branch.tag);
        picture.isTerminal = m_tree->isTerminal(i);
        const auto* characteristic = project.characteristicOf(branch);
        picture.hasValve = characteristic != nullptr;
        if (!isJudged) {
            continue;
        }
        const balancing::BranchResult& result = assessment.branches[i];
        picture.state = result.state;
        picture.isOver = result.ofTarget && result.ofTarget->si() > 1;
        picture.share = percent(result.ofTarget);
        if (characteristic != nullptr) {
            const quantity::Setting open = characteristic->fullyOpen();
            const quantity::Setting setting = result.setting.value_or(open);
            picture.openFraction = std::clamp(setting / open, 0.0, 1.0);
            picture.setting = QString::number(setting.si());
        }
        picture.isIndexTerminal = assessment.index.terminal == i;
    }
    for (const std::size_t branch : assessment.index.path) {
        if (branch < m_pictures.size()) {
            m_pictures[branch].isOnIndexPath = true;
        }
    }
    scene()->setSceneRect(m_layout.bounds);
    if (m_current && *m_current >= m_pictures.size()) {
        m_current.reset();
    }
    if (before != m_pictures.size()) {
        fit();
    }
    describe();
    viewport()->update();
}

void SchematicView::setCurrent(const base::Id& branch) {
    const auto found = std::find_if(m_pictures.begin(), m_pictures.end(),
                                    [&](const BranchPicture& picture) { return picture.id == branch; });
    m_current = found == m_pictures.end()
                    ? std::nullopt
                    : std::optional(static_cast<std::size_t>(found - m_pictures.begin()));
    if (m_current && !m_isFitted) {
        ensureVisible(m_layout.places[*m_current].label.united(
            QRectF(m_layout.places[*m_current].valve, QSizeF(1, 1))));
    }
    describe();
    viewport()->update();
}

void SchematicView::makeCurrent(std::size_t branch) {
    setCurrent(m_pictures[branch].id);
    emit currentChanged(m_pictures[branch].id);
}

void SchematicView::describe() {
    QString sentence = tr("%n branch(es). Arrow keys follow the pipe, Enter opens the valve.", nullptr,
                          static_cast<int>(m_pictures.size()));
    if (m_current) {
        const BranchPicture& picture = m_pictures[*m_current];
        sentence = picture.share.isEmpty() ? tr("%1, not read").arg(picture.tag)
                                           : tr("%1, %2 of target").arg(picture.tag, picture.share);
        sentence += picture.isOnIndexPath ? tr(", on the index circuit") : QString();
    }
    setAccessibleDescription(sentence);
}

void SchematicView::fit() {
    m_isFitted = true;
    resetTransform();
    const QSizeF room = viewport()->size();
    if (m_layout.bounds.isEmpty() || room.isEmpty()) {
        return;
    }
    const double zoom = std::min(
        {kFittedZoom, room.width() / m_layout.bounds.width(), room.height() / m_layout.bounds.height()});
    scale(std::max(zoom, kMinimumZoom), std::max(zoom, kMinimumZoom));
    centerOn(m_layout.bounds.center());
}

void SchematicView::zoomBy(double factor) {
    const double wanted = std::clamp(transform().m11() * factor, kMinimumZoom, kMaximumZoom);
    const double by = wanted / transform().m11();
    scale(by, by);
    m_isFitted = false;
}

void SchematicView::resizeEvent(QResizeEvent* event) {
    QGraphicsView::resizeEvent(event);
    if (m_isFitted) {
        fit();
    }
}

void SchematicView::wheelEvent(QWheelEvent* event) {
    if (event->modifiers() & Qt::ControlModifier) {
        zoomBy(event->angleDelta().y() > 0 ? 1.15 : 1 / 1.15);
        event->accept();
        return;
    }
    QGraphicsView::wheelEvent(event);
}

void SchematicView::keyPressEvent(QKeyEvent* event) {
    std::optional<Step> direction;
    switch (event->key()) {
        case Qt::Key_Left:
            direction = Step::Left;
            break;
        case Qt::Key_Right:
            direction = Step::Right;
            break;
        case Qt::Key_Up:
            direction = Step::Up;
            break;
        case Qt::Key_Down:
            direction = Step::Down;
            break;
        case Qt::Key_Plus:
            zoomBy(1.25);
            return;
        case Qt::Key_Minus:
            zoomBy(0.8);
            return;
        case Qt::Key_0:
            fit();
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (m_current) {
                emit activated(m_pictures[*m_current].id);
            }
            return;
        default:
            QGraphicsView::keyPressEvent(event);
            return;
    }
    if (m_pictures.empty()) {
        return;
    }
    if (!m_current) {
        makeCurrent(m_tree->roots().front());
    } else if (const auto next = step(*m_tree, m_layout, *m_current, *direction)) {
        makeCurrent(*next);
    }
}

std::optional<std::size_t> SchematicView::branchAt(const QPoint& position) const {
    const QPointF point = mapToScene(position);
    for (std::size_t i = 0; i < m_layout.places.size(); ++i) {
        const BranchPlace& place = m_layout.places[i];
        const QRectF valve = QRectF(place.valve - QPointF(14, 14), QSizeF(28, 28));
        if (valve.contains(point) || place.label.contains(point)) {
            return i;
        }
    }
    return std::nullopt;
}

void SchematicView::mousePressEvent(QMouseEvent* event) {
    if (const auto branch = branchAt(event->pos())) {
        makeCurrent(*branch);
    }
    QGraphicsView::mousePressEvent(event);
}

void SchematicView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (const auto branch = branchAt(event->pos())) {
        emit activated(m_pictures[*branch].id);
    }
}

void SchematicView::paintPipe(QPainter& painter, const QLineF& pipe, bool isDouble) const {
    const double width = m_tokens.isDaylight ? 2.5 : 1.8;
    painter.setPen(
        QPen(isDouble ? m_tokens.ink : m_tokens.rule, isDouble ? 1.6 : width, Qt::SolidLine, Qt::FlatCap));
    if (!isDouble) {
        painter.drawLine(pipe);
        return;
    }
    painter.setPen(QPen(m_tokens.paper, 5));
    painter.drawLine(pipe);
    painter.setPen(QPen(m_tokens.ink, 1.6, Qt::SolidLine, Qt::FlatCap));
    const QPointF aside = pipe.dx() == 0 ? QPointF(2.0, 0) : QPointF(0, 2.0);
    painter.drawLine(pipe.translated(aside));
    painter.drawLine(pipe.translated(-aside));
}

void SchematicView::paintValve(QPainter& painter, const BranchPlace& place,
                               const BranchPicture& picture) const {
    painter.save();
    painter.translate(place.valve);
    if (place.direction == Direction::Down) {
        painter.rotate(90);
    }
    QPainterPath bow;
    bow.moveTo(-10, -7);
    bow.lineTo(10, 7);
    bow.lineTo(10, -7);
    bow.lineTo(-10, 7);
    bow.closeSubpath();
    painter.setPen(QPen(m_tokens.ink, 1.4));
    painter.setBrush(m_tokens.paper);
    painter.drawPath(bow);
    // The wedge fills the valve from its waist outward, as far as it is open.
    const double reach = 10 * picture.openFraction;
    QPainterPath wedge;
    wedge.moveTo(0, 0);
    wedge.lineTo(reach, 7 * picture.openFraction);
    wedge.lineTo(reach, -7 * picture.openFraction);
    wedge.closeSubpath();
    wedge.moveTo(0, 0);
    wedge.lineTo(-reach, 7 * picture.openFraction);
    wedge.lineTo(-reach, -7 * picture.openFraction);
    wedge.closeSubpath();
    painter.fillPath(wedge, m_tokens.ink);
    painter.restore();
}

void SchematicView::paintLabel(QPainter& painter, const BranchPlace& place,
                               const BranchPicture& picture) const {
    const QRectF box = place.label;
    const QRectF shape(box.left(), box.top() + 1, 14, 14);
    theme::paintState(painter, shape, picture.state, picture.isOver, m_tokens);
    QFont font = painter.font();
    font.setPixelSize(12);
    font.setBold(picture.isIndexTerminal);
    painter.setFont(font);
    painter.setPen(m_tokens.ink);
    const QString tag = picture.isIndexTerminal ? picture.tag + QStringLiteral(" *") : picture.tag;
    const QString setting = picture.setting.isEmpty() ? QString() : tr("at %1").arg(picture.setting);
    const bool isStacked = place.direction == Direction::Down;
    const QString first = isStacked ? tag : tag + QStringLiteral("  ") + picture.share;
    const QString second =
        !isStacked || picture.share.isEmpty() ? setting : picture.share + QStringLiteral("  ") + setting;
    const QRectF line(shape.right() + 4, box.top(), box.right() - shape.right() - 4, 16);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, first);
    // A branch that goes right has all in one line above its pipe.
    const QPointF beside =
        isStacked ? QPointF(0, 15) : QPointF(painter.fontMetrics().horizontalAdvance(first) + 8, 0);
    font.setBold(false);
    font.setPixelSize(11);
    painter.setFont(font);
    painter.setPen(m_tokens.soft);
    painter.drawText(line.translated(beside), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, second);
}

void SchematicView::paintBranch(QPainter& painter, std::size_t branch, bool hasTexts) const {
    const BranchPlace& place = m_layout.places[branch];
    const BranchPicture& picture = m_pictures[branch];
    if (picture.hasValve) {
        paintValve(painter, place, picture);
    }
    if (picture.isTerminal) {
        // The unit that the circuit serves, where it turns back into the return.
        painter.setPen(QPen(m_tokens.ink, 1.4));
        painter.setBrush(m_tokens.paper);
        painter.drawRect(QRectF(place.pipe.p2() - QPointF(4, 4), QSizeF(8, 8)));
    }
    if (hasTexts) {
        paintLabel(painter, place, picture);
    } else {
        theme::paintState(painter, QRectF(place.label.topLeft(), QSizeF(18, 18)), picture.state,
                          picture.isOver, m_tokens);
    }
    if (m_current == branch) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_tokens.ink, 3));
        painter.drawRoundedRect(
            place.label.united(QRectF(place.valve - QPointF(11, 9), QSizeF(22, 18))).adjusted(-3, -3, 3, 3),
            4, 4);
    }
}

void SchematicView::drawBackground(QPainter* painter, const QRectF& exposed) {
    painter->fillRect(exposed, m_tokens.paper);
    if (m_pictures.empty()) {
        return;
    }
    const bool hasTexts = transform().m11() >= kTextsFromZoom;
    paintPipe(*painter, m_layout.mainPipe, false);
    for (std::size_t i = 0; i < m_pictures.size(); ++i) {
        paintPipe(*painter, m_layout.places[i].pipe, false);
    }
    // The index circuit from the pump outward: each pipe only as far as the next take-off on the path.
    QPointF from = m_layout.pump;
    for (std::size_t i = 0; i < m_pictures.size(); ++i) {
        const std::size_t branch = m_tree->topDown()[i];
        if (m_pictures[branch].isOnIndexPath) {
            paintPipe(*painter, QLineF(from, m_layout.places[branch].takeOff), true);
            from = m_layout.places[branch].takeOff;
            if (m_pictures[branch].isTerminal) {
                paintPipe(*painter, m_layout.places[branch].pipe, true);
            }
        }
    }
    for (std::size_t i = 0; i < m_pictures.size(); ++i) {
        const QRectF reach = QRectF(m_layout.places[i].pipe.p1(), m_layout.places[i].pipe.p2())
                                 .normalized()
                                 .united(m_layout.places[i].label)
                                 .adjusted(-20, -20, 20, 20);
        if (reach.intersects(exposed)) {
            paintBranch(*painter, i, hasTexts);
        }
    }
    painter->setPen(QPen(m_tokens.ink, 2));
    painter->setBrush(m_tokens.paper);
    painter->drawEllipse(m_layout.pump, 14, 14);
    QPainterPath arrow;
    arrow.moveTo(m_layout.pump + QPointF(-6, -9));
    arrow.lineTo(m_layout.pump + QPointF(13, 0));
    arrow.lineTo(m_layout.pump + QPointF(-6, 9));
    painter->drawPath(arrow);
}

}  // namespace ww::ui::schematic
