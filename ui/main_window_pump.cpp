// The commands of the main window that belong to the place Pump.
#include "ui/main_window.h"
#include "ui/places/pump/pump_place.h"

namespace ww::ui {

void MainWindow::connectPumpCommands() {
    for (int page = 0; page < PumpPlace::PageCount; ++page) {
        connect(m_commands->pumpPages[page], &QAction::triggered, this, [this, page] {
            showPlace(Pump);
            pump()->showPage(static_cast<PumpPlace::Page>(page));
        });
    }
}

}  // namespace ww::ui
