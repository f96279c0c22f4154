// A passphrase as OpenSSL wants it, wiped when no longer needed.
#pragma once

#include <openssl/crypto.h>

#include <string>
#include <string_view>

namespace ww::seal::detail {

class Passphrase {
  public:
    explicit Passphrase(std::string_view text) : m_text(text) {}
    ~Passphrase() { OPENSSL_cleanse(m_text.data(), m_text.size()); }
    Passphrase(const Passphrase&) = delete;
    Passphrase& operator=(const Passphrase&) = delete;

    const char* text() const { return m_text.c_str(); }
    int size() const { return static_cast<int>(m_text.size()); }

  private:
    std::string m_text;
};

}  // namespace ww::seal::detail
