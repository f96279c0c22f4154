#include "ui/schematic/schematic_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>

#include "ui/widgets/focus_ring.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui::schematic {

namespace {

constexpr double kMinimumZoom = 0.1;
constexpr double kMaximumZoom = 4.0;
/// Small loops are not blown up beyond this, in text of the usual size.
constexpr double kFittedZoom = 1.25;
/// Beyond the zoom at which words of the display's size are so high, scene units, they grow with the drawing.
constexpr double kWordHeight = 12.0;

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
    new FocusRing(this);
}

void SchematicView::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    viewport()->update();
}

void SchematicView::show(const project::Project& project, const balancing::Assessment& assessment) {
    const std::size_t before = m_drawing.pictures.size();
    m_tree.emplace(project.branches());
    m_drawing = drawingOf(project, assessment);
    scene()->setSceneRect(m_drawing.layout.bounds);
    if (m_current && *m_current >= m_drawing.pictures.size()) {
        m_current.reset();
    }
    if (before != m_drawing.pictures.size()) {
        fit();
    }
    describe();
    viewport()->update();
}

void SchematicView::setCurrent(const base::Id& branch) {
    const auto found = std::find_if(m_drawing.pictures.begin(), m_drawing.pictures.end(),
                                    [&](const BranchPicture& picture) { return picture.id == branch; });
    m_current = found == m_drawing.pictures.end()
                    ? std::nullopt
                    : std::optional(static_cast<std::size_t>(found - m_drawing.pictures.begin()));
    if (m_current && !m_isFitted) {
        showPlaceOf(*m_current);
    }
    describe();
    viewport()->update();
}

void SchematicView::makeCurrent(std::size_t branch) {
    setCurrent(m_drawing.pictures[branch].id);
    emit currentChanged(m_drawing.pictures[branch].id);
}

void SchematicView::describe() {
    QString sentence = tr("%n branch(es). Arrow keys follow the pipe, Enter opens the valve.", nullptr,
                          static_cast<int>(m_drawing.pictures.size()));
    if (m_current) {
        const BranchPicture& picture = m_drawing.pictures[*m_current];
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
    if (m_drawing.layout.bounds.isEmpty() || room.isEmpty()) {
        return;
    }
    const double zoom =
        std::min({kFittedZoom * textScale(font()), room.width() / m_drawing.layout.bounds.width(),
                  room.height() / m_drawing.layout.bounds.height()});
    scale(std::max(zoom, kMinimumZoom), std::max(zoom, kMinimumZoom));
    centerOn(m_drawing.layout.bounds.center());
}

void SchematicView::zoomBy(double factor) {
    setTransformationAnchor(QGraphicsView::AnchorViewCenter);
    scaleBy(factor);
    setTransformationAnchor(QGraphicsView::AnchorUnderMouse);
    if (m_current) {
        showPlaceOf(*m_current);
    }
}

void SchematicView::scaleBy(double factor) {
    const double wanted = std::clamp(transform().m11() * factor, kMinimumZoom, kMaximumZoom);
    const double by = wanted / transform().m11();
    scale(by, by);
    m_isFitted = false;
}

void SchematicView::showPlaceOf(std::size_t branch) {
    const BranchPlace& place = m_drawing.layout.places[branch];
    ensureVisible(place.label.united(QRectF(place.valve, QSizeF(1, 1))));
}

void SchematicView::changeEvent(QEvent* event) {
    QGraphicsView::changeEvent(event);
    if (event->type() == QEvent::FontChange && m_isFitted) {
        fit();
    }
}

void SchematicView::resizeEvent(QResizeEvent* event) {
    QGraphicsView::resizeEvent(event);
    if (m_isFitted) {
        fit();
    }
}

void SchematicView::wheelEvent(QWheelEvent* event) {
    if (event->modifiers() & Qt::ControlModifier) {
        scaleBy(event->angleDelta().y() > 0 ? 1.15 : 1 / 1.15);
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
            zoomBy(kZoomStep);
            return;
        case Qt::Key_Minus:
            zoomBy(1 / kZoomStep);
            return;
        case Qt::Key_0:
            fit();
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (m_current) {
                emit activated(m_drawing.pictures[*m_current].id);
            }
            return;
        default:
            QGraphicsView::keyPressEvent(event);
            return;
    }
    if (m_drawing.pictures.empty()) {
        return;
    }
    if (!m_current) {
        makeCurrent(m_tree->roots().front());
    } else if (const auto next = step(*m_tree, m_drawing.layout, *m_current, *direction)) {
        makeCurrent(*next);
    }
}

std::optional<std::size_t> SchematicView::branchAt(const QPoint& position) const {
    const QPointF point = mapToScene(position);
    for (std::size_t i = 0; i < m_drawing.layout.places.size(); ++i) {
        const BranchPlace& place = m_drawing.layout.places[i];
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
        emit activated(m_drawing.pictures[*branch].id);
    }
}

void SchematicView::drawBackground(QPainter* painter, const QRectF& exposed) {
    painter->fillRect(exposed, m_tokens.paper);
    QFont words = font();
    words.setPixelSize(QFontInfo(words).pixelSize());
    words.setHintingPreference(QFont::PreferNoHinting);
    // Never smaller than all other text of this display.
    const double unit = std::max(1.0 / transform().m11(), kWordHeight / words.pixelSize());
    paintSchematic(*painter, m_drawing, exposed, {m_tokens, words, unit});
    if (m_current) {
        const BranchPlace& place = m_drawing.layout.places[*m_current];
        painter->setBrush(Qt::NoBrush);
        painter->setPen(QPen(m_tokens.ink, 3));
        // Not over the next row.
        const double above = place.direction == Direction::Right ? 0 : 3;
        painter->drawRoundedRect(place.label.united(QRectF(place.valve - QPointF(11, 9), QSizeF(22, 18)))
                                     .adjusted(-3, -above, 3, above),
                                 4, 4);
    }
}

}  // namespace ww::ui::schematic
