// What the style of the program paints of boxes to tick and circles to choose, in every display.
#include "ui/theme/control_style.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QImage>
#include <QPainter>
#include <QStyleOptionButton>
#include <QTest>
#include <QVBoxLayout>
#include <set>

#include "tests/ui/support/color_math.h"
#include "ui/window_look.h"

namespace ww::ui::theme {
namespace {

constexpr int kSide = 14;
constexpr Display kAll[] = {Display::Office, Display::Daylight, Display::PlantRoomDark};

/// An indicator in the middle of a ground of one color.
QImage indicator(Display display, QStyle::PrimitiveElement element, QStyle::State state,
                 const QColor& ground) {
    ControlStyle style(QStringLiteral("fusion"));
    style.setLook(tokens(display), metrics(10.0));
    QImage picture(kSide + 6, kSide + 6, QImage::Format_RGB32);
    picture.fill(ground);
    QStyleOptionButton option;
    option.rect = QRect(3, 3, kSide, kSide);
    option.state = state;
    QPainter painter(&picture);
    style.drawPrimitive(element, &option, &painter);
    return picture;
}

/// Contrast against a color of what stands out most on a line of pixels.
double mostOnLine(const QImage& picture, const QPoint& start, const QPoint& step, const QColor& against) {
    double most = 1;
    for (int i = 0; i < 6; ++i) {
        most = std::max(most, support::contrastRatio(QColor(picture.pixel(start + i * step)), against));
    }
    return most;
}

// WCAG 2.2, 1.4.11: 3:1 of what is needed to see where a control is and how it stands.
TEST(ControlStyle, framesOfBoxesAndCirclesStandOutOnAllSides) {
    for (const Display display : kAll) {
        const Tokens& t = tokens(display);
        for (const auto element : {QStyle::PE_IndicatorCheckBox, QStyle::PE_IndicatorRadioButton,
                                   QStyle::PE_IndicatorItemViewItemCheck}) {
            for (const QStyle::State state : {QStyle::State_Off, QStyle::State_On, QStyle::State_NoChange}) {
                for (const QColor& ground : {t.paper, t.panel, t.tintCurrent}) {
                    const QImage picture = indicator(display, element, QStyle::State_Enabled | state, ground);
                    const int middle = picture.width() / 2;
                    const int end = picture.width() - 1;
                    const struct {
                        QPoint start;
                        QPoint inwards;
                    } kSides[] = {{{middle, 0}, {0, 1}},
                                  {{middle, end}, {0, -1}},
                                  {{0, middle}, {1, 0}},
                                  {{end, middle}, {-1, 0}}};
                    for (const auto& side : kSides) {
                        EXPECT_GE(mostOnLine(picture, side.start, side.inwards, ground), 3.0)
                            << name(display).toStdString() << ", element " << element << ", state "
                            << int(state) << ", on " << ground.name().toStdString();
                    }
                }
            }
        }
    }
}

TEST(ControlStyle, tickedUntickedPartlyAndDisabledAreToldApart) {
    for (const Display display : kAll) {
        const QColor ground = tokens(display).panel;
        std::set<QByteArray> boxes;
        for (const QStyle::State enabled : {QStyle::State_Enabled, QStyle::State_None}) {
            for (const QStyle::State state : {QStyle::State_Off, QStyle::State_On, QStyle::State_NoChange}) {
                const QImage picture =
                    indicator(display, QStyle::PE_IndicatorCheckBox, enabled | state, ground);
                boxes.insert(
                    QByteArray(reinterpret_cast<const char*>(picture.constBits()), picture.sizeInBytes()));
            }
        }
        EXPECT_EQ(boxes.size(), 6U) << name(display).toStdString();
        // The mark stands out from what the box is filled with.
        for (const auto element : {QStyle::PE_IndicatorCheckBox, QStyle::PE_IndicatorRadioButton}) {
            const QImage on = indicator(display, element, QStyle::State_Enabled | QStyle::State_On, ground);
            const QImage off = indicator(display, element, QStyle::State_Enabled | QStyle::State_Off, ground);
            double most = 1;
            for (int y = 0; y < on.height(); ++y) {
                for (int x = 0; x < on.width(); ++x) {
                    most = std::max(most,
                                    support::contrastRatio(QColor(on.pixel(x, y)), QColor(off.pixel(x, y))));
                }
            }
            EXPECT_GE(most, 7.0) << name(display).toStdString() << ", element " << element;
        }
    }
}

/// The box of what is not ground at the right end of a list to choose from, inside its frame.
QRect arrowOf(QWidget& list) {
    constexpr int kFrame = 5;
    constexpr int kEnd = 28;
    const QImage picture = list.grab().toImage();
    const QRgb ground = picture.pixel(picture.width() - kEnd, picture.height() / 2);
    QRect box;
    for (int y = kFrame; y < picture.height() - kFrame; ++y) {
        for (int x = picture.width() - kEnd; x < picture.width() - kFrame; ++x) {
            if (picture.pixel(x, y) != ground) {
                box |= QRect(x, y, 1, 1);
            }
        }
    }
    return box;
}

// What the desktop's style frames inside our frame reads as a second control.
TEST(ControlStyle, aListToChooseFromHasOneFrameAndAnArrowThatStays) {
    for (const Display display : kAll) {
        applyToProgram(lookOf(display, 10.0, false));
        QWidget window;
        auto* layout = new QVBoxLayout(&window);
        auto* first = new QComboBox(&window);
        auto* second = new QComboBox(&window);
        for (QComboBox* list : {first, second}) {
            list->addItem(QStringLiteral("a list"));
            list->setMinimumWidth(160);
            layout->addWidget(list);
        }
        window.show();
        window.activateWindow();
        first->setFocus();
        ASSERT_TRUE(QTest::qWaitFor([&] { return first->hasFocus(); }));
        const QRect focused = arrowOf(*first);
        const QRect usual = arrowOf(*second);
        second->setEnabled(false);
        for (const QRect& arrow : {focused, usual, arrowOf(*second)}) {
            EXPECT_GE(arrow.width(), 7) << name(display).toStdString();
            EXPECT_LE(arrow.width(), 11) << name(display).toStdString();
            EXPECT_LE(arrow.height(), 6) << name(display).toStdString();
            EXPECT_EQ(arrow, usual) << name(display).toStdString();
        }
    }
}

}  // namespace
}  // namespace ww::ui::theme
