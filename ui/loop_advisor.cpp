#include "ui/loop_advisor.h"

namespace ww::ui {
namespace {

/// Readings that come fast are learned from together.
constexpr int kDelayMilliseconds = 40;

/// Above so many terminals a picture takes longer than the time between two readings: one that was begun is
/// finished, and the next is made of all that came meanwhile.
constexpr std::size_t kMostMadeAnew = 1000;
constexpr double kLearningPercent = 70;

bool isAboutReadings(const project::ChangeSet& changes) {
    using project::RecordKind;
    return changes.touches(RecordKind::Reading) || changes.touches(RecordKind::PumpReading) ||
           changes.touches(RecordKind::Round) || changes.touches(RecordKind::Instrument);
}

bool isAboutDesign(const project::ChangeSet& changes) {
    using project::RecordKind;
    return changes.isEmpty() || changes.touches(RecordKind::Job) || changes.touches(RecordKind::Branch) ||
           changes.touches(RecordKind::ValveModel) || changes.touches(RecordKind::Pump);
}

}  // namespace

/// What the other thread is given and gives back.
struct LoopAdvisor::Work {
    project::Project project;
    std::shared_ptr<const LoopPicture> made;  ///< null: stopped
};

LoopAdvisor::LoopAdvisor(WorkbookBridge& bridge, QObject* parent) : QObject(parent), m_bridge(bridge) {
    m_delay.setSingleShot(true);
    m_delay.setInterval(kDelayMilliseconds);
    connect(&m_delay, &QTimer::timeout, this, &LoopAdvisor::start);
    connect(&bridge, &WorkbookBridge::changed, this, &LoopAdvisor::take);
}

LoopAdvisor::~LoopAdvisor() = default;

void LoopAdvisor::take(const project::ChangeSet& changes) {
    const bool isDesign = isAboutDesign(changes);
    if (!isDesign && !isAboutReadings(changes)) {
        return;
    }
    if (isDesign) {
        m_picture.reset();
    }
    m_isWanted = m_bridge.isOpen() && !m_bridge.project().readings().empty();
    const bool isLong = m_isWanted && m_bridge.project().tree().terminals().size() > kMostMadeAnew;
    if (isDesign || !isLong) {
        m_thread.request_stop();
    }
    if (m_isWanted) {
        m_delay.start();
    } else {
        m_delay.stop();
        m_picture.reset();
    }
    emit changed();
}

void LoopAdvisor::cancel() {
    m_delay.stop();
    m_isWanted = false;
    m_thread.request_stop();
    emit changed();
}

void LoopAdvisor::start() {
    if (m_isRunning || !m_isWanted) {
        return;  // finish() starts again where more is wanted
    }
    m_isWanted = false;
    m_isRunning = true;
    auto work = std::make_shared<Work>(Work{m_bridge.project(), nullptr});
    m_thread = std::jthread([this, work](const std::stop_token& stop) {
        balancing::LearnLoopOptions options;
        options.stop = stop;
        if (work->project.tree().terminals().size() > kMostMadeAnew) {
            options.tellDone = [this](quantity::Ratio done) {
                // The advice is made afterwards.
                const int percent = qRound(kLearningPercent * done.si());
                QMetaObject::invokeMethod(
                    this, [this, percent] { emit progressed(percent); }, Qt::QueuedConnection);
            };
        }
        auto made = std::make_shared<LoopPicture>();
        made->learned = balancing::learn(work->project, options);
        if (!stop.stop_requested()) {
            made->advice = balancing::advise(work->project, made->learned);
            work->made = std::move(made);
        }
        QMetaObject::invokeMethod(
            this, [this, work] { finish(work); }, Qt::QueuedConnection);
    });
}

void LoopAdvisor::finish(const std::shared_ptr<Work>& work) {
    m_isRunning = false;
    const bool wasStopped = m_thread.get_stop_token().stop_requested();
    if (work->made != nullptr && !wasStopped) {
        m_picture = work->made;
    }
    if (m_isWanted && !m_delay.isActive()) {
        start();
    }
    emit changed();
}

}  // namespace ww::ui
