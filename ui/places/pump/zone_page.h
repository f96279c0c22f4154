// What if a zone is added, taken away or given another flow, on the place Pump: tried on a copy, kept only
// when that is said. Not for trying settings (System).
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <filesystem>
#include <memory>

#include "core/pump_room/what_if.h"
#include "ui/background_work.h"
#include "ui/places/pump/pump_page.h"
#include "ui/places/section_view.h"
#include "ui/workbook_bridge.h"

class QFormLayout;

namespace ww::ui {

class ZonePage : public PumpPage {
    Q_OBJECT

  public:
    explicit ZonePage(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void show(const pump_room::PumpPicture* picture) override;
    void setTokens(const theme::Tokens& tokens) override { m_view->setTokens(tokens); }
    void takeFocus() override { m_tag->setFocus(Qt::OtherFocusReason); }
    SectionView* view() const { return m_view; }
    /// What is tried now, without the flows that follow.
    const std::vector<pump_room::ZoneChange>& changes() const { return m_changes; }
    /// Whether the design flows of the branches above follow; hidden where none has one of its own.
    QCheckBox* follow() const { return m_follow; }
    /// What came of it; null before the first.
    const pump_room::WhatIf* result() const { return m_result.get(); }
    /// Writes the study of what is tried; something must have come of it.
    base::Outcome writeStudy(const std::filesystem::path& file) const;

  public slots:
    /// Each takes what stands in the fields and tries it.
    void addZone();
    void removeZone();
    void changeFlow();
    void startAnew();
    /// Asks where, and writes what stands at the right as a PDF file.
    void saveStudy();
    /// Makes the job what was tried, as one step for undo.
    void keep();

  signals:
    void tried();

  private:
    QLineEdit* addField(QFormLayout* form, const QString& label, const QString& hint);
    std::optional<base::Id> namedBranch();
    void add(pump_room::ZoneChange change, const QString& words);
    void compute();
    void refresh();
    void showFollowing();
    /// What comes after what is kept.
    QString nextStep() const;
    ww::report::Report study() const;

    WorkbookBridge& m_bridge;
    QLineEdit* m_tag = nullptr;
    QLineEdit* m_parent = nullptr;
    QLineEdit* m_flow = nullptr;
    QLineEdit* m_circuitLoss = nullptr;
    QLineEdit* m_runLoss = nullptr;
    QLineEdit* m_valve = nullptr;
    QListWidget* m_list;
    QCheckBox* m_follow;
    QLabel* m_followWords;  ///< old and new figures
    QPushButton* m_add;
    QPushButton* m_remove;
    QPushButton* m_change;
    QPushButton* m_anew;
    QPushButton* m_save;
    QPushButton* m_keep;
    SectionView* m_view;
    BackgroundWork m_work;
    balancing::Resistances m_learned;
    std::vector<pump_room::ZoneChange> m_changes;
    std::vector<pump_room::FollowingFlow> m_following;  ///< what the changes ask of the branches above
    QStringList m_kept;  ///< what was kept last, until something is tried again or the job changes
    std::shared_ptr<const pump_room::WhatIf> m_result;
    int m_state = 0;
};

}  // namespace ww::ui
