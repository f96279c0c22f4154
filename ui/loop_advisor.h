// Learns the loop and makes the advice beside the screen: on a copy, off the screen's thread, the newest
// state of the job wins. Not for the computing itself (core/balancing).
#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>
#include <thread>

#include "core/balancing/advice/advice.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

/// What was learned of the job as it stood at one moment, and the advice from it.
struct LoopPicture {
    balancing::LearnedLoop learned;
    balancing::Advice advice;
};

class LoopAdvisor : public QObject {
    Q_OBJECT

  public:
    explicit LoopAdvisor(WorkbookBridge& bridge, QObject* parent = nullptr);
    /// Stops the computing and waits for its end.
    ~LoopAdvisor() override;

    /// The newest picture there is; null before the first. After a change of the design it is gone at once,
    /// after new readings it stays until the next one is there.
    const LoopPicture* picture() const { return m_picture.get(); }
    /// The same, to be kept beyond the next change.
    std::shared_ptr<const LoopPicture> sharedPicture() const { return m_picture; }
    /// Whether the picture is that of the job as it stands.
    bool isCurrent() const { return m_picture != nullptr && !m_isWanted && !m_isRunning; }
    bool isComputing() const { return m_isWanted || m_isRunning; }
    /// Gives up what is being computed; the next change of the job starts anew.
    void cancel();

  signals:
    /// picture(), isCurrent() or isComputing() changed.
    void changed();
    /// Of a large job: how much of the picture under way is made.
    void progressed(int percent);

  private:
    struct Work;

    void take(const project::ChangeSet& changes);
    void start();
    void finish(const std::shared_ptr<Work>& work);

    WorkbookBridge& m_bridge;
    QTimer m_delay;
    std::shared_ptr<const LoopPicture> m_picture;
    std::jthread m_thread;
    bool m_isWanted = false;
    bool m_isRunning = false;
};

}  // namespace ww::ui
