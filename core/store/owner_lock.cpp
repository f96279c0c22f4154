#include "core/store/owner_lock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <vector>

#include "core/store/store_messages.h"

namespace ww::store {

namespace {

/// Names are one line each in the file.
std::string oneLine(std::string text) {
    for (char& c : text) {
        c = c == '\n' || c == '\r' ? ' ' : c;
    }
    return text;
}

std::string written(const Holder& holder) {
    return oneLine(holder.person) + "\n" + oneLine(holder.machine) + "\n" + std::to_string(holder.process) +
           "\n" + holder.since.text() + "\n";
}

/// What the holder wrote; the holder may be just about to write it, so anything may be missing.
std::vector<std::string> linesIn(int descriptor) {
    std::array<char, 1024> buffer{};
    const ssize_t size = ::pread(descriptor, buffer.data(), buffer.size(), 0);
    std::vector<std::string> lines(1);
    for (ssize_t i = 0; i < size; ++i) {
        const char c = buffer[static_cast<std::size_t>(i)];
        if (c == '\n') {
            lines.emplace_back();
        } else {
            lines.back() += c;
        }
    }
    lines.resize(4);
    for (std::string& line : lines) {
        line = line.empty() ? "?" : line;
    }
    return lines;
}

/// Whether the name still leads to the file that was locked: its holder may have removed it in between.
bool isStillThere(int descriptor, const std::filesystem::path& path) {
    struct stat locked {};
    struct stat named {};
    return ::fstat(descriptor, &locked) == 0 && ::stat(path.c_str(), &named) == 0 &&
           locked.st_ino == named.st_ino && locked.st_dev == named.st_dev;
}

}  // namespace

struct OwnerLock::State {
    std::filesystem::path path;
    int descriptor = -1;

    ~State() {
        if (descriptor >= 0) {
            // Removed while it is still held, so that nobody else's file can be hit.
            ::unlink(path.c_str());
            ::close(descriptor);
        }
    }
};

OwnerLock::OwnerLock(std::unique_ptr<State> state) : m_state(std::move(state)) {}
OwnerLock::~OwnerLock() = default;
OwnerLock::OwnerLock(OwnerLock&&) noexcept = default;
OwnerLock& OwnerLock::operator=(OwnerLock&&) noexcept = default;

std::filesystem::path OwnerLock::fileOf(const std::filesystem::path& workbook) {
    return workbook.string() + "-lock";
}

base::Result<OwnerLock> OwnerLock::take(const std::filesystem::path& workbook, const Holder& holder) {
    const std::filesystem::path path = fileOf(workbook);
    for (;;) {
        const int descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0666);
        if (descriptor < 0) {
            return base::Fault{&kFolderUnwritable, workbook.string(), {}};
        }
        if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
            const auto lines = linesIn(descriptor);
            ::close(descriptor);
            return base::Fault{&kHeldElsewhere, workbook.string(), {lines[0], lines[1], lines[3], lines[2]}};
        }
        if (!isStillThere(descriptor, path)) {
            ::close(descriptor);
            continue;
        }
        auto state = std::make_unique<State>();
        state->path = path;
        state->descriptor = descriptor;
        const std::string text = written(holder);
        if (::ftruncate(descriptor, 0) != 0 ||
            ::pwrite(descriptor, text.data(), text.size(), 0) != static_cast<ssize_t>(text.size())) {
            return base::Fault{&kFolderUnwritable, workbook.string(), {}};
        }
        return OwnerLock(std::move(state));
    }
}

}  // namespace ww::store
