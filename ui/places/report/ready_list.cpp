#include "ui/places/report/ready_list.h"

#include <QApplication>
#include <QLabel>
#include <algorithm>

#include "core/balancing/checks/check_forms.h"
#include "core/balancing/review_steps.h"
#include "ui/places/fact_list.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

using balancing::SignLine;
using balancing::SignState;
using ww::report::Mark;

/// The place where a line is mended.
std::optional<ReadyList::Target> targetOf(const base::Fault& line) {
    using Target = ReadyList::Target;
    const struct {
        const base::MessageForm& form;
        Target target;
    } kTargets[] = {
        {balancing::kSignNoFinal, Target::Walk},
        {balancing::kSignUnread, Target::Walk},
        {balancing::kSignNobody, Target::Walk},
        {balancing::kSignWitnessUnread, Target::Walk},
        {balancing::kSignFinalOpen, Target::Walk},
        {balancing::kSignFinalNotAccepted, Target::Review},
        {balancing::kSignFinalSent, Target::Review},
        {balancing::kSignFinalSentBack, Target::Review},
        {balancing::kSignRoundNotAccepted, Target::Review},
        {balancing::kCommentsOpen, Target::Review},
        {balancing::kSignReadinessMissing, Target::Job},
        {balancing::kReadinessOpen, Target::Job},
        {balancing::kSignIndexOpen, Target::Pump},
        {balancing::kSignCodeUnnamed, Target::Pump},
        {balancing::kSignMergeOpen, Target::Merge},
    };
    for (const auto& [form, target] : kTargets) {
        if (line.is(form)) {
            return target;
        }
    }
    return std::nullopt;
}

/// A cross or a question mark stands in the way; the head above the list counts these. What is not as it
/// should be and stands all the same has no mark.
Mark markOfLine(SignState state) {
    switch (state) {
        case SignState::Good:
            return Mark::Pass;
        case SignState::Blocks:
            return Mark::Fail;
        case SignState::NeedsReason:
            return Mark::Open;
        case SignState::Reasoned:
        case SignState::Warns:
            break;
    }
    return Mark::None;
}

void takeOut(QLayout* layout) {
    while (QLayoutItem* item = layout->takeAt(0)) {
        if (item->widget() != nullptr) {
            item->widget()->deleteLater();
            item->widget()->hide();
        }
        delete item;
    }
}

}  // namespace

ReadyList::ReadyList(WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent), m_bridge(bridge), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 6, 0);
    m_lines->setSpacing(8);
}

void ReadyList::show(const std::vector<SignLine>& lines, const theme::Tokens& tokens) {
    const QWidget* held = isAncestorOf(QApplication::focusWidget()) ? QApplication::focusWidget() : nullptr;
    const QString name = held != nullptr ? held->accessibleName() : QString();
    takeOut(m_lines);
    m_reasons.clear();
    m_firstOpen = nullptr;
    bool isOpen = false;
    // What is left to do comes first; what is good below it.
    for (const bool isGood : {false, true}) {
        for (const SignLine& line : lines) {
            if ((line.state == SignState::Good) == isGood) {
                QWidget* box = add(line, tokens);
                const bool isInTheWay =
                    line.state == SignState::NeedsReason || line.state == SignState::Blocks;
                if (m_firstOpen == nullptr || (isInTheWay && !isOpen)) {
                    m_firstOpen = box;
                }
                isOpen = isOpen || isInTheWay;
            }
        }
    }
    m_lines->addStretch(1);
    if (held != nullptr) {
        passKeys(name);
    }
}

void ReadyList::passKeys(const QString& name) {
    const auto isHeld = [&](const Reason& reason) { return reason.field->accessibleName() == name; };
    const auto isOpen = [](const Reason& reason) { return reason.isOpen; };
    const auto at = std::find_if(m_reasons.begin(), m_reasons.end(), isHeld);
    QWidget* next = nullptr;
    if (at != m_reasons.end()) {
        auto open = std::find_if(at, m_reasons.end(), isOpen);
        open = open != m_reasons.end() ? open : std::find_if(m_reasons.begin(), at, isOpen);
        next = (open != m_reasons.end() && open->isOpen ? open : at)->field;
    } else {
        for (QPushButton* button : findChildren<QPushButton*>()) {
            next = button->isVisibleTo(this) && button->accessibleName() == name ? button : next;
        }
    }
    if (next != nullptr) {
        next->setFocus(Qt::OtherFocusReason);
    }
}

QWidget* ReadyList::add(const SignLine& line, const theme::Tokens& tokens) {
    auto* box = new QWidget(this);
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    auto* shape = new MarkShape(box);
    shape->show(markOfLine(line.state), tokens);
    auto* column = new QVBoxLayout;
    column->setSpacing(8);
    auto* words = new QLabel(text::text(line.text), box);
    words->setTextFormat(Qt::PlainText);
    words->setWordWrap(true);
    column->addWidget(words);
    row->addWidget(shape, 0, Qt::AlignTop);
    row->addLayout(column, 1);
    addCure(line, *column);
    if (line.state == SignState::NeedsReason || line.state == SignState::Reasoned) {
        addReason(line, *column);
    }
    m_lines->addWidget(box);
    box->show();
    return box;
}

QPushButton* ReadyList::button(const QString& words, const SignLine& line) {
    auto* button = new QPushButton(words, this);
    // Lines have the same buttons; their names tell them apart.
    button->setAccessibleName(tr("%1: %2").arg(words, text::text(line.text)));
    button->setAutoDefault(true);
    return button;
}

void ReadyList::addCure(const SignLine& line, QVBoxLayout& column) {
    if (line.state == SignState::Good || line.state == SignState::Reasoned) {
        return;
    }
    auto* row = new QHBoxLayout;
    if (const auto target = targetOf(line.text)) {
        const QString names[] = {tr("To Job"),  tr("To System"), tr("To Walk"),
                                 tr("To Pump"), tr("To Review"), tr("Decide Conflicts…")};
        QPushButton* there = button(names[static_cast<int>(*target)], line);
        connect(there, &QPushButton::clicked, this, [this, target] { emit placeWanted(*target); });
        row->addWidget(there);
    }
    if (line.branch && line.text.is(balancing::kFinalOffDesign)) {
        QPushButton* list = button(tr("List Deficiency"), line);
        list->setEnabled(!m_bridge.isReadOnly());
        connect(list, &QPushButton::clicked, this, [this, id = *line.branch] { emit deficiencyWanted(id); });
        row->addWidget(list);
    }
    if (line.branch) {
        QPushButton* show = button(tr("Show"), line);
        show->setAccessibleName(tr("Show %1").arg(QString::fromStdString(line.text.subject)));
        connect(show, &QPushButton::clicked, this, [this, id = *line.branch] { emit branchWanted(id); });
        row->addWidget(show);
    }
    row->addStretch(1);
    column.addLayout(row);
}

void ReadyList::addReason(const SignLine& line, QVBoxLayout& column) {
    auto* field = new EntryField(this);
    field->setHint(tr("give the reason, Enter"));
    field->setAccessibleName(tr("Reason: %1").arg(text::text(line.text)));
    field->setStored(QString::fromStdString(line.reason));
    field->setEnabled(!m_bridge.isReadOnly());
    field->setStore([this, fault = line.text](const QString& typed) { return giveReason(fault, typed); });
    column.addWidget(field);
    m_reasons.push_back({field, line.state == SignState::NeedsReason});
}

bool ReadyList::giveReason(const base::Fault& line, const QString& reason) {
    return m_bridge.tellOrClear(m_bridge.apply(balancing::giveFindingReason(
        m_bridge.project(), line, reason.trimmed().toStdString(), m_bridge.reviewContext())));
}

}  // namespace ww::ui
