// SPDX-License-Identifier: MIT
#include "files/handle.hpp"
#include "vowelway/core/wording.hpp"

#include <cerrno>
#include <system_error>

namespace vowelway::files {

InputError refused(std::filesystem::path const& path, std::string_view doing, int error) {
    auto const remedy = [&]() -> std::string {
        switch (error) {
        case EACCES:
        case EPERM:
            return worded("check the permissions of the file and its folder");
        case ENOENT:
            return worded("check the name, and that the folder exists");
        case ENOTDIR:
            return worded("check the name: part of it is a file where a folder should be");
        case ENAMETOOLONG:
            return worded("choose a shorter name");
        case ELOOP:
            return worded("check the links: they form a loop");
        case EROFS:
            return worded("choose another folder: this disk is read-only");
        case ENOSPC:
        case EDQUOT:
            return worded("free some space, or choose another disk");
        case EFBIG:
            return worded("choose another disk, or raise the limit on file size");
        case EMFILE:
        case ENFILE:
            return worded("close some programs and try again");
        case ENOMEM:
            return worded("memory is short: close some programs and try again");
        case EIO:
            return worded("the disk is failing: copy your files from it");
        default:
            return worded("check that the folder exists, has space and can be written to");
        }
    }();
    return InputError(worded("cannot {0}: {1}", reworded(doing), std::system_category().message(error)),
                      remedy, place_of(path));
}

} // namespace vowelway::files
