// A loop of equal terminals for the tests of balancing: design 4 m3/h each, one valve table, flows set by
// number. Not for hydraulics: a flow here is whatever the test says.
#pragma once

#include <cmath>
#include <string>
#include <string_view>
#include <variant>

#include "core/balancing/assess.h"
#include "core/project/edit.h"
#include "tests/support/field_job.h"

namespace ww::balancing {

using support::FieldJob;

/// The valve's table: settings 0 (shut), 1, 2, 3 and 4 (open) with Kv 0, 1, 2, 4 and 8.
inline base::Id usualValve(FieldJob& job) {
    return job.valve({{"0", "0"}, {"1", "1"}, {"2", "2"}, {"3", "4"}, {"4", "8"}});
}

/// dp in kPa, as text, at which a valve with this Kv passes a flow (SG of water at 20 C against 60 F,
/// 0.9992).
inline std::string dpFor(double flowRatio, double kvRatio) {
    const double flow = 4 * flowRatio;
    return base::Decimal::fromNumber(100 * 0.99924 * std::pow(flow / kvRatio, 2), 4).text();
}

/// Kv at one of the table's settings.
inline double kvAt(std::string_view setting) {
    return setting == "4" ? 8 : setting == "3" ? 4 : setting == "2" ? 2 : 1;
}

/// Stores the dp that makes the terminal's flow this share of its design, at a setting of the table.
inline base::Id readAs(FieldJob& job, std::string_view tag, double flowRatio,
                       std::string_view setting = "4") {
    return job.dp(tag, dpFor(flowRatio, kvAt(setting)), setting);
}

/// Terminals A, B, C ... at the pump, nearest first.
inline FieldJob flatLoop(std::size_t count) {
    FieldJob job;
    const base::Id valve = usualValve(job);
    for (std::size_t i = 0; i < count; ++i) {
        job.branch(std::string(1, static_cast<char>('A' + i)), "", "4", valve);
    }
    return job;
}

/// Two risers, R1 and R2, with a valve each; A and B on the first, C and D on the second. No round yet.
inline FieldJob twoRisers() {
    FieldJob job;
    const base::Id valve = usualValve(job);
    job.branch("R1", "", "", valve);
    job.branch("R2", "", "", valve);
    for (const char* tag : {"A", "B"}) {
        job.branch(tag, "R1", "4", valve);
    }
    for (const char* tag : {"C", "D"}) {
        job.branch(tag, "R2", "4", valve);
    }
    return job;
}

/// Two risers, everything open: R2 takes less than R1 and holds the index, but A in R1 takes still less. B
/// at 1.05 is off share, at 1.03 all are on share.
inline FieldJob rivalLoop(project::RoundState state, double ofB = 1.05) {
    FieldJob job = twoRisers();
    job.round(project::RoundKind::Final, state);
    job.settingOnly("R1", "4");
    job.settingOnly("R2", "4");
    readAs(job, "A", 0.97);
    readAs(job, "B", ofB);
    readAs(job, "C", 0.99);
    readAs(job, "D", 0.98);
    return job;
}

/// Carries an edit out; gives its label, or the code of the refusal.
inline std::string applied(FieldJob& job, const base::Result<project::Edit>& edit) {
    if (!edit) {
        return std::string(edit.fault().code());
    }
    for (const project::AnyRecord& record : edit->put) {
        std::visit([&](const auto& value) { job.project().put(value); }, record);
    }
    return edit->label;
}

inline Assessment assessNewest(const FieldJob& job, AssessOptions options = {}) {
    return assess(job.project(), job.newestRound(), options);
}

inline const BranchResult& resultOf(const FieldJob& job, const Assessment& assessment, std::string_view tag) {
    return assessment.branches[job.indexOf(tag)];
}

/// The finding of this form (and subject, where one is given); null where there is none.
inline const Finding* findingOf(const Assessment& assessment, const base::MessageForm& form,
                                std::string_view subject = "") {
    for (const Finding& finding : assessment.findings) {
        if (finding.fault.is(form) && (subject.empty() || finding.fault.subject == subject)) {
            return &finding;
        }
    }
    return nullptr;
}

inline bool hasReason(const Assessment& assessment, const base::MessageForm& form) {
    for (const base::Fault& fault : assessment.reasons) {
        if (fault.is(form)) {
            return true;
        }
    }
    return false;
}

/// How severe the newest round's finding of this kind is; nothing where there is none.
inline std::optional<Severity> severityOf(const FieldJob& job, const base::MessageForm& form,
                                          std::string_view subject = "") {
    const Assessment a = assessNewest(job);
    const Finding* finding = findingOf(a, form, subject);
    return finding != nullptr ? std::optional(finding->severity) : std::nullopt;
}

/// Two terminals at design flow (8 m3/h) and a pump that gives 8 m3/h at 6 m.
inline FieldJob pumped(const char* rise) {
    FieldJob job = flatLoop(2);
    job.pump("P-1", {{"0", "10"}, {"4", "9"}, {"8", "6"}, {"12", "1"}});
    job.round(project::RoundKind::Survey);
    readAs(job, "A", 1.0);
    readAs(job, "B", 1.0);
    job.pumpRise(rise);
    return job;
}

}  // namespace ww::balancing
