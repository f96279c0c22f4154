// The strip on top: job, round, progress, person, meter, what was stored, display. Knows no workbook.
#pragma once

#include <QLabel>
#include <QLayout>
#include <QMenu>
#include <QPushButton>
#include <QWidget>

#include "ui/theme/theme.h"

namespace ww::ui {

/// What the strip says; empty texts leave their place empty.
struct StripText {
    QString job;
    QString round;
    QString read;
    QString wholeRead;  ///< what the valves are of
    int readCount = 0;
    int valveCount = 0;  ///< of the walk; 0: no progress is shown
    bool hasBar = true;  ///< beside the words of the progress
    QString person;      ///< who works at this desk, as short as it must be
    QString wholePerson;
    QString meter;
    QString stored;
    bool isNotStored = false;  ///< the stored text is a warning
    int conflictCount = 0;     ///< values that merging left to decide; 0: no badge
    QString display;

    bool operator==(const StripText&) const = default;
};

class JobStrip : public QWidget {
    Q_OBJECT

  public:
    explicit JobStrip(QWidget* parent = nullptr);
    /// Says this from now on; all of it is replaced.
    void show(const StripText& text);
    /// A button that opens `menu` stands first, named `title`; without a menu there is none.
    void setMenu(QMenu* menu, const QString& title);
    QSize minimumSizeHint() const override { return {kLeastWidth, QWidget::minimumSizeHint().height()}; }
    /// The width at which nothing of it has to yield.
    int wantedWidth() const { return layout()->sizeHint().width(); }
    void setTokens(const theme::Tokens& tokens, const theme::Metrics& metrics);

  signals:
    /// The badge was pressed.
    void conflictsWanted();
    /// The file takes nothing more, so a copy is wanted elsewhere.
    void copyElsewhereWanted();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    static constexpr int kLeastWidth = 240;
    class Progress;
    class Yielding;
    QPushButton* m_menu;
    QLabel* m_job;
    QLabel* m_round;
    QLabel* m_read;
    Progress* m_progress;
    QLabel* m_person;
    QLabel* m_meter;
    QLabel* m_stored;
    QPushButton* m_conflicts;
    QPushButton* m_elsewhere;
    QLabel* m_display;
    theme::Tokens m_tokens;
};

}  // namespace ww::ui
