// SPDX-License-Identifier: MIT
// Between the encoder of sound and where its bytes stay. Private to the library.
#pragma once

#include "vowelway/io/audio/write_audio.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>

namespace vowelway::io {

// Where libsndfile puts its bytes: it goes back to fill in the header.
class Store {
  public:
    virtual ~Store() = default;
    virtual void write_at(std::uint64_t offset, std::string_view bytes) = 0;
    virtual std::size_t read_at(std::uint64_t offset, std::span<char> bytes) const = 0;
    virtual std::uint64_t size() const = 0;
};

/// Everything that `make` feeds, as a file of this form.
void encode(Store& store, AudioForm form, Frequency rate, AudioMaker const& make);

} // namespace vowelway::io
