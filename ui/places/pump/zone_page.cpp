#include "ui/places/pump/zone_page.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "core/base/expects.h"
#include "core/project/review.h"
#include "core/report/pump_sections.h"
#include "core/report/zone_study.h"
#include "ui/delegates/wrapped_item.h"
#include "ui/models/system_model.h"
#include "ui/places/system/branch_edit.h"
#include "ui/report/report_file_name.h"
#include "ui/report/report_writer.h"
#include "ui/text/format.h"
#include "ui/text/joined.h"
#include "ui/text/parse.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {

namespace {

using pump_room::ZoneChange;

constexpr base::MessageForm kZoneTagUnknown{"zone_tag_unknown",
                                            "no branch is called \"{1}\"; type a tag of the place System"};
constexpr base::MessageForm kZoneFlowMissing{
    "zone_flow_missing", "the new design flow is missing; type it, such as 12.5 gpm or 0.8 L/s"};

constexpr base::MessageForm kStudySaved{"zone_study_saved", "the study is saved as {1}"};

constexpr int kZoneFormWidth = 370;

bool areEqual(const balancing::Resistances& left, const balancing::Resistances& right) {
    const auto isSame = [](const auto& a, const auto& b) {
        return a.has_value() == b.has_value() && (!a || a->si() == b->si());
    };
    return left.size() == right.size() && std::all_of(left.begin(), left.end(), [&](const auto& entry) {
               const auto other = right.find(entry.first);
               return other != right.end() && isSame(entry.second.run, other->second.run) &&
                      isSame(entry.second.circuit, other->second.circuit);
           });
}

}  // namespace

ZonePage::ZonePage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_list(new QListWidget(this)),
      m_follow(new QCheckBox(tr("Change the design flows above too"), this)),
      m_followWords(new QLabel(this)),
      m_add(new QPushButton(tr("&Add Zone"), this)),
      m_remove(new QPushButton(tr("Re&move Zone"), this)),
      m_change(new QPushButton(tr("Chan&ge Flow"), this)),
      m_anew(new QPushButton(tr("&Start Anew"), this)),
      m_save(new QPushButton(tr("Save St&udy…"), this)),
      m_keep(new QPushButton(tr("&Keep as New Revision"), this)),
      m_view(new SectionView(this)) {
    auto* left = new QWidget(this);
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setVerticalSpacing(4);
    m_tag = addField(form, tr("&Tag"), tr("of a new zone, or of one there is"));
    m_flow = addField(form, tr("Design fl&ow"), tr("such as 12.5 gpm or 0.8 L/s"));
    m_parent = addField(form, tr("Fe&d by"), tr("tag; empty: the pump"));
    m_circuitLoss = addField(form, tr("C&ircuit loss"), tr("at that flow, without valve"));
    m_runLoss = addField(form, tr("Ru&n loss"), tr("of the new pipe to it"));
    m_valve = addField(form, tr("Va&lve"), tr("model and size of the job"));
    auto* tryLine = new QHBoxLayout;
    tryLine->addWidget(m_add);
    tryLine->addWidget(m_remove);
    tryLine->addWidget(m_change);
    auto* keepLine = new QGridLayout;
    keepLine->addWidget(m_anew, 0, 0);
    keepLine->addWidget(m_save, 0, 1);
    keepLine->addWidget(m_keep, 1, 0, 1, 2);
    auto* hint = new QLabel(tr("Tried on a copy; the job stays as it is until it is kept."), left);
    hint->setWordWrap(true);
    m_list->setAccessibleName(tr("Changes tried"));
    m_list->setWordWrap(true);
    m_list->setItemDelegate(new WrappedItem(m_list));
    m_follow->setChecked(true);
    m_follow->hide();
    m_followWords->setWordWrap(true);
    m_followWords->setTextFormat(Qt::PlainText);
    m_followWords->hide();
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(form);
    column->addLayout(tryLine);
    column->addWidget(hint);
    column->addWidget(m_list, 1);
    column->addWidget(m_follow);
    column->addWidget(m_followWords);
    column->addLayout(keepLine);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 8, 4, 4);
    row->addWidget(new SideBySide({left, kZoneFormWidth, 0, 0},
                                  {m_view, kSectionWidth, 1, SideBySide::kAsItAsks}, this));
    connect(m_follow, &QCheckBox::toggled, this, &ZonePage::compute);
    connect(m_add, &QPushButton::clicked, this, &ZonePage::addZone);
    connect(m_remove, &QPushButton::clicked, this, &ZonePage::removeZone);
    connect(m_change, &QPushButton::clicked, this, &ZonePage::changeFlow);
    connect(m_anew, &QPushButton::clicked, this, &ZonePage::startAnew);
    connect(m_save, &QPushButton::clicked, this, &ZonePage::saveStudy);
    connect(m_keep, &QPushButton::clicked, this, &ZonePage::keep);
    connect(&bridge, &WorkbookBridge::changed, this, [this] {
        m_kept.clear();
        compute();
    });
    compute();
}

QLineEdit* ZonePage::addField(QFormLayout* form, const QString& label, const QString& hint) {
    auto* field = new HintedField(hint, this);
    QString name = label;
    field->setAccessibleName(name.remove('&'));
    form->addRow(label, field);
    return field;
}

std::optional<base::Id> ZonePage::namedBranch() {
    const std::string tag = m_tag->text().trimmed().toStdString();
    const project::Branch* branch = m_bridge.project().branchTagged(tag);
    if (branch == nullptr) {
        m_bridge.tellOrClear(base::Fault{&kZoneTagUnknown, {}, {tag}});
        m_tag->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    return branch->id;
}

/// The new branch is put together by the rules of the branch table, one field after the other.
void ZonePage::addZone() {
    if (!m_bridge.isOpen()) {
        return;
    }
    project::Project copy = m_bridge.project();
    const project::Edit fresh = newBranch(copy, std::nullopt, m_bridge.newId());
    const auto id = std::get<project::Branch>(fresh.put.front()).id;
    copy.put(std::get<project::Branch>(fresh.put.front()));
    const struct {
        SystemModel::Column column;
        QLineEdit* field;
    } kFields[] = {{SystemModel::Tag, m_tag},         {SystemModel::Parent, m_parent},
                   {SystemModel::Design, m_flow},     {SystemModel::CircuitLoss, m_circuitLoss},
                   {SystemModel::RunLoss, m_runLoss}, {SystemModel::Valve, m_valve}};
    for (const auto& entry : kFields) {
        const bool isNeeded = entry.field == m_flow;
        if (isNeeded && entry.field->text().trimmed().isEmpty()) {
            m_bridge.tellOrClear(base::Fault{&kZoneFlowMissing, {}, {}});
            entry.field->setFocus(Qt::OtherFocusReason);
            return;
        }
        const auto edit = branchEdit(copy, id, entry.column, entry.field->text());
        if (!edit) {
            m_bridge.tellOrClear(edit.fault());
            entry.field->setFocus(Qt::OtherFocusReason);
            return;
        }
        for (const project::AnyRecord& record : edit->put) {
            copy.put(std::get<project::Branch>(record));
        }
    }
    project::Branch made = copy.branches().at(id);
    add(pump_room::AddBranch{made},
        tr("add %1, %2").arg(QString::fromStdString(made.tag), text::entered(made.designFlow)));
}

void ZonePage::removeZone() {
    if (const auto branch = namedBranch()) {
        add(pump_room::RemoveBranch{*branch}, tr("remove %1").arg(m_tag->text().trimmed()));
    }
}

void ZonePage::changeFlow() {
    const auto branch = namedBranch();
    if (!branch) {
        return;
    }
    auto flow = text::parseMeasured<quantity::VolumeFlow>(m_flow->text().trimmed(),
                                                          text::flowUnit(m_bridge.project()));
    if (!flow) {
        m_bridge.tellOrClear(flow.fault());
        m_flow->setFocus(Qt::OtherFocusReason);
        return;
    }
    const QString words = tr("%1 to %2").arg(m_tag->text().trimmed(), text::entered(std::optional(*flow)));
    add(pump_room::ChangeFlow{*branch, std::move(flow).value()}, words);
}

void ZonePage::add(ZoneChange change, const QString& words) {
    emit m_bridge.messageCleared();
    m_kept.clear();
    m_changes.push_back(std::move(change));
    m_list->addItem(words);
    compute();
}

void ZonePage::startAnew() {
    m_changes.clear();
    m_list->clear();
    compute();
}

ww::report::Report ZonePage::study() const {
    EXPECTS(m_result != nullptr);
    ww::report::ReportOptions options;
    const workbook::JournalEntry& newest = m_bridge.workbook()->newestEntry();
    options.journalDigest = newest.digest.text();
    options.printed = newest.time;
    options.workbookId = m_bridge.workbook()->workbookId().text();
    return ww::report::zoneStudy(m_bridge.project(), *m_result, options);
}

base::Outcome ZonePage::writeStudy(const std::filesystem::path& file) const {
    return report::writePdf(study(), m_result->project, file);
}

void ZonePage::saveStudy() {
    if (m_result == nullptr) {
        return;
    }
    const QString folder = QFileInfo(m_bridge.file()).absolutePath();
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Save Study"), folder + '/' + report::fileNameOf(study()), tr("PDF files (*.pdf)"));
    if (!file.isEmpty() && m_bridge.tell(writeStudy(std::filesystem::path(file.toStdString())))) {
        emit m_bridge.messageRaised(base::Fault{&kStudySaved, {}, {file.toStdString()}});
    }
}

void ZonePage::keep() {
    if (m_result == nullptr || !m_result->faults.empty() || m_result->edit.isEmpty()) {
        return;
    }
    QStringList kept;
    for (int row = 0; row < m_list->count(); ++row) {
        kept << m_list->item(row)->text();
    }
    if (m_follow->isChecked() && !m_following.empty()) {
        kept << m_followWords->text();
    }
    if (m_bridge.tellOrClear(m_bridge.apply(m_result->edit))) {
        m_kept = kept;
        startAnew();
    }
}

QString ZonePage::nextStep() const {
    const QString kept = tr("Kept as one step: %1.").arg(text::listed(m_kept));
    const project::Project& project = m_bridge.project();
    if (project.rounds().empty()) {
        return kept;
    }
    const project::Round* open = project::roundInHand(project);
    const QString next = open != nullptr
                             ? tr("Next: set the valves of new branches fully open and read them in round "
                                  "%1, which is open: place "
                                  "Walk (Alt+3).")
                                   .arg(open->number)
                             : tr("Next: set the valves of new branches fully open, then open a round "
                                  "(Ctrl+Shift+N) and read every "
                                  "valve. Rounds that are closed keep the design they were judged by.");
    return kept + "\n\n" + next;
}

void ZonePage::compute() {
    ++m_state;
    m_result.reset();
    m_following.clear();
    if (!m_changes.empty() && m_bridge.isOpen()) {
        m_following = pump_room::followingFlows(m_bridge.project(), m_changes);
        std::vector<ZoneChange> all = m_changes;
        for (const pump_room::FollowingFlow& following : m_following) {
            if (m_follow->isChecked()) {
                all.emplace_back(following.change);
            }
        }
        auto made = std::make_shared<pump_room::WhatIf>();
        m_work.run([made, project = m_bridge.project(), changes = std::move(all),
                    learned = m_learned] { *made = pump_room::whatIf(project, changes, learned); },
                   [this, made, state = m_state] {
                       if (state == m_state) {
                           m_result = made;
                           refresh();
                           emit tried();
                       }
                   });
    }
    refresh();
}

/// Old and new figures stand beside the tick, before anything is kept.
void ZonePage::showFollowing() {
    QStringList flows;
    for (const pump_room::FollowingFlow& following : m_following) {
        flows << QStringLiteral("%1 %2 → %3")
                     .arg(QString::fromStdString(
                              m_bridge.project().branches().at(following.change.branch).tag),
                          text::entered(std::optional(following.before)),
                          text::entered(std::optional(following.change.flow)));
    }
    m_followWords->setText(flows.join(QStringLiteral(", ")));
    m_follow->setAccessibleDescription(m_followWords->text());
    for (QWidget* part : {static_cast<QWidget*>(m_follow), static_cast<QWidget*>(m_followWords)}) {
        part->setVisible(!m_following.empty());
    }
}

void ZonePage::refresh() {
    showFollowing();
    const bool isWritable = m_bridge.isOpen() && !m_bridge.isReadOnly();
    m_save->setEnabled(m_result != nullptr && m_result->faults.empty());
    m_anew->setEnabled(!m_changes.empty());
    m_keep->setEnabled(isWritable && m_result != nullptr && m_result->faults.empty() &&
                       !m_result->edit.isEmpty());
    for (QPushButton* button : {m_add, m_remove, m_change}) {
        button->setEnabled(m_bridge.isOpen());
    }
    if (m_result != nullptr) {
        m_view->show(ww::report::zoneSection(*m_result));
    } else if (!m_changes.empty()) {
        m_view->showMessage(tr("The changed loop is being solved."));
    } else if (!m_kept.isEmpty() && m_bridge.isOpen()) {
        m_view->showMessage(nextStep());
    } else {
        m_view->showMessage(tr(
            "Type a tag and a flow at the left, and add a zone, remove one or change its flow: the changed "
            "loop is solved, and what it does to the balance, the pump and the signed report stands here."));
    }
}

void ZonePage::show(const pump_room::PumpPicture* picture) {
    // A newer learned loop changes the answer; without one, what is shown says that it is from design.
    balancing::Resistances learned = picture != nullptr ? picture->learned : balancing::Resistances{};
    const bool isNew = !areEqual(learned, m_learned);
    m_learned = std::move(learned);
    if (isNew && !m_changes.empty()) {
        compute();
    }
}

}  // namespace ww::ui
