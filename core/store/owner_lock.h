// The right to change a workbook: one program at a time, told apart by a small file beside it.
// Not SQLite's own locks, which forbid reading as well.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "core/base/instant.h"
#include "core/base/result.h"

namespace ww::store {

/// Who holds a workbook.
struct Holder {
    std::string person;
    std::string machine;
    std::int64_t process = 0;
    base::Instant since;
};

/// Held as long as it lives; the system lets go of it when the program ends in any way, kill -9 included.
class OwnerLock {
  public:
    /// Takes the lock of a workbook file. Fails with kHeldElsewhere, naming the holder, where another program
    /// (or another window) has it, and with kFolderUnwritable where the file beside cannot be made.
    static base::Result<OwnerLock> take(const std::filesystem::path& workbook, const Holder& holder);
    ~OwnerLock();
    OwnerLock(OwnerLock&&) noexcept;
    OwnerLock& operator=(OwnerLock&&) noexcept;

    /// "job.wwj-lock"
    static std::filesystem::path fileOf(const std::filesystem::path& workbook);

  private:
    struct State;
    explicit OwnerLock(std::unique_ptr<State> state);
    std::unique_ptr<State> m_state;
};

}  // namespace ww::store
