#include "app/commands/open_workbook.h"

#include "core/workbook/sound_copy.h"

namespace ww::app {

std::unique_ptr<workbook::Workbook> openWorkbook(Surroundings& surroundings, const std::string& file,
                                                 workbook::OpenMode mode) {
    workbook::Session session{surroundings.clock, surroundings.ids, surroundings.person,
                              surroundings.machine};
    auto opened = workbook::Workbook::open(file, mode, session);
    if (!opened) {
        fileTrouble(surroundings, opened.fault());
        if (workbook::isDamage(opened.fault())) {
            fileTrouble(surroundings, workbook::adviceFor(file));
        }
        return nullptr;
    }
    if (mode == workbook::OpenMode::ReadWrite && (*opened)->isReadOnly()) {
        if ((*opened)->readOnlyReason()) {
            fileTrouble(surroundings, (*opened)->readOnlyReason()->fault);
        }
        return nullptr;
    }
    return std::move(*opened);
}

}  // namespace ww::app
