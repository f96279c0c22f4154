#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "ui/window_look.h"

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

/// The columns of pixels from the left that are not white.
int widthDrawn(const QImage& image) {
    for (int x = image.width() - 1; x >= 0; --x) {
        for (int y = 0; y < image.height(); ++y) {
            constexpr int kNearlyWhite = 200;
            if (qGray(image.pixel(x, y)) < kNearlyWhite) {
                return x + 1;
            }
        }
    }
    return 0;
}

// A label is as wide as its words measure.
TEST(Font, wordsWithAnUnderlinedLetterAreDrawnAsWideAsTheyMeasure) {
    for (const double points : {10.0, 20.0}) {
        const QFont font = lookOf(theme::Display::Office, points, false).font;
        for (const char* words : {"&Temperatur", "&Text", "Vale&Te"}) {
            QImage image(600, 100, QImage::Format_RGB32);
            image.fill(Qt::white);
            QPainter painter(&image);
            painter.setFont(font);
            painter.drawText(image.rect(), Qt::TextShowMnemonic, words);
            const int measured =
                painter.fontMetrics().boundingRect(image.rect(), Qt::TextShowMnemonic, words).width();
            painter.end();
            EXPECT_LE(widthDrawn(image), measured + 1) << words << " at " << points;
        }
    }
}

}  // namespace
}  // namespace ww::ui
