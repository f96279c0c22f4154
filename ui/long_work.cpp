#include "ui/long_work.h"

#include <QEventLoop>
#include <QFileInfo>
#include <QProgressDialog>
#include <QTimer>
#include <exception>
#include <thread>

namespace ww::ui {

void waitFor(QWidget* window, const QString& words, const std::function<void()>& work) {
    constexpr int kAppearsMilliseconds = 400;
    QProgressDialog box(words, {}, 0, 0, window);
    box.setAccessibleName(words);
    box.setWindowModality(Qt::WindowModal);
    // It comes by the timer below.
    box.reset();
    QTimer::singleShot(kAppearsMilliseconds, &box, &QWidget::show);
    QEventLoop loop;
    std::exception_ptr thrown;
    {
        const std::jthread thread([&] {
            try {
                work();
            } catch (...) {
                thrown = std::current_exception();
            }
            QMetaObject::invokeMethod(&loop, &QEventLoop::quit, Qt::QueuedConnection);
        });
        loop.exec(QEventLoop::ExcludeUserInputEvents);
    }
    if (thrown) {
        std::rethrow_exception(thrown);
    }
}

bool isWaitedFor(const QString& file) {
    constexpr qint64 kLarge = 4 * 1024 * 1024;
    return QFileInfo(file).size() >= kLarge;
}

}  // namespace ww::ui
