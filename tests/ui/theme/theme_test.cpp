#include "ui/theme/theme.h"

#include <gtest/gtest.h>

#include <QImage>
#include <cmath>

#include "ui/theme/state_shape.h"

namespace ww::ui::theme {
namespace {

using balancing::State;

/// Relative luminance and contrast ratio (WCAG 2.2, definitions).
double luminance(const QColor& color) {
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}
double contrast(const QColor& left, const QColor& right) {
    const double a = luminance(left) + 0.05;
    const double b = luminance(right) + 0.05;
    return a > b ? a / b : b / a;
}

// WCAG 2.2, success criteria 1.4.6 (7:1 for text) and 1.4.11 (3:1 for lines and shapes).
TEST(Theme, textAndLinesHaveContrast) {
    for (const Display display : {Display::Daylight, Display::PlantRoomDark, Display::Office}) {
        const Tokens& t = tokens(display);
        for (const QColor& back : {t.paper, t.panel}) {
            for (const QColor& color : {t.ink, t.soft, t.shortShare, t.over, t.doubt}) {
                EXPECT_GE(contrast(color, back), 7.0 - 0.05) << color.name().toStdString();
            }
            EXPECT_GE(contrast(t.rule, back), 3.0);
        }
        for (const QColor& tint : {t.tintShort, t.tintOver, t.tintDoubt, t.tintCurrent}) {
            EXPECT_GE(contrast(t.ink, tint), 11.0);
        }
    }
}

TEST(Theme, officeFollowsTheLightnessOfThePalette) {
    QPalette dark;
    dark.setColor(QPalette::Window, Qt::black);
    dark.setColor(QPalette::WindowText, Qt::white);
    QPalette light;
    light.setColor(QPalette::Window, Qt::white);
    light.setColor(QPalette::WindowText, Qt::black);
    EXPECT_TRUE(tokens(Display::Office, dark).isDark);
    EXPECT_FALSE(tokens(Display::Office, light).isDark);
    EXPECT_TRUE(isDark(palette(Display::PlantRoomDark, light)));
    EXPECT_FALSE(isDark(palette(Display::Daylight, dark)));
}

// Thin lines and strokes vanish in the sun: a decision of this project.
TEST(Theme, daylightHasLinesInInkAndHeavierNumbers) {
    const Tokens& day = tokens(Display::Daylight);
    EXPECT_EQ(day.grid, day.ink);
    EXPECT_EQ(day.numerals, QFont::DemiBold);
    EXPECT_TRUE(styleSheet(day, metrics(11)).contains("gridline-color: " + day.ink.name()));
    for (const Display display : {Display::Office, Display::PlantRoomDark}) {
        EXPECT_NE(tokens(display).grid, tokens(display).ink);
        EXPECT_EQ(tokens(display).numerals, QFont::Normal);
    }
}

TEST(Theme, displaysStepRoundAndKeepTheirNames) {
    Display display = Display::Office;
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(displayNamed(name(display)), display);
        display = next(display);
    }
    EXPECT_EQ(display, Display::Office);
    EXPECT_EQ(displayNamed("no such display"), Display::Office);
}

QImage shape(State state, bool isOver) {
    QImage image(16, 16, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    Tokens black;
    black.paper = Qt::white;
    black.ink = black.rule = black.shortShare = black.over = black.doubt = Qt::black;
    paintState(painter, QRectF(0, 0, 16, 16), state, isOver, black);
    return image;
}

double difference(const QImage& left, const QImage& right) {
    int differing = 0;
    for (int y = 0; y < left.height(); ++y) {
        for (int x = 0; x < left.width(); ++x) {
            differing += std::abs(qGray(left.pixel(x, y)) - qGray(right.pixel(x, y))) > 64 ? 1 : 0;
        }
    }
    return differing / 256.0;
}

// Told apart in black alone at 16 pixels: every pair, directions counted, differs in at least 18 % of its
// pixels. The limit is our own; WCAG 2.2, 1.4.1 asks that colour is never the only means.
TEST(StateShape, everyPairDiffersWithoutColour) {
    std::vector<QImage> shapes;
    for (const State state : {State::NotRead, State::Short, State::Over, State::OnShare, State::Doubtful}) {
        shapes.push_back(shape(state, false));
    }
    for (const State state : {State::Drifted, State::AtStop}) {
        shapes.push_back(shape(state, false));
        shapes.push_back(shape(state, true));
    }
    for (std::size_t i = 0; i < shapes.size(); ++i) {
        for (std::size_t j = i + 1; j < shapes.size(); ++j) {
            EXPECT_GE(difference(shapes[i], shapes[j]), 0.18) << i << " and " << j;
        }
    }
}

TEST(Theme, largeTargetsAreLarge) {
    EXPECT_EQ(metrics(10).rowHeight, 26);
    EXPECT_EQ(metrics(12).rowHeight, 34);
    EXPECT_EQ(metrics(10, true).rowHeight, 56);
    EXPECT_FALSE(styleSheet(tokens(Display::Daylight), metrics(10)).contains('%'));
}

}  // namespace
}  // namespace ww::ui::theme
