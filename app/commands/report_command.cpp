// waterwright report: the balance report as PDF, with a signature where one is asked for.
#include <CLI/CLI.hpp>
#include <ostream>

#include "app/commands/open_workbook.h"
#include "app/commands/whole_file.h"
#include "core/balancing/ready_to_sign.h"
#include "core/seal/seal_messages.h"
#include "core/workbook/output_target.h"
#include "core/workbook/report_signing.h"
#include "core/workbook/round_steps.h"

namespace ww::app {

namespace {

inline constexpr base::MessageForm kSigningBlocked{
    "signing_blocked", "not signed: a finding blocks it ({1}); settle it in the workbook first"};

inline constexpr base::MessageForm kReviewOfOwnToSign{
    "review_of_own_signed",
    "{1} read or sent rounds {2} and signs as reviewer; the report tells it beside the signature"};

inline constexpr base::MessageForm kSignsBothRoles{
    "signs_both_roles",
    "{1} signed this revision in the other role too; the report tells it beside the signature"};

/// The first line of a file, without what ends it.
std::string firstLine(const std::string& text) {
    return text.substr(0, text.find_first_of("\r\n"));
}

class ReportCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        app.add_option("--out", m_out, "the report, REPORT.pdf")->required();
        app.add_option("--round", m_round, "number of the round reported as the last");
        addLanguage(app, m_language);
        auto* sign = app.add_option("--sign", m_key, "sign with this key, KEY.p12");
        auto* role =
            app.add_option("--role", m_role, "technician: readings taken; supervisor: reviewed and accepted")
                ->check(CLI::IsMember({"technician", "supervisor"}));
        auto* pass =
            app.add_option("--pass-file", m_passFile, "file whose first line is the key's passphrase");
        sign->needs(role)->needs(pass);
        role->needs(sign);
        pass->needs(sign);
    }

    int run(Surroundings& surroundings) override {
        const bool isSigning = !m_key.empty();
        surroundings.language = m_language;
        const auto workbook = openWorkbook(
            surroundings, m_file, isSigning ? workbook::OpenMode::ReadWrite : workbook::OpenMode::ReadOnly);
        if (workbook == nullptr) {
            return kFileTrouble;
        }
        if (m_round && workbook->project().roundNumbered(*m_round) == nullptr) {
            return badInput(surroundings, roundUnknown(m_file, workbook->project(), *m_round));
        }
        if (const auto refusal = workbook::refusalToReplace(m_out)) {
            return badInput(surroundings, *refusal);
        }
        report::ReportOptions options;
        options.round = m_round;
        options.standing = m_round ? std::nullopt : workbook::standingRevision(*workbook);
        options.journalDigest = workbook->newestEntry().digest.text();
        options.workbookId = workbook->workbookId().text();
        // The time of the newest record, so that an unchanged workbook gives an unchanged report.
        options.printed = workbook->newestEntry().time;
        options.signers = isSigning ? report::Signers::TechnicianAndSupervisor : report::Signers::None;
        auto steps = workbook::roundSteps(*workbook);
        if (!steps) {
            return fileTrouble(surroundings, steps.fault());
        }
        options.roundSteps = std::move(*steps);
        const report::Report report = report::build(workbook->project(), options);
        return isSigning ? sign(surroundings, *workbook, report) : write(surroundings, *workbook, report);
    }

  private:
    int write(Surroundings& surroundings, const workbook::Workbook& workbook,
              const report::Report& report) const {
        if (const auto refusal = workbook::refusalToReplaceSigned(m_out)) {
            return badInput(surroundings, *refusal);
        }
        const base::Outcome written = surroundings.writeReport(report, workbook.project(), m_out);
        if (!written) {
            return fileTrouble(surroundings, written.fault());
        }
        surroundings.out << m_out << "\n";
        return kDone;
    }

    int sign(Surroundings& surroundings, workbook::Workbook& workbook, const report::Report& report) const {
        const auto obstacles = report::obstaclesToSigning(report);
        for (const base::Fault& obstacle : obstacles) {
            surroundings.err << base::englishWithSubject(
                                    {&kSigningBlocked, obstacle.subject, {base::english(obstacle)}})
                             << "\n";
        }
        if (!obstacles.empty()) {
            return kNotAccepted;
        }
        tellWhatIsLeft(surroundings, workbook.project(), report);
        const auto key = wholeFile(m_key);
        const auto passphrase = wholeFile(m_passFile);
        if (!key || !passphrase) {
            return fileTrouble(surroundings, key ? passphrase.fault() : key.fault());
        }
        const auto identity = seal::Identity::open(*key, firstLine(*passphrase));
        if (!identity) {
            return badInput(surroundings, {identity.fault().form, m_key, identity.fault().arguments});
        }
        const project::OwnPart own = workbook::ownPart(workbook, *seal::roleNamed(m_role), identity->facts());
        if (!own.rounds.empty()) {
            surroundings.err << base::english({&kReviewOfOwnToSign, {}, {identity->facts().name, own.rounds}})
                             << "\n";
        }
        if (own.hasBothRoles) {
            surroundings.err << base::english({&kSignsBothRoles, {}, {identity->facts().name}}) << "\n";
        }
        const workbook::SigningRequest request{
            *seal::roleNamed(m_role), *identity, m_out,
            [&] { return surroundings.reportToSign(report, workbook.project()); }, surroundings.drawBlock};
        const auto done = workbook::signReport(workbook, request);
        if (!done) {
            return badInput(surroundings, done.fault());
        }
        surroundings.out << m_out << ": signed by " << done->signer << " as " << done->role << "\n";
        if (done->isSelfMade) {
            surroundings.err << "the certificate is self-made: nobody else vouches for the name\n";
        }
        return kDone;
    }

    /// The lines of the desktop's list that are not settled; here they hold nothing up.
    static void tellWhatIsLeft(Surroundings& surroundings, const project::Project& project,
                               const report::Report& report) {
        if (report.rounds.empty()) {
            return;
        }
        for (const balancing::SignLine& line : balancing::readyToSign(project, report.rounds.back())) {
            if (line.state == balancing::SignState::NeedsReason ||
                line.state == balancing::SignState::Blocks) {
                surroundings.err << "left open: " << base::englishWithSubject(line.text) << "\n";
            }
        }
    }

    std::string m_file;
    std::string m_out;
    std::optional<int> m_round;
    std::string m_language;
    std::string m_key;
    std::string m_role;
    std::string m_passFile;
};

}  // namespace

std::unique_ptr<Command> reportCommand() {
    return std::make_unique<ReportCommand>();
}

}  // namespace ww::app
