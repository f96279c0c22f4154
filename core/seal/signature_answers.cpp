#include "core/seal/signature_answers.h"

#include "core/seal/signature_block.h"

namespace ww::seal {
namespace {

using base::MessageForm;

constexpr MessageForm kWho{"answer_who", "signed by"};
constexpr MessageForm kWhen{"answer_when", "at"};
constexpr MessageForm kChanged{"answer_changed", "content"};
constexpr MessageForm kTrusted{"answer_trusted", "signer"};

constexpr MessageForm kSelfMadeBy{"answer_self_made", "{1} (self-made certificate)"};
constexpr MessageForm kIssuedBy{"answer_issued", "{1}, certificate by {2}"};
constexpr MessageForm kNobodyKnown{"answer_nobody", "an unreadable certificate"};
constexpr MessageForm kTimeSaid{"answer_time", "{1} by the signer's clock"};
constexpr MessageForm kTimeUnknown{"answer_time_unknown", "an unknown time"};
constexpr MessageForm kWholeUnchanged{"answer_whole_unchanged", "unchanged, the whole file"};
constexpr MessageForm kPartUnchanged{"answer_part_unchanged", "unchanged, up to this signature"};
constexpr MessageForm kBroken{"answer_broken", "CHANGED OR BROKEN"};
constexpr MessageForm kTrustedChain{"answer_trusted_chain",
                                    "trusted: its chain leads to a certificate you gave"};
constexpr MessageForm kTrustSelfMade{"answer_trust_self_made",
                                     "not trusted: nobody else vouches for the name; compare the fingerprint "
                                     "{1} with the signer"};
constexpr MessageForm kTrustNoChain{"answer_trust_no_chain",
                                    "not trusted: its chain does not lead to a certificate you gave; ask the "
                                    "signer's firm for its root certificate"};
constexpr MessageForm kTrustNotAsked{
    "answer_trust_not_asked",
    "not trusted: no root certificate was given; give that of the signer's firm as PEM"};

base::Fault say(const MessageForm& form, std::vector<std::string> arguments = {}) {
    return {&form, {}, std::move(arguments)};
}

SignatureAnswer whoOf(const SignatureFinding& signature) {
    if (!signature.signer) {
        return {say(kWho), say(kNobodyKnown), AnswerWeight::Bad};
    }
    const CertificateFacts& signer = *signature.signer;
    return {say(kWho), signer.isSelfMade ? say(kSelfMadeBy, {signer.name})
                                         : say(kIssuedBy, {signer.name, signer.issuer})};
}

SignatureAnswer trustOf(const SignatureFinding& signature, bool hasAnchors) {
    if (signature.isTrusted) {
        return {say(kTrusted), say(kTrustedChain), AnswerWeight::Good};
    }
    if (signature.signer && signature.signer->isSelfMade) {
        return {say(kTrusted), say(kTrustSelfMade, {signature.signer->fingerprint}), AnswerWeight::Open};
    }
    return {say(kTrusted), say(hasAnchors ? kTrustNoChain : kTrustNotAsked), AnswerWeight::Open};
}

}  // namespace

std::array<SignatureAnswer, 4> answersOf(const SignatureFinding& signature, bool hasAnchors) {
    const base::Fault content = say(!signature.isValid          ? kBroken
                                    : signature.coversWholeFile ? kWholeUnchanged
                                                                : kPartUnchanged);
    return {
        whoOf(signature),
        SignatureAnswer{say(kWhen),
                        signature.time ? say(kTimeSaid, {shownTime(*signature.time)}) : say(kTimeUnknown)},
        SignatureAnswer{say(kChanged), content, signature.isValid ? AnswerWeight::Good : AnswerWeight::Bad},
        trustOf(signature, hasAnchors)};
}

}  // namespace ww::seal
