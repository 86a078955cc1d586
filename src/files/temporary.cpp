// SPDX-License-Identifier: MIT
#include "files/temporary.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cctype>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstdint>
#include <cstdio>
#include <fcntl.h>
#include <optional>
#include <random>
#include <string>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>

namespace vowelway::files {
namespace {

constexpr std::string_view prefix = ".vowelway-", suffix = ".part";
constexpr std::size_t random_digits = 16;

std::string fresh_name() {
    std::random_device random;
    auto const number = std::uint64_t{random()} << 32 | random();
    char digits[random_digits + 1];
    std::snprintf(digits, sizeof digits, "%016llx", static_cast<unsigned long long>(number));
    return std::string(prefix) + std::to_string(getpid()) + "-" + digits + std::string(suffix);
}

/// The process that made a temporary of this name; nothing when it is another name.
std::optional<pid_t> maker(std::string_view name) {
    if (!name.starts_with(prefix) || !name.ends_with(suffix)) return std::nullopt;
    if (name.size() < prefix.size() + 2 + random_digits + suffix.size()) return std::nullopt;
    name.remove_prefix(prefix.size());
    name.remove_suffix(suffix.size());
    pid_t pid = 0;
    auto const [end, error] = std::from_chars(name.data(), name.data() + name.size(), pid);
    if (error != std::errc{} || pid <= 0) return std::nullopt;
    name.remove_prefix(static_cast<std::size_t>(end - name.data()));
    if (name.size() != 1 + random_digits || name.front() != '-') return std::nullopt;
    name.remove_prefix(1);
    if (!std::all_of(name.begin(), name.end(), [](unsigned char c) { return std::isxdigit(c) != 0; }))
        return std::nullopt;
    return pid;
}

bool is_gone(pid_t process) { return kill(process, 0) != 0 && errno == ESRCH; }

} // namespace

void remove_leftovers(std::filesystem::path const& folder) {
    std::error_code error;
    for (std::filesystem::directory_iterator entry(folder, error), end; !error && entry != end;
         entry.increment(error)) {
        auto const process = maker(entry->path().filename().native());
        if (!process || !is_gone(*process)) continue;
        // A writer on another machine may share the folder: its process is not seen here, its lock is.
        Handle const file(
            ::open(entry->path().c_str(), O_RDWR | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC | O_NOCTTY));
        struct stat known {};
        if (!file || fstat(file.get(), &known) != 0 || !S_ISREG(known.st_mode)) continue;
        if (flock(file.get(), LOCK_EX | LOCK_NB) == 0) unlink(entry->path().c_str());
    }
}

Temporary::Temporary(std::filesystem::path const& folder, std::filesystem::path const& destination,
                     mode_t mode)
    : folder_(folder), destination_(destination) {
    for (int tries = 0; !file_; ++tries) {
        path_ = folder_ / fresh_name();
        file_ = Handle(::open(path_.c_str(), O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, mode));
        if (!file_ && (errno != EEXIST || tries == 100))
            throw refused(destination_, to_word("write here"), errno);
    }
    there_ = true;
    flock(file_.get(), LOCK_EX | LOCK_NB); // on a disk without locks the process number must do
}

Temporary::~Temporary() {
    if (there_) unlink(path_.c_str());
}

void Temporary::take_after(uid_t owner, gid_t group, mode_t mode) {
    struct stat mine {};
    if (fstat(file_.get(), &mine) == 0 && (mine.st_uid != owner || mine.st_gid != group) &&
        fchown(file_.get(), owner, group) != 0) {
        // Only the superuser gives files away: then it is ours, and the rights of group and others stay.
    }
    if (fchmod(file_.get(), mode) != 0)
        throw refused(destination_, to_word("keep the permissions of the file"), errno);
}

void Temporary::fill(std::string_view bytes) {
    while (!bytes.empty()) {
        auto const written = ::write(file_.get(), bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written <= 0) throw refused(destination_, to_word("write"), written < 0 ? errno : ENOSPC);
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    sync();
}

void Temporary::write_at(off_t offset, std::string_view bytes) {
    while (!bytes.empty()) {
        auto const written = ::pwrite(file_.get(), bytes.data(), bytes.size(), offset);
        if (written < 0 && errno == EINTR) continue;
        if (written <= 0) throw refused(destination_, to_word("write"), written < 0 ? errno : ENOSPC);
        offset += written;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
}

std::size_t Temporary::read_at(off_t offset, std::span<char> bytes) const {
    auto const got = ::pread(file_.get(), bytes.data(), bytes.size(), offset);
    if (got < 0) throw refused(destination_, to_word("read back"), errno);
    return static_cast<std::size_t>(got);
}

void Temporary::sync() {
    int synced = 0;
    do synced = fsync(file_.get());
    while (synced != 0 && errno == EINTR);
    if (synced != 0 && errno != EINVAL && errno != ENOTSUP)
        throw refused(destination_, to_word("write"), errno);
}

void Temporary::replace_destination() {
    if (std::rename(path_.c_str(), destination_.c_str()) != 0)
        throw refused(destination_, to_word("write"), errno);
    there_ = false;
    if (!file_.close()) throw refused(destination_, to_word("write"), errno);
    sync_folder();
}

bool Temporary::create_destination() {
    if (link(path_.c_str(), destination_.c_str()) != 0) {
        if (errno == EEXIST) return false;
        if (errno != EPERM && errno != ENOTSUP && errno != EMLINK && errno != ENOSYS)
            throw refused(destination_, to_word("write"), errno);
        // A disk without hard links: look, then rename. The moment between is the best it can do.
        struct stat known {};
        if (lstat(destination_.c_str(), &known) == 0) return false;
        replace_destination();
        return true;
    }
    unlink(path_.c_str());
    there_ = false;
    sync_folder();
    return true;
}

void Temporary::sync_folder() const {
    Handle const folder(::open(folder_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (folder && fsync(folder.get()) != 0 && errno == EIO)
        throw refused(destination_, to_word("write"), errno);
}

} // namespace vowelway::files
