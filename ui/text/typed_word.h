// A word of an enumeration typed into a cell, whole or by its first letters. Not for free text.
#pragma once

#include <QString>

#include "core/base/fault.h"
#include "core/base/term.h"
#include "core/project/names.h"
#include "ui/text/words.h"

namespace ww::ui::text {

inline constexpr base::MessageForm kNotOneOf{"typed_word_unknown",
                                             "\"{1}\" is none of the words of this column; type one of {2w}"};

/// All words of an enumeration (nameOf) with commas between them.
template <class Enumeration>
QString namesOf() {
    return terms(QString::fromStdString(project::namesOf<Enumeration>()));
}
/// "yes" or "no".
inline QString yesOrNo(bool isYes) {
    return term(isYes ? base::term("yes") : base::term("no"));
}
/// Takes the beginning of "yes" or "no" in the language of the screen or in English; nothing where it is
/// neither.
inline std::optional<bool> takeYesOrNo(const QString& typed) {
    const QString word = typed.trimmed().toLower();
    for (const bool isYes : {true, false}) {
        const QString english = isYes ? QStringLiteral("yes") : QStringLiteral("no");
        if (!word.isEmpty() && (yesOrNo(isYes).toLower().startsWith(word) || english.startsWith(word))) {
            return isYes;
        }
    }
    return {};
}

/// Takes the only word that begins with what was typed (case does not matter), in the language of the screen,
/// else in English; an empty text takes the first word where that is empty. False, and nothing taken, where
/// none or several begin so.
template <class Enumeration>
bool takeWord(Enumeration& place, const QString& typed) {
    const QString wanted = typed.trimmed().toLower();
    std::optional<Enumeration> found = project::fromName<Enumeration>(wanted.toStdString());
    if (!found && !wanted.isEmpty()) {
        const QStringList words =
            QString::fromStdString(project::namesOf<Enumeration>()).split(QStringLiteral(", "));
        const auto onlyOne = [&](const auto& shown) {
            std::optional<Enumeration> one;
            int matches = 0;
            for (const QString& word : words) {
                if (const QString text = shown(word).toLower(); text.startsWith(wanted)) {
                    one = matches == 0 || text == wanted ? project::fromName<Enumeration>(word.toStdString())
                                                         : one;
                    matches = text == wanted ? -words.size() : matches + 1;
                }
            }
            return matches == 1 || matches < 0 ? one : std::nullopt;
        };
        found = onlyOne([](const QString& word) { return term(word.toStdString()); });
        if (!found) {
            found = onlyOne([](const QString& word) { return word; });
        }
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
