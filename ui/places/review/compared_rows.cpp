#include "ui/places/review/compared_rows.h"

#include <QCoreApplication>

#include "ui/text/conflict_text.h"
#include "ui/text/format.h"
#include "ui/text/joined.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// The texts of this file.
struct ReviewPlaceText {
    Q_DECLARE_TR_FUNCTIONS(ReviewPlace)
};

/// "old → new", or one of them where they are the same.
QString step(const QString& before, const QString& after) {
    if (before == after) {
        return after;
    }
    const QString none = QStringLiteral("–");
    return QStringLiteral("%1 → %2").arg(before.isEmpty() ? none : before, after.isEmpty() ? none : after);
}

/// A dp as typed, without its unit where that is the one of the column.
QString dpText(const project::Reading& reading, quantity::Unit ofColumn) {
    return reading.dp->unit == ofColumn ? QString::fromStdString(reading.dp->digits.text())
                                        : text::entered(reading.dp);
}

QString valueText(const project::Reading* reading, quantity::Unit dpUnit) {
    if (reading == nullptr) {
        return {};
    }
    if (reading->cannotBeRead) {
        return ReviewPlaceText::tr("cannot be read");
    }
    return reading->dp ? dpText(*reading, dpUnit) : text::entered(reading->flow);
}

/// Both readings; a unit that they share stands once, at the end.
QString readingStep(const project::Reading* before, const project::Reading* after, quantity::Unit dpUnit) {
    const bool isDp = before != nullptr && after != nullptr && before->dp && after->dp &&
                      !before->cannotBeRead && !after->cannotBeRead;
    if (isDp && before->dp->unit == after->dp->unit && before->dp->digits != after->dp->digits) {
        return step(QString::fromStdString(before->dp->digits.text()), dpText(*after, dpUnit));
    }
    return step(valueText(before, dpUnit), valueText(after, dpUnit));
}

QString settingText(const project::Project& project, const base::Id& branch,
                    const std::optional<quantity::Setting>& setting) {
    return setting ? text::setting(*setting, project, project.branches().at(branch)) : QString();
}

QString ratioText(const std::optional<quantity::Ratio>& ratio) {
    return ratio ? text::percent(*ratio) : QString();
}

/// Both states in words; the shape beside them is that of the later one.
QString stateStep(const balancing::ComparedBranch& compared, const project::Branch& branch) {
    // A word is not parted at the end of a line, the two are.
    const auto whole = [&](balancing::State state, const std::optional<quantity::Ratio>& ofTarget) {
        return text::word(state, branch, ofTarget).replace(QChar(' '), QChar(QChar::Nbsp));
    };
    return step(whole(compared.stateBefore, compared.ofTargetBefore),
                whole(compared.stateAfter, compared.ofTargetAfter));
}

QString whoText(const project::Project& project, const project::Reading* reading,
                const std::optional<base::Instant>& day) {
    if (reading == nullptr) {
        return {};
    }
    const project::Person* person = reading->person ? project.people().find(*reading->person) : nullptr;
    QStringList parts;
    if (person != nullptr) {
        parts << QString::fromStdString(person->name);
    }
    if (reading->time) {
        parts << text::timeOf(*reading->time, day);
    }
    return parts.join(QStringLiteral(" "));
}

/// "meter M-1 → M-2".
QString meterStep(const project::Project& project, const project::Reading& before,
                  const project::Reading& after) {
    const auto tag = [&](const project::Reading& reading) {
        const project::Instrument* meter =
            reading.instrument ? project.instruments().find(*reading.instrument) : nullptr;
        return meter != nullptr ? QString::fromStdString(meter->tag) : QString();
    };
    return ReviewPlaceText::tr("meter %1").arg(step(tag(before), tag(after)));
}

QString whyText(const project::Project& project, const balancing::ComparedBranch& branch,
                const project::Reading* before, const project::Reading* reading) {
    QStringList parts;
    if (!branch.corrections.empty()) {
        parts << ReviewPlaceText::tr("corrected");
    } else if (branch.isSettingChanged) {
        parts << ReviewPlaceText::tr("adjusted");
    }
    if (branch.isInstrumentChanged) {
        parts << meterStep(project, *before, *reading);
    }
    if (reading != nullptr && !reading->reason.empty()) {
        parts << text::reason(reading->reason);
    }
    if (reading != nullptr && !reading->note.empty()) {
        parts << QString::fromStdString(reading->note);
    }
    return text::listed(parts);
}

/// Why a value was corrected: what was said when it was struck, else what is said with the value in its place
/// and was not said before.
QString whyCorrected(const project::Reading& old, const project::Reading* replacement) {
    QStringList parts;
    if (!old.reason.empty()) {
        parts << text::reason(old.reason);
    }
    if (replacement != nullptr && !replacement->reason.empty() && replacement->reason != old.reason) {
        parts << text::reason(replacement->reason);
    }
    if (replacement != nullptr && !replacement->note.empty() && replacement->note != old.note) {
        parts << QString::fromStdString(replacement->note);
    }
    return text::listed(parts);
}

TextRow correctionRow(const project::Project& project, const balancing::ComparedBranch& branch,
                      const balancing::Correction& correction, quantity::Unit dpUnit,
                      const std::optional<base::Instant>& day) {
    const project::Reading& old = project.readings().at(correction.reading);
    TextRow row;
    row.id = branch.branch;
    row.isStruck = true;
    row.cells = {
        QString(),
        old.setting ? settingText(project, branch.branch, quantity::Setting::si(old.setting->value()))
                    : QString(),
        valueText(&old, dpUnit),
        QString(),
        correction.replacement ? ReviewPlaceText::tr("was, corrected") : ReviewPlaceText::tr("struck"),
        whyCorrected(old,
                     correction.replacement ? project.readings().find(*correction.replacement) : nullptr),
        whoText(project, &old, day)};
    return row;
}

}  // namespace

std::vector<TextRow> comparedRows(const project::Project& project,
                                  const std::vector<balancing::ComparedBranch>& branches, bool isChangedOnly,
                                  quantity::Unit dpUnit, const std::optional<base::Instant>& day) {
    std::vector<TextRow> rows;
    for (const balancing::ComparedBranch& branch : branches) {
        if (isChangedOnly && !branch.isChanged()) {
            continue;
        }
        const auto reading = [&](const std::optional<base::Id>& id) {
            return id ? project.readings().find(*id) : nullptr;
        };
        const project::Reading* before = reading(branch.readingBefore);
        const project::Reading* after = reading(branch.readingAfter);
        TextRow row;
        row.id = branch.branch;
        row.state = static_cast<int>(branch.stateAfter);
        row.isOver = branch.ofTargetAfter && branch.ofTargetAfter->si() > 1.0;
        row.cells = {QString::fromStdString(project.branches().at(branch.branch).tag),
                     step(settingText(project, branch.branch, branch.settingBefore),
                          settingText(project, branch.branch, branch.settingAfter)),
                     readingStep(before, after, dpUnit),
                     step(ratioText(branch.ofTargetBefore), ratioText(branch.ofTargetAfter)),
                     stateStep(branch, project.branches().at(branch.branch)),
                     whyText(project, branch, before, after),
                     whoText(project, after, day)};
        rows.push_back(std::move(row));
        for (const balancing::Correction& correction : branch.corrections) {
            rows.push_back(correctionRow(project, branch, correction, dpUnit, day));
        }
    }
    return rows;
}

}  // namespace ww::ui
