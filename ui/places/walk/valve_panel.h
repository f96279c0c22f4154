// The valve in hand beside the grid: what it is, how its share went from round to round, its note. Not for
// the reading itself (the grid).
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "ui/assessed_rounds.h"
#include "ui/loop_advisor.h"
#include "ui/widgets/sparkline.h"
#include "ui/widgets/words_area.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class ValvePanel : public QWidget {
    Q_OBJECT

  public:
    ValvePanel(WorkbookBridge& bridge, const LoopAdvisor& advisor, AssessedRounds& rounds,
               QWidget* parent = nullptr);
    void setTokens(const theme::Tokens& tokens, const theme::Metrics& metrics);
    /// What is said of the valve in columns that the grid has no room for.
    void setLeftOut(const QStringList& values);
    /// As WordsArea::setWhole.
    void setWhole(bool isWhole) { m_area->setWhole(isWhole); }

  signals:
    /// The notes and photos of the valve in hand are to be shown.
    void notesWanted();

  private:
    void showBranch();
    void showByRound(std::size_t branch);
    void showLearned();
    QString valveText(const project::Branch& branch, const balancing::BranchResult& result) const;
    QString commentText(const base::Id& branch) const;
    QString readingText(const project::Reading* reading) const;

    WorkbookBridge& m_bridge;
    const LoopAdvisor& m_advisor;
    AssessedRounds& m_rounds;
    WordsArea* m_area;
    QLabel* m_tag;
    QLabel* m_serves;
    QLabel* m_facts;
    QLabel* m_byRound;
    Sparkline* m_sparkline;
    QLabel* m_reading;
    QLabel* m_leftOut;
    QLabel* m_learned;
    QLabel* m_comments;
    QLabel* m_notes;
    QPushButton* m_noteButton;
};

}  // namespace ww::ui
