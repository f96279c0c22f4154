#include "ui/merge/merge_dialog.h"

#include <QButtonGroup>
#include <QDialogButtonBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>
#include <algorithm>
#include <numeric>

#include "ui/places/column_fit.h"
#include "ui/text/conflict_text.h"
#include "ui/text/format.h"
#include "ui/theme/control_style.h"
#include "ui/widgets/wrapped_choice.h"
#include "ui/widgets/wrapped_head.h"

namespace ww::ui {
namespace {

using project::ConflictChoice;
using project::MergeConflict;

enum Column { Place, Ours, Theirs, Both, ColumnCount };
constexpr const char* kChoiceProperty = "choice";
constexpr int kLeastTable = 160;
/// Between two columns, and around what stands in a cell.
constexpr int kLine = 2;

/// "48.8 kPa — A. Fields, 2026-03-04 14:00, M-1".
QString sideText(const QString& value, const std::string& person, const std::optional<base::Instant>& time,
                 const std::string& instrument) {
    QString text = value.isEmpty() ? QObject::tr("nothing") : value;
    QStringList by;
    if (!person.empty()) {
        by << QString::fromStdString(person);
    }
    if (time) {
        by << text::timeOf(*time);
    }
    if (!instrument.empty()) {
        by << QString::fromStdString(instrument);
    }
    text += by.isEmpty() ? QString() : QStringLiteral(" — ") + by.join(QStringLiteral(", "));
    return text.simplified();
}

QLabel* plainLabel(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

}  // namespace

MergeDialog::MergeDialog(const workbook::MergeReport& preview, const QString& copyName, QWidget* parent)
    : OrderedDialog(parent),
      m_summary(plainLabel(QString(), this)),
      m_table(new QTableWidget(0, ColumnCount, this)) {
    setWindowTitle(tr("Merge Another Laptop's Work"));
    QStringList lines{
        tr("“%1”, last changed by %2 on %3.")
            .arg(copyName, QString::fromStdString(preview.person), QString::fromStdString(preview.machine))};
    lines << tr("%n action(s) will be taken over as one step for undo.", nullptr,
                static_cast<int>(preview.actions));
    lines << tr("%n reading(s) only there will be added.", nullptr, static_cast<int>(preview.readingsAdded));
    lines << tr("%n place(s) read alike on both: nothing to do.", nullptr,
                static_cast<int>(preview.readingsIdentical));
    lines << tr("%n value(s) differ: pick now or later, none is picked yet.", nullptr,
                static_cast<int>(preview.conflicts.size()));
    m_summary->setText(lines.join('\n'));
    build(preview.conflicts, tr("&Merge"));
}

MergeDialog::MergeDialog(const std::vector<MergeConflict>& open, QWidget* parent)
    : OrderedDialog(parent),
      m_summary(plainLabel(QString(), this)),
      m_table(new QTableWidget(0, ColumnCount, this)) {
    setWindowTitle(tr("Decide What Merging Left Open"));
    m_summary->setText(tr("%n value(s) differ between the laptops. What you do not pick stays open.", nullptr,
                          static_cast<int>(open.size())));
    build(open, tr("&Store Choices"));
}

void MergeDialog::build(const std::vector<MergeConflict>& conflicts, const QString& accept) {
    m_summary->setAccessibleName(tr("What merging does"));
    m_table->setAccessibleName(tr("Values that differ"));
    m_table->setHorizontalHeader(new WrappedHead(m_table));
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // Columns stay where they are when a bar comes with the last row.
    m_table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_table->viewport()->installEventFilter(this);
    m_table->setHorizontalHeaderLabels({tr("Place"), tr("This laptop"), tr("Other laptop"), tr("Both")});
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionMode(QAbstractItemView::NoSelection);
    m_table->setFocusPolicy(Qt::NoFocus);
    // Else Tab would not leave a choice: the table would keep it for cells that take no keys.
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    for (const MergeConflict& conflict : conflicts) {
        addConflict(conflict);
    }
    m_table->setVisible(!conflicts.empty());
    auto* buttons = new QDialogButtonBox(this);
    QPushButton* yes = buttons->addButton(accept, QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel);
    yes->setObjectName(QStringLiteral("merge_accept"));
    yes->setAccessibleName(windowTitle());
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    m_table->setMinimumHeight(kLeastTable);
    auto* content = new QVBoxLayout;
    content->addWidget(m_summary);
    content->addWidget(m_table, 1);
    content->addWidget(plainLabel(tr("The value that is not picked stays in the history."), this));
    layOut(content, buttons);
    resizeWithText(900, conflicts.empty() ? 220 : 480);
}

bool MergeDialog::eventFilter(QObject* watched, QEvent* event) {
    const bool isRoom = event->type() == QEvent::Resize || event->type() == QEvent::Show;
    if (isRoom && watched == m_table->viewport() && m_table->isVisible()) {
        fit();
    }
    return OrderedDialog::eventFilter(watched, event);
}

void MergeDialog::fit() {
    // Two choices beside one another each keep half of the gap between them.
    const int apart = style()->styleHint(theme::ControlStyle::kTargetGap, nullptr, this) / 2;
    const int beside = kLine + 2 * apart;
    std::vector<int> least;
    std::vector<double> wanted;
    for (int column = 0; column < ColumnCount; ++column) {
        least.push_back(leastColumnWidth(*m_table, column));
        int widest = std::max(least.back(), wordsColumnWidth(*m_table, column));
        for (const WrappedChoice* choice : choicesIn(column)) {
            choice->parentWidget()->layout()->setContentsMargins(apart, apart, apart, apart);
            least.back() = std::max(least.back(), choice->leastWidth() + beside);
            widest = std::max(widest, choice->wholeWidth() + beside);
        }
        wanted.push_back(widest);
    }
    // Both sides share what is left.
    const double spare = m_table->viewport()->width() - std::accumulate(wanted.begin(), wanted.end(), 0.0);
    for (const Column side : {Ours, Theirs}) {
        wanted[side] += std::max(0.0, spare / 2);
    }
    leaveRoomFor(*m_table, std::accumulate(least.begin(), least.end(), 0));
    const std::vector<int> widths = sharedOut(least, wanted, m_table->viewport()->width(), Theirs);
    for (int column = 0; column < ColumnCount; ++column) {
        m_table->setColumnWidth(column, widths[static_cast<std::size_t>(column)]);
        for (WrappedChoice* choice : choicesIn(column)) {
            choice->breakFor(m_table->columnWidth(column) - beside);
        }
    }
    m_table->resizeRowsToContents();
}

WrappedChoice* MergeDialog::choiceAt(int row, int column) const {
    const QWidget* cell = m_table->cellWidget(row, column);
    return cell != nullptr ? cell->findChild<WrappedChoice*>() : nullptr;
}

std::vector<WrappedChoice*> MergeDialog::choicesIn(int column) const {
    std::vector<WrappedChoice*> choices;
    for (int row = 0; row < m_table->rowCount(); ++row) {
        if (WrappedChoice* choice = choiceAt(row, column)) {
            choices.push_back(choice);
        }
    }
    return choices;
}

void MergeDialog::addConflict(const MergeConflict& conflict) {
    const int row = m_table->rowCount();
    m_table->insertRow(row);
    const text::ConflictText said = text::conflictText(conflict);
    const QString place = said.place;
    m_table->setItem(row, Place, new QTableWidgetItem(place));
    auto* group = new QButtonGroup(m_table);
    const auto add = [&](Column column, ConflictChoice choice, const QString& text, const QString& spoken) {
        auto* cell = new QWidget(m_table);
        auto* button = new WrappedChoice(text, cell);
        auto* inside = new QVBoxLayout(cell);
        inside->setContentsMargins(0, 0, 0, 0);
        inside->addWidget(button);
        button->setProperty(kChoiceProperty, static_cast<int>(choice));
        button->setAccessibleName(tr("%1: %2").arg(place, spoken));
        group->addButton(button);
        m_table->setCellWidget(row, column, cell);
    };
    const QString ours = sideText(said.ours, conflict.ourPerson, conflict.ourTime, conflict.ourInstrument);
    const QString theirs =
        sideText(said.theirs, conflict.theirPerson, conflict.theirTime, conflict.theirInstrument);
    add(Ours, ConflictChoice::Ours, ours, tr("this laptop, %1").arg(ours));
    add(Theirs, ConflictChoice::Theirs, theirs, tr("other laptop, %1").arg(theirs));
    if (workbook::canKeepBoth(conflict)) {
        add(Both, ConflictChoice::Both, tr("both"), tr("both"));
    }
    m_ids.push_back(conflict.id);
}

MergeDialog::Choices MergeDialog::choices() const {
    Choices choices;
    for (int row = 0; row < m_table->rowCount(); ++row) {
        for (const int column : {Ours, Theirs, Both}) {
            const WrappedChoice* button = choiceAt(row, column);
            if (button != nullptr && button->isChecked()) {
                choices[m_ids[static_cast<std::size_t>(row)]] =
                    static_cast<ConflictChoice>(button->property(kChoiceProperty).toInt());
            }
        }
    }
    return choices;
}

}  // namespace ww::ui
