#include "ui/long_work.h"

#include <QDir>
#include <QEventLoop>
#include <QFileInfo>
#include <QProgressDialog>
#include <QTimer>
#include <algorithm>
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

bool isLarge(const QString& workbook) {
    constexpr qint64 kLarge = 4 * 1024 * 1024;
    return QFileInfo(workbook).size() >= kLarge;
}

bool isLarge(std::size_t records) {
    constexpr std::size_t kLarge = 5'000;
    return records >= kLarge;
}

bool isLargeTable(const QString& file) {
    constexpr qint64 kLarge = 100 * 1024;
    const QFileInfo given(file);
    const QFileInfoList files = given.isDir() ? QDir(file).entryInfoList(QDir::Files) : QFileInfoList{given};
    return std::any_of(files.begin(), files.end(), [](const QFileInfo& one) { return one.size() >= kLarge; });
}

}  // namespace ww::ui
