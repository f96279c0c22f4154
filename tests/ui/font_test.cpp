#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

namespace ww::ui {
namespace {

QImage drawn(const QString& text) {
    QImage image(64, 64, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.drawText(image.rect(), Qt::AlignCenter, text);
    painter.end();
    return image;
}

// Without any font every glyph is the same box and nothing else fails; no outside source.
TEST(Font, glyphsDiffer) {
    EXPECT_NE(drawn("A"), drawn("B"));
    EXPECT_NE(drawn("A"), drawn(" "));
}

}  // namespace
}  // namespace ww::ui
