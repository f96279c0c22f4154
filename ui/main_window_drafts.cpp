// What is typed in the walk and not entered: kept at the desk for the case that the program is killed, and
// offered back when the workbook is opened again.
#include "ui/main_window.h"
#include "ui/places/walk/walk_place.h"

namespace ww::ui {

void MainWindow::followTyped() {
    const auto* walking = there<WalkPlace>(Walk);
    const workbook::Workbook* open = m_bridge.workbook();
    if (walking == nullptr || open == nullptr) {
        return;
    }
    if (!walking->drafts().empty()) {
        if (!m_keepingDrafts.isActive()) {
            m_keepingDrafts.start();
        }
        return;
    }
    m_keepingDrafts.stop();
    // A walk in which each value is entered as it is typed writes nothing here.
    if (m_draftsOf == open->workbookId()) {
        m_preferences.keepDrafts(*m_draftsOf, {});
        m_draftsOf.reset();
    }
}

void MainWindow::keepDrafts() {
    const auto* walking = there<WalkPlace>(Walk);
    const workbook::Workbook* open = m_bridge.workbook();
    const auto drafts = walking != nullptr ? walking->drafts() : std::vector<TypedDraft>{};
    if (open != nullptr && !drafts.empty()) {
        m_draftsOf = open->workbookId();
        m_preferences.keepDrafts(*m_draftsOf, drafts);
    }
}

void MainWindow::offerDrafts() {
    const workbook::Workbook* open = m_bridge.workbook();
    if (open == nullptr || m_bridge.isReadOnly()) {
        return;
    }
    const base::Id id = open->workbookId();
    const std::vector<TypedDraft> drafts = m_preferences.draftsIn(id);
    if (drafts.empty()) {
        return;
    }
    m_draftsOf = id;
    for (const TypedDraft& draft : drafts) {
        if (walk()->offer(draft) && m_notice->message().isEmpty()) {
            walk()->tellOffered();
        }
    }
    // What could not be offered is not kept any longer.
    followTyped();
    keepDrafts();
}

}  // namespace ww::ui
