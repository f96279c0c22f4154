// A person's key and certificate out of a PKCS#12 file (RFC 7292). Not for storing passphrases: they are
// asked for each time and forgotten.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/seal/certificate_facts.h"

namespace ww::seal {

/// An opened key. Copies share the key; it is wiped from memory with the last of them.
class Identity {
  public:
    /// Opens the bytes of a PKCS#12 file. Fails where they are none, the passphrase is wrong, the cipher is
    /// no longer supported, or key and certificate do not belong together.
    static base::Result<Identity> open(std::string_view keyFile, std::string_view passphrase);

    const CertificateFacts& facts() const;
    /// Why this key must not sign at a moment: not yet or no longer valid, not made for signing, too weak.
    /// Nothing where it may.
    std::optional<base::Fault> refusal(const base::Instant& now) const;

    struct State;
    const State& state() const { return *m_state; }

  private:
    explicit Identity(std::shared_ptr<const State> state) : m_state(std::move(state)) {}
    std::shared_ptr<const State> m_state;
};

/// Who a self-made certificate names.
struct SelfMade {
    std::string name;          ///< of the person; must not be empty
    std::string organization;  ///< may be empty
    int years = 5;             ///< how long it is valid; 1 to 20
};

/// Fewest characters of a new key's passphrase: memorized secrets of NIST SP 800-63B, 5.1.1.
inline constexpr int kShortestPassphrase = 8;

/// A new key (RSA, 3072 bits) with a certificate signed by itself, as the bytes of a PKCS#12 file locked by
/// the passphrase. It shows that reports come from the same hand, not whose hand: verifying never calls it
/// trusted. Takes some tenths of a second.
base::Result<std::string> makeSelfMade(const SelfMade& who, std::string_view passphrase,
                                       const base::Instant& now);

}  // namespace ww::seal
