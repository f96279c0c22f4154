// A disk without room, for the time of a scope. Not for real disks.
#pragma once

#include <gtest/gtest.h>
#include <signal.h>
#include <sys/resource.h>

#include <cstdint>

namespace ww::support {

/// Files of this process may not grow past a size until the end of the scope, as on a disk that is full.
class FullDisk {
  public:
    explicit FullDisk(std::uintmax_t size) {
        m_handler = ::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit narrow{static_cast<rlim_t>(size), m_before.rlim_max};
        EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &narrow), 0);
    }
    ~FullDisk() {
        EXPECT_EQ(::setrlimit(RLIMIT_FSIZE, &m_before), 0);
        ::signal(SIGXFSZ, m_handler);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

  private:
    rlimit m_before{};
    void (*m_handler)(int) = nullptr;
};

}  // namespace ww::support
