// What this desk looks like, in one window: display, text size, large targets, and the way back to what the
// program came with. Not for facts of a job.
#pragma once

#include <QCheckBox>
#include <QPushButton>

#include "ui/preferences.h"
#include "ui/widgets/ordered_dialog.h"
#include "ui/widgets/quiet_combo.h"

namespace ww::ui {

class PreferencesDialog : public OrderedDialog {
    Q_OBJECT

  public:
    explicit PreferencesDialog(Preferences& preferences, QWidget* parent = nullptr);

  signals:
    /// Something was chosen and is kept; what is open follows.
    void changed();
    /// Another language was chosen; it is seen from the next start on.
    void languageChanged();

  private:
    void tellChanged();
    void refresh();

    Preferences& m_preferences;
    QuietCombo* m_display;
    QuietCombo* m_textSize;
    QuietCombo* m_language;
    QCheckBox* m_large;
};

}  // namespace ww::ui
