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
            return "check that you may; the file or its folder is protected";
        case ENOENT:
            return "check the name, and that the folder exists";
        case ENOTDIR:
            return "check the name: a part of it that should be a folder is a file";
        case ENAMETOOLONG:
            return "choose a shorter name";
        case ELOOP:
            return "check the links: they lead round in a circle";
        case EROFS:
            return "choose another folder: this disk is read-only";
        case ENOSPC:
        case EDQUOT:
            return "make room on the disk, or choose another";
        case EFBIG:
            return "choose another disk, or raise the limit on the size of files";
        case EMFILE:
        case ENFILE:
            return "close some programs and try again";
        case ENOMEM:
            return "close some programs and try again: memory is short";
        case EIO:
            return "copy your files from this disk: it is failing";
        default:
            return "check that the folder exists, has room and may be written";
        }
    }();
    return InputError("cannot " + doing + ": " + std::system_category().message(error), remedy,
                      place_of(path));
}

} // namespace vowelway::files
