// Asks which practice building a new job is about. Not for the file's name, which the desktop's own dialog
// asks.
#pragma once

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

#include "core/practice/practice_job.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/ordered_dialog.h"
#include "ui/widgets/whole_label.h"

namespace ww::ui {

/// How hard the building is, in one or two words: "Steady".
QString nameOf(practice::Difficulty difficulty);

class NewPracticeDialog : public OrderedDialog {
    Q_OBJECT

  public:
    /// `seed` is proposed as its number; the same number and difficulty give the same building again.
    explicit NewPracticeDialog(std::uint64_t seed, QWidget* parent = nullptr);

    QString name() const { return m_name->text().trimmed(); }
    practice::PracticeKey key() const;

  private:
    void refresh();

    HintedField* m_name;
    QComboBox* m_difficulty;
    WholeLabel* m_about;
    QLineEdit* m_seed;
    WholeLabel* m_fault;
    QPushButton* m_make;
};

}  // namespace ww::ui
