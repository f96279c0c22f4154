// Signs the report of an open workbook into a file and notes the signature in the workbook. Not for drawing
// the report nor for opening keys.
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "core/project/review.h"
#include "core/seal/identity.h"
#include "core/seal/prepare_report.h"
#include "core/seal/signature_block.h"
#include "core/workbook/workbook.h"

namespace ww::workbook {

inline constexpr base::MessageForm kSignedFileStands{
    "signed_file_stands", "a signed report stands there and would be lost; give the report another name"};
inline constexpr base::MessageForm kSignedFileOfOther{
    "signed_file_of_other",
    "the signed report there belongs to another workbook; give the report another name"};
inline constexpr base::MessageForm kSignedFileOutdated{
    "signed_file_outdated",
    "the workbook was changed after that report was signed; sign a new report under another name"};
inline constexpr base::MessageForm kSignedFileDamaged{
    "signed_file_damaged",
    "the signed report there does not verify ({1}); keep it aside and sign a new report under another name"};
inline constexpr base::MessageForm kSignedNotNoted{
    "signed_not_noted",
    "the report is signed, but the workbook could not note it ({1}); open the workbook for changes and sign "
    "again under another name"};

/// A report as it was drawn: a PDF without signatures, the fields with their waiting blocks, the record to be
/// carried inside.
struct ReportToSign {
    std::string pdf;
    std::vector<seal::SignatureField> fields;
    std::vector<seal::Attachment> attachments;
};

struct SigningRequest {
    seal::Role role{};
    const seal::Identity& identity;
    std::filesystem::path out;  ///< a new file, or a signed report that waits for this role
    std::function<base::Result<ReportToSign>()> report;  ///< called where a new file is to be written
    seal::BlockDrawer draw;
};

/// The fault that forbids writing a report without signatures over a signed one; nothing where the path is
/// free or holds anything else.
std::optional<base::Fault> refusalToReplaceSigned(const std::filesystem::path& target);

/// Whether a signature still stands for the workbook: not withdrawn, and nothing was changed since but notes
/// of signatures.
bool stands(const Workbook& workbook, const project::SignedReport& report);
/// The newest signed revision that still stands. Nothing where none does.
std::optional<int> standingRevision(const Workbook& workbook);

/// What the holder of a key did himself besides signing in this role, as far as can be told before the file
/// is known: the report that is signed on is the one that still stands for the workbook.
project::OwnPart ownPart(const Workbook& workbook, seal::Role role, const seal::CertificateFacts& signer);

/// Signs: a new report where `out` is free or holds no signed report, otherwise the report there, if it is of
/// this workbook as it stands now (notes of signatures aside). The file appears whole or not at all; on any
/// fault it stays as it was. Gives the record that was put into the workbook.
base::Result<project::SignedReport> signReport(Workbook& workbook, const SigningRequest& request);

/// How a workbook stands to a signed report.
enum class ReportState {
    Current,     ///< of this workbook as it is now, notes of signatures aside
    Superseded,  ///< of this workbook; it was changed since
    Foreign,     ///< of another workbook, or of a state that this one never had
};
/// How a workbook stands to the report that carries this binding.
ReportState stateOf(const Workbook& workbook, const seal::ReportBinding& binding);
/// "current", "superseded", "foreign".
std::string_view name(ReportState state);
/// The same as a sentence.
const base::MessageForm& meaning(ReportState state);
/// How a workbook stands to a signature that it noted itself.
ReportState stateOf(const Workbook& workbook, const project::SignedReport& report);

}  // namespace ww::workbook
