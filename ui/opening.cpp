#include "ui/opening.h"

#include <utility>

#include "ui/workbook_bridge.h"

namespace ww::ui {

namespace {

auto openingOf(const Desk& desk, const QString& file, workbook::OpenMode mode) {
    workbook::Session session{desk.clock, desk.ids, desk.person, desk.machine};
    return [path = file.toStdString(), mode, session = std::move(session)] {
        return workbook::Workbook::open(path, mode, session);
    };
}

}  // namespace

Opening beginOpening(const Desk& desk, const QString& file, workbook::OpenMode mode, std::launch policy) {
    return {file, std::async(policy, openingOf(desk, file, mode))};
}

Opening beginOpeningAfter(std::shared_future<void> before, const Desk& desk, const QString& file) {
    return {file,
            std::async(std::launch::async, [before = std::move(before),
                                            open = openingOf(desk, file, workbook::OpenMode::ReadWrite)] {
                before.wait();
                return open();
            })};
}

}  // namespace ww::ui
