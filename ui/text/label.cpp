#include "ui/text/label.h"

#include "core/base/term.h"
#include "core/project/edit_label.h"
#include "ui/text/conflict_text.h"
#include "ui/text/words.h"

namespace ww::ui::text {
namespace {

constexpr base::MessageForm kEntryUndone{"label_entry_undone", "taken back: {1}"};
constexpr base::MessageForm kEntryRedone{"label_entry_redone", "done again: {1}"};

/// The word behind the title of a field, whose first letter is small inside a label.
std::string titleInLabel(const std::string& word) {
    QString title = QString::fromStdString(word);
    if (title.isEmpty() || term(word) != title) {
        return word;
    }
    title[0] = title[0].toUpper();
    const QString shown = term(title.toStdString());
    return shown != title ? shown.toStdString() : word;
}

}  // namespace

QString label(const std::string& stored) {
    auto said = project::readLabel(stored);
    if (!said) {
        return QString::fromStdString(stored);
    }
    if (said->is(project::labels::kFindingReason) && said->arguments.front().empty()) {
        return translated({&project::labels::kSigningReason, {}, {}});
    }
    for (std::size_t i = 0; i < said->arguments.size(); ++i) {
        if (said->arguments[i].empty()) {
            said->arguments[i] = term(base::term("without a name")).toStdString();
            continue;
        }
        if (base::isWordPlace(said->form->text, i)) {
            said->arguments[i] = titleInLabel(said->arguments[i]);
        }
    }
    const bool isChoice = said->is(project::labels::kChoice) || said->is(project::labels::kChoiceBoth);
    if (isChoice) {
        // Both forms end with the place of the conflict.
        said->arguments.back() = conflictPlace(said->arguments.back()).toStdString();
    }
    return translated(*said);
}

QString label(const workbook::JournalEntry& entry) {
    const QString what = label(entry.label);
    if (!entry.undoes && !entry.redoes) {
        return what;
    }
    return translated({entry.undoes ? &kEntryUndone : &kEntryRedone, {}, {what.toStdString()}});
}

}  // namespace ww::ui::text
