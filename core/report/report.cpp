#include "core/report/report.h"

#include "core/balancing/assess.h"
#include "core/report/detail/sections.h"
#include "core/report/pump_sections.h"

namespace ww::report {
namespace {

std::vector<balancing::Assessment> assessedRounds(const project::Project& project, std::optional<int> upTo) {
    std::vector<balancing::Assessment> rounds;
    for (const std::size_t index : project.roundsByNumber()) {
        const project::Round& round = project.rounds()[index];
        if (!upTo || round.number <= *upTo) {
            rounds.push_back(balancing::assess(project, round.id));
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
    for (const base::Id& round : later) {
        std::vector<base::Id> readings;
        for (const std::size_t index : project.readingsOf(round)) {
            readings.push_back(project.readings()[index].id);
        }
        std::vector<base::Id> pumpReadings;
        for (const std::size_t index : project.pumpReadingsOf(round)) {
            pumpReadings.push_back(project.pumpReadings()[index].id);
        }
        for (const base::Id& reading : readings) {
            project.eraseReading(reading);
        }
        for (const base::Id& reading : pumpReadings) {
            project.erasePumpReading(reading);
        }
        project.eraseRound(round);
    }
    return std::make_shared<const pump_room::PumpPicture>(
        pump_room::pumpPicture(project, pump_room::learnedResistances(project)));
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

}  // namespace

Report build(const project::Project& project, const ReportOptions& options) {
    Report report;
    report.rounds = assessedRounds(project, options.round);
    const balancing::Assessment last =
        report.rounds.empty() ? balancing::assessLast(project) : report.rounds.back();
    const detail::Source source{project, report.rounds, last, detail::Display(project)};

    report.jobName = project.job().name;
    report.titleLines = titleLines(source);
    report.digest = options.journalDigest.substr(0, 12);
    report.journalDigest = options.journalDigest;
    report.signers = options.signers;
    report.isDraft = options.signers == Signers::None;
    report.workbookId = options.workbookId;
    report.printed = options.printed;
    report.roundNumber = report.rounds.empty() ? 0 : last.roundNumber;

    Section exceptions = detail::exceptionsSection(source);
    const std::size_t count = exceptions.tables.empty() ? 0 : exceptions.tables.front().rows.size();
    report.sections.push_back(detail::resultSection(source, count));
    report.sections.push_back(detail::methodSection(source));
    report.sections.push_back(detail::finalRoundSection(source));
    report.sections.push_back(detail::sharesSection(source));
    report.sections.push_back(detail::pumpSection(source));
    report.sections.push_back(detail::indexSection(source));
    report.sections.push_back(std::move(exceptions));
    report.sections.push_back(detail::readingsSection(source));
    report.pumps = options.pumps != nullptr ? options.pumps : picturePumps(project, report.roundNumber);
    for (Section& section : pumpSections(project, *report.pumps)) {
        section.number = static_cast<int>(report.sections.size()) + 1;
        report.sections.push_back(std::move(section));
    }
    return report;
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
