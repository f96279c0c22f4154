#include "ui/pump_advisor.h"

namespace ww::ui {

PumpAdvisor::PumpAdvisor(WorkbookBridge& bridge, LoopAdvisor& loop, QObject* parent)
    : QObject(parent), m_bridge(bridge), m_loop(loop) {
    connect(&bridge, &WorkbookBridge::changed, this, &PumpAdvisor::take);
    connect(&loop, &LoopAdvisor::changed, this, [this] {
        start();
        if (!m_loop.isComputing()) {
            emit learningEnded();
        }
    });
}

void PumpAdvisor::take(const project::ChangeSet& changes) {
    if (changes.isEmpty()) {
        m_picture.reset();
    }
    emit changed();
    start();
}

void PumpAdvisor::want() {
    m_isWanted = true;
    start();
}

balancing::Resistances PumpAdvisor::learned() const {
    const LoopPicture* loop = m_loop.picture();
    return loop != nullptr ? pump_room::usableResistances(m_bridge.project(), loop->learned)
                           : balancing::Resistances{};
}

std::shared_ptr<const pump_room::PumpPicture> PumpAdvisor::pictureOfNow() {
    // Without a picture of the loop, though there are readings, its learning was given up.
    const bool isUnlearned = m_loop.picture() == nullptr && !m_bridge.project().readings().empty();
    if (m_loop.isComputing() || isUnlearned) {
        return nullptr;
    }
    if (!isCurrent()) {
        m_picture =
            std::make_shared<pump_room::PumpPicture>(pump_room::pumpPicture(m_bridge.project(), learned()));
        m_pictured = m_bridge.changeCount();
        emit changed();
    }
    return m_picture;
}

void PumpAdvisor::start() {
    // The learning ends with changed(), which comes back here; so does a computing that is stale by its end.
    if (!m_isWanted || isCurrent() || m_work.isRunning() || !m_bridge.isOpen() || m_loop.isComputing()) {
        return;
    }
    struct Work {
        project::Project project;
        balancing::Resistances learned;
        std::shared_ptr<const pump_room::PumpPicture> made;
    };
    auto work = std::make_shared<Work>();
    work->project = m_bridge.project();
    work->learned = learned();
    m_work.run(
        [work] {
            work->made = std::make_shared<pump_room::PumpPicture>(
                pump_room::pumpPicture(work->project, work->learned));
        },
        [this, work, state = m_bridge.changeCount()] {
            if (state != m_bridge.changeCount() || isCurrent()) {
                start();
                return;
            }
            m_picture = work->made;
            m_pictured = state;
            emit changed();
        });
}

}  // namespace ww::ui
