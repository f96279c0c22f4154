// Bytes that are never changed and cheap to copy: photos and other files kept in a job.
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

namespace ww::base {

/// Copies share the bytes; equal where the bytes are.
class SharedBytes {
  public:
    SharedBytes() : m_bytes(std::make_shared<const std::vector<std::uint8_t>>()) {}
    explicit SharedBytes(std::vector<std::uint8_t> bytes)
        : m_bytes(std::make_shared<const std::vector<std::uint8_t>>(std::move(bytes))) {}

    const std::vector<std::uint8_t>& bytes() const { return *m_bytes; }
    bool operator==(const SharedBytes& other) const {
        return m_bytes == other.m_bytes || *m_bytes == *other.m_bytes;
    }

  private:
    std::shared_ptr<const std::vector<std::uint8_t>> m_bytes;
};

}  // namespace ww::base
