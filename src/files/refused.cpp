// SPDX-License-Identifier: MIT
#include "files/handle.hpp"

#include <cerrno>
#include <system_error>

namespace vowelway::files {

InputError refused(std::filesystem::path const& path, std::string const& doing, int error) {
    auto const remedy = [&]() -> std::string {
        switch (error) {
        case EACCES:
        case EPERM:
            return "check the permissions of the file and its folder";
        case ENOENT:
            return "check the name, and that the folder exists";
        case ENOTDIR:
            return "check the name: part of it is a file where a folder should be";
        case ENAMETOOLONG:
            return "choose a shorter name";
        case ELOOP:
            return "check the links: they form a loop";
        case EROFS:
            return "choose another folder: this disk is read-only";
        case ENOSPC:
        case EDQUOT:
            return "free some space, or choose another disk";
        case EFBIG:
            return "choose another disk, or raise the limit on file size";
        case EMFILE:
        case ENFILE:
            return "close some programs and try again";
        case ENOMEM:
            return "memory is short: close some programs and try again";
        case EIO:
            return "the disk is failing: copy your files from it";
        default:
            return "check that the folder exists, has space and can be written to";
        }
    }();
    return InputError("cannot " + doing + ": " + std::system_category().message(error), remedy,
                      place_of(path));
}

} // namespace vowelway::files
