#include "ui/practice/truth_window.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/places/wrapped_rows.h"
#include "ui/practice/new_practice_dialog.h"
#include "ui/text/format.h"
#include "ui/text/joined.h"
#include "ui/text/words.h"

namespace ww::ui {

namespace {

QString percentOf(quantity::Ratio ratio) {
    return QObject::tr("%1 %").arg(QString::number(100 * ratio.si(), 'f', 1));
}

/// In kPa, as the heading says.
QString pressure(quantity::PressureDifference value) {
    return QString::number(value.in(quantity::Unit::Kilopascal), 'f', 2);
}

QString head(const std::optional<quantity::Head>& value) {
    return value ? QObject::tr("%1 m").arg(QString::number(value->si(), 'f', 2))
                 : QObject::tr("a terminal is shut");
}

QString word(practice::FaultKind kind) {
    switch (kind) {
        case practice::FaultKind::AirInCoil:
            return QObject::tr("air in the coil");
        case practice::FaultKind::CloggingStrainer:
            return QObject::tr("a strainer clogged during the job");
        case practice::FaultKind::ControlValve:
            return QObject::tr("the control valve does not open fully");
        case practice::FaultKind::SettingMisread:
            return QObject::tr("the handle stood a turn off in round %1");
        case practice::FaultKind::WrongUnit:
            return QObject::tr("the meter stood on another unit in round %1");
        case practice::FaultKind::DpHalved:
            return QObject::tr("half the dp was read in round %1");
        case practice::FaultKind::DpDoubled:
            return QObject::tr("twice the dp was read in round %1");
    }
    return {};
}

}  // namespace

QList<TruthLine> truthLines(const practice::Comparison& comparison) {
    const auto line = [&](const QString& label, auto text) {
        return TruthLine{label, text(comparison.asFound), text(comparison.now), text(comparison.classical)};
    };
    const auto ratio = [](quantity::Ratio practice::Outcome::*value) {
        return [value](const practice::Outcome& outcome) { return percentOf(outcome.*value); };
    };
    const QString none = QStringLiteral("–");
    return {
        line(QObject::tr("Largest error of a share, true in the building"),
             ratio(&practice::Outcome::worstTrue)),
        line(QObject::tr("Largest error of a share, as the valves read"),
             ratio(&practice::Outcome::worstIndicated)),
        line(QObject::tr("Largest spread of a group"), ratio(&practice::Outcome::spread)),
        line(QObject::tr("Least flow of design"), ratio(&practice::Outcome::lowestOfDesign)),
        line(QObject::tr("An open valve in every group"),
             [](const practice::Outcome& outcome) {
                 return outcome.hasOpenMemberInEveryGroup ? QObject::tr("yes") : QObject::tr("no");
             }),
        line(QObject::tr("Head for design flow everywhere"),
             [](const practice::Outcome& outcome) { return head(outcome.headNeeded); }),
        {QObject::tr("Head saved"), none, comparison.headSaved ? head(comparison.headSaved) : none,
         comparison.asFound.headNeeded && comparison.classical.headNeeded
             ? head(*comparison.asFound.headNeeded - *comparison.classical.headNeeded)
             : none},
        {QObject::tr("Valves moved"), none, QString::number(comparison.work.moves),
         QString::number(comparison.classicalWork.moves)},
        {QObject::tr("Readings taken"), none, QString::number(comparison.work.readings),
         QString::number(comparison.classicalWork.readings)},
        {QObject::tr("Rounds"), none, QString::number(comparison.work.rounds),
         QString::number(comparison.classicalWork.rounds)},
    };
}

QStringList plantedFaults(const practice::Comparison& comparison, const project::Project& design) {
    QStringList lines;
    for (const practice::PlantedFault& fault : comparison.faults) {
        const QString tag = QString::fromStdString(design.branches()[fault.branch].tag);
        const QString what = word(fault.kind);
        lines << text::labelled(tag, fault.round > 0 ? what.arg(fault.round) : what);
    }
    return lines;
}

QTableWidget* TruthWindow::table(const QString& name, const QStringList& heads) {
    auto* made = new QTableWidget(0, static_cast<int>(heads.size()), this);
    made->setHorizontalHeaderLabels(heads);
    made->setAccessibleName(name);
    made->setEditTriggers(QAbstractItemView::NoEditTriggers);
    made->setSelectionBehavior(QAbstractItemView::SelectRows);
    made->setTabKeyNavigation(false);
    made->verticalHeader()->hide();
    // Columns of values are alike, however short a head is.
    constexpr int kDigits = 10;
    new WrappedRows(*made, 0, kDigits);
    return made;
}

TruthWindow::TruthWindow(const practice::PracticeJob& job, const project::Project& project, QWidget* parent)
    : OrderedDialog(parent) {
    setWindowTitle(tr("Truth against Found"));
    const practice::Comparison comparison = practice::compare(job, project);
    const project::Project& design = job.building().design();
    const auto add = [](QTableWidget* to, const QStringList& cells) {
        const int row = to->rowCount();
        to->insertRow(row);
        for (int column = 0; column < cells.size(); ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            if (column > 0) {
                const QStringList spoken{cells[0], to->horizontalHeaderItem(column)->text(), cells[column]};
                item->setData(Qt::AccessibleTextRole, spoken.join(QStringLiteral(", ")));
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            }
            to->setItem(row, column, item);
        }
    };
    const auto key = practice::practiceKey(project.job().practice);
    auto* title = new QLabel(tr("Practice building %1, number %2")
                                 .arg(key ? nameOf(key->difficulty) : QString())
                                 .arg(job.building().seed()),
                             this);
    QFont bold = title->font();
    bold.setBold(true);
    title->setFont(bold);
    auto* which =
        new QLabel(tr("True is what the simulated building really has; found is what was learned from your "
                      "readings."),
                   this);
    which->setWordWrap(true);
    m_summary = table(tr("What the work came to"),
                      {QString(), tr("Before the work"), tr("Now"), tr("Classical method")});
    // All its rows are seen where the screen has room; the losses scroll.
    m_summary->setSizeAdjustPolicy(QAbstractScrollArea::AdjustToContents);
    m_summary->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    for (const TruthLine& line : truthLines(comparison)) {
        add(m_summary, {line.label, line.found, line.now, line.classical});
    }
    m_losses = table(tr("Losses at design flow"),
                     {tr("Loss at design flow, kPa"), tr("By design"), tr("True (simulated)"),
                      tr("Found from readings"), tr("± 1 sd of found"), tr("Found / true")});
    for (const practice::ComparedLoss& loss : comparison.losses) {
        const QString tag = QString::fromStdString(design.branches()[loss.branch].tag);
        const QString none = QStringLiteral("–");
        add(m_losses, {loss.isRun ? tr("%1 run").arg(tag) : tr("%1 circuit").arg(tag), pressure(loss.design),
                       pressure(loss.real), loss.found ? pressure(*loss.found) : none,
                       loss.found ? percentOf(loss.foundUncertainty) : none,
                       loss.found ? QString::number(*loss.found / loss.real, 'f', 2) : none});
    }
    QStringList notes = plantedFaults(comparison, design);
    if (notes.isEmpty()) {
        notes << tr("No fault was planted in this building.");
    }
    if (comparison.notLearned) {
        notes << text::text(*comparison.notLearned);
    }
    auto* faults = new QLabel(notes.join('\n'), this);
    faults->setWordWrap(true);
    faults->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    faults->setAccessibleName(tr("Faults of the building"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    constexpr int kLeastLosses = 160;
    m_losses->setMinimumHeight(kLeastLosses);
    auto* content = new QVBoxLayout;
    content->addWidget(title);
    content->addWidget(which);
    content->addWidget(m_summary);
    content->addWidget(faults);
    content->addWidget(m_losses, 1);
    layOut(content, buttons);
    resizeWithText(900, 640);
    m_summary->setCurrentCell(0, 0);
    m_losses->setCurrentCell(0, 0);
    m_summary->setFocus();
}

}  // namespace ww::ui
