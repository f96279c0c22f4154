// waterwright verify: the proof of a workbook or of a signed report.
#include <CLI/CLI.hpp>
#include <algorithm>
#include <filesystem>
#include <iomanip>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "app/commands/whole_file.h"
#include "core/seal/signature_answers.h"
#include "core/workbook/report_signing.h"

namespace ww::app {

namespace {

using Json = nlohmann::ordered_json;

bool isReport(const std::string& file, const std::string& bytes) {
    std::string ending = std::filesystem::path(file).extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(), [](char sign) {
        return sign >= 'A' && sign <= 'Z' ? static_cast<char>(sign + 32) : sign;
    });
    return ending == ".pdf" || bytes.starts_with("%PDF-");
}

Json signatureJson(const seal::SignatureFinding& signature) {
    const auto& signer = signature.signer;
    const auto text = [&](auto field) { return signer ? Json((*signer).*field) : Json(nullptr); };
    Json faults = Json::array();
    for (const base::Fault& fault : signature.faults) {
        faults.push_back(base::english(fault));
    }
    return {{"signer", text(&seal::CertificateFacts::name)},
            {"role", signature.role ? Json(std::string(seal::name(*signature.role))) : Json(nullptr)},
            {"time", signature.time ? Json(signature.time->text()) : Json(nullptr)},
            {"covers_whole_file", signature.coversWholeFile},
            {"valid", signature.isValid},
            {"trusted", signature.isTrusted},
            {"issuer", text(&seal::CertificateFacts::issuer)},
            {"self_made", text(&seal::CertificateFacts::isSelfMade)},
            {"fingerprint", text(&seal::CertificateFacts::fingerprint)},
            {"faults", faults}};
}

/// Who, when, changed or not, trusted or not: one line each.
void printSignature(std::ostream& out, const seal::SignatureFinding& signature, bool hasAnchors) {
    out << (signature.role ? std::string(seal::name(*signature.role)) : signature.field) << "\n";
    for (const seal::SignatureAnswer& answer : seal::answersOf(signature, hasAnchors)) {
        out << "  " << std::left << std::setw(11) << base::english(answer.question)
            << base::english(answer.answer) << "\n";
    }
}

class VerifyCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj, or a signed report, REPORT.pdf")->required();
        app.add_option("--trust", m_trust, "root certificates that you trust, CA.pem");
        app.add_option("--workbook", m_workbook,
                       "also tell whether the report is of this workbook as it stands");
        app.add_flag("--json", m_isJson, "print one JSON document");
    }

    int run(Surroundings& surroundings) override {
        const auto bytes = wholeFile(m_file);
        if (!bytes) {
            return fileTrouble(surroundings, bytes.fault());
        }
        return isReport(m_file, *bytes) ? verifyReport(surroundings, *bytes) : verifyWorkbook(surroundings);
    }

  private:
    int verifyReport(Surroundings& surroundings, const std::string& bytes) const {
        seal::TrustAnchors anchors;
        if (!m_trust.empty()) {
            const auto pem = wholeFile(m_trust);
            if (!pem) {
                return fileTrouble(surroundings, pem.fault());
            }
            auto read = seal::TrustAnchors::fromPem(*pem);
            if (!read) {
                return badInput(surroundings, {read.fault().form, m_trust, {}});
            }
            anchors = *read;
        }
        const seal::ReportVerification found = seal::verifyReport(bytes, anchors);
        std::optional<workbook::ReportState> state;
        if (!m_workbook.empty()) {
            const auto workbook = openWorkbook(surroundings, m_workbook, workbook::OpenMode::ReadOnly);
            if (workbook == nullptr) {
                return kFileTrouble;
            }
            state =
                found.binding ? workbook::stateOf(*workbook, *found.binding) : workbook::ReportState::Foreign;
        }
        for (const base::Fault& fault : found.faults) {
            surroundings.err << m_file << ": " << base::english(fault) << "\n";
        }
        for (const seal::SignatureFinding& signature : found.signatures) {
            for (const base::Fault& fault : signature.faults) {
                surroundings.err << m_file << ": " << signature.field << ": " << base::english(fault) << "\n";
            }
        }
        if (m_isJson) {
            surroundings.out << json(found, state).dump(2, ' ', false, Json::error_handler_t::replace)
                             << "\n";
        } else {
            print(surroundings.out, found, state, !anchors.isEmpty());
        }
        const bool isGood = found.isIntact && (!state || *state == workbook::ReportState::Current);
        return isGood ? kDone : kNotAccepted;
    }

    static Json json(const seal::ReportVerification& found, std::optional<workbook::ReportState> state) {
        Json signatures = Json::array();
        for (const seal::SignatureFinding& signature : found.signatures) {
            signatures.push_back(signatureJson(signature));
        }
        Json waiting = Json::array();
        for (const seal::Role role : found.waiting) {
            waiting.push_back(std::string(seal::name(role)));
        }
        Json faults = Json::array();
        for (const base::Fault& fault : found.faults) {
            faults.push_back(base::english(fault));
        }
        return {{"kind", "report"},
                {"intact", found.isIntact},
                {"journal_records", nullptr},
                {"first_bad_record", nullptr},
                {"signatures", signatures},
                {"waiting", waiting},
                {"workbook", found.binding ? Json(found.binding->workbookId) : Json(nullptr)},
                {"journal_digest", found.binding ? Json(found.binding->journalDigest) : Json(nullptr)},
                {"state", state ? Json(std::string(workbook::name(*state))) : Json(nullptr)},
                {"faults", faults}};
    }

    void print(std::ostream& out, const seal::ReportVerification& found,
               std::optional<workbook::ReportState> state, bool hasAnchors) const {
        out << m_file << (found.isIntact ? ": intact\n" : ": NOT intact\n");
        for (const seal::SignatureFinding& signature : found.signatures) {
            printSignature(out, signature, hasAnchors);
        }
        for (const seal::Role role : found.waiting) {
            out << seal::name(role) << "\n  has not signed\n";
        }
        if (found.binding) {
            out << "workbook     " << found.binding->workbookId << "\nnewest record "
                << found.binding->journalDigest << "\n";
        }
        if (state) {
            out << "beside " << m_workbook << ": " << workbook::name(*state) << "\n";
        }
    }

    int verifyWorkbook(Surroundings& surroundings) const {
        const auto result = workbook::verify(m_file);
        if (!result) {
            return fileTrouble(surroundings, result.fault());
        }
        for (const base::Fault& finding : result->findings) {
            surroundings.err << base::englishWithSubject(finding) << "\n";
        }
        if (m_isJson) {
            const Json document = {
                {"kind", "workbook"},
                {"intact", result->isIntact},
                {"journal_records", result->journalRecords},
                {"first_bad_record", result->firstBadRecord ? Json(*result->firstBadRecord) : Json(nullptr)},
                {"signatures", Json::array()}};
            surroundings.out << document.dump(2) << "\n";
        } else if (result->isIntact) {
            surroundings.out << m_file << ": intact; every row follows from its " << result->journalRecords
                             << " journal records\n";
        } else {
            surroundings.out << m_file << ": NOT intact\n";
        }
        return result->isIntact ? kDone : kNotAccepted;
    }

    std::string m_file;
    std::string m_trust;
    std::string m_workbook;
    bool m_isJson = false;
};

}  // namespace

std::unique_ptr<Command> verifyCommand() {
    return std::make_unique<VerifyCommand>();
}

}  // namespace ww::app
