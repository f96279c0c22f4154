#include "ui/text/words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "core/balancing/readiness.h"
#include "core/base/term.h"
#include "core/workbook/workbook.h"
#include "ui/text/conflict_text.h"
#include "ui/text/format.h"
#include "ui/text/joined.h"

namespace ww::ui::text {
namespace {

const QString kComma = QStringLiteral(", ");

/// The texts of this file.
struct WordText {
    Q_DECLARE_TR_FUNCTIONS(Word)
};

/// A word; or one that is written with a space behind it ("valve ") and what follows it, or with a space
/// before it (" min ago") and what stands there.
QString wordAndRest(const QString& text) {
    const QString whole = term(text.toStdString());
    if (whole != text) {
        return whole;
    }
    for (qsizetype space = text.lastIndexOf(' '); space > 0; space = text.lastIndexOf(' ', space - 1)) {
        const QString head = text.left(space + 1);
        if (const QString shown = term(head.toStdString()); shown != head) {
            return shown + text.mid(space + 1);
        }
        const QString tail = text.mid(space);
        if (const QString shown = term(tail.toStdString()); shown != tail) {
            return text.left(space) + shown;
        }
    }
    return text;
}

/// "round 3" or the place of a conflict in the language of the screen; names that people gave stay as they
/// are.
QString subjectOf(const base::Fault& fault) {
    const bool isOfConflict = fault.is(workbook::kChoiceSealed) || fault.is(workbook::kConflictUnknown) ||
                              fault.is(workbook::kCannotKeepBoth);
    if (isOfConflict) {
        return conflictPlace(fault.subject);
    }
    const QString subject = QString::fromStdString(fault.subject);
    // Words of the program; any other subject is a name that somebody gave.
    static const QRegularExpression kOwn(
        QStringLiteral("^(round \\d+(, \\d+)*|throttle|trim|slow|shutoff test)$"));
    return kOwn.match(subject).hasMatch() ? wordAndRest(subject) : subject;
}

}  // namespace

QString withPrettyUnit(QString quantity) {
    static const QRegularExpression kForm(QStringLiteral("^([-+\\d.,]*)([ \u00a0]?)([A-Za-z].*)$"));
    const QRegularExpressionMatch match = kForm.match(quantity);
    const std::string typed = match.captured(3).toStdString();
    for (const quantity::UnitRow& row : quantity::unitTable()) {
        if (row.symbol == typed) {
            // A letter alone, or one that touches the digits, is a name that somebody gave.
            const bool isNumberWithUnit = match.capturedLength(1) > 0 && match.capturedLength(2) > 0;
            const bool isName = row.dimension == quantity::Dimension::Temperature && !isNumberWithUnit;
            return isName ? quantity : match.captured(1) + match.captured(2) + text::symbol(row.unit);
        }
    }
    return quantity;
}

QString nameOf(project::RoundState state) {
    switch (state) {
        case project::RoundState::Open:
            return WordText::tr("open");
        case project::RoundState::Closed:
            return WordText::tr("closed");
        case project::RoundState::Sent:
            return WordText::tr("sent");
        case project::RoundState::Accepted:
            return WordText::tr("accepted");
        case project::RoundState::SentBack:
            break;
    }
    return WordText::tr("sent back");
}

QString term(std::string_view word) {
    return QCoreApplication::translate("Term", std::string(word).c_str());
}

base::Wording wording() {
    return [](std::string_view word) { return term(word).toStdString(); };
}

QString readinessLine(std::string_view stored) {
    return balancing::isUsualReadiness(stored)
               ? term(stored)
               : QString::fromUtf8(stored.data(), static_cast<qsizetype>(stored.size()));
}

QString terms(const QString& list) {
    const QString whole = term(list.toStdString());
    if (whole != list) {
        return whole;
    }
    QStringList words = list.split(kComma);
    for (QString& word : words) {
        word = wordAndRest(word);
    }
    return words.join(kComma);
}

QString translated(const base::Fault& fault) {
    std::vector<std::string> arguments = fault.arguments;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        if (base::isWordPlace(fault.form->text, i)) {
            arguments[i] = terms(QString::fromStdString(arguments[i])).toStdString();
        }
        arguments[i] = withPrettyUnit(readinessLine(arguments[i])).toStdString();
    }
    // Arguments go in after translation, so that a translator may put them in another order.
    const std::string source(fault.form->text);
    const QString sentence = QCoreApplication::translate("Message", source.c_str());
    return QString::fromStdString(base::filledIn(sentence.toStdString(), arguments));
}

QString sentence(const base::Fault& fault) {
    QString filled = translated(fault);
    if (!filled.isEmpty()) {
        filled[0] = filled[0].toUpper();
        if (!filled.endsWith('.') && !filled.endsWith('?')) {
            filled += '.';
        }
    }
    return filled;
}

QString text(const base::Fault& fault) {
    return fault.subject.empty() ? sentence(fault) : labelled(subjectOf(fault), sentence(fault));
}

QString word(balancing::State state, bool isSelfActing, bool isOver) {
    switch (state) {
        case balancing::State::NotRead:
            return WordText::tr("Not read");
        case balancing::State::Short:
            return WordText::tr("Short");
        case balancing::State::Over:
            return WordText::tr("Over");
        case balancing::State::OnShare:
            return isSelfActing ? WordText::tr("In range") : WordText::tr("On share");
        case balancing::State::Drifted:
            return WordText::tr("Drifted");
        case balancing::State::AtStop:
            return isOver ? WordText::tr("At shut stop") : WordText::tr("At open stop");
        case balancing::State::Doubtful:
            break;
    }
    return WordText::tr("Doubtful");
}

QString word(balancing::State state, const project::Branch& branch,
             const std::optional<quantity::Ratio>& ofTarget) {
    return word(state, project::isSelfActing(branch), ofTarget && ofTarget->si() > 1);
}

QString word(const balancing::BranchResult& result) {
    if (result.state == balancing::State::NotRead && !result.isFromEarlierRound && result.reading &&
        (result.dp || result.flow)) {
        return WordText::tr("Read, no share");
    }
    return word(result.state, result.isSelfActing, result.ofTarget && result.ofTarget->si() > 1);
}

QString word(balancing::AimWord word) {
    switch (word) {
        case balancing::AimWord::Open:
            return WordText::tr("OPEN");
        case balancing::AimWord::Close:
            return WordText::tr("CLOSE");
        case balancing::AimWord::Hold:
            return WordText::tr("HOLD");
        case balancing::AimWord::ReadAgain:
            return WordText::tr("READ AGAIN");
        case balancing::AimWord::AtStop:
            break;
    }
    return WordText::tr("NO FURTHER");
}

QString word(project::RoundKind kind) {
    switch (kind) {
        case project::RoundKind::Survey:
            return WordText::tr("Survey");
        case project::RoundKind::Adjusting:
            return WordText::tr("Adjusting");
        case project::RoundKind::Final:
            return WordText::tr("Final");
        case project::RoundKind::Witness:
            break;
    }
    return WordText::tr("Witness");
}

QString word(project::BranchKind kind) {
    switch (kind) {
        case project::BranchKind::Manual:
            return WordText::tr("Manual valve");
        case project::BranchKind::Orifice:
            return WordText::tr("Orifice");
        case project::BranchKind::Limiter:
            return WordText::tr("Flow limiter");
        case project::BranchKind::Picv:
            return WordText::tr("Pressure-independent");
        case project::BranchKind::None:
            break;
    }
    return WordText::tr("No valve");
}

QString word(fluid::FluidKind fluid) {
    switch (fluid) {
        case fluid::FluidKind::Water:
            return WordText::tr("Water");
        case fluid::FluidKind::EthyleneGlycol:
            return WordText::tr("Ethylene glycol");
        case fluid::FluidKind::PropyleneGlycol:
            break;
    }
    return WordText::tr("Propylene glycol");
}

}  // namespace ww::ui::text
