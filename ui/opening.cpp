#include "ui/opening.h"

#include <utility>

#include "ui/workbook_bridge.h"

namespace ww::ui {

Opening beginOpening(const Desk& desk, const QString& file, workbook::OpenMode mode, std::launch policy) {
    workbook::Session session{desk.clock, desk.ids, desk.person, desk.machine};
    return {file, std::async(policy, [path = file.toStdString(), mode, session = std::move(session)] {
                return workbook::Workbook::open(path, mode, session);
            })};
}

}  // namespace ww::ui
