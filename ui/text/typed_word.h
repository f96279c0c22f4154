// A word of an enumeration typed into a cell, whole or by its first letters. Not for free text.
#pragma once

#include <QString>

#include "core/base/fault.h"
#include "core/project/names.h"

namespace ww::ui::text {

inline constexpr base::MessageForm kNotOneOf{"typed_word_unknown",
                                             "\"{1}\" is none of the words of this column; type one of {2}"};

/// Takes the only word that begins with what was typed (case does not matter); an empty text takes the first
/// word where that is empty. False, and nothing taken, where none or several begin so.
template <class Enumeration>
bool takeWord(Enumeration& place, const QString& typed) {
    const QString wanted = typed.trimmed().toLower();
    std::optional<Enumeration> found = project::fromName<Enumeration>(wanted.toStdString());
    if (!found && !wanted.isEmpty()) {
        const QString words = QString::fromStdString(project::namesOf<Enumeration>());
        int matches = 0;
        for (const QString& word : words.split(QStringLiteral(", "))) {
            if (word.startsWith(wanted)) {
                ++matches;
                found = project::fromName<Enumeration>(word.toStdString());
            }
        }
        found = matches == 1 ? found : std::nullopt;
    }
    if (found) {
        place = *found;
    }
    return found.has_value();
}

template <class Enumeration>
base::Fault wordFault(const QString& typed) {
    return {&kNotOneOf, {}, {typed.trimmed().toStdString(), project::namesOf<Enumeration>()}};
}

}  // namespace ww::ui::text
