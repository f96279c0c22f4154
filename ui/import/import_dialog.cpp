#include "ui/import/import_dialog.h"

#include <QDialogButtonBox>
#include <QEvent>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>
#include <numeric>
#include <vector>

#include "core/project/names.h"
#include "ui/places/column_fit.h"
#include "ui/places/wrapped_rows.h"
#include "ui/text/column_words.h"
#include "ui/text/words.h"
#include "ui/widgets/dialog_area.h"
#include "ui/widgets/quiet_combo.h"
#include "ui/widgets/text_scale.h"
#include "ui/widgets/wrapped_head.h"

namespace ww::ui {

namespace {

/// Device-independent pixels at the usual text.
constexpr int kFaultColumnWidth = 320;
constexpr int kWidestCell = 160;
constexpr int kLeastRows = 130;

}  // namespace

ImportDialog::ImportDialog(WorkbookBridge& bridge, Preferences& preferences, ImportSource source,
                           const QString& file, QWidget* parent)
    : OrderedDialog(parent),
      m_bridge(bridge),
      m_preferences(preferences),
      m_source(std::move(source)),
      m_pages(new QStackedWidget(this)),
      m_sheet(new QuietCombo(this)),
      m_table(new QuietCombo(this)),
      m_headRow(new EntryField(this)),
      m_headRowWhy(new QLabel(this)),
      m_match(new MatchPanel(this)),
      m_model(new ImportModel(bridge.project(), this)),
      m_rows(new QTableView(this)),
      m_fault(new WholeLabel(1, this)),
      m_status(new QLabel(this)),
      m_leaveOut(new QPushButton(tr("&Leave Out All with Faults"), this)),
      m_nextFault(new QPushButton(tr("Show Next &Fault"), this)),
      m_back(new QPushButton(tr("Go &Back"), this)),
      m_next(new QPushButton(this)) {
    setWindowTitle(tr("Import: %1").arg(m_source.name));
    const std::pair<const char*, QString> kTables[] = {{"readings.csv", tr("Readings of a walk")},
                                                       {"branches.csv", tr("Branches")},
                                                       {"valves.csv", tr("Valve tables")},
                                                       {"pumps.csv", tr("Pumps")},
                                                       {"pump_curve.csv", tr("Pump curves")},
                                                       {"instruments.csv", tr("Instruments")},
                                                       {"pump_readings.csv", tr("Readings at pumps")}};
    for (const auto& [name, title] : kTables) {
        m_table->addItem(title, QString::fromLatin1(name));
    }
    for (const ImportSheet& one : m_source.sheets) {
        m_sheet->addItem(one.name);
    }
    m_pages->addWidget(columnPage());
    m_pages->addWidget(rowPage());
    m_status->setWordWrap(true);
    m_status->setAccessibleName(tr("State of the import"));
    auto* buttons = new QHBoxLayout;
    auto* cancel = new QPushButton(tr("Cancel"), this);
    cancel->setAutoDefault(false);
    m_back->setAutoDefault(false);
    m_next->setDefault(true);
    buttons->addWidget(m_status, 1);
    buttons->addWidget(m_back);
    buttons->addWidget(m_next);
    buttons->addWidget(cancel);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_pages, 1);
    layout->addLayout(buttons);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_back, &QPushButton::clicked, this, &ImportDialog::goBack);
    connect(m_next, &QPushButton::clicked, this, &ImportDialog::goOn);
    connect(m_model, &ImportModel::planned, this, &ImportDialog::refresh);
    connect(m_match, &MatchPanel::matched, this, &ImportDialog::refresh);
    connect(m_sheet, &QComboBox::currentIndexChanged, this, [this] {
        const std::string best = exchange::guessTable(sheet().table);
        m_isChanging = true;
        m_table->setCurrentIndex(m_table->findData(QString::fromStdString(best)));
        m_isChanging = false;
        renewMapping(false);
    });
    connect(m_table, &QComboBox::currentIndexChanged, this, [this] { renewMapping(false); });
    m_headRow->setAccessibleName(tr("Headings stand in row"));
    m_headRow->setStore([this](const QString& text) { return takeHeadRow(text); });
    connect(m_headRow, &EntryField::refusalGivenUp, m_headRowWhy, &QLabel::hide);
    // The sheet that looks most like the table that is meant.
    const std::string wanted = file.isEmpty() ? exchange::guessTable(sheet().table) : file.toStdString();
    m_isChanging = true;
    m_table->setCurrentIndex(m_table->findData(QString::fromStdString(wanted)));
    m_isChanging = false;
    renewMapping(false);
    m_table->setFocus(Qt::OtherFocusReason);
    resizeWithText(980, 560);
}

QWidget* ImportDialog::columnPage() {
    auto* page = new QWidget(this);
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->addRow(tr("&Sheet"), m_sheet);
    form->addRow(tr("The rows &are"), m_table);
    form->addRow(tr("&Headings stand in row"), m_headRow);
    form->addRow(m_headRowWhy);
    m_headRowWhy->setWordWrap(true);
    m_headRowWhy->hide();
    m_sheet->setAccessibleName(tr("&Sheet").remove('&'));
    m_table->setAccessibleName(tr("The rows &are").remove('&'));
    m_sheet->setEnabled(m_source.sheets.size() > 1);
    auto* words =
        new QLabel(tr("Say which of your columns is which, and the unit where the heading has none. "
                      "Columns with * are needed."),
                   page);
    words->setWordWrap(true);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(form);
    layout->addWidget(words);
    layout->addWidget(m_match);
    layout->addStretch(1);
    return new DialogArea(page, this);
}

QWidget* ImportDialog::rowPage() {
    auto* page = new QWidget(this);
    m_rows->setModel(m_model);
    m_rows->setAccessibleName(tr("Rows to import"));
    m_rows->setSelectionMode(QAbstractItemView::SingleSelection);
    m_rows->setTabKeyNavigation(false);
    m_rows->verticalHeader()->hide();
    m_rows->viewport()->installEventFilter(this);
    m_rows->setHorizontalHeader(new WrappedHead(m_rows));
    m_fault->setAccessibleName(tr("What is wrong with this row"));
    auto* words = new QLabel(tr("Nothing is in the job yet. Type over a cell to mend it; take the mark away "
                                "(Space) to leave a row out."),
                             page);
    words->setWordWrap(true);
    auto* below = new QHBoxLayout;
    below->addStretch(1);
    below->addWidget(m_nextFault);
    below->addWidget(m_leaveOut);
    m_nextFault->setAutoDefault(false);
    m_leaveOut->setAutoDefault(false);
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(words);
    layout->addWidget(m_rows, 1);
    layout->addWidget(m_fault);
    layout->addLayout(below);
    m_rows->setMinimumHeight(kLeastRows);
    connect(m_rows->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &ImportDialog::refresh);
    connect(m_rows->verticalScrollBar(), &QScrollBar::valueChanged, this, [this] { fitRowsSeen(*m_rows); });
    connect(m_leaveOut, &QPushButton::clicked, m_model, &ImportModel::leaveOutFaulty);
    connect(m_nextFault, &QPushButton::clicked, this, &ImportDialog::showNextFault);
    return new DialogArea(page, this);
}

const ImportSheet& ImportDialog::sheet() const {
    return m_source.sheets[static_cast<std::size_t>(std::max(0, m_sheet->currentIndex()))];
}

/// Readings without a round of their own belong to the one that is open, else to the next.
std::map<std::string, std::string> ImportDialog::constants() const {
    const QString file = m_table->currentData().toString();
    if (!file.endsWith(QStringLiteral("readings.csv"))) {
        return {};
    }
    const project::Round* open = m_bridge.openRoundOrNull();
    const project::Project& project = m_bridge.project();
    int next = 1;
    for (const project::Round& round : project.rounds()) {
        next = std::max(next, round.number + 1);
    }
    const auto kind = open != nullptr ? open->kind
                      : next == 1     ? project::RoundKind::Survey
                                      : project::RoundKind::Adjusting;
    std::map<std::string, std::string> all{{"round", std::to_string(open != nullptr ? open->number : next)}};
    if (file == QStringLiteral("readings.csv")) {
        all.emplace("kind", std::string(project::name(kind)));
    }
    return all;
}

bool ImportDialog::takeHeadRow(const QString& text) {
    const int rows = std::max(1, static_cast<int>(sheet().table.text.rows.size()));
    bool isNumber = false;
    const int row = text.trimmed().toInt(&isNumber);
    const bool isThere = isNumber && row >= 1 && row <= rows;
    m_headRowWhy->setText(isThere ? QString()
                                  : tr("\"%1\" is no row of this table; type one from 1 to %2")
                                        .arg(text.trimmed(), QString::number(rows)));
    m_headRowWhy->setVisible(!isThere);
    if (isThere) {
        m_headRow->setStored(QString::number(row));
        renewMapping(true);
    }
    return isThere;
}

void ImportDialog::renewMapping(bool isHeadRowGiven) {
    if (m_isChanging) {
        return;
    }
    const std::string file = m_table->currentData().toString().toStdString();
    const exchange::SourceTable& table = sheet().table;
    exchange::TableMapping mapping;
    if (isHeadRowGiven) {
        mapping =
            exchange::guessMapping(file, table, static_cast<std::size_t>(m_headRow->stored().toInt() - 1));
    } else {
        mapping = exchange::guessMapping(file, table);
    }
    m_preferences.recallMatch(m_bridge.project().job().id, table, mapping);
    m_isChanging = true;
    m_headRow->setStored(QString::number(mapping.headRow + 1));
    m_headRowWhy->hide();
    m_isChanging = false;
    m_match->show(table, mapping, constants());
}

void ImportDialog::goOn() {
    if (!isPreviewShown()) {
        m_preferences.rememberMatch(m_bridge.project().job().id, sheet().table, m_match->mapping());
        m_model->show(sheet().table, m_match->mapping(), m_source.name);
        m_pages->setCurrentIndex(1);
        fitColumns();
        fitRowsSeen(*m_rows);
        m_rows->setFocus(Qt::OtherFocusReason);
        if (m_model->faultyRowCount() > 0) {
            showNextFault();
        } else if (m_model->rowCount() > 0) {
            m_rows->setCurrentIndex(m_model->index(0, 0));
        }
        refresh();
        return;
    }
    if (!m_model->plan().isAcceptable()) {
        return;
    }
    const base::Outcome done = m_bridge.apply(m_model->plan().edit);
    if (done) {
        accept();
    } else {
        m_status->setText(text::text(done.fault()));
    }
}

bool ImportDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_rows->viewport() && event->type() == QEvent::Resize) {
        fitColumns();
        fitRowsSeen(*m_rows);
    }
    return OrderedDialog::eventFilter(watched, event);
}

void ImportDialog::fitColumns() {
    const double scale = textScale(font());
    std::vector<int> least;
    std::vector<double> wanted;
    for (int column = 0; column < m_model->columnCount(); ++column) {
        const int usual = column == ImportModel::Fault ? kFaultColumnWidth : kWidestCell;
        least.push_back(leastColumnWidth(*m_rows, column));
        wanted.push_back(std::max<double>(
            least.back(), std::min(wordsColumnWidth(*m_rows, column), static_cast<int>(usual * scale))));
    }
    // Where too little is lacking to be scrolled for, columns give it up.
    constexpr double kScrolledFor = 1.25;
    const int room = m_rows->viewport()->width();
    const double all = std::accumulate(wanted.begin(), wanted.end(), 0.0);
    std::vector<int> widths(wanted.begin(), wanted.end());
    if (all <= kScrolledFor * room && std::accumulate(least.begin(), least.end(), 0) <= room) {
        widths = sharedOut(least, wanted, room, widths.size() - 1);
    }
    for (std::size_t column = 0; column < widths.size(); ++column) {
        m_rows->setColumnWidth(static_cast<int>(column), widths[column]);
    }
}

void ImportDialog::goBack() {
    m_pages->setCurrentIndex(0);
    m_match->setFocus(Qt::OtherFocusReason);
    refresh();
}

void ImportDialog::showNextFault() {
    const int row = m_model->nextFaulty(m_rows->currentIndex().row());
    if (row < 0) {
        return;
    }
    int column = ImportModel::Fault;
    for (int at = ImportModel::LeadingCount; at < m_model->columnCount(); ++at) {
        const QString shown = m_model->index(row, at).data().toString();
        column = column == ImportModel::Fault && shown.startsWith(QStringLiteral("✗")) ? at : column;
    }
    m_rows->setCurrentIndex(m_model->index(row, column));
    m_rows->setFocus(Qt::OtherFocusReason);
}

void ImportDialog::refresh() {
    m_back->setVisible(isPreviewShown());
    if (!isPreviewShown()) {
        QStringList missing;
        for (const std::string& name : exchange::unmatched(m_match->mapping())) {
            missing << text::columnWords(name);
        }
        m_next->setText(tr("Show &Rows"));
        m_next->setEnabled(missing.isEmpty());
        m_status->setText(missing.isEmpty()
                              ? QString()
                              : tr("Still to choose: %1.").arg(missing.join(QStringLiteral(", "))));
        return;
    }
    const int row = m_rows->currentIndex().row();
    const QString own = row >= 0 && row < m_model->rowCount() ? m_model->faultOf(row) : QString();
    m_fault->setWords(own);
    const int faulty = m_model->faultyRowCount();
    m_next->setText(tr("&Import %n Row(s)", nullptr, m_model->takenRowCount()));
    m_next->setEnabled(m_model->plan().isAcceptable() && m_model->takenRowCount() > 0);
    m_leaveOut->setEnabled(faulty > 0);
    m_nextFault->setEnabled(faulty > 0);
    QStringList words = m_model->generalFaults();
    if (faulty > 0) {
        words.prepend(tr("%n row(s) must be mended or left out.", nullptr, faulty));
    }
    m_status->setText(words.join(QStringLiteral("  ")));
}

}  // namespace ww::ui
