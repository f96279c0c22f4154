// The one-line diagram on screen: pump, pipes, valves with their open fraction, state and "of target" of
// every branch, the index circuit as a double line. Shows what it is given; changes nothing.
#pragma once

#include <QGraphicsView>

#include "ui/schematic/schematic_drawing.h"

namespace ww::ui::schematic {

/// Arrow keys follow the pipe, Enter opens the branch in hand, Ctrl+wheel, + and - zoom, 0 fits the whole
/// loop.
class SchematicView : public QGraphicsView {
    Q_OBJECT

  public:
    explicit SchematicView(QWidget* parent = nullptr);

    /// Draws the loop of a project with what an assessment says of it. Zoom and place in view stay where the
    /// branches are the same.
    void show(const project::Project& project, const balancing::Assessment& assessment);
    void setTokens(const theme::Tokens& tokens);
    /// Marks a branch and brings it into view; an unknown id marks none. Emits nothing.
    void setCurrent(const base::Id& branch);
    /// The whole loop in the view, never larger than 125 % in text of the usual size.
    void fit();
    /// What one press of a key or a button enlarges by.
    static constexpr double kZoomStep = 1.25;
    /// Larger, or with less than 1 smaller; the branch in hand stays in view.
    void zoomBy(double factor);
    const SchematicDrawing& drawing() const { return m_drawing; }

  signals:
    void currentChanged(ww::base::Id branch);
    void activated(ww::base::Id branch);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void drawBackground(QPainter* painter, const QRectF& exposed) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void scaleBy(double factor);
    void showPlaceOf(std::size_t branch);
    std::optional<std::size_t> branchAt(const QPoint& position) const;
    void makeCurrent(std::size_t branch);
    void describe();

    theme::Tokens m_tokens;
    SchematicDrawing m_drawing;
    std::optional<project::BranchTree> m_tree;
    std::optional<std::size_t> m_current;
    bool m_isFitted = true;
};

}  // namespace ww::ui::schematic
