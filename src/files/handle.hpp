// SPDX-License-Identifier: MIT
// An open file that closes itself, and what the system says when it refuses. Private to the layer.
#pragma once

#include "vowelway/core/error.hpp"

#include <cstring>
#include <filesystem>
#include <string>
#include <unistd.h>
#include <utility>

namespace vowelway::files {

class Handle {
  public:
    explicit Handle(int file = -1) : file_(file) {}
    Handle(Handle&& other) noexcept : file_(std::exchange(other.file_, -1)) {}
    Handle& operator=(Handle&& other) noexcept {
        std::swap(file_, other.file_);
        return *this;
    }
    ~Handle() { close(); }

    int get() const { return file_; }
    explicit operator bool() const { return file_ >= 0; }
    int release() { return std::exchange(file_, -1); }
    /// False when the system only now finds that bytes were lost.
    bool close() { return file_ < 0 || ::close(std::exchange(file_, -1)) == 0; }

  private:
    int file_;
};

inline Place place_of(std::filesystem::path const& path) { return Place{path.string(), 0, 0, {}}; }

/// Why a file cannot be read or written, with the remedy for the common reasons; otherwise the system's
/// words.
InputError refused(std::filesystem::path const& path, std::string_view doing, int error);

enum class Access { read, change };
/// A regular file, opened without waiting for anything. Throws InputError.
Handle open_regular(std::filesystem::path const& path, Access access = Access::read);

} // namespace vowelway::files
