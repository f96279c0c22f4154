// Intents of a round: opening and closing it, storing, correcting and explaining readings.

#include "core/balancing/adjusting.h"
#include "core/balancing/locked_note.h"
#include "core/balancing/standing_readings.h"
#include "core/balancing/walk_forms.h"
#include "core/balancing/witness.h"
#include "core/base/expects.h"
#include "core/project/edit_label.h"
#include "ui/import/import_source.h"
#include "ui/text/format.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {
namespace {

base::Fault readingFault(const base::MessageForm& form, std::string subject = {},
                         std::vector<std::string> arguments = {}) {
    return base::Fault{&form, std::move(subject), std::move(arguments)};
}

}  // namespace

balancing::WalkContext WorkbookBridge::context() const {
    return {instrument(), person(), m_desk.ids, now()};
}

base::Result<const project::Round*> WorkbookBridge::roundForReadings() const {
    if (!m_workbook) {
        return readingFault(kNoWorkbookOpen);
    }
    const project::Round* last = project().lastRound();
    if (last == nullptr) {
        return readingFault(kNoRoundOpen);
    }
    // A round that is closed or was sent back takes corrections, and only those; the workbook sees to it.
    if (last->state == project::RoundState::Accepted) {
        return readingFault(balancing::kRoundAccepted, {}, {std::to_string(last->number)});
    }
    if (last->state == project::RoundState::Sent) {
        return readingFault(kRoundNotOpen, {}, {std::to_string(last->number)});
    }
    return last;
}

const project::Round* WorkbookBridge::roundToCorrectOrNull() const {
    const auto round = roundForReadings();
    return round && !isReadOnly() ? *round : nullptr;
}

base::Outcome WorkbookBridge::applyMade(const std::function<Made(const project::Round&)>& make) {
    return guarded([&]() -> base::Outcome {
        const auto round = roundForReadings();
        if (!round) {
            return round.fault();
        }
        const Made edit = make(**round);
        if (!edit) {
            return edit.fault();
        }
        return apply(*edit);
    });
}

balancing::ReviewContext WorkbookBridge::reviewContext() const {
    const project::Person* chosen = person() ? project().people().find(*person()) : nullptr;
    return {chosen != nullptr ? chosen->name : m_desk.person, m_desk.ids, now()};
}

base::Outcome WorkbookBridge::openRound(project::RoundKind kind, const QString& readiness,
                                        const std::vector<pump_room::ReadSpeed>& speeds) {
    return guarded([&]() -> base::Outcome {
        const auto seed = static_cast<std::uint32_t>(m_desk.ids.next().words()[1]);
        Made edit =
            kind == project::RoundKind::Witness
                ? balancing::openWitnessRound(project(), seed,
                                              quantity::Ratio::si(balancing::kUsualSampleFraction), context())
                : balancing::openRound(project(), kind, context(), readiness.trimmed().toStdString());
        if (!edit) {
            return edit.fault();
        }
        pump_room::addSpeeds(project(), *edit, speeds, context());
        return apply(*edit);
    });
}

base::Outcome WorkbookBridge::closeRound() {
    return applyMade(
        [&](const project::Round& round) { return balancing::closeRound(project(), round.id, context()); });
}

base::Result<quantity::Measured<quantity::PressureDifference>> WorkbookBridge::typedDp(
    const QString& text) const {
    return quantity::parseDifference(text.toStdString(), text::dpUnit(project(), instrument()),
                                     project().fluid().density());
}

base::Result<quantity::Measured<quantity::VolumeFlow>> WorkbookBridge::typedFlow(const QString& text) const {
    QString plain = text;
    plain.replace(QChar(0xB3), QChar('3'));
    return quantity::parseFlow(plain.toStdString(), text::flowUnit(project()));
}

bool WorkbookBridge::isWithAnotherMeter(const project::Reading& standing) const {
    return instrument() && standing.instrument != instrument();
}

base::Outcome WorkbookBridge::storeFlow(const base::Id& branch, const QString& text) {
    if (text.trimmed().isEmpty()) {
        return base::Done{};
    }
    return applyMade([&](const project::Round& round) -> Made {
        auto flow = typedFlow(text);
        if (!flow) {
            return flow.fault();
        }
        const project::Reading* standing = balancing::countingReading(project(), round.id, branch);
        if (standing != nullptr && standing->flow == *flow && !isWithAnotherMeter(*standing)) {
            return project::Edit{};
        }
        return balancing::storeFlow(project(), round.id, branch, std::move(flow).value(), context());
    });
}

base::Outcome WorkbookBridge::storeDp(const base::Id& branch, const QString& text) {
    if (text.trimmed().isEmpty()) {
        return base::Done{};
    }
    return applyMade([&](const project::Round& round) -> Made {
        auto dp = typedDp(text);
        if (!dp) {
            return dp.fault();
        }
        const project::Reading* standing = balancing::countingReading(project(), round.id, branch);
        if (standing != nullptr && !standing->isRepeat && standing->dp == *dp &&
            !isWithAnotherMeter(*standing)) {
            return project::Edit{};
        }
        return balancing::storeDp(project(), round.id, branch, std::move(dp).value(), std::nullopt,
                                  context());
    });
}

base::Outcome WorkbookBridge::storeRepeat(const base::Id& branch, const QString& text) {
    return applyMade([&](const project::Round& round) -> Made {
        auto dp = typedDp(text);
        if (!dp) {
            return dp.fault();
        }
        return balancing::storeRepeat(project(), round.id, branch, std::move(dp).value(), context());
    });
}

base::Outcome WorkbookBridge::storeSetting(const base::Id& branch, const QString& text) {
    return applyMade([&](const project::Round& round) -> Made {
        auto setting = base::Decimal::parse(text.toStdString());
        if (!setting) {
            return setting.fault();
        }
        const auto standing = balancing::standingSetting(project(), round.id, branch);
        if (standing && standing->value() == setting->value()) {
            return project::Edit{};
        }
        return balancing::storeSetting(project(), round.id, branch, std::move(setting).value(), context());
    });
}

base::Outcome WorkbookBridge::storeCannotBeRead(const base::Id& branch, const QString& reason) {
    return applyMade([&](const project::Round& round) -> Made {
        Made edit = balancing::storeCannotBeRead(project(), round.id, branch, context());
        if (edit && !reason.trimmed().isEmpty()) {
            for (project::AnyRecord& record : edit->put) {
                auto* reading = std::get_if<project::Reading>(&record);
                if (reading != nullptr && reading->cannotBeRead) {
                    reading->reason = reason.trimmed().toStdString();
                }
            }
        }
        return edit;
    });
}

std::vector<base::Id> WorkbookBridge::notTurned() const {
    const project::Round* round = openRoundOrNull();
    return round != nullptr ? balancing::notTurned(project(), round->id) : std::vector<base::Id>();
}

base::Outcome WorkbookBridge::storeNotTurned() {
    return applyMade([&](const project::Round& round) -> Made {
        return balancing::storeNotTurned(project(), round.id, context());
    });
}

WorkbookBridge::Made WorkbookBridge::readingTyped(const project::Project& after, const project::Round& round,
                                                  const base::Id& branch, const QString& text) const {
    if (balancing::isReadByFlow(after, after.branches().at(branch))) {
        auto flow = typedFlow(text);
        return flow ? balancing::storeFlow(after, round.id, branch, std::move(flow).value(), context())
                    : Made(flow.fault());
    }
    auto dp = typedDp(text);
    return dp ? balancing::storeDp(after, round.id, branch, std::move(dp).value(), std::nullopt, context())
              : Made(dp.fault());
}

base::Outcome WorkbookBridge::storeColumn(const std::vector<base::Id>& branches, const QStringList& texts) {
    return applyMade([&](const project::Round& round) -> Made {
        // Each reading is made against the job as it stands after the one before, on a copy.
        project::Project after = project();
        project::Edit all;
        int count = 0;
        for (std::size_t i = 0; i < branches.size() && i < static_cast<std::size_t>(texts.size()); ++i) {
            const QString typed = texts[static_cast<qsizetype>(i)].trimmed();
            if (typed.isEmpty()) {
                continue;
            }
            const bool isRead = typed.compare(QStringLiteral("x"), Qt::CaseInsensitive) != 0;
            const Made edit = isRead ? readingTyped(after, round, branches[i], typed)
                                     : balancing::storeCannotBeRead(after, round.id, branches[i], context());
            if (!edit) {
                base::Fault refusal = edit.fault();
                refusal.subject = project().branches().at(branches[i]).tag;
                return nothingPasted(refusal);
            }
            ++count;
            for (const project::AnyRecord& record : edit->put) {
                std::visit([&](const auto& value) { after.put(value); }, record);
                all.put.push_back(record);
            }
        }
        all.label = count == 1 ? project::label(project::labels::kPastedReading)
                               : project::label(project::labels::kPastedReadings, {std::to_string(count)});
        return all;
    });
}

base::Outcome WorkbookBridge::giveReason(const base::Id& reading, const QString& reason) {
    return applyMade([&](const project::Round&) {
        return balancing::giveReason(project(), reading, reason.trimmed().toStdString());
    });
}

base::Outcome WorkbookBridge::editReading(const base::Id& branch,
                                          const std::function<Made(const project::Reading&)>& make) {
    return applyMade([&](const project::Round& round) -> Made {
        const project::Reading* reading = balancing::countingReading(project(), round.id, branch);
        if (reading == nullptr) {
            const project::Branch* record = project().branches().find(branch);
            return readingFault(kNothingToMark, record != nullptr ? record->tag : std::string());
        }
        return make(*reading);
    });
}

base::Outcome WorkbookBridge::toggleDoubtful(const base::Id& branch) {
    return editReading(branch, [&](const project::Reading& reading) {
        return balancing::markDoubtful(project(), reading.id, !reading.isDoubtful);
    });
}

base::Outcome WorkbookBridge::setNote(const base::Id& branch, const QString& note) {
    return editReading(branch, [&](const project::Reading& reading) {
        std::string words = note.trimmed().toStdString();
        return project().rounds().at(reading.round).state == project::RoundState::Open
                   ? balancing::setNote(project(), reading.id, std::move(words))
                   : Made(balancing::noteAnew(project(), reading.id, std::move(words), m_desk.ids));
    });
}

std::optional<balancing::OfferedFix> WorkbookBridge::offeredFix(const base::Id& branch) const {
    const project::Round* round = openRoundOrNull();
    if (round == nullptr) {
        return std::nullopt;
    }
    const project::Reading* reading = balancing::countingReading(project(), round->id, branch);
    return reading == nullptr ? std::nullopt : balancing::offeredFix(project(), assessment(), reading->id);
}

base::Outcome WorkbookBridge::takeOfferedFix(const base::Id& branch) {
    return applyMade([&](const project::Round& round) -> Made {
        const auto fix = offeredFix(branch);
        if (!fix) {
            const project::Branch* record = project().branches().find(branch);
            return readingFault(kNoFixOffered, record != nullptr ? record->tag : std::string());
        }
        const project::Reading* reading = balancing::countingReading(project(), round.id, branch);
        return balancing::correctReading(project(), reading->id, fix->dp, std::nullopt, context());
    });
}

}  // namespace ww::ui
