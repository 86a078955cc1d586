// SPDX-License-Identifier: MIT
// Reading, extending and writing a file as one step.
#pragma once

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>

namespace vowelway::files {

/// Holds an existing file against every other Lock on it, in this process or another, until it is destroyed.
/// Advisory: it keeps off those who lock, not those who only write. files::write under the lock is safe:
/// whoever waited takes the new file, never the one that was replaced. Leaves nothing on the disk.
/// A disk that knows no locks (some network folders) gives none, and two writers there are not kept apart.
class Lock {
  public:
    /// Waits for others at most so long, then throws InputError; throws it also when the file is missing or
    /// may not be read.
    explicit Lock(std::filesystem::path const& path,
                  std::chrono::milliseconds patience = std::chrono::seconds(10));
    ~Lock();
    Lock(Lock const&) = delete;
    Lock& operator=(Lock const&) = delete;

  private:
    int file_ = -1;
};

/// Locks the file, reads it as text, and writes what `change` makes of it. When `change` throws or changes
/// nothing, nothing is written.
void update(std::filesystem::path const& path, std::uintmax_t bound,
            std::function<std::string(std::string const& text)> const& change);

} // namespace vowelway::files
