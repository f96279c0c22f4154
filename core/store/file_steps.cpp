#include "core/store/file_steps.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>

#include "core/store/store_messages.h"

namespace ww::store {

namespace {

base::Fault unwritable(const std::filesystem::path& file, int error) {
    return {&kFileUnwritable, file.string(), {std::strerror(error)}};
}

base::Outcome sync(const std::filesystem::path& path, int flags) {
    const int descriptor = ::open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) {
        return unwritable(path, errno);
    }
    const int result = ::fsync(descriptor);
    const int error = errno;
    ::close(descriptor);
    // Some file systems of sticks cannot sync a folder and say so.
    if (result != 0 && error != EINVAL) {
        return unwritable(path, error);
    }
    return base::Done{};
}

base::Outcome syncFolderOf(const std::filesystem::path& file) {
    const std::filesystem::path folder = file.parent_path();
    return sync(folder.empty() ? "." : folder, O_RDONLY | O_DIRECTORY);
}

}  // namespace

base::Outcome syncFile(const std::filesystem::path& file) {
    return sync(file, O_RDWR);
}

std::filesystem::path nameBeside(const std::filesystem::path& file) {
    const std::string start = "." + file.filename().string() + "." + std::to_string(::getpid());
    for (int i = 0;; ++i) {
        const auto candidate = file.parent_path() / (start + "-" + std::to_string(i) + ".part");
        std::error_code ignored;
        if (!std::filesystem::exists(candidate, ignored)) {
            return candidate;
        }
    }
}

base::Outcome moveReplacing(const std::filesystem::path& from, const std::filesystem::path& to) {
    if (std::rename(from.c_str(), to.c_str()) != 0) {
        return unwritable(to, errno);
    }
    return syncFolderOf(to);
}

base::Outcome moveToNewName(const std::filesystem::path& from, const std::filesystem::path& to) {
    // A hard link fails where the name is taken, without a moment in between; file systems without links get
    // the plain check.
    if (::link(from.c_str(), to.c_str()) == 0) {
        ::unlink(from.c_str());
        return syncFolderOf(to);
    }
    std::error_code ignored;
    if (errno == EEXIST || std::filesystem::exists(to, ignored)) {
        return base::Fault{&kFileExists, to.string(), {}};
    }
    return moveReplacing(from, to);
}

void removeDatabaseFile(const std::filesystem::path& file) {
    std::error_code ignored;
    std::filesystem::remove(file, ignored);
    std::filesystem::remove(file.string() + "-journal", ignored);
}

}  // namespace ww::store
