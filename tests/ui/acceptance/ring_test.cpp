// The ring around what has the keys, as painted: on every page and in every dialog.
#include <gtest/gtest.h>

#include <QPointer>

#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_dialog.h"
#include "tests/ui/support/each_page.h"
#include "tests/ui/support/ring_faults.h"
#include "ui/theme/theme.h"

namespace ww::ui {
namespace {

using support::DeskWindow;
using theme::Display;

constexpr Display kRingDisplays[] = {Display::Office, Display::Daylight, Display::PlantRoomDark};

/// How many controls of a window take the keys, each of which must be ringed then.
qsizetype lookAtRings(QWidget& window) {
    // The keys in one control may hide or make another.
    QList<QPointer<QWidget>> stops;
    for (QWidget* stop : support::tabStops(window)) {
        stops << stop;
    }
    for (const QPointer<QWidget>& stop : stops) {
        if (!stop || !stop->isVisible() || !stop->isEnabled()) {
            continue;
        }
        const QString fault = support::ringFault(window, *stop);
        EXPECT_TRUE(!stop || fault.isEmpty())
            << stop->metaObject()->className() << " " << stop->accessibleName().toStdString() << ": "
            << fault.toStdString();
    }
    return stops.size();
}

// WCAG 2.2, 2.4.13: the ring is at least as large as a line of 2 px around the control, and 3:1 against what
// was there before; 2.4.12: nothing of it is hidden.
TEST(Ring, isAroundWhatHasTheKeysOnEveryPage) {
    DeskWindow desk;
    for (const Display display : kRingDisplays) {
        desk.window.setDisplay(display);
        support::eachPage(desk.window, [&](const QString& page) {
            SCOPED_TRACE(theme::name(display).toStdString() + ", " + page.toStdString());
            QTest::qWait(120);
            EXPECT_GE(lookAtRings(desk.window), 2);
        });
    }
}

TEST(Ring, isAroundWhatHasTheKeysInEveryDialog) {
    for (const bool isLarge : {false, true}) {
        DeskWindow desk(support::jobForDialogs(), false);
        desk.preferences.setLargeTargets(isLarge);
        for (const Display display : kRingDisplays) {
            desk.window.setDisplay(display);
            support::eachDialog(desk, [&](QWidget& dialog) {
                SCOPED_TRACE(theme::name(display).toStdString() + ", " + dialog.windowTitle().toStdString() +
                             (isLarge ? ", large" : ""));
                QTest::qWait(60);
                EXPECT_GE(lookAtRings(dialog), 1);
            });
        }
    }
}

}  // namespace
}  // namespace ww::ui
