#include "ui/commands.h"

#include <QMenu>

namespace ww::ui {

QAction* Commands::make(const QString& text, const QList<QKeySequence>& keys) {
    auto* action = new QAction(text, this);
    action->setShortcuts(keys);
    m_all << action;
    return action;
}

// Keys are written out where a desktop's own table may have none: a command must not depend on that.
Commands::Commands(QObject* parent)
    : QObject(parent),
      newJob(make(tr("&New Job…"), {QKeySequence::fromString("Ctrl+N")})),
      newFromFolder(make(tr("New Job from &Tables…"), {QKeySequence::fromString("Ctrl+Shift+I")})),
      newFromSample(make(tr("New Job &from a Sample…"), {QKeySequence::fromString("Ctrl+Alt+S")})),
      newPractice(make(tr("New &Practice Job…"), {QKeySequence::fromString("Ctrl+Shift+P")})),
      open(make(tr("&Open…"), {QKeySequence::fromString("Ctrl+O")})),
      openRecent(new QMenu(tr("Open &Recent"))),
      save(make(tr("&Save Checkpoint…"), {QKeySequence::fromString("Ctrl+S")})),
      saveCopy(make(tr("Save a &Copy…"), {QKeySequence::fromString("Ctrl+Shift+S")})),
      mergeCopy(make(tr("&Merge Another Laptop…"), {QKeySequence::fromString("Ctrl+Shift+M")})),
      decideConflicts(make(tr("&Decide Conflicts…"), {QKeySequence::fromString("Ctrl+Shift+J")})),
      importTable(make(tr("&Import Table…"), {QKeySequence::fromString("Ctrl+Alt+I")})),
      exportAs(new QMenu(tr("&Export"))),
      exportCsv(make(tr("Export CSV &Tables…"), {QKeySequence::fromString("Ctrl+Shift+E")})),
      exportSpreadsheet(make(tr("Export &Spreadsheet…"), {QKeySequence::fromString("Ctrl+Alt+E")})),
      exportJson(make(tr("Export &JSON…"), {QKeySequence::fromString("Ctrl+Alt+J")})),
      printWalkSheet(make(tr("Print &Walk Sheet…"), {QKeySequence::fromString("Ctrl+Alt+P")})),
      saveWalkSheet(make(tr("Write Walk S&heet to File…"), {QKeySequence::fromString("Ctrl+Alt+W")})),
      close(make(tr("C&lose"), {QKeySequence::fromString("Ctrl+W")})),
      preferences(make(tr("Chan&ge Preferences…"), {QKeySequence::fromString("Ctrl+,")})),
      quit(make(tr("&Quit"), {QKeySequence::fromString("Ctrl+Q")})),
      undo(make(tr("&Undo"), {QKeySequence::fromString("Ctrl+Z")})),
      redo(make(tr("&Redo"), {QKeySequence::fromString("Ctrl+Shift+Z"), QKeySequence::fromString("Ctrl+Y")})),
      cut(make(tr("Cu&t"), {QKeySequence::fromString("Ctrl+X")})),
      copy(make(tr("Cop&y"), {QKeySequence::fromString("Ctrl+C")})),
      paste(make(tr("&Paste"), {QKeySequence::fromString("Ctrl+V")})),
      findValve(
          make(tr("&Find Valve…"), {QKeySequence::fromString("Ctrl+J"), QKeySequence::fromString("Ctrl+F")})),
      note(make(tr("Write &Note…"), {QKeySequence::fromString("Ctrl+M")})),
      history(make(tr("Show &History…"), {QKeySequence::fromString("Ctrl+H")})),
      journal(make(tr("Show the Job as It &Stood…"), {QKeySequence::fromString("Ctrl+Shift+H")})),
      nextOpen(make(tr("Go to Ne&xt Open Item"), {QKeySequence::fromString("Ctrl+Shift+Down")})),
      previousOpen(make(tr("Go to Pre&vious Open Item"), {QKeySequence::fromString("Ctrl+Shift+Up")})),
      newRound(make(tr("&Open New Round…"), {QKeySequence::fromString("Ctrl+Shift+N")})),
      closeRound(make(tr("&Close Round…"), {QKeySequence::fromString("Ctrl+Shift+W")})),
      notTurned(make(tr("Mark Rest as Not &Turned"), {QKeySequence::fromString("Ctrl+Alt+X")})),
      sendRound(make(tr("&Send Round to Supervisor"), {QKeySequence::fromString("Ctrl+Alt+R")})),
      acceptRound(make(tr("&Accept Round"), {QKeySequence::fromString("Ctrl+Alt+A")})),
      comment(make(tr("&Write Comment"), {QKeySequence::fromString("Ctrl+Alt+C")})),
      meter(new QMenu(tr("&Meter"))),
      person(new QMenu(tr("&Person"))),
      setClock(make(tr("Set Clock O&ffset…"), {QKeySequence::fromString("Ctrl+Alt+O")})),
      readAgain(make(tr("&Read Again"), {QKeySequence::fromString("Ctrl+R")})),
      takeFix(make(tr("&Take Offered Fix"), {QKeySequence::fromString("Ctrl+U")})),
      doubtful(make(tr("&Mark Doubtful"), {QKeySequence::fromString("Ctrl+D")})),
      cannotRead(make(tr("Record as &Not Readable"), {QKeySequence::fromString("Ctrl+Shift+X")})),
      deficiency(make(tr("List De&ficiency"), {QKeySequence::fromString("Ctrl+Shift+Y")})),
      takeMeter(make(tr("Take the Meter's &Value (Practice)"), {QKeySequence::fromString("Ctrl+L")})),
      takeGauges(make(tr("Take the Pump's &Gauges (Practice)"), {QKeySequence::fromString("Ctrl+Alt+L")})),
      addBranch(make(tr("&Add Branch"), {QKeySequence::fromString("Ctrl+Shift+A")})),
      moveUp(make(tr("Move Branch U&p the Route"), {QKeySequence::fromString("Alt+Shift+Up")})),
      moveDown(make(tr("Move Branch Do&wn the Route"), {QKeySequence::fromString("Alt+Shift+Down")})),
      advisedOrder(make(tr("Restore Advised &Order"), {QKeySequence::fromString("Ctrl+Alt+B")})),
      valveTables(make(tr("Enter Valve Ta&bles"), {QKeySequence::fromString("Ctrl+Alt+V")})),
      tryWhatIf(make(tr("Try W&hat If"), {QKeySequence::fromString("Ctrl+Alt+F")})),
      adjustOrHold(make(tr("A&djust This Valve"),
                        {QKeySequence::fromString("Ctrl+Enter"), QKeySequence::fromString("Ctrl+Return")})),
      readReference(make(tr("Read R&eference"), {QKeySequence::fromString("Ctrl+B")})),
      readShutValve(make(tr("Read with Valve &Shut"), {QKeySequence::fromString("Ctrl+Shift+B")})),
      takeAdvice(make(tr("Take Advised Sett&ing"), {QKeySequence::fromString("Ctrl+Shift+T")})),
      advice(make(tr("Show Adv&ice"), {QKeySequence::fromString("Ctrl+I")})),
      convergence(make(tr("Show &Convergence"), {QKeySequence::fromString("Ctrl+G")})),
      tableTwin(make(tr("Change Chart and &Table"), {QKeySequence::fromString("Ctrl+T")})),
      nextDisplay(make(tr("Switch to Next &Display"), {QKeySequence::fromString("Ctrl+Shift+D")})),
      largeTargets(make(tr("Use Lar&ge Targets"), {QKeySequence::fromString("Ctrl+Shift+L")})),
      largerText(make(tr("Make Text &Larger"),
                      {QKeySequence::fromString("Ctrl++"), QKeySequence::fromString("Ctrl+=")})),
      smallerText(make(tr("Make Text S&maller"), {QKeySequence::fromString("Ctrl+-")})),
      normalText(make(tr("Reset Te&xt Size"), {QKeySequence::fromString("Ctrl+0")})),
      fullScreen(make(tr("Show &Full Screen"),
                      {QKeySequence::fromString("F11"), QKeySequence::fromString("Ctrl+Shift+F")})),
      language(new QMenu(tr("Langu&age"))),
      exportReport(make(tr("&Export Unsigned Draft…"), {QKeySequence::fromString("Ctrl+P")})),
      signReport(make(tr("&Sign Report…"), {QKeySequence::fromString("Ctrl+Shift+R")})),
      makeCertificate(make(tr("&Make a Certificate…"), {QKeySequence::fromString("Ctrl+Shift+C")})),
      verifyReport(make(tr("&Verify a Report…"), {QKeySequence::fromString("Ctrl+Shift+G")})),
      showTruth(
          make(tr("Show &Truth against Found (Practice)…"), {QKeySequence::fromString("Ctrl+Shift+U")})),
      handbook(make(tr("Show &Handbook"),
                    {QKeySequence::fromString("F1"), QKeySequence::fromString("Ctrl+Alt+H")})),
      keys(make(tr("Show &Keys"), {QKeySequence::fromString("Ctrl+Shift+K")})),
      releaseNotes(make(tr("Show &Release Notes"), {QKeySequence::fromString("Ctrl+Alt+N")})),
      about(make(tr("Show &Version and Licence"), {QKeySequence::fromString("Ctrl+Shift+V")})) {
    // A place keeps its number also while its neighbours are not there, so that hands can learn it.
    const struct {
        QString name;
        QString key;
    } kPlaces[] = {{tr("Show &Job"), "Alt+1"},   {tr("Show &System"), "Alt+2"},
                   {tr("Show &Walk"), "Alt+3"},  {tr("Sh&ow Adjust"), "Alt+4"},
                   {tr("Show &Pump"), "Alt+5"},  {tr("Show Re&view"), "Alt+6"},
                   {tr("Show &Report"), "Alt+7"}};
    for (const auto& place : kPlaces) {
        QAction* action = make(place.name, {QKeySequence(place.key)});
        action->setCheckable(true);
        places << action;
    }
    const struct {
        QString name;
        QString key;
    } kPumpPages[] = {{tr("Show Pump &Curves"), "Ctrl+Alt+1"},
                      {tr("Enter Pump &Test"), "Ctrl+Alt+2"},
                      {tr("Show Test &Results"), "Ctrl+Alt+3"},
                      {tr("Show &Decision"), "Ctrl+Alt+4"},
                      {tr("Compare Read and &Set"), "Ctrl+Alt+5"},
                      {tr("Show &Pressures"), "Ctrl+Alt+6"},
                      {tr("Test &Energy Code"), "Ctrl+Alt+7"},
                      {tr("List De&vices"), "Ctrl+Alt+8"},
                      {tr("Enter Set-P&oint"), "Ctrl+Alt+9"},
                      {tr("Enter Pump D&ata"), "Ctrl+Alt+0"},
                      {tr("Try &Zones"), "Ctrl+Alt+Z"}};
    for (const auto& page : kPumpPages) {
        pumpPages << make(page.name, {QKeySequence(page.key)});
    }
    fullScreen->setCheckable(true);
    largeTargets->setCheckable(true);
}

void Commands::fill(QMenuBar* bar) {
    const auto add = [&](const QString& title, const QList<QAction*>& actions) {
        QMenu* menu = bar->addMenu(title);
        for (QAction* action : actions) {
            action == nullptr ? static_cast<void>(menu->addSeparator()) : menu->addAction(action);
        }
        return menu;
    };
    add(tr("&File"), {newJob,
                      newFromFolder,
                      newFromSample,
                      newPractice,
                      open,
                      openRecent->menuAction(),
                      nullptr,
                      save,
                      saveCopy,
                      mergeCopy,
                      decideConflicts,
                      nullptr,
                      importTable,
                      exportAs->menuAction(),
                      printWalkSheet,
                      saveWalkSheet,
                      nullptr,
                      preferences,
                      close,
                      quit});
    exportAs->addActions({exportCsv, exportSpreadsheet, exportJson});
    add(tr("&Edit"), {undo, redo, nullptr, cut, copy, paste, nullptr, findValve, note, history, journal,
                      nullptr, nextOpen, previousOpen});
    add(tr("&Round"), {newRound, closeRound, notTurned, sendRound, acceptRound, comment, nullptr,
                       meter->menuAction(), person->menuAction(), setClock});
    add(tr("&Valve"),
        {adjustOrHold, readReference, readShutValve, takeAdvice, nullptr,   readAgain,   takeFix,
         doubtful,     cannotRead,    deficiency,    nullptr,    takeMeter, takeGauges,  nullptr,
         addBranch,    valveTables,   tryWhatIf,     moveUp,     moveDown,  advisedOrder});
    add(tr("P&ump"), pumpPages);
    QMenu* view = add(tr("Vie&w"), places);
    view->addActions({advice, convergence, tableTwin});
    view->addSeparator();
    view->addActions(
        {nextDisplay, largeTargets, largerText, smallerText, normalText, fullScreen, language->menuAction()});
    add(tr("Re&port"), {exportReport, signReport, makeCertificate, verifyReport, nullptr, showTruth});
    add(tr("&Help"), {handbook, keys, releaseNotes, about});
}

}  // namespace ww::ui
