#include <algorithm>

#include "core/balancing/design_changes.h"
#include "core/balancing/round_comparison.h"
#include "core/balancing/standing_readings.h"
#include "core/base/term.h"
#include "core/project/merge_reason.h"
#include "core/project/review.h"
#include "core/project/setting_text.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {

using balancing::Severity;
using balancing::Verdict;

std::string Source::instrument(const std::optional<base::Id>& id) const {
    const project::Instrument* found = id ? project.instruments().find(*id) : nullptr;
    return found != nullptr ? found->tag : std::string();
}

std::string Source::person(const std::optional<base::Id>& id) const {
    const project::Person* found = id ? project.people().find(*id) : nullptr;
    return found != nullptr ? found->name : std::string();
}

std::string Source::setting(std::size_t index) const {
    if (last.round) {
        if (const auto standing = balancing::standingSetting(project, *last.round, branch(index).id)) {
            return settingText(project, branch(index), quantity::Setting::si(standing->value()));
        }
    }
    const auto& designed = branch(index).setting;
    return designed ? settingText(project, branch(index), quantity::Setting::si(designed->value()))
                    : std::string();
}

std::string Source::fullyOpen(std::size_t index) const {
    const auto& valve = branch(index).valve;
    const project::ValveModel* model = valve ? project.valves().find(*valve) : nullptr;
    if (model == nullptr || model->rows.empty()) {
        return {};
    }
    const auto highest = std::max_element(
        model->rows.begin(), model->rows.end(),
        [](const auto& left, const auto& right) { return left.setting.value() < right.setting.value(); });
    return settingText(project, branch(index), quantity::Setting::si(highest->setting.value()));
}

std::string Source::settingOfMaximum(std::size_t index) const {
    const std::string now = setting(index);
    const std::string most = fullyOpen(index);
    if (most.empty()) {
        return now;
    }
    return (now.empty() ? std::string("?") : now) + " / " + most;
}

std::vector<const project::Reading*> Source::readings() const {
    std::vector<const project::Reading*> all;
    for (const base::Id& round : walked) {
        for (const std::size_t index : project.readingsOf(round)) {
            all.push_back(&project.readings()[index]);
        }
    }
    return all;
}

std::vector<const project::PumpReading*> Source::pumpReadings() const {
    std::vector<const project::PumpReading*> all;
    for (const base::Id& round : walked) {
        for (const std::size_t index : project.pumpReadingsOf(round)) {
            all.push_back(&project.pumpReadings()[index]);
        }
    }
    return all;
}

int Source::roundNumber(const base::Id& round) const {
    const project::Round* found = project.rounds().find(round);
    return found != nullptr ? found->number : 0;
}

std::vector<std::pair<std::size_t, int>> Source::outline() const {
    const project::BranchTree& tree = project.tree();
    std::vector<std::pair<std::size_t, int>> lines;
    std::vector<std::pair<std::size_t, int>> ahead;
    const auto add = [&ahead](std::span<const std::size_t> branches, int depth) {
        for (auto branch = branches.rbegin(); branch != branches.rend(); ++branch) {
            ahead.emplace_back(*branch, depth);
        }
    };
    add(tree.roots(), 0);
    while (!ahead.empty()) {
        const auto [branch, depth] = ahead.back();
        ahead.pop_back();
        lines.emplace_back(branch, depth);
        add(tree.children(branch), depth + 1);
    }
    return lines;
}

base::Fault say(const base::MessageForm& form, std::vector<std::string> arguments) {
    return base::Fault{&form, {}, std::move(arguments)};
}

Cell cell(std::string text, bool isStruck) {
    return Cell{std::move(text), {}, isStruck};
}

Cell cell(std::vector<base::Fault> parts, std::string glue) {
    Cell made;
    for (const base::Fault& part : parts) {
        made.text += (made.text.empty() ? "" : glue) + base::english(part);
    }
    made.parts = std::move(parts);
    made.glue = std::move(glue);
    return made;
}

base::Fault word(std::string words) {
    return say(kWord, {std::move(words)});
}

Cell stateCell(const BranchResult& result) {
    Cell made;
    made.state = result.state;
    made.isOver = result.ofTarget.value_or(quantity::Ratio::si(1)).si() > 1;
    made.isSelfActing = result.isSelfActing;
    return made;
}

Cell wordCell(std::string words) {
    return cell({word(std::move(words))}, "");
}

base::Fault plain(std::string text) {
    return say(kPlain, {std::move(text)});
}

base::Fault reasonPart(const std::string& reason) {
    return project::readMergeReason(reason).value_or(plain(reason));
}

Column column(const base::MessageForm& heading, double widthShare, Alignment alignment, std::string unit) {
    return Column{say(heading), std::move(unit), alignment, widthShare};
}

std::string timeText(const std::optional<base::Instant>& time) {
    if (!time) {
        return {};
    }
    constexpr std::size_t kToTheMinute = 5;
    constexpr std::size_t kToTheSecond = sizeof "2026-03-02T08:00:00" - 1;
    const std::string zone = time->text().substr(kToTheSecond);
    return time->date() + ' ' + time->timeOfDay().substr(0, kToTheMinute) +
           (zone == "Z"    ? " UTC"
            : zone.empty() ? ""
                           : ' ' + zone);
}

std::string whoWhen(const std::string& who, const std::optional<base::Instant>& time) {
    const std::string when = timeText(time);
    return who + (who.empty() || when.empty() ? "" : ", ") + when;
}

base::Fault acceptanceText(const project::Project& project, const project::Round& round) {
    const std::string number = std::to_string(round.number);
    switch (round.state) {
        case project::RoundState::Open:
        case project::RoundState::Closed:
            return say(kAcceptanceOpen, {number});
        case project::RoundState::Sent:
            return say(kAcceptanceSent, {number});
        case project::RoundState::SentBack:
            return say(kAcceptanceSentBack, {number});
        case project::RoundState::Accepted:
            break;
    }
    const std::string who = whoWhen(round.decidedBy.empty() ? "?" : round.decidedBy, round.decided);
    if (!project::isSelfAccepted(project, round)) {
        return plain(who);
    }
    return round.reason.empty() ? say(kAcceptanceOwnSilent, {who}) : say(kAcceptanceOwn, {who, round.reason});
}

std::string word(Verdict verdict) {
    switch (verdict) {
        case Verdict::Accepted:
            return base::term("within tolerance");
        case Verdict::NotAccepted:
            return base::term("not within tolerance");
        case Verdict::Undecidable:
            break;
    }
    return base::term("undecidable");
}

std::string word(Severity severity) {
    switch (severity) {
        case Severity::Note:
            return base::term("note");
        case Severity::Warning:
            return base::term("warning");
        case Severity::Error:
            return base::term("error");
        case Severity::BlocksSignature:
            break;
    }
    return base::term("blocks signing");
}

bool isCorrection(const project::Project& project, const project::Reading& reading) {
    const project::Reading* earlier =
        reading.supersedes ? project.readings().find(*reading.supersedes) : nullptr;
    return earlier != nullptr && balancing::isCorrection(*earlier, reading);
}

std::string valueOf(const project::Reading& reading) {
    if (reading.cannotBeRead) {
        return base::term("cannot be read");
    }
    if (reading.dp) {
        return typed(*reading.dp);
    }
    if (reading.flow) {
        return typed(*reading.flow);
    }
    return reading.setting ? base::term("setting ") + reading.setting->text()
                           : std::string(base::term("no value"));
}

std::optional<base::Fault> simulated(const Project& project) {
    return project.job().practice.empty() ? std::nullopt : std::optional(say(kSimulated));
}

std::string datesOf(const Source& source, const std::optional<base::Id>& round) {
    std::string first;
    std::string last;
    for (const project::Reading* reading : source.readings()) {
        if ((round && reading->round != *round) || !reading->time) {
            continue;
        }
        const std::string date = reading->time->date();
        first = first.empty() ? date : std::min(first, date);
        last = std::max(last, date);
    }
    return first == last ? first : first + " – " + last;
}

std::vector<base::Fault> changesOf(const Source& source, int first, int last) {
    const Project& today = source.today != nullptr ? *source.today : source.project;
    return balancing::changesOf(today, first, last);
}

std::vector<balancing::SignLine> standingLines(const Source& source) {
    if (!source.hasRound()) {
        return {};
    }
    const Project& today = source.today != nullptr ? *source.today : source.project;
    std::vector<balancing::SignLine> lines = balancing::readyToSign(today, source.last);
    std::erase_if(
        lines, [](const balancing::SignLine& line) { return line.state != balancing::SignState::Reasoned; });
    return lines;
}

}  // namespace ww::report::detail
