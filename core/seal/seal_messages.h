// What signing and verifying say when something is wrong.
#pragma once

#include "core/base/fault.h"

namespace ww::seal {

inline constexpr base::MessageForm kPdfDamaged{
    "pdf_damaged", "the PDF is damaged or not whole ({1w}); ask for the file again from whoever wrote it"};
inline constexpr base::MessageForm kPdfForm{
    "pdf_form", "the PDF is of a form that is not read here ({1w}); give the report as Waterwright wrote it"};

inline constexpr base::MessageForm kKeyFileUnreadable{
    "key_file_unreadable", "this is no PKCS#12 key file; choose a file that ends in .p12 or .pfx"};
inline constexpr base::MessageForm kPassphraseWrong{"passphrase_wrong",
                                                    "the passphrase does not open this key; type it again"};
inline constexpr base::MessageForm kKeyFileCipher{
    "key_file_cipher",
    "the key is locked by a cipher that is no longer safe; export it again with a present-day program"};
inline constexpr base::MessageForm kKeyFileIncomplete{
    "key_file_incomplete", "the file holds no key with its own certificate; export both together"};
inline constexpr base::MessageForm kKeyKind{
    "key_kind",
    "the key is of a kind that is not used here; use RSA of 2048 bits or more, or a P-256, P-384 or "
    "P-521 key"};
inline constexpr base::MessageForm kKeyNotYetValid{
    "key_not_yet_valid",
    "the certificate of {1} begins on {2}; check this computer's clock or use another key"};
inline constexpr base::MessageForm kKeyExpired{
    "key_expired", "the certificate of {1} ended on {2}; ask its issuer for a new one"};
inline constexpr base::MessageForm kKeyUsage{
    "key_usage",
    "the certificate of {1} is not made for signing documents; use one with digital signature or "
    "non-repudiation among its uses"};
inline constexpr base::MessageForm kSigningFailed{
    "signing_failed", "the signature could not be made ({1w}); nothing was changed, try another key"};
inline constexpr base::MessageForm kPassphraseShort{
    "passphrase_short", "the passphrase is shorter than {1} characters; choose a longer one"};
inline constexpr base::MessageForm kSignerUnnamed{
    "signer_unnamed", "a certificate needs a name of 1 to 64 characters; type the name of the person"};
inline constexpr base::MessageForm kTrustUnreadable{
    "trust_unreadable", "no certificate in PEM form was found; give the file of the firm's root certificate"};

inline constexpr base::MessageForm kNoSuchPage{"no_such_page",
                                               "the report has no page {1}; write the report again"};
inline constexpr base::MessageForm kAlreadyPrepared{
    "already_prepared", "the PDF already has fields for signatures; begin from a report without them"};
inline constexpr base::MessageForm kNoSignatureField{
    "no_signature_field", "the PDF has no place for the signature of the {1w}; write the report again"};
inline constexpr base::MessageForm kAlreadySigned{
    "already_signed", "the {1w} has signed already; a signed report is not signed over, write a new one"};
inline constexpr base::MessageForm kNotIntactNotSigned{
    "not_intact_not_signed", "the report was changed after it was signed; write it again, then sign that"};

inline constexpr base::MessageForm kNotSigned{
    "report_not_signed", "the PDF carries no signature, so nothing proves it; ask for the signed report"};
inline constexpr base::MessageForm kSignatureMalformed{
    "signature_malformed",
    "the signature is not written as it must be ({1}); do not rely on this file, ask for it again"};
inline constexpr base::MessageForm kContentChanged{
    "content_changed", "what was signed has been changed since; do not rely on this file, ask for it again"};
inline constexpr base::MessageForm kSignatureWrong{
    "signature_wrong",
    "the signature does not fit the certificate of {1}; do not rely on this file, ask for it again"};
inline constexpr base::MessageForm kUncoveredEnd{
    "uncovered_end",
    "something was added behind the last signature; do not rely on this file, ask for it again"};
inline constexpr base::MessageForm kChangedBeside{
    "changed_beside",
    "a later revision changed more than its own signature ({1}); do not rely on this file, ask for it again"};
inline constexpr base::MessageForm kSignatureTakenOut{
    "signature_taken_out",
    "a signature that was there has been taken out; do not rely on this file, ask for it again"};
inline constexpr base::MessageForm kNoChangesAllowed{
    "no_changes_allowed",
    "the first signer allowed no later change, yet there is one; do not rely on this file, ask for it again"};

}  // namespace ww::seal
