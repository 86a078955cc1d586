// SPDX-License-Identifier: MIT
#include "vowelway/files/write.hpp"

#include "files/temporary.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/pieces.hpp"

#include <algorithm>
#include <cerrno>
#include <optional>
#include <sys/stat.h>

namespace vowelway::files {
namespace {

/// Where the bytes go: the end of a chain of symbolic links, which need not exist.
std::filesystem::path end_of_links(std::filesystem::path const& path) {
    auto at = path;
    for (int links = 0; links < 40; ++links) { // as many as Linux follows
        std::error_code error;
        auto const to = std::filesystem::read_symlink(at, error);
        if (error) return at;
        at = at.parent_path() / to; // an absolute target replaces it
    }
    throw refused(path, to_word("write here"), ELOOP);
}

std::filesystem::path folder_of(std::filesystem::path const& path) {
    auto const parent = path.parent_path();
    return parent.empty() ? std::filesystem::path(".") : parent;
}

bool names_folder(std::filesystem::path const& path) {
    auto const name = path.filename();
    return name.empty() || name == "." || name == "..";
}

InputError folder_named(std::filesystem::path const& path) {
    return InputError(worded("is a folder, not a file"), worded("add the name of the file"), place_of(path));
}

/// What stands there now, if it may be replaced.
std::optional<struct stat> replaceable(std::filesystem::path const& target,
                                       std::filesystem::path const& path) {
    struct stat known {};
    if (names_folder(target)) throw folder_named(path);
    if (lstat(target.c_str(), &known) != 0) {
        if (errno == ENOENT) return std::nullopt; // a missing folder is told when the file is made
        throw refused(path, to_word("write here"), errno);
    }
    if (S_ISDIR(known.st_mode)) throw folder_named(path);
    if (!S_ISREG(known.st_mode))
        throw InputError(worded("is a device or a pipe, not a file"),
                         worded("name a file, or - for standard output"), place_of(path));
    if (known.st_nlink > 1)
        throw InputError(worded("the file has another name (a hard link) that would keep the old contents"),
                         worded("name another file, or replace this one with a copy"), place_of(path));
    if (access(target.c_str(), W_OK) != 0) {
        if (errno == EACCES)
            throw InputError(worded("the file is write-protected"),
                             worded("name another file, or make this one writable"), place_of(path));
        throw refused(path, to_word("write here"), errno);
    }
    return known;
}

} // namespace

Pieces::Pieces(std::filesystem::path const& path) {
    auto const target = end_of_links(path);
    auto const folder = folder_of(target);
    remove_leftovers(folder); // first: one killed while creating is a second name of its file
    auto const known = replaceable(target, path);
    // Nobody else reads a private file's new contents, not even before it has its mode.
    temporary_ = std::make_unique<Temporary>(folder, target, known ? 0600 : 0666);
    if (known) temporary_->take_after(known->st_uid, known->st_gid, known->st_mode & 07777);
}

Pieces::~Pieces() = default;

void Pieces::write_at(std::uint64_t offset, std::string_view bytes) {
    temporary_->write_at(static_cast<off_t>(offset), bytes);
    size_ = std::max(size_, offset + bytes.size());
}

std::size_t Pieces::read_at(std::uint64_t offset, std::span<char> bytes) const {
    return temporary_->read_at(static_cast<off_t>(offset), bytes);
}

void Pieces::keep() {
    temporary_->sync();
    temporary_->replace_destination();
}

void write(std::filesystem::path const& path, std::string_view bytes) {
    Pieces whole(path);
    whole.write_at(0, bytes);
    whole.keep();
}

bool create(std::filesystem::path const& path, std::string_view bytes) {
    auto const target = end_of_links(path);
    auto const folder = folder_of(target);
    remove_leftovers(folder);
    if (names_folder(target)) throw folder_named(path);
    Temporary temporary(folder, target, 0666);
    temporary.fill(bytes);
    return temporary.create_destination();
}

} // namespace vowelway::files
