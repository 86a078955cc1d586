// SPDX-License-Identifier: MIT
#include "vowelway/files/read.hpp"

#include "files/handle.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <new>
#include <sys/stat.h>

namespace vowelway::files {
namespace {

/// To the end, but at most one byte more than the bound. `expected` saves growing.
std::string bytes_of(int file, std::uintmax_t expected, std::uintmax_t bound,
                     std::filesystem::path const& path) try {
    std::string bytes;
    auto const most = static_cast<std::size_t>(std::min<std::uintmax_t>(bound, SIZE_MAX / 4)) + 1;
    std::size_t room = std::min(most, std::max<std::size_t>(static_cast<std::size_t>(expected) + 1, 4096));
    for (std::size_t filled = 0;;) {
        bytes.resize(room);
        auto const got = ::read(file, bytes.data() + filled, bytes.size() - filled);
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) throw refused(path, to_word("read the file"), errno);
        filled += static_cast<std::size_t>(got);
        if (got == 0 || filled == most) {
            bytes.resize(filled);
            break;
        }
        if (filled == room) room = std::min(most, 2 * room);
    }
    require_size(bytes.size(), bound, path.string());
    return bytes;
} catch (std::bad_alloc const&) {
    throw InputError(worded("there is not enough memory to read the file"),
                     worded("close some programs and try again"), place_of(path));
}

} // namespace

Handle open_regular(std::filesystem::path const& path, Access access) {
    auto const how = access == Access::read ? O_RDONLY : O_RDWR;
    // Without O_NONBLOCK a pipe without a writer would hold us for ever.
    Handle file(::open(path.c_str(), how | O_NONBLOCK | O_CLOEXEC | O_NOCTTY));
    if (!file && (errno == ENOENT || errno == ENOTDIR))
        throw InputError(worded("there is no such file"), worded("check the name and the folder"),
                         place_of(path));
    if (!file && errno == EACCES)
        throw InputError(access == Access::read ? worded("you have no permission to read the file")
                                                : worded("you have no permission to change the file"),
                         worded("check the permissions of the file and its folder"), place_of(path));
    if (!file && errno == EISDIR)
        throw InputError(worded("is a folder, not a file"), worded("name a file in it"), place_of(path));
    struct stat known {};
    bool const seen = file ? fstat(file.get(), &known) == 0 : false;
    if (!file && errno != ENXIO) throw refused(path, to_word("open the file"), errno); // ENXIO: a socket
    if (seen && S_ISDIR(known.st_mode))
        throw InputError(worded("is a folder, not a file"), worded("name a file in it"), place_of(path));
    if (!seen || !S_ISREG(known.st_mode))
        throw InputError(worded("is a device or a pipe, not a file"),
                         worded("copy it to a file on the disk first"), place_of(path));
    return file;
}

void require_readable(std::filesystem::path const& path) { open_regular(path); }

std::string read(std::filesystem::path const& path, std::uintmax_t bound) {
    auto const file = open_regular(path);
    struct stat known {};
    fstat(file.get(), &known);
    auto const size = static_cast<std::uintmax_t>(std::max<off_t>(0, known.st_size));
    require_size(size, bound, path.string());
    return bytes_of(file.get(), size, bound, path); // it may be longer by now; files in /proc say 0
}

std::string read_text(std::filesystem::path const& path, std::uintmax_t bound) {
    auto text = read(path, bound);
    require_text(text, path.string());
    return text;
}

std::string read_standard_input(std::uintmax_t bound) {
    return bytes_of(STDIN_FILENO, 0, bound, "standard input");
}

} // namespace vowelway::files
