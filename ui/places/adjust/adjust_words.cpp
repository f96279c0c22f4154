#include "ui/places/adjust/adjust_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/text/format.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

constexpr std::size_t kShownTries = 5;
/// Beside what the shut valve showed.
constexpr std::size_t kShownTriesBesideShut = 3;

/// The texts of this file.
struct AdjustText {
    Q_DECLARE_TR_FUNCTIONS(Adjust)
};

QString settingWords(const ValveInHand& valve, quantity::Setting setting) {
    return QString::fromStdString(valve.settingText(setting).text());
}

QString basisName(const project::Project& project, const balancing::AimFlow& flow) {
    switch (flow.basis) {
        case balancing::AimBasis::Model:
            return AdjustText::tr("learned loop");
        case balancing::AimBasis::Reference:
            return AdjustText::tr("ratio of %1")
                .arg(QString::fromStdString(project.branches()[*flow.reference].tag));
        case balancing::AimBasis::Branches:
            break;
    }
    return AdjustText::tr("sum of branches");
}

QString pathName(balancing::PathBasis basis) {
    switch (basis) {
        case balancing::PathBasis::Tries:
            return AdjustText::tr("two tries");
        case balancing::PathBasis::Learned:
            return AdjustText::tr("a try, learned loop");
        case balancing::PathBasis::Design:
            break;
    }
    return AdjustText::tr("a try, design loss");
}

/// Between the limits of hold, and where the aim itself would be: no other setting is asked for.
QString holdWords(const ValveInHand& valve, bool hasNext) {
    const auto& proposed = valve.proposed();
    const auto& last = valve.last();
    if (!proposed || !last || valve.settingText(proposed->setting) == valve.settingText(last->setting)) {
        return hasNext ? AdjustText::tr("Leave it: it fits the aim here. Ctrl+Enter goes to the next valve.")
                       : AdjustText::tr("Leave it: it fits the aim here.");
    }
    return AdjustText::tr("Leave it: it fits the aim here, and would be nearest to it at %1.")
        .arg(settingWords(valve, proposed->setting));
}

/// The handle was moved here, or nothing was read yet.
QString readHereWords(const WorkbookBridge& bridge, const ValveInHand& valve) {
    if (!valve.row()) {
        return AdjustText::tr("Open it to a setting that passes water, then read it there.");
    }
    const QString aim = dpWithUnit(bridge, valve.row()->dp);
    if (valve.isAimBeyond()) {
        return AdjustText::tr("Open it first: the aim here, %1, is above the %2 available.")
            .arg(aim, dpWithUnit(bridge, valve.available()->head));
    }
    return valve.isAsAdvised() ? AdjustText::tr("Read it here: aim %1 now, %2 once all valves are set.")
                                     .arg(aim, dpWithUnit(bridge, valve.advised()->dp))
                               : AdjustText::tr("Read it here: aim %1 now.").arg(aim);
}

/// The rule of a valve that is turned before it is read: to its advised setting, or for the index circuit.
QString turnFirstWords(const WorkbookBridge& bridge, const ValveInHand& valve,
                       const balancing::ValveDecision& decided) {
    if (!decided.rule->is(balancing::kAdviceFirst) && !decided.rule->is(balancing::kAdviceBeforeReading)) {
        return AdjustText::tr(
                   "Turn it to %1 (Ctrl+Shift+T) and read it, then read a final round: it tells whether the "
                   "index circuit is proved.")
            .arg(settingWords(valve, *decided.turnTo));
    }
    const balancing::SettingAdvice& advised = *valve.advised();
    return AdjustText::tr("Turn it to %1 (Ctrl+Shift+T) and read it: aim %2 now, %3 once all valves are set.")
        .arg(settingWords(valve, advised.setting), dpWithUnit(bridge, valve.aimAt(advised.setting)),
             dpWithUnit(bridge, advised.dp));
}

QString stopWords(const ValveInHand& valve) {
    return valve.last()->dp > valve.last()->row->high
               ? AdjustText::tr(
                     "Hold it here: the scale ends. Close the valve of its riser, or fit a smaller one.")
               : AdjustText::tr("Hold it here: it takes more as the others are closed.");
}

/// A setting to turn to by the word OPEN or CLOSE.
QString tryWords(const WorkbookBridge& bridge, const ValveInHand& valve) {
    const balancing::ProposedSetting& proposed = *valve.proposed();
    const QString setting = settingWords(valve, proposed.setting);
    const QString lands = dpWithUnit(bridge, proposed.lands);
    const QString aim = dpWithUnit(bridge, proposed.aim);
    if (!proposed.basis && !valve.isAdviceReady()) {
        return AdjustText::tr("Try %1, a first guess while the advice is not ready: aim %2 now.")
            .arg(setting, aim);
    }
    if (!proposed.basis) {
        return AdjustText::tr("Try %1, as advised: aim %2 now, %3 once all valves are set.")
            .arg(setting, aim, dpWithUnit(bridge, valve.advised()->dp));
    }
    const bool isOpening = valve.word() == balancing::AimWord::Open;
    if (proposed.isStop) {
        return (isOpening ? AdjustText::tr(
                                "Even fully open at %1 it stays below the aim: %2 expected there, aim %3. "
                                "Leave it open there as the reference, and close the others.")
                          : AdjustText::tr(
                                "Even at %1, where the scale ends, it takes too much: %2 expected there, "
                                "aim %3. Close the valve of its riser, or fit a smaller one."))
            .arg(setting, lands, aim);
    }
    if (valve.isAimBeyond()) {
        return AdjustText::tr("Open it to %1: the aim here, %2, is above the %3 available.")
            .arg(setting, dpWithUnit(bridge, valve.row()->dp), dpWithUnit(bridge, valve.available()->head));
    }
    if (valve.settingText(proposed.setting) == valve.settingText(valve.setting())) {
        return AdjustText::tr(
                   "No mark is nearer to the aim than %1: turn by less than a mark, or hold it here.")
            .arg(setting);
    }
    return AdjustText::tr("Try %1: about %2 expected there now, aim %3 (%4).")
        .arg(setting, lands, aim, pathName(*proposed.basis));
}

QString wordsOfTries(const WorkbookBridge& bridge, const ValveInHand& valve, std::size_t most) {
    const auto& tries = valve.tries();
    if (tries.empty()) {
        if (balancing::hasEarlierTries(bridge.project(), *valve.branch())) {
            return AdjustText::tr("No try here since another valve was turned.");
        }
        const auto& expected = valve.expected();
        const bool isLearned =
            std::any_of(expected.begin(), expected.end(), [](const auto& dp) { return dp.has_value(); });
        return isLearned ? AdjustText::tr("No try yet; expected: learned loop.")
                         : AdjustText::tr("No try yet at this valve.");
    }
    QStringList parts;
    const std::size_t first = tries.size() > most ? tries.size() - most : 0;
    for (std::size_t i = first; i < tries.size(); ++i) {
        parts << AdjustText::tr("%1: %2, %3 %4")
                     .arg(QString::number(i + 1), settingWords(valve, tries[i].setting),
                          readNumber(bridge, tries[i]), text::word(tries[i].decision.word));
    }
    return AdjustText::tr("Tries   %1").arg(parts.join(QStringLiteral("     ")));
}

}  // namespace

QString dpNumber(const WorkbookBridge& bridge, quantity::PressureDifference dp) {
    return text::dp(dp, text::dpUnit(bridge.project(), bridge.instrument()), bridge.project().fluid());
}

QString readNumber(const WorkbookBridge& bridge, const ValveReading& read) {
    const quantity::Measured<quantity::PressureDifference>& typed = *read.reading->dp;
    const bool isAsTyped =
        typed.value == read.dp && typed.unit == text::dpUnit(bridge.project(), bridge.instrument());
    return isAsTyped ? QString::fromStdString(typed.digits.text()) : dpNumber(bridge, read.dp);
}

QString dpWithUnit(const WorkbookBridge& bridge, quantity::PressureDifference dp) {
    return dpNumber(bridge, dp) + QChar(0xA0) +
           text::symbol(text::dpUnit(bridge.project(), bridge.instrument()));
}

QString shareWords(const WorkbookBridge& bridge, std::size_t branch) {
    const balancing::Assessment& all = bridge.assessment();
    const balancing::BranchResult& result = all.branches[branch];
    if (!all.round) {
        return text::word(balancing::State::NotRead);
    }
    if (!result.ofTarget) {
        return text::word(result);
    }
    const QString about = all.isComplete ? QString() : QStringLiteral("~");
    if (result.isFromEarlierRound) {
        return AdjustText::tr("last %1 % of target")
            .arg(about + text::ofTarget(*result.ofTarget, bridge.project()));
    }
    return AdjustText::tr("%1, %2 % of target")
        .arg(text::word(result), about + text::ofTarget(*result.ofTarget, bridge.project()));
}

QString stateWords(const WorkbookBridge& bridge, const ValveInHand& valve) {
    const balancing::Assessment& all = bridge.assessment();
    const balancing::BranchResult& result = all.branches[valve.index()];
    const QString share = shareWords(bridge, valve.index());
    if (!all.round || !result.ofTarget || result.isFromEarlierRound) {
        return share;
    }
    const QString ofRound = AdjustText::tr("%1 in round %2").arg(share).arg(all.roundNumber);
    const auto* decided = valve.decision();
    // What a rule says stands beside the word.
    return decided != nullptr && decided->apart && !decided->rule
               ? ofRound + QStringLiteral(". ") + text::sentence(*decided->apart)
               : ofRound;
}

QStringList basisWords(const WorkbookBridge& bridge, const ValveInHand& valve) {
    const project::Project& project = bridge.project();
    const balancing::Aim& aim = valve.aim();
    QString first = AdjustText::tr("Aim: %1").arg(text::sentence(aim.basisLine));
    if (aim.isDivergent && valve.row()) {
        QStringList each;
        for (const balancing::AimFlow& flow : aim.all) {
            each << AdjustText::tr("%1 %2").arg(basisName(project, flow),
                                                dpWithUnit(bridge, valve.rowOf(flow).dp));
        }
        first += ' ' + AdjustText::tr("Counted in other ways the aim differs by %1 % of flow: %2.")
                           .arg(QString::number(aim.divergence.in(quantity::Unit::Percent), 'f', 0),
                                each.join(QStringLiteral(", ")));
    }
    QStringList lines{first};
    if (!aim.stale.empty()) {
        lines << text::text(aim.stale.front()) + ' ' + AdjustText::tr("Ctrl+B reads the reference.");
    }
    return lines;
}

QString triesWords(const WorkbookBridge& bridge, const ValveInHand& valve) {
    const project::Reading* shut = balancing::shutReading(bridge.project(), *valve.branch());
    if (shut == nullptr) {
        return wordsOfTries(bridge, valve, kShownTries);
    }
    return AdjustText::tr("Shut: %1 available.").arg(text::entered(shut->dp)) + QStringLiteral("   ") +
           wordsOfTries(bridge, valve, kShownTriesBesideShut);
}

QString proposalWords(const WorkbookBridge& bridge, const ValveInHand& valve, bool hasNext) {
    const auto& beside = valve.besideAdvice();
    if (const auto* decided = valve.decision(); decided != nullptr && decided->rule) {
        return decided->turnTo ? turnFirstWords(bridge, valve, *decided) : text::sentence(*decided->rule);
    }
    const auto word = valve.word();
    if (!word || !valve.row() || valve.isReadElsewhere()) {
        return readHereWords(bridge, valve);
    }
    if (word == balancing::AimWord::ReadAgain) {
        return AdjustText::tr("A setting to try is named once it is read again.");
    }
    if (beside && beside->reason &&
        (word == balancing::AimWord::Hold || word == balancing::AimWord::AtStop)) {
        return text::sentence(*beside->reason);
    }
    if (word == balancing::AimWord::Hold) {
        return holdWords(valve, hasNext);
    }
    if (word == balancing::AimWord::AtStop) {
        return stopWords(valve);
    }
    // What nobody tried rests on the advice alone: it gives way to the reading.
    const bool isAdviceAlone = !valve.proposed() || !valve.proposed()->basis;
    if (isAdviceAlone && beside && beside->stand == balancing::AdviceStand::ReadingLeads) {
        return text::sentence(*beside->reason);
    }
    return valve.proposed()
               ? tryWords(bridge, valve)
               : AdjustText::tr("Turn it by the word and read it: then the setting to aim at can be told.");
}

QStringList readingNotes(const WorkbookBridge& bridge, const ValveInHand& valve) {
    const auto& last = valve.last();
    const QString unit = text::symbol(text::dpUnit(bridge.project(), bridge.instrument()));
    if (!last) {
        return {unit, AdjustText::tr("not read yet")};
    }
    QStringList notes{AdjustText::tr("%1 at %2").arg(unit, settingWords(valve, last->setting))};
    QString when = last->reading->time ? text::ago(*last->reading->time, bridge.now()) : QString();
    if (valve.tries().empty()) {
        const int number = bridge.project().rounds().at(last->reading->round).number;
        when = AdjustText::tr("round %1%2").arg(QString::number(number), when.isEmpty() ? when : ", " + when);
    }
    notes << when;
    return notes;
}

QString wordNote(const WorkbookBridge& bridge, const ValveInHand& valve) {
    const auto& last = valve.last();
    if (!last && valve.row()) {
        return AdjustText::tr("read the valve");
    }
    if (last && last->isDoubtful && valve.row() && !valve.isReadElsewhere()) {
        return AdjustText::tr("doubtful as read; read it again (Ctrl+R) or change the meter (menu Round)");
    }
    if (valve.row() && valve.isReadElsewhere()) {
        return AdjustText::tr("not read at %1 yet: read the valve here")
            .arg(settingWords(valve, valve.setting()));
    }
    if (!last || !last->row || !valve.row()) {
        return AdjustText::tr("no water passes at that setting");
    }
    const QString aim = AdjustText::tr("aim %1 at %2")
                            .arg(dpWithUnit(bridge, last->row->dp), settingWords(valve, last->setting));
    if (last->decision.rule) {
        return text::translated(*last->decision.rule);
    }
    switch (last->decision.word) {
        case balancing::AimWord::Close:
            return AdjustText::tr("too much flow, %1").arg(aim);
        case balancing::AimWord::Open:
            return AdjustText::tr("too little flow, %1").arg(aim);
        case balancing::AimWord::Hold:
            return AdjustText::tr("it fits: %1").arg(aim);
        case balancing::AimWord::ReadAgain:
            return AdjustText::tr("below what can be read; close further or change the meter (menu Round)");
        case balancing::AimWord::AtStop:
            break;
    }
    return last->dp > last->row->high
               ? AdjustText::tr("at the lowest setting, still too much flow, %1").arg(aim)
               : AdjustText::tr("fully open, still too little flow, %1").arg(aim);
}

QString spokenWords(const WorkbookBridge& bridge, const ValveInHand& valve) {
    const auto& last = valve.last();
    const QString tag = QString::fromStdString(bridge.project().branches()[valve.index()].tag);
    if (!last) {
        return AdjustText::tr("%1: read the valve.").arg(tag);
    }
    const QString said = AdjustText::tr("%1: %2. %3 read at setting %4; %5.")
                             .arg(tag, text::word(*valve.word()),
                                  readNumber(bridge, *last) + QChar(0xA0) +
                                      text::symbol(text::dpUnit(bridge.project(), bridge.instrument())),
                                  settingWords(valve, last->setting), wordNote(bridge, valve));
    const auto* decided = valve.decision();
    if (decided != nullptr && decided->rule) {
        return said;  // with the rule as its note
    }
    const auto& beside = valve.besideAdvice();
    const QString why =
        decided != nullptr && decided->apart ? ' ' + text::sentence(*decided->apart) : QString();
    return said + why + (beside && beside->reason ? ' ' + text::sentence(*beside->reason) : QString());
}

}  // namespace ww::ui
