#include "core/workbook/report_signing.h"

#include <algorithm>
#include <fstream>
#include <iterator>

#include "core/project/edit_label.h"
#include "core/seal/sign_report.h"
#include "core/seal/verify_report.h"
#include "core/store/file_steps.h"
#include "core/workbook/output_target.h"

namespace ww::workbook {
namespace {

inline constexpr base::MessageForm kSignedNotWritten{
    "signed_not_written",
    "the signed report could not be written; choose a place with room that can be written"};

inline constexpr base::MessageForm kReportCurrent{"report_current",
                                                  "the report is of this workbook as it stands now"};
inline constexpr base::MessageForm kReportSuperseded{
    "report_superseded",
    "the report is of this workbook, which was changed since; sign a new report for what stands now"};
inline constexpr base::MessageForm kReportForeign{
    "report_foreign",
    "the report is of another workbook, or of a state that this one never had; open the workbook it names"};

/// What is written into the journal; every entry of this label only notes a signature.
constexpr std::string_view kSigningLabel = project::labels::kSign.text;

std::string bytesOf(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(stream), {});
}

base::Digest digestOf(const std::string& bytes) {
    return base::sha256({reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()});
}

seal::ReportBinding bindingOf(const Workbook& workbook) {
    return {workbook.workbookId().text(), workbook.newestEntry().digest.text()};
}

/// The report that is to be signed: a new one, or the one that stands there and waits for this role.
base::Result<std::string> prepared(const Workbook& workbook, const SigningRequest& request) {
    const std::string standing = bytesOf(request.out);
    if (!seal::hasSignature(standing)) {
        const base::Result<ReportToSign> report = request.report();
        if (!report) {
            return report.fault();
        }
        return seal::prepareReport(report->pdf, {report->fields, report->attachments, bindingOf(workbook),
                                                 workbook.newestEntry().time});
    }
    const seal::ReportVerification found = seal::verifyReport(standing);
    if (!found.isIntact || !found.binding) {
        const std::string why = found.faults.empty() ? "not intact" : base::english(found.faults.front());
        return base::Fault{&kSignedFileDamaged, request.out.string(), {why.substr(0, why.find(';'))}};
    }
    switch (stateOf(workbook, *found.binding)) {
        case ReportState::Foreign:
            return base::Fault{&kSignedFileOfOther, request.out.string(), {}};
        case ReportState::Superseded:
            return base::Fault{&kSignedFileOutdated, request.out.string(), {}};
        case ReportState::Current:
            break;
    }
    return standing;
}

base::Outcome writeWhole(const std::string& bytes, const std::filesystem::path& out) {
    const std::filesystem::path part = store::nameBeside(out);
    std::ofstream stream(part, std::ios::binary | std::ios::trunc);
    stream << bytes;
    stream.close();
    base::Outcome outcome = base::Fault{&kSignedNotWritten, out.string(), {}};
    if (stream) {
        outcome = store::syncFile(part);
        outcome = outcome ? store::moveReplacing(part, out) : outcome;
    }
    if (!outcome) {
        std::error_code ignored;
        std::filesystem::remove(part, ignored);
    }
    return outcome;
}

/// The number of the report's revision: one more than the highest, or that of the report signed on.
int revisionOf(const Workbook& workbook, const seal::ReportBinding& binding) {
    int highest = 0;
    for (const project::SignedReport& report : workbook.project().signedReports()) {
        if (report.journalDigest == binding.journalDigest) {
            return report.revision;
        }
        highest = std::max(highest, report.revision);
    }
    return highest + 1;
}

project::OwnPart ownPart(const Workbook& workbook, int revision, seal::Role role,
                         const seal::CertificateFacts& signer) {
    project::SignedReport signature;
    signature.revision = revision;
    signature.role = seal::name(role);
    signature.signer = signer.name;
    signature.certificate = signer.fingerprint;
    return project::ownPart(workbook.project(), signature);
}

project::SignedReport noteOf(const Workbook& workbook, const SigningRequest& request,
                             const base::Instant& time, const std::string& pdf,
                             const seal::ReportBinding& binding) {
    project::SignedReport note;
    note.id = workbook.ids().next();
    note.revision = revisionOf(workbook, binding);
    note.role = seal::name(request.role);
    note.signer = request.identity.facts().name;
    note.certificate = request.identity.facts().fingerprint;
    note.isSelfMade = request.identity.facts().isSelfMade;
    note.time = time;
    note.fileName = request.out.filename().string();
    note.fileDigest = digestOf(pdf).text();
    note.journalDigest = binding.journalDigest;
    for (const JournalEntry& entry : workbook.journal()) {
        if (entry.digest.text() == binding.journalDigest) {
            note.journalSequence = base::Decimal::fromNumber(static_cast<double>(entry.sequence), 0);
        }
    }
    return note;
}

}  // namespace

std::optional<base::Fault> refusalToReplaceSigned(const std::filesystem::path& target) {
    if (seal::hasSignature(bytesOf(target))) {
        return base::Fault{&kSignedFileStands, target.string(), {}};
    }
    return std::nullopt;
}

ReportState stateOf(const Workbook& workbook, const seal::ReportBinding& binding) {
    if (binding.workbookId != workbook.workbookId().text()) {
        return ReportState::Foreign;
    }
    const std::vector<JournalEntry>& journal = workbook.journal();
    ReportState state = ReportState::Current;
    for (auto entry = journal.rbegin(); entry != journal.rend(); ++entry) {
        if (entry->digest.text() == binding.journalDigest) {
            return state;
        }
        if (entry->label != kSigningLabel) {
            state = ReportState::Superseded;
        }
    }
    return ReportState::Foreign;
}

std::string_view name(ReportState state) {
    switch (state) {
        case ReportState::Current:
            return "current";
        case ReportState::Superseded:
            return "superseded";
        case ReportState::Foreign:
            break;
    }
    return "foreign";
}

const base::MessageForm& meaning(ReportState state) {
    switch (state) {
        case ReportState::Current:
            return kReportCurrent;
        case ReportState::Superseded:
            return kReportSuperseded;
        case ReportState::Foreign:
            break;
    }
    return kReportForeign;
}

ReportState stateOf(const Workbook& workbook, const project::SignedReport& report) {
    return stateOf(workbook, seal::ReportBinding{workbook.workbookId().text(), report.journalDigest});
}

bool stands(const Workbook& workbook, const project::SignedReport& report) {
    return !report.isWithdrawn && stateOf(workbook, report) == ReportState::Current;
}

std::optional<int> standingRevision(const Workbook& workbook) {
    std::optional<int> standing;
    for (const project::SignedReport& report : workbook.project().signedReports()) {
        if (stands(workbook, report)) {
            standing = std::max(standing.value_or(0), report.revision);
        }
    }
    return standing;
}

project::OwnPart ownPart(const Workbook& workbook, seal::Role role, const seal::CertificateFacts& signer) {
    return ownPart(workbook, standingRevision(workbook).value_or(0), role, signer);
}

base::Result<project::SignedReport> signReport(Workbook& workbook, const SigningRequest& request) {
    const base::Instant now = workbook.now();
    if (workbook.isReadOnly()) {
        return base::Fault{&kOpenedForReading, workbook.file().string(), {}};
    }
    if (auto refusal = request.identity.refusal(now)) {
        return *refusal;
    }
    if (auto refusal = refusalToReplace(request.out)) {
        return *refusal;
    }
    const auto report = prepared(workbook, request);
    if (!report) {
        return report.fault();
    }
    const auto size = seal::blockSize(*report, request.role);
    if (!size) {
        return size.fault();
    }
    const std::string& signer = request.identity.facts().name;
    // A signature leaves the binding as it is.
    const seal::ReportBinding binding = seal::verifyReport(*report).binding.value_or(bindingOf(workbook));
    const project::OwnPart own =
        ownPart(workbook, revisionOf(workbook, binding), request.role, request.identity.facts());
    const seal::BlockDrawing drawing =
        request.draw(seal::signedText(request.role, signer, now, own.rounds, own.hasBothRoles), *size);
    const auto signedPdf = seal::signReport(*report, request.identity, {request.role, now, drawing});
    if (!signedPdf) {
        return signedPdf.fault();
    }
    // What is handed out is what would be found when it is checked.
    EXPECTS(seal::verifyReport(*signedPdf).isIntact);
    const project::SignedReport note = noteOf(workbook, request, now, *signedPdf, binding);
    const base::Outcome written = writeWhole(*signedPdf, request.out);
    if (!written) {
        return written.fault();
    }
    const auto noted = workbook.apply({std::string(kSigningLabel), {note}, {}, false});
    if (!noted) {
        return base::Fault{&kSignedNotNoted, request.out.string(), {base::english(noted.fault())}};
    }
    return note;
}

}  // namespace ww::workbook
