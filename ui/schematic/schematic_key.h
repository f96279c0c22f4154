// What the shapes and signs of the one-line diagram stand for, each with its word. Shows what the drawing
// has; not for the drawing itself (schematic_view.h).
#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "ui/schematic/schematic_drawing.h"

namespace ww::ui::schematic {

/// Signs and words in as many lines as the width asks for; as high as these are.
class SchematicKey : public QWidget {
    Q_OBJECT

  public:
    explicit SchematicKey(QWidget* parent = nullptr);

    /// The shapes and signs of this drawing and no others.
    void show(const SchematicDrawing& drawing);
    void setTokens(const theme::Tokens& tokens);
    /// The words, in the order in which they stand.
    QStringList words() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    /// Paints a sign round the origin, 16 by 16 device-independent pixels.
    using Sign = std::function<void(QPainter& painter, const theme::Tokens& tokens)>;
    struct Entry {
        std::vector<Sign> signs;
        QString words;
    };
    struct Place {
        QRect sign;
        QRect words;
    };

    void add(Sign sign, const QString& words);
    int signSide() const;
    int signsWidth(const Entry& entry) const;
    std::vector<Place> places(int width) const;
    void fitHeight();

    std::vector<Entry> m_entries;
    theme::Tokens m_tokens;
};

}  // namespace ww::ui::schematic
