#include "ui/pump_advisor.h"

namespace ww::ui {

PumpAdvisor::PumpAdvisor(WorkbookBridge& bridge, LoopAdvisor& loop, QObject* parent)
    : QObject(parent), m_bridge(bridge), m_loop(loop) {
    connect(&bridge, &WorkbookBridge::changed, this, &PumpAdvisor::take);
    connect(&loop, &LoopAdvisor::changed, this, &PumpAdvisor::start);
}

void PumpAdvisor::take(const project::ChangeSet& changes) {
    ++m_state;
    m_isStale = true;
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

void PumpAdvisor::start() {
    // The learning ends with changed(), which comes back here; so does a computing that is stale by its end.
    if (!m_isWanted || !m_isStale || m_work.isRunning() || !m_bridge.isOpen() || m_loop.isComputing()) {
        return;
    }
    struct Work {
        project::Project project;
        balancing::Resistances learned;
        std::shared_ptr<const pump_room::PumpPicture> made;
    };
    auto work = std::make_shared<Work>();
    work->project = m_bridge.project();
    if (const LoopPicture* loop = m_loop.picture()) {
        work->learned = pump_room::usableResistances(work->project, loop->learned);
    }
    m_work.run(
        [work] {
            work->made = std::make_shared<pump_room::PumpPicture>(
                pump_room::pumpPicture(work->project, work->learned));
        },
        [this, work, state = m_state] {
            if (state != m_state) {
                start();
                return;
            }
            m_picture = work->made;
            m_isStale = false;
            emit changed();
        });
}

}  // namespace ww::ui
