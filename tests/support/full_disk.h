// A disk without room, for the time of a scope. Not for a disk that anybody works on.
#pragma once

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/resource.h>

#include <array>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>

namespace ww::support {

/// Files of this process may not grow past a size until the end of the scope, as on a disk that is full.
/// Where tests run on a small disk of their own (tests/faults/full_disk_test.sh) that one is filled instead,
/// to its last byte.
class FullDisk {
  public:
    /// The folder of the small disk that the environment names; null without one.
    static const char* small() { return std::getenv("WW_SMALL_DISK"); }

    explicit FullDisk(std::uintmax_t size) {
        if (small() != nullptr) {
            fill();
            return;
        }
        m_handler = ::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit narrow{static_cast<rlim_t>(size), m_before.rlim_max};
        EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &narrow), 0);
    }
    ~FullDisk() {
        if (!m_ballast.empty()) {
            EXPECT_TRUE(std::filesystem::remove(m_ballast));
            return;
        }
        EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &m_before), 0);
        ::signal(SIGXFSZ, m_handler);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

  private:
    void fill() {
        m_ballast = std::filesystem::path(small()) / "ballast";
        std::ofstream ballast(m_ballast, std::ios::binary);
        constexpr std::array<char, 4096> kBlock{};
        while (ballast.write(kBlock.data(), kBlock.size()).flush()) {
        }
        EXPECT_EQ(std::filesystem::space(m_ballast).available, 0U);
    }

    std::filesystem::path m_ballast;
    rlimit m_before{};
    void (*m_handler)(int) = nullptr;
};

}  // namespace ww::support
