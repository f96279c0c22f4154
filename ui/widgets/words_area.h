// Words that scroll in the room that is left for them, or ask for all that they need where the place that
// they stand in scrolls itself. Not for what is typed into.
#pragma once

#include "ui/widgets/patient_area.h"

namespace ww::ui {

class WordsArea : public PatientArea {
    Q_OBJECT

  public:
    /// Takes `words` over; `name` is spoken.
    WordsArea(QWidget* words, const QString& name, QWidget* parent = nullptr);

    void setWhole(bool isWhole);

  protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fit();

    bool m_isWhole = false;
};

}  // namespace ww::ui
