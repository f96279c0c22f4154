#include "ui/places/job/readiness_page.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QVBoxLayout>

#include "core/balancing/readiness.h"
#include "core/project/edit_label.h"
#include "ui/places/column_fit.h"
#include "ui/places/row_removal.h"
#include "ui/text/parse.h"
#include "ui/text/typed_word.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kLineEmpty{"readiness_line_empty",
                                       "a line of readiness has no words; type them, or remove the line"};

/// Of the words beside the buttons, px.
constexpr int kHintWidth = 200;

}  // namespace

ReadinessPage::ReadinessPage(WorkbookBridge& bridge, BranchDelegate* delegate, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_model(new RecordTableModel(
          bridge,
          {{tr("Line"), tr("Must"), tr("State"), tr("Owner"), tr("Date"), tr("Evidence")},
           project::RecordKind::ReadinessLine,
           [this] { return static_cast<int>(m_bridge.project().readiness().size()); },
           [this](int row, int column) { return text(row, column); },
           [](int) { return true; },
           [this](int row, int column, const QString& typed) { return store(row, column, typed); }},
          this)),
      m_table(new EntryTable(this)),
      m_usual(new QPushButton(tr("Take Usual List"), this)),
      m_add(new QPushButton(tr("Add Line"), this)),
      m_remove(new QPushButton(tr("Remove Line"), this)) {
    auto* hint = new QLabel(tr("State: open, done or does not apply. No survey begins while a mandatory line "
                               "is open."),
                            this);
    hint->setWordWrap(true);
    auto* buttons = new QWidget(this);
    auto* line = new QHBoxLayout(buttons);
    line->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* button : {m_usual, m_add, m_remove}) {
        line->addWidget(button);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->addWidget(new SideBySide({hint, kHintWidth, 1, 0}, {buttons, 0, 0, 0}, this));
    column->addWidget(m_table, 1);
    m_table->setModel(m_model);
    m_table->setItemDelegate(delegate);
    m_table->setAccessibleName(tr("Readiness list"));
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->setStore([this](const QModelIndex& cell, const QString& typed) {
        return m_bridge.tellOrClear(m_model->store(cell, typed));
    });
    connect(m_table, &EntryTable::resized, this, &ReadinessPage::fitColumns);
    connect(m_usual, &QPushButton::clicked, this, [this] {
        balancing::ReviewContext context = m_bridge.reviewContext();
        m_bridge.tellOrClear(
            m_bridge.apply(balancing::addUsualReadiness(m_bridge.project(), context.ids, text::wording())));
    });
    connect(m_add, &QPushButton::clicked, this, [this] {
        if (!m_table->settleEdit()) {
            return;
        }
        project::ReadinessLine made;
        made.id = m_bridge.newId();
        made.text = tr("New line").toStdString();
        if (m_bridge.tellOrClear(
                m_bridge.apply(balancing::putReadinessLine(m_bridge.project(), std::move(made))))) {
            m_table->setFocus(Qt::OtherFocusReason);
            m_table->beginEdit(m_model->index(m_model->rowCount() - 1, Line));
        }
    });
    connect(m_remove, &QPushButton::clicked, this, [this] {
        const QModelIndex cell = m_table->currentIndex();
        if (cell.isValid()) {
            const project::ReadinessLine removed = lines()[static_cast<std::size_t>(cell.row())];
            m_bridge.tellOrClear(
                m_bridge.apply({project::label(project::labels::kRemoveReadiness, {removed.text}),
                                {},
                                {{project::RecordKind::ReadinessLine, removed.id}},
                                true}));
        } else {
            m_bridge.tell(base::Fault{&kNoRowInHand, {}, {}});
        }
    });
    connect(&bridge, &WorkbookBridge::changed, this, &ReadinessPage::refresh);
    refresh();
}

void ReadinessPage::takeFocus() {
    (m_model->rowCount() > 0 ? static_cast<QWidget*>(m_table) : m_usual)->setFocus(Qt::OtherFocusReason);
}

std::vector<project::ReadinessLine> ReadinessPage::lines() const {
    std::vector<project::ReadinessLine> lines(m_bridge.project().readiness().begin(),
                                              m_bridge.project().readiness().end());
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return a.position < b.position; });
    return lines;
}

QString ReadinessPage::text(int row, int column) const {
    const project::ReadinessLine line = lines()[static_cast<std::size_t>(row)];
    switch (column) {
        case Line:
            return text::readinessLine(line.text);
        case Mandatory:
            return line.isMandatory ? tr("yes") : tr("no");
        case State:
            return text::nameOf(line.state);
        case Owner:
            return QString::fromStdString(line.owner);
        case Date:
            return line.date ? QString::fromStdString(line.date->date()) : QString();
        default:
            return QString::fromStdString(line.evidence);
    }
}

base::Outcome ReadinessPage::store(int row, int column, const QString& typed) {
    project::ReadinessLine line = lines()[static_cast<std::size_t>(row)];
    const project::ReadinessLine before = line;
    const QString words = typed.trimmed();
    switch (column) {
        case Line:
            if (words.isEmpty()) {
                return base::Fault{&kLineEmpty, {}, {}};
            }
            if (words != text::readinessLine(line.text)) {
                line.text = words.toStdString();
            }
            break;
        case Mandatory: {
            const bool isYes = !words.isEmpty() && tr("yes").startsWith(words.toLower());
            const bool isNo = !words.isEmpty() && tr("no").startsWith(words.toLower());
            if (!isYes && !isNo) {
                return base::Fault{&text::kNotOneOf, {}, {words.toStdString(), "yes, no"}};
            }
            line.isMandatory = isYes;
            break;
        }
        case State:
            if (!text::takeWord(line.state, words)) {
                return text::wordFault<project::ReadinessState>(words);
            }
            // The day on which a line was done is the day on which that is said, unless it is typed.
            if (line.state == project::ReadinessState::Done && !line.date) {
                line.date = m_bridge.now();
            }
            break;
        case Owner:
            line.owner = words.toStdString();
            break;
        case Date: {
            if (words.isEmpty()) {
                line.date.reset();
                break;
            }
            auto date = text::parseDate(words);
            if (!date) {
                return date.fault();
            }
            line.date = *date;
            break;
        }
        default:
            line.evidence = words.toStdString();
            break;
    }
    if (line == before) {
        return base::Done{};
    }
    return m_bridge.apply(balancing::putReadinessLine(m_bridge.project(), std::move(line)));
}

void ReadinessPage::fitColumns() {
    const int digits[ColumnCount] = {26, 5, 13, 11, 10, 14};
    ui::fitColumns(*m_table, digits, Line);
}

void ReadinessPage::refresh() {
    const bool isWritable = !m_bridge.isReadOnly();
    m_usual->setEnabled(isWritable);
    m_add->setEnabled(isWritable);
    offerRemoval(*m_remove, isWritable, m_model->rowCount() > 0);
}

}  // namespace ww::ui
