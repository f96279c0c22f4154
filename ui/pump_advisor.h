// Computes everything about a job's pumps beside the screen: on a copy, off the screen's thread, with the
// loop that the loop advisor learned. Not for the computing itself (core/pump_room).
#pragma once

#include <QObject>
#include <memory>

#include "core/pump_room/pump_picture.h"
#include "ui/background_work.h"
#include "ui/loop_advisor.h"

namespace ww::ui {

class PumpAdvisor : public QObject {
    Q_OBJECT

  public:
    PumpAdvisor(WorkbookBridge& bridge, LoopAdvisor& loop, QObject* parent = nullptr);

    /// The newest picture there is; null before the first and after another workbook was opened.
    std::shared_ptr<const pump_room::PumpPicture> picture() const { return m_picture; }
    /// Whether the picture is that of the job as it stands.
    bool isCurrent() const { return m_picture != nullptr && m_pictured == m_bridge.changeCount(); }
    /// Whether the loop is still being learned, so that a picture of the job as it stands would take its
    /// time.
    bool isLearning() const { return m_loop.isComputing(); }
    /// The picture of the job as it stands, computed here and kept where it is not there yet; null while the
    /// loop is not learned. The same numbers as pump_room::pumpPicture() with learnedResistances().
    std::shared_ptr<const pump_room::PumpPicture> pictureOfNow();
    /// What the newest picture of the loop says of its branches; empty before the first.
    balancing::Resistances learned() const;
    /// Somebody looks at the pumps: whatever is stale is computed.
    void want();
    /// Nobody looks any more: changes of the job are only noted.
    void rest() { m_isWanted = false; }

  signals:
    /// picture() or isCurrent() changed.
    void changed();
    /// isLearning() ended.
    void learningEnded();

  private:
    void take(const project::ChangeSet& changes);
    void start();

    WorkbookBridge& m_bridge;
    LoopAdvisor& m_loop;
    std::shared_ptr<const pump_room::PumpPicture> m_picture;
    BackgroundWork m_work;
    int m_pictured = -1;  ///< WorkbookBridge::changeCount() of the picture
    bool m_isWanted = false;
};

}  // namespace ww::ui
