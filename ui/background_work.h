// One computing at a time beside the screen; of several that are asked for meanwhile the newest is done. Not
// for work that must be stopped half way (loop_advisor.h).
#pragma once

#include <QObject>
#include <functional>
#include <thread>

namespace ww::ui {

class BackgroundWork : public QObject {
    Q_OBJECT

  public:
    using QObject::QObject;
    /// Waits for what is being computed; nothing is told of it.
    ~BackgroundWork() override;

    /// `compute` runs on another thread and touches nothing of the screen; then `done` runs on this one.
    void run(std::function<void()> compute, std::function<void()> done);
    bool isRunning() const { return m_isRunning; }

  private:
    void finish(const std::function<void()>& done);

    std::function<void()> m_nextCompute;
    std::function<void()> m_nextDone;
    std::jthread m_thread;
    bool m_isRunning = false;
};

}  // namespace ww::ui
