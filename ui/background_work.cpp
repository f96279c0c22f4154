#include "ui/background_work.h"

#include <utility>

namespace ww::ui {

BackgroundWork::~BackgroundWork() {
    if (m_thread.joinable()) {
        m_thread.join();
    }
}

void BackgroundWork::run(std::function<void()> compute, std::function<void()> done) {
    if (m_isRunning) {
        m_nextCompute = std::move(compute);
        m_nextDone = std::move(done);
        return;
    }
    m_isRunning = true;
    m_thread = std::jthread([this, compute = std::move(compute), done = std::move(done)] {
        compute();
        QMetaObject::invokeMethod(
            this, [this, done] { finish(done); }, Qt::QueuedConnection);
    });
}

void BackgroundWork::finish(const std::function<void()>& done) {
    m_isRunning = false;
    done();
    if (!m_isRunning && m_nextCompute) {
        run(std::exchange(m_nextCompute, nullptr), std::exchange(m_nextDone, nullptr));
    }
}

}  // namespace ww::ui
