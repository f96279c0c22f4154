// What is typed into the card of the valve in hand and not stored, at this valve and at others.
#include "ui/places/walk/valve_card.h"

namespace ww::ui {

void ValveCard::exchangeRefused(const std::optional<base::Id>& shown) {
    for (const auto& [field, column] :
         {std::pair(m_setting, WalkModel::Setting), std::pair(m_dp, WalkModel::Dp)}) {
        if (m_branch && field->isTyped() && !field->text().isEmpty()) {
            m_refused[{*m_branch, column}] = {field->text(), field->isOffered()};
        }
        field->setStored(cell(column).data(Qt::EditRole).toString());
        const auto kept = shown ? m_refused.find({*shown, column}) : m_refused.end();
        if (kept != m_refused.end()) {
            kept->second.isOffered ? field->setOffered(kept->second.text)
                                   : field->setRefused(kept->second.text);
            m_refused.erase(kept);
        }
    }
    m_branch = shown;
}

std::vector<ValveCard::Typed> ValveCard::typed() const {
    std::vector<Typed> all;
    for (const auto& [field, column] :
         {std::pair(m_setting, WalkModel::Setting), std::pair(m_dp, WalkModel::Dp)}) {
        if (m_branch && field->isTyped() && !field->text().isEmpty()) {
            all.push_back({*m_branch, column, field->text()});
        }
    }
    for (const auto& [place, kept] : m_refused) {
        all.push_back({place.first, place.second, kept.text});
    }
    return all;
}

void ValveCard::offer(const Typed& typed) {
    if (m_branch != typed.branch) {
        m_refused[{typed.branch, typed.column}] = {typed.text, true};
        return;
    }
    WalkField* field = typed.column == WalkModel::Setting ? m_setting : m_dp;
    if (!field->isTyped()) {
        field->setOffered(typed.text);
        field->selectAll();
    }
}

void ValveCard::dropTypedDp() {
    m_dp->setStored(cell(entryColumn()).data(Qt::EditRole).toString());
}

}  // namespace ww::ui
