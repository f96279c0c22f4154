// What is typed in the place Walk and not entered: told to who keeps it, and offered back.
#include "ui/file_messages.h"
#include "ui/places/walk/walk_place.h"

namespace ww::ui {

std::vector<TypedDraft> WalkPlace::drafts() const {
    const project::Round* round = m_bridge.project().lastRound();
    std::vector<TypedDraft> all;
    if (round == nullptr || m_bridge.isReadOnly()) {
        return all;
    }
    const auto add = [&](const base::Id& branch, int column, const QString& text) {
        if (m_bridge.project().branches().contains(branch) && !text.trimmed().isEmpty()) {
            const bool isSetting = column == WalkModel::Setting;
            all.push_back({round->id, branch,
                           isSetting ? TypedDraft::Field::Setting : TypedDraft::Field::Reading, text});
        }
    };
    if (const QModelIndex cell = m_grid->editedCell(); cell.isValid() && m_grid->isTyped()) {
        add(m_model->branchAt(cell.row()), cell.column(), m_grid->editor()->text());
    }
    for (const ValveCard::Typed& typed :
         m_card != nullptr ? m_card->typed() : std::vector<ValveCard::Typed>()) {
        add(typed.branch, typed.column, typed.text);
    }
    return all;
}

bool WalkPlace::offer(const TypedDraft& draft) {
    const project::Round* round = m_bridge.project().lastRound();
    const int row = m_model->rowOf(draft.branch);
    if (round == nullptr || round->id != draft.round || row < 0) {
        return false;
    }
    const bool isSetting = draft.field == TypedDraft::Field::Setting;
    const QModelIndex cell = isSetting ? m_model->index(row, WalkModel::Setting) : m_model->entryCell(row);
    if (!cell.flags().testFlag(Qt::ItemIsEditable) || draft.text == cell.data(Qt::EditRole).toString()) {
        return false;
    }
    if (m_isCard) {
        m_card->offer({draft.branch, isSetting ? WalkModel::Setting : WalkModel::Dp, draft.text});
        m_grid->setCurrentIndex(cell);
    } else {
        m_grid->offerEdit(cell, draft.text);
    }
    return true;
}

void WalkPlace::tellOffered() {
    const auto typed = drafts();
    if (!typed.empty()) {
        const TypedDraft& first = typed.front();
        m_bridge.tell(base::Fault{&kTypedBack,
                                  m_bridge.project().branches().at(first.branch).tag,
                                  {first.text.trimmed().toStdString()}});
    }
}

}  // namespace ww::ui
