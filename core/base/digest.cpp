#include "core/base/digest.h"

#include <openssl/evp.h>

#include "core/base/expects.h"
#include "core/base/hex.h"

namespace ww::base {

struct Digester::State {
    EVP_MD_CTX* context = EVP_MD_CTX_new();
    ~State() { EVP_MD_CTX_free(context); }

    void feed(const void* data, std::size_t size) { EXPECTS(EVP_DigestUpdate(context, data, size) == 1); }
    void feedLength(std::uint64_t number) {
        std::array<std::uint8_t, 8> bytes;
        for (std::size_t i = 0; i < 8; ++i) {
            bytes[i] = static_cast<std::uint8_t>(number >> (56 - 8 * i));
        }
        feed(bytes.data(), bytes.size());
    }
};

std::string Digest::text() const {
    return hex(bytes);
}

Digester::Digester() : m_state(std::make_unique<State>()) {
    EXPECTS(EVP_DigestInit_ex(m_state->context, EVP_sha256(), nullptr) == 1);
}

Digester::~Digester() = default;

void Digester::add(std::span<const std::uint8_t> bytes) {
    m_state->feedLength(bytes.size());
    m_state->feed(bytes.data(), bytes.size());
}

void Digester::addText(std::string_view text) {
    m_state->feedLength(text.size());
    m_state->feed(text.data(), text.size());
}

void Digester::addNumber(std::int64_t number) {
    m_state->feedLength(static_cast<std::uint64_t>(number));
}

Digest Digester::finish() {
    Digest digest;
    unsigned size = 0;
    EXPECTS(EVP_DigestFinal_ex(m_state->context, digest.bytes.data(), &size) == 1 && size == 32);
    return digest;
}

Digest sha256(std::span<const std::uint8_t> bytes) {
    Digest digest;
    unsigned size = 0;
    EXPECTS(EVP_Digest(bytes.data(), bytes.size(), digest.bytes.data(), &size, EVP_sha256(), nullptr) == 1);
    return digest;
}

}  // namespace ww::base
