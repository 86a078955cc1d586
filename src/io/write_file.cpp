// SPDX-License-Identifier: MIT
#include "vowelway/io/write_file.hpp"

#include "vowelway/core/error.hpp"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

namespace vowelway::io {

namespace {

// The permissions a new file gets, or those of the file that is replaced.
mode_t permissions(std::filesystem::path const& destination) {
    struct stat known {};
    if (stat(destination.c_str(), &known) == 0) return known.st_mode & 07777;
    mode_t const mask = umask(0);
    umask(mask);
    return 0666 & ~mask;
}

} // namespace

void write_file(std::filesystem::path const& destination, std::string_view bytes) {
    auto const failed = [&](char const* doing) {
        return InputError("cannot " + std::string(doing) + ": " + std::strerror(errno),
                          "check that the folder exists, has room and may be written",
                          {destination.string(), 0, 0, ""});
    };
    std::string temporary = destination.string() + ".XXXXXX";
    int const file = mkstemp(temporary.data());
    if (file < 0) throw failed("write here");
    bool ok = fchmod(file, permissions(destination)) == 0;
    while (ok && !bytes.empty()) {
        auto const written = write(file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        ok = written > 0;
        if (ok) bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    int const saved = errno;
    ok = close(file) == 0 && ok;
    if (!ok || std::rename(temporary.c_str(), destination.c_str()) != 0) {
        if (!ok && saved) errno = saved;
        auto error = failed("write");
        unlink(temporary.c_str());
        throw error;
    }
}

} // namespace vowelway::io
