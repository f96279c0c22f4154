#include "core/report/report.h"

#include <algorithm>

#include "core/balancing/assess.h"
#include "core/base/expects.h"
#include "core/project/earlier_design.h"
#include "core/project/review.h"
#include "core/report/detail/pump_words.h"
#include "core/report/detail/record_words.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {
namespace {

/// The rounds of the report, in order: the last own round up to a number, all before it, and the witness
/// rounds that read it again.
struct RoundsOfReport {
    std::vector<balancing::Assessment> own;
    std::vector<base::Id> walked;
};

RoundsOfReport roundsOf(const project::Project& project, std::optional<int> upTo) {
    RoundsOfReport rounds;
    const project::Round* final = project::lastOwnRound(project, upTo);
    const project::Round* next = nullptr;
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        const bool isWitness = round.kind == project::RoundKind::Witness;
        const bool isAfter = final != nullptr && round.number > final->number;
        next = isAfter && !isWitness && next == nullptr ? &round : next;
        if (isAfter && (!isWitness || next != nullptr)) {
            continue;
        }
        rounds.walked.push_back(round.id);
        if (!isWitness) {
            rounds.own.push_back(balancing::assess(project, round.id));
        }
    }
    return rounds;
}

/// The pumps as the reported round left them: later rounds are not known to it.
std::shared_ptr<const pump_room::PumpPicture> picturePumps(project::Project project, int lastRound) {
    std::vector<base::Id> later;
    for (const project::Round& round : project.rounds()) {
        if (round.number > lastRound) {
            later.push_back(round.id);
        }
    }
    // Newest first: what is taken out at the end moves nothing.
    std::reverse(later.begin(), later.end());
    for (const base::Id& round : later) {
        std::vector<base::Id> readings;
        for (const std::size_t index : project.readingsOf(round)) {
            readings.push_back(project.readings()[index].id);
        }
        std::vector<base::Id> pumpReadings;
        for (const std::size_t index : project.pumpReadingsOf(round)) {
            pumpReadings.push_back(project.pumpReadings()[index].id);
        }
        for (auto reading = readings.rbegin(); reading != readings.rend(); ++reading) {
            project.eraseReading(*reading);
        }
        for (auto reading = pumpReadings.rbegin(); reading != pumpReadings.rend(); ++reading) {
            project.erasePumpReading(*reading);
        }
        project.eraseRound(round);
    }
    return std::make_shared<const pump_room::PumpPicture>(
        pump_room::pumpPicture(project, pump_room::learnedResistances(project)));
}

/// What page 1 says of the decision; `ofPumps` follow behind the numbered sections.
std::optional<detail::CountedExcess> countedExcess(const pump_room::PumpDecision& decision,
                                                   const std::vector<Section>& ofPumps) {
    const auto excess = decision.decidedExcess();
    const auto told = std::find_if(ofPumps.begin(), ofPumps.end(), [](const Section& section) {
        return section.title.is(detail::kDecisionTitle);
    });
    if (!excess || told == ofPumps.end()) {
        return std::nullopt;
    }
    detail::CountedExcess counted;
    counted.excess = *excess;
    counted.asRead = decision.excessAsRead();
    counted.section = kFirstOfPumps + static_cast<int>(told - ofPumps.begin());
    counted.isFitting = decision.isFitting();
    counted.runsAsDecided = decision.runsAsDecided();
    counted.isShortUndecided = decision.isShortUndecided();
    if (const base::Fault* notYet = decision.notYet()) {
        counted.notYet = *notYet;
        counted.notYet->subject.clear();
    }
    if (counted.isFitting || excess->head.si() <= 0) {
        return counted;
    }
    const auto* slow = decision.find(energy::PumpAction::Slow);
    if (slow != nullptr && slow->option.isAllowed) {
        // A speed that does the same as can be told is one number with it, not a second one beside it.
        counted.speed =
            counted.runsAsDecided && decision.duty ? decision.duty->speedFraction : slow->option.ratio;
        counted.rotation = slow->option.speed;
        if (slow->option.speed && slow->option.ratio.si() > 0) {
            counted.fullRotation = *slow->option.speed / slow->option.ratio.si();
        }
        const auto* throttle = decision.find(energy::PumpAction::Throttle);
        counted.shaftThrottled = throttle != nullptr ? throttle->option.shaft : std::nullopt;
        counted.shaftSlowed = slow->option.shaft;
    }
    const auto* trim = decision.find(energy::PumpAction::Trim);
    if (trim != nullptr && trim->option.isAllowed) {
        counted.impeller = trim->option.impeller;
        counted.firstCut = trim->option.firstCut;
    }
    return counted;
}

std::vector<std::string> titleLines(const detail::Source& source) {
    std::string line;
    for (const std::string& part :
         {source.project.job().site, source.project.job().client, detail::datesOf(source, std::nullopt)}) {
        if (!part.empty()) {
            line += (line.empty() ? "" : " · ") + part;
        }
    }
    return line.empty() ? std::vector<std::string>{} : std::vector<std::string>{line};
}

/// Judges the rounds and pictures the pumps, on which all sections rest; gives the last round.
balancing::Assessment judge(const project::Project& project, const ReportOptions& options,
                            RoundsOfReport& rounds, Report& report) {
    report.rounds = std::move(rounds.own);
    balancing::Assessment last =
        report.rounds.empty() ? balancing::assessLast(project) : report.rounds.back();
    report.roundNumber = report.rounds.empty() ? 0 : last.roundNumber;
    report.pumps = options.pumps != nullptr ? options.pumps : picturePumps(project, report.roundNumber);
    return last;
}

Report ofPump(const project::Project& project, const ReportOptions& options, RoundsOfReport rounds) {
    Report report;
    const balancing::Assessment last = judge(project, options, rounds, report);
    detail::Source source{project, report.rounds, last, rounds.walked, detail::Display(project)};
    source.excess = countedExcess(report.pumps->decision, pumpSections(project, *report.pumps));
    source.curve = report.pumps->decision.curve;
    source.sheets = report.pumps->sheets;
    report.sections = {detail::pumpSection(source), detail::indexSection(source)};
    return report;
}

}  // namespace

Report buildOfPump(const project::Project& project, const ReportOptions& options) {
    return ofPump(project, options, roundsOf(project, options.round));
}

Report buildOfPump(const project::Project& project, const ReportOptions& options,
                   std::vector<balancing::Assessment> rounds) {
    RoundsOfReport given;
    for (const balancing::Assessment& round : rounds) {
        given.walked.push_back(*round.round);
    }
    given.own = std::move(rounds);
    return ofPump(project, options, std::move(given));
}

Report build(const project::Project& today, const ReportOptions& given) {
    Report report;
    ReportOptions options = given;
    RoundsOfReport rounds = roundsOf(today, options.round);
    const project::Round* reported = project::lastOwnRound(today, options.round);
    const auto then = reported != nullptr ? project::asJudged(today, *reported) : std::nullopt;
    const project::Project& project = then ? *then : today;
    if (then) {
        options.pumps.reset();  // of the job as it stands today
    }
    const balancing::Assessment last = judge(project, options, rounds, report);
    std::vector<Section> ofPumps = pumpSections(project, *report.pumps);
    detail::Source source{project, report.rounds, last, rounds.walked, detail::Display(project)};
    source.excess = countedExcess(report.pumps->decision, ofPumps);
    source.curve = report.pumps->decision.curve;
    source.sheets = report.pumps->sheets;
    source.steps = options.roundSteps;
    source.today = &today;
    report.titleLines = titleLines(source);
    source.copyOf = options.signers == Signers::None ? options.standing : std::nullopt;
    report.copyOf = source.copyOf;
    report.revision = detail::revisionOf(source);
    report.supersedes = detail::supersededBy(source);
    report.revisionLine = detail::revisionStatement(source);

    report.jobName = project.job().name;
    report.simulated = detail::simulated(project);
    report.journalDigest = detail::dataDigest(source, options.journalDigest);
    report.digest = report.journalDigest.substr(0, 12);
    report.signers = options.signers;
    report.isDraft = options.signers == Signers::None;
    report.workbookId = options.workbookId;
    report.printed = options.printed;

    Section exceptions = detail::exceptionsSection(source);
    const std::size_t count = exceptions.tables.empty() ? 0 : exceptions.tables.front().rows.size();
    report.sections.push_back(detail::resultSection(source, count));
    if (report.isDraft && !report.copyOf) {
        std::vector<Statement>& closing = report.sections.front().closing;
        closing.insert(closing.begin(), detail::say(detail::kDraft));
    }
    report.sections.push_back(detail::methodSection(source));
    report.sections.push_back(detail::oneLineSection(source));
    report.sections.push_back(detail::finalRoundSection(source));
    report.sections.push_back(detail::sharesSection(source));
    report.sections.push_back(detail::pumpSection(source));
    report.sections.push_back(detail::indexSection(source));
    report.sections.push_back(std::move(exceptions));
    report.sections.push_back(detail::readingsSection(source));
    report.sections.push_back(detail::readinessSection(source));
    report.sections.push_back(detail::deficienciesSection(source));
    report.sections.push_back(detail::witnessSection(source));
    report.sections.push_back(detail::revisionsSection(source));
    for (Section& section : ofPumps) {
        section.number = static_cast<int>(report.sections.size()) + 1;
        report.sections.push_back(std::move(section));
    }
    return report;
}

const Section& sectionOf(const Report& report, SectionNumber number) {
    const auto found = std::find_if(report.sections.begin(), report.sections.end(),
                                    [&](const Section& section) { return section.number == number; });
    EXPECTS(found != report.sections.end());
    return *found;
}

std::vector<base::Fault> obstaclesToSigning(const Report& report) {
    std::vector<base::Fault> obstacles;
    if (!report.rounds.empty()) {
        for (const balancing::Finding& finding : report.rounds.back().findings) {
            if (finding.severity == balancing::Severity::BlocksSignature) {
                obstacles.push_back(finding.fault);
            }
        }
    }
    return obstacles;
}

}  // namespace ww::report
