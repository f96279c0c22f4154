// What the screens paint: contrast of words measured from pixels, distance of the colours of states for every
// kind of eye, and the ring around what has the keys.
#include <gtest/gtest.h>

#include <QImage>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QTableView>
#include <map>

#include "tests/ui/support/color_math.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/ring_faults.h"
#include "ui/theme/theme.h"

namespace ww::ui {
namespace {

using support::contrastRatio;
using support::DeskWindow;
using theme::Display;

constexpr Display kDisplays[] = {Display::Office, Display::Daylight, Display::PlantRoomDark};

/// Contrast of what is written in a part of a picture: its commonest color against the one that stands out
/// most. Nothing where nothing is written.
double writtenContrast(const QImage& picture, const QRect& part) {
    std::map<QRgb, int> counts;
    const QRect box = part & picture.rect();
    for (int y = box.top(); y <= box.bottom(); ++y) {
        for (int x = box.left(); x <= box.right(); ++x) {
            ++counts[picture.pixel(x, y)];
        }
    }
    if (counts.size() < 2) {
        return 0;
    }
    const auto back = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    double most = 0;
    for (const auto& [color, count] : counts) {
        most = std::max(most, contrastRatio(QColor(back->first), QColor(color)));
    }
    return most;
}

// WCAG 2.2: 1.4.6 asks 7:1 of text, 1.4.3 4.5:1. Edges of letters are blended, so that thin strokes reach a
// little less than their color.
TEST(PaintedColors, everyWordStandsOutOnTwelveScreens) {
    constexpr double kBlended = 0.25;
    int screens = 0;
    for (const Display display : kDisplays) {
        DeskWindow desk;
        desk.window.setDisplay(display);
        desk.enter("20.5");
        desk.enter("99");
        const double wanted = display == Display::Office ? 4.5 : 7.0;
        for (const auto place : {MainWindow::Job, MainWindow::Walk, MainWindow::Adjust, MainWindow::Report}) {
            desk.window.showPlace(place);
            QTest::qWait(30);
            const QImage picture = desk.window.grab().toImage();
            ++screens;
            for (const QWidget* widget : desk.window.findChildren<QWidget*>()) {
                const auto* label = qobject_cast<const QLabel*>(widget);
                const auto* button = qobject_cast<const QPushButton*>(widget);
                const bool isWritten = (label != nullptr && !label->text().trimmed().isEmpty()) ||
                                       (button != nullptr && !button->text().isEmpty());
                if (!isWritten || !widget->isVisible() ||
                    widget->visibleRegion().boundingRect() != widget->rect()) {
                    continue;
                }
                const QRect part(widget->mapTo(&desk.window, QPoint(4, 4)), widget->size() - QSize(8, 8));
                EXPECT_GE(writtenContrast(picture, part), wanted - kBlended)
                    << theme::name(display).toStdString() << ", place " << place + 1 << ": "
                    << (label != nullptr ? label->text() : button->text()).toStdString();
            }
        }
        desk.window.showPlace(MainWindow::Walk);
        const QImage picture = desk.grid().viewport()->grab().toImage();
        for (int row = 0; row < 6; ++row) {
            for (const auto column :
                 {WalkModel::Tag, WalkModel::Setting, WalkModel::Target, WalkModel::State}) {
                const QModelIndex cell = desk.model().index(row, column);
                if (!cell.data().toString().isEmpty()) {
                    EXPECT_GE(writtenContrast(picture, desk.grid().visualRect(cell)), wanted - kBlended)
                        << cell.data().toString().toStdString();
                }
            }
        }
    }
    EXPECT_EQ(screens, 12);
}

TEST(PaintedColors, statesAreToldApartByEveryKindOfEye) {
    for (const Display display : {Display::Daylight, Display::PlantRoomDark}) {
        const theme::Tokens& t = theme::tokens(display);
        const QColor colors[] = {t.shortShare, t.over, t.doubt, t.ink};
        for (std::size_t i = 0; i < std::size(colors); ++i) {
            for (std::size_t j = i + 1; j < std::size(colors); ++j) {
                EXPECT_GE(support::smallestDistance(colors[i], colors[j]), 9.5) << i << " and " << j;
            }
        }
        EXPECT_GE(support::smallestDistance(t.shortShare, t.over), 17.0);
    }
}

// WCAG 2.2, 2.4.13: the ring is at least as large as a line of 2 px around the control, and 3:1 against what
// was there before; 2.4.12: nothing of it is hidden.
TEST(PaintedColors, whatHasTheKeysIsRinged) {
    DeskWindow desk;
    for (const Display display : kDisplays) {
        desk.window.setDisplay(display);
        support::eachPage(desk.window, [&](const QString& page) {
            QTest::qWait(120);
            // The keys in one control may hide or make another.
            QList<QPointer<QWidget>> stops;
            for (QWidget* stop : support::tabStops(desk.window)) {
                stops << stop;
            }
            EXPECT_GE(stops.size(), 2);
            for (const QPointer<QWidget>& stop : stops) {
                if (!stop || !stop->isVisible() || !stop->isEnabled()) {
                    continue;
                }
                const QString fault = support::ringFault(desk.window, *stop);
                EXPECT_TRUE(!stop || fault.isEmpty())
                    << theme::name(display).toStdString() << ", " << page.toStdString() << ": "
                    << stop->metaObject()->className() << " " << stop->accessibleName().toStdString() << ": "
                    << fault.toStdString();
            }
        });
    }
}

}  // namespace
}  // namespace ww::ui
