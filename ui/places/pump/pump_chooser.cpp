#include "ui/places/pump/pump_chooser.h"

namespace ww::ui {

PumpChooser::PumpChooser(WorkbookBridge& bridge, QWidget* parent) : QuietCombo(parent), m_bridge(bridge) {
    setAccessibleName(tr("Pump"));
    setSizeAdjustPolicy(QComboBox::AdjustToContents);
    connect(&bridge, &WorkbookBridge::changed, this, [this](const project::ChangeSet& changes) {
        if (changes.isEmpty() || changes.touches(project::RecordKind::Pump)) {
            refill();
        }
    });
    connect(this, &QComboBox::currentIndexChanged, this, &PumpChooser::tell);
    refill();
}

void PumpChooser::refill() {
    const int before = currentIndex();
    {
        const QSignalBlocker blocker(this);
        clear();
        for (const project::Pump& pump : m_bridge.project().pumps()) {
            addItem(QString::fromStdString(pump.tag));
        }
        setCurrentIndex(std::min(std::max(before, 0), count() - 1));
    }
    setEnabled(count() > 1);
    tell();
}

/// A change of the same pump's data is no other choice.
void PumpChooser::tell() {
    const project::Pump* chosenNow = pump();
    const std::optional<base::Id> id = chosenNow != nullptr ? std::optional(chosenNow->id) : std::nullopt;
    if (id != m_told) {
        m_told = id;
        emit chosen();
    }
}

std::optional<std::size_t> PumpChooser::index() const {
    const std::size_t count = m_bridge.project().pumps().size();
    const int at = currentIndex();
    return at >= 0 && static_cast<std::size_t>(at) < count ? std::optional(static_cast<std::size_t>(at))
                                                           : std::nullopt;
}

const project::Pump* PumpChooser::pump() const {
    const auto at = index();
    return at ? &m_bridge.project().pumps()[*at] : nullptr;
}

}  // namespace ww::ui
