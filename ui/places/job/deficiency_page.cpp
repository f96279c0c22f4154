#include "ui/places/job/deficiency_page.h"

#include <QDragEnterEvent>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QMimeData>
#include <QVBoxLayout>

#include "core/balancing/review_steps.h"
#include "ui/places/column_fit.h"
#include "ui/text/format.h"
#include "ui/text/parse.h"
#include "ui/text/typed_word.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kTagUnknown{"deficiency_tag_unknown",
                                        "no branch is called \"{1}\"; type a tag of the place System"};
constexpr base::MessageForm kNoDeficiencyInHand{
    "no_deficiency_in_hand", "no deficiency is in hand to keep the photo with; list one first"};

QString dateText(const std::optional<base::Instant>& date) {
    return date ? QString::fromStdString(date->date()) : QString();
}

}  // namespace

DeficiencyPage::DeficiencyPage(WorkbookBridge& bridge, BranchDelegate* delegate, QWidget* parent)
    : QWidget(parent),
      m_bridge(bridge),
      m_model(new RecordTableModel(
          bridge,
          {{tr("No."), tr("Tag"), tr("What is wrong"), tr("Trade"), tr("Status"), tr("Raised"),
            tr("Re-tested")},
           project::RecordKind::Deficiency,
           [this] { return static_cast<int>(m_bridge.project().deficiencies().size()); },
           [this](int row, int column) { return text(row, column); },
           [](int column) { return column != Number; },
           [this](int row, int column, const QString& typed) { return store(row, column, typed); }},
          this)),
      m_table(new EntryTable(this)),
      m_add(new QPushButton(tr("List Deficiency"), this)),
      m_evidence(new QLabel(this)),
      m_photos(new PhotoList(bridge, tr("Photos of the deficiency"), this)) {
    setAcceptDrops(true);
    m_table->setModel(m_model);
    m_table->setItemDelegate(delegate);
    m_table->setAccessibleName(tr("Deficiencies"));
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->setStore([this](const QModelIndex& cell, const QString& typed) {
        return m_bridge.tellOrClear(m_model->store(cell, typed));
    });
    m_evidence->setTextFormat(Qt::PlainText);
    m_evidence->setWordWrap(true);
    m_evidence->setAccessibleName(tr("Evidence"));

    auto* head = new QHBoxLayout;
    auto* hint = new QLabel(tr("Status: open, remedied, closed or left as it is."), this);
    hint->setWordWrap(true);
    head->addWidget(hint, 1);
    head->addWidget(m_add);
    auto* form = new QFormLayout;
    form->setVerticalSpacing(4);
    const struct {
        QString label;
        std::string project::Deficiency::*member;
    } kFields[] = {{tr("Locatio&n"), &project::Deficiency::location},
                   {tr("Conse&quence"), &project::Deficiency::consequence},
                   {tr("Re&medy proposed"), &project::Deficiency::remedy},
                   {tr("R&e-test result"), &project::Deficiency::retestResult}};
    for (const auto& field : kFields) {
        auto* entry = new EntryField(this);
        QString name = field.label;
        entry->setAccessibleName(name.remove('&'));
        entry->setStore([this, member = field.member](const QString& typed) {
            const project::Deficiency* shown = inHand();
            if (shown == nullptr) {
                return true;
            }
            project::Deficiency changed = *shown;
            changed.*member = typed.trimmed().toStdString();
            return changed == *shown ||
                   m_bridge.tellOrClear(m_bridge.apply(balancing::putDeficiency(std::move(changed))));
        });
        form->addRow(field.label, entry);
        m_fields.push_back({field.member, entry});
    }
    form->addRow(tr("Evidence"), m_evidence);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    column->addLayout(form);
    column->addWidget(m_photos);

    connect(m_table, &EntryTable::resized, this, &DeficiencyPage::fitColumns);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &DeficiencyPage::showInHand);
    connect(m_add, &QPushButton::clicked, this, [this] { add(std::nullopt); });
    connect(&bridge, &WorkbookBridge::changed, this, &DeficiencyPage::showInHand);
    showInHand();
}

const project::Deficiency* DeficiencyPage::at(int row) const {
    const auto& all = m_bridge.project().deficiencies();
    return row >= 0 && static_cast<std::size_t>(row) < all.size() ? &all[static_cast<std::size_t>(row)]
                                                                  : nullptr;
}

const project::Deficiency* DeficiencyPage::inHand() const {
    return at(m_table->currentIndex().row());
}

QString DeficiencyPage::text(int row, int column) const {
    const project::Deficiency& shown = *at(row);
    switch (column) {
        case Number:
            return QString::number(shown.number);
        case Tag: {
            const auto* branch = shown.branch ? m_bridge.project().branches().find(*shown.branch) : nullptr;
            return branch != nullptr ? QString::fromStdString(branch->tag) : QString();
        }
        case Description:
            return QString::fromStdString(shown.description);
        case Trade:
            return QString::fromStdString(shown.trade);
        case Status:
            return text::nameOf(shown.status);
        case Raised:
            return dateText(shown.raised);
        default:
            return dateText(shown.retested);
    }
}

base::Outcome DeficiencyPage::store(int row, int column, const QString& typed) {
    const project::Deficiency& before = *at(row);
    project::Deficiency changed = before;
    const QString words = typed.trimmed();
    const auto takeDate = [&](std::optional<base::Instant>& place) -> std::optional<base::Fault> {
        if (words.isEmpty()) {
            place.reset();
            return {};
        }
        auto date = text::parseDate(words);
        if (!date) {
            return date.fault();
        }
        place = *date;
        return {};
    };
    std::optional<base::Fault> refusal;
    switch (column) {
        case Tag: {
            const project::Branch* branch = m_bridge.project().branchTagged(words.toStdString());
            if (branch == nullptr && !words.isEmpty()) {
                return base::Fault{&kTagUnknown, {}, {words.toStdString()}};
            }
            changed.branch = branch != nullptr ? std::optional(branch->id) : std::nullopt;
            break;
        }
        case Description:
            changed.description = words.toStdString();
            break;
        case Trade:
            changed.trade = words.toStdString();
            break;
        case Status:
            if (!text::takeWord(changed.status, words)) {
                return text::wordFault<project::DeficiencyStatus>(words);
            }
            break;
        case Raised:
            refusal = takeDate(changed.raised);
            break;
        case Retested:
            refusal = takeDate(changed.retested);
            break;
        default:
            return base::Done{};
    }
    if (refusal) {
        return *refusal;
    }
    return changed == before ? base::Outcome(base::Done{})
                             : m_bridge.apply(balancing::putDeficiency(std::move(changed)));
}

void DeficiencyPage::add(std::optional<base::Id> branch) {
    if (!m_table->settleEdit()) {
        return;
    }
    project::Deficiency made = balancing::newDeficiency(m_bridge.project(), branch, m_bridge.reviewContext());
    if (m_bridge.tellOrClear(m_bridge.apply(balancing::putDeficiency(std::move(made))))) {
        m_table->setFocus(Qt::OtherFocusReason);
        m_table->beginEdit(m_model->index(m_model->rowCount() - 1, branch ? Description : Tag));
    }
}

bool DeficiencyPage::attach(const QString& file) {
    const project::Deficiency* shown = inHand();
    if (shown == nullptr) {
        return m_bridge.tellOrClear(base::Fault{&kNoDeficiencyInHand, {}, {}});
    }
    return m_photos->attach(file);
}

void DeficiencyPage::showInHand() {
    const project::Deficiency* shown = inHand();
    const bool isWritable = shown != nullptr && !m_bridge.isReadOnly();
    for (const Field& field : m_fields) {
        field.entry->setStored(shown != nullptr ? QString::fromStdString(shown->*field.member) : QString());
        field.entry->setEnabled(isWritable);
    }
    m_add->setEnabled(!m_bridge.isReadOnly());
    const project::Reading* reading =
        shown != nullptr && shown->reading ? m_bridge.project().readings().find(*shown->reading) : nullptr;
    QString evidence;
    if (reading != nullptr) {
        evidence = tr("round %1: %2")
                       .arg(QString::number(m_bridge.project().rounds().at(reading->round).number),
                            reading->dp ? text::entered(reading->dp) : text::entered(reading->flow));
    } else if (shown != nullptr) {
        evidence = tr("no reading");
    }
    if (shown != nullptr && !shown->raisedBy.empty()) {
        evidence += tr(", raised by %1").arg(QString::fromStdString(shown->raisedBy));
    }
    m_evidence->setText(evidence);
    m_photos->show(shown != nullptr ? std::optional(PhotoOwner{shown->branch, shown->id}) : std::nullopt);
}

void DeficiencyPage::fitColumns() {
    const int digits[ColumnCount] = {4, 9, 24, 11, 13, 10, 10};
    ui::fitColumns(*m_table, digits, Description);
}

void DeficiencyPage::dragEnterEvent(QDragEnterEvent* event) {
    const QList<QUrl> urls = event->mimeData()->urls();
    if (urls.size() == 1 && inHand() != nullptr && !m_bridge.isReadOnly() &&
        isPhotoName(urls.front().toLocalFile())) {
        event->acceptProposedAction();
    }
}

void DeficiencyPage::dropEvent(QDropEvent* event) {
    if (attach(event->mimeData()->urls().front().toLocalFile())) {
        event->acceptProposedAction();
    }
}

}  // namespace ww::ui
