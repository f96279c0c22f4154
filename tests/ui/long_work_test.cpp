// A window waits for long work without looking dead: common practice, no source.
#include "ui/long_work.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QProgressDialog>
#include <QTest>
#include <QTimer>
#include <atomic>
#include <stdexcept>
#include <thread>

namespace ww::ui {
namespace {

const QProgressDialog* shownBox(const QWidget& window) {
    const auto* box = window.findChild<QProgressDialog*>();
    return box != nullptr && box->isVisible() ? box : nullptr;
}

TEST(LongWork, isDoneElsewhereWhileTheWindowGoesOn) {
    QWidget window;
    window.show();
    std::thread::id worker;
    int ticks = 0;
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, [&] { ++ticks; });
    timer.start(5);
    waitFor(&window, "Opening a.wwj", [&] {
        worker = std::this_thread::get_id();
        std::this_thread::sleep_for(std::chrono::milliseconds(120));
    });
    EXPECT_NE(worker, std::this_thread::get_id());
    EXPECT_GT(ticks, 1);
    EXPECT_EQ(shownBox(window), nullptr) << "short work needs no words";
}

TEST(LongWork, saysWhatIsWaitedForAfterAMoment) {
    QWidget window;
    window.show();
    QString said;
    std::atomic<bool> isSeen = false;
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, [&] {
        if (const QProgressDialog* box = shownBox(window)) {
            said = box->labelText();
            isSeen = true;
        }
    });
    timer.start(10);
    waitFor(&window, "Opening a.wwj", [&] {
        for (int i = 0; i < 500 && !isSeen; ++i) {
            std::this_thread::sleep_for(std::chrono::milliseconds(10));
        }
    });
    EXPECT_EQ(said, "Opening a.wwj");
    EXPECT_EQ(shownBox(window), nullptr);
}

TEST(LongWork, throwsWhatTheWorkThrows) {
    QWidget window;
    EXPECT_THROW(waitFor(&window, "Opening a.wwj", [] { throw std::runtime_error("damaged"); }),
                 std::runtime_error);
}

}  // namespace
}  // namespace ww::ui
