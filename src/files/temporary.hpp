// SPDX-License-Identifier: MIT
// The file beside its place that is renamed into it. Private to the layer.
#pragma once

#include "files/handle.hpp"

#include <cstddef>
#include <filesystem>
#include <span>
#include <string_view>
#include <sys/types.h>

namespace vowelway::files {

/// Removes temporaries that killed writers left in the folder. Never fails: what cannot be removed stays.
void remove_leftovers(std::filesystem::path const& folder);

/// A new, locked, empty file of its own name in `folder`; removed again unless it was moved into place.
/// Every member throws InputError that names `destination`.
class Temporary {
  public:
    /// `mode` as for open(2): what the umask takes away is missing.
    Temporary(std::filesystem::path const& folder, std::filesystem::path const& destination, mode_t mode);
    ~Temporary();
    Temporary(Temporary const&) = delete;
    Temporary& operator=(Temporary const&) = delete;

    /// Mode and, where the system lets us, owner and group of the file that will be replaced.
    void take_after(uid_t owner, gid_t group, mode_t mode);
    /// All bytes, down to the disk.
    void fill(std::string_view bytes);
    /// Overwrites or appends; sync() brings all down to the disk.
    void write_at(off_t offset, std::string_view bytes);
    std::size_t read_at(off_t offset, std::span<char> bytes) const;
    void sync();
    void replace_destination();
    /// False when something stands there already.
    bool create_destination();

  private:
    void sync_folder() const;

    std::filesystem::path folder_, destination_, path_;
    Handle file_;
    bool there_ = false;
};

} // namespace vowelway::files
