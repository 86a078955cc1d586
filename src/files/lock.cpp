// SPDX-License-Identifier: MIT
#include "vowelway/files/lock.hpp"

#include "files/handle.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/files/write.hpp"

#include <cerrno>
#include <sys/file.h>
#include <sys/stat.h>
#include <thread>

namespace vowelway::files {
namespace {

/// Whether the open file is still what the name means: a writer may have put a new one in its place.
bool is_current(int file, std::filesystem::path const& path) {
    struct stat held {
    }, named{};
    return fstat(file, &held) == 0 && stat(path.c_str(), &named) == 0 && held.st_dev == named.st_dev &&
           held.st_ino == named.st_ino;
}

} // namespace

Lock::Lock(std::filesystem::path const& path, std::chrono::milliseconds patience) {
    auto const end = std::chrono::steady_clock::now() + patience;
    for (;;) {
        auto file = open_regular(path, Access::change);
        bool const locked = flock(file.get(), LOCK_EX | LOCK_NB) == 0;
        bool const unknown_here = !locked && (errno == ENOLCK || errno == ENOTSUP || errno == ENOSYS);
        if (locked || unknown_here) {
            if (!is_current(file.get(), path)) continue; // replaced between opening and locking
            file_ = file.release();
            return;
        }
        if (errno != EWOULDBLOCK && errno != EINTR) throw refused(path, to_word("lock the file"), errno);
        if (std::chrono::steady_clock::now() >= end)
            throw InputError(worded("another program is writing this file"),
                             worded("wait until it has finished, then try again"), place_of(path));
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
}

Lock::~Lock() { Handle(file_).close(); }

void update(std::filesystem::path const& path, std::uintmax_t bound,
            std::function<std::string(std::string const& text)> const& change) {
    Lock const lock(path);
    auto const before = read_text(path, bound);
    auto const after = change(before);
    if (after != before) write(path, after);
}

} // namespace vowelway::files
