// The one-line diagram on screen: pump, pipes, valves with their open fraction, state and "of target" of
// every branch, the index circuit as a double line. Shows what it is given; changes nothing.
#pragma once

#include <QGraphicsView>
#include <vector>

#include "core/balancing/assessment.h"
#include "ui/schematic/schematic_layout.h"
#include "ui/theme/theme.h"

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
    /// The whole loop in the view, never larger than 125 %.
    void fit();
    void zoomBy(double factor);
    const SchematicLayout& schematicLayout() const { return m_layout; }

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

  private:
    /// What one branch shows, taken out of project and assessment so that painting needs neither.
    struct BranchPicture {
        base::Id id;
        QString tag;
        QString share;
        QString setting;
        balancing::State state{};
        bool isOver = false;
        bool isTerminal = true;
        bool hasValve = false;
        bool isOnIndexPath = false;
        bool isIndexTerminal = false;
        double openFraction = 1;
    };

    void paintBranch(QPainter& painter, std::size_t branch, bool hasTexts) const;
    void paintValve(QPainter& painter, const BranchPlace& place, const BranchPicture& picture) const;
    void paintLabel(QPainter& painter, const BranchPlace& place, const BranchPicture& picture) const;
    void paintPipe(QPainter& painter, const QLineF& pipe, bool isDouble) const;
    std::optional<std::size_t> branchAt(const QPoint& position) const;
    void makeCurrent(std::size_t branch);
    void describe();

    theme::Tokens m_tokens;
    SchematicLayout m_layout;
    std::vector<BranchPicture> m_pictures;
    std::optional<project::BranchTree> m_tree;
    std::optional<std::size_t> m_current;
    bool m_isFitted = true;
};

}  // namespace ww::ui::schematic
