// What a reader asks of a signature, in words: who, when, changed or not, trusted or not. Not for proving it
// (verify_report.h).
#pragma once

#include <array>

#include "core/seal/verify_report.h"

namespace ww::seal {

enum class AnswerWeight {
    Plain,  ///< a fact that speaks neither way
    Good,
    Open,  ///< cannot be told from what was given
    Bad,
};

struct SignatureAnswer {
    base::Fault question;  ///< "signed by", "at", "content", "signer"
    base::Fault answer;
    AnswerWeight weight = AnswerWeight::Plain;
};

/// The four answers, in that order. `hasAnchors`: the reader gave root certificates.
std::array<SignatureAnswer, 4> answersOf(const SignatureFinding& signature, bool hasAnchors);

}  // namespace ww::seal
