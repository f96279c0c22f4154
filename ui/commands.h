// Every command of the desktop as one action: its words, its keys, its place in the menus. Not for what a
// command does (main_window).
#pragma once

#include <QAction>
#include <QMenuBar>
#include <QObject>

namespace ww::ui {

/// The actions belong to this object; menus are filled in the order in which they are declared here.
class Commands : public QObject {
    Q_OBJECT

    QList<QAction*> m_all;  ///< stands before the actions, which enter themselves here

  public:
    explicit Commands(QObject* parent = nullptr);

    /// Adds the menus to a bar.
    void fill(QMenuBar* bar);
    /// Every action once, for the key list and for checks.
    QList<QAction*> all() const { return m_all; }

    // File
    QAction* newJob;
    QAction* newFromFolder;
    QAction* newFromSample;
    QAction* newPractice;
    QAction* open;
    QMenu* openRecent;
    QAction* save;
    QAction* saveCopy;
    QAction* mergeCopy;
    QAction* decideConflicts;
    QAction* importTable;
    QMenu* exportAs;
    QAction* exportCsv;
    QAction* exportSpreadsheet;
    QAction* exportJson;
    QAction* printWalkSheet;
    QAction* saveWalkSheet;
    QAction* close;
    QAction* preferences;
    QAction* quit;
    // Edit
    QAction* undo;
    QAction* redo;
    QAction* cut;
    QAction* copy;
    QAction* paste;
    QAction* findValve;
    QAction* note;
    QAction* history;
    QAction* journal;
    QAction* nextOpen;
    QAction* previousOpen;
    // Round
    QAction* newRound;
    QAction* closeRound;
    QAction* notTurned;
    QAction* sendRound;
    QAction* acceptRound;
    QAction* comment;
    QMenu* meter;
    QMenu* person;
    QAction* setClock;
    // Valve
    QAction* readAgain;
    QAction* takeFix;
    QAction* doubtful;
    QAction* cannotRead;
    QAction* deficiency;
    QAction* takeMeter;
    QAction* takeGauges;
    QAction* addBranch;
    QAction* moveUp;  ///< of a branch, in the route; in Adjust in the working order
    QAction* moveDown;
    QAction* advisedOrder;
    QAction* valveTables;
    QAction* tryWhatIf;
    QAction* adjustOrHold;  ///< from other places: adjust this valve; in Adjust: hold, next valve
    QAction* readReference;
    QAction* readShutValve;
    QAction* takeAdvice;
    // View
    QAction* advice;
    QAction* convergence;
    QAction* tableTwin;
    QList<QAction*> places;     ///< in the order of the side list
    QList<QAction*> pumpPages;  ///< in the order of the tabs of Pump
    QAction* nextDisplay;
    QAction* largeTargets;
    QAction* largerText;
    QAction* smallerText;
    QAction* normalText;
    QAction* fullScreen;
    QMenu* language;
    // Report
    QAction* exportReport;
    QAction* signReport;
    QAction* makeCertificate;
    QAction* verifyReport;
    QAction* showTruth;
    // Help
    QAction* handbook;
    QAction* keys;
    QAction* releaseNotes;
    QAction* about;

  private:
    QAction* make(const QString& text, const QList<QKeySequence>& keys);
};

}  // namespace ww::ui
