// SPDX-License-Identifier: MIT
// A file too large for memory, written piece by piece, that appears whole or not at all.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>
#include <string_view>

namespace vowelway::files {

class Temporary;

/// What files::write says of the temporary, of links, modes and refusals holds here too. Without keep()
/// nothing is written. Every member throws InputError with the path and what the system said. One thread at a
/// time.
class Pieces {
  public:
    explicit Pieces(std::filesystem::path const& path);
    Pieces(Pieces const&) = delete;
    Pieces& operator=(Pieces const&) = delete;
    ~Pieces();

    /// Overwrites or appends.
    void write_at(std::uint64_t offset, std::string_view bytes);
    /// How many bytes were read: fewer than asked for at the end.
    std::size_t read_at(std::uint64_t offset, std::span<char> bytes) const;
    std::uint64_t size() const { return size_; }
    /// Down to the disk, then into place. Once.
    void keep();

  private:
    std::unique_ptr<Temporary> temporary_;
    std::uint64_t size_ = 0;
};

} // namespace vowelway::files
